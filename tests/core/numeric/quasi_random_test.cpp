#include "core/numeric/quasi_random.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::numeric {
namespace {

TEST(QuasiRandom, IsTheSameEveryTime) {
    const QuasiRandom a(64, 9, 8), b(64, 9, 8);
    for (std::size_t i = 0; i < a.count(); ++i) {
        for (std::size_t k = 0; k < 10; ++k) {
            EXPECT_EQ(a.point(i)[k], b.point(i)[k]);
        }
    }
}

TEST(QuasiRandom, MomentsOfTheNormalAndChiSquareCoordinates) {
    const QuasiRandom q(4096, 3, 8);
    for (std::size_t k = 0; k < 3; ++k) {
        double mean = 0, square = 0;
        for (std::size_t i = 0; i < q.count(); ++i) {
            mean += q.point(i)[k] / 4096;
            square += q.point(i)[k] * q.point(i)[k] / 4096;
        }
        EXPECT_NEAR(mean, 0, 0.005);
        EXPECT_NEAR(square, 1, 0.01);
    }
    double chi = 0;
    for (std::size_t i = 0; i < q.count(); ++i) {
        chi += q.point(i)[3] / 4096;
    }
    EXPECT_NEAR(chi, 8, 0.05);
}

TEST(NormalQuantile, KnownPercentagePoints) {
    // NIST/SEMATECH e-Handbook of Statistical Methods, table of the normal distribution.
    EXPECT_NEAR(normal_quantile(0.975), 1.959964, 1e-6);
    EXPECT_NEAR(normal_quantile(0.9), 1.281552, 1e-6);
}

TEST(WeightedQuantile, CountsWeightsAndKnowsNever) {
    const std::vector<Weighted> v{{1, 0.25}, {2, 0.25}, {3, 0.25}};
    EXPECT_EQ(weighted_quantile(v, 0.1, 1.0), 1);
    EXPECT_EQ(weighted_quantile(v, 0.5, 1.0), 2);
    EXPECT_TRUE(std::isnan(weighted_quantile(v, 0.9, 1.0)));
    EXPECT_EQ(weighted_quantile(v, 0.9, 0.75), 3);
    EXPECT_TRUE(std::isnan(weighted_quantile({}, 0.5, 1.0)));
}

} // namespace
} // namespace core::numeric
