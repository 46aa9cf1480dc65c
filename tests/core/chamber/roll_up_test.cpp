#include "core/chamber/roll_up.h"

#include "core/chamber/climate_series.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numeric>

namespace {

using namespace core::chamber;
using core::model::ClimateLevel;
using core::model::ClimateReading;
using core::units::Duration;
using core::units::Instant;
using core::units::RelativeHumidity;
using core::units::Temperature;

ClimateReading reading(std::int64_t at, double celsius, double percent) {
    return {Instant::from_unix_seconds(at), Temperature::celsius(celsius),
            RelativeHumidity::percent(percent)};
}

TEST(RollUp, GivesLeastMeanAndGreatestOfEachBucket) {
    const std::vector<ClimateReading> readings{reading(-1, 10, 70), reading(0, 12, 75),
                                               reading(899, 14, 74), reading(900, 20, 60)};
    const auto buckets = roll_up(readings, ClimateLevel::quarter_hour);
    ASSERT_EQ(buckets.size(), 3U);
    EXPECT_EQ(buckets[0].start.unix_seconds(), -900); // before 1970 buckets still go down
    EXPECT_EQ(buckets[1].start.unix_seconds(), 0);
    EXPECT_NEAR(buckets[1].temperature->low.in_celsius(), 12, 1e-9);
    EXPECT_NEAR(buckets[1].temperature->mean.in_celsius(), 13, 1e-9);
    EXPECT_NEAR(buckets[1].temperature->high.in_celsius(), 14, 1e-9);
    EXPECT_EQ(buckets[1].humidity->count, 2);
}

TEST(RollUp, TakesTheCoarsestLevelWithEnoughBuckets) {
    EXPECT_EQ(level_for(Duration::days(1), 2400), ClimateLevel::reading);
    EXPECT_EQ(level_for(Duration::days(25), 2400), ClimateLevel::quarter_hour);
    EXPECT_EQ(level_for(Duration::days(100), 2400), ClimateLevel::hour);
    EXPECT_EQ(level_for(Duration::days(600), 2400), ClimateLevel::six_hours);
    EXPECT_EQ(level_for(Duration::days(3650), 2400), ClimateLevel::day);
}

// A level built from all readings has the totals of any other level, whatever the order.
RC_GTEST_PROP(RollUp, LevelsAgreeAndOrderDoesNotMatter, ()) {
    const auto times = *rc::gen::container<std::vector<int>>(rc::gen::inRange(-200000, 200000));
    std::vector<ClimateReading> readings;
    for (const int at : times) {
        readings.push_back(reading(at, (at % 3000) / 100.0, std::abs(at % 9000) / 100.0));
    }
    auto reversed = readings;
    std::reverse(reversed.begin(), reversed.end());
    for (const auto level : core::model::rolled_up_levels) {
        const auto buckets = roll_up(readings, level);
        RC_ASSERT(buckets == roll_up(reversed, level));
        const auto count =
            std::accumulate(buckets.begin(), buckets.end(), std::int64_t{0},
                            [](std::int64_t n, const auto& b) { return n + b.temperature->count; });
        RC_ASSERT(count == static_cast<std::int64_t>(readings.size()));
    }
}

TEST(ClimateSeries, DrawsAPauseAsAGapAndKeepsTheExtremes) {
    std::vector<ClimateReading> readings;
    for (int minute = 0; minute < 600; ++minute) {
        if (minute < 200 || minute >= 260) {
            readings.push_back(reading(minute * 60, minute == 300 ? 21.0 : 12.0, 75));
        }
    }
    const auto buckets = roll_up(readings, ClimateLevel::reading);
    const auto series =
        climate_series(buckets, ClimateLevel::reading, {}, Instant::from_unix_seconds(0),
                       Instant::from_unix_seconds(36000), 50);
    ASSERT_EQ(series.gaps.size(), 1U);
    EXPECT_EQ(series.gaps[0].from.unix_seconds(), 200 * 60);
    EXPECT_EQ(series.gaps[0].to.unix_seconds(), 260 * 60);
    EXPECT_LE(series.points.size(), 51U);
    double high = 0;
    std::int64_t count = 0;
    for (const auto& point : series.points) {
        high = std::max(high, point.temperature->high.in_celsius());
        count += point.temperature->count;
        EXPECT_TRUE(point.to <= series.gaps[0].from || point.from >= series.gaps[0].to);
    }
    EXPECT_NEAR(high, 21.0, 1e-9); // one minute of 600 shows
    EXPECT_EQ(count, 540);
}

// ASHRAE Handbook Fundamentals (2017) ch. 1 relations, worked at 13 C and 75 %: dew point 8.6777 C,
// deficit 374.45 Pa (tests/reference holds the whole list).
TEST(ClimateSeries, DewPointAndDryingForceAreOfTheCorrectedAir) {
    const std::vector<ClimateReading> readings{reading(0, 12.0, 72), reading(60, 12.0, 72)};
    const SensorOffsets offsets{core::units::TemperatureStep::kelvins(1),
                                RelativeHumidity::percent(3)};
    const auto series =
        climate_series(roll_up(readings, ClimateLevel::reading), ClimateLevel::reading, offsets,
                       Instant::from_unix_seconds(0), Instant::from_unix_seconds(3600), 1);
    ASSERT_EQ(series.points.size(), 1U);
    EXPECT_NEAR(series.points[0].dew_point->in_celsius(), 8.677716, 1e-4);
    EXPECT_NEAR(series.points[0].drying_force->in_pascals(), 374.4527, 1e-2);
}

} // namespace
