#pragma once

#include "core/air/saturation.h"
#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/pressure.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"

#include <optional>

/// Moist air after ASHRAE Handbook Fundamentals (2017) ch. 1, ideal-gas relations without
/// enhancement factor (which would add about 0.4 % to the humidity ratio).
namespace core::air {

/// What a thermometer and a hygrometer say, at a total pressure.
struct AirCondition {
    units::Temperature temperature;
    units::RelativeHumidity humidity;
    units::Pressure pressure = units::Pressure::standard_atmosphere();
};

/// Everything that follows from an air condition.
struct MoistAir {
    AirCondition condition;
    units::Pressure vapour_pressure;
    units::Pressure saturation_pressure;
    /// Vapour pressure missing to saturation: what draws water from a fully wet surface at air
    /// temperature ("drying force"). >= 0.
    units::Pressure deficit;
    double humidity_ratio = 0;    ///< kg of vapour per kg of dry air
    double absolute_humidity = 0; ///< g of vapour per m3 of air
    double enthalpy = 0;          ///< kJ per kg of dry air, 0 at dry air of 0 C
    double specific_volume = 0;   ///< m3 of air per kg of dry air
    double density = 0;           ///< kg of moist air per m3
    /// Dew point, or frost point at and below the triple point. Absent below -100 C.
    std::optional<units::Temperature> dew_point;
    /// Thermodynamic wet-bulb temperature (of ice below 0 C; where a water and an ice bulb are
    /// both possible, the water bulb). Absent when out of -100 to 200 C.
    std::optional<units::Temperature> wet_bulb;
};

/// out_of_range, with `where` naming the field, when temperature is outside -100 to 200 C,
/// humidity outside 0 to 100 %, or the pressure is not above the vapour pressure.
base::Result<MoistAir> state_of(const AirCondition& condition);

/// Vapour pressure of air, unchecked, for inner loops: RH x saturation pressure.
units::Pressure vapour_pressure(units::Temperature t, units::RelativeHumidity rh);

/// Humidity ratio (kg/kg dry air) of a vapour pressure below the total one.
double humidity_ratio(units::Pressure vapour, units::Pressure total);

/// Inverses: the air condition of a temperature with a dew (frost) point, with a wet-bulb
/// temperature, or with a humidity ratio. out_of_range when the second is above what air of that
/// temperature can have, or below what is possible (a wet bulb drier than dry air).
base::Result<AirCondition>
from_dew_point(units::Temperature t, units::Temperature dew,
               units::Pressure pressure = units::Pressure::standard_atmosphere());
base::Result<AirCondition>
from_wet_bulb(units::Temperature t, units::Temperature wet_bulb,
              units::Pressure pressure = units::Pressure::standard_atmosphere());
base::Result<AirCondition>
from_humidity_ratio(units::Temperature t, double kg_per_kg,
                    units::Pressure pressure = units::Pressure::standard_atmosphere());

/// The same air brought to another temperature without gaining or losing water (a fridge's air
/// warmed in a box, say): the vapour pressure stays. out_of_range when it would condense.
base::Result<AirCondition> at_other_temperature(const AirCondition& air, units::Temperature t);

/// Mean pressure at a height above sea level (ASHRAE 2017 ch. 1 eq. 3, ICAO standard
/// atmosphere), -5 to 11 km; outside it extrapolates.
units::Pressure pressure_at_height(units::Length height);

} // namespace core::air
