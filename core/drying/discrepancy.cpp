#include "core/drying/discrepancy.h"

#include <algorithm>
#include <cmath>

namespace core::drying {

namespace {

/// Covariance of the integral of a stationary Ornstein-Uhlenbeck process of unit variance.
double integrated(double a, double b, double memory) {
    return memory * memory *
           (2 * std::min(a, b) / memory + std::exp(-a / memory) + std::exp(-b / memory) -
            std::exp(-std::abs(a - b) / memory) - 1);
}

} // namespace

Discrepancy Discrepancy::usual(bool air_known, double elapsed_days) {
    Sizes s;
    s.weather_sd = air_known ? 0.06 : 0.075;
    s.shape_days = 2 * std::max(elapsed_days, 5.0);
    return Discrepancy(s);
}

double Discrepancy::covariance(double day_a, double day_b) const {
    const double a = std::max(day_a, 0.0);
    const double b = std::max(day_b, 0.0);
    return scale_ * scale_ *
           (sizes_.weather_sd * sizes_.weather_sd * integrated(a, b, sizes_.weather_days) +
            sizes_.shape_sd * sizes_.shape_sd * integrated(a, b, sizes_.shape_days));
}

} // namespace core::drying
