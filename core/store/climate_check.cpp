#include "core/store/climate_check.h"
#include "core/store/climate.h"
#include "core/store/climate_rows.h"

#include <algorithm>
#include <limits>

namespace core::store {
namespace {

constexpr std::size_t most_told = 100;

std::vector<std::int64_t> sensors_with_climate(Connection& book) {
    // Each sensor's first row by a search of the key, not a scan of millions.
    std::vector<std::int64_t> sensors;
    for (const char* table : {"climate_reading", "climate_bucket"}) {
        const auto next = book.prepared(std::string("SELECT min(sensor_id) FROM ") + table +
                                        " WHERE sensor_id > ?1");
        std::int64_t after = -1;
        for (;;) {
            next->bind(1, after);
            next->executeStep();
            const auto sensor = optional_integer(next->getColumn(0));
            next->reset();
            if (!sensor) {
                break;
            }
            after = *sensor;
            if (std::find(sensors.begin(), sensors.end(), after) == sensors.end()) {
                sensors.push_back(after);
            }
        }
    }
    return sensors;
}

void compare(const std::vector<BucketSums>& made, const std::vector<BucketSums>& stored,
             std::int64_t sensor, std::int64_t width_s, std::vector<std::string>& problems) {
    const auto tell = [&](std::int64_t start_s, const char* what) {
        if (problems.size() < most_told) {
            problems.push_back(std::string(roll_up_problem) + "of sensor " +
                               std::to_string(sensor) + ", width " + std::to_string(width_s) +
                               " s, start " + std::to_string(start_s) + ": " + what);
        }
    };
    auto a = made.begin();
    auto b = stored.begin();
    while (a != made.end() || b != stored.end()) {
        if (b == stored.end() || (a != made.end() && a->start_s < b->start_s)) {
            tell(a->start_s, "is missing");
            ++a;
        } else if (a == made.end() || b->start_s < a->start_s) {
            tell(b->start_s, "has no readings");
            ++b;
        } else {
            if (!(*a == *b)) {
                tell(a->start_s, "does not agree with its readings");
            }
            ++a;
            ++b;
        }
    }
}

void check_owners(Connection& book, std::vector<std::string>& problems) {
    const auto orphans = book.prepared(
        "SELECT import_id, sensor_id, count(*) FROM climate_reading AS r"
        " WHERE NOT EXISTS (SELECT 1 FROM climate_import AS i WHERE i.id = r.import_id"
        "  AND i.sensor_id = r.sensor_id AND i.state <> 'undone')"
        " GROUP BY import_id, sensor_id");
    while (orphans->executeStep() && problems.size() < most_told) {
        problems.push_back(orphans->getColumn(2).getString() + " climate readings of sensor " +
                           orphans->getColumn(1).getString() + " name import " +
                           orphans->getColumn(0).getString() + ", which did not bring them");
    }
}

} // namespace

std::vector<std::string> climate_problems(Connection& book) {
    std::vector<std::string> problems;
    constexpr auto all = std::numeric_limits<std::int64_t>::max();
    for (const std::int64_t sensor : sensors_with_climate(book)) {
        auto made = quarter_hours_of_readings(book, sensor, -all, all);
        for (const std::int64_t width_s : bucket_widths_s) {
            if (width_s != bucket_widths_s.front()) {
                made = coarser(made, width_s);
            }
            compare(made, stored_buckets(book, sensor, width_s, -all, all), sensor, width_s,
                    problems);
        }
    }
    check_owners(book, problems);
    return problems;
}

void rebuild_climate_roll_ups(Connection& book) {
    book.run("DELETE FROM climate_bucket");
    for (const std::int64_t sensor : sensors_with_climate(book)) {
        const auto extent = climate_extent(book, model::SensorId::from_row(sensor));
        if (extent) {
            rebuild_buckets(book, sensor, extent->first.unix_seconds(),
                            extent->last.unix_seconds());
        }
    }
}

} // namespace core::store
