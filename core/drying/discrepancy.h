#pragma once

namespace core::drying {

/// Relative errors of the drying rate and how long they last, in days.
struct RateErrors {
    double weather_sd = 0.075;
    double weather_days = 20;
    double shape_sd = 0.09;
    double shape_days = 20;
};

/// What the model cannot know: weather between the readings, an odd shape, a rim. Held as an
/// error of the piece's own clock: the piece has dried for t + delta(t) days, where delta is the
/// integral of a rate error with a memory (an integrated Ornstein-Uhlenbeck process). It is 0 at
/// the first weighing and grows with the horizon, so a forecast far ahead is wide and the fit
/// near the weighings is free to bend.
class Discrepancy {
  public:
    using Sizes = RateErrors;
    Discrepancy() = default;
    explicit Discrepancy(const Sizes& sizes) : sizes_(sizes) {}
    /// The sizes used for a piece that has hung `elapsed_days`, with or without a climate log.
    static Discrepancy usual(bool air_known, double elapsed_days);

    /// Covariance of delta at two times, days squared.
    [[nodiscard]] double covariance(double day_a, double day_b) const;
    /// Scales both rate errors.
    void set_scale(double scale) { scale_ = scale; }
    [[nodiscard]] double scale() const { return scale_; }

  private:
    Sizes sizes_;
    double scale_ = 1;
};

} // namespace core::drying
