// Weighings of a file into a book: matched with care, added as one action.
#include "core/services/weighing_import.h"

#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using core::services::Book;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::test_now_s;
using units::Mass;

namespace {

class WeighingImportTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto opened = Book::create(folder.file("book.saltloft"), {.now = at_s(test_now_s)});
        ASSERT_TRUE(opened.has_value());
        book = std::make_unique<Book>(std::move(*opened));
        started = book->perform(saltloft::testing::start_batch("B01"), context()).value();
    }
    exchange::ImportedWeighings read(const std::string& rows) {
        auto file = exchange::read_weighings_csv("batch,piece,taken_at,weight_g\n" + rows);
        EXPECT_TRUE(file.has_value());
        return std::move(*file);
    }
    services::WeighingImportPlan plan(const std::string& rows) {
        auto made = services::plan_weighing_import(*book, read(rows));
        EXPECT_TRUE(made.has_value());
        return std::move(*made);
    }
    saltloft::testing::TempFolder folder;
    std::unique_ptr<Book> book;
    actions::Performed started;
};

} // namespace

TEST_F(WeighingImportTest, AddsNewOnesAsOneActionAndKnowsThemAgain) {
    const std::string rows = "B01,B01a,2026-03-02T08:00:00Z,950\n,B01b,2026-03-02T08:00:00Z,1150\n";
    const auto first = plan(rows);
    EXPECT_EQ(first.new_ones.size(), 2U);
    ASSERT_TRUE(services::import_weighings(*book, first, context()).has_value());
    const auto again = plan(rows);
    EXPECT_TRUE(again.new_ones.empty());
    EXPECT_EQ(again.known_lines, (std::vector<std::size_t>{2, 3}));
    ASSERT_TRUE(book->undo(context()).has_value());
    EXPECT_EQ(plan(rows).new_ones.size(), 2U);
}

TEST_F(WeighingImportTest, TellsWhatItCannotMatchOrMustNotOverwrite) {
    // The raw weight of B01a in the book is 1000 g, taken at the tests' moment.
    const auto made = plan("B01,X9,2026-03-02T08:00:00Z,950\nB02,B01a,2026-03-02T08:00:00Z,950\n"
                           "B01,B01a,2026-03-01T08:00:00Z,990\n");
    EXPECT_TRUE(made.new_ones.empty());
    ASSERT_EQ(made.unmatched.size(), 2U);
    EXPECT_EQ(made.unmatched[0].line, 2U);
    EXPECT_EQ(made.unmatched[1].piece, "B01a");
    ASSERT_EQ(made.contradictions.size(), 1U);
    EXPECT_EQ(book->weighing(made.contradictions[0].known)->on_scale, Mass::grams(1000));
}

// A code is free again once its piece is gone: an old file must not feed the new piece.
TEST_F(WeighingImportTest, ACodeUsedAgainNeedsItsBatch) {
    const auto old_piece = started.id<model::PieceId>(EntryKind::piece, 0);
    ASSERT_TRUE(book->perform(actions::DiscardPiece{old_piece, at_s(test_now_s)}, context("spoilt"))
                    .has_value());
    auto next = saltloft::testing::start_batch("B02");
    next.pieces[0].piece.code = "B01a";
    const auto second = book->perform(next, context()).value();
    EXPECT_EQ(plan(",B01a,2026-03-02T08:00:00Z,950\n").unmatched.size(), 1U);
    const auto named =
        plan("B01,B01a,2026-03-02T08:00:00Z,950\nB02,B01a,2026-03-02T08:00:00Z,940\n");
    ASSERT_EQ(named.new_ones.size(), 2U);
    EXPECT_EQ(named.new_ones[0].piece, old_piece);
    EXPECT_EQ(named.new_ones[1].piece, second.id<model::PieceId>(EntryKind::piece, 0));
}
