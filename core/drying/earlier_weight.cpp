#include "core/drying/earlier_weight.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::drying {
namespace {

constexpr double least_spread = 0.01;

/// 90th percentile of Student's t with 1, 2 ... 10 degrees of freedom; that of 10 beyond.
double t_90(std::size_t freedom) {
    constexpr std::array table{3.078, 1.886, 1.638, 1.533, 1.476,
                               1.440, 1.415, 1.397, 1.383, 1.372};
    return table.at(std::min(freedom, table.size()) - 1);
}

} // namespace

std::optional<base::Interval<units::Mass>> earlier_weight(base::Interval<units::Mass> later,
                                                          std::span<const double> ratios) {
    const bool bad = std::any_of(ratios.begin(), ratios.end(),
                                 [](double r) { return !std::isfinite(r) || r <= 0; });
    if (bad || ratios.size() < 2 || !(later.low.in_grams() > 0)) {
        return std::nullopt;
    }
    const auto n = static_cast<double>(ratios.size());
    double mean = 0;
    for (const double r : ratios) {
        mean += std::log(r) / n;
    }
    double squares = 0;
    for (const double r : ratios) {
        squares += std::pow(std::log(r) - mean, 2);
    }
    const double spread = std::max(std::sqrt(squares / (n - 1)), least_spread);
    const double own = t_90(ratios.size() - 1) * spread * std::sqrt(1 + 1 / n);
    const double below = std::hypot(own, std::log(later.best / later.low));
    const double above = std::hypot(own, std::log(later.high / later.best));
    const units::Mass best = later.best * std::exp(mean);
    return base::Interval<units::Mass>{best * std::exp(-below), best, best * std::exp(above)};
}

} // namespace core::drying
