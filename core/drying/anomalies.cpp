#include "core/drying/anomalies.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

namespace core::drying {

namespace {

using model::Finding;
using model::Findings;
using model::Severity;
using units::Mass;
using units::MassShare;

bool is_off(const CurveFit& fit, std::size_t i) {
    return std::any_of(fit.off.begin(), fit.off.end(),
                       [&](const OffPoint& o) { return o.index == i; });
}

void off_curve(const PreparedPiece& piece, const CurveFit& fit, Findings& out) {
    for (const OffPoint& o : fit.off) {
        const double grams = fit.input.points[o.index].grams;
        out.push_back({.code = "weighing_off_curve",
                       .severity = Severity::caution,
                       .values = {{"weight", Mass::grams(grams)},
                                  {"expected", Mass::grams(o.expected_grams)},
                                  {"off_by", Mass::grams(grams - o.expected_grams)}},
                       .at = piece.times[o.index]});
    }
}

/// A step up that was kept: weighing `i` lies clearly above the two before it (after one that was
/// too low, coming back is no gain) and the next has not lost the half of it again.
bool steps_up_for_good(const std::vector<SeriesPoint>& points, std::size_t i, double least) {
    if (i == 0 || i + 1 >= points.size()) {
        return false;
    }
    const double before = points[i - 1].grams;
    const double highest = i >= 2 ? std::max(before, points[i - 2].grams) : before;
    return points[i].grams - highest > least &&
           points[i + 1].grams - before > (points[i].grams - before) / 2;
}

/// Weight put on between two weighings that are otherwise believed, or put on and kept (the fit
/// may then have set the weighings before it aside). Half a percent or four times the scatter:
/// water taken up, a coat, a casing not entered.
void gains(const PreparedPiece& piece, const CurveFit& fit, Findings& out) {
    const auto& points = fit.input.points;
    // A gain that stays widens the scatter it would be judged by: a usual scatter's bound.
    const double scatter = std::min(fit.noise_g, 5.0);
    std::optional<std::size_t> believed;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool on_curve = !is_off(fit, i);
        const auto least = [&](double from) { return std::max({6.0, 4 * scatter, 0.004 * from}); };
        const auto gained_since = [&](std::size_t from) {
            out.push_back({.code = "weight_gained",
                           .severity = Severity::caution,
                           .values = {{"gain", Mass::grams(points[i].grams - points[from].grams)},
                                      {"from", Mass::grams(points[from].grams)}},
                           .at = piece.times[i]});
        };
        if (i > 0 && steps_up_for_good(points, i, least(points[i - 1].grams))) {
            gained_since(i - 1);
        } else if (on_curve && believed &&
                   points[i].grams - points[*believed].grams > least(points[*believed].grams)) {
            gained_since(*believed);
        }
        if (on_curve) {
            believed = i;
        }
    }
}

/// 3 % a day or more over the first four to ten days in a piece of 40 mm or more. Common practice,
/// no source: 0.6 to 1.2 % a day is usual in the first weeks, 3 % a day is called too fast.
void too_fast(const PreparedPiece& piece, const CurveFit& fit, Findings& out) {
    constexpr double limit_per_day = 0.03;
    constexpr double thin_m = 0.02; // from face to middle
    if (fit.input.prior.body.depth_m < thin_m) {
        return;
    }
    const double reference = fit.reference_of(fit.input.prior.hung_grams(fit.mode));
    const auto& points = fit.input.points;
    for (std::size_t i = 1; i < points.size() && points[i].day <= 10; ++i) {
        const double loss = (points[0].grams - points[i].grams) / reference;
        if (points[i].day >= 4 && !is_off(fit, i) && !is_off(fit, 0) &&
            loss > limit_per_day * points[i].day) {
            out.push_back({.code = "surface_drying_too_fast",
                           .severity = Severity::caution,
                           .values = {{"loss", MassShare::fraction(loss)},
                                      {"over", units::Duration::days(points[i].day)}},
                           .at = piece.times[i]});
            return;
        }
    }
}

/// Mean logged humidity (share) over part of the path; absent without a log.
std::optional<double> mean_humidity(const AirPath& air, double from, double to) {
    if (!air.known) {
        return std::nullopt;
    }
    double t = 0, sum = 0, days = 0;
    for (const AirStep& s : air.steps) {
        const double overlap = std::min(t + s.days, to) - std::max(t, from);
        if (overlap > 0) {
            sum += overlap * s.humidity;
            days += overlap;
        }
        t += s.days;
        if (t > to) {
            break;
        }
    }
    return days > 0 ? std::optional(sum / days) : std::nullopt;
}

std::string stall_cause(const CurveFit& fit, const Posterior& posterior, double from, double now) {
    const double loss = posterior.loss_at(now).p50;
    const double levelling = posterior.levelling_loss().p50;
    if (loss > 0.9 * levelling) {
        return "levelling_off";
    }
    const auto lately = mean_humidity(fit.input.air, from, now);
    const auto before = mean_humidity(fit.input.air, 0, from);
    constexpr double wet = 0.85;
    constexpr double rise = 0.04;
    if (lately && (*lately > wet || (before && *lately > *before + rise))) {
        return "wet_air";
    }
    const auto& points = fit.input.points;
    const double reference = fit.reference_of(fit.input.prior.hung_grams(fit.mode));
    for (std::size_t i = 1; i < points.size() && points[i].day <= 10; ++i) {
        if (points[i].day >= 3 &&
            points[0].grams - points[i].grams > 0.018 * points[i].day * reference) {
            return "dry_rim";
        }
    }
    return "unclear";
}

/// The last three weighings over a week or more lost less than 15 % of the mean pace so far, and
/// less than 0.1 % a day (common practice, no source).
void stall(const PreparedPiece& piece, const CurveFit& fit, const Posterior& posterior,
           Findings& out) {
    const auto& points = fit.input.points;
    std::vector<std::size_t> good;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (!is_off(fit, i)) {
            good.push_back(i);
        }
    }
    if (good.size() < 5) {
        return;
    }
    const SeriesPoint& last = points[good.back()];
    const SeriesPoint& first = points[good.front()];
    std::size_t k = good.size() - 3;
    while (k > 1 && last.day - points[good[k]].day < 7) {
        --k;
    }
    const SeriesPoint& from = points[good[k]];
    if (last.day - from.day < 7 || from.day <= first.day) {
        return;
    }
    const double reference = fit.reference_of(fit.input.prior.hung_grams(fit.mode));
    const double rate = (from.grams - last.grams) / reference / (last.day - from.day);
    const double pace = (first.grams - from.grams) / reference / (from.day - first.day);
    if (rate > 0.001 || rate > 0.15 * pace) {
        return;
    }
    out.push_back({.code = "rate_stalled",
                   .severity = Severity::note,
                   .values = {{"cause", stall_cause(fit, posterior, from.day, last.day)},
                              {"rate_per_day", MassShare::fraction(rate)},
                              {"mean_rate_per_day", MassShare::fraction(pace)}},
                   .at = piece.times[good.back()]});
}

void contradicted(const PreparedPiece& piece, const PieceFit& fit, Findings& out) {
    if (!fit.humidity_contradiction) {
        return;
    }
    const auto logged = mean_humidity(fit.curve.input.air, 0, fit.curve.input.air.now_day);
    if (logged) {
        out.push_back(
            {.code = "humidity_contradicted",
             .severity = Severity::caution,
             .values = {{"logged", units::RelativeHumidity::fraction(*logged)},
                        {"implied", units::RelativeHumidity::fraction(std::clamp(
                                        *logged + *fit.humidity_contradiction, 0.0, 1.0))}},
             .at = piece.times.back()});
    }
}

} // namespace

model::Findings find_anomalies(const PreparedPiece& piece, const PieceFit& fit,
                               const Posterior& posterior, bool ready) {
    Findings out;
    off_curve(piece, fit.curve, out);
    gains(piece, fit.curve, out);
    too_fast(piece, fit.curve, out);
    if (!ready) {
        stall(piece, fit.curve, posterior, out);
    }
    contradicted(piece, fit, out);
    return out;
}

} // namespace core::drying
