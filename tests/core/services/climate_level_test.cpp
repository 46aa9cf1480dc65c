// Which level a chart of the climate is drawn from.
#include "core/services/climate.h"

#include <gtest/gtest.h>

using core::model::ClimateLevel;
using core::services::chart_level;
using core::units::Duration;

TEST(ChartLevel, ALoggerOfAMinuteIsReadByItsReadingsForAWeekAndByQuarterHoursBeyond) {
    const auto level = [](double days) {
        return chart_level(Duration::days(days), 1200, static_cast<std::int64_t>(days * 1440));
    };
    EXPECT_EQ(level(1), ClimateLevel::reading);
    EXPECT_EQ(level(7), ClimateLevel::reading);
    EXPECT_EQ(level(9), ClimateLevel::quarter_hour) << "864 of them on 1200 pixels";
    EXPECT_EQ(level(24), ClimateLevel::quarter_hour);
    EXPECT_EQ(level(3650), ClimateLevel::day);
}

TEST(ChartLevel, ALoggerOfASecondKeepsItsReadingsWhileQuarterHoursAreWide) {
    EXPECT_EQ(chart_level(Duration::hours(12), 1200, 43'200), ClimateLevel::reading)
        << "48 quarter hours would be 25 pixels each";
    EXPECT_EQ(chart_level(Duration::days(2), 1200, 172'800), ClimateLevel::quarter_hour)
        << "more readings than a chart takes in time";
}

TEST(ChartLevel, ASparseLoggerKeepsItsReadings) {
    EXPECT_EQ(chart_level(Duration::days(20), 1200, 20 * 144), ClimateLevel::reading);
}
