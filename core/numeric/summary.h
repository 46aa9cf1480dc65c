#pragma once

#include <algorithm>
#include <cstdint>

namespace core::numeric {

/// Least, greatest, sum and count of numbers: one node of a min/max pyramid. Merging two nodes
/// gives the node of both their numbers; for whole numbers below 2^53 in sum it is exact, so a
/// pyramid built level by level equals one built from the bottom.
struct Summary {
    double low = 0; ///< meaningless while `count` is 0
    double high = 0;
    double sum = 0;
    std::int64_t count = 0;

    void add(double value) { merge({value, value, value, 1}); }
    void merge(const Summary& other) {
        if (other.count == 0) {
            return;
        }
        low = count == 0 ? other.low : std::min(low, other.low);
        high = count == 0 ? other.high : std::max(high, other.high);
        sum += other.sum;
        count += other.count;
    }
    /// Only when `count` > 0.
    [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
    friend bool operator==(const Summary&, const Summary&) = default;
};

} // namespace core::numeric
