#include "core/uptake/salt_diffusivity.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace core::uptake;
using core::units::Duration;
using core::units::Temperature;

const auto five = Temperature::celsius(5);

double median(double celsius, bool thawed = false) {
    return salt_diffusivity(Temperature::celsius(celsius), thawed).in_m2_per_second();
}

TEST(SaltDiffusivity, MedianAndRangeAtFiveDegrees) {
    EXPECT_DOUBLE_EQ(median(5), 2.5e-10);
    const auto range = salt_diffusivity_range(five, false);
    // ln(6/1.2)/(2 x 1.96) = 0.41057; p90 = 2.5e-10 exp(1.2816 x 0.41057) = 4.231e-10.
    EXPECT_NEAR(range.high.in_m2_per_second(), 4.231e-10, 0.005e-10);
    EXPECT_NEAR(range.low.in_m2_per_second(), 2.5e-10 * 2.5e-10 / 4.231e-10, 0.005e-10);
    // The measured (1.90 +- 0.28)e-10 at 5 C lies inside.
    EXPECT_LT(range.low.in_m2_per_second(), 1.9e-10);
}

// Arrhenius by hand: 25 kJ/mol from 5 to 15 C: exp(25000/8.3145 (1/278.15 - 1/288.15)) = 1.4551.
TEST(SaltDiffusivity, WarmthAndThawing) {
    EXPECT_NEAR(median(15) / median(5), 1.4551, 0.0005);
    EXPECT_NEAR(median(5, true) / median(5), 1.3, 1e-12);
}

TEST(SaltDiffusivity, SpreadGrowsAwayFromFiveDegrees) {
    const auto spread = [](double c) {
        const auto r = salt_diffusivity_range(Temperature::celsius(c), false);
        return r.high / r.low;
    };
    EXPECT_GT(spread(15), spread(5));
    EXPECT_GT(spread(-1.5), spread(5));
}

TEST(CureClock, AddsPathsAndStopsWhenFrozen) {
    const CureClock clock({{Duration::days(2), five},
                           {Duration::days(3), five, true},
                           {Duration::days(1), Temperature::celsius(-10)}},
                          {Duration::days(0), five}, false);
    const double day = 2.5e-10 * 86400;
    EXPECT_NEAR(clock.path_m2(Duration::days(2)), 2 * day, 1e-12);
    EXPECT_NEAR(clock.path_m2(Duration::days(6)), 2 * day, 1e-12);
    EXPECT_NEAR(clock.path_m2(Duration::days(8)), 4 * day, 1e-12);
    EXPECT_NEAR(clock.time_at(1 * day)->in_days(), 1, 1e-9);
    EXPECT_NEAR(clock.time_at(3 * day)->in_days(), 7, 1e-9);
    EXPECT_EQ(clock.time_at(0)->in_days(), 0);
}

TEST(CureClock, FrozenForGoodNeverArrives) {
    const CureClock clock({{Duration::days(2), five}},
                          {Duration::days(0), Temperature::celsius(-18)}, false);
    EXPECT_TRUE(clock.time_at(2.5e-10 * 86400).has_value());
    EXPECT_FALSE(clock.time_at(2.5e-10 * 86400 * 3).has_value());
}

} // namespace
