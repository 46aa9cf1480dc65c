#include "core/drying/curve_fit.h"

#include "core/drying/piece_fit.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying::curve_fit_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

/// Weighings every 5 days of a piece whose loss goes with the root of time, with a scatter that
/// is written out.
ForecastRequest rooted(int count = 9) {
    const double scatter[] = {0.4, -1.1, 1.9, -0.3, 0.8, -1.6, 0.2, 1.2, -0.9};
    ForecastRequest r;
    r.traits = {.form = model::Form::cylinder, .thickness = units::Length::millimetres(65)};
    for (int i = 0; i < count; ++i) {
        const double day = 5.0 * i;
        r.weighings.push_back(
            {start + Duration::days(day),
             Mass::grams(std::round(1200 * (1 - 0.042 * std::sqrt(day)) + scatter[i])),
             {}});
    }
    return r;
}

CurveFit fitted(const ForecastRequest& r) {
    return fit_curve(prepare(r)->input);
}

TEST(CurveFit, FollowsACleanSeriesToItsScatter) {
    const CurveFit fit = fitted(rooted());
    EXPECT_TRUE(fit.off.empty());
    EXPECT_LT(fit.noise_g, 4);
    EXPECT_NEAR(fit.input.prior.hung_grams(fit.mode), 1200, 4);
    for (std::size_t i = 1; i < fit.grams_per_day.size(); ++i) {
        EXPECT_LT(fit.grams_per_day[i], 0);
    }
}

TEST(CurveFit, NamesEachBadWeighingWhereverItIsAndSaysWhatWasExpected) {
    for (const double mistake : {60.0, -60.0}) {
        // A first weighing that is too light looks like a piece that starts slowly.
        for (std::size_t bad = mistake > 0 ? 0 : 1; bad < 9; ++bad) {
            ForecastRequest r = rooted();
            const double was = r.weighings[bad].net.in_grams();
            r.weighings[bad].net += Mass::grams(mistake);
            const CurveFit fit = fitted(r);
            ASSERT_EQ(fit.off.size(), 1u) << bad << ' ' << mistake;
            EXPECT_EQ(fit.off[0].index, bad);
            EXPECT_NEAR(fit.off[0].expected_grams, was, 5 * fit.off[0].sd);
        }
    }
}

TEST(CurveFit, TwoBadWeighingsAreBothFound) {
    ForecastRequest r = rooted();
    r.weighings[2].net += Mass::grams(90);
    r.weighings[6].net -= Mass::grams(70);
    const CurveFit fit = fitted(r);
    EXPECT_EQ(fit.off.size(), 2u);
}

TEST(CurveFit, StepOfTheScaleIsMeasured) {
    ForecastRequest r = rooted();
    for (std::size_t i = 5; i < 9; ++i) {
        r.weighings[i].net += Mass::grams(25);
    }
    const StepEstimate step = estimate_step(fitted(r), 5, false);
    EXPECT_NEAR(step.grams, 25, 4 * step.sd);
    EXPECT_GT(step.grams, 5);
}

TEST(CurveFit, CoarserScaleIsBelievedLess) {
    ForecastRequest fine = rooted(), coarse = rooted();
    for (auto& w : coarse.weighings) {
        w.net = Mass::grams(20 * std::round(w.net.in_grams() / 20));
        w.scale_step = Mass::grams(20);
    }
    EXPECT_GT(fitted(coarse).noise_g, 2 * fitted(fine).noise_g);
    EXPECT_TRUE(fitted(coarse).off.empty());
}

TEST(CurveFit, TwoWeighingsAtOneTimeAreTwoReadings) {
    ForecastRequest r = rooted(4);
    r.weighings.push_back(r.weighings.back());
    EXPECT_TRUE(fitted(r).off.empty());
}

} // namespace
} // namespace core::drying::curve_fit_test
