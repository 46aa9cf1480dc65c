#include "core/doneness/salt_solution.h"

#include "core/numeric/root.h"

#include <algorithm>
#include <cmath>

namespace core::doneness {

double osmotic_coefficient(double molality) {
    const double m = std::clamp(molality, 0.0, saturated_molality);
    // Pitzer 1973 for a 1-1 salt: b = 1.2, alpha = 2.
    const double root = std::sqrt(m);
    return 1 - 0.3915 * root / (1 + 1.2 * root) + m * (0.07534 + 0.2769 * std::exp(-2 * root)) +
           m * m * 0.00148;
}

units::WaterActivity salt_solution_activity(double molality) {
    const double m = std::clamp(molality, 0.0, saturated_molality);
    return units::WaterActivity::fraction(
        std::exp(-2 * osmotic_coefficient(m) * m * molar_mass_water));
}

double molality_of(double salt_per_water) {
    return salt_per_water / molar_mass_salt;
}

std::optional<double> molality_at(units::WaterActivity activity) {
    const auto root = numeric::find_root(
        [activity](double m) {
            return salt_solution_activity(m).as_fraction() - activity.as_fraction();
        },
        0.0, saturated_molality);
    return root ? std::optional(*root) : std::nullopt;
}

std::optional<units::MassShare> water_phase_salt(units::MassShare salt, units::MassShare water) {
    const double both = (salt + water).as_fraction();
    if (!(both > 0)) {
        return std::nullopt;
    }
    return units::MassShare::fraction(salt.as_fraction() / both);
}

} // namespace core::doneness
