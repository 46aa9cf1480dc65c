#include "core/numeric/least_squares.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <stdexcept>

namespace {

using core::numeric::fit_least_squares;
using core::numeric::LeastSquaresProblem;
using core::numeric::Termination;

// The straight line through (0,1), (1,3), (2,5), (3,7.4): slope and intercept by hand.
// Sx 6, Sy 16.4, Sxx 14, Sxy 35.2 -> slope (4*35.2 - 6*16.4)/(4*14 - 36) = 42.4/20 = 2.12,
// intercept (16.4 - 2.12*6)/4 = 0.92; residuals 0.08, -0.04, -0.16, 0.12 -> rss 0.048.
LeastSquaresProblem line() {
    LeastSquaresProblem problem;
    problem.residual_count = 4;
    problem.start = {0, 0};
    problem.residuals = [](std::span<const double> p, std::span<double> r) {
        const double y[] = {1, 3, 5, 7.4};
        for (std::size_t i = 0; i < 4; ++i) {
            r[i] = p[0] + p[1] * static_cast<double>(i) - y[i];
        }
        return true;
    };
    return problem;
}

TEST(LeastSquares, StraightLineByHand) {
    const auto fit = fit_least_squares(line());
    ASSERT_TRUE(fit.usable());
    EXPECT_NEAR(fit.parameters[0], 0.92, 1e-9);
    EXPECT_NEAR(fit.parameters[1], 2.12, 1e-9);
    EXPECT_NEAR(fit.rss.value(), 0.048, 1e-12);
    // var = 0.048/2 = 0.024; var(slope) = 0.024/Sum(x-mean)^2 = 0.024/5;
    // var(intercept) = 0.024*(1/4 + 1.5^2/5); cov = -0.024*1.5/5.
    ASSERT_TRUE(fit.spread.has_value());
    EXPECT_NEAR(fit.spread->residual_sd, std::sqrt(0.024), 1e-9);
    EXPECT_NEAR(fit.spread->sd[1], std::sqrt(0.0048), 1e-9);
    EXPECT_NEAR(fit.spread->sd[0], std::sqrt(0.024 * 0.7), 1e-9);
    EXPECT_NEAR(fit.spread->covariance[1], -0.0072, 1e-9);
}

TEST(LeastSquares, NoSpareResidualsMeansNoSpread) {
    auto problem = line();
    problem.residual_count = 2;
    problem.residuals = [](std::span<const double> p, std::span<double> r) {
        r[0] = p[0] - 1;
        r[1] = p[1] - 2;
        return true;
    };
    const auto fit = fit_least_squares(problem);
    ASSERT_TRUE(fit.usable());
    EXPECT_NEAR(fit.parameters[1], 2, 1e-9);
    EXPECT_FALSE(fit.spread.has_value());
}

TEST(LeastSquares, ParametersThatCannotBeToldApartHaveNoSpread) {
    auto problem = line();
    problem.residuals = [](std::span<const double> p, std::span<double> r) {
        for (std::size_t i = 0; i < 4; ++i) {
            r[i] = p[0] + p[1] - static_cast<double>(i); // only the sum matters
        }
        return true;
    };
    const auto fit = fit_least_squares(problem);
    ASSERT_TRUE(fit.usable());
    EXPECT_NEAR(fit.parameters[0] + fit.parameters[1], 1.5, 1e-6);
    EXPECT_FALSE(fit.spread.has_value());
}

TEST(LeastSquares, EndsInANamedStateOnBadInput) {
    auto problem = line();
    problem.residual_count = 1;
    EXPECT_EQ(fit_least_squares(problem).termination, Termination::too_few_residuals);

    problem = line();
    problem.start = {std::numeric_limits<double>::quiet_NaN(), 0};
    EXPECT_EQ(fit_least_squares(problem).termination, Termination::bad_start);

    problem = line();
    problem.residuals = [](std::span<const double>, std::span<double>) { return false; };
    const auto no_model = fit_least_squares(problem);
    EXPECT_EQ(no_model.termination, Termination::bad_start);
    EXPECT_EQ(no_model.parameters, problem.start);
    EXPECT_FALSE(no_model.rss.has_value());

    problem.residuals = [](std::span<const double>, std::span<double>) -> bool {
        throw std::runtime_error("model failed");
    };
    EXPECT_EQ(fit_least_squares(problem).termination, Termination::bad_start);
}

TEST(LeastSquares, IterationLimitGivesBestPointAndNoSpread) {
    auto problem = line();
    problem.residuals = [](std::span<const double> p, std::span<double> r) {
        // Rosenbrock's curved valley from (-1.2, 1).
        r[0] = 10 * (p[1] - p[0] * p[0]);
        r[1] = 1 - p[0];
        r[2] = 0;
        r[3] = 0;
        return true;
    };
    problem.start = {-1.2, 1};
    core::numeric::LeastSquaresOptions options;
    options.max_iterations = 2;
    const auto fit = fit_least_squares(problem, options);
    EXPECT_EQ(fit.termination, Termination::iteration_limit);
    EXPECT_LT(fit.rss.value(), 24.2); // the start's
    EXPECT_FALSE(fit.spread.has_value());
    EXPECT_NEAR(fit_least_squares(problem).parameters[1], 1, 1e-9);
}

TEST(LeastSquares, StepsBackFromWhereTheModelHasNoValue) {
    auto problem = line();
    // log(p0) has no value for p0 <= 0; a full Gauss-Newton step from 8 lands below zero.
    problem.start = {8, 0};
    problem.residuals = [](std::span<const double> p, std::span<double> r) {
        if (!(p[0] > 0)) {
            return false;
        }
        r[0] = std::log(p[0]) - std::log(0.5);
        r[1] = p[1] - 1;
        r[2] = r[3] = 0;
        return true;
    };
    const auto fit = fit_least_squares(problem);
    ASSERT_TRUE(fit.usable()) << static_cast<int>(fit.termination);
    EXPECT_NEAR(fit.parameters[0], 0.5, 1e-9);
}

} // namespace
