#include "core/drying/posterior.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

using numeric::Cholesky;
using numeric::QuasiRandom;
using numeric::Weighted;

constexpr std::size_t sample_count = 256;
constexpr double degrees = 8;  // of the t distribution drawn from: tails a little too heavy
constexpr double widen = 1.05; // and a little too wide, so that weights stay even
/// Seven equally likely values of a standard normal.
constexpr std::array<double, 7> normal_steps{-1.46523, -0.79164, -0.36611, 0,
                                             0.36611,  0.79164,  1.46523};

/// One coordinate for each parameter, one for the air ahead, one for the t distribution.
const QuasiRandom& draws() {
    static const QuasiRandom table(sample_count, parameter_count + 1, degrees); // constant
    return table;
}

void sort_by_value(std::vector<Weighted>& values) {
    std::sort(values.begin(), values.end(),
              [](const Weighted& a, const Weighted& b) { return a.value < b.value; });
}

std::optional<double> quantile(const std::vector<Weighted>& sorted, double p, double total) {
    const double v = numeric::weighted_quantile(sorted, p, total);
    return std::isnan(v) ? std::nullopt : std::optional(v);
}

Percentiles percentiles(std::vector<Weighted>& values) {
    sort_by_value(values);
    double total = 0;
    for (const Weighted& w : values) {
        total += w.weight;
    }
    const auto at = [&](double p) {
        return numeric::weighted_quantile(values, p, total * (1 - 1e-12));
    };
    return {at(0.1), at(0.5), at(0.9)};
}

} // namespace

Posterior::Posterior(const CurveFit& fit, double target) : fit_(&fit) {
    draw(target);
    settle_ready(target);
    settle_levelling();
}

void Posterior::draw(double target) {
    const FitInput& in = fit_->input;
    const std::size_t n = in.points.size();
    const PhysicalModel model(in.prior.body, in.air);
    const double now = in.air.now_day;
    LossCurve best;
    const double hung = in.prior.hung_grams(fit_->mode);
    model.run(in.prior.kinetics(fit_->mode), fit_->start_of(hung), now, target, 0.0, best);
    const auto likely = best.crossing(target);
    band_end_ = likely && *likely > now ? now + std::max(2.5 * (*likely - now), 0.1 * now + 1)
                                        : now + std::max(30.0, now);
    // The Gauss-Newton matrix contains the prior's unit matrix, so it is positive definite.
    const auto factor = Cholesky::of(fit_->precision);
    samples_.resize(sample_count);
    std::vector<double> logs(sample_count);
    for (std::size_t m = 0; m < sample_count; ++m) {
        const auto u = draws().point(m);
        Sample& s = samples_[m];
        const double stretch = widen * std::sqrt(degrees / u[parameter_count + 1]);
        std::vector<double> step(u.begin(), u.begin() + parameter_count);
        double square = 0;
        for (double& v : step) {
            v *= stretch;
            square += v * v;
        }
        if (factor) {
            factor->backward(step);
        }
        double log = 0;
        for (std::size_t k = 0; k < parameter_count; ++k) {
            s.scores[k] = fit_->mode[k] + step[k];
            log -= 0.5 * s.scores[k] * s.scores[k];
        }
        const double grams = in.prior.hung_grams(s.scores);
        const StartState start = fit_->start_of(grams);
        const double reference = fit_->reference_of(grams);
        const Kinetics kinetics = in.prior.kinetics(s.scores);
        const double ahead = u[parameter_count] * in.air.ahead_humidity_sd;
        model.run(kinetics, start, band_end_, target, ahead, s.curve);
        s.levelling = model.levelling_loss(kinetics, start, in.air.ahead_humidity + ahead);
        s.whitened.resize(n);
        for (std::size_t i = 0; i < n; ++i) {
            s.whitened[i] = in.points[i].grams - reference * (1 - s.curve.at(in.points[i].day));
        }
        fit_->errors.forward(s.whitened);
        for (const double r : s.whitened) {
            log -= 0.5 * r * r;
        }
        const double width = static_cast<double>(parameter_count);
        logs[m] = log + 0.5 * (degrees + width) * std::log1p(square / (widen * widen) / degrees);
    }
    settle_weights(logs);
}

void Posterior::settle_weights(const std::vector<double>& logs) {
    const double best = *std::max_element(logs.begin(), logs.end());
    double sum = 0;
    for (std::size_t m = 0; m < samples_.size(); ++m) {
        samples_[m].weight = std::exp(logs[m] - best);
        sum += samples_[m].weight;
    }
    double squares = 0;
    for (Sample& s : samples_) {
        s.weight /= sum;
        squares += s.weight * s.weight;
        for (std::size_t k = 0; k < parameter_count; ++k) {
            mean_[k] += s.weight * s.scores[k];
        }
    }
    effective_ = 1 / squares;
    covariance_ = numeric::SquareMatrix(parameter_count);
    for (const Sample& s : samples_) {
        for (std::size_t a = 0; a < parameter_count; ++a) {
            for (std::size_t b = 0; b < parameter_count; ++b) {
                covariance_(a, b) += s.weight * (s.scores[a] - mean_[a]) * (s.scores[b] - mean_[b]);
            }
        }
    }
}

Posterior::ClockView Posterior::clock_at(double day) const {
    const FitInput& in = fit_->input;
    ClockView view;
    view.whitened.resize(in.points.size());
    for (std::size_t i = 0; i < in.points.size(); ++i) {
        view.whitened[i] =
            in.discrepancy.covariance(day, in.points[i].day) * fit_->grams_per_day[i];
    }
    fit_->errors.forward(view.whitened);
    view.variance = in.discrepancy.covariance(day, day);
    for (const double v : view.whitened) {
        view.variance -= v * v;
    }
    view.variance = std::max(view.variance, 0.0);
    return view;
}

double Posterior::clock_mean(const ClockView& clock, const Sample& sample) {
    double mean = 0;
    for (std::size_t i = 0; i < clock.whitened.size(); ++i) {
        mean += clock.whitened[i] * sample.whitened[i];
    }
    return mean;
}

void Posterior::settle_ready(double target) {
    const double now = fit_->input.air.now_day;
    std::vector<Weighted> days;
    days.reserve(samples_.size() * normal_steps.size());
    for (const Sample& s : samples_) {
        const auto reached = s.curve.crossing(target);
        if (!reached) {
            continue;
        }
        ready_.reached += s.weight;
        const ClockView clock = clock_at(*reached);
        const double middle = *reached - clock_mean(clock, s);
        const double sd = std::sqrt(clock.variance);
        const double share = s.weight / static_cast<double>(normal_steps.size());
        for (const double z : normal_steps) {
            // What is still to come cannot be negative: its error is relative.
            const double left = middle - now;
            const double day =
                left > 0 ? now + left * std::exp(std::min(sd / std::max(left, 1e-3), 1.0) * z)
                         : middle + sd * z;
            days.push_back({day, share});
        }
    }
    sort_by_value(days);
    ready_.p10 = quantile(days, 0.1, 1.0);
    ready_.p50 = quantile(days, 0.5, 1.0);
    ready_.p90 = quantile(days, 0.9, 1.0);
}

void Posterior::settle_levelling() {
    std::vector<Weighted> losses;
    losses.reserve(samples_.size());
    for (const Sample& s : samples_) {
        losses.push_back({s.levelling, s.weight});
    }
    levelling_ = percentiles(losses);
}

Percentiles Posterior::loss_at(double day) const {
    const ClockView clock = clock_at(day);
    const double sd = std::sqrt(clock.variance);
    std::vector<Weighted> losses;
    losses.reserve(samples_.size() * 3);
    for (const Sample& s : samples_) {
        const double rate = s.curve.rate_at(day);
        const double middle = s.curve.at(day) + rate * clock_mean(clock, s);
        for (const double z : {-1.2247, 0.0, 1.2247}) { // three points with unit variance
            losses.push_back({middle + z * rate * sd, s.weight / 3});
        }
    }
    return percentiles(losses);
}

} // namespace core::drying
