#include "core/chamber/band_time.h"

#include <gtest/gtest.h>

namespace {

using namespace core::chamber;
using core::model::ClimateReading;
using core::units::Duration;
using core::units::Instant;
using core::units::RelativeHumidity;
using core::units::Temperature;

ClimateReading at_minute(int minute, double celsius, std::optional<double> percent = 75.0) {
    return {Instant::from_unix_seconds(minute * 60), Temperature::celsius(celsius),
            percent ? std::optional(RelativeHumidity::percent(*percent)) : std::nullopt};
}

const ClimateBand band{Temperature::celsius(10), Temperature::celsius(15),
                       RelativeHumidity::percent(70), RelativeHumidity::percent(80)};

TEST(BandTime, CountsEachSideAndKeepsTheWorst) {
    const std::vector<ClimateReading> readings{at_minute(0, 12),     at_minute(10, 16),
                                               at_minute(20, 21),    at_minute(30, 14, 60),
                                               at_minute(40, 9, 85), at_minute(50, 12)};
    const auto time = time_out_of_band(readings, band, Duration::minutes(15), Duration::minutes(1));
    EXPECT_DOUBLE_EQ(time.watched.in_minutes(), 50);
    EXPECT_DOUBLE_EQ(time.too_warm.in_minutes(), 20);
    EXPECT_DOUBLE_EQ(time.too_cold.in_minutes(), 10);
    EXPECT_DOUBLE_EQ(time.too_dry.in_minutes(), 10);
    EXPECT_DOUBLE_EQ(time.too_damp.in_minutes(), 10);
    ASSERT_EQ(time.excursions.size(), 4U);
    EXPECT_EQ(time.excursions[0].side, OutOfBand::too_warm);
    EXPECT_NEAR(time.excursions[0].worst_temperature->in_celsius(), 21, 1e-9);
    EXPECT_EQ(time.excursions[0].to.unix_seconds(), 30 * 60);
}

TEST(BandTime, AGapIsUnknownNotOutOfBand) {
    const std::vector<ClimateReading> readings{at_minute(0, 20), at_minute(600, 12),
                                               at_minute(610, 12)};
    const auto time = time_out_of_band(readings, band, Duration::minutes(30), Duration::minutes(1));
    EXPECT_DOUBLE_EQ(time.too_warm.in_minutes(), 30);
    EXPECT_DOUBLE_EQ(time.unknown.in_minutes(), 570);
    EXPECT_DOUBLE_EQ(time.watched.in_minutes(), 40);
}

TEST(BandTime, ShortExcursionsAreCountedButNotListed) {
    const std::vector<ClimateReading> readings{at_minute(0, 12), at_minute(1, 16), at_minute(2, 12),
                                               at_minute(3, 12)};
    const auto time = time_out_of_band(readings, band, Duration::minutes(5), Duration::minutes(10));
    EXPECT_DOUBLE_EQ(time.too_warm.in_minutes(), 1);
    EXPECT_TRUE(time.excursions.empty());
}

TEST(BandTime, NothingIsWatchedWithoutABandOrReadings) {
    EXPECT_EQ(time_out_of_band({}, band, Duration::hours(1), Duration::hours(0)).watched,
              Duration::seconds(0));
    const std::vector<ClimateReading> readings{at_minute(0, 90), at_minute(1, 90)};
    const auto time = time_out_of_band(readings, {}, Duration::hours(1), Duration::hours(0));
    EXPECT_TRUE(time.excursions.empty());
}

} // namespace
