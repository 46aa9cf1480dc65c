#pragma once

#include "core/base/interval.h"
#include "core/model/finding.h"
#include "core/units/mass_share.h"
#include "core/units/time.h"

#include <optional>
#include <vector>

namespace core::model {

enum class ForecastState { too_few_weighings, drying, ready, not_reachable, not_drying };

/// A moment known as percentiles. A percentile is absent where the loss is never reached with
/// that probability.
struct ReadyDate {
    std::optional<units::Instant> p10;
    std::optional<units::Instant> p50;
    std::optional<units::Instant> p90;
};

/// One time of the forecast band: percentiles of the loss of net weight from the target's
/// reference weight.
struct BandPoint {
    units::Instant at;
    units::MassShare p10;
    units::MassShare p50;
    units::MassShare p90;
};

/// What is known about one piece's drying. Never stored: recomputed from the book.
struct Forecast {
    ForecastState state = ForecastState::too_few_weighings;
    std::optional<units::MassShare> loss; ///< smoothed loss at `as_of`
    std::optional<units::Instant> as_of;  ///< the last weighing used
    std::optional<ReadyDate> ready;       ///< absent when no percentile can be given
    std::optional<base::Interval<units::MassShare>> levels_off; ///< p10, p50, p90
    std::vector<BandPoint> curve;
    Findings findings;
};

} // namespace core::model
