#pragma once

#include "core/base/result.h"
#include "core/units/pressure.h"
#include "core/units/temperature.h"

/// The vapour pressure of water at saturation, and the dew point, its inverse.
namespace core::air {

enum class SaturationFormula {
    ashrae,  ///< ASHRAE Handbook Fundamentals (2017) ch. 1 eq. 5 (ice) and 6 (water); the default
    sonntag, ///< Sonntag (1990), Z. Meteorol. 70: 340-344; agrees within 0.1 % from -40 to 60 C
};

enum class Over { water, ice };

/// Where the formulas hold.
inline constexpr units::Temperature lowest_saturation = units::Temperature::celsius(-100);
inline constexpr units::Temperature highest_saturation = units::Temperature::celsius(200);
/// Ice is assumed at and below this temperature where `Over` is not given.
inline constexpr units::Temperature triple_point = units::Temperature::celsius(0.01);

/// The saturation pressure over ice at and below the triple point, over liquid water above it.
/// Unchecked, for inner loops: outside -100 to 200 C (Sonntag: to 100 C) it extrapolates.
/// ASHRAE's water curve is given for 0 to 200 C, Sonntag's also for supercooled water.
units::Pressure saturation_pressure(units::Temperature t,
                                    SaturationFormula formula = SaturationFormula::ashrae);
units::Pressure saturation_pressure(units::Temperature t, Over over, SaturationFormula formula);

/// The temperature at which air holding vapour of this pressure begins to give dew - or frost,
/// where the answer is at or below the triple point. out_of_range when the answer would lie
/// outside -100 to 200 C (dry air has no dew point).
base::Result<units::Temperature> dew_point(units::Pressure vapour,
                                           SaturationFormula formula = SaturationFormula::ashrae);

} // namespace core::air
