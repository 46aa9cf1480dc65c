#include "core/units/mass.h"

#include <gtest/gtest.h>

namespace {

using core::units::Mass;

// International Yard and Pound Agreement (1959): 1 lb = 0.45359237 kg exactly; 16 oz to the pound.
TEST(Mass, PoundAndOunceAreExact) {
    EXPECT_DOUBLE_EQ(Mass::pounds(1).in_kilograms(), 0.45359237);
    EXPECT_DOUBLE_EQ(Mass::pounds(1).in_ounces(), 16.0);
    EXPECT_DOUBLE_EQ(Mass::ounces(1).in_grams(), 28.349523125);
}

TEST(Mass, SumsScalesAndCompares) {
    EXPECT_EQ(Mass::grams(50) + Mass::kilograms(1), Mass::grams(1050));
    EXPECT_EQ(2 * Mass::grams(50), Mass::grams(100));
    EXPECT_DOUBLE_EQ(Mass::grams(50) / Mass::grams(200), 0.25);
    EXPECT_LT(Mass::grams(1), Mass::grams(2));
}

} // namespace
