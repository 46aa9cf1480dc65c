#include "core/drying/loss_curve.h"

#include <gtest/gtest.h>

namespace core::drying {
namespace {

LossCurve curve() {
    LossCurve c;
    c.add(0, 0);
    c.add(2, 0.1);
    c.add(6, 0.2);
    return c;
}

TEST(LossCurve, StraightBetweenNodesAndFlatOutside) {
    EXPECT_DOUBLE_EQ(curve().at(1), 0.05);
    EXPECT_DOUBLE_EQ(curve().at(4), 0.15);
    EXPECT_DOUBLE_EQ(curve().at(-1), 0);
    EXPECT_DOUBLE_EQ(curve().at(9), 0.2);
    EXPECT_DOUBLE_EQ(curve().rate_at(1), 0.05);
    EXPECT_DOUBLE_EQ(curve().rate_at(3), 0.025);
}

TEST(LossCurve, CrossingIsTheFirstTimeOrNone) {
    EXPECT_DOUBLE_EQ(*curve().crossing(0.15), 4);
    EXPECT_DOUBLE_EQ(*curve().crossing(0), 0);
    EXPECT_FALSE(curve().crossing(0.21));
}

TEST(LossCurve, EmptyAndSingleNodeAreFlat) {
    LossCurve c;
    EXPECT_EQ(c.at(3), 0);
    EXPECT_EQ(c.rate_at(3), 0);
    c.add(0, 0.04);
    EXPECT_DOUBLE_EQ(c.at(3), 0.04);
}

} // namespace
} // namespace core::drying
