#include "ui/charts/climate_chart.h"

#include "core/chamber/roll_up.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace ui::charts;
using core::model::ClimateReading;
using core::units::Instant;
using core::units::RelativeHumidity;
using core::units::Temperature;

constexpr std::int64_t start_s = 1'746'093'600; // 2025-05-01T10:00:00Z

/// Ten hours, one reading a minute, without the fourth hour.
ClimateChartInput with_a_gap() {
    std::vector<ClimateReading> readings;
    for (int minute = 0; minute < 600; ++minute) {
        if (minute < 180 || minute >= 240) {
            readings.push_back({Instant::from_unix_seconds(start_s + minute * 60),
                                Temperature::celsius(minute == 300 ? 21 : 12),
                                RelativeHumidity::percent(75)});
        }
    }
    const auto buckets = core::chamber::roll_up(readings, core::model::ClimateLevel::reading);
    ClimateChartInput input;
    input.title = QStringLiteral("Air in Cellar");
    input.curves.push_back(
        {QStringLiteral("door"),
         core::chamber::climate_series(buckets, core::model::ClimateLevel::reading, {},
                                       Instant::from_unix_seconds(start_s),
                                       Instant::from_unix_seconds(start_s + 36000), 60)});
    input.band.low_temperature = Temperature::celsius(10);
    input.band.high_temperature = Temperature::celsius(15);
    input.band.low_humidity = RelativeHumidity::percent(70);
    input.band.high_humidity = RelativeHumidity::percent(80);
    input.stages.push_back({Instant::from_unix_seconds(start_s),
                            Instant::from_unix_seconds(start_s + 3600), QStringLiteral("B07 dry")});
    return input;
}

int blanks(const Series& series) {
    int count = 0;
    for (const auto& point : series.points) {
        count += std::isnan(point.y) ? 1 : 0;
    }
    return count;
}

TEST(ClimateChart, LeavesAGapBlankInEveryLine) {
    const auto spec = climate_chart(with_a_gap(), ClimateQuantity::temperature, {});
    ASSERT_EQ(spec.series.size(), 2); // the temperature and its dew point
    EXPECT_EQ(blanks(spec.series[0]), 1);
    EXPECT_EQ(blanks(spec.series[1]), 1);
    ASSERT_EQ(spec.bands.size(), 1);
    int blank_bands = 0;
    for (const double low : spec.bands[0].low) {
        blank_bands += std::isnan(low) ? 1 : 0;
    }
    EXPECT_EQ(blank_bands, 1);
    for (const auto& strip : spec.strips) {
        int blank = 0;
        for (const auto& point : strip.points) {
            blank += std::isnan(point.mean) ? 1 : 0;
        }
        EXPECT_EQ(blank, 1) << strip.name.toStdString();
    }
}

TEST(ClimateChart, HasATableWithACellAQuantity) {
    const auto spec = climate_chart(with_a_gap(), ClimateQuantity::temperature, {});
    const auto rows = rows_of(spec);
    ASSERT_FALSE(rows.isEmpty());
    ASSERT_EQ(rows[0].cells.size(), spec.columns.size());
    EXPECT_TRUE(rows[0].cells[1].startsWith(QStringLiteral("12")));
    EXPECT_TRUE(rows[0].cells[2].startsWith(QStringLiteral("75")));
    int silent = 0;
    for (const auto& row : rows) {
        silent += row.cells.value(0) == QStringLiteral("no readings") ? 1 : 0;
    }
    EXPECT_EQ(silent, 1);
    EXPECT_FALSE(spec.series[0].legend.isEmpty());
}

TEST(ClimateChart, KeepsTheOneWarmMinuteInTheEnvelope) {
    const auto spec = climate_chart(with_a_gap(), ClimateQuantity::temperature, {});
    double most = 0;
    for (const double high : spec.bands[0].high) {
        most = std::isnan(high) ? most : std::max(most, high);
    }
    EXPECT_NEAR(most, 21, 1e-9);
    EXPECT_EQ(spec.levels.size(), 2);
    ASSERT_EQ(spec.stretches.size(), 1);
    EXPECT_DOUBLE_EQ(spec.stretches[0].from, static_cast<double>(start_s));
}

TEST(ClimateChart, ShowsTheOtherTwoQuantitiesAsStrips) {
    for (const auto quantity :
         {ClimateQuantity::temperature, ClimateQuantity::humidity, ClimateQuantity::drying_force}) {
        const auto spec = climate_chart(with_a_gap(), quantity, {});
        EXPECT_EQ(spec.strips.size(), 2);
        EXPECT_FALSE(spec.summary.isEmpty());
    }
    const auto spec = climate_chart(with_a_gap(), ClimateQuantity::drying_force, {});
    EXPECT_TRUE(spec.bands.isEmpty()); // a deficit of means has no envelope of its own
    ASSERT_TRUE(spec.strips[1].wanted.has_value());
    EXPECT_NEAR(spec.strips[1].wanted->first, 70, 1e-9);
}

TEST(ClimateChart, WritesFahrenheitWhereThePersonDoes) {
    ui::text::Style style;
    style.temperature = ui::text::TemperatureStyle::fahrenheit;
    const auto spec = climate_chart(with_a_gap(), ClimateQuantity::temperature, style);
    EXPECT_NEAR(spec.series[0].points.front().y, 53.6, 1e-9);
    EXPECT_NEAR(spec.levels[0].y, 50, 1e-9);
}

TEST(ClimateChart, SaysSoWhenThereAreNoReadings) {
    ClimateChartInput input;
    input.curves.push_back({QStringLiteral("door"), {}});
    const auto spec = climate_chart(input, ClimateQuantity::humidity, {});
    EXPECT_TRUE(spec.summary.contains(QStringLiteral("no readings")));
}

} // namespace
