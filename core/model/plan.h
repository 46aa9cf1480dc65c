#pragma once

#include "core/base/cited.h"
#include "core/base/interval.h"
#include "core/model/ids.h"
#include "core/model/piece.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::model {

enum class StageKind {
    salt,
    rest,
    wash,
    soak,
    marinate,
    press,
    smoke,
    dry,
    age,
    equalise,
    coat,
    freeze,
    store
};

/// How the salt is given. A day rule made for one method misleads with another: days per
/// kilogram come from burying in salt, days per centimetre from weighed or bagged cures.
enum class SaltingMethod {
    weighed, ///< a weighed dose, all of it taken up
    excess,  ///< buried in or rubbed with more salt than is taken up
    brine,   ///< immersed
};

/// How a stage can end. A stage with several conditions ends by any or by all of them.
struct EndCondition {
    enum class Kind {
        after,             ///< a fixed time
        days_per_kilogram, ///< amount x the piece's raw weight + constant days
        days_per_cm,       ///< amount x thickness + constant days
        loss,              ///< a loss from the named reference; the piece's own target when unset
        flat_curve,        ///< loss per week below `loss`
        feel,              ///< a person says so
        lab_value,         ///< a measured value a person enters
        on_date,
    };
    Kind kind = Kind::after;
    std::optional<units::Duration> time; ///< after; constant part of the per-kg and per-cm rules
    std::optional<double> days_per_unit; ///< days per kg or per cm
    std::optional<units::MassShare> loss;
    std::optional<ReferenceWeight> reference; ///< what `loss` is counted from
    std::optional<units::Day> date;
    std::string text; ///< what to feel, what to measure
};

/// An allowed band, which may ramp from start to end of the stage.
template <class Q>
struct Band {
    Q low_at_start;
    Q high_at_start;
    Q low_at_end;
    Q high_at_end;
    friend bool operator==(const Band&, const Band&) = default;
};

/// A second band that takes the place of the first for `lasting` out of every `every`, counted
/// from the start of the stage: damp rests between dry spells, say.
template <class Q>
struct Pulse {
    Q low;
    Q high;
    units::Duration every;
    units::Duration lasting;
    friend bool operator==(const Pulse&, const Pulse&) = default;
};

/// Something expected during a stage: "turn every 2 days", or "rub again on days 3 and 10". Has
/// `every`, or `at`, or both.
struct Routine {
    std::string verb; ///< stable code: turn, rub_again, massage, weigh, wipe, rotate, check
    std::optional<units::Duration> every;
    std::optional<units::Duration> first_after; ///< of the `every` series; else after one `every`
    std::vector<units::Duration> at;            ///< single times after the start of the stage
};

enum class WeightEffect { loses, gains, keeps, resets_tare };

struct StageTemplate {
    std::string name;
    StageKind kind{};
    std::optional<SaltingMethod> salting; ///< of a stage that salts
    std::optional<Band<units::Temperature>> temperature;
    std::optional<Band<units::RelativeHumidity>> humidity;
    std::optional<Pulse<units::Temperature>> temperature_pulse;
    std::optional<Pulse<units::RelativeHumidity>> humidity_pulse;
    std::vector<EndCondition> ends;
    bool ends_by_all = false; ///< false: any one condition ends it
    /// How long it usually takes, where no rule says (a loss, a feel); the trade's own spread.
    std::optional<base::Interval<units::Duration>> typical;
    std::vector<Routine> routines;
    WeightEffect weight = WeightEffect::keeps;
    int repeats = 1; ///< this stage and `repeat_with_next` following ones, so many times
    int repeat_with_next = 0;
    int repeats_at_least = 1; ///< how far a person may change `repeats` for a batch
    int repeats_at_most = 1;
    bool optional = false; ///< may be skipped
    bool pauses_when_frozen = true;
    bool pauses_out_of_band = false;
    std::string same_room_as; ///< name of the stage whose room it shares; may be empty
    std::string note;         ///< what is peculiar, in the template's words
};

/// A minimum that the whole plan, or the named stages of it, must last: a legal definition or a
/// published process, shown with its source.
struct PlanMinimum {
    std::string code;                ///< stable name, e.g. "cure_and_equalise"
    std::vector<std::string> stages; ///< names; empty: the whole plan
    units::Duration at_least;
    base::Source source;
};

struct PlanTemplate {
    std::string id; ///< stable name
    std::string name;
    std::string family; ///< product family
    std::string species;
    std::vector<StageTemplate> stages;
    std::vector<PlanMinimum> minima;
    /// A usual piece, to say how long the plan takes before there is one.
    units::Mass usual_weight = units::Mass::kilograms(1);
    units::Length usual_thickness = units::Length::millimetres(50);
    Form usual_form = Form::slab;
    std::optional<Target> usual_target;
    std::string source; ///< where it comes from, "common practice, no source" where so
    base::Sureness sureness = base::Sureness::common_practice;
};

/// A stage of a real batch: planned days, and the real ones as they happen.
struct Stage {
    StageId id;
    BatchId batch;
    int order = 0;
    StageTemplate what;
    units::Day planned_start;
    units::Day planned_end;
    std::optional<units::Instant> started_at;
    std::optional<units::Instant> ended_at;
    std::optional<ChamberId> chamber;
    std::string end_reason; ///< "skipped" when it was passed over
};

/// A task of the day sheet that a person ticked off. `key` names the task (see
/// core/planning/day_sheet.h) and stays the same however often the sheet is made.
struct TaskTick {
    TaskId id;
    std::string key;
    units::Instant at;
    std::optional<PersonId> by;
    bool withdrawn = false;
    std::optional<units::Day> due; ///< the day sheet it stood on
    std::optional<BatchId> batch;
    std::optional<PieceId> piece;
    std::string note; ///< what was found or done, in the user's words
};

} // namespace core::model
