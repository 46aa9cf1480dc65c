#pragma once

#include "core/base/interval.h"
#include "core/units/mass.h"

#include <optional>
#include <span>

namespace core::drying {

/// A weight of a piece before the one that is known (raw before hung, say), from how much heavier
/// its siblings were then: `ratios` are their earlier weight over their later one, each > 0.
/// `later` is this piece's later weight, an interval (10th, 50th, 90th percentile) where it is
/// estimated itself. The result is the 10th, 50th and 90th percentile for one more piece of the
/// same kind (a prediction interval in logarithms, Student's t; NIST/SEMATECH e-Handbook, 1.3.6.7.2
/// has the table), the spread never taken below 1 % (common practice, no source). Absent with
/// fewer than two siblings or a weight or ratio that is not above 0.
std::optional<base::Interval<units::Mass>> earlier_weight(base::Interval<units::Mass> later,
                                                          std::span<const double> ratios);

} // namespace core::drying
