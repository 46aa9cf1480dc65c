#include "core/drying/piece_fit.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

/// The scale's step: as told, else the coarsest usual step that all weighings are multiples of.
double scale_step_of(const std::vector<NetWeight>& weighings) {
    double told = 0;
    for (const NetWeight& w : weighings) {
        if (w.scale_step) {
            told = std::max(told, w.scale_step->in_grams());
        }
    }
    if (told > 0) {
        return told;
    }
    for (const double step : {10.0, 5.0, 1.0, 0.5, 0.1}) {
        if (std::all_of(weighings.begin(), weighings.end(), [&](const NetWeight& w) {
                return std::abs(std::remainder(w.net.in_grams(), step)) < 1e-3 * step;
            })) {
            return step;
        }
    }
    return 0.01;
}

/// A second fit must be this much likelier (natural logarithm) to be believed over the first.
constexpr double clear_evidence = 3.0;
constexpr double doubtful_score = 1.0;
constexpr double free_humidity_sd = 0.12;
constexpr double least_contradiction = 0.05;

void try_freer_humidity(const PreparedPiece& piece, PieceFit& fit) {
    const FitInput& in = fit.curve.input;
    if (!in.air.known || in.points.size() < 5 ||
        std::abs(fit.curve.mode[humidity_offset]) < doubtful_score) {
        return;
    }
    FitInput freer = piece.input;
    freer.start = in.start;
    freer.prior.sd[humidity_offset] = free_humidity_sd;
    CurveFit other = fit_curve(std::move(freer));
    const double offset = other.mode[humidity_offset] * free_humidity_sd;
    // Fewer weighings set aside counts as evidence too: compare like with like only.
    if (other.off.size() == fit.curve.off.size() &&
        other.log_evidence > fit.curve.log_evidence + clear_evidence &&
        std::abs(offset) > least_contradiction) {
        fit.curve = std::move(other);
        fit.humidity_contradiction = offset;
    }
}

} // namespace

std::optional<PreparedPiece> prepare(const ForecastRequest& request) {
    std::vector<NetWeight> used;
    for (const NetWeight& w : request.weighings) {
        if (w.net.is_finite() && w.net.in_grams() > 0) {
            used.push_back(w);
        }
    }
    if (used.empty()) {
        return std::nullopt;
    }
    std::stable_sort(used.begin(), used.end(),
                     [](const NetWeight& a, const NetWeight& b) { return a.at < b.at; });
    PreparedPiece p;
    p.start = used.front().at;
    std::vector<SeriesPoint> points;
    for (const NetWeight& w : used) {
        p.times.push_back(w.at);
        points.push_back({(w.at - p.start).in_days(), w.net.in_grams()});
    }
    const double now = points.back().day;
    const double first = points.front().grams;
    const double horizon = std::clamp(8 * now, 900.0, 4000.0);
    AirPath air = make_air_path(request.air, p.start, used.back().at, std::max(horizon, now + 400),
                                request.air_ahead ? &*request.air_ahead : nullptr);
    Prior prior =
        make_prior(request.traits, first, air.known, request.learnt ? &*request.learnt : nullptr);
    const bool known = air.known;
    p.input = FitInput{.prior = prior,
                       .air = std::move(air),
                       .discrepancy = Discrepancy::usual(known, now),
                       .points = std::move(points),
                       .scale_step_g = scale_step_of(used)};
    if (request.reference && request.reference->in_grams() > 0) {
        const double green = request.reference->in_grams();
        // A first weighing that agrees with the reference is that weighing again.
        const double same = std::max(8.0, 0.006 * green);
        if (first > green - same) {
            p.input.prior.mean[hung_weight] = green;
            p.input.prior.sd[hung_weight] = 0.001 * green;
        } else {
            p.input.green_grams = green;
            p.input.start = StartKind::cured;
        }
    }
    return p;
}

PieceFit fit_piece(const PreparedPiece& piece) {
    PieceFit fit{.curve = fit_curve(piece.input)};
    if (piece.input.start == StartKind::cured) {
        FitInput dried = piece.input;
        dried.start = StartKind::dried;
        CurveFit other = fit_curve(std::move(dried));
        // Salting and resting take 2 to 5 % (published), seldom much more: a larger loss was
        // drying. Between them the shape of the curve decides.
        const double lost = 1 - piece.input.points.front().grams / *piece.input.green_grams;
        const double lean = (lost - 0.05) / 0.01;
        if (other.log_evidence + lean > fit.curve.log_evidence) {
            fit.curve = std::move(other);
        }
    }
    try_freer_humidity(piece, fit);
    return fit;
}

} // namespace core::drying
