#pragma once

#include "core/drying/curve_fit.h"
#include "core/numeric/quasi_random.h"

#include <array>
#include <cstddef>
#include <optional>
#include <vector>

namespace core::drying {

/// 10th, 50th and 90th percentile.
struct Percentiles {
    double p10;
    double p50;
    double p90;
};

/// When the target is reached, in days since the first weighing. A percentile is absent where the
/// loss is never reached with that probability.
struct ReadyDays {
    std::optional<double> p10;
    std::optional<double> p50;
    std::optional<double> p90;
    double reached = 0; ///< probability that it is reached at all (within the air path)
};

/// Weighted curves that agree with the weighings, from importance sampling around the fit's mode
/// (multivariate t, evenly spread points). Each curve carries the discrepancy's own uncertainty,
/// given how the weighings lie about that curve.
class Posterior {
  public:
    /// `target` is the loss share waited for.
    Posterior(const CurveFit& fit, double target);

    [[nodiscard]] const ReadyDays& ready() const { return ready_; }
    [[nodiscard]] Percentiles levelling_loss() const { return levelling_; }
    /// The loss at a day since the first weighing, up to band_end().
    [[nodiscard]] Percentiles loss_at(double day) const;
    /// As far as loss_at() is meaningful.
    [[nodiscard]] double band_end() const { return band_end_; }
    /// How many equally weighted samples these are worth; below 20 the tails are rough.
    [[nodiscard]] double effective_samples() const { return effective_; }
    /// Posterior mean and covariance of the scores.
    [[nodiscard]] const Scores& mean_scores() const { return mean_; }
    [[nodiscard]] const numeric::SquareMatrix& score_covariance() const { return covariance_; }

  private:
    struct Sample {
        double weight = 0;
        Scores scores{};
        LossCurve curve;
        std::vector<double> whitened; ///< errors^-1/2 (weighing - curve)
        double levelling = 0;
    };
    /// The piece's clock against a curve's: delta at one day given the weighings.
    struct ClockView {
        std::vector<double> whitened; ///< errors^-1/2 cov(delta, weighings)
        double variance = 0;
    };
    [[nodiscard]] ClockView clock_at(double day) const;
    [[nodiscard]] static double clock_mean(const ClockView& clock, const Sample& sample);
    void draw(double target);
    void settle_weights(const std::vector<double>& logs);
    void settle_ready(double target);
    void settle_levelling();

    const CurveFit* fit_;
    std::vector<Sample> samples_;
    ReadyDays ready_;
    Percentiles levelling_{};
    double band_end_ = 0;
    double effective_ = 0;
    Scores mean_{};
    numeric::SquareMatrix covariance_;
};

} // namespace core::drying
