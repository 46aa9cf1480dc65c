#include "core/uptake/piece_uptake.h"

#include <gtest/gtest.h>

#include <numeric>

namespace {

using namespace core::uptake;
using core::model::Form;
using core::model::SkinSide;
using core::units::Length;

CureRequest piece(Form form, double mm) {
    return {.form = form, .thickness = Length::millimetres(mm)};
}

TEST(Axes, SkinOnOneSideDoublesTheReach) {
    auto request = piece(Form::slab, 50);
    EXPECT_DOUBLE_EQ(axes_of(request).at(0).reach_m, 0.025);
    request.skin = SkinSide::one_side;
    EXPECT_DOUBLE_EQ(axes_of(request).at(0).reach_m, 0.05);
    request.skin = SkinSide::all_round;
    EXPECT_TRUE(axes_of(request).empty());
}

TEST(Axes, KnownSidesCountUnknownOnesAreEndless) {
    auto brick = piece(Form::block, 40);
    EXPECT_EQ(axes_of(brick).size(), 1U);
    brick.width = Length::millimetres(80);
    brick.length = Length::millimetres(160);
    const auto axes = axes_of(brick);
    ASSERT_EQ(axes.size(), 3U);
    EXPECT_DOUBLE_EQ(axes[2].reach_m, 0.08);
    EXPECT_EQ(axes_of(piece(Form::round, 90)).at(0).body, Body::sphere);
    EXPECT_EQ(axes_of(piece(Form::cylinder, 90)).at(0).body, Body::cylinder);
}

/// A square bar by explicit finite differences over a quarter of its section, as an independent
/// check of the product (salt held at the surface) and of the sum (all salt on the surface).
struct Bar {
    static constexpr std::size_t n = 40;
    std::vector<double> c = std::vector<double>(n * n, 0.0);
    double& at(std::size_t i, std::size_t k) { return c[i * n + k]; }

    /// Outside water over inside, and its level; 0: none, sealed (or held at 1).
    double outside_ratio = 0;
    double outside_level = 0;

    void run(double fo, bool held) { // fo of the half side
        const double h = 1.0 / n;
        const double dt = 0.2 * h * h;
        const int steps = static_cast<int>(std::lround(fo / dt));
        for (int s = 0; s < steps; ++s) {
            std::vector<double> next = c;
            const bool open = held || outside_ratio > 0;
            const double surface = held ? 1.0 : outside_level;
            double drawn = 0;
            for (std::size_t i = 0; i < n; ++i) {
                for (std::size_t k = 0; k < n; ++k) {
                    const double here = at(i, k);
                    double flow =
                        (i > 0 ? at(i - 1, k) - here : 0) + (k > 0 ? at(i, k - 1) - here : 0);
                    const double in = open ? 2 * (surface - here) : 0;
                    flow += i + 1 < n ? at(i + 1, k) - here : in;
                    flow += k + 1 < n ? at(i, k + 1) - here : in;
                    drawn += (i + 1 == n ? in : 0) + (k + 1 == n ? in : 0);
                    next[i * n + k] = here + dt / (h * h) * flow;
                }
            }
            c.swap(next);
            if (outside_ratio > 0) {
                outside_level -= dt / (h * h) * drawn / (n * n) / outside_ratio;
            }
        }
    }
    [[nodiscard]] double mean() const { return std::accumulate(c.begin(), c.end(), 0.0) / (n * n); }
};

CureRequest square_bar() {
    auto request = piece(Form::block, 100);
    request.width = Length::millimetres(100); // half side 0.05 m; no length: endless
    return request;
}

TEST(ExcessSalt, ProductOfDirectionsAgainstFiniteDifferences) {
    const ExcessSaltUptake uptake(axes_of(square_bar()));
    Bar bar;
    bar.run(0.05, true);
    EXPECT_NEAR(uptake.mean(0.05 * 0.0025), bar.mean(), 2e-3);
    bar.run(0.15, true);
    EXPECT_NEAR(uptake.mean(0.2 * 0.0025), bar.mean(), 2e-3);
    EXPECT_NEAR(uptake.centre(0.2 * 0.0025), bar.at(0, 0), 5e-3);
    bar.run(0.1, false); // rest, sealed
    EXPECT_NEAR(uptake.rested_centre(0.2 * 0.0025, 0.1 * 0.0025), bar.at(0, 0), 5e-3);
}

TEST(LimitedSalt, StirredJuiceOnABarAgainstFiniteDifferences) {
    for (const double alpha : {0.1, 1.0}) {
        const LimitedSaltUptake uptake(axes_of(square_bar()), alpha);
        Bar bar;
        bar.outside_ratio = alpha;
        bar.outside_level = (1 + alpha) / alpha;
        double before = 0;
        for (const double fo : {0.03, 0.1, 0.3}) {
            bar.run(fo - before, false);
            before = fo;
            EXPECT_NEAR(uptake.mean(fo * 0.0025), bar.mean(), 0.01) << alpha << " " << fo;
            EXPECT_NEAR(uptake.centre(fo * 0.0025), bar.at(0, 0), 0.01) << alpha << " " << fo;
        }
    }
}

// The same step-by-step balance must give the exact series where there is one.
TEST(LimitedSalt, BalanceAgreesWithTheExactSeries) {
    for (const double alpha : {0.04, 1.5}) {
        const ExcessSaltUptake step(axes_of(piece(Form::round, 100)));
        const StirredTable table([&](double p) { return step.mean(p); },
                                 [&](double p) { return step.centre(p); }, 0.0025, alpha);
        const LimitedSaltUptake exact(axes_of(piece(Form::round, 100)), alpha);
        for (const double fo : {0.003, 0.03, 0.1, 0.2, 0.5, 2.0}) {
            EXPECT_NEAR(table.mean(fo * 0.0025), exact.mean(fo * 0.0025), 0.01) << fo;
            EXPECT_NEAR(table.centre(fo * 0.0025), exact.centre(fo * 0.0025), 0.01) << fo;
        }
    }
}

TEST(PieceUptake, PathsAreFoundBack) {
    const ExcessSaltUptake excess(axes_of(piece(Form::round, 80)));
    EXPECT_NEAR(excess.mean(excess.path_at_mean(0.3).value()), 0.3, 1e-9);
    EXPECT_NEAR(excess.centre(excess.path_at_centre(0.3).value()), 0.3, 1e-9);
    const double salting = excess.path_at_mean(0.1).value();
    const double rest = excess.rest_until_even(salting, 0.9).value();
    EXPECT_NEAR(excess.rested_centre(salting, rest), 0.09, 1e-9);
    EXPECT_FALSE(excess.path_at_mean(1.5).has_value());
}

} // namespace
