#include "core/planning/dated_plan.h"

#include "core/planning/catalogue.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace core;
using planning::Catalogue;
using planning::date_plan;
using units::Day;
using units::Duration;

constexpr Day start = Day::from_days_since_epoch(20500);

model::StageTemplate stage(const char* name, double days, model::StageKind kind) {
    model::StageTemplate s;
    s.name = name;
    s.kind = kind;
    s.ends = {{.kind = model::EndCondition::Kind::after, .time = Duration::days(days)}};
    return s;
}

TEST(DatedPlan, StagesFollowEachOtherByDay) {
    model::PlanTemplate plan;
    plan.stages = {stage("Salt", 7, model::StageKind::salt),
                   stage("Wash", 0.1, model::StageKind::wash),
                   stage("Hang", 30, model::StageKind::dry)};
    const auto dated = date_plan({plan, {planning::usual_piece(plan)}, start, {}});
    ASSERT_EQ(dated.stages.size(), 3U);
    EXPECT_EQ(dated.stages[0].end, start + 7);
    EXPECT_EQ(dated.stages[1].start, start + 7);
    EXPECT_EQ(dated.stages[1].end, start + 7);
    EXPECT_EQ(dated.end, start + 37);
    EXPECT_EQ(dated.end, dated.latest_end);
    EXPECT_TRUE(dated.findings.empty());
}

TEST(DatedPlan, TwelveHourRoundsTakeOneDayForAPair) {
    model::PlanTemplate plan;
    plan.stages = {stage("Smoke", 0.5, model::StageKind::smoke),
                   stage("Air", 0.5, model::StageKind::rest)};
    plan.stages[0].repeats = 10;
    plan.stages[0].repeat_with_next = 1;
    const auto dated = date_plan({plan, {planning::usual_piece(plan)}, start, {}});
    ASSERT_EQ(dated.stages.size(), 20U);
    EXPECT_EQ(dated.end, start + 10);
    EXPECT_EQ(dated.stages[2].start, start + 1);
}

TEST(DatedPlan, IndependentSpreadsAddAsSquares) {
    model::PlanTemplate plan;
    for (const char* name : {"Dry", "Age"}) {
        auto s = stage(name, 0, model::StageKind::equalise);
        s.ends = {{.kind = model::EndCondition::Kind::feel}};
        s.typical = {Duration::days(7), Duration::days(10), Duration::days(14)};
        plan.stages.push_back(s);
    }
    const auto dated = date_plan({plan, {planning::usual_piece(plan)}, start, {}});
    EXPECT_EQ(dated.end, start + 20);
    EXPECT_EQ(dated.latest_end, start + 26);   // sqrt(16+16) = 5.7 up
    EXPECT_EQ(dated.earliest_end, start + 16); // sqrt(9+9) = 4.2 down
}

TEST(DatedPlan, SaysWhatItAssumed) {
    const Catalogue catalogue = Catalogue::built_in();
    const auto dated = date_plan({*catalogue.find("coppa"), {{.code = "A1"}}, start, {}});
    std::vector<std::string> codes;
    for (const auto& finding : dated.findings) {
        codes.push_back(finding.code);
    }
    EXPECT_THAT(codes, testing::UnorderedElementsAre("weight_assumed", "thickness_assumed"));
}

TEST(DatedPlan, ARuleOfTheOtherMethodIsNoted) {
    model::PlanTemplate plan;
    auto s = stage("Salt", 1, model::StageKind::salt);
    s.salting = model::SaltingMethod::weighed;
    s.ends = {{.kind = model::EndCondition::Kind::days_per_kilogram, .days_per_unit = 1.0}};
    plan.stages = {s};
    const auto dated = date_plan({plan, {planning::usual_piece(plan)}, start, {}});
    ASSERT_EQ(dated.findings.size(), 1U);
    EXPECT_EQ(dated.findings[0].code, "rule_for_other_method");
}

TEST(DatedPlan, BecomesStagesOfABatchWithoutRepeats) {
    const Catalogue catalogue = Catalogue::built_in();
    const auto dated = date_plan({*catalogue.find("raw-ham-smoked"),
                                  {},
                                  start,
                                  {.chambers = {{"Smoke", model::ChamberId::from_row(3)}}}});
    const auto stages = planning::to_stages(dated);
    ASSERT_EQ(stages.size(), dated.stages.size());
    EXPECT_EQ(stages[2].what.name, "Smoke");
    EXPECT_EQ(stages[2].what.repeats, 1);
    EXPECT_EQ(stages[2].chamber, model::ChamberId::from_row(3));
    EXPECT_EQ(stages.back().order, static_cast<int>(stages.size()) - 1);
}

} // namespace
