#include "core/numeric/cholesky.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::numeric {
namespace {

/// [[4, 2], [2, 3]]: determinant 8, inverse [[3, -2], [-2, 4]] / 8.
SquareMatrix small() {
    SquareMatrix m(2);
    m(0, 0) = 4;
    m(0, 1) = m(1, 0) = 2;
    m(1, 1) = 3;
    return m;
}

TEST(Cholesky, SolvesAndInvertsAByHandCheckedSystem) {
    const auto f = Cholesky::of(small());
    ASSERT_TRUE(f);
    std::vector<double> b{2, 5};
    f->solve(b);
    EXPECT_NEAR(b[0], -0.5, 1e-14);
    EXPECT_NEAR(b[1], 2.0, 1e-14);
    const SquareMatrix inverse = f->inverse();
    EXPECT_NEAR(inverse(0, 0), 0.375, 1e-14);
    EXPECT_NEAR(inverse(0, 1), -0.25, 1e-14);
    EXPECT_NEAR(inverse(1, 0), -0.25, 1e-14);
    EXPECT_NEAR(f->log_determinant(), std::log(8.0), 1e-14);
}

TEST(Cholesky, ForwardThenBackwardIsSolve) {
    const auto f = Cholesky::of(small());
    std::vector<double> a{1, 7}, b{1, 7};
    f->solve(a);
    f->forward(b);
    f->backward(b);
    EXPECT_EQ(a, b);
}

TEST(Cholesky, RefusesWhatIsNotPositiveDefinite) {
    SquareMatrix m = small();
    m(1, 1) = 0.5;
    EXPECT_FALSE(Cholesky::of(m));
    m(1, 1) = std::nan("");
    EXPECT_FALSE(Cholesky::of(m));
}

TEST(Cholesky, NothingIsAnEmptySystem) {
    EXPECT_TRUE(Cholesky::of(SquareMatrix()));
}

} // namespace
} // namespace core::numeric
