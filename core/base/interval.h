#pragma once

namespace core::base {

/// A value known within bounds: low <= best <= high, all of one quantity kind. For random
/// quantities the bounds are the 10th and 90th percentile unless the field says otherwise; for
/// catalogue spreads they are the extremes stated by the source.
template <class Q>
struct Interval {
    Q low;
    Q best;
    Q high;
    static constexpr Interval exactly(Q value) { return {value, value, value}; }
    friend constexpr bool operator==(const Interval&, const Interval&) = default;
};

} // namespace core::base
