#include "core/drying/air_path.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying {
namespace {

using units::Duration;
using units::Instant;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

std::vector<AirReading> log(int days, double (*humidity)(int)) {
    std::vector<AirReading> out;
    for (int d = 0; d < days; ++d) {
        out.push_back({start + Duration::days(d + 0.3), units::Temperature::celsius(12),
                       units::RelativeHumidity::percent(humidity(d))});
    }
    return out;
}

double humidity_at(const AirPath& path, double day) {
    double t = 0;
    for (const AirStep& s : path.steps) {
        t += s.days;
        if (t > day) {
            return s.humidity;
        }
    }
    return path.steps.back().humidity;
}

TEST(AirPath, WithoutALogIsTheUsualAir) {
    const AirPath p = make_air_path({}, start, start + Duration::days(20), 100);
    EXPECT_FALSE(p.known);
    EXPECT_DOUBLE_EQ(p.now_day, 20);
    EXPECT_DOUBLE_EQ(p.ahead_humidity, 0.75);
    EXPECT_GT(p.ahead_humidity_sd, 0.01);
    // 13 C: saturated air holds 11.35 g/m3 (ideal gas at ASHRAE's 1498 Pa)
    EXPECT_NEAR(p.steps.front().saturated_vapour, 0.01135, 2e-5);
    EXPECT_NEAR(p.steps.front().diffusivity_factor, 1, 1e-12);
}

TEST(AirPath, StepsCoverTheSpanAndGrow) {
    const AirPath p = make_air_path({}, start, start + Duration::days(60), 400);
    double t = 0;
    for (const AirStep& s : p.steps) {
        EXPECT_GT(s.days, 0);
        t += s.days;
    }
    EXPECT_GE(t, 400);
    EXPECT_LT(p.steps.size(), 200u);
}

TEST(AirPath, TheLogIsFollowedAndItsMeanGoesOn) {
    const auto readings = log(40, [](int d) { return 72.0 + (d % 2 == 0 ? 2.0 : -2.0); });
    const AirPath p = make_air_path(readings, start, start + Duration::days(40), 200);
    EXPECT_TRUE(p.known);
    EXPECT_NEAR(p.ahead_humidity, 0.72, 0.005);
    EXPECT_NEAR(humidity_at(p, 150), 0.72, 0.005);
}

TEST(AirPath, AClearStepEndsTheOldMean) {
    const auto readings = log(40, [](int d) { return (d < 25 ? 80.0 : 68.0) + (d % 3) * 0.5; });
    const AirPath p = make_air_path(readings, start, start + Duration::days(40), 200);
    EXPECT_NEAR(p.ahead_humidity, 0.685, 0.006);
    EXPECT_NEAR(humidity_at(p, 10), 0.805, 0.01);
}

TEST(AirPath, NoisyButSteadyIsNoStep) {
    const auto readings = log(28, [](int d) { return 75.0 + 4 * std::sin(1.7 * d); });
    EXPECT_NEAR(make_air_path(readings, start, start + Duration::days(28), 90).ahead_humidity, 0.75,
                0.01);
}

TEST(AirPath, GapsHoldTheDayBeforeAndOddReadingsAreLeftOut) {
    std::vector<AirReading> r = log(1, [](int) { return 70.0; });
    r.push_back({start + Duration::days(10), units::Temperature::celsius(12),
                 units::RelativeHumidity::percent(80)});
    r.push_back({start + Duration::days(4), units::Temperature::celsius(std::nan("")),
                 units::RelativeHumidity::percent(10)});
    r.push_back({start - Duration::days(3), units::Temperature::celsius(12),
                 units::RelativeHumidity::percent(10)});
    const AirPath p = make_air_path(r, start, start + Duration::days(12), 50);
    EXPECT_NEAR(humidity_at(p, 5), 0.70, 1e-9);
}

TEST(AirPath, WhatIfSetsTheAirAheadExactly) {
    const AirAhead ahead{.temperature_c = 15, .humidity_percent = 66};
    const AirPath p = make_air_path({}, start, start + Duration::days(20), 100, &ahead);
    EXPECT_NEAR(humidity_at(p, 10), 0.75, 1e-12);
    EXPECT_NEAR(humidity_at(p, 30), 0.66, 1e-12);
    EXPECT_EQ(p.ahead_humidity_sd, 0);
}

} // namespace
} // namespace core::drying
