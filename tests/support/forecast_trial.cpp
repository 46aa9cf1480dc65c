#include "tests/support/forecast_trial.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace tests::support {

namespace {

using core::units::Duration;
using core::units::Instant;

core::model::Form form_of(VirtualForm form) {
    switch (form) {
    case VirtualForm::slab:
        return core::model::Form::slab;
    case VirtualForm::cylinder:
        return core::model::Form::cylinder;
    case VirtualForm::round:
        return core::model::Form::round;
    }
    return core::model::Form::slab;
}

double percentile(std::vector<double> values, double p) {
    if (values.empty()) {
        return std::nan("");
    }
    std::sort(values.begin(), values.end());
    const auto i = static_cast<std::size_t>(p * static_cast<double>(values.size()));
    return values[std::min(i, values.size() - 1)];
}

double straight_line(const core::drying::ForecastRequest& r) {
    const auto& a = r.weighings[r.weighings.size() - 2];
    const auto& b = r.weighings.back();
    const double rate = (a.net.in_grams() - b.net.in_grams()) / (b.at - a.at).in_days();
    const double left =
        b.net.in_grams() - r.weighings.front().net.in_grams() * (1 - r.target.as_fraction());
    return rate > 0 ? (b.at - hung_at()).in_days() + left / rate : 1e9;
}

} // namespace

Instant hung_at() {
    return Instant::from_unix_seconds(1'767'600'000);
}

std::optional<double> day_of(const std::optional<Instant>& at) {
    return at ? std::optional((*at - hung_at()).in_days()) : std::nullopt;
}

std::optional<core::drying::ForecastRequest>
request_for(const VirtualPiece& piece, const TrialOptions& options, std::size_t* mistaken) {
    const VirtualPieceSpec& spec = piece.spec;
    core::drying::ForecastRequest r;
    r.traits.form = form_of(spec.form);
    r.traits.thickness = core::units::Length::metres(spec.thickness_m);
    if (options.with_fat) {
        r.traits.fat = core::units::MassShare::fraction(spec.fat_share);
    }
    r.target = core::units::MassShare::fraction(spec.target_loss);
    r.band_points = 0;
    double last = 0;
    for (const VirtualWeighing& w : piece.weighings) {
        if (w.day <= options.fraction * piece.ready_day) {
            r.weighings.push_back(
                {hung_at() + Duration::days(w.day), core::units::Mass::grams(w.grams), {}});
            last = w.day;
        }
    }
    if (r.weighings.size() < 2) {
        return std::nullopt;
    }
    if (options.mistake_g != 0 && r.weighings.size() > 2) {
        const auto bits = static_cast<std::size_t>(spec.hang_weight_g * 1000);
        const std::size_t i = 1 + bits % (r.weighings.size() - 2);
        r.weighings[i].net +=
            core::units::Mass::grams(bits % 2 ? options.mistake_g : -options.mistake_g);
        if (mistaken != nullptr) {
            *mistaken = i;
        }
    }
    if (options.with_log) {
        for (int d = 0; d <= static_cast<int>(last); ++d) {
            const auto i = static_cast<std::size_t>(d);
            r.air.push_back({hung_at() + Duration::days(d + 0.5),
                             core::units::Temperature::celsius(spec.weather.temp_c[i]),
                             core::units::RelativeHumidity::percent(spec.weather.rh_percent[i])});
        }
    }
    return r;
}

TrialResult run_trial(const std::vector<VirtualPiece>& pieces, const TrialOptions& options) {
    constexpr double worst = 9;
    TrialResult out;
    std::vector<double> errors, lines, signs, widths;
    int inside = 0, early = 0, late = 0;
    for (const VirtualPiece& piece : pieces) {
        const auto request = request_for(piece, options);
        if (!request) {
            continue;
        }
        ++out.pieces;
        const auto f = core::drying::forecast(*request);
        const double truth = piece.ready_day;
        const auto ready = f.ready.value_or(core::model::ReadyDate{});
        const auto p10 = day_of(ready.p10), p50 = day_of(ready.p50), p90 = day_of(ready.p90);
        if (p50) {
            errors.push_back(std::abs(*p50 - truth) / truth);
            signs.push_back((*p50 - truth) / truth);
        } else {
            errors.push_back(worst);
            ++out.without_date;
        }
        if (!p10 || *p10 > truth) {
            ++early;
        } else if (p90 && *p90 < truth) {
            ++late;
        } else {
            ++inside;
        }
        if (p10 && p90) {
            widths.push_back((*p90 - *p10) / truth);
        }
        lines.push_back(std::abs(straight_line(*request) - truth) / truth);
        out.off_curve += std::any_of(f.findings.begin(), f.findings.end(),
                                     [](const auto& x) { return x.code == "weighing_off_curve"; });
    }
    const double n = std::max(1, out.pieces);
    out.median_error = 100 * percentile(errors, 0.5);
    out.median_error_at_least = 100 * percentile(errors, std::max(0.0, 0.5 - 0.98 / std::sqrt(n)));
    out.p90_error = 100 * percentile(errors, 0.9);
    out.coverage = 100 * inside / n;
    out.too_early = 100 * early / n;
    out.too_late = 100 * late / n;
    out.bias = 100 * percentile(signs, 0.5);
    out.width = 100 * percentile(widths, 0.5);
    out.line_error = 100 * percentile(lines, 0.5);
    return out;
}

std::string trial_heading() {
    return "pieces             log   at   n | median   P90  in 80% (early/late)  bias width | line "
           " "
           "no date off";
}

std::string trial_line(const std::string& name, const TrialOptions& o, const TrialResult& r) {
    return fmt::format(
        "{:<18} {:<4} {:>3.0f}% {:>3} | {:>5.1f} {:>5.1f}  {:>5.0f}%  ({:>3.0f}/{:>3.0f})"
        "  {:>+5.1f} {:>5.1f} | {:>5.1f} {:>5} {:>4}",
        name, o.with_log ? "yes" : "no", 100 * o.fraction, r.pieces, r.median_error, r.p90_error,
        r.coverage, r.too_early, r.too_late, r.bias, r.width, r.line_error, r.without_date,
        r.off_curve);
}

} // namespace tests::support
