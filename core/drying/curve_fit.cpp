#include "core/drying/curve_fit.h"

#include "core/numeric/least_squares.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::drying {

namespace {

using numeric::Cholesky;
using numeric::SquareMatrix;

constexpr double set_aside_variance = 1e6; // g2: a weighing that says nothing
constexpr double difference_step = 1e-3;   // in scores, for derivatives

/// One fit in the making.
class Fitter {
  public:
    Fitter(FitInput input, const FitOptions& options)
        : options_(options), model_(fit_.input.prior.body, fit_.input.air) {
        fit_.input = std::move(input);
        count_ = fit_.input.points.size();
        set_aside_.assign(count_, false);
        fit_.grams_per_day.assign(count_, 0.0);
        jacobian_.assign(count_ * parameter_count, 0.0);
        const double step = fit_.input.scale_step_g;
        rounding_ = step * step / 12;
        noise_ = options_.usual_noise_g * options_.usual_noise_g + rounding_;
    }

    CurveFit run() {
        renew_errors();
        descend();
        renew_errors();
        descend();
        linearise();
        while (count_ >= 4 && fit_.off.size() < options_.most_off && set_worst_aside()) {
        }
        if (count_ >= 3) {
            settle_scales();
        }
        renew_errors();
        descend();
        finish();
        return std::move(fit_);
    }

  private:
    /// Model weights at the weighings for some scores.
    void predict(std::span<const double> scores, std::span<double> grams) {
        const double hung = fit_.input.prior.hung_grams(scores);
        model_.run(fit_.input.prior.kinetics(scores), fit_.start_of(hung),
                   fit_.input.points.back().day, 0.0, 0.0, curve_);
        ++fit_.model_runs;
        const double reference = fit_.reference_of(hung);
        for (std::size_t i = 0; i < count_; ++i) {
            grams[i] = reference * (1 - curve_.at(fit_.input.points[i].day));
        }
    }

    /// The errors' covariance depends on how steep the curve is: renewed between descents.
    void renew_errors() {
        std::vector<double> grams(count_);
        predict(fit_.mode, grams);
        const double reference = fit_.reference_of(fit_.input.prior.hung_grams(fit_.mode));
        for (std::size_t i = 0; i < count_; ++i) {
            fit_.grams_per_day[i] = -reference * curve_.rate_at(fit_.input.points[i].day);
        }
        renew_clock();
        SquareMatrix errors = clock_errors(fit_.input.discrepancy.scale());
        add_noise(errors, noise_);
        // Noise on the diagonal makes it positive definite; the fallback is noise alone.
        auto factor = Cholesky::of(errors);
        if (!factor) {
            SquareMatrix plain(count_);
            add_noise(plain, noise_);
            factor = Cholesky::of(plain);
        }
        fit_.errors = *factor;
    }

    /// The discrepancy's part of the errors at scale 1.
    void renew_clock() {
        clock_ = SquareMatrix(count_);
        Discrepancy clock = fit_.input.discrepancy;
        clock.set_scale(1);
        for (std::size_t i = 0; i < count_; ++i) {
            for (std::size_t j = 0; j <= i; ++j) {
                clock_(i, j) = clock_(j, i) =
                    fit_.grams_per_day[i] * fit_.grams_per_day[j] *
                    clock.covariance(fit_.input.points[i].day, fit_.input.points[j].day);
            }
        }
    }

    [[nodiscard]] SquareMatrix clock_errors(double scale) const {
        SquareMatrix m = clock_;
        for (double& v : m.values()) {
            v *= scale * scale;
        }
        return m;
    }

    void add_noise(SquareMatrix& m, double noise) const {
        for (std::size_t i = 0; i < count_; ++i) {
            m(i, i) += set_aside_[i] ? set_aside_variance : noise;
        }
    }

    /// Towards the mode, with the errors' covariance held.
    void descend() {
        numeric::LeastSquaresProblem problem;
        problem.residual_count = count_ + parameter_count;
        problem.start.assign(fit_.mode.begin(), fit_.mode.end());
        problem.residuals = [this](std::span<const double> x, std::span<double> r) {
            residuals(x, r);
            return true;
        };
        problem.jacobian = [this](std::span<const double> x, std::span<double> out) {
            return derivatives(x, out);
        };
        const numeric::LeastSquaresOptions loose{
            .max_iterations = 12, .step_tolerance = 2e-3, .gradient_tolerance = 1e-6};
        const auto found = numeric::fit_least_squares(problem, loose);
        std::copy(found.parameters.begin(), found.parameters.end(), fit_.mode.begin());
        for (double& score : fit_.mode) {
            score = std::clamp(score, -8.0, 8.0);
        }
    }

    void residuals(std::span<const double> x, std::span<double> r) {
        const auto data = r.first(count_);
        predict(x, data);
        for (std::size_t i = 0; i < count_; ++i) {
            data[i] = fit_.input.points[i].grams - data[i];
        }
        fit_.errors.forward(data);
        std::copy(x.begin(), x.end(), r.begin() + static_cast<std::ptrdiff_t>(count_));
    }

    /// One-sided differences: the model is smooth to 1e-9, and half the runs.
    bool derivatives(std::span<const double> x, std::span<double> out) {
        const std::size_t rows = count_ + parameter_count;
        std::vector<double> here(rows), there(rows), moved(x.begin(), x.end());
        residuals(x, here);
        for (std::size_t k = 0; k < parameter_count; ++k) {
            moved[k] = x[k] + difference_step;
            residuals(moved, there);
            moved[k] = x[k];
            for (std::size_t i = 0; i < rows; ++i) {
                out[i * parameter_count + k] = (there[i] - here[i]) / difference_step;
            }
        }
        return true;
    }

    /// The problem as straight lines around the mode: what the prior predicts for each weighing
    /// and how the predictions hang together.
    void linearise() {
        std::vector<double> here(count_), there(count_);
        predict(fit_.mode, here);
        departure_.assign(count_, 0.0);
        for (std::size_t i = 0; i < count_; ++i) {
            departure_[i] = fit_.input.points[i].grams - here[i];
        }
        for (std::size_t k = 0; k < parameter_count; ++k) {
            Scores moved = fit_.mode;
            moved[k] += difference_step;
            predict(moved, there);
            for (std::size_t i = 0; i < count_; ++i) {
                const double slope = (there[i] - here[i]) / difference_step;
                jacobian_[i * parameter_count + k] = slope;
                departure_[i] += slope * fit_.mode[k];
            }
        }
        spread_ = SquareMatrix(count_);
        for (std::size_t i = 0; i < count_; ++i) {
            for (std::size_t j = 0; j < count_; ++j) {
                for (std::size_t k = 0; k < parameter_count; ++k) {
                    spread_(i, j) +=
                        jacobian_[i * parameter_count + k] * jacobian_[j * parameter_count + k];
                }
            }
        }
    }

    [[nodiscard]] std::optional<Cholesky> marginal(double noise, double scale) const {
        SquareMatrix m = clock_errors(scale);
        for (std::size_t i = 0; i < m.values().size(); ++i) {
            m.values()[i] += spread_.values()[i];
        }
        add_noise(m, noise);
        return Cholesky::of(m);
    }

    /// How likely the weighings are before they are seen (natural logarithm, less a constant).
    [[nodiscard]] double evidence(double noise, double scale) const {
        const auto factor = marginal(noise, scale);
        if (!factor) {
            return -1e300;
        }
        std::vector<double> whitened = departure_;
        factor->forward(whitened);
        double square = 0;
        for (const double v : whitened) {
            square += v * v;
        }
        return -0.5 * (square + factor->log_determinant());
    }

    /// Sets marginal_precision and weighted_departure; returns the evidence.
    double weigh_evidence(double noise, double scale) {
        const auto factor = marginal(noise, scale);
        if (!factor) {
            fit_.marginal_precision = SquareMatrix(count_);
            fit_.weighted_departure.assign(count_, 0.0);
            for (std::size_t i = 0; i < count_; ++i) {
                fit_.marginal_precision(i, i) = 1 / set_aside_variance;
            }
            return -1e300;
        }
        fit_.weighted_departure = departure_;
        factor->solve(fit_.weighted_departure);
        double square = 0;
        for (std::size_t i = 0; i < count_; ++i) {
            square += departure_[i] * fit_.weighted_departure[i];
        }
        fit_.marginal_precision = factor->inverse();
        return -0.5 * (square + factor->log_determinant());
    }

    struct Scales {
        double noise;
        double discrepancy;
        double evidence; ///< of the likeliest
    };

    /// Posterior mean of the logs of the scatter and of the discrepancy, over a small table.
    [[nodiscard]] Scales likely_scales() const {
        constexpr std::array<double, 5> noise{0.5, 1, 2, 4, 8};
        constexpr std::array<double, 4> clock{0.5, 1, 2, 4};
        std::array<double, noise.size() * clock.size()> logs{};
        double best = -1e300;
        for (std::size_t a = 0; a < noise.size(); ++a) {
            for (std::size_t b = 0; b < clock.size(); ++b) {
                const double g = options_.usual_noise_g * noise[a];
                const double u = std::log(noise[a]) / options_.noise_spread;
                const double v = std::log(clock[b]) / options_.discrepancy_spread;
                double& log = logs[a * clock.size() + b];
                log = evidence(g * g + rounding_, clock[b]) - 0.5 * (u * u + v * v);
                best = std::max(best, log);
            }
        }
        double sum = 0, mean_noise = 0, mean_clock = 0;
        for (std::size_t a = 0; a < noise.size(); ++a) {
            for (std::size_t b = 0; b < clock.size(); ++b) {
                const double w = std::exp(logs[a * clock.size() + b] - best);
                sum += w;
                mean_noise += w * std::log(noise[a]);
                mean_clock += w * std::log(clock[b]);
            }
        }
        const double g = options_.usual_noise_g * std::exp(mean_noise / sum);
        return {g * g + rounding_, std::exp(mean_clock / sum), best};
    }

    void settle_scales() {
        const Scales s = likely_scales();
        noise_ = s.noise;
        fit_.input.discrepancy.set_scale(s.discrepancy);
    }

    /// What the others say of one weighing.
    struct Verdict {
        double gap;   ///< weighed minus expected, grams
        double sd;    ///< of the expectation and a weighing's scatter together
        double score; ///< gap / sd, not negative
    };
    [[nodiscard]] Verdict verdict_on(std::size_t i, double noise) const {
        const double own = fit_.marginal_precision(i, i);
        const double variance = 1 / own - (set_aside_[i] ? set_aside_variance - noise : 0.0);
        const double gap = fit_.weighted_departure[i] / own;
        const double sd = std::sqrt(std::max(variance, noise));
        return {gap, sd, std::abs(gap) / sd};
    }

    /// The weighings whose removal makes the others clearly more likely, best first. The four that
    /// stand out most are tried: one bad weighing widens the scatter that all are judged by, and
    /// can hide behind it.
    struct Suspects {
        std::vector<std::size_t> clear;
        std::optional<std::vector<std::size_t>> likeliest_pair; ///< only where scatter is wide
    };
    Suspects suspects() {
        const Scales all = likely_scales();
        std::vector<std::size_t> order;
        weigh_evidence(all.noise, all.discrepancy);
        for (std::size_t i = 0; i < count_; ++i) {
            if (!set_aside_[i]) {
                order.push_back(i);
            }
        }
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return verdict_on(a, all.noise).score > verdict_on(b, all.noise).score;
        });
        order.resize(std::min<std::size_t>(order.size(), 4));
        std::vector<std::pair<double, std::size_t>> gains;
        for (const std::size_t i : order) {
            set_aside_[i] = true;
            const double without = likely_scales().evidence;
            set_aside_[i] = false;
            // A weighing that says nothing costs the logarithm of its variance; made up for here.
            const double gain = without + 0.5 * std::log(set_aside_variance) -
                                (all.evidence + 0.5 * std::log(all.noise));
            constexpr double worth_a_look = 2.0;
            if (gain > worth_a_look) {
                gains.emplace_back(gain, i);
            }
        }
        std::sort(gains.rbegin(), gains.rend());
        Suspects out;
        for (const auto& [gain, i] : gains) {
            out.clear.push_back(i);
        }
        double best = -1e300;
        const bool wide = all.noise > 9 * options_.usual_noise_g * options_.usual_noise_g;
        for (std::size_t a = 0; wide && a < order.size(); ++a) {
            for (std::size_t b = a + 1; b < order.size(); ++b) {
                if (std::max(order[a], order[b]) - std::min(order[a], order[b]) < 3) {
                    continue; // neighbours: more likely a step than two slips
                }
                set_aside_[order[a]] = set_aside_[order[b]] = true;
                const double without = likely_scales().evidence;
                set_aside_[order[a]] = set_aside_[order[b]] = false;
                if (without > best) {
                    best = without;
                    out.likeliest_pair = {order[a], order[b]};
                }
            }
        }
        return out;
    }

    /// Sets the first suspect aside that the others, fitted without it, speak clearly against.
    /// Where none can be set aside alone and the scatter is wide, two may hide behind each other.
    bool set_worst_aside() {
        const Suspects found = suspects();
        for (std::size_t i = 0; i < std::min<std::size_t>(found.clear.size(), 3); ++i) {
            if (try_without({found.clear[i]})) {
                return true;
            }
        }
        return found.likeliest_pair && count_ >= 7 && fit_.off.empty() &&
               try_without(*found.likeliest_pair);
    }

    bool try_without(const std::vector<std::size_t>& tried) {
        const Scores mode = fit_.mode;
        const double noise = noise_;
        const double scale = fit_.input.discrepancy.scale();
        const auto old_off = fit_.off.size();
        for (const std::size_t i : tried) {
            set_aside_[i] = true;
        }
        settle_scales();
        renew_errors();
        descend();
        linearise();
        const Scales s = likely_scales();
        weigh_evidence(s.noise, s.discrepancy);
        const double least =
            std::max(options_.off_grams, options_.off_share * fit_.input.prior.mean[hung_weight]);
        for (const std::size_t i : tried) {
            const Verdict v = verdict_on(i, s.noise);
            if (v.score >= options_.off_deviations && std::abs(v.gap) >= least) {
                fit_.off.push_back({i, fit_.input.points[i].grams - v.gap, v.sd});
            }
        }
        if (fit_.off.size() == old_off + tried.size()) {
            return true;
        }
        fit_.off.resize(old_off);
        for (const std::size_t i : tried) {
            set_aside_[i] = false;
        }
        fit_.mode = mode;
        noise_ = noise;
        fit_.input.discrepancy.set_scale(scale);
        renew_errors();
        linearise();
        return false;
    }

    void finish() {
        linearise();
        fit_.log_evidence = weigh_evidence(noise_, fit_.input.discrepancy.scale());
        fit_.noise_g = std::sqrt(noise_);
        const std::size_t rows = count_ + parameter_count;
        std::vector<double> slopes(rows * parameter_count);
        derivatives(fit_.mode, slopes);
        fit_.precision = SquareMatrix(parameter_count);
        for (std::size_t a = 0; a < parameter_count; ++a) {
            for (std::size_t b = 0; b < parameter_count; ++b) {
                for (std::size_t i = 0; i < rows; ++i) {
                    fit_.precision(a, b) +=
                        slopes[i * parameter_count + a] * slopes[i * parameter_count + b];
                }
            }
        }
    }

    CurveFit fit_;
    FitOptions options_;
    PhysicalModel model_;
    std::size_t count_ = 0;
    double rounding_ = 0;
    double noise_ = 0; ///< variance of a weighing, g2
    std::vector<bool> set_aside_;
    std::vector<double> jacobian_;
    std::vector<double> departure_;
    SquareMatrix clock_;  ///< errors of the clock, g2, at scale 1
    SquareMatrix spread_; ///< covariance of the weighings from the prior alone, g2
    LossCurve curve_;
};

} // namespace

StartState CurveFit::start_of(double hung_grams) const {
    if (!input.green_grams) {
        return {};
    }
    const double lost = std::clamp(1 - hung_grams / *input.green_grams, 0.0, 0.7);
    return input.start == StartKind::dried ? StartState{0, lost} : StartState{lost, 0};
}

double CurveFit::reference_of(double hung_grams) const {
    return input.green_grams ? *input.green_grams : hung_grams;
}

CurveFit fit_curve(FitInput input, const FitOptions& options) {
    return Fitter(std::move(input), options).run();
}

StepEstimate estimate_step(const CurveFit& fit, std::size_t first, bool only_that_one) {
    const std::size_t end = only_that_one ? first + 1 : fit.weighted_departure.size();
    double against = 0;
    double own = 0;
    for (std::size_t i = first; i < end; ++i) {
        against += fit.weighted_departure[i];
        for (std::size_t j = first; j < end; ++j) {
            own += fit.marginal_precision(i, j);
        }
    }
    return {against / own, 1 / std::sqrt(own)};
}

} // namespace core::drying
