#include "core/doneness/warm_finish.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace {

using namespace core::doneness;
using core::base::Interval;
using core::units::Length;
using core::units::MassShare;
using core::units::RelativeHumidity;
using core::units::Temperature;
using core::units::WaterActivity;

WarmFinishRequest strip() {
    WarmFinishRequest request{.thickness = Length::millimetres(20),
                              .loss_now = MassShare::percent(25),
                              .loss_wanted = MassShare::percent(35),
                              .water_now = MassShare::percent(60),
                              .air = Temperature::celsius(40)};
    return request;
}

bool has(const WarmFinish& finish, const std::string& code) {
    return std::any_of(finish.findings.begin(), finish.findings.end(),
                       [&](const auto& finding) { return finding.code == code; });
}

WarmFinish run(const WarmFinishRequest& request) {
    return warm_finish(request, core::facts::built_in_hurdles());
}

// By hand, without a rate of its own: end 0.25 + 0.75 x 0.6 x 0.92 = 0.664; e-folds
// ln(0.414/0.314) = 0.27646; k = pi^2/4 x 5e-11/1e-4 = 1.2337e-6 /s at 13 C, times
// exp(35000/8.31446 (1/286.15 - 1/313.15)) = 3.5558 -> 4.3868e-6; 0.27646/k = 63021 s = 17.51 h.
TEST(WarmFinish, ByHand) {
    const auto finish = run(strip());
    ASSERT_TRUE(finish.time.has_value());
    EXPECT_NEAR(finish.levels_off.in_percent(), 66.4, 1e-9);
    EXPECT_NEAR(finish.time->best.in_hours(), 17.51, 0.02);
    EXPECT_LT(finish.time->low.in_hours(), finish.time->best.in_hours() / 2);
    EXPECT_GT(finish.time->high.in_hours(), finish.time->best.in_hours() * 2);
}

// With its own rate: 1 % a day at 13 C heading for 45 %: k = 0.01/0.20 = 0.05 /d, warm 0.17779 /d.
TEST(WarmFinish, OwnRateIsUsedAndNarrower) {
    auto request = strip();
    const auto prior = run(request);
    request.rate_per_day = MassShare::percent(1);
    request.levels_off_in_chamber = MassShare::percent(45);
    const auto own = run(request);
    EXPECT_NEAR(own.time->best.in_days(), 0.27646 / 0.17779, 0.005);
    EXPECT_LT(own.time->high / own.time->low, prior.time->high / prior.time->low);
}

TEST(WarmFinish, WarmerIsFasterAndThickerSlower) {
    auto request = strip();
    const double base = run(request).time->best.in_hours();
    request.air = Temperature::celsius(50);
    EXPECT_LT(run(request).time->best.in_hours(), base);
    request = strip();
    request.thickness = Length::millimetres(40);
    EXPECT_NEAR(run(request).time->best.in_hours() / base, 4, 1e-9);
}

TEST(WarmFinish, CautionsAndExposure) {
    auto request = strip();
    request.activity =
        Interval<WaterActivity>{WaterActivity::fraction(0.90), WaterActivity::fraction(0.92),
                                WaterActivity::fraction(0.94)};
    const auto finish = run(request);
    EXPECT_TRUE(has(finish, "warm_in_growth_range"));
    EXPECT_TRUE(has(finish, "warm_longer_than_guide"));
    EXPECT_TRUE(has(finish, "warm_while_wet"));
    EXPECT_TRUE(has(finish, "heat_leaves_toxin"));
    EXPECT_FALSE(has(finish, "warm_rim")); // thin
    const auto staph =
        std::find_if(finish.exposure.begin(), finish.exposure.end(),
                     [](const auto& exposure) { return exposure.id == "staphylococcus_aureus"; });
    ASSERT_NE(staph, finish.exposure.end());
    EXPECT_EQ(staph->in_range, finish.time->best);
    request.activity = Interval<WaterActivity>::exactly(WaterActivity::fraction(0.80));
    EXPECT_FALSE(has(run(request), "warm_while_wet"));
}

TEST(WarmFinish, TargetBeyondItsWaterOrAlreadyMet) {
    auto request = strip();
    request.loss_wanted = MassShare::percent(70);
    EXPECT_FALSE(run(request).time.has_value());
    EXPECT_TRUE(has(run(request), "target_not_reachable_warm"));
    request.loss_wanted = MassShare::percent(20);
    EXPECT_EQ(run(request).time->best.in_hours(), 0);
    EXPECT_TRUE(has(run(request), "already_there"));
}

TEST(WarmFinish, AllBadInputIsNamed) {
    auto request = strip();
    request.thickness = Length::millimetres(-1);
    request.air = Temperature::celsius(400);
    request.water_now = MassShare::percent(0);
    const auto finish = run(request);
    EXPECT_EQ(finish.findings.size(), 3U);
    EXPECT_FALSE(finish.time.has_value());
}

} // namespace
