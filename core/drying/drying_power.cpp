#include "core/drying/drying_power.h"

#include "core/air/saturation.h"

namespace core::drying {

units::Pressure drying_force(units::Temperature t, units::RelativeHumidity rh,
                             units::WaterActivity surface) {
    return air::saturation_pressure(t) * (surface.as_fraction() - rh.as_fraction());
}

std::optional<units::RelativeHumidity> equal_power_humidity(units::Temperature t,
                                                            units::RelativeHumidity rh,
                                                            units::Temperature there,
                                                            units::WaterActivity surface) {
    const double share =
        surface.as_fraction() - drying_force(t, rh, surface) / air::saturation_pressure(there);
    if (share < 0 || share > 1) {
        return std::nullopt;
    }
    return units::RelativeHumidity::fraction(share);
}

} // namespace core::drying
