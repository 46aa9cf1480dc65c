#pragma once

#include "core/doneness/evidence.h"

#include <vector>

namespace core::doneness {

/// The sheet's figures beside every cited hurdle and every organism's lowest water activity. A
/// measured figure takes the place of the estimate and is marked.
std::vector<HurdleCheck> hurdle_checks(const EvidenceSheet& sheet, const facts::Hurdles& hurdles);

/// Where an interval stands to a limit. `at_least`: the limit is a lower one.
HurdleCheck::Stands stands(const base::Interval<double>& value, double limit, bool at_least);

} // namespace core::doneness
