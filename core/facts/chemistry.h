#pragma once

#include "core/units/mass_share.h"

/// Conversions that follow from atomic masses (IUPAC 2021 abridged: Na 22.990, K 39.098,
/// N 14.007, O 15.999, Cl 35.45). The law's own rounded factors (0.67, 0.73, 0.61) agree with
/// these to two digits.
namespace core::facts {

inline constexpr double atomic_na = 22.990;
inline constexpr double atomic_k = 39.098;
inline constexpr double atomic_n = 14.007;
inline constexpr double atomic_o = 15.999;
inline constexpr double atomic_cl = 35.45;

inline constexpr double molar_no2 = atomic_n + 2 * atomic_o;
inline constexpr double molar_no3 = atomic_n + 3 * atomic_o;

/// Ion per salt, by mass.
inline constexpr double no2_in_sodium_nitrite = molar_no2 / (atomic_na + molar_no2);
inline constexpr double no2_in_potassium_nitrite = molar_no2 / (atomic_k + molar_no2);
inline constexpr double no3_in_sodium_nitrate = molar_no3 / (atomic_na + molar_no3);
inline constexpr double no3_in_potassium_nitrate = molar_no3 / (atomic_k + molar_no3);

/// Salt (NaCl) per sodium, by mass: 2.5421. Food labels state one or the other.
inline constexpr double salt_per_sodium = (atomic_na + atomic_cl) / atomic_na;

[[nodiscard]] constexpr units::MassShare salt_from_sodium(units::MassShare sodium) {
    return sodium * salt_per_sodium;
}
/// NaNO2 that holds the same nitrite as `ion` of NO2.
[[nodiscard]] constexpr units::MassShare sodium_nitrite_from_ion(units::MassShare ion) {
    return ion / no2_in_sodium_nitrite;
}
/// NaNO3 that holds the same nitrate as `ion` of NO3.
[[nodiscard]] constexpr units::MassShare sodium_nitrate_from_ion(units::MassShare ion) {
    return ion / no3_in_sodium_nitrate;
}

} // namespace core::facts
