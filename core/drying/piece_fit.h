#pragma once

#include "core/drying/curve_fit.h"
#include "core/drying/forecast.h"

#include <optional>
#include <vector>

namespace core::drying {

/// A request on the piece's own clock: sorted, in grams and days, ready to be fitted.
struct PreparedPiece {
    units::Instant start = units::Instant::from_unix_seconds(0); ///< first weighing
    std::vector<units::Instant> times;                           ///< of each point
    FitInput input;
    [[nodiscard]] units::Instant instant_of(double day) const {
        return start + units::Duration::days(day);
    }
};

/// Absent when no weighing is above 0 g.
std::optional<PreparedPiece> prepare(const ForecastRequest& request);

/// The fit a forecast is made from. With a green weight well above the first weighing both
/// readings are tried (lost in the cure, or dried before it was first weighed); with a climate log
/// that the losses contradict a freer humidity is tried. The one with more evidence is kept.
struct PieceFit {
    CurveFit curve;
    /// Set when the losses speak for another humidity than the log: true minus logged, share.
    std::optional<double> humidity_contradiction;
};
PieceFit fit_piece(const PreparedPiece& piece);

} // namespace core::drying
