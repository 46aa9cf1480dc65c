// After any sequence of logs taken in, in any order and overlapping, and taken back again, every
// stored roll-up equals a full recomputation from the readings - by core/chamber, which shares no
// code with the store.
#include "core/chamber/roll_up.h"
#include "core/store/climate.h"
#include "core/store/migrations.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <map>

using namespace core;
using model::ClimateLevel;
using model::ClimateReading;
using store::Connection;
using units::Instant;

namespace {

constexpr auto long_ago = Instant::from_unix_seconds(-10'000'000);
constexpr auto far_ahead = Instant::from_unix_seconds(10'000'000);

void add_sensors(Connection& book) {
    book.run("INSERT INTO chamber VALUES (1, 'c', 'cabinet', NULL, NULL, NULL, NULL, NULL, 0, '');"
             "INSERT INTO sensor VALUES (1, 1, 'a', '', NULL, NULL, NULL, '', 1);"
             "INSERT INTO sensor VALUES (2, 1, 'b', '', NULL, NULL, NULL, '', 1);");
}

/// Readings with holes in either quantity, close together so that logs overlap, on both sides of
/// 1970.
std::vector<ClimateReading> some_readings() {
    const auto tuples = *rc::gen::container<std::vector<std::tuple<int, int, int>>>(
        rc::gen::tuple(rc::gen::inRange(-200'000, 200'000), rc::gen::inRange(-6000, 10'000),
                       rc::gen::inRange(-2000, 11'000)));
    std::vector<ClimateReading> readings;
    for (const auto& [at, temperature, humidity] : tuples) {
        ClimateReading reading{Instant::from_unix_seconds(at / 30 * 30), {}, {}};
        if (humidity < 9000) {
            reading.temperature = units::Temperature::celsius(temperature / 100.0);
        }
        if (humidity >= 0) {
            reading.humidity = units::RelativeHumidity::percent(humidity / 100.0);
        }
        readings.push_back(reading);
    }
    return readings;
}

void require_recomputed(Connection& book, model::SensorId sensor,
                        const std::map<std::int64_t, ClimateReading>& expected) {
    const auto readings = store::climate_readings(book, sensor, long_ago, far_ahead);
    RC_ASSERT(readings.size() == expected.size());
    for (const auto& reading : readings) {
        const auto& wanted = expected.at(reading.at.unix_seconds());
        RC_ASSERT(reading.temperature.has_value() == wanted.temperature.has_value());
        RC_ASSERT(reading.humidity.has_value() == wanted.humidity.has_value());
    }
    for (const auto level : model::rolled_up_levels) {
        RC_ASSERT(store::climate_buckets(book, sensor, level, long_ago, far_ahead) ==
                  chamber::roll_up(readings, level));
    }
}

} // namespace

RC_GTEST_PROP(ClimateRollUps, EqualAFullRecomputationAfterAppendsAndUndos, ()) {
    Connection book(":memory:", store::Access::create_or_write);
    store::migrate(book, store::migrations(), "test", 0);
    add_sensors(book);
    struct Log {
        model::ClimateImportId id;
        int sensor;
        std::vector<std::int64_t> added;
    };
    std::vector<Log> logs;
    std::map<std::int64_t, ClimateReading> held[2];
    const int operations = *rc::gen::inRange(1, 12);
    for (int i = 0; i < operations; ++i) {
        store::Transaction transaction(book, store::Transaction::Kind::immediate);
        if (!logs.empty() && *rc::gen::inRange(0, 3) == 0) {
            const auto which = *rc::gen::inRange<std::size_t>(0, logs.size());
            const auto removed = store::take_back_climate_import(book, logs[which].id);
            RC_ASSERT(removed == static_cast<std::int64_t>(logs[which].added.size()));
            for (const auto at : logs[which].added) {
                held[logs[which].sensor].erase(at);
            }
            logs.erase(logs.begin() + static_cast<std::ptrdiff_t>(which));
        } else {
            Log log{{}, *rc::gen::inRange(0, 2), {}};
            log.id =
                store::begin_climate_import(book,
                                            {.sensor = model::SensorId::from_row(log.sensor + 1),
                                             .made_at = Instant::from_unix_seconds(0)},
                                            "{}");
            const auto readings = some_readings();
            store::append_climate(book, log.id, readings);
            for (const auto& reading : readings) {
                const auto at = reading.at.unix_seconds();
                if (held[log.sensor].emplace(at, reading).second) {
                    log.added.push_back(at);
                }
            }
            logs.push_back(std::move(log));
        }
        transaction.commit();
    }
    require_recomputed(book, model::SensorId::from_row(1), held[0]);
    require_recomputed(book, model::SensorId::from_row(2), held[1]);
    RC_ASSERT(store::climate_problems(book).empty());
}
