#include "core/drying/forecast.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace core::drying::forecast_test {
namespace {

using model::ForecastState;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

/// A piece that has lost a share at each of some days.
ForecastRequest piece(std::initializer_list<std::pair<double, double>> day_and_loss,
                      double target = 0.35) {
    ForecastRequest r;
    r.traits = {.form = model::Form::cylinder,
                .thickness = units::Length::millimetres(65),
                .fat = MassShare::percent(8)};
    r.target = MassShare::fraction(target);
    for (const auto& [day, loss] : day_and_loss) {
        r.weighings.push_back({start + Duration::days(day), Mass::grams(1000 * (1 - loss)), {}});
    }
    return r;
}

bool has(const model::Forecast& f, const char* code) {
    return std::any_of(f.findings.begin(), f.findings.end(),
                       [&](const auto& x) { return x.code == code; });
}

double days(const std::optional<Instant>& at) {
    return (*at - start).in_days();
}

TEST(Forecast, OneWeighingIsTooFew) {
    const auto f = forecast(piece({{0, 0}}));
    EXPECT_EQ(f.state, ForecastState::too_few_weighings);
    EXPECT_FALSE(f.ready.has_value());
    EXPECT_TRUE(f.curve.empty());
    ASSERT_TRUE(f.levels_off.has_value()); // the prior's
    EXPECT_GT(f.levels_off->best.as_fraction(), 0.35);
}

TEST(Forecast, NoUsableWeighingGivesNothing) {
    ForecastRequest r = piece({});
    r.weighings.push_back({start, Mass::grams(-5), {}});
    r.weighings.push_back({start, Mass::grams(0), {}});
    const auto f = forecast(r);
    EXPECT_EQ(f.state, ForecastState::too_few_weighings);
    EXPECT_FALSE(f.as_of.has_value());
    EXPECT_FALSE(f.levels_off.has_value());
}

TEST(Forecast, SlowingCurveIsLaterThanAStraightLineAndOrdered) {
    const auto f = forecast(piece({{0, 0}, {7, 0.10}, {14, 0.155}, {21, 0.195}, {28, 0.228}}));
    ASSERT_EQ(f.state, ForecastState::drying);
    ASSERT_TRUE(f.ready && f.ready->p10 && f.ready->p50 && f.ready->p90);
    EXPECT_LT(days(f.ready->p10), days(f.ready->p50));
    EXPECT_LT(days(f.ready->p50), days(f.ready->p90));
    const double line = 28 + (0.35 - 0.228) / ((0.228 - 0.195) / 7);
    EXPECT_GT(days(f.ready->p50), line);
    EXPECT_LT(days(f.ready->p50), 4 * line);
    EXPECT_NEAR(f.loss->as_fraction(), 0.228, 0.004);
    EXPECT_EQ(*f.as_of, start + Duration::days(28));
}

TEST(Forecast, CrossedTargetIsReadyWithTheDateInThePast) {
    const auto f =
        forecast(piece({{0, 0}, {7, 0.14}, {14, 0.22}, {21, 0.28}, {35, 0.36}, {42, 0.39}}));
    ASSERT_EQ(f.state, ForecastState::ready);
    ASSERT_TRUE(f.ready && f.ready->p50);
    EXPECT_GT(days(f.ready->p50), 28);
    EXPECT_LT(days(f.ready->p50), 37);
}

TEST(Forecast, FlatCurveBelowTheTargetIsNotReachable) {
    ForecastRequest r = piece({{0, 0},
                               {7, 0.12},
                               {14, 0.165},
                               {28, 0.195},
                               {42, 0.203},
                               {56, 0.206},
                               {70, 0.207},
                               {84, 0.207}},
                              0.35);
    r.traits.thickness = units::Length::millimetres(40);
    r.traits.fat = MassShare::percent(55);
    const auto f = forecast(r);
    EXPECT_EQ(f.state, ForecastState::not_reachable);
    EXPECT_TRUE(has(f, "target_above_levelling"));
    EXPECT_TRUE(has(f, "rate_stalled"));
    EXPECT_NEAR(f.levels_off->best.as_fraction(), 0.21, 0.03);
}

TEST(Forecast, NothingLostIsNotDrying) {
    const auto f = forecast(piece({{0, 0}, {4, 0.001}, {8, -0.001}, {12, 0.0}}));
    EXPECT_EQ(f.state, ForecastState::not_drying);
    EXPECT_FALSE(f.ready.has_value());
}

TEST(Forecast, OrderOfWeighingsAndRepetitionDoNotMatter) {
    ForecastRequest r = piece({{0, 0}, {7, 0.10}, {14, 0.155}, {21, 0.195}});
    const auto a = forecast(r);
    std::reverse(r.weighings.begin(), r.weighings.end());
    const auto b = forecast(r);
    EXPECT_EQ(*a.ready->p50, *b.ready->p50);
    EXPECT_EQ(*a.ready->p90, *b.ready->p90);
}

TEST(Forecast, BandStartsAtNothingAndHoldsTheWeighings) {
    const ForecastRequest r = piece({{0, 0}, {7, 0.10}, {14, 0.155}, {21, 0.195}, {28, 0.228}});
    const auto f = forecast(r);
    ASSERT_EQ(f.curve.size(), 40u);
    EXPECT_NEAR(f.curve.front().p50.as_fraction(), 0, 1e-6);
    for (std::size_t i = 0; i < f.curve.size(); ++i) {
        EXPECT_LE(f.curve[i].p10, f.curve[i].p50);
        EXPECT_LE(f.curve[i].p50, f.curve[i].p90);
    }
    // wider ahead than at the weighings
    const auto width = [](const model::BandPoint& p) { return (p.p90 - p.p10).as_fraction(); };
    EXPECT_GT(width(f.curve.back()), 3 * width(f.curve[8]));
}

/// A reference weight given apart: the same loss is counted from it.
TEST(Forecast, GreenWeightBeforeTheFirstWeighingCountsAsLoss) {
    ForecastRequest r = piece({{0, 0}, {7, 0.08}, {14, 0.125}, {21, 0.16}});
    r.reference = Mass::grams(1040);
    const auto f = forecast(r);
    EXPECT_NEAR(f.loss->as_fraction(), 1 - 840.0 / 1040.0, 0.004);
    const auto from_hung = forecast(piece({{0, 0}, {7, 0.08}, {14, 0.125}, {21, 0.16}}));
    EXPECT_LT(days(f.ready->p50), days(from_hung.ready->p50));
}

TEST(Forecast, PieceFirstWeighedHalfWayUsesItsGreenWeight) {
    // True course: about 0.04 sqrt(day). First weighed on day 16 at 16 %.
    ForecastRequest r = piece({{0, 0.16}, {9, 0.20}, {20, 0.24}, {33, 0.28}});
    r.reference = Mass::grams(1000);
    const auto f = forecast(r);
    ASSERT_TRUE(f.ready && f.ready->p50);
    // 35 % is due 76.6 days after hanging, 60.6 after the first weighing.
    EXPECT_NEAR(days(f.ready->p50), 60.6, 9);
}

TEST(Forecast, DrierAirAheadIsSoonerAndLevelsOffHigher) {
    ForecastRequest r = piece({{0, 0}, {7, 0.07}, {14, 0.115}, {21, 0.15}, {28, 0.18}});
    for (int d = 0; d <= 28; ++d) {
        r.air.push_back({start + Duration::days(d), units::Temperature::celsius(13),
                         units::RelativeHumidity::percent(80)});
    }
    const auto as_is = forecast(r);
    r.air_ahead = AirAhead{.temperature_c = 13, .humidity_percent = 68};
    const auto drier = forecast(r);
    EXPECT_LT(days(drier.ready->p50), days(as_is.ready->p50));
    EXPECT_GT(drier.levels_off->best, as_is.levels_off->best);
}

} // namespace
} // namespace core::drying::forecast_test
