#pragma once

// Internal to core/store: the whole-number arithmetic of climate roll-ups.

#include <algorithm>
#include <cstdint>
#include <optional>
#include <vector>

namespace core::store {

/// Count, sum, least and greatest of hundredths. Whole numbers, so that adding up in another
/// order, or level by level, gives the very same bucket.
struct CentiSum {
    std::int64_t count = 0;
    std::int64_t sum = 0;
    std::int64_t least = 0; ///< meaningless while `count` is 0
    std::int64_t greatest = 0;

    void add(const CentiSum& other) {
        if (other.count == 0) {
            return;
        }
        least = count == 0 ? other.least : std::min(least, other.least);
        greatest = count == 0 ? other.greatest : std::max(greatest, other.greatest);
        sum += other.sum;
        count += other.count;
    }
    void add(std::optional<std::int64_t> value) {
        if (value) {
            add(CentiSum{1, *value, *value, *value});
        }
    }
    friend bool operator==(const CentiSum&, const CentiSum&) = default;
};

/// One row of climate_bucket, without its sensor and width.
struct BucketSums {
    std::int64_t start_s = 0;
    CentiSum temperature;
    CentiSum humidity;
    friend bool operator==(const BucketSums&, const BucketSums&) = default;
};

constexpr std::int64_t bucket_start(std::int64_t at_s, std::int64_t width_s) {
    const std::int64_t rest = at_s % width_s;
    return at_s - (rest < 0 ? rest + width_s : rest);
}

/// The bucket of `at_s` at the end of `buckets`, made if the last one is another. For moments
/// that never fall back.
inline BucketSums& bucket_at(std::vector<BucketSums>& buckets, std::int64_t at_s,
                             std::int64_t width_s) {
    const std::int64_t start = bucket_start(at_s, width_s);
    if (buckets.empty() || buckets.back().start_s != start) {
        buckets.push_back({start, {}, {}});
    }
    return buckets.back();
}

/// The next coarser level of sorted buckets.
inline std::vector<BucketSums> coarser(const std::vector<BucketSums>& buckets,
                                       std::int64_t width_s) {
    std::vector<BucketSums> out;
    for (const auto& bucket : buckets) {
        auto& wide = bucket_at(out, bucket.start_s, width_s);
        wide.temperature.add(bucket.temperature);
        wide.humidity.add(bucket.humidity);
    }
    return out;
}

} // namespace core::store
