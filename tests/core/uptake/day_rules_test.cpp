#include "core/uptake/day_rules.h"

#include <gtest/gtest.h>

#include <set>
#include <utility>

namespace {

using namespace core::uptake;
using core::units::Length;
using core::units::Mass;

std::pair<double, double> days_of(const std::string& id, std::optional<Length> thickness,
                                  std::optional<Mass> weight) {
    for (const auto& days : rules_side_by_side(CureMethod::weighed, thickness, weight)) {
        if (days.rule->id == id) {
            return {days.low.in_days(), days.high.in_days()};
        }
    }
    ADD_FAILURE() << "no rule " << id;
    return {0, 0};
}

double low_days(const std::string& id, std::optional<Length> thickness,
                std::optional<Mass> weight) {
    return days_of(id, thickness, weight).first;
}

double high_days(const std::string& id, std::optional<Length> thickness,
                 std::optional<Mass> weight) {
    return days_of(id, thickness, weight).second;
}

// The trade's own table (common practice, no source): 5 cm belly, 10 cm coppa, 10 kg leg.
TEST(DayRules, TableOfTheTrade) {
    const auto belly = Length::centimetres(5);
    const auto coppa = Length::centimetres(10);
    const auto leg = Mass::kilograms(10);
    EXPECT_NEAR(high_days("half_inch_plus_two", belly, {}), 6, 0.5);
    EXPECT_NEAR(high_days("half_inch_plus_two", coppa, {}), 10, 0.5);
    EXPECT_NEAR(high_days("half_inch_plus_two", Length::centimetres(20), {}), 18, 0.5);
    EXPECT_NEAR(high_days("three_per_inch_plus_four", belly, {}), 10, 0.5);
    EXPECT_NEAR(high_days("three_per_inch_plus_four", coppa, {}), 16, 0.5);
    EXPECT_NEAR(high_days("three_plus_one_per_cm", belly, {}), 8, 0.5);
    EXPECT_NEAR(high_days("three_plus_one_per_cm", coppa, {}), 13, 0.5);
    EXPECT_NEAR(low_days("one_per_cm_in_vacuum", belly, {}), 6, 0.5);
    EXPECT_NEAR(high_days("one_per_cm_in_vacuum", belly, {}), 7, 0.5);
    EXPECT_NEAR(high_days("one_per_cm_in_vacuum", coppa, {}), 12, 0.5);
    EXPECT_NEAR(high_days("inch_a_week_in_box", belly, {}), 14, 0.5);
    EXPECT_NEAR(high_days("inch_a_week_in_box", coppa, {}), 28, 0.5);
    EXPECT_NEAR(high_days("inch_a_week_in_box", Length::centimetres(20), {}), 55, 0.5);
    EXPECT_NEAR(high_days("seven_days_a_kilogram", {}, leg), 70, 0.5);
    EXPECT_NEAR(high_days("two_days_a_pound_in_bag", {}, leg), 44, 0.5);
    EXPECT_NEAR(low_days("one_day_a_kilogram", {}, leg), 9, 0.5);
    EXPECT_NEAR(high_days("one_day_a_kilogram", {}, leg), 11, 0.5);
    EXPECT_NEAR(low_days("two_to_three_days_a_kilogram", {}, leg), 20, 0.5);
    EXPECT_NEAR(high_days("two_to_three_days_a_kilogram", {}, leg), 30, 0.5);
    EXPECT_NEAR(high_days("three_days_a_pound", {}, leg), 66, 0.5);
}

// USDA, Pork Slaughtering, Cutting, Preserving, and Cooking on the Farm: 6-lb shoulder 24 days,
// 15-lb ham 60 days at 4 days a pound, of "3 1/2 to 4 days" a pound. EU product definitions: jambon
// sec of 10 kg 13 days, immersed raw ham of 3 kg about 6 days.
TEST(DayRules, PublishedExamples) {
    EXPECT_DOUBLE_EQ(high_days("sweet_pickle", {}, Mass::pounds(6)), 24);
    EXPECT_DOUBLE_EQ(high_days("sweet_pickle", {}, Mass::pounds(15)), 60);
    EXPECT_DOUBLE_EQ(low_days("sweet_pickle", {}, Mass::pounds(6)), 21);
    EXPECT_DOUBLE_EQ(high_days("three_plus_one_a_kilogram", {}, Mass::kilograms(10)), 13);
    EXPECT_DOUBLE_EQ(high_days("two_days_a_kilogram_in_brine", {}, Mass::kilograms(3)), 6);
}

TEST(DayRules, OnlyWhatCanBeWorkedAndMarkedByMethod) {
    for (const auto& days : rules_side_by_side(CureMethod::excess_salt, {}, Mass::kilograms(1))) {
        EXPECT_NE(days.rule->per, DayRule::Per::inch);
        EXPECT_NE(days.rule->per, DayRule::Per::centimetre);
        EXPECT_EQ(days.same_method, days.rule->method == CureMethod::excess_salt);
        EXPECT_GE(days.low.in_days(), 0) << "a small piece must not give negative days";
        EXPECT_LE(days.low, days.high);
    }
}

TEST(DayRules, IdsAreUniqueAndFound) {
    std::set<std::string> ids;
    for (const auto& rule : day_rules()) {
        EXPECT_TRUE(ids.insert(rule.id).second) << rule.id;
        EXPECT_EQ(find_rule(rule.id), &rule);
        EXPECT_FALSE(rule.source.title.empty());
    }
    EXPECT_EQ(find_rule("no_such_rule"), nullptr);
}

} // namespace
