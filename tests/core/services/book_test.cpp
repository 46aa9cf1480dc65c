// The one door to the book, end to end on a real file.
#include "core/services/book.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::actions;
using core::services::Book;
using model::EntryKind;
using model::PieceId;
using model::WeighingId;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using saltloft::testing::weighing;

namespace {

class BookTest : public ::testing::Test {
  protected:
    Book open(bool create = true) {
        auto book = Book::open(folder.file("test.saltloft"),
                               {.now = at_s(test_now_s), .create_if_missing = create});
        EXPECT_TRUE(book.has_value()) << book.error().detail;
        return std::move(*book);
    }
    TempFolder folder;
};

Performed must(base::Result<Performed> result) {
    EXPECT_TRUE(result.has_value()) << static_cast<int>(result.error().code) << " "
                                    << result.error().detail << " " << result.error().where;
    return result.value_or(Performed{});
}

} // namespace

TEST_F(BookTest, StartsABatchAsOneActionAndReadsItBack) {
    Book book = open();
    const auto ida = must(book.perform(AddPerson{{{}, "Ida", "IB"}}, context()))
                         .id<model::PersonId>(EntryKind::person);
    auto start = saltloft::testing::start_batch("B01");
    start.recipe = AddRecipe{"Loin", R"({"lines":[]})"};
    start.uses.push_back({.ingredient = "salt",
                          .name = "Sea salt",
                          .planned = units::Mass::grams(55.0),
                          .weighed = units::Mass::grams(55.1)});
    start.accepted.push_back(
        {.code = "dose_coarse", .at = at_s(test_now_s), .by = ida, .why = "checked"});
    const Performed made = must(book.perform(start, context()));

    const auto batch = book.batch_by_code("B01");
    ASSERT_TRUE(batch.has_value());
    EXPECT_EQ(batch->product, "loin");
    EXPECT_EQ(batch->recipe, made.id<model::RecipeVersionId>(EntryKind::recipe_version));
    EXPECT_EQ(book.recipe_version(*batch->recipe)->document, R"({"lines":[]})");

    const auto pieces = book.pieces({.batch = batch->id});
    ASSERT_TRUE(pieces.has_value());
    ASSERT_EQ(pieces->size(), 2U);
    EXPECT_EQ(pieces->at(0).code, "B01a");
    EXPECT_NEAR(pieces->at(0).thickness->in_millimetres(), 60, 1e-9);
    EXPECT_NEAR(pieces->at(0).target->loss.in_percent(), 35, 1e-9);
    EXPECT_NEAR(book.weighings(pieces->at(1).id)->at(0).on_scale.in_grams(), 1200, 1e-9);
    EXPECT_EQ(book.stages(batch->id)->at(0).what.name, "Salt");
    EXPECT_NEAR(book.ingredient_uses(batch->id)->at(0).weighed->in_grams(), 55.1, 1e-9);
    EXPECT_EQ(book.acceptances(batch->id)->at(0).why, "checked");
    EXPECT_EQ(book.undo_label()->verb, "start_batch");
    EXPECT_EQ(book.undo_label()->subject, "B01");
}

TEST_F(BookTest, ACorrectionAppendsAndTheOriginalStaysReadable) {
    Book book = open();
    const Performed made = must(book.perform(saltloft::testing::start_batch("B01"), context()));
    const PieceId piece = made.id<PieceId>(EntryKind::piece);
    const auto first = must(book.perform(AddWeighing{weighing(piece, 976.5, test_now_s + 60)},
                                         context("", test_now_s + 60)))
                           .id<WeighingId>(EntryKind::weighing);
    const auto second =
        must(book.perform(AmendWeighing{first, weighing({}, 796.5, test_now_s + 60)},
                          context("digits swapped", test_now_s + 120)))
            .id<WeighingId>(EntryKind::weighing);

    const auto all = book.weighings(piece);
    ASSERT_EQ(all->size(), 3U);
    EXPECT_EQ(book.weighing(first)->amended_by, second);
    EXPECT_FALSE(book.weighing(first)->stands());
    EXPECT_NEAR(book.weighing(first)->on_scale.in_grams(), 976.5, 1e-9);
    const auto history = book.piece_history(piece);
    ASSERT_EQ(history->weighings.size(), 2U) << "only standing ones";
    EXPECT_NEAR(history->weighings.at(1).on_scale.in_grams(), 796.5, 1e-9);

    const auto versions = book.weighing_versions(second);
    ASSERT_EQ(versions->size(), 2U);
    EXPECT_EQ(versions->at(1).why, "digits swapped");
    EXPECT_EQ(versions->at(1).entered_at.unix_seconds(), test_now_s + 120);

    // The same entry cannot be corrected twice; the correction can.
    const auto again = book.perform(AmendWeighing{first, weighing({}, 1)}, context("again"));
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, base::ErrorCode::conflict);
    EXPECT_EQ(again.error().detail, "already_amended");
    // A correction needs a reason.
    const auto no_reason = book.perform(AmendWeighing{second, weighing({}, 1)}, context());
    ASSERT_FALSE(no_reason.has_value());
    EXPECT_EQ(no_reason.error().detail, "why_missing");
}

TEST_F(BookTest, UndoAndRedoSurviveARestart) {
    PieceId piece;
    {
        Book book = open();
        piece = must(book.perform(saltloft::testing::start_batch("B01"), context()))
                    .id<PieceId>(EntryKind::piece);
        must(book.perform(AddWeighing{weighing(piece, 950)}, context()));
        must(book.perform(AddWeighing{weighing(piece, 900)}, context()));
    }
    {
        Book book = open(false);
        const auto undone = book.undo(context("typed twice"));
        ASSERT_TRUE(undone.has_value()) << undone.error().detail;
        EXPECT_EQ(undone->verb, "add_weighing");
        EXPECT_EQ(undone->subject, "B01a");
        EXPECT_EQ(book.weighings(piece)->size(), 2U);
    }
    {
        Book book = open(false);
        ASSERT_TRUE(book.redo_label().has_value());
        ASSERT_TRUE(book.redo(context()).has_value());
        EXPECT_EQ(book.weighings(piece)->size(), 3U);
        EXPECT_EQ(book.redo(context()).error().code, base::ErrorCode::nothing_to_redo);
        ASSERT_TRUE(book.undo(context()).has_value());
        must(book.perform(AddWeighing{weighing(piece, 880)}, context()));
        EXPECT_FALSE(book.redo_label().has_value()) << "a new action closes the way forward";
        const auto log = book.log(100);
        ASSERT_TRUE(log.has_value());
        EXPECT_EQ(log->size(), 7U) << "three done, undone, redone, undone, one more done";
    }
}

TEST_F(BookTest, RevisionsTellWhichPieceChanged) {
    Book book = open();
    const Performed made = must(book.perform(saltloft::testing::start_batch("B01"), context()));
    const auto one = made.id<PieceId>(EntryKind::piece, 0);
    const auto two = made.id<PieceId>(EntryKind::piece, 1);
    const auto before_one = *book.piece_revision(one);
    const auto before_two = *book.piece_revision(two);
    must(book.perform(AddWeighing{weighing(one, 950)}, context()));
    EXPECT_GT(*book.piece_revision(one), before_one);
    EXPECT_EQ(*book.piece_revision(two), before_two);
    const auto after = *book.piece_revision(one);
    ASSERT_TRUE(book.undo(context()).has_value());
    EXPECT_GT(*book.piece_revision(one), after) << "an undo is a change, never a return";
    EXPECT_EQ(*book.revision(), *book.piece_revision(one));
}

TEST_F(BookTest, ACodeInUseIsRefusedAndNothingIsLeftBehind) {
    Book book = open();
    must(book.perform(saltloft::testing::start_batch("B01"), context()));
    auto second = saltloft::testing::start_batch("B02");
    second.pieces.at(1).piece.code = "B01a"; // refused after batch and first piece were written
    const auto refused = book.perform(second, context());
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, base::ErrorCode::conflict);
    EXPECT_EQ(refused.error().detail, "code_taken");
    EXPECT_EQ(refused.error().where, "B01a");
    EXPECT_EQ(book.batches()->size(), 1U);
    EXPECT_EQ(book.pieces()->size(), 2U);
    const auto found = book.check(second, context());
    ASSERT_TRUE(found.has_value());
    ASSERT_EQ(found->size(), 1U);
    EXPECT_EQ(found->at(0).code, "code_taken");
}

TEST_F(BookTest, CheckNamesAllThatIsWrong) {
    Book book = open();
    auto start = saltloft::testing::start_batch("");
    start.pieces.at(0).weighings.at(0).on_scale = units::Mass::grams(-3);
    start.pieces.at(1).piece.code = start.pieces.at(0).piece.code;
    const auto found = book.check(start, context());
    ASSERT_TRUE(found.has_value());
    std::vector<std::string> codes;
    for (const auto& finding : *found) {
        codes.push_back(finding.code + "@" + finding.place);
    }
    EXPECT_EQ(codes,
              (std::vector<std::string>{"code_missing@batch.code",
                                        "weight_not_positive@pieces[0].weighings[0].on_scale",
                                        "tare_not_below_weight@pieces[0].weighings[0].tare",
                                        "code_twice@pieces[1].code"}));
}
