#include "core/planning/own_history.h"

#include <gtest/gtest.h>

#include <cmath>

namespace own_history_test {
namespace {

using namespace core;
using planning::FinishedPiece;
using units::Day;
using units::Duration;
using units::Length;
using units::MassShare;

constexpr Day d0 = Day::from_days_since_epoch(20000);

FinishedPiece piece(int row, int hung_on, int weeks, int chamber = 1) {
    return {.piece = model::PieceId::from_row(row),
            .batch = model::BatchId::from_row(row),
            .product = "coppa",
            .form = model::Form::cylinder,
            .thickness = Length::millimetres(80),
            .chamber = model::ChamberId::from_row(chamber),
            .hung = d0 + hung_on,
            .finished = d0 + hung_on + weeks * 7,
            .loss = MassShare::percent(35),
            .target = MassShare::percent(35)};
}

TEST(Summarise, TheLastThreeTookNineToElevenWeeks) {
    const auto summary = planning::summarise(
        {piece(1, 0, 20), piece(2, 100, 9), piece(3, 200, 11), piece(4, 300, 10)},
        {.product = "coppa"});
    ASSERT_TRUE(summary);
    EXPECT_DOUBLE_EQ(summary->took.low.in_weeks(), 9);
    EXPECT_DOUBLE_EQ(summary->took.best.in_weeks(), 10);
    EXPECT_DOUBLE_EQ(summary->took.high.in_weeks(), 11);
    EXPECT_EQ(summary->pieces.front(), model::PieceId::from_row(4));
    EXPECT_NEAR(summary->loss_per_week->best.in_percent(), 3.5, 1e-9);
}

TEST(Summarise, NarrowsToTheChamberAndSeasonOnlyWhileEnoughAreLeft) {
    const std::vector<FinishedPiece> all{piece(1, 0, 8, 1), piece(2, 10, 9, 1),
                                         piece(3, 180, 15, 1), piece(4, 185, 16, 2)};
    const planning::Likeness likeness{.product = "coppa",
                                      .form = model::Form::cylinder,
                                      .chamber = model::ChamberId::from_row(1),
                                      .hung_on = d0 + 365};
    const auto summary = planning::summarise(all, likeness);
    ASSERT_TRUE(summary);
    EXPECT_TRUE(summary->same_chamber && summary->same_form && summary->same_time_of_year);
    EXPECT_DOUBLE_EQ(summary->took.high.in_weeks(), 9);
    auto elsewhere = likeness;
    elsewhere.chamber = model::ChamberId::from_row(2); // one piece only: too few to narrow by
    EXPECT_FALSE(planning::summarise(all, elsewhere)->same_chamber);
}

TEST(Summarise, OnePieceOrAnotherProductIsNoHistory) {
    EXPECT_FALSE(planning::summarise({piece(1, 0, 9)}, {.product = "coppa"}));
    EXPECT_FALSE(planning::summarise({piece(1, 0, 9), piece(2, 5, 9)}, {.product = "loin"}));
}

TEST(OwnDrying, AnswersFromThreePiecesOnAndWidensForFew) {
    const planning::PieceSpec asked{.form = model::Form::cylinder,
                                    .thickness = Length::millimetres(80)};
    EXPECT_FALSE(planning::own_drying({piece(1, 0, 9), piece(2, 5, 10)}, "coppa")(asked));
    const auto three =
        planning::own_drying({piece(1, 0, 9), piece(2, 5, 10), piece(3, 9, 11)}, "coppa")(asked);
    ASSERT_TRUE(three);
    // Log-normal by hand: ln 63, 70, 77 have mean 4.24562 and deviation 0.10038; t(0.9; 2) 1.886;
    // reach 1.886 x 0.10038 x sqrt(4/3) = 0.2186.
    EXPECT_NEAR(three->best.in_days(), 69.76, 0.02);
    EXPECT_NEAR(three->high / three->best, std::exp(0.2186), 0.002);
    EXPECT_NEAR(three->best / three->low, std::exp(0.2186), 0.002);
    std::vector<FinishedPiece> many;
    for (int i = 0; i < 12; ++i) {
        many.push_back(piece(i + 1, i, 9 + i % 3));
    }
    const auto twelve = planning::own_drying(many, "coppa")(asked);
    EXPECT_LT(twelve->high / twelve->best, three->high / three->best);
}

TEST(OwnDrying, ScalesToTheThicknessAndIsLessSureOfIt) {
    const std::vector<FinishedPiece> own{piece(1, 0, 9), piece(2, 5, 10), piece(3, 9, 11)};
    const auto source = planning::own_drying(own, "coppa");
    const auto same = source({.form = model::Form::cylinder, .thickness = Length::millimetres(80)});
    const auto thick =
        source({.form = model::Form::cylinder, .thickness = Length::millimetres(120)});
    EXPECT_NEAR(thick->best / same->best, std::pow(1.5, 1.5), 1e-6);
    EXPECT_GT(thick->high / thick->best, same->high / same->best);
    EXPECT_FALSE(source({.form = model::Form::slab, .thickness = Length::millimetres(80)}));
}

TEST(FinishedSalt, TheSaltStaysTheWaterLeaves) {
    // Practice notes, derived: 3 % on raw is 4.6 % at 35 % loss, 2.5 % is 3.6 % at 30 %.
    EXPECT_NEAR(planning::finished_salt(MassShare::percent(3), MassShare::percent(35)).in_percent(),
                4.6, 0.05);
    EXPECT_NEAR(
        planning::finished_salt(MassShare::percent(2.5), MassShare::percent(30)).in_percent(), 3.6,
        0.05);
}

TEST(ProposeNext, AnOutcomeSuggestsATargetAndTheSaltAsFinished) {
    auto newest = piece(2, 100, 10);
    newest.loss = MassShare::percent(36);
    newest.salt_dose = MassShare::percent(3);
    const auto proposal = planning::propose_next(
        {piece(1, 0, 9), newest},
        {{.batch = newest.batch, .salt = 1, .texture = -2, .change_next_time = "next time 45 %"},
         {.batch = model::BatchId::from_row(1), .texture = 2}},
        "coppa");
    ASSERT_TRUE(proposal);
    EXPECT_NEAR(proposal->target_next->in_percent(), 41, 1e-9); // 36 + 2 x 2.5
    EXPECT_NEAR(proposal->finished_salt->in_percent(), 3 / 0.64, 1e-9);
    EXPECT_NEAR(proposal->same_salt_dose->in_percent(), 3 / 0.64 * 0.59, 1e-9);
    EXPECT_EQ(proposal->words, "next time 45 %");
}

TEST(ProposeNext, TooSaltyTakesATenthOfTheFinishedSaltAway) {
    auto salty = piece(1, 0, 9);
    salty.salt_dose = MassShare::percent(3);
    // 3 % on raw is 3 / 0.65 finished; a tenth less at the same loss is 2.7 % on raw.
    const auto less =
        planning::propose_next({salty}, {{.batch = salty.batch, .salt = 1, .texture = 0}}, "coppa");
    ASSERT_TRUE(less && less->salt_next);
    EXPECT_NEAR(less->salt_next->in_percent(), 2.7, 1e-9);
    EXPECT_EQ(less->batch, salty.batch);
    const auto more = planning::propose_next(
        {salty}, {{.batch = salty.batch, .salt = -2, .texture = 0}}, "coppa");
    EXPECT_NEAR(more->salt_next->in_percent(), 3.6, 1e-9);
}

TEST(ProposeNext, ATasteNeverTalksADoseOutOfWhatIsUsual) {
    auto mild = piece(1, 0, 9);
    mild.salt_dose = MassShare::percent(2.1);
    const auto floor =
        planning::propose_next({mild}, {{.batch = mild.batch, .salt = 2, .texture = 0}}, "coppa");
    ASSERT_TRUE(floor && floor->salt_next);
    EXPECT_DOUBLE_EQ(floor->salt_next->in_percent(), 2.0);
    mild.salt_dose = MassShare::percent(1.8);
    EXPECT_FALSE(
        planning::propose_next({mild}, {{.batch = mild.batch, .salt = 2, .texture = 0}}, "coppa")
            ->salt_next);
    // Lacking salt, but to be dried much farther: the salt comes up by itself.
    auto soft = piece(2, 0, 9);
    soft.salt_dose = MassShare::percent(3);
    soft.loss = MassShare::percent(60); // to 65 %: 3 / 0.4 x 0.35 x 1.1 is less than 3
    EXPECT_FALSE(
        planning::propose_next({soft}, {{.batch = soft.batch, .salt = -1, .texture = -2}}, "coppa")
            ->salt_next);
}

TEST(ProposeNext, OfOneRecipeOnlyItsOwnBatchesSpeak) {
    const std::vector<FinishedPiece> both{piece(1, 0, 9), piece(2, 100, 10)};
    const std::vector<model::Outcome> said{
        {.batch = both[0].batch, .texture = 1, .change_next_time = "older"},
        {.batch = both[1].batch, .texture = 1, .change_next_time = "newer"}};
    EXPECT_EQ(planning::propose_next(both, said, std::vector{both[0].batch})->words, "older");
    EXPECT_FALSE(planning::propose_next(both, said, std::vector<model::BatchId>{}));
}

TEST(ProposeNext, ContentNeedsNoChangeAndNoOutcomeNoProposal) {
    EXPECT_FALSE(planning::propose_next({piece(1, 0, 9)}, {}, "coppa"));
    const auto content = planning::propose_next(
        {piece(1, 0, 9)}, {{.batch = model::BatchId::from_row(1), .texture = 0}}, "coppa");
    ASSERT_TRUE(content);
    EXPECT_FALSE(content->target_next);
}

} // namespace

} // namespace own_history_test
