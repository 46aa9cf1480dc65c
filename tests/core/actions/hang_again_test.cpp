// What hangs again is a real piece that dries on: the whole of it, or a part with its family.
#include "core/actions/perform.h"
#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/pieces.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::actions;
using model::EntryKind;
using model::PieceId;
using model::PieceState;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::dump;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using store::Connection;
using units::Mass;

namespace {

class HangAgainTest : public ::testing::Test {
  protected:
    void SetUp() override {
        store = std::move(*store::Store::open(path, {.now = at_s(test_now_s), .create = true}));
        auto start = saltloft::testing::start_batch("B01");
        start.pieces.front().weighings.front().taken_at = at_s(test_now_s - 50 * 86400);
        const auto started = does(start);
        batch = started.id<model::BatchId>(EntryKind::batch);
        piece = started.id<PieceId>(EntryKind::piece);
        person = does(AddPerson{{.name = "Ada (invented)", .initials = "A"}})
                     .id<model::PersonId>(EntryKind::person);
        does(RecordEvent{{.piece = piece,
                          .kind = model::EventKind::hung,
                          .at = at_s(test_now_s - 40 * 86400),
                          .net_after = Mass::grams(1000)}});
        does(AddWeighing{saltloft::testing::weighing(piece, 650, test_now_s - 10 * 86400)});
        does(SignDecision{{.piece = piece,
                           .at = at_s(test_now_s - 10 * 86400),
                           .verdict = model::Verdict::done,
                           .signed_by = person}});
    }
    Performed does(const Command& command) { return take(perform(*store, command, context())); }
    std::string refuses(const Command& command) {
        const auto done = perform(*store, command, context());
        return done ? "done" : done.error().detail;
    }
    model::PackId pack(double grams, const char* code) {
        return does(AddPack{{.piece = piece,
                             .code = code,
                             .packed_weight = Mass::grams(grams),
                             .weight_left = Mass::grams(grams),
                             .packed_on = units::Day::from_days_since_epoch(20500)}})
            .id<model::PackId>(EntryKind::pack);
    }
    template <class Id>
    auto read(Id id) {
        using T = std::conditional_t<std::is_same_v<Id, PieceId>, model::Piece, model::Pack>;
        return take(store->read([&](Connection& b) { return store::get<T>(b, id); }));
    }
    SignDecision again() {
        return {{.piece = piece,
                 .at = at_s(test_now_s),
                 .verdict = model::Verdict::not_yet,
                 .signed_by = person,
                 .why = "soft inside",
                 .weigh_again = units::Day::from_days_since_epoch(20520)}};
    }
    MovePack out_of(model::PackId pack, double grams, const char* code = "") {
        return {{.pack = pack,
                 .kind = model::MoveKind::re_hung,
                 .amount = Mass::grams(grams),
                 .at = at_s(test_now_s),
                 .to_whom = code}};
    }
    std::vector<model::Stage> stages() {
        return take(store->read([&](Connection& b) { return store::stages(b, batch); }));
    }

    TempFolder folder;
    std::string path = folder.file("again.saltloft");
    std::unique_ptr<store::Store> store;
    model::BatchId batch;
    PieceId piece;
    model::PersonId person;
};

} // namespace

TEST_F(HangAgainTest, NotYetHangsAFinishedPieceAgainAndOneUndoTakesItBack) {
    auto closed =
        take(store->read([&](Connection& b) { return store::get<model::Batch>(b, batch); }));
    closed.state = model::BatchState::finished;
    does(ChangeBatch{closed});
    const auto before = dump(path);
    does(again());
    EXPECT_EQ(read(piece).state, PieceState::drying);
    ASSERT_EQ(stages().size(), 2U) << "nothing of the batch was drying: a stage begins";
    EXPECT_EQ(stages().back().what.kind, model::StageKind::dry);
    EXPECT_EQ(stages().back().started_at, at_s(test_now_s));
    EXPECT_EQ(stages().back().what.routines.front().verb, "weigh");
    const auto events = take(store->read([&](Connection& b) { return store::events(b, piece); }));
    EXPECT_EQ(events.back().kind, model::EventKind::hung);
    EXPECT_EQ(events.back().note, "soft inside");
    EXPECT_EQ(
        take(store->read([&](Connection& b) { return store::get<model::Batch>(b, batch); })).state,
        model::BatchState::in_progress);
    does(again());
    EXPECT_EQ(stages().size(), 2U) << "it hangs already: not yet leaves it as it is";
    ASSERT_TRUE(undo(*store, context()).has_value());
    ASSERT_TRUE(undo(*store, context()).has_value());
    EXPECT_EQ(dump(path), before);
}

TEST_F(HangAgainTest, AnUntouchedPackThatIsAllOfItIsThePieceItself) {
    const auto whole = pack(640, "K1");
    EXPECT_EQ(refuses(again()), "piece_is_packed");
    EXPECT_EQ(refuses(out_of(whole, 0)), "weight_not_positive");
    EXPECT_EQ(refuses(out_of(whole, 641)), "more_than_is_left");
    const auto before = dump(path);
    does(out_of(whole, 632));
    EXPECT_EQ(read(piece).state, PieceState::drying);
    EXPECT_TRUE(read(whole).gone) << "what it lost in the pack is gone with it";
    const auto weighings =
        take(store->read([&](Connection& b) { return store::weighings(b, piece); }));
    EXPECT_NEAR(weighings.back().net().in_grams(), 632, 1e-9);
    const auto moves =
        take(store->read([&](Connection& b) { return store::pack_moves(b, whole); }));
    EXPECT_EQ(moves.back().to_whom, "B01a") << "the move says what hangs now";
    ASSERT_TRUE(undo(*store, context()).has_value());
    EXPECT_EQ(dump(path), before);
}

TEST_F(HangAgainTest, PartOfItIsANewPieceOfTheFamily) {
    const auto first = pack(320, "K1");
    pack(320, "K2");
    EXPECT_EQ(refuses(out_of(first, 200)), "code_missing");
    EXPECT_EQ(refuses(out_of(first, 200, "B01b")), "code_taken");
    const auto before = dump(path);
    const auto part = does(out_of(first, 200, "R7")).id<PieceId>(EntryKind::piece);
    EXPECT_EQ(read(piece).state, PieceState::finished) << "the rest stays in its packs";
    EXPECT_EQ(read(part).parent, piece);
    EXPECT_EQ(read(part).code, "R7");
    EXPECT_EQ(read(part).state, PieceState::drying);
    EXPECT_NEAR(read(first).weight_left.in_grams(), 120, 1e-9);
    EXPECT_FALSE(read(first).gone);
    does(out_of(first, 120, "R8"));
    EXPECT_TRUE(read(first).gone);
    EXPECT_EQ(stages().size(), 2U) << "the second joins the stage that runs";
    ASSERT_TRUE(undo(*store, context()).has_value());
    ASSERT_TRUE(undo(*store, context()).has_value());
    EXPECT_EQ(dump(path), before);
}

TEST_F(HangAgainTest, APackThatIsOnlyAPartOfThePieceIsAPart) {
    const auto small = pack(300, "K1"); // of 650 g: the rest was never packed
    EXPECT_EQ(refuses(out_of(small, 300)), "code_missing");
}

TEST_F(HangAgainTest, ADiscardedPieceDoesNotHangAgain) {
    const auto gone = pack(640, "K1");
    does(SignDecision{{.piece = piece,
                       .at = at_s(test_now_s),
                       .verdict = model::Verdict::discard,
                       .signed_by = person}});
    EXPECT_EQ(refuses(out_of(gone, 640)), "not_to_hang_again");
}
