#include "core/drying/earlier_weight.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

namespace core::drying {
namespace {

using units::Mass;

base::Interval<Mass> known(double grams) {
    return {Mass::grams(grams), Mass::grams(grams), Mass::grams(grams)};
}

/// Worked by hand: logarithms of 1.02, 1.04, 1.06 have mean 0.03910 and standard deviation
/// 0.01923; t(0.90, 2) = 1.886 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2), so
/// one more piece lies within +-1.886 * 0.01923 * sqrt(4/3) = 0.04189.
TEST(EarlierWeight, IsThePredictionIntervalOfTheSiblings) {
    const std::vector<double> ratios = {1.02, 1.04, 1.06};
    const auto raw = earlier_weight(known(1000), ratios);
    ASSERT_TRUE(raw);
    EXPECT_NEAR(raw->best.in_grams(), 1000 * std::exp(0.03910), 0.1);
    EXPECT_NEAR(raw->low.in_grams(), 1000 * std::exp(0.03910 - 0.04189), 0.2);
    EXPECT_NEAR(raw->high.in_grams(), 1000 * std::exp(0.03910 + 0.04189), 0.2);
}

TEST(EarlierWeight, AnEstimatedLaterWeightWidensIt) {
    const std::vector<double> ratios = {1.03, 1.03, 1.03, 1.03};
    const auto sharp = earlier_weight(known(1000), ratios);
    const auto vague =
        earlier_weight({Mass::grams(950), Mass::grams(1000), Mass::grams(1060)}, ratios);
    ASSERT_TRUE(sharp && vague);
    EXPECT_LT(sharp->low, sharp->best) << "four equal siblings are no certainty";
    EXPECT_LT(vague->low, sharp->low);
    EXPECT_GT(vague->high, sharp->high);
    EXPECT_LT(vague->high.in_grams(), 1060 * 1.03 * 1.03) << "spreads add in squares";
}

TEST(EarlierWeight, OneSiblingOrNonsenseIsNoAnswer) {
    const std::vector<double> one = {1.03};
    EXPECT_FALSE(earlier_weight(known(1000), one));
    const std::vector<double> bad = {1.03, 0};
    EXPECT_FALSE(earlier_weight(known(1000), bad));
    const std::vector<double> good = {1.03, 1.04};
    EXPECT_FALSE(earlier_weight(known(0), good));
}

} // namespace
} // namespace core::drying
