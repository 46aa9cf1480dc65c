#pragma once

#include "core/base/interval.h"
#include "core/drying/forecast.h"

#include <optional>
#include <span>

namespace core::drying {

/// A start weight that was never written down, estimated.
struct GreenWeightEstimate {
    base::Interval<units::Mass> weight;    ///< 10th, 50th and 90th percentile
    base::Interval<units::MassShare> loss; ///< of the last weighing, from that start
    int siblings = 0;                      ///< pieces that the estimate leans on
};

/// `piece` was hung at `hung` and has at least one weighing since; its own start is unknown (its
/// `reference` is ignored). Siblings hung with it and have their start: their losses at the same
/// age, scaled by thickness, tell how much this one has lost; the general prior and the air tell
/// it where there are none, with a wide interval. Absent when the piece has no weighing after
/// `hung`.
std::optional<GreenWeightEstimate> estimate_green_weight(const ForecastRequest& piece,
                                                         units::Instant hung,
                                                         std::span<const ForecastRequest> siblings);

} // namespace core::drying
