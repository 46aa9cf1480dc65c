#include "core/drying/posterior.h"

#include "core/drying/piece_fit.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying::posterior_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

CurveFit fit_of(int count) {
    ForecastRequest r;
    r.traits = {.form = model::Form::cylinder,
                .thickness = units::Length::millimetres(65),
                .fat = units::MassShare::percent(10)};
    for (int i = 0; i < count; ++i) {
        const double day = 6.0 * i;
        r.weighings.push_back(
            {start + Duration::days(day), Mass::grams(1500 * (1 - 0.04 * std::sqrt(day))), {}});
    }
    return fit_curve(prepare(r)->input);
}

TEST(Posterior, MoreWeighingsNarrowTheDate) {
    const CurveFit few = fit_of(3), many = fit_of(10);
    const Posterior a(few, 0.35), b(many, 0.35);
    ASSERT_TRUE(a.ready().p90 && b.ready().p90);
    EXPECT_LT(*b.ready().p90 - *b.ready().p10, 0.6 * (*a.ready().p90 - *a.ready().p10));
}

TEST(Posterior, SamplesAreWorthEnoughForTheirTails) {
    for (const int count : {2, 4, 8, 12}) {
        const CurveFit fit = fit_of(count);
        EXPECT_GT(Posterior(fit, 0.35).effective_samples(), 40) << count;
    }
}

TEST(Posterior, FollowsTheWeighingsAndKnowsLessAhead) {
    const CurveFit fit = fit_of(8);
    const Posterior p(fit, 0.35);
    for (int i = 1; i < 8; ++i) {
        const double day = 6.0 * i;
        EXPECT_NEAR(p.loss_at(day).p50, 0.04 * std::sqrt(day), 0.004);
    }
    const auto width = [&](double day) { return p.loss_at(day).p90 - p.loss_at(day).p10; };
    EXPECT_GT(width(p.band_end()), 4 * width(42));
}

/// A date is reached where the band's middle reaches the target.
TEST(Posterior, DateAndBandTellTheSameStory) {
    const CurveFit fit = fit_of(8);
    const Posterior p(fit, 0.35);
    EXPECT_NEAR(p.loss_at(*p.ready().p50).p50, 0.35, 0.006);
    EXPECT_NEAR(p.loss_at(*p.ready().p90).p10, 0.35, 0.012);
}

TEST(Posterior, TargetAboveTheWaterIsNeverReached) {
    const CurveFit fit = fit_of(8);
    const Posterior p(fit, 0.75);
    EXPECT_FALSE(p.ready().p50);
    EXPECT_LT(p.ready().reached, 0.05);
    EXPECT_LT(p.levelling_loss().p90, 0.75);
}

} // namespace
} // namespace core::drying::posterior_test
