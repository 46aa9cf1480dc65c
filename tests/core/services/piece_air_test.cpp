// The air around a piece: where it hung when, and what the sensors there said.
#include "core/services/piece_air.h"
#include "core/store/climate.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::services;
using model::ChamberId;
using model::EventKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using units::Duration;
using units::Instant;

namespace {

constexpr std::int64_t start_s = 1'772'323'200; // 2026-03-01T00:00:00Z

Instant day(double n) {
    return at_s(start_s) + Duration::days(n);
}

model::PieceEvent event(EventKind kind, double at, std::optional<int> chamber = {}) {
    model::PieceEvent made{.kind = kind, .at = day(at)};
    if (chamber) {
        made.chamber = ChamberId::from_row(*chamber);
    }
    return made;
}

PieceHistory history(std::vector<model::PieceEvent> events, std::optional<int> now_in = {}) {
    PieceHistory made;
    made.events = std::move(events);
    if (now_in) {
        made.piece.chamber = ChamberId::from_row(*now_in);
    }
    return made;
}

Stay stay(int chamber, double from, double to) {
    return {ChamberId::from_row(chamber), day(from), day(to)};
}

/// Two chambers: the first has a sensor that reads 10 C and 80 % and says little, and one that
/// reads 12 C and 70 % but is half a degree and three percent low; the second 15 C and 60 %.
class PieceAirTest : public ::testing::Test {
  protected:
    PieceAirTest() : path_(folder_.file("air.saltloft")) {
        {
            auto book = Book::create(path_, {.now = day(0)});
            for (const int chamber : {1, 2}) {
                model::Chamber made;
                made.name = "C" + std::to_string(chamber);
                (void)book->perform(actions::AddChamber{made}, context());
            }
            add_sensor(*book, 1, {}, {});
            add_sensor(*book, 1, 0.5, 3);
            add_sensor(*book, 2, {}, {});
        }
        fill(1, 2, 10, 80);
        fill(2, 30, 12, 70);
        fill(3, 30, 15, 60);
    }

    static void add_sensor(Book& book, int chamber, std::optional<double> warmer,
                           std::optional<double> damper) {
        model::Sensor sensor;
        sensor.chamber = ChamberId::from_row(chamber);
        sensor.name = "logger";
        if (warmer) {
            sensor.temperature_offset = units::TemperatureStep::kelvins(*warmer);
        }
        if (damper) {
            sensor.humidity_offset = units::RelativeHumidity::percent(*damper);
        }
        EXPECT_TRUE(book.perform(actions::AddSensor{sensor}, context()));
    }

    void fill(int sensor, int days, double celsius, double percent) {
        auto book = std::move(*store::Store::open(path_, {.now = day(0)}));
        std::vector<model::ClimateReading> readings;
        for (int hour = 0; hour < days * 24; ++hour) {
            readings.push_back({day(hour / 24.0), units::Temperature::celsius(celsius),
                                units::RelativeHumidity::percent(percent)});
        }
        ASSERT_TRUE(book->change([&](store::Connection& c) {
            const auto id = store::begin_climate_import(
                c, {.sensor = model::SensorId::from_row(sensor), .made_at = day(0)}, "{}");
            store::append_climate(c, id, readings);
            store::end_climate_import(c, id, {.at = day(0)});
        }));
    }

    saltloft::testing::TempFolder folder_;
    std::string path_;
};

} // namespace

TEST(Stays, BeginWithHangingAndFollowTheMoves) {
    EXPECT_TRUE(stays_of(history({event(EventKind::dressed, 0)}, 1), day(9)).empty());
    EXPECT_EQ(stays_of(history({event(EventKind::hung, 1)}, 2), day(9)),
              (std::vector{stay(2, 1, 9)}));
    EXPECT_EQ(
        stays_of(history({event(EventKind::hung, 1, 1), event(EventKind::moved, 4, 2)}, 2), day(9)),
        (std::vector{stay(1, 1, 4), stay(2, 4, 9)}));
}

TEST(Stays, WhereItHungBeforeAMoveIsUnknownUnlessWritten) {
    const auto stays =
        stays_of(history({event(EventKind::hung, 1), event(EventKind::moved, 4, 2)}, 2), day(9));
    ASSERT_EQ(stays.size(), 2U);
    EXPECT_FALSE(stays[0].chamber);
    EXPECT_EQ(stays[1], stay(2, 4, 9));
}

TEST(Stays, LeaveFrozenTimesOut) {
    EXPECT_EQ(stays_of(history({event(EventKind::hung, 1, 1), event(EventKind::frozen, 3),
                                event(EventKind::thawed, 5)}),
                       day(9)),
              (std::vector{stay(1, 1, 3), stay(1, 5, 9)}));
    EXPECT_EQ(
        stays_of(history({event(EventKind::hung, 1, 1), event(EventKind::frozen, 3)}), day(9)),
        (std::vector{stay(1, 1, 3)}));
}

TEST_F(PieceAirTest, TheSensorWithMostToSaySpeaksWithItsOffsets) {
    const auto book = *Book::open(path_, {.now = day(10)});
    PieceAir air(book, day(10));
    const auto around = air.around(history({event(EventKind::hung, 1, 1)}));
    ASSERT_EQ(around.size(), 36U) << "nine days of six-hour means";
    EXPECT_EQ(around.front().at, day(1) + Duration::hours(3));
    for (const auto& reading : around) {
        EXPECT_NEAR(reading.temperature.in_celsius(), 12.5, 1e-9);
        EXPECT_NEAR(reading.humidity.in_percent(), 73, 1e-9);
    }
}

TEST_F(PieceAirTest, FollowsThePieceAndReachesBackForAnOlderOne) {
    const auto book = *Book::open(path_, {.now = day(10)});
    PieceAir air(book, day(10));
    EXPECT_EQ(air.around(history({event(EventKind::hung, 8, 2)})).size(), 8U);
    const auto around =
        air.around(history({event(EventKind::hung, 2, 1), event(EventKind::moved, 4, 2)}, 2));
    ASSERT_EQ(around.size(), 32U);
    EXPECT_NEAR(around[7].temperature.in_celsius(), 12.5, 1e-9);
    EXPECT_NEAR(around[8].temperature.in_celsius(), 15, 1e-9);
}

TEST_F(PieceAirTest, ReadingsBeforeAFreezerMoveAsTheWeighingsDo) {
    const auto book = *Book::open(path_, {.now = day(10)});
    const auto around =
        PieceAir(book, day(10))
            .around(history({event(EventKind::hung, 1, 2), event(EventKind::frozen, 3),
                             event(EventKind::thawed, 5)}));
    ASSERT_EQ(around.size(), 28U);
    EXPECT_EQ(around.front().at, day(3) + Duration::hours(3));
    EXPECT_EQ(around[8].at, day(5) + Duration::hours(3));
}

TEST_F(PieceAirTest, AChamberWithoutSensorsHasNoAir) {
    const auto book = *Book::open(path_, {.now = day(10)});
    EXPECT_TRUE(PieceAir(book, day(10)).around(history({event(EventKind::hung, 1, 7)})).empty());
    EXPECT_TRUE(PieceAir(book, day(10)).around(history({event(EventKind::hung, 1)})).empty());
}
