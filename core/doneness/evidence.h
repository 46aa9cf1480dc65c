#pragma once

#include "core/base/cited.h"
#include "core/base/interval.h"
#include "core/doneness/exposure.h"
#include "core/facts/hurdles.h"
#include "core/model/batch.h"
#include "core/model/finding.h"
#include "core/model/forecast.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

/// "Is it done?" as evidence side by side, with contradictions shown. There is no verdict in
/// here: a person looks, decides and signs.
namespace core::doneness {

/// A net weight at a moment (tare off, rebased for cuts), as core/drying makes them.
struct NetWeight {
    units::Instant at;
    units::Mass net;
};

/// The start weights a loss can be counted from, as far as they are known. Same basis as the
/// net weights (rebased for cuts).
struct ReferenceWeights {
    std::optional<units::Mass> raw;     ///< as bought or portioned
    std::optional<units::Mass> trimmed; ///< into the cure
    std::optional<units::Mass> cured;   ///< out of the cure, rinsed
    std::optional<units::Mass> hung;    ///< net, when it was hung
    [[nodiscard]] std::optional<units::Mass> of(model::ReferenceWeight which) const;
};

/// How long the air of a stage was watched and where it lay against the stage's own band. A side
/// without a bound counts nothing.
struct AirWatch {
    units::Duration watched = units::Duration::seconds(0); ///< covered by readings
    units::Duration silent = units::Duration::seconds(0);  ///< of the stage, without readings
    bool temperature_band = false;                         ///< the stage has one
    bool humidity_band = false;
    units::Duration too_cold = units::Duration::seconds(0);
    units::Duration too_warm = units::Duration::seconds(0);
    units::Duration too_dry = units::Duration::seconds(0);
    units::Duration too_damp = units::Duration::seconds(0);
};

/// A stage the piece went through, with the air it had (low, mean, high of the log).
struct StageRecord {
    model::StageKind kind{};
    std::string name;
    units::Instant from;
    std::optional<units::Instant> to; ///< absent: still in it
    std::optional<base::Interval<units::Temperature>> temperature;
    std::optional<base::Interval<units::RelativeHumidity>> humidity;
    std::optional<AirWatch> air; ///< absent: no log of it
};

/// What a hand, nose or eye found, in the slots the sheet keeps for them.
enum class Sense { feel_outside, feel_centre, smell, cut_face, mould };
enum class CentreFeel { soft, springy, firm };

struct SenseNote {
    Sense sense{};
    units::Instant at;
    std::string text;
};

/// Values someone measured. They stand beside the estimates and never replace them silently.
struct Measured {
    std::optional<units::WaterActivity> water_activity;
    std::optional<units::MassShare> moisture; ///< of the piece
    std::optional<units::MassShare> salt;     ///< of the piece
    std::optional<double> ph;
};

struct EvidenceRequest {
    units::Instant now;
    model::Form form = model::Form::slab;
    std::optional<units::Length> thickness;
    std::optional<units::MassShare> fat; ///< fat tissue, of the raw weight
    std::optional<model::Target> target;
    ReferenceWeights references;
    std::vector<NetWeight> weights; ///< in order of time; the last one is "now"
    /// Salt put on and left on, of the weight that went into the cure. Absent: unknown.
    std::optional<units::MassShare> salt_dose;
    bool excess_salt = false; ///< buried in salt: the dose does not say what went in
    std::vector<StageRecord> stages;
    std::optional<units::RelativeHumidity> chamber_humidity; ///< where it hangs now
    std::optional<model::Forecast> forecast;
    std::optional<CentreFeel> centre;
    std::vector<SenseNote> senses;
    Measured measured;
};

struct LossOnReference {
    model::ReferenceWeight reference{};
    units::Mass start;
    units::MassShare loss; ///< negative when heavier
    bool is_target_reference = false;
};

/// Loss per day between two weighings at least half a day apart, of the reference weight.
struct RateSpell {
    units::Instant from;
    units::Instant to;
    units::MassShare per_day;
};

struct RateHistory {
    model::ReferenceWeight reference{};
    std::vector<RateSpell> spells;
    std::optional<units::MassShare> first_week; ///< mean per day over about the first 7 days
    std::optional<units::MassShare> last_weeks; ///< mean per day over about the last 14 days
    std::optional<units::MassShare> overall;    ///< mean per day since the first weight
};

struct StageTime {
    StageRecord stage;
    units::Duration lasted; ///< to its end or to now
};

/// What the piece is made of now, by mass balance from its cured weight. Bounds are p10 and p90.
struct Composition {
    base::Interval<units::MassShare> water;               ///< of the piece
    base::Interval<units::MassShare> lean_moisture;       ///< water of the lean, of the lean
    std::optional<base::Interval<units::MassShare>> salt; ///< of the piece
    std::optional<base::Interval<units::MassShare>> water_phase_salt; ///< salt/(salt+water), lean
    std::optional<base::Interval<units::WaterActivity>> water_activity;
    bool start_weight_estimated = false; ///< no raw or trimmed weight: taken from hung + 3 %
};

/// A cited figure beside the piece's own.
struct HurdleCheck {
    enum class Stands {
        met,       ///< the whole range of the piece's figure is on the figure's side
        not_met,   ///< the whole range is on the other side
        undecided, ///< the range straddles it
        unknown,   ///< the piece's figure is not known
    };
    std::string id; ///< of core/facts: a hurdle's, or an organism's (its lowest activity)
    std::string name;
    facts::Hurdle::Quantity quantity{};
    double limit = 0;
    std::optional<base::Interval<double>> value;
    bool measured = false; ///< the value was measured, not estimated
    Stands stands = Stands::unknown;
    base::Source source;
};

struct EvidenceSheet {
    std::vector<LossOnReference> losses;
    std::optional<model::Target> target;
    std::optional<units::MassShare> short_of_target; ///< target minus loss; negative when past it
    std::optional<RateHistory> rates;
    std::optional<Composition> composition;
    Measured measured;
    std::vector<StageTime> stages;
    std::optional<units::Duration> since_hung;
    std::vector<HurdleCheck> hurdles;
    std::vector<OrganismExposure> exposure; ///< in the stages with a temperature log
    std::vector<SenseNote> senses;
    std::vector<Sense> not_looked_at; ///< slots without a note
    /// Stable names of evidence that is missing: start_weight, salt, thickness, fat, humidity_log,
    /// temperature_log, weights, water_activity_measurement.
    std::vector<std::string> missing;
    model::Findings findings;
};

/// Pure. Findings (codes): target_reached_fast, target_reached_soft_centre, flat_fatty,
///   flat_lean_ask_humidity, flat_soft_centre, target_not_reachable,
///   heavier_than_start, weights_contradict (more solids than weight), start_weight_estimated,
///   salt_dose_of_excess_cure, measured_activity_off_estimate, weights_out_of_order,
///   evidence_out_of_range, estimate_is_no_measurement.
EvidenceSheet evidence_of(const EvidenceRequest& request, const facts::Hurdles& hurdles);

} // namespace core::doneness
