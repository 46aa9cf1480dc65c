#pragma once

#include "core/uptake/diffusion_series.h"

#include <cmath>
#include <vector>

/// Fick's law by finite volumes in one direction, independent of the series it checks: cells of
/// equal width from the centre (0) to the surface (1), implicit in time, second order in space.
namespace finite_volume {

class Piece {
  public:
    Piece(core::uptake::Body body, std::size_t cells)
        : power_(body == core::uptake::Body::sheet      ? 0
                 : body == core::uptake::Body::cylinder ? 1
                                                        : 2),
          c_(cells, 0.0) {}

    enum class Surface { held_at_one, sealed, limited };
    /// Water outside over water inside, and its level, for Surface::limited.
    double outside_ratio = 0;
    double outside_level = 0;

    /// Advances by `time` in `steps` steps (time in units of l^2/D).
    void run(double time, int steps, Surface surface) {
        for (int i = 0; i < steps; ++i) {
            step(time / steps, surface);
        }
    }

    [[nodiscard]] double mean() const {
        double sum = 0;
        for (std::size_t i = 0; i < c_.size(); ++i) {
            sum += c_[i] * volume(i);
        }
        return sum;
    }
    /// Extrapolated from the two inner cells (the profile is flat there: even in x).
    [[nodiscard]] double centre() const { return c_[0] + (c_[0] - c_[1]) / 8; }
    std::vector<double>& cells() { return c_; }

  private:
    [[nodiscard]] double width() const { return 1.0 / static_cast<double>(c_.size()); }
    [[nodiscard]] double face(std::size_t i) const { // area over the whole volume
        return (power_ + 1) * std::pow(static_cast<double>(i) * width(), power_);
    }
    [[nodiscard]] double volume(std::size_t i) const {
        return std::pow(static_cast<double>(i + 1) * width(), power_ + 1) -
               std::pow(static_cast<double>(i) * width(), power_ + 1);
    }

    void step(double dt, Surface surface) {
        const std::size_t n = c_.size();
        const bool with_outside = surface == Surface::limited;
        const std::size_t size = with_outside ? n + 1 : n;
        std::vector<double> lower(size, 0), diagonal(size, 1), upper(size, 0), right(size);
        const double edge = dt * face(n) / (width() / 2); // half a cell to the surface
        for (std::size_t i = 0; i < n; ++i) {
            right[i] = c_[i];
            if (i > 0) {
                lower[i] = -dt * face(i) / width() / volume(i);
                diagonal[i] -= lower[i];
            }
            if (i + 1 < n) {
                upper[i] = -dt * face(i + 1) / width() / volume(i);
                diagonal[i] -= upper[i];
            }
        }
        if (surface == Surface::held_at_one) {
            diagonal[n - 1] += edge / volume(n - 1);
            right[n - 1] += edge / volume(n - 1);
        } else if (with_outside) {
            upper[n - 1] = -edge / volume(n - 1);
            diagonal[n - 1] -= upper[n - 1];
            lower[n] = -edge / outside_ratio;
            diagonal[n] -= lower[n];
            right[n] = outside_level;
        }
        for (std::size_t i = 1; i < size; ++i) { // Thomas
            const double w = lower[i] / diagonal[i - 1];
            diagonal[i] -= w * upper[i - 1];
            right[i] -= w * right[i - 1];
        }
        for (std::size_t i = size; i-- > 0;) {
            right[i] = (right[i] - (i + 1 < size ? upper[i] * right[i + 1] : 0)) / diagonal[i];
        }
        for (std::size_t i = 0; i < n; ++i) {
            c_[i] = right[i];
        }
        if (with_outside) {
            outside_level = right[n];
        }
    }

    int power_;
    std::vector<double> c_;
};

} // namespace finite_volume
