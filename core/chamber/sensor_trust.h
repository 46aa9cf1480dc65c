#pragma once

#include "core/base/interval.h"
#include "core/model/chamber.h"
#include "core/model/climate.h"
#include "core/model/finding.h"

#include <span>
#include <string>
#include <vector>

/// Whether a sensor may be believed. Everything here returns findings; their values carry the
/// numbers, their source the rule. Instruments are often wrong, and believed: two weeks at 55 %
/// taken for 78 % look like any other two weeks until something else is asked.
namespace core::chamber {

/// Thresholds; all are common practice, no source.
struct TrustRules {
    units::Duration flat_after = units::Duration::hours(24); ///< one value for so long
    std::int64_t flat_readings = 24;                         ///< and at least so many readings
    units::RelativeHumidity step = units::RelativeHumidity::percent(4); ///< battery swap: about 5
    units::RelativeHumidity disagreement = units::RelativeHumidity::percent(5);
    units::TemperatureStep temperature_disagreement = units::TemperatureStep::kelvins(1);
    int salt_bag_every_days = 182; ///< 75 % over a salt slurry, every six months
    int ice_every_days = 365;      ///< 0 C in ice water, at least yearly
    units::RelativeHumidity meat_disagreement = units::RelativeHumidity::percent(5);
};

/// `sensor_flat`: a humidity or temperature that did not move. Buckets of hours, sorted; values
/// "quantity", "value", "lasted"; `at` its start.
model::Findings flat_lines(std::span<const model::ClimateBucket> hours,
                           const TrustRules& rules = {});

/// `sensor_step`: humidity jumped between one hour and the next and stayed there, without the
/// temperature doing so. Value "by" (signed), "after_gap" 1 when readings paused (a battery was
/// changed, the sensor taken out). A room set to another humidity looks the same, so it is a
/// question, not an accusation.
model::Findings steps(std::span<const model::ClimateBucket> hours, const TrustRules& rules = {});

/// `sensors_disagree`: two sensors of one chamber, offsets applied, over the hours both have.
/// Values "humidity_apart", "temperature_apart" (medians, second minus first), "hours".
model::Findings disagreement(std::span<const model::ClimateBucket> first, const model::Sensor& a,
                             std::span<const model::ClimateBucket> second, const model::Sensor& b,
                             const TrustRules& rules = {});

/// One check a sensor should have, and when.
struct CheckDue {
    enum class Kind { salt_bag, ice };
    Kind kind{};
    model::SensorId sensor;
    std::optional<units::Day> last; ///< absent: never checked
    units::Day due;                 ///< `today` when never checked
    bool overdue = false;
    std::optional<double> found_off; ///< expected - found of the last check: the offset it suggests
};

/// The salt-bag and ice checks of a sensor's instruments. `checks` of those instruments in any
/// order; a hygrometer's are salt-bag checks, a thermometer's ice checks. A sensor without
/// instruments has both due now.
std::vector<CheckDue> checks_due(const model::Sensor& sensor,
                                 std::span<const model::Instrument> instruments,
                                 std::span<const model::CalibrationCheck> checks, units::Day today,
                                 const TrustRules& rules = {});

/// The humidity that the weight losses of pieces in the chamber imply, as an interval (10th to
/// 90th percentile), over a time. Made by core/drying; this layer only compares.
struct MeatWitness {
    std::string piece; ///< its code
    units::Instant from;
    units::Instant to;
    base::Interval<units::RelativeHumidity> implied;
};

/// `meat_contradicts_sensor`: the mean humidity of the sensor over a witness's time lies outside
/// its interval by more than the rule. Values "stated", "implied", "implied_low", "implied_high",
/// "pieces" (how many say so, on the same side). One finding a side, from all witnesses.
model::Findings meat_as_witness(std::span<const model::ClimateBucket> hours,
                                const model::Sensor& sensor, std::span<const MeatWitness> witnesses,
                                const TrustRules& rules = {});

} // namespace core::chamber
