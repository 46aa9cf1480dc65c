#include "core/air/moist_air.h"

#include <gtest/gtest.h>

#include <limits>

namespace {

using namespace core::air;
using core::base::ErrorCode;
using core::units::Pressure;
using core::units::RelativeHumidity;
using core::units::Temperature;

AirCondition at(double celsius, double percent) {
    return {Temperature::celsius(celsius), RelativeHumidity::percent(percent)};
}

TEST(MoistAir, SaturatedAirIsAtItsDewPointAndWetBulb) {
    const auto air = state_of(at(13, 100));
    ASSERT_TRUE(air.has_value());
    EXPECT_NEAR(air->dew_point->in_celsius(), 13, 1e-9);
    EXPECT_NEAR(air->wet_bulb->in_celsius(), 13, 1e-9);
    EXPECT_EQ(air->deficit, Pressure::pascals(0));
}

TEST(MoistAir, DryAirHasNoDewPointButAWetBulb) {
    const auto air = state_of(at(20, 0));
    ASSERT_TRUE(air.has_value());
    EXPECT_FALSE(air->dew_point.has_value());
    ASSERT_TRUE(air->wet_bulb.has_value());
    EXPECT_EQ(air->humidity_ratio, 0);
    // 20 C dry air: wet bulb 5.8 C (psychrometric chart, from memory).
    EXPECT_NEAR(air->wet_bulb->in_celsius(), 5.8, 0.1);
}

TEST(MoistAir, OrderOfTemperatures) {
    for (double t = -20; t <= 60; t += 5) {
        for (double rh = 5; rh < 100; rh += 7) {
            const auto air = state_of(at(t, rh));
            ASSERT_TRUE(air.has_value());
            EXPECT_LE(air->dew_point->in_celsius(), air->wet_bulb->in_celsius() + 1e-9);
            EXPECT_LE(air->wet_bulb->in_celsius(), t + 1e-9);
        }
    }
}

TEST(MoistAir, RefusesWhatCannotBeAndNamesTheField) {
    EXPECT_EQ(state_of(at(250, 50)).error().where, "temperature");
    EXPECT_EQ(state_of(at(-120, 50)).error().where, "temperature");
    EXPECT_EQ(state_of(at(20, 101)).error().where, "humidity");
    EXPECT_EQ(state_of(at(20, -1)).error().where, "humidity");
    EXPECT_EQ(state_of(at(20, std::numeric_limits<double>::quiet_NaN())).error().where, "humidity");
    auto thin = at(80, 100);
    thin.pressure = Pressure::pascals(20000);
    EXPECT_EQ(state_of(thin).error().where, "pressure");
    EXPECT_EQ(state_of(thin).error().code, ErrorCode::out_of_range);
}

TEST(Inverse, RefusesDewAboveAirAndImpossibleWetBulbs) {
    const auto t = Temperature::celsius(13);
    EXPECT_EQ(from_dew_point(t, Temperature::celsius(14)).error().where, "dew point");
    EXPECT_EQ(from_wet_bulb(t, Temperature::celsius(14)).error().where, "wet bulb");
    EXPECT_EQ(from_wet_bulb(t, Temperature::celsius(-5)).error().where, "wet bulb");
    EXPECT_EQ(from_humidity_ratio(t, -0.001).error().where, "humidity ratio");
    EXPECT_EQ(from_humidity_ratio(t, 0.02).error().where, "humidity ratio");
}

// Fridge air of 4 C and 85 % warmed to 13 C: 691.4580 Pa over 1497.8108 Pa = 46.16 %.
TEST(AtOtherTemperature, KeepsTheVapour) {
    const auto warm = at_other_temperature(at(4, 85), Temperature::celsius(13));
    ASSERT_TRUE(warm.has_value());
    EXPECT_NEAR(warm->humidity.in_percent(), 46.165, 0.001);
    EXPECT_EQ(at_other_temperature(at(13, 75), Temperature::celsius(4)).error().code,
              ErrorCode::out_of_range);
}

} // namespace
