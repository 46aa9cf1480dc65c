#include "core/drying/discrepancy.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying {
namespace {

TEST(Discrepancy, IsNothingAtTheFirstWeighingAndGrowsWithTheHorizon) {
    const Discrepancy d = Discrepancy::usual(false, 30);
    EXPECT_EQ(d.covariance(0, 0), 0);
    EXPECT_NEAR(d.covariance(0, 20), 0, 1e-12);
    EXPECT_LT(d.covariance(10, 10), d.covariance(20, 20));
    EXPECT_LT(d.covariance(20, 20), d.covariance(80, 80));
}

/// Short times: the integral of a constant rate error, sd t; long times: a random walk,
/// 2 sd^2 memory t. (Uhlenbeck & Ornstein 1930, Phys Rev 36:823, the two limits.)
TEST(Discrepancy, LimitsOfTheIntegratedProcess) {
    const Discrepancy d({.weather_sd = 0.1, .weather_days = 10, .shape_sd = 0, .shape_days = 1});
    EXPECT_NEAR(d.covariance(0.01, 0.01), 0.1 * 0.1 * 0.01 * 0.01, 1e-9);
    EXPECT_NEAR(d.covariance(1e5, 1e5) / (2 * 0.01 * 10 * 1e5), 1, 1e-3);
}

TEST(Discrepancy, AKnownLogLeavesLessUnknown) {
    EXPECT_LT(Discrepancy::usual(true, 30).covariance(30, 30),
              Discrepancy::usual(false, 30).covariance(30, 30));
}

TEST(Discrepancy, ScaleIsOfTheRateError) {
    Discrepancy d = Discrepancy::usual(true, 30);
    const double one = d.covariance(10, 20);
    d.set_scale(3);
    EXPECT_NEAR(d.covariance(10, 20), 9 * one, 1e-12);
}

} // namespace
} // namespace core::drying
