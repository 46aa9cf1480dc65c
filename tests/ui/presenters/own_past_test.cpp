#include "ui/presenters/own_past.h"

#include "tests/support/ui/past_book.h"

using ui::presenters::OwnPast;

namespace {

using OwnPastTest = saltloft::testing::PastBook;

} // namespace

TEST_F(OwnPastTest, SpeaksOfTheProductHoweverItIsSpelt) {
    coppa_past();
    OwnPast past;
    past.load(*workspace);
    const auto& style = workspace->style();
    EXPECT_EQ(past.finished().size(), 2U);
    EXPECT_FALSE(past.history({.product = " COPPA"}, style).isEmpty());
    EXPECT_TRUE(past.history({.product = "loin"}, style).isEmpty());
    EXPECT_TRUE(past.history({.product = ""}, style).isEmpty());
    EXPECT_FALSE(past.proposal(QStringLiteral("loin"), style));
}

TEST_F(OwnPastTest, TheProposalNamesItsBatchAndItsReasons) {
    const auto newer = coppa_past();
    OwnPast past;
    past.load(*workspace);
    const auto proposal = past.proposal(QStringLiteral("Coppa"), workspace->style());
    ASSERT_TRUE(proposal && proposal->usable());
    EXPECT_NEAR(proposal->target->in_percent(), 37.5, 1e-9);
    EXPECT_NEAR(proposal->salt->in_percent(), 2.6, 1e-9);
    EXPECT_TRUE(proposal->words.contains(QStringLiteral("BOLD2")));
    EXPECT_TRUE(proposal->salt_reason.startsWith(QStringLiteral("BOLD2 was too salty")));
    EXPECT_TRUE(proposal->target_reason.startsWith(QStringLiteral("BOLD2 was too soft")));
    EXPECT_TRUE(past.proposal(newer.recipe, workspace->style()));
    EXPECT_FALSE(past.proposal(core::model::RecipeId::from_row(9999), workspace->style()));
}

TEST_F(OwnPastTest, ContentAndWithoutAWordThereIsNothingToSay) {
    const auto done = finish("P1", "Loin", -100, 7);
    must(core::actions::RecordOutcome{
        {.batch = done.batch, .salt = 0, .texture = 0, .change_next_time = ""}});
    OwnPast past;
    past.load(*workspace);
    EXPECT_FALSE(past.proposal(QStringLiteral("Loin"), workspace->style()));
}
