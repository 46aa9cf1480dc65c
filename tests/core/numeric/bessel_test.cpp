#include "core/numeric/bessel.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace core::numeric;

// NIST Digital Library of Mathematical Functions and Abramowitz & Stegun, tables 9.1 and 9.5
// (from memory; the zeros are checked by their own definition below).
TEST(Bessel, TabulatedValues) {
    EXPECT_EQ(bessel_j0(0), 1);
    EXPECT_EQ(bessel_j1(0), 0);
    EXPECT_NEAR(bessel_j0(1), 0.7651976865579666, 1e-15);
    EXPECT_NEAR(bessel_j1(1), 0.4400505857449335, 1e-15);
    EXPECT_NEAR(bessel_j0_zero(1), 2.404825557695773, 1e-14);
    EXPECT_NEAR(bessel_j1_zero(1), 3.831705970207512, 1e-14);
}

TEST(Bessel, ZerosAreZerosAndSpacedByPi) {
    for (unsigned n = 1; n <= 60; ++n) {
        EXPECT_NEAR(bessel_j0(bessel_j0_zero(n)), 0, 1e-13) << n;
        EXPECT_NEAR(bessel_j1(bessel_j1_zero(n)), 0, 1e-13) << n;
    }
    EXPECT_NEAR(bessel_j0_zero(60) - bessel_j0_zero(59), 3.14159265, 1e-4);
}

TEST(Bessel, OutsideTheRangeIsNaNNotAnAbort) {
    EXPECT_TRUE(std::isnan(bessel_j0_zero(0)));
    EXPECT_TRUE(std::isnan(bessel_j1_zero(0)));
    EXPECT_EQ(bessel_j1(1e-320), 0);
}

} // namespace
