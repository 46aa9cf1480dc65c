#pragma once

#include "core/model/ids.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <array>
#include <cstdint>
#include <optional>
#include <string>

/// Climate readings in bulk: what the book keeps of them besides the readings themselves.
namespace core::model {

/// How coarsely readings are summed up. Each level's buckets fit whole into the next one's, and
/// begin at multiples of their width since 1970-01-01T00:00:00Z.
enum class ClimateLevel { reading, quarter_hour, hour, six_hours, day };

inline constexpr std::array rolled_up_levels{ClimateLevel::quarter_hour, ClimateLevel::hour,
                                             ClimateLevel::six_hours, ClimateLevel::day};

/// Bucket width in seconds; 1 for single readings (the grain of time in the book).
constexpr std::int64_t width_seconds(ClimateLevel level) {
    switch (level) {
    case ClimateLevel::quarter_hour:
        return 900;
    case ClimateLevel::hour:
        return 3600;
    case ClimateLevel::six_hours:
        return 21600;
    case ClimateLevel::day:
        return 86400;
    case ClimateLevel::reading:
        break;
    }
    return 1;
}

/// Least, mean and greatest of the `count` values of a bucket; count >= 1.
template <class Q>
struct Spread {
    Q low;
    Q mean;
    Q high;
    std::int64_t count = 1;
    friend bool operator==(const Spread&, const Spread&) = default;
};

/// What a sensor said during [start, start + width of the level). A quantity is absent when no
/// reading of the bucket had it; a bucket without either does not exist. Sensor offsets are not
/// applied.
struct ClimateBucket {
    units::Instant start;
    std::optional<Spread<units::Temperature>> temperature;
    std::optional<Spread<units::RelativeHumidity>> humidity;
    friend bool operator==(const ClimateBucket&, const ClimateBucket&) = default;
};

/// One log taken into the book: what one undo takes back.
struct ClimateImport {
    ClimateImportId id;
    SensorId sensor;
    units::Instant made_at;
    std::string file_name;
    std::int64_t added = 0;     ///< readings that were not in the book before
    std::int64_t known = 0;     ///< readings of a moment the book had already
    std::int64_t conflicts = 0; ///< of those, how many said something else; the older one stays
    std::int64_t rejected = 0;  ///< lines that are no reading
    std::optional<units::Instant> first; ///< earliest and latest reading added
    std::optional<units::Instant> last;
    bool complete = false; ///< false while it runs, and for good when it was cancelled
    bool undone = false;
};

} // namespace core::model
