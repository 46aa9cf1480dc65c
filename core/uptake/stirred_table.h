#pragma once

#include <functional>
#include <vector>

namespace core::uptake {

/// A piece of any shape in a stirred liquid of limited volume, computed once as a table over the
/// diffusion path. Needs only the piece's answer to a step at its surface: `uptake_of_step` and
/// `centre_of_step` give mean and centre level after a path (m2) with the surface held at 1.
class StirredTable {
  public:
    /// scale_m2: square of the shortest reach. outside_ratio as in DiffusionSeries; below 0.005
    /// it counts as 0.005, which changes the final level by half a percent at most and is undone
    /// by scaling to it.
    StirredTable(const std::function<double(double)>& uptake_of_step,
                 const std::function<double(double)>& centre_of_step, double scale_m2,
                 double outside_ratio);

    /// Levels relative to the final one.
    [[nodiscard]] double mean(double path_m2) const;
    [[nodiscard]] double centre(double path_m2) const;

  private:
    [[nodiscard]] double look_up(const std::vector<double>& values, double path_m2) const;

    std::vector<double> log_paths_; ///< evenly spaced
    std::vector<double> means_;
    std::vector<double> centres_;
};

} // namespace core::uptake
