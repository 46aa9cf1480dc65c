#include "core/drying/loss_curve.h"

#include <algorithm>

namespace core::drying {

namespace {

/// The index i >= 1 of the node that ends the piece of curve holding `when`.
std::size_t piece_of(const LossCurve& curve, double when) {
    const auto next = std::upper_bound(curve.day.begin(), curve.day.end(), when);
    const auto i = static_cast<std::size_t>(next - curve.day.begin());
    return std::clamp<std::size_t>(i, 1, curve.day.size() - 1);
}

} // namespace

void LossCurve::clear() {
    day.clear();
    loss.clear();
}

void LossCurve::add(double at_day, double value) {
    day.push_back(at_day);
    loss.push_back(value);
}

double LossCurve::at(double when) const {
    if (day.size() < 2 || when <= day.front()) {
        return loss.empty() ? 0.0 : loss.front();
    }
    if (when >= day.back()) {
        return loss.back();
    }
    const std::size_t i = piece_of(*this, when);
    const double f = (when - day[i - 1]) / (day[i] - day[i - 1]);
    return loss[i - 1] + f * (loss[i] - loss[i - 1]);
}

double LossCurve::rate_at(double when) const {
    if (day.size() < 2) {
        return 0;
    }
    const std::size_t i = piece_of(*this, when);
    return (loss[i] - loss[i - 1]) / (day[i] - day[i - 1]);
}

std::optional<double> LossCurve::crossing(double wanted) const {
    for (std::size_t i = 0; i < day.size(); ++i) {
        if (loss[i] >= wanted) {
            if (i == 0) {
                return day[0];
            }
            const double f = (wanted - loss[i - 1]) / (loss[i] - loss[i - 1]);
            return day[i - 1] + f * (day[i] - day[i - 1]);
        }
    }
    return std::nullopt;
}

} // namespace core::drying
