#pragma once

#include <cstddef>
#include <optional>
#include <vector>

/// The layer's inner arithmetic is in plain doubles: days since the first weighing, grams, and
/// losses as shares of the reference weight. Quantity kinds stand at its public doors
/// (core/drying/forecast.h).
namespace core::drying {

/// Loss against time at rising nodes, straight between them.
struct LossCurve {
    std::vector<double> day;
    std::vector<double> loss; ///< share of the reference weight

    void clear();
    void add(double at, double value);
    /// Before the first node the first value, after the last node the last.
    [[nodiscard]] double at(double when) const;
    /// Loss per day on the piece of curve that holds `when`.
    [[nodiscard]] double rate_at(double when) const;
    /// When the loss first reaches `wanted`; absent where the curve ends before.
    [[nodiscard]] std::optional<double> crossing(double wanted) const;
};

} // namespace core::drying
