#pragma once

#include <cstddef>
#include <span>
#include <vector>

/// Deterministic sampling: the same numbers on every call, no seed, no state. Results that are
/// computed from them are therefore repeatable, and neighbouring inputs give neighbouring results.
namespace core::numeric {

/// Points spread evenly over a product of distributions (Sobol sequence, GSL).
class QuasiRandom {
  public:
    /// `normals` standard normal coordinates and, when `chi_degrees` > 0, one chi-square
    /// coordinate with that many degrees of freedom as the last. At most 40 coordinates.
    QuasiRandom(std::size_t count, std::size_t normals, double chi_degrees = 0);
    [[nodiscard]] std::size_t count() const { return count_; }
    [[nodiscard]] std::span<const double> point(std::size_t i) const {
        return {values_.data() + i * width_, width_};
    }

  private:
    std::size_t count_;
    std::size_t width_;
    std::vector<double> values_;
};

/// Quantile of the standard normal distribution, 0 < probability < 1.
double normal_quantile(double probability);

/// A value with a weight >= 0.
struct Weighted {
    double value;
    double weight;
};

/// The smallest value at which the cumulative weight reaches `probability` of `total` (which may
/// be more than the sum of the weights: the rest is "never"). `sorted` by value. NaN when it is
/// not reached.
double weighted_quantile(std::span<const Weighted> sorted, double probability, double total);

} // namespace core::numeric
