#include "core/air/film.h"

#include <cmath>

namespace core::air {

double film_mass_transfer(FilmHeatTransfer h, const AirCondition& air) {
    constexpr double lewis = 0.87;
    constexpr double heat_capacity = 1006; // J/(kg K), dry air, ASHRAE 2017 ch. 1
    const double density = air.pressure.in_pascals() / (287.042 * air.temperature.in_kelvins());
    return h.watts_per_m2_kelvin / (density * heat_capacity * std::pow(lewis, 2.0 / 3.0));
}

double evaporation_flux(FilmHeatTransfer h, const AirCondition& air, units::WaterActivity surface) {
    constexpr double vapour_gas_constant = 461.5; // J/(kg K)
    const auto force =
        saturation_pressure(air.temperature) * (surface.as_fraction() - air.humidity.as_fraction());
    return film_mass_transfer(h, air) * force.in_pascals() /
           (vapour_gas_constant * air.temperature.in_kelvins());
}

} // namespace core::air
