#include "core/planning/clock.h"

#include <gtest/gtest.h>

namespace {

using namespace core;
using units::Duration;
using units::Instant;
using units::RelativeHumidity;
using units::Temperature;

constexpr Instant t0 = Instant::from_unix_seconds(1'760'000'000);

Instant h(double hours) {
    return t0 + Duration::hours(hours);
}

model::Stage running() {
    return {.planned_start = units::Day::from_days_since_epoch(0),
            .planned_end = units::Day::from_days_since_epoch(7),
            .started_at = t0};
}

model::PieceEvent event(model::EventKind kind, double hours) {
    return {.kind = kind, .at = h(hours)};
}

TEST(StageClock, StopsWhileFrozen) {
    const auto clock = planning::read_clock(
        running(), {event(model::EventKind::frozen, 10), event(model::EventKind::thawed, 34)}, {},
        h(48));
    ASSERT_TRUE(clock);
    EXPECT_DOUBLE_EQ(clock->ran.in_hours(), 24);
    EXPECT_DOUBLE_EQ(clock->frozen.in_hours(), 24);
    EXPECT_FALSE(clock->paused_now);
}

TEST(StageClock, StillFrozenIsPausedNow) {
    const auto clock =
        planning::read_clock(running(), {event(model::EventKind::frozen, 10)}, {}, h(48));
    EXPECT_DOUBLE_EQ(clock->ran.in_hours(), 10);
    EXPECT_TRUE(clock->paused_now);
}

TEST(StageClock, OutOfBandCountsOnlyWhereTheTemplateSaysAndNotTwice) {
    const std::vector<planning::TimeSpan> out{{h(5), h(15)}, {h(12), h(20)}};
    EXPECT_DOUBLE_EQ(planning::read_clock(running(), {}, out, h(48))->ran.in_hours(), 48);
    auto stage = running();
    stage.what.pauses_out_of_band = true;
    const auto clock = planning::read_clock(
        stage, {event(model::EventKind::frozen, 10), event(model::EventKind::thawed, 30)}, out,
        h(48));
    EXPECT_DOUBLE_EQ(clock->frozen.in_hours(), 20);
    EXPECT_DOUBLE_EQ(clock->out_of_band.in_hours(), 5);
    EXPECT_DOUBLE_EQ(clock->ran.in_hours(), 23);
}

TEST(StageClock, CountsOnlyWithinTheStageAndIgnoresWithdrawnEvents) {
    auto stage = running();
    stage.ended_at = h(24);
    auto withdrawn = event(model::EventKind::frozen, 1);
    withdrawn.withdrawn = true;
    const auto clock = planning::read_clock(
        stage,
        {withdrawn, event(model::EventKind::thawed, 3), event(model::EventKind::frozen, -12),
         event(model::EventKind::thawed, 4), event(model::EventKind::frozen, 40)},
        {}, h(48));
    EXPECT_DOUBLE_EQ(clock->ran.in_hours(), 21); // frozen before the start until hour 3
    EXPECT_FALSE(clock->paused_now);
}

TEST(StageClock, AbsentBeforeTheStart) {
    auto stage = running();
    EXPECT_FALSE(planning::read_clock(stage, {}, {}, h(-1)));
    stage.started_at.reset();
    EXPECT_FALSE(planning::read_clock(stage, {}, {}, h(1)));
}

model::StageTemplate ramp() {
    model::StageTemplate stage;
    stage.temperature = {Temperature::celsius(24), Temperature::celsius(26),
                         Temperature::celsius(12), Temperature::celsius(14)};
    stage.humidity = {RelativeHumidity::percent(70), RelativeHumidity::percent(75),
                      RelativeHumidity::percent(70), RelativeHumidity::percent(75)};
    stage.humidity_pulse = {RelativeHumidity::percent(80), RelativeHumidity::percent(85),
                            Duration::hours(24), Duration::hours(6)};
    return stage;
}

TEST(BandAt, RampsAlongTheStageAndHoldsBeyondIt) {
    const auto middle = planning::band_at(ramp(), Duration::days(2), Duration::days(4));
    EXPECT_NEAR(middle.temperature->low.in_celsius(), 18, 1e-9);
    EXPECT_NEAR(middle.temperature->high.in_celsius(), 20, 1e-9);
    const auto late = planning::band_at(ramp(), Duration::days(9), Duration::days(4));
    EXPECT_NEAR(late.temperature->high.in_celsius(), 14, 1e-9);
}

TEST(BandAt, APulseClosesEachPeriod) {
    EXPECT_EQ(planning::band_at(ramp(), Duration::hours(17), Duration::days(4)).humidity->high,
              RelativeHumidity::percent(75));
    EXPECT_EQ(planning::band_at(ramp(), Duration::hours(18), Duration::days(4)).humidity->high,
              RelativeHumidity::percent(85));
    EXPECT_EQ(planning::band_at(ramp(), Duration::hours(24), Duration::days(4)).humidity->high,
              RelativeHumidity::percent(75));
}

TEST(SpansOutOfBand, MergesNeighboursAndDoesNotTrustASilentLogger) {
    auto stage = ramp();
    stage.humidity_pulse.reset();
    stage.temperature.reset();
    std::vector<model::ClimateReading> readings;
    const auto read = [&](double hours, double percent) {
        readings.push_back({h(hours), {}, RelativeHumidity::percent(percent)});
    };
    read(-1, 90); // before the stage
    read(0, 72);
    read(1, 90);
    read(2, 91);
    read(3, 72);
    read(4, 60);
    read(20, 72); // nothing heard for 16 h
    const auto spans =
        planning::spans_out_of_band(stage, t0, Duration::days(10), readings, Duration::hours(2));
    ASSERT_EQ(spans.size(), 2U);
    EXPECT_EQ(spans[0].from, h(1));
    EXPECT_EQ(spans[0].to, h(3));
    EXPECT_EQ(spans[1].to, h(6));
}

} // namespace
