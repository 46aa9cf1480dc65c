#pragma once

#include "core/air/moist_air.h"
#include "core/units/relative_humidity.h"

/// Evaporation from a surface through the air film on it (Chilton-Colburn analogy).
namespace core::air {

/// Heat transfer by the film. W/(m2 K): still to slow air 3 to 15; 5.1 without and 9.1 with
/// evaporation were found on a ham in a household fridge (Ryland 2006).
struct FilmHeatTransfer {
    double watts_per_m2_kelvin;
};

/// Mass transfer coefficient in m/s: h / (rho cp Le^(2/3)) of dry air at t and pressure,
/// Lewis number 0.87 (from memory).
double film_mass_transfer(FilmHeatTransfer h, const AirCondition& air);

/// Water leaving a surface of this water activity at air temperature, kg/(m2 s); negative when
/// the surface takes water up. The condition must be one that state_of accepts. The evaporative
/// cooling of the surface (about 1 C at 75 % RH) is not counted.
double evaporation_flux(FilmHeatTransfer h, const AirCondition& air, units::WaterActivity surface);

} // namespace core::air
