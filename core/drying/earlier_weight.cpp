#include "core/drying/earlier_weight.h"

#include "core/numeric/log_prediction.h"

#include <algorithm>
#include <cmath>

namespace core::drying {
namespace {

constexpr double least_spread = 0.01;

} // namespace

std::optional<base::Interval<units::Mass>> earlier_weight(base::Interval<units::Mass> later,
                                                          std::span<const double> ratios) {
    const bool bad = std::any_of(ratios.begin(), ratios.end(),
                                 [](double r) { return !std::isfinite(r) || r <= 0; });
    if (bad || ratios.size() < 2 || !(later.low.in_grams() > 0)) {
        return std::nullopt;
    }
    const auto own = numeric::log_prediction(ratios, least_spread);
    const double below = std::hypot(own.reach, std::log(later.best / later.low));
    const double above = std::hypot(own.reach, std::log(later.high / later.best));
    const units::Mass best = later.best * std::exp(own.mean);
    return base::Interval<units::Mass>{best * std::exp(-below), best, best * std::exp(above)};
}

} // namespace core::drying
