#include "core/doneness/exposure.h"

#include <cmath>
#include <numbers>

namespace core::doneness {

namespace {

/// Rosso's cardinal model with optimum, n = 2, zero outside (low, high).
double cardinal(double x, double low, double best, double high) {
    if (!(x > low && x < high)) {
        return 0.0;
    }
    const double over = (x - high) * (x - low) * (x - low);
    const double under =
        (best - low) * ((best - low) * (x - best) - (best - high) * (best + low - 2 * x));
    return over / under;
}

struct Rate {
    double relative; ///< to the organism's best in the model
    double log10_per_hour;
};

/// The rate where a model is known for the organism.
std::optional<Rate> rate_of(const std::string& id, const WarmSpell& spell) {
    const auto wettest = spell.activity ? spell.activity->high : units::WaterActivity::fraction(1);
    if (id == "staphylococcus_aureus") {
        // At and above the optimum the water is as good as it gets (the model falls to 0 at 1).
        const auto activity = std::min(wettest, units::WaterActivity::fraction(0.994));
        const double relative = staphylococcus_relative_rate(spell.temperature, activity);
        return Rate{relative, relative * staphylococcus_best_rate_per_hour / std::numbers::ln10};
    }
    if (id == "listeria_monocytogenes") {
        // 0.05 to 0.56 log10 a day were printed for 5 C in foods; the upper end is taken.
        constexpr double log10_per_day_at_5c = 0.56;
        const double at_best = listeria_rate_relative_to_5c(units::Temperature::celsius(37));
        const double relative = listeria_rate_relative_to_5c(spell.temperature);
        return Rate{std::min(relative / at_best, 1.0), relative * log10_per_day_at_5c / 24};
    }
    return std::nullopt;
}

std::optional<base::Source> rate_source(const std::string& id) {
    if (id == "staphylococcus_aureus") {
        return base::Source{"Medvedova 2019, doi 10.4081/ijfs.2019.8287", "2019",
                            base::Sureness::verified_second_hand};
    }
    if (id == "listeria_monocytogenes") {
        return base::Source{"FDA/FSIS conversion table of growth rates (appendix 8)", "",
                            base::Sureness::derived};
    }
    return std::nullopt;
}

constexpr units::Duration longest_for_growth = units::Duration::hours(48);

bool may_grow(const facts::GrowthRange& range, const WarmSpell& spell) {
    const bool warm = (!range.lowest || spell.temperature >= *range.lowest) &&
                      (!range.highest || spell.temperature <= *range.highest);
    const bool wet =
        !range.lowest_activity || !spell.activity || spell.activity->high > *range.lowest_activity;
    return warm && wet;
}

} // namespace

double staphylococcus_relative_rate(units::Temperature t, units::WaterActivity activity) {
    return cardinal(t.in_celsius(), 7.7, 40.6, 46.7) *
           cardinal(activity.as_fraction(), 0.808, 0.994, 1.0);
}

double listeria_rate_relative_to_5c(units::Temperature t) {
    const double c = t.in_celsius();
    if (c < -1.18 || c > 45) {
        return 0.0;
    }
    const double root = (c + 1.18) / (5 + 1.18);
    return root * root;
}

std::vector<OrganismExposure> exposure_of(const std::vector<WarmSpell>& spells,
                                          const facts::Hurdles& hurdles) {
    std::vector<OrganismExposure> exposures;
    for (const auto& range : hurdles.organisms) {
        OrganismExposure exposure{.id = range.id, .name = range.name};
        exposure.range_source = range.source;
        exposure.rate_source = rate_source(range.id);
        double weighted = 0;
        double growth = 0;
        for (const auto& spell : spells) {
            if (!may_grow(range, spell)) {
                continue;
            }
            exposure.in_range += spell.lasts;
            if (const auto rate = rate_of(range.id, spell)) {
                weighted += rate->relative * spell.lasts.in_hours();
                growth += rate->log10_per_hour * spell.lasts.in_hours();
            }
        }
        if (exposure.rate_source && exposure.in_range > units::Duration::seconds(0)) {
            exposure.relative_rate = weighted / exposure.in_range.in_hours();
            if (exposure.in_range <= longest_for_growth) {
                exposure.log10_possible = growth;
            }
        }
        exposures.push_back(std::move(exposure));
    }
    return exposures;
}

} // namespace core::doneness
