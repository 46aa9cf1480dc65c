#include "core/drying/drying_power.h"

#include <gtest/gtest.h>

namespace core::drying {
namespace {

using units::RelativeHumidity;
using units::Temperature;
using units::WaterActivity;

/// ASHRAE Handbook Fundamentals (2017) ch. 1: saturation pressure 2064 Pa at 18 C, 1403 Pa at
/// 12 C. From a fully wet face 18 C / 80 % draws 413 Pa, 12 C / 70 % draws 421 Pa: near equal.
TEST(DryingPower, EighteenAtEightyIsNearTwelveAtSeventy) {
    const auto wet = WaterActivity::fraction(1);
    EXPECT_NEAR(
        drying_force(Temperature::celsius(18), RelativeHumidity::percent(80), wet).in_pascals(),
        413, 1);
    EXPECT_NEAR(
        drying_force(Temperature::celsius(12), RelativeHumidity::percent(70), wet).in_pascals(),
        421, 1);
    const auto same = equal_power_humidity(Temperature::celsius(18), RelativeHumidity::percent(80),
                                           Temperature::celsius(12), wet);
    ASSERT_TRUE(same);
    EXPECT_NEAR(same->in_percent(), 70.6, 0.1);
}

TEST(DryingPower, IsItsOwnEqualAtTheSameTemperature) {
    const auto same = equal_power_humidity(Temperature::celsius(13), RelativeHumidity::percent(75),
                                           Temperature::celsius(13));
    EXPECT_NEAR(same->in_percent(), 75, 1e-9);
}

TEST(DryingPower, ColdAirCannotMatchWarmDryAir) {
    EXPECT_FALSE(equal_power_humidity(Temperature::celsius(30), RelativeHumidity::percent(30),
                                      Temperature::celsius(2)));
}

TEST(DryingPower, AirWetterThanTheFaceGivesWater) {
    EXPECT_LT(drying_force(Temperature::celsius(13), RelativeHumidity::percent(99)).in_pascals(),
              0);
}

} // namespace
} // namespace core::drying
