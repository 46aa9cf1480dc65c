#include "core/planning/routine_days.h"

#include <gtest/gtest.h>

namespace routine_days_test {
namespace {

using namespace core;
using units::Day;
using units::Duration;

constexpr Day start = Day::from_days_since_epoch(20500);

TEST(RoutineDays, EverySecondDayUntilTheStageEnds) {
    model::StageTemplate stage;
    stage.routines = {{.verb = "turn", .every = Duration::days(2)}};
    const auto days = planning::routine_days(stage, start, start + 7);
    ASSERT_EQ(days.size(), 3U); // days 2, 4, 6
    EXPECT_EQ(days[2].day, start + 6);
    EXPECT_EQ(days[2].number, 3);
}

TEST(RoutineDays, SingleTimesAndAFirstTimeOfItsOwn) {
    model::StageTemplate stage;
    stage.routines = {
        {.verb = "rub_again", .at = {Duration::days(3), Duration::days(10)}},
        {.verb = "turn", .every = Duration::days(5), .first_after = Duration::days(1)}};
    const auto days = planning::routine_days(stage, start, start + 12);
    ASSERT_EQ(days.size(), 5U);
    EXPECT_EQ(days[0].day, start + 1); // turn
    EXPECT_EQ(days[1].day, start + 3); // rub again
    EXPECT_EQ(days[1].series, "0a");
    EXPECT_EQ(days[3].verb, "rub_again");
    EXPECT_EQ(days[4].day, start + 11);
}

TEST(RoutineDays, TwiceADayFallsTwiceOnADay) {
    model::StageTemplate stage;
    stage.routines = {{.verb = "turn", .every = Duration::hours(12)}};
    const auto days = planning::routine_days(stage, start, start + 2);
    ASSERT_EQ(days.size(), 3U); // tonight, tomorrow morning and night
    EXPECT_EQ(days[0].day, start);
    EXPECT_EQ(days[2].day, start + 1);
}

TEST(RoutineDays, AnIntervalOfNothingMakesNoWork) {
    model::StageTemplate stage;
    stage.routines = {{.verb = "turn", .every = Duration::days(0)}, {.verb = "wipe"}};
    EXPECT_TRUE(planning::routine_days(stage, start, start + 7).empty());
}

} // namespace

} // namespace routine_days_test
