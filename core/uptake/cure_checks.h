#pragma once

#include "core/uptake/cure_time.h"

namespace core::uptake {

/// Stop findings of a request, all of them; empty when it can be computed.
model::Findings invalid_parts(const CureRequest& request);

/// Cautions and notes about a computed estimate, listed in cure_time.h.
model::Findings remarks_on(const CureRequest& request, const CureEstimate& estimate);

/// Water in the raw piece, of its weight: lean 74 % (72 to 76), fat tissue 15 %. Raw pork lean
/// doi 10.1007/s13197-016-2366-x; fat common practice, no source.
double raw_water_share(const std::optional<units::MassShare>& fat);

/// Salt the piece would hold with its water saturated (26.3 % brine, 100 degrees SAL), of its raw
/// weight.
units::MassShare saturated_salt(const std::optional<units::MassShare>& fat);

} // namespace core::uptake
