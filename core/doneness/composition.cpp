#include "core/doneness/composition.h"

#include "core/doneness/fat_split.h"
#include "core/doneness/water_activity.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace core::doneness {

namespace {

using base::Interval;
using units::MassShare;
using units::WaterActivity;

/// Every uncertain part, in one order.
enum Part { lean_water, fat, fat_water, fat_salt, dose_uptake, cure_loss, isotherm, part_count };
using Parts = std::array<double, part_count>;

struct Figures {
    double water;         ///< of the piece
    double lean_moisture; ///< of the lean
    double salt;          ///< of the piece
    double phase_salt;
    double activity;
};

struct Balance {
    double net = 0;   ///< grams
    double start = 0; ///< grams
    bool start_estimated = false;
    double start_from_hung = 0; ///< grams, when estimated
    std::optional<double> dose;
    std::optional<double> measured_salt;
    std::optional<double> measured_water;

    /// nullopt when the solids leave no water in the lean.
    [[nodiscard]] std::optional<Figures> at(const Parts& parts) const {
        const double whole = start_estimated ? start_from_hung / (1 - parts[cure_loss]) : start;
        const double f = parts[fat];
        const double lean_solids = whole * (1 - f) * (1 - parts[lean_water]);
        const double fat_tissue = whole * f; // gives up no water worth counting
        const double salt = measured_salt ? *measured_salt * net
                            : dose        ? *dose * whole * parts[dose_uptake]
                                          : 0.0;
        const double salt_in_lean = salt * (1 - f) / (1 - f + parts[fat_salt] * f);
        const double salt_in_fat = salt - salt_in_lean;
        double water_in_lean = net - lean_solids - fat_tissue - salt_in_lean - salt_in_fat;
        if (measured_water) {
            water_in_lean = *measured_water * net - fat_tissue * parts[fat_water];
        }
        if (!(water_in_lean > 0) || !(lean_solids > 0)) {
            return std::nullopt;
        }
        Figures figures{};
        figures.water = (water_in_lean + fat_tissue * parts[fat_water]) / net;
        figures.lean_moisture = water_in_lean / (water_in_lean + lean_solids + salt_in_lean);
        figures.salt = salt / net;
        figures.phase_salt = salt_in_lean / (salt_in_lean + water_in_lean);
        figures.activity =
            estimated_activity({water_in_lean, salt_in_lean, lean_solids}, parts[isotherm])
                .as_fraction();
        return figures;
    }
};

Interval<double> around(const Figures& best,
                        const std::array<std::array<Figures, 2>, part_count>& moved,
                        double Figures::*figure) {
    double up = 0;
    double down = 0;
    for (const auto& pair : moved) {
        const double a = pair[0].*figure - best.*figure;
        const double b = pair[1].*figure - best.*figure;
        const double rise = std::max({a, b, 0.0});
        const double fall = std::min({a, b, 0.0});
        up += rise * rise;
        down += fall * fall;
    }
    return {best.*figure - std::sqrt(down), best.*figure, best.*figure + std::sqrt(up)};
}

template <class Q>
Interval<Q> as(Interval<double> v) {
    const auto limited = [](double x) { return Q::fraction(std::clamp(x, 0.0, 1.0)); };
    return {limited(v.low), limited(v.best), limited(v.high)};
}

constexpr double p90 = 1.2815515655446004;

std::array<Interval<double>, part_count> ranges_of(const EvidenceRequest& request) {
    auto fat_range = fat_split::unknown_fat;
    if (request.fat) {
        // A stated fat share is an eye's estimate: a fifth of itself either way, at least 2 points.
        const double f = request.fat->as_fraction();
        const double give = std::max(0.02, 0.2 * f);
        fat_range = {std::max(f - give, 0.0), f, std::min(f + give, 0.95)};
    }
    auto uptake = fat_split::dose_taken_up;
    if (request.excess_salt) {
        uptake = {0.3, 0.6, 0.95}; // the amount put on says little when most is brushed off
    }
    return {fat_split::lean_water,           fat_range, fat_split::water,
            fat_split::salt_over_lean,       uptake,    fat_split::loss_in_cure,
            Interval<double>{-p90, 0.0, p90}};
}

std::optional<Balance> balance_of(const EvidenceRequest& request) {
    const auto start = start_weight_of(request.references);
    if (!start || request.weights.empty()) {
        return std::nullopt;
    }
    Balance balance;
    balance.net = request.weights.back().net.in_grams();
    balance.start = start->mass.in_grams();
    balance.start_estimated = start->estimated;
    balance.start_from_hung = start->mass.in_grams() * (1 - fat_split::loss_in_cure.best);
    if (request.salt_dose) {
        balance.dose = request.salt_dose->as_fraction();
    }
    if (request.measured.salt) {
        balance.measured_salt = request.measured.salt->as_fraction();
    }
    if (request.measured.moisture) {
        balance.measured_water = request.measured.moisture->as_fraction();
    }
    return balance.net > 0 && balance.start > 0 ? std::optional(balance) : std::nullopt;
}

} // namespace

std::optional<StartWeight> start_weight_of(const ReferenceWeights& references) {
    if (references.trimmed) {
        return StartWeight{*references.trimmed, false};
    }
    if (references.raw) {
        return StartWeight{*references.raw, false};
    }
    const auto& later = references.cured ? references.cured : references.hung;
    if (!later) {
        return std::nullopt;
    }
    return StartWeight{*later / (1 - fat_split::loss_in_cure.best), true};
}

std::optional<Composition> composition_of(const EvidenceRequest& request) {
    const auto balance = balance_of(request);
    if (!balance) {
        return std::nullopt;
    }
    const auto ranges = ranges_of(request);
    Parts best{};
    for (std::size_t i = 0; i < part_count; ++i) {
        best[i] = ranges[i].best;
    }
    const auto middle = balance->at(best);
    if (!middle) {
        return std::nullopt;
    }
    std::array<std::array<Figures, 2>, part_count> moved{};
    for (std::size_t i = 0; i < part_count; ++i) {
        Parts low = best;
        Parts high = best;
        low[i] = ranges[i].low;
        high[i] = ranges[i].high;
        // A move that leaves no water is beyond what the weights allow; the middle stands in.
        moved[i] = {balance->at(low).value_or(*middle), balance->at(high).value_or(*middle)};
    }
    Composition composition{.water = as<MassShare>(around(*middle, moved, &Figures::water)),
                            .lean_moisture =
                                as<MassShare>(around(*middle, moved, &Figures::lean_moisture))};
    composition.start_weight_estimated = balance->start_estimated;
    if (balance->dose || balance->measured_salt) {
        composition.salt = as<MassShare>(around(*middle, moved, &Figures::salt));
        composition.water_phase_salt = as<MassShare>(around(*middle, moved, &Figures::phase_salt));
        composition.water_activity = as<WaterActivity>(around(*middle, moved, &Figures::activity));
    }
    return composition;
}

} // namespace core::doneness
