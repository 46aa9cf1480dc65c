#include "core/facts/ethanol.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::facts {
namespace {

// Council Directive 76/766/EEC annex, coefficients A1 to A12 of the 20 C part. The first five
// were read in the text; the rest are from memory and checked by the published density of pure
// ethanol (789.24 kg/m3) and the proof-spirit strength (57.15 % vol is 49.28 % by mass).
constexpr std::array<double, 12> coefficients = {
    9.982012300e2, -1.929769495e2, 3.891238958e2, -1.668103923e3, 1.352215441e4, -8.829278388e4,
    3.062874042e5, -6.138381234e5, 7.470172998e5, -5.478461354e5, 2.234460334e5, -3.903285426e4};

double density_at(double mass_fraction) {
    double sum = 0;
    for (auto a = coefficients.rbegin(); a != coefficients.rend(); ++a) {
        sum = sum * mass_fraction + *a;
    }
    return sum;
}

double volume_fraction_at(double mass_fraction) {
    return mass_fraction * density_at(mass_fraction) / density_at(1.0);
}

/// Bisection: the strength grows with the mass fraction, and 60 halvings reach the last bit.
double mass_fraction_of(double volume_fraction) {
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; ++i) {
        const double middle = (low + high) / 2;
        (volume_fraction_at(middle) < volume_fraction ? low : high) = middle;
    }
    return (low + high) / 2;
}

} // namespace

units::Density ethanol_density_by_mass(units::MassShare ethanol) {
    return units::Density::kilograms_per_cubic_metre(
        density_at(std::clamp(ethanol.as_fraction(), 0.0, 1.0)));
}

units::MassShare ethanol_mass_share(units::AlcoholByVolume abv) {
    return units::MassShare::fraction(mass_fraction_of(std::clamp(abv.as_fraction(), 0.0, 1.0)));
}

units::Density ethanol_density(units::AlcoholByVolume abv) {
    return ethanol_density_by_mass(ethanol_mass_share(abv));
}

units::AlcoholByVolume alcohol_by_volume(units::MassShare ethanol) {
    return units::AlcoholByVolume::fraction(
        volume_fraction_at(std::clamp(ethanol.as_fraction(), 0.0, 1.0)));
}

} // namespace core::facts
