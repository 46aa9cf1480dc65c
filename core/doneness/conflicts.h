#pragma once

#include "core/doneness/evidence.h"

namespace core::doneness {

/// What in the evidence contradicts itself or asks for a look, listed in evidence.h. Thresholds
/// of the trade (common practice, no source): whole muscle loses 0.6 to 1.2 % a day over its first
/// weeks; below 0.1 % a day a piece is flat.
model::Findings conflicts_in(const EvidenceRequest& request, const EvidenceSheet& sheet);

/// Stop findings of input that cannot be (evidence_out_of_range); empty when all is well.
model::Findings impossible_input(const EvidenceRequest& request);

} // namespace core::doneness
