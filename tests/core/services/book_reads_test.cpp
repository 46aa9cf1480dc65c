// The reading side of the book on the invented producer: what one question answers must agree with
// what is put together from the others.
#include "core/services/book.h"
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <memory>
#include <set>

using namespace core;
using core::services::Book;
using units::Duration;
using units::Instant;

namespace {

const Instant now = Instant::from_unix_seconds(1'794'646'800); // 14 November 2026

class BookReads : public ::testing::Test {
  protected:
    static void SetUpTestSuite() {
        folder = std::make_unique<saltloft::testing::TempFolder>();
        auto made = Book::create(folder->file("demo.saltloft"), {.now = now});
        ASSERT_TRUE(made.has_value());
        ASSERT_TRUE(services::fill_demo_book(*made, {now}).has_value());
        shared = std::make_unique<Book>(std::move(*made));
    }
    static void TearDownTestSuite() {
        shared.reset();
        folder.reset();
    }
    const Book& book = *shared;

  private:
    static inline std::unique_ptr<saltloft::testing::TempFolder> folder;
    static inline std::unique_ptr<Book> shared;
};

template <class T>
std::vector<T> rows(const base::Result<std::vector<T>>& answer) {
    EXPECT_TRUE(answer.has_value());
    return answer.value_or(std::vector<T>{});
}

template <class T>
std::set<std::int64_t> ids(const std::vector<T>& all) {
    std::set<std::int64_t> found;
    for (const auto& one : all) {
        found.insert(one.id.row());
    }
    return found;
}

} // namespace

TEST_F(BookReads, StagesInAChamberAreThoseOfAllBatchesThatRanThere) {
    const auto batches = rows(book.batches());
    ASSERT_GT(batches.size(), 5U);
    int seen = 0;
    for (const auto& chamber : rows(book.chambers())) {
        for (const int begin : {-400, -120, -60, -30, -7, 0, 5}) {
            for (const int days : {1, 30, 400}) {
                const Instant from = now + Duration::days(begin);
                const Instant to = from + Duration::days(days);
                std::set<std::int64_t> expected;
                for (const auto& batch : batches) {
                    for (const auto& stage : rows(book.stages(batch.id))) {
                        if (stage.chamber == chamber.id && stage.started_at &&
                            *stage.started_at < to && (!stage.ended_at || *stage.ended_at > from)) {
                            expected.insert(stage.id.row());
                        }
                    }
                }
                const auto answer = rows(book.stages_in(chamber.id, from, to));
                EXPECT_EQ(ids(answer), expected) << chamber.name << " " << begin << " " << days;
                EXPECT_TRUE(
                    std::is_sorted(answer.begin(), answer.end(), [](const auto& a, const auto& b) {
                        return a.started_at < b.started_at;
                    }));
                seen += static_cast<int>(answer.size());
            }
        }
    }
    EXPECT_GT(seen, 20);
}

TEST_F(BookReads, AnOverviewCountsThePiecesOfItsBatch) {
    const auto overviews = rows(book.batch_overviews());
    ASSERT_EQ(overviews.size(), rows(book.batches()).size());
    for (const auto& overview : overviews) {
        services::PieceFilter of;
        of.batch = overview.batch.id;
        int drying = 0;
        int finished = 0;
        std::optional<Instant> last;
        for (const auto& piece : rows(book.pieces(of))) {
            drying += piece.state == model::PieceState::drying ? 1 : 0;
            finished += piece.state == model::PieceState::finished ? 1 : 0;
            for (const auto& weighing : rows(book.weighings(piece.id))) {
                if (weighing.stands() && (!last || weighing.taken_at > *last)) {
                    last = weighing.taken_at;
                }
            }
        }
        EXPECT_EQ(overview.drying, drying) << overview.batch.code;
        EXPECT_EQ(overview.finished, finished) << overview.batch.code;
        EXPECT_EQ(overview.last_weighed, last) << overview.batch.code;
    }
}

TEST_F(BookReads, CodesFindTheirBatchAndFreeOnesNone) {
    std::set<std::string> products;
    for (const auto& batch : rows(book.batches())) {
        const auto found = book.batch_by_code(batch.code);
        ASSERT_TRUE(found.has_value()) << batch.code;
        EXPECT_EQ(found->id, batch.id);
        products.insert(batch.product);
    }
    const auto in_use = rows(book.products());
    EXPECT_EQ(std::set<std::string>(in_use.begin(), in_use.end()), products);
    EXPECT_EQ(in_use.size(), products.size()) << "each once";
    const auto free = book.free_batch_code();
    ASSERT_TRUE(free.has_value());
    EXPECT_EQ(book.batch_by_code(*free).error().code, base::ErrorCode::no_such_entry);
    const auto codes = rows(book.free_piece_codes(3));
    ASSERT_EQ(codes.size(), 3U);
    for (const auto& piece : rows(book.pieces())) {
        EXPECT_EQ(std::count(codes.begin(), codes.end(), piece.code), 0) << piece.code;
    }
    EXPECT_EQ(book.batch(model::BatchId::from_row(9999)).error().code,
              base::ErrorCode::no_such_entry);
    EXPECT_EQ(book.piece(model::PieceId::from_row(9999)).error().code,
              base::ErrorCode::no_such_entry);
}

TEST_F(BookReads, OneAndManyHistoriesAreTheSame) {
    const auto histories = rows(book.piece_histories());
    ASSERT_EQ(ids(rows(book.pieces())).size(), histories.size());
    for (const auto& history : histories) {
        const auto alone = book.piece_history(history.piece.id);
        ASSERT_TRUE(alone.has_value());
        EXPECT_EQ(alone->piece.code, history.piece.code);
        EXPECT_EQ(ids(alone->weighings), ids(history.weighings)) << history.piece.code;
        auto standing = rows(book.weighings(history.piece.id)); // with those that were replaced
        standing.erase(std::remove_if(standing.begin(), standing.end(),
                                      [](const auto& weighing) { return !weighing.stands(); }),
                       standing.end());
        EXPECT_EQ(ids(alone->weighings), ids(standing));
        EXPECT_EQ(ids(alone->events), ids(rows(book.events(history.piece.id))));
        EXPECT_EQ(ids(rows(book.family(history.piece.id))).count(history.piece.id.row()), 1U);
        for (const auto& weighing : history.weighings) {
            const auto one = book.weighing(weighing.id);
            ASSERT_TRUE(one.has_value());
            EXPECT_EQ(one->taken_at, weighing.taken_at);
            const auto versions = rows(book.weighing_versions(weighing.id));
            EXPECT_TRUE(std::any_of(versions.begin(), versions.end(), [&](const auto& version) {
                return version.weighing.id == weighing.id;
            }));
        }
    }
}

TEST_F(BookReads, WhatIsReadOfAllIsWhatIsReadOfEach) {
    std::set<std::int64_t> outcomes;
    std::set<std::int64_t> open;
    for (const auto& batch : rows(book.batches())) {
        const auto outcome = book.outcome(batch.id);
        ASSERT_TRUE(outcome.has_value());
        if (*outcome) {
            outcomes.insert((*outcome)->batch.row());
        }
        const bool goes_on = batch.state == model::BatchState::planned ||
                             batch.state == model::BatchState::in_progress;
        for (const auto& stage : rows(book.stages(batch.id))) {
            if (goes_on && !stage.ended_at) {
                open.insert(stage.id.row());
            }
        }
    }
    std::set<std::int64_t> of_all;
    for (const auto& outcome : rows(book.outcomes())) {
        of_all.insert(outcome.batch.row());
    }
    EXPECT_EQ(of_all, outcomes);
    EXPECT_EQ(ids(rows(book.open_stages())), open);
    std::set<std::int64_t> decisions;
    std::set<std::int64_t> packs;
    for (const auto& piece : rows(book.pieces())) {
        decisions.merge(ids(rows(book.decisions(piece.id))));
        packs.merge(ids(rows(book.packs_of(piece.id))));
    }
    EXPECT_EQ(ids(rows(book.all_decisions())), decisions);
    EXPECT_EQ(ids(rows(book.packs())), packs);
    std::set<std::int64_t> moves;
    std::set<std::int64_t> left;
    for (const auto& pack : rows(book.packs())) {
        moves.merge(ids(rows(book.pack_moves(pack.id))));
        if (!pack.gone) {
            left.insert(pack.id.row());
        }
    }
    EXPECT_EQ(ids(rows(book.all_pack_moves())), moves);
    EXPECT_EQ(ids(rows(book.packs(false))), left);
    std::set<std::int64_t> checks;
    for (const auto& instrument : rows(book.instruments())) {
        checks.merge(ids(rows(book.checks(instrument.id))));
    }
    EXPECT_EQ(ids(rows(book.all_checks())), checks);
}

TEST_F(BookReads, RegistersAndRecipesHoldTogether) {
    for (const auto& recipe : rows(book.recipes(true))) {
        const auto versions = rows(book.recipe_versions(recipe.id));
        EXPECT_FALSE(versions.empty()) << recipe.name;
        for (const auto& version : versions) {
            const auto one = book.recipe_version(version.id);
            ASSERT_TRUE(one.has_value());
            EXPECT_EQ(one->document, version.document);
        }
    }
    EXPECT_LE(rows(book.recipes()).size(), rows(book.recipes(true)).size());
    const auto chambers = ids(rows(book.chambers()));
    for (const auto& sensor : rows(book.sensors())) {
        EXPECT_EQ(chambers.count(sensor.chamber.row()), 1U) << sensor.name;
    }
    EXPECT_FALSE(rows(book.people()).empty());
    const auto lots = ids(rows(book.lots()));
    for (const auto& batch : rows(book.batches())) {
        for (const auto& use : rows(book.ingredient_uses(batch.id))) {
            EXPECT_TRUE(!use.lot || lots.count(use.lot->row()) == 1U) << use.name;
        }
    }
    for (const auto& note : rows(book.notes())) {
        const auto photo = book.photo(note.id);
        ASSERT_TRUE(photo.has_value());
    }
    const auto none = book.preference("no such key");
    ASSERT_TRUE(none.has_value());
    EXPECT_FALSE(none->has_value());
}

TEST_F(BookReads, TheLogGoesBackStepByStepAndRevisionsGrow) {
    const auto newest = rows(book.log(5));
    ASSERT_EQ(newest.size(), 5U);
    const auto older = rows(book.log(5, newest.back().step));
    ASSERT_EQ(older.size(), 5U);
    EXPECT_LT(older.front().step.row(), newest.back().step.row());
    const auto revision = book.revision();
    ASSERT_TRUE(revision.has_value());
    for (const auto& piece : rows(book.pieces())) {
        const auto of_piece = book.piece_revision(piece.id);
        ASSERT_TRUE(of_piece.has_value());
        EXPECT_LE(*of_piece, *revision);
        EXPECT_GT(*of_piece, 0);
    }
    EXPECT_TRUE(rows(book.task_ticks(now - Duration::days(4000), now + Duration::days(1))).size() >=
                rows(book.task_ticks(now - Duration::days(7), now)).size());
}
