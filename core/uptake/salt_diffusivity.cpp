#include "core/uptake/salt_diffusivity.h"

#include <algorithm>
#include <cmath>

namespace core::uptake {

namespace {

// A 95 % range of a log-normal is 2 x 1.96 standard deviations of the logarithm.
double log_sd(double low, double high) {
    return std::log(high / low) / (2 * 1.959964);
}

} // namespace

units::Diffusivity salt_diffusivity(units::Temperature t, bool thawed, double quantile) {
    constexpr double at_5c = 2.5e-10;
    constexpr double activation = 25000; // J/mol
    constexpr double thawed_factor = 1.3;
    constexpr double gas_constant = 8.314462618; // J/(mol K), CODATA 2018
    const double reference = units::Temperature::celsius(5).in_kelvins();
    const double warmth = (1 / reference - 1 / t.in_kelvins()) / gas_constant;

    const double sd_d = log_sd(1.2e-10, 6e-10);
    // ln D is linear in Ea, so its spread is taken as normal with Ea's own relative spread.
    const double sd_activation = activation * log_sd(15, 40) * warmth;
    const double sd_thawed = thawed ? log_sd(1.0, 1.6) : 0.0;
    const double sd =
        std::sqrt(sd_d * sd_d + sd_activation * sd_activation + sd_thawed * sd_thawed);
    const double median = at_5c * std::exp(activation * warmth) * (thawed ? thawed_factor : 1.0);
    return units::Diffusivity::m2_per_second(median * std::exp(quantile * sd));
}

base::Interval<units::Diffusivity> salt_diffusivity_range(units::Temperature t, bool thawed) {
    constexpr double p90 = 1.2815515655446004;
    return {salt_diffusivity(t, thawed, -p90), salt_diffusivity(t, thawed),
            salt_diffusivity(t, thawed, p90)};
}

CureClock::CureClock(std::vector<Spell> spells, const Spell& after, bool thawed, double quantile)
    : spells_(std::move(spells)), after_(after), thawed_(thawed), quantile_(quantile) {}

double CureClock::rate(const Spell& spell) const {
    return spell.paused()
               ? 0.0
               : salt_diffusivity(spell.temperature, thawed_, quantile_).in_m2_per_second();
}

double CureClock::path_m2(units::Duration since_start) const {
    double left = since_start.in_seconds();
    double path = 0;
    for (const auto& spell : spells_) {
        const double lasts = std::clamp(spell.lasts.in_seconds(), 0.0, std::max(left, 0.0));
        path += rate(spell) * lasts;
        left -= lasts;
    }
    return path + rate(after_) * std::max(left, 0.0);
}

std::optional<units::Duration> CureClock::time_at(double path_m2) const {
    if (path_m2 <= 0) {
        return units::Duration::seconds(0);
    }
    double elapsed = 0;
    double left = path_m2;
    for (const auto& spell : spells_) {
        const double lasts = std::max(spell.lasts.in_seconds(), 0.0);
        const double covers = rate(spell) * lasts;
        if (covers >= left) {
            return units::Duration::seconds(elapsed + left / rate(spell));
        }
        left -= covers;
        elapsed += lasts;
    }
    const double last = rate(after_);
    if (!(last > 0)) {
        return std::nullopt;
    }
    return units::Duration::seconds(elapsed + left / last);
}

} // namespace core::uptake
