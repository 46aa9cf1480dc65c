#pragma once

#include "core/units/pressure.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"

#include <optional>

/// What the air can do, for comparing settings: 18 C at 80 % with 12 C at 70 %, say.
namespace core::drying {

/// Vapour pressure of the meat's face less that of the air: what drives water off. Negative when
/// the meat would take water up. `surface` is the face's water activity, about 0.97 for cured
/// meat that is not yet dry at the face.
units::Pressure drying_force(units::Temperature t, units::RelativeHumidity rh,
                             units::WaterActivity surface = units::WaterActivity::fraction(0.97));

/// The humidity that at `there` drives water off as strongly as `rh` does at `t`. Absent when no
/// humidity from 0 to 100 % does. Says nothing of how far the meat can dry: the levelling-off loss
/// follows from humidity almost alone.
std::optional<units::RelativeHumidity>
equal_power_humidity(units::Temperature t, units::RelativeHumidity rh, units::Temperature there,
                     units::WaterActivity surface = units::WaterActivity::fraction(0.97));

} // namespace core::drying
