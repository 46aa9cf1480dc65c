#include "core/numeric/quadrature.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::base::ErrorCode;
using core::numeric::integrate;

// Integral of the standard normal density over one standard deviation each side: erf(1/sqrt 2).
TEST(Integrate, NormalDensity) {
    const auto area = integrate([](double x) { return std::exp(-x * x / 2); }, -1, 1);
    ASSERT_TRUE(area.has_value());
    EXPECT_NEAR(area->value / std::sqrt(2 * 3.14159265358979324), std::erf(std::sqrt(0.5)), 1e-14);
    EXPECT_LT(area->error, 1e-10);
}

TEST(Integrate, EitherOrderAndEmptyRange) {
    const auto square = [](double x) { return x * x; };
    EXPECT_NEAR(integrate(square, 1, 0)->value, -1.0 / 3.0, 1e-15);
    EXPECT_EQ(integrate(square, 2, 2)->value, 0);
}

TEST(Integrate, ZeroByCancellation) {
    const auto odd = integrate([](double x) { return x * x * x; }, -1, 1);
    ASSERT_TRUE(odd.has_value());
    EXPECT_NEAR(odd->value, 0, 1e-15);
}

TEST(Integrate, FaultsAreNamed) {
    EXPECT_EQ(integrate([](double x) { return 1 / (x * x); }, 0, 1, 1e-10).error().code,
              ErrorCode::no_convergence);
    EXPECT_EQ(integrate([](double x) { return std::sqrt(x); }, -1, 1).error().code,
              ErrorCode::no_solution);
    EXPECT_EQ(integrate([](double x) { return x; }, 0, HUGE_VAL).error().code,
              ErrorCode::no_solution);
}

} // namespace
