#pragma once

#include <span>

namespace core::numeric {

/// Where one more of the same kind falls, in logarithms: 10th, 50th and 90th percentile are
/// exp(mean - reach), exp(mean) and exp(mean + reach).
struct LogPrediction {
    double mean = 0;
    double reach = 0;
};

/// From two values or more, each above 0: a prediction interval (Student's t; its table is that of
/// the NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2). The standard deviation of the
/// logarithms is never taken below `least_spread`: equal numbers are luck or rounding, not
/// certainty. Beyond 10 degrees of freedom the t of 10 stays, which is on the wide side.
LogPrediction log_prediction(std::span<const double> values, double least_spread);

} // namespace core::numeric
