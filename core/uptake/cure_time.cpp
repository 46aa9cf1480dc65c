#include "core/uptake/cure_time.h"

#include "core/uptake/cure_checks.h"
#include "core/uptake/piece_uptake.h"

#include <algorithm>

namespace core::uptake {

namespace {

using base::Interval;
using units::Duration;
using units::MassShare;

constexpr double p90 = 1.2815515655446004;

/// The same cure at low, median and high diffusivity.
struct Clocks {
    CureClock slow;
    CureClock median;
    CureClock fast;

    explicit Clocks(const CureRequest& r)
        : slow(clock(r, -p90)), median(clock(r, 0)), fast(clock(r, p90)) {}
    static CureClock clock(const CureRequest& r, double quantile) {
        return {r.spells, {Duration::days(0), r.temperature}, r.thawed_meat, quantile};
    }
    /// p10, p50, p90 of the moment a path is done: the fast clock gives the 10th percentile.
    [[nodiscard]] std::optional<Interval<Duration>> time_at(std::optional<double> path) const {
        if (!path) {
            return std::nullopt;
        }
        const auto low = fast.time_at(*path);
        const auto best = median.time_at(*path);
        const auto high = slow.time_at(*path);
        if (!low || !best || !high) {
            return std::nullopt;
        }
        return Interval<Duration>{*low, *best, *high};
    }
    /// A share that grows with the path, at the moment `t`, by low, median, high diffusivity.
    template <class F>
    [[nodiscard]] auto at(Duration t, F share) const {
        return Interval<decltype(share(0.0))>{share(slow.path_m2(t)), share(median.path_m2(t)),
                                              share(fast.path_m2(t))};
    }
};

double outside_ratio(const CureRequest& request) {
    const double outside = request.outside_water ? request.outside_water->as_fraction()
                           : request.method == CureMethod::immersion ? 1.0
                                                                     : 0.03;
    return outside / raw_water_share(request.fat);
}

Interval<MassShare> in_lean(MassShare mean, const std::optional<MassShare>& fat) {
    const double f = fat ? fat->as_fraction() : 0.0;
    // Salt in fat tissue over salt in lean, by the content of ham slices: 0.34 (0.2 to 0.5).
    const auto lean = [&](double fat_over_lean) { return mean / (1 - f + fat_over_lean * f); };
    return {lean(0.5), lean(0.34), lean(0.2)};
}

constexpr int curve_steps = 60;

void fill_limited(const CureRequest& request, const LimitedSaltUptake& uptake, const Clocks& clocks,
                  CureEstimate& estimate) {
    const MassShare final_mean = request.salt / (1 + outside_ratio(request));
    estimate.final_mean = final_mean;
    constexpr double nearly_all = 0.95;
    const auto path_in =
        uptake.mean(0) < nearly_all ? uptake.path_at_mean(nearly_all) : std::optional(0.0);
    estimate.salt_in = clocks.time_at(path_in);
    estimate.even = clocks.time_at(uptake.path_at_centre(request.evenness));
    if (request.planned) {
        estimate.centre_after_planned =
            clocks.at(*request.planned, [&](double path) { return uptake.centre(path); });
    }
    if (!estimate.even) {
        return;
    }
    const Duration end = 1.2 * estimate.even->high;
    for (int i = 0; i <= curve_steps; ++i) {
        const Duration t = end * (static_cast<double>(i) / curve_steps);
        estimate.curve.push_back(
            {t, clocks.at(t, [&](double path) { return final_mean * uptake.mean(path); }),
             clocks.at(t, [&](double path) { return final_mean * uptake.centre(path); })});
    }
}

void fill_excess_curve(const ExcessSaltUptake& uptake, const Clocks& clocks, MassShare saturated,
                       CureEstimate& estimate) {
    const Duration out = estimate.salt_in->best; // a person takes it out once, at the median
    const Duration end = 1.2 * estimate.even->high;
    const auto point = [&](const CureClock& clock, Duration t) {
        const double salting = clock.path_m2(std::min(t, out));
        const double rest = clock.path_m2(std::max(t, out)) - clock.path_m2(out);
        const double centre =
            t <= out ? uptake.centre(salting) : uptake.rested_centre(salting, rest);
        return std::pair(saturated * uptake.mean(salting), saturated * centre);
    };
    for (int i = 0; i <= curve_steps; ++i) {
        const Duration t = end * (static_cast<double>(i) / curve_steps);
        const auto low = point(clocks.slow, t);
        const auto best = point(clocks.median, t);
        const auto high = point(clocks.fast, t);
        estimate.curve.push_back(
            {t, {low.first, best.first, high.first}, {low.second, best.second, high.second}});
    }
}

void fill_excess(const CureRequest& request, const ExcessSaltUptake& uptake, const Clocks& clocks,
                 CureEstimate& estimate) {
    const MassShare saturated = saturated_salt(request.fat);
    estimate.final_mean = request.salt;
    const auto salting = uptake.path_at_mean(request.salt / saturated);
    if (!salting) {
        return;
    }
    estimate.salt_in = clocks.time_at(salting);
    const auto rest = uptake.rest_until_even(*salting, request.evenness);
    estimate.even = clocks.time_at(rest ? std::optional(*salting + *rest) : std::nullopt);
    if (request.planned) {
        estimate.centre_after_planned = clocks.at(*request.planned, [&](double path) {
            return saturated / request.salt * uptake.centre(path);
        });
    }
    if (estimate.salt_in && estimate.even) {
        fill_excess_curve(uptake, clocks, saturated, estimate);
    }
}

} // namespace

CureEstimate estimate_cure(const CureRequest& request) {
    CureEstimate estimate;
    estimate.findings = invalid_parts(request);
    estimate.rules = rules_side_by_side(request.method,
                                        request.thickness > units::Length::millimetres(0)
                                            ? std::optional(request.thickness)
                                            : std::nullopt,
                                        request.weight);
    if (!estimate.findings.empty()) {
        return estimate;
    }
    const Clocks clocks(request);
    if (request.method == CureMethod::excess_salt) {
        fill_excess(request, ExcessSaltUptake(axes_of(request)), clocks, estimate);
    } else {
        fill_limited(request, LimitedSaltUptake(axes_of(request), outside_ratio(request)), clocks,
                     estimate);
    }
    estimate.final_in_lean = in_lean(estimate.final_mean, request.fat);
    auto remarks = remarks_on(request, estimate);
    estimate.findings.insert(estimate.findings.end(), std::make_move_iterator(remarks.begin()),
                             std::make_move_iterator(remarks.end()));
    return estimate;
}

} // namespace core::uptake
