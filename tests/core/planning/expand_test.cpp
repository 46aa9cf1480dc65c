#include "core/planning/expand.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace core;

model::StageTemplate stage(const char* name, int repeats = 1, int with = 0) {
    model::StageTemplate s;
    s.name = name;
    s.repeats = repeats;
    s.repeat_with_next = with;
    s.repeats_at_least = repeats;
    s.repeats_at_most = repeats;
    return s;
}

std::vector<std::string> names(const std::vector<planning::ExpandedStage>& stages) {
    std::vector<std::string> out;
    for (const auto& s : stages) {
        out.push_back(s.what.name + std::to_string(s.round));
    }
    return out;
}

model::PlanTemplate smoked() {
    model::PlanTemplate plan;
    plan.stages = {stage("Salt"), stage("Smoke", 3, 1), stage("Air"), stage("Ripen")};
    plan.stages[1].repeats_at_least = 2;
    plan.stages[1].repeats_at_most = 5;
    plan.stages[0].optional = false;
    plan.stages[3].optional = true;
    return plan;
}

TEST(Expand, WritesOutARepeatedPair) {
    EXPECT_THAT(names(planning::expand(smoked(), {})),
                testing::ElementsAre("Salt1", "Smoke1", "Air1", "Smoke2", "Air2", "Smoke3", "Air3",
                                     "Ripen1"));
}

TEST(Expand, RoundsAreChosenWithinTheirBounds) {
    EXPECT_EQ(planning::expand(smoked(), {.rounds = {{"Smoke", 4}}}).size(), 10U);
    EXPECT_EQ(planning::expand(smoked(), {.rounds = {{"Smoke", 40}}}).size(), 12U); // 5 at most
    EXPECT_EQ(planning::expand(smoked(), {.rounds = {{"Smoke", 0}}}).size(), 6U);   // 2 at least
}

TEST(Expand, OnlyOptionalStagesCanBeSkipped) {
    EXPECT_THAT(
        names(planning::expand(smoked(), {.skipped = {"Salt", "Ripen"}})),
        testing::ElementsAre("Salt1", "Smoke1", "Air1", "Smoke2", "Air2", "Smoke3", "Air3"));
}

TEST(Expand, ARepeatAtTheEndDoesNotRunPastIt) {
    model::PlanTemplate plan;
    plan.stages = {stage("Press", 2, 5), stage("Dry")};
    EXPECT_THAT(names(planning::expand(plan, {})),
                testing::ElementsAre("Press1", "Dry1", "Press2", "Dry2"));
    EXPECT_TRUE(planning::expand(model::PlanTemplate{}, {}).empty());
}

} // namespace
