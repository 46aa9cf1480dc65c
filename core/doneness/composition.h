#pragma once

#include "core/doneness/evidence.h"

#include <optional>

namespace core::doneness {

/// The mass balance behind the sheet: start weight, fat and salt fix the solids, what is left of
/// the net weight is water. nullopt when no start weight or no weighing is known, or when the
/// solids at their best estimate already weigh more than the piece (contradiction).
///
/// Spread: each uncertain part (raw moisture, fat, fat's water and salt, dose taken up, loss in
/// cure, isotherm) is moved to its p10 and p90 alone; the moves are added as squares, up and down
/// apart.
std::optional<Composition> composition_of(const EvidenceRequest& request);

/// The weight the balance starts from (trimmed, else raw), or its estimate from cured or hung
/// weight; nullopt when none is known. `estimated` tells which.
struct StartWeight {
    units::Mass mass;
    bool estimated;
};
std::optional<StartWeight> start_weight_of(const ReferenceWeights& references);

} // namespace core::doneness
