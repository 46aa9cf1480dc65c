#pragma once

#include "core/doneness/evidence.h"

#include <optional>
#include <vector>

namespace core::doneness {

/// Losses against every known start weight, in the order raw, trimmed, cured, hung.
std::vector<LossOnReference> losses_of(const EvidenceRequest& request);

/// How the loss came about; nullopt with fewer than two weighings or no start weight at all (the
/// first weighing then stands in for the reference).
std::optional<RateHistory> rates_of(const EvidenceRequest& request);

/// Mean loss per day from the first weighing to the first one at or past `loss` of `start`, and
/// the days it took; nullopt when it was not reached or took less than a day.
struct WayToLoss {
    units::MassShare per_day;
    units::Duration took;
};
std::optional<WayToLoss> way_to_loss(const std::vector<NetWeight>& weights, units::Mass start,
                                     units::MassShare loss);

} // namespace core::doneness
