#include "core/planning/stage_length.h"

#include <gtest/gtest.h>

namespace stage_length_test {
namespace {

using namespace core;
using model::EndCondition;
using planning::LengthBasis;
using planning::PieceSpec;
using planning::StageLength;
using units::Day;
using units::Duration;
using units::Length;
using units::Mass;

constexpr Day start = Day::from_days_since_epoch(20000);

PieceSpec piece(double mm, double kg) {
    return {.thickness = Length::millimetres(mm), .raw_weight = Mass::kilograms(kg)};
}

EndCondition after(double days) {
    return {.kind = EndCondition::Kind::after, .time = Duration::days(days)};
}
EndCondition per_cm(double days, double constant) {
    return {.kind = EndCondition::Kind::days_per_cm,
            .time = Duration::days(constant),
            .days_per_unit = days};
}

model::StageTemplate stage(std::vector<EndCondition> ends, bool all = false) {
    model::StageTemplate s;
    s.name = "Stage";
    s.kind = model::StageKind::dry;
    s.ends = std::move(ends);
    s.ends_by_all = all;
    return s;
}

StageLength length(const model::StageTemplate& s, const std::vector<PieceSpec>& pieces,
                   const planning::LengthSources& sources = {}, double dried = 0) {
    const PieceSpec usual = piece(50, 1);
    return planning::stage_length({s, pieces, usual, start, Duration::days(dried)}, sources);
}

TEST(StageLength, RulesRoundUpToWholeDaysAndTheSlowestPieceDecides) {
    const auto found = length(stage({per_cm(1, 2)}), {piece(43, 1), piece(81, 1), piece(60, 1)});
    EXPECT_DOUBLE_EQ(found.lasts.best.in_days(), 11); // 8.1 + 2 up
    EXPECT_EQ(found.slowest_piece, 1U);
    EXPECT_EQ(found.basis, LengthBasis::thickness_rule);
    EXPECT_EQ(found.lasts.low, found.lasts.high);
}

TEST(StageLength, HoursStayHours) {
    EXPECT_DOUBLE_EQ(length(stage({after(0.5)}), {piece(50, 1)}).lasts.best.in_days(), 0.5);
}

TEST(StageLength, AllWaitsForTheLongestAnyForTheShortest) {
    EXPECT_DOUBLE_EQ(
        length(stage({per_cm(1, 2), after(14)}, true), {piece(50, 1)}).lasts.best.in_days(), 14);
    const auto any = length(stage({per_cm(1, 2), after(14)}), {piece(50, 1)});
    EXPECT_DOUBLE_EQ(any.lasts.best.in_days(), 7);
    EXPECT_EQ(any.basis, LengthBasis::thickness_rule);
}

TEST(StageLength, UntilADateAndNeverNegative) {
    EndCondition until{.kind = EndCondition::Kind::on_date, .date = start + 9};
    EXPECT_DOUBLE_EQ(length(stage({until}), {piece(50, 1)}).lasts.best.in_days(), 9);
    until.date = start - 3;
    EXPECT_DOUBLE_EQ(length(stage({until}), {piece(50, 1)}).lasts.best.in_days(), 0);
}

TEST(StageLength, TypicalSpreadIsScaledByThicknessWiderThanEitherLaw) {
    auto s = stage({EndCondition{.kind = EndCondition::Kind::loss}});
    s.typical = {Duration::days(30), Duration::days(60), Duration::days(100)};
    const auto same = length(s, {piece(50, 1)});
    EXPECT_DOUBLE_EQ(same.lasts.best.in_days(), 60);
    EXPECT_EQ(same.basis, LengthBasis::typical);
    const auto thin = length(s, {piece(25, 1)});     // half: low x 1/4, best x 0.3536, high x 1/2
    EXPECT_DOUBLE_EQ(thin.lasts.low.in_days(), 8);   // 7.5 up
    EXPECT_DOUBLE_EQ(thin.lasts.best.in_days(), 22); // 21.2 up
    EXPECT_DOUBLE_EQ(thin.lasts.high.in_days(), 50);
}

TEST(StageLength, AFartherTargetTakesLongerAndANearerOneLess) {
    auto s = stage({EndCondition{.kind = EndCondition::Kind::loss}});
    s.typical = {Duration::days(30), Duration::days(60), Duration::days(100)};
    PieceSpec usual = piece(50, 1);
    usual.target = model::Target{units::MassShare::percent(35)};
    const auto to = [&](double percent) {
        PieceSpec asked = usual;
        asked.target->loss = units::MassShare::percent(percent);
        const std::vector<PieceSpec> pieces{asked};
        return planning::stage_length({s, pieces, usual, start, Duration::days(0)}, {})
            .lasts.best.in_days();
    };
    EXPECT_DOUBLE_EQ(to(35), 60);
    EXPECT_DOUBLE_EQ(to(45), 92); // ln(1 - 45/65) / ln(1 - 35/65) = 1.524
    EXPECT_LT(to(25), 60);
    EXPECT_GT(to(99), to(45)); // beyond the floor: long, not endless
    EXPECT_LT(to(99), 400);
}

TEST(StageLength, OwnHistoryComesBeforeTypicalAndEarlierDryingCounts) {
    auto s = stage({EndCondition{.kind = EndCondition::Kind::loss}});
    s.typical = {Duration::days(30), Duration::days(60), Duration::days(100)};
    planning::LengthSources sources;
    sources.own_drying = [](const PieceSpec&) {
        return planning::LengthSources::Answer(
            {Duration::days(40), Duration::days(50), Duration::days(70)});
    };
    const auto found = length(s, {piece(50, 1)}, sources, 10);
    EXPECT_EQ(found.basis, LengthBasis::own_history);
    EXPECT_DOUBLE_EQ(found.lasts.best.in_days(), 40);
    EXPECT_DOUBLE_EQ(length(s, {piece(50, 1)}, sources, 80).lasts.high.in_days(), 0);
}

TEST(StageLength, NothingKnownIsUnknownNotZeroDays) {
    const auto found =
        length(stage({EndCondition{.kind = EndCondition::Kind::feel}}), {piece(50, 1)});
    EXPECT_EQ(found.basis, LengthBasis::unknown);
}

} // namespace

} // namespace stage_length_test
