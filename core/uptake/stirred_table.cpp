#include "core/uptake/stirred_table.h"

#include <algorithm>
#include <cmath>

namespace core::uptake {

namespace {

/// A rising function of path tabulated over its logarithm: the balance below asks for it tens of
/// thousands of times, and the series behind it are slow at short paths.
class LogTable {
  public:
    LogTable(const std::function<double(double)>& f, double low, double high)
        : low_(std::log(low)), step_((std::log(high) - low_) / (points - 1)) {
        values_.reserve(points);
        for (int i = 0; i < points; ++i) {
            values_.push_back(f(std::exp(low_ + step_ * i)));
        }
    }
    double operator()(double path) const {
        if (!(path > 0)) {
            return 0;
        }
        const double at = (std::log(path) - low_) / step_;
        if (at <= 0) {
            return values_.front() * std::exp(at * step_ / 2); // square root of the path
        }
        const auto i = std::min(static_cast<std::size_t>(at), values_.size() - 2);
        const double part = std::min(at - static_cast<double>(i), 1.0);
        return values_[i] + part * (values_[i + 1] - values_[i]);
    }

  private:
    static constexpr int points = 500;
    double low_;
    double step_;
    std::vector<double> values_;
};

} // namespace

StirredTable::StirredTable(const std::function<double(double)>& uptake_of_step,
                           const std::function<double(double)>& centre_of_step, double scale_m2,
                           double outside_ratio) {
    constexpr int steps = 320;
    constexpr double shortest = 1e-7; // Fourier numbers of the shortest reach
    constexpr double longest = 300;
    const double alpha = std::max(outside_ratio, 0.005);
    const LogTable uptake(uptake_of_step, shortest * scale_m2 / 100, longest * scale_m2);
    const LogTable centre(centre_of_step, shortest * scale_m2, longest * scale_m2);

    std::vector<double> paths{0.0};
    for (int i = 0; i < steps; ++i) {
        const double fo = shortest * std::pow(longest / shortest, i / (steps - 1.0));
        paths.push_back(fo * scale_m2);
        log_paths_.push_back(std::log(paths.back()));
    }
    // The liquid's level is constant within a step; each step's level follows from the balance
    //   alpha c_i + sum_j c_j [U(t_i - t_(j-1)) - U(t_i - t_j)] = 1 + alpha.
    std::vector<double> level(paths.size(), 0.0);
    for (std::size_t i = 1; i < paths.size(); ++i) {
        double taken_up = 0;
        double at_centre = 0;
        for (std::size_t j = 1; j < i; ++j) {
            const double since = paths[i] - paths[j - 1];
            const double until = paths[i] - paths[j];
            taken_up += level[j] * (uptake(since) - uptake(until));
            at_centre += level[j] * (centre(since) - centre(until));
        }
        const double last = paths[i] - paths[i - 1];
        level[i] = (1 + alpha - taken_up) / (alpha + uptake(last));
        means_.push_back(taken_up + level[i] * uptake(last));
        centres_.push_back(at_centre + level[i] * centre(last));
    }
}

double StirredTable::look_up(const std::vector<double>& values, double path_m2) const {
    if (!(path_m2 > 0)) {
        return 0;
    }
    const double step = log_paths_[1] - log_paths_[0];
    const double at = (std::log(path_m2) - log_paths_.front()) / step;
    if (at <= 0) {
        return values.front() * std::exp(at * step / 2);
    }
    const auto i = std::min(static_cast<std::size_t>(at), values.size() - 2);
    const double part = std::min(at - static_cast<double>(i), 1.0);
    return values[i] + part * (values[i + 1] - values[i]);
}

double StirredTable::mean(double path_m2) const {
    return look_up(means_, path_m2);
}
double StirredTable::centre(double path_m2) const {
    return look_up(centres_, path_m2);
}

} // namespace core::uptake
