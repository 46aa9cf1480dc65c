#include "core/doneness/water_activity.h"

#include "core/doneness/fat_split.h"
#include "core/doneness/salt_solution.h"

#include <cmath>

namespace core::doneness {

units::WaterActivity estimated_activity(const LeanPhase& lean, double isotherm_quantile) {
    constexpr double median = 0.035;
    constexpr double exponent = 1.575;
    const double log_sd = std::log(0.06 / 0.02) / (2 * 1.959964); // a 95 % range of 0.02 to 0.06
    const double a = median * std::exp(isotherm_quantile * log_sd);
    const double moisture = lean.water / lean.solids;
    const auto solution = salt_solution_activity(molality_of(lean.salt / lean.water));
    return solution * std::exp(-a * std::pow(moisture, -exponent));
}

std::optional<base::Interval<units::WaterActivity>>
activity_of_product(units::MassShare salt, units::MassShare water,
                    std::optional<units::MassShare> fat) {
    const double f = fat ? fat->as_fraction() : 0.0;
    const double lean = 1 - f;
    const double salt_in_lean =
        salt.as_fraction() * lean / (lean + fat_split::salt_over_lean.best * f);
    const double water_in_lean = water.as_fraction() - fat_split::water.best * f;
    const double solids = lean - salt_in_lean - water_in_lean;
    if (!(water_in_lean > 0) || !(solids > 0) || !(salt_in_lean >= 0)) {
        return std::nullopt;
    }
    const LeanPhase phase{water_in_lean, salt_in_lean, solids};
    constexpr double p90 = 1.2815515655446004;
    return base::Interval<units::WaterActivity>{
        estimated_activity(phase, p90), estimated_activity(phase), estimated_activity(phase, -p90)};
}

} // namespace core::doneness
