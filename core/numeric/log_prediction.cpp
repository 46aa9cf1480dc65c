#include "core/numeric/log_prediction.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::numeric {
namespace {

/// 90th percentile of Student's t with 1, 2 ... 10 degrees of freedom.
double t_90(std::size_t freedom) {
    constexpr std::array table{3.078, 1.886, 1.638, 1.533, 1.476,
                               1.440, 1.415, 1.397, 1.383, 1.372};
    return table.at(std::min(freedom, table.size()) - 1);
}

} // namespace

LogPrediction log_prediction(std::span<const double> values, double least_spread) {
    const auto n = static_cast<double>(values.size());
    double mean = 0;
    for (const double v : values) {
        mean += std::log(v) / n;
    }
    double squares = 0;
    for (const double v : values) {
        squares += std::pow(std::log(v) - mean, 2);
    }
    const double spread = std::max(least_spread, std::sqrt(squares / (n - 1)));
    return {mean, t_90(values.size() - 1) * spread * std::sqrt(1 + 1 / n)};
}

} // namespace core::numeric
