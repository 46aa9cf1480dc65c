#include "core/numeric/root.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace {

using core::base::ErrorCode;
using core::numeric::find_root;

// The Dottie number, cos x = x: 0.739085133215160641655312... (OEIS A003957).
TEST(FindRoot, DottieNumber) {
    const auto root = find_root([](double x) { return std::cos(x) - x; }, 0, 1);
    ASSERT_TRUE(root.has_value());
    EXPECT_NEAR(*root, 0.7390851332151607, 2e-16);
}

TEST(FindRoot, TinyAndHugeRootsKeepRelativePrecision) {
    const auto tiny = find_root([](double x) { return x - 3e-200; }, 0, 1);
    ASSERT_TRUE(tiny.has_value());
    EXPECT_NEAR(*tiny / 3e-200, 1.0, 1e-14);
    const auto huge = find_root([](double x) { return x - 3e200; }, -1, 1e300);
    ASSERT_TRUE(huge.has_value());
    EXPECT_NEAR(*huge / 3e200, 1.0, 1e-14);
}

TEST(FindRoot, RootAtABound) {
    EXPECT_EQ(find_root([](double x) { return x; }, 0, 1).value(), 0);
    EXPECT_EQ(find_root([](double x) { return x - 1; }, 0, 1).value(), 1);
}

TEST(FindRoot, RefusesWhatHasNoBracket) {
    EXPECT_EQ(find_root([](double x) { return x * x + 1; }, -1, 1).error().code,
              ErrorCode::no_solution);
    EXPECT_EQ(find_root([](double x) { return x; }, 1, -1).error().code, ErrorCode::no_solution);
    EXPECT_EQ(find_root([](double x) { return x; }, -std::numeric_limits<double>::infinity(), 1)
                  .error()
                  .code,
              ErrorCode::no_solution);
    EXPECT_EQ(find_root({}, 0, 1).error().code, ErrorCode::no_solution);
}

TEST(FindRoot, NoValueInsideIsAFaultNotACrash) {
    const auto hole = [](double x) {
        return x > 0.2 && x < 0.8 ? std::numeric_limits<double>::quiet_NaN() : x - 0.5;
    };
    EXPECT_EQ(find_root(hole, 0, 1).error().code, ErrorCode::no_solution);
    const auto thrower = [](double) -> double { throw 1; };
    EXPECT_EQ(find_root(thrower, 0, 1).error().code, ErrorCode::no_solution);
}

} // namespace
