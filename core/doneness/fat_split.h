#pragma once

#include "core/base/interval.h"

/// What a piece's lean and fat are taken to hold. Bounds are p10 and p90 unless said.
namespace core::doneness::fat_split {

/// Water of raw lean pork, share: 0.74; 95 % within 0.72 and 0.76, so p10/p90 are 0.727/0.753
/// (doi 10.1007/s13197-016-2366-x).
inline constexpr base::Interval<double> lean_water{0.727, 0.74, 0.753};
/// Water of fat tissue, share: common practice says about 0.15, no source.
inline constexpr base::Interval<double> water{0.10, 0.15, 0.20};
/// Salt content of fat tissue over that of lean: 0.34 from slices of ham (derived), 0.2 to 0.5.
inline constexpr base::Interval<double> salt_over_lean{0.24, 0.34, 0.44};
/// Share of a weighed dose that ends in the piece: the rest stays in juice and on the bag.
inline constexpr base::Interval<double> dose_taken_up{0.88, 0.95, 1.0};
/// Weight lost in cure and rest: 3 %, 95 % within 2 and 5.
inline constexpr base::Interval<double> loss_in_cure{0.023, 0.03, 0.042};
/// A cut's fat when nothing is known: mostly lean.
inline constexpr base::Interval<double> unknown_fat{0.02, 0.08, 0.20};

} // namespace core::doneness::fat_split
