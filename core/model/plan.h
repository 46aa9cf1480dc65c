#pragma once

#include "core/model/ids.h"
#include "core/units/length.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::model {

enum class StageKind {
    salt, rest, wash, soak, marinate, press, smoke, dry, age, equalise, coat, freeze, store
};

/// How a stage can end. A stage with several conditions ends by any or by all of them.
struct EndCondition {
    enum class Kind {
        after,             ///< a fixed time
        days_per_kilogram, ///< amount x the piece's raw weight + constant days
        days_per_cm,       ///< amount x thickness + constant days
        loss,              ///< a loss from the named reference
        flat_curve,        ///< loss per week below `loss`
        feel,              ///< a person says so
        lab_value,         ///< a measured value a person enters
        on_date,
    };
    Kind kind = Kind::after;
    std::optional<units::Duration> time; ///< after; constant part of the per-kg and per-cm rules
    std::optional<double> days_per_unit; ///< days per kg or per cm
    std::optional<units::MassShare> loss;
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
};

/// Something expected during a stage: "turn every 2 days".
struct Routine {
    std::string verb; ///< stable code: turn, rub_again, massage, weigh, wipe, rotate, check
    units::Duration every;
    std::optional<units::Duration> first_after;
};

enum class WeightEffect { loses, gains, keeps, resets_tare };

struct StageTemplate {
    std::string name;
    StageKind kind{};
    std::optional<Band<units::Temperature>> temperature;
    std::optional<Band<units::RelativeHumidity>> humidity;
    std::vector<EndCondition> ends;
    bool ends_by_all = false; ///< false: any one condition ends it
    std::vector<Routine> routines;
    WeightEffect weight = WeightEffect::keeps;
    int repeats = 1;        ///< this stage and `repeat_with_next` following ones, so many times
    int repeat_with_next = 0;
    bool optional = false;
    bool pauses_when_frozen = true;
    bool pauses_out_of_band = false;
};

struct PlanTemplate {
    std::string id; ///< stable name
    std::string name;
    std::string family; ///< product family
    std::vector<StageTemplate> stages;
    std::string source; ///< where it comes from, "common practice, no source" where so
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
    std::string end_reason;
};

} // namespace core::model
