#pragma once

#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"

#include <optional>

/// Water activity of a solution of common salt in water.
namespace core::doneness {

/// Molality of saturated NaCl at 25 C, mol/kg water (26.4 % by weight).
inline constexpr double saturated_molality = 6.144;
inline constexpr double molar_mass_salt = 0.0584428; ///< kg/mol
inline constexpr double molar_mass_water = 0.0180153;

/// Osmotic coefficient of NaCl at 25 C, 0 to 6.144 mol/kg, by Pitzer's equations with the
/// parameters of PHREEQC 3's pitzer.dat (B0 0.07534, B1 0.2769, C0 0.00148, A 0.3915).
double osmotic_coefficient(double molality);

/// ln aw = -2 phi m Mw. Within 0.001 of Robinson & Stokes' measurements to 6 mol/kg. Above
/// saturation the activity stays at the saturated 0.7522 (the rest of the salt is crystals);
/// negative molality counts as 0. Between 0 and 40 C it changes by less than 0.002.
units::WaterActivity salt_solution_activity(double molality);

/// mol salt per kg water from the masses' ratio; `salt_per_water` in kg/kg.
double molality_of(double salt_per_water);

/// The molality with this activity; nullopt outside 0.7522 to 1.
std::optional<double> molality_at(units::WaterActivity activity);

/// Salt in the water phase, salt / (salt + water), of a product with these shares of its weight
/// (FSRE Shelf-Stable training text). nullopt when there is neither.
std::optional<units::MassShare> water_phase_salt(units::MassShare salt, units::MassShare water);

} // namespace core::doneness
