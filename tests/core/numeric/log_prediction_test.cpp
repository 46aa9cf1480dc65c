#include "core/numeric/log_prediction.h"

#include <cmath>
#include <gtest/gtest.h>
#include <vector>

using core::numeric::log_prediction;

/// By hand: logarithms of 1.02, 1.04, 1.06 have mean 0.03910 and standard deviation 0.01923;
/// t(0.90, 2) = 1.886 (NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2), so one more
/// lies within +-1.886 * 0.01923 * sqrt(4/3) = 0.04189.
TEST(LogPrediction, WorkedByHand) {
    const auto found = log_prediction(std::vector{1.02, 1.04, 1.06}, 0.01);
    EXPECT_NEAR(found.mean, 0.03910, 5e-6);
    EXPECT_NEAR(found.reach, 0.04189, 5e-6);
}

TEST(LogPrediction, EqualNumbersAreNoCertainty) {
    const auto found = log_prediction(std::vector{7.0, 7.0}, 0.05);
    EXPECT_DOUBLE_EQ(found.mean, std::log(7.0));
    EXPECT_NEAR(found.reach, 3.078 * 0.05 * std::sqrt(1.5), 1e-12);
}

TEST(LogPrediction, ManyValuesKeepTheLastT) {
    const std::vector<double> many(40, 3.0);
    EXPECT_NEAR(log_prediction(many, 0.1).reach, 1.372 * 0.1 * std::sqrt(1 + 1 / 40.0), 1e-12);
}
