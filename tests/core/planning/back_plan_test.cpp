#include "core/planning/back_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace {

using namespace core;
using planning::BackPlanRequest;
using planning::Catalogue;
using planning::plan_back;
using planning::Slack;
using units::Day;
using units::Length;
using units::Mass;

const Catalogue& catalogue() {
    static const Catalogue built_in = Catalogue::built_in();
    return built_in;
}

Day day(int year, unsigned month, unsigned d) {
    return Day::from_date(std::chrono::year(year) / std::chrono::month(month) /
                          std::chrono::day(d));
}

const model::Finding* find(const model::Findings& findings, const char* code) {
    const auto found = std::find_if(findings.begin(), findings.end(),
                                    [&](const auto& f) { return f.code == code; });
    return found == findings.end() ? nullptr : &*found;
}

TEST(BackPlan, StartsAsLateAsTheSlackAllows) {
    const BackPlanRequest request{.plan = *catalogue().find("guanciale"),
                                  .pieces = {},
                                  .wanted_on = day(2026, 12, 24),
                                  .today = day(2026, 9, 1)};
    const auto cautious = plan_back(request);
    ASSERT_TRUE(cautious.plan);
    EXPECT_LE(cautious.plan->latest_end, request.wanted_on);
    auto tight_request = request;
    tight_request.slack = Slack::none;
    const auto tight = plan_back(tight_request);
    ASSERT_TRUE(tight.plan);
    EXPECT_EQ(tight.plan->end, request.wanted_on);
    EXPECT_LT(*cautious.latest_start, *tight.latest_start);
    EXPECT_EQ(cautious.shortfall_days, 0);
    EXPECT_TRUE(cautious.reasons.empty());
}

// Practice: "Ham wanted for Christmas, needs 30 days, has 8-9: should I double up the pink salt?"
TEST(BackPlan, SaysNoWithTheShortfallAndNeverAShorterCure) {
    const BackPlanRequest request{.plan = *catalogue().find("raw-ham-smoked"),
                                  .pieces = {{.code = "H1",
                                              .form = model::Form::block,
                                              .thickness = Length::millimetres(90),
                                              .raw_weight = Mass::kilograms(2.5)}},
                                  .wanted_on = day(2026, 12, 24),
                                  .today = day(2026, 12, 15),
                                  .catalogue = &catalogue()};
    const auto back = plan_back(request);
    EXPECT_FALSE(back.plan);
    const auto* why = find(back.reasons, "too_little_time");
    ASSERT_NE(why, nullptr);
    EXPECT_EQ(why->severity, model::Severity::stop);
    EXPECT_DOUBLE_EQ(std::get<double>(why->values.at("days_available")), 9);
    EXPECT_EQ(back.shortfall_days, *back.ready_if_started_today - request.wanted_on);
    EXPECT_GT(back.shortfall_days, 20);
    const auto* cure = find(back.reasons, "stage_cannot_be_shorter");
    ASSERT_NE(cure, nullptr);
    EXPECT_EQ(cure->place, "Cure");
    EXPECT_DOUBLE_EQ(std::get<double>(cure->values.at("days")), 17); // 1.5 d/cm x 9 + 3 up
    EXPECT_FALSE(back.smaller) << "no cut brings nine days";
    EXPECT_TRUE(back.others.empty()) << "nothing is ready in nine days for sure";
    auto hopeful = request;
    hopeful.slack = Slack::none;
    const auto likely = plan_back(hopeful);
    EXPECT_FALSE(likely.plan);
    ASSERT_FALSE(likely.others.empty()); // biltong takes a week if all goes well
    for (const auto& other : likely.others) {
        EXPECT_LE(other.days, 9) << other.template_id;
        EXPECT_EQ(other.days + other.days_spare, 9);
    }
}

TEST(BackPlan, OffersThePieceThatWouldFit) {
    BackPlanRequest request{.plan = *catalogue().find("loin"),
                            .pieces = {{.code = "L1",
                                        .form = model::Form::cylinder,
                                        .thickness = Length::millimetres(100),
                                        .raw_weight = Mass::kilograms(2.4)}},
                            .wanted_on = day(2026, 12, 24),
                            .today = day(2026, 10, 1),
                            .catalogue = &catalogue()};
    const auto back = plan_back(request);
    ASSERT_FALSE(back.plan);
    ASSERT_TRUE(back.smaller);
    EXPECT_LT(back.smaller->thickness, Length::millimetres(100));
    EXPECT_GT(back.smaller->thickness, Length::millimetres(30));
    EXPECT_LE(back.smaller->ready_by, request.wanted_on);
    // A cylinder cut thinner loses weight with the square.
    EXPECT_NEAR(back.smaller->of_weight,
                std::pow(back.smaller->thickness / Length::millimetres(100), 2), 0.03);
    // The offer is true: planning that piece succeeds, and one millimetre more does not.
    request.pieces[0].thickness = back.smaller->thickness;
    request.pieces[0].raw_weight = back.smaller->weight;
    EXPECT_TRUE(plan_back(request).plan);
    request.pieces[0].thickness = back.smaller->thickness + Length::millimetres(2);
    EXPECT_FALSE(plan_back(request).plan);
}

TEST(BackPlan, AMinimumCannotBeCutThinner) {
    const BackPlanRequest request{.plan = *catalogue().find("country-ham"),
                                  .pieces = {},
                                  .wanted_on = day(2026, 12, 24),
                                  .today = day(2026, 11, 1)};
    const auto back = plan_back(request);
    EXPECT_FALSE(back.plan);
    EXPECT_FALSE(back.smaller); // 70 days hold for every weight
    EXPECT_TRUE(back.others.empty());
}

TEST(BackPlan, OtherProductsOfTheSameMeatComeFirst) {
    const BackPlanRequest request{.plan = *catalogue().find("coppa"),
                                  .pieces = {},
                                  .wanted_on = day(2026, 12, 24),
                                  .today = day(2026, 10, 20),
                                  .catalogue = &catalogue()};
    const auto back = plan_back(request);
    ASSERT_FALSE(back.plan);
    ASSERT_GE(back.others.size(), 2U);
    EXPECT_TRUE(back.others.front().same_meat);
    EXPECT_TRUE(
        std::is_sorted(back.others.begin(), back.others.end(), [](const auto& a, const auto& b) {
            return std::pair(!a.same_meat, a.days_spare) < std::pair(!b.same_meat, b.days_spare);
        }));
}

TEST(BackPlan, ADateInThePastSaysSo) {
    const auto back = plan_back({.plan = *catalogue().find("biltong"),
                                 .pieces = {},
                                 .wanted_on = day(2026, 1, 1),
                                 .today = day(2026, 1, 5),
                                 .catalogue = &catalogue()});
    EXPECT_FALSE(back.plan);
    EXPECT_NE(find(back.reasons, "date_passed"), nullptr);
    EXPECT_TRUE(back.others.empty());
    EXPECT_FALSE(back.smaller);
}

TEST(BackPlan, OwnHistoryMovesTheStart) {
    BackPlanRequest request{.plan = *catalogue().find("loin"),
                            .pieces = {},
                            .wanted_on = day(2026, 12, 24),
                            .today = day(2026, 1, 1)};
    const auto by_book = plan_back(request);
    planning::LengthSources slow;
    slow.own_drying = [](const planning::PieceSpec&) {
        return planning::LengthSources::Answer(
            {units::Duration::days(90), units::Duration::days(100), units::Duration::days(120)});
    };
    const auto by_own = plan_back(request, slow);
    ASSERT_TRUE(by_book.latest_start && by_own.latest_start);
    EXPECT_LT(*by_own.latest_start, *by_book.latest_start);
}

} // namespace
