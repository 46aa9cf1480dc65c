#include "core/drying/forecast.h"

#include "core/drying/anomalies.h"
#include "core/drying/piece_fit.h"
#include "core/drying/posterior.h"
#include "core/drying/scale_shift.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

using model::ForecastState;
using units::MassShare;

base::Interval<MassShare> interval(const Percentiles& p) {
    return {MassShare::fraction(p.p10), MassShare::fraction(p.p50), MassShare::fraction(p.p90)};
}

bool enough(const PreparedPiece& piece) {
    return piece.input.air.now_day > 0;
}

/// Nothing lost over four days or more, beyond what the scatter of weighings could hide.
bool not_drying(const CurveFit& fit) {
    const auto& points = fit.input.points;
    if (points.size() < 3 || fit.input.air.now_day < 4) {
        return false;
    }
    const double last = 0.5 * (points[points.size() - 1].grams + points[points.size() - 2].grams);
    const double hidden = std::max(0.004 * points.front().grams, 2 * fit.noise_g);
    return points.front().grams - last < hidden;
}

ForecastState state_of(const CurveFit& fit, const ReadyDays& ready, const Percentiles& loss,
                       double target) {
    if (loss.p50 >= target || (ready.p50 && *ready.p50 <= fit.input.air.now_day)) {
        return ForecastState::ready;
    }
    if (not_drying(fit)) {
        return ForecastState::not_drying;
    }
    return ready.p50 ? ForecastState::drying : ForecastState::not_reachable;
}

void add_ready(const PreparedPiece& piece, const ReadyDays& days, model::Forecast& out) {
    const auto instant = [&](const std::optional<double>& day) {
        return day ? std::optional(piece.instant_of(*day)) : std::nullopt;
    };
    if (days.p10 || days.p50 || days.p90) {
        out.ready = {instant(days.p10), instant(days.p50), instant(days.p90)};
    }
}

void add_band(const PreparedPiece& piece, const Posterior& posterior, int points,
              model::Forecast& out) {
    if (points < 2) {
        return;
    }
    const double now = piece.input.air.now_day;
    double end = posterior.band_end();
    if (posterior.ready().p90) {
        end = std::clamp(now + 1.2 * (*posterior.ready().p90 - now), 1.05 * now, end);
    }
    for (int i = 0; i < points; ++i) {
        const double day = end * i / (points - 1);
        const Percentiles p = posterior.loss_at(day);
        const auto share = [](double v) { return MassShare::fraction(std::clamp(v, 0.0, 1.0)); };
        out.curve.push_back({piece.instant_of(day), share(p.p10), share(p.p50), share(p.p90)});
    }
}

model::Forecast assemble(const ForecastRequest& request, const PreparedPiece& piece,
                         const PieceFit& fit) {
    model::Forecast out;
    const double target = std::clamp(request.target.as_fraction(), 0.0, 1.0);
    const Posterior posterior(fit.curve, target);
    out.as_of = piece.times.back();
    out.levels_off = interval(posterior.levelling_loss());
    if (!enough(piece)) {
        if (request.reference) {
            const double now = piece.input.points.back().grams;
            out.loss = MassShare::fraction(1 - now / request.reference->in_grams());
        } else {
            out.loss = MassShare::fraction(0);
        }
        return out;
    }
    const Percentiles loss = posterior.loss_at(piece.input.air.now_day);
    out.loss = MassShare::fraction(loss.p50);
    out.state = state_of(fit.curve, posterior.ready(), loss, target);
    if (out.state != ForecastState::not_drying) {
        add_ready(piece, posterior.ready(), out);
    }
    add_band(piece, posterior, request.band_points, out);
    out.findings = find_anomalies(piece, fit, posterior, out.state == ForecastState::ready);
    if (out.state == ForecastState::not_reachable) {
        out.findings.push_back(
            {.code = "target_above_levelling",
             .severity = model::Severity::caution,
             .values = {{"target", request.target}, {"levels_off", out.levels_off->best}},
             .at = out.as_of});
    }
    return out;
}

void add_shift(const ScaleShift& shift, units::Instant at, model::Forecast& out) {
    out.findings.push_back({.code = "scale_shift",
                            .severity = model::Severity::caution,
                            .values = {{"shift", units::Mass::grams(shift.grams)},
                                       {"pieces", static_cast<double>(shift.pieces.size())}},
                            .at = at});
}

/// Fits to look for a shift of the scale in: with all weighings in. A weighing set aside alone has
/// lost the voice that it needs here.
std::vector<PieceFit> witnesses(const std::vector<PreparedPiece>& pieces,
                                const std::vector<PieceFit>& fits) {
    std::vector<PieceFit> out = fits;
    for (std::size_t p = 0; pieces.size() >= 3 && p < pieces.size(); ++p) {
        if (!fits[p].curve.off.empty()) {
            FitOptions all_in;
            all_in.most_off = 0;
            out[p].curve = fit_curve(pieces[p].input, all_in);
        }
    }
    return out;
}

/// Most pieces that hang together slowing at the same time is the air, not the meat.
void blame_shared_air(std::vector<model::Forecast>& forecasts) {
    const auto stalled = [](const model::Finding& f) { return f.code == "rate_stalled"; };
    std::size_t drying = 0;
    std::vector<model::Finding*> found;
    for (model::Forecast& f : forecasts) {
        if (f.state == ForecastState::drying || f.state == ForecastState::not_reachable) {
            ++drying;
        }
        const auto it = std::find_if(f.findings.begin(), f.findings.end(), stalled);
        if (it != f.findings.end()) {
            found.push_back(&*it);
        }
    }
    if (found.size() < 3 || 10 * found.size() < 6 * drying) {
        return;
    }
    for (model::Finding* f : found) {
        if (std::get<std::string>(f->values.at("cause")) == "unclear") {
            f->values["cause"] = std::string("wet_air");
        }
        f->values["pieces"] = static_cast<double>(found.size());
    }
}

} // namespace

model::Forecast forecast(const ForecastRequest& request) {
    const auto piece = prepare(request);
    return piece ? assemble(request, *piece, fit_piece(*piece)) : model::Forecast{};
}

std::vector<model::Forecast> forecast_together(std::span<const ForecastRequest> requests) {
    std::vector<model::Forecast> out(requests.size());
    std::vector<std::size_t> whose;
    std::vector<PreparedPiece> pieces;
    std::vector<PieceFit> fits;
    for (std::size_t i = 0; i < requests.size(); ++i) {
        if (auto piece = prepare(requests[i])) {
            whose.push_back(i);
            fits.push_back(fit_piece(*piece));
            pieces.push_back(std::move(*piece));
        }
    }
    const auto shifts = find_scale_shifts(pieces, witnesses(pieces, fits));
    for (const ScaleShift& shift : shifts) {
        for (std::size_t k = 0; k < shift.pieces.size(); ++k) {
            const std::size_t p = shift.pieces[k];
            take_out(shift, shift.weighings[k], pieces[p]);
            fits[p] = fit_piece(pieces[p]);
        }
    }
    for (std::size_t p = 0; p < pieces.size(); ++p) {
        out[whose[p]] = assemble(requests[whose[p]], pieces[p], fits[p]);
    }
    for (const ScaleShift& shift : shifts) {
        for (std::size_t k = 0; k < shift.pieces.size(); ++k) {
            const std::size_t p = shift.pieces[k];
            add_shift(shift, pieces[p].times[shift.weighings[k]], out[whose[p]]);
        }
    }
    blame_shared_air(out);
    return out;
}

} // namespace core::drying
