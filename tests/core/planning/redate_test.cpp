#include "core/planning/redate.h"

#include "core/planning/piece_spec.h"

#include <gtest/gtest.h>

namespace redate_test {
namespace {

using namespace core;
using units::Day;
using units::Duration;
using units::Zone;

constexpr Day d0 = Day::from_days_since_epoch(20600);

units::Instant at(Day day, int hour = 9) {
    return Zone::utc().instant_at(day, hour * 60);
}

model::Stage stage(int order, Day start, int days) {
    model::Stage s{.id = model::StageId::from_row(order + 1),
                   .order = order,
                   .planned_start = start,
                   .planned_end = start + days};
    return s;
}

std::vector<model::Stage> three() {
    return {stage(0, d0, 10), stage(1, d0 + 10, 2), stage(2, d0 + 12, 40)};
}

TEST(Redate, ALateEndMovesTheRestByAsMuch) {
    auto stages = three();
    stages[0].started_at = at(d0);
    stages[0].ended_at = at(d0 + 14);
    const auto now = planning::redate(stages, {}, d0 + 14, Zone::utc());
    EXPECT_EQ(now[0].planned_end, d0 + 10) << "what was planned stays for comparison";
    EXPECT_EQ(now[1].planned_start, d0 + 14);
    EXPECT_EQ(now[2].planned_start, d0 + 16);
    EXPECT_EQ(now[2].planned_end, d0 + 56);
}

TEST(Redate, AnEarlyEndBringsTheRestForward) {
    auto stages = three();
    stages[0].started_at = at(d0);
    stages[0].ended_at = at(d0 + 7);
    EXPECT_EQ(planning::redate(stages, {}, d0 + 7, Zone::utc())[2].planned_end, d0 + 49);
}

TEST(Redate, FrozenTimeMovesTheRunningStage) {
    auto stages = three();
    stages[0].started_at = at(d0 + 1); // a day late as well
    planning::StageProgress progress;
    progress.paused.emplace(stages[0].id, Duration::days(2.5));
    const auto now = planning::redate(stages, progress, d0 + 3, Zone::utc());
    EXPECT_EQ(now[0].planned_end, d0 + 14); // 1 + 10 + 3
    EXPECT_EQ(now[1].planned_start, d0 + 14);
}

TEST(Redate, AForecastTellsTheEndOfARunningStage) {
    auto stages = three();
    for (int i : {0, 1}) {
        stages[static_cast<std::size_t>(i)].started_at = at(d0 + i * 10);
        stages[static_cast<std::size_t>(i)].ended_at = at(d0 + 10 + i * 2);
    }
    stages[2].started_at = at(d0 + 12);
    planning::StageProgress progress;
    progress.expected_end.emplace(stages[2].id, d0 + 80);
    EXPECT_EQ(planning::redate(stages, progress, d0 + 30, Zone::utc())[2].planned_end, d0 + 80);
}

TEST(Redate, NothingUndoneLiesInThePast) {
    const auto now = planning::redate(three(), {}, d0 + 100, Zone::utc());
    EXPECT_EQ(now[0].planned_start, d0 + 100);
    EXPECT_EQ(now[2].planned_end, d0 + 152);
    auto overdue = three();
    overdue[0].started_at = at(d0);
    EXPECT_EQ(planning::redate(overdue, {}, d0 + 30, Zone::utc())[0].planned_end, d0 + 30);
}

TEST(Redate, AnEndOnADateStaysOnIt) {
    auto stages = three();
    stages[1].what.ends = {{.kind = model::EndCondition::Kind::on_date, .date = d0 + 20}};
    stages[1].planned_end = d0 + 20;
    stages[2].planned_start = d0 + 20;
    stages[2].planned_end = d0 + 60;
    stages[0].started_at = at(d0);
    stages[0].ended_at = at(d0 + 15);
    const auto now = planning::redate(stages, {}, d0 + 15, Zone::utc());
    EXPECT_EQ(now[1].planned_end, d0 + 20);
    EXPECT_EQ(now[2].planned_start, d0 + 20) << "the delay is taken up by the fixed date";
}

TEST(Deviations, PlanAgainstReality) {
    auto stages = three();
    stages[0].started_at = at(d0 + 2);
    stages[0].ended_at = at(d0 + 15);
    const auto found = planning::deviations(stages, Zone::utc());
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].started_late_days, 2);
    EXPECT_EQ(found[0].lasted_longer_days, 3);
}

TEST(CheckCureLengths, AShortenedCureIsAStop) {
    auto cure = stage(0, d0, 5);
    cure.what.name = "Cure";
    cure.what.kind = model::StageKind::salt;
    cure.what.ends = {{.kind = model::EndCondition::Kind::days_per_cm,
                       .time = Duration::days(2),
                       .days_per_unit = 1.0}};
    const std::vector<planning::PieceSpec> pieces{
        {.thickness = units::Length::millimetres(80), .raw_weight = units::Mass::kilograms(2)}};
    const auto findings = planning::check_cure_lengths({cure}, pieces, Zone::utc());
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].severity, model::Severity::stop);
    EXPECT_EQ(std::get<Duration>(findings[0].values.at("needed")), Duration::days(10));
    cure.planned_end = d0 + 10;
    EXPECT_TRUE(planning::check_cure_lengths({cure}, pieces, Zone::utc()).empty());
    cure.started_at = at(d0);
    cure.ended_at = at(d0 + 8);
    EXPECT_EQ(planning::check_cure_lengths({cure}, pieces, Zone::utc()).size(), 1U);
}

} // namespace

} // namespace redate_test
