// The pieces of a chamber as its load and an upset see them, from round numbers.
#include "core/services/chamber_desk.h"

#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace core;
using namespace core::actions;
using core::services::Book;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

namespace {

/// Two pieces, 1000 g and 1200 g raw, cured in the cold room from day 0 and hung in the cabinet
/// on day 7. "Today" is day 30.
class ChamberPieces : public ::testing::Test {
  protected:
    void SetUp() override {
        cold_room = chamber("Test cold room");
        cabinet = chamber("Test cabinet");
        auto start = saltloft::testing::start_batch("B01");
        // 3 % salt and 0.24 % curing salt of 6.25 % nitrite: 0.015 % nitrite, 3.225 % salt.
        start.recipe = AddRecipe{"Test cure", R"({"saltloft_recipe": 1, "name": "Test cure",
            "method": "dry", "lines": [
            {"ingredient": "table_salt", "amount": "3 %", "of": "meat"},
            {"ingredient": "cure_no1", "amount": "0.24 %", "of": "meat"}]})"};
        for (auto& piece : start.pieces) {
            piece.piece.chamber = cold_room;
            piece.piece.state = model::PieceState::curing;
            piece.weighings.front().taken_at = day(0);
        }
        start.stages.front().started_at = day(0);
        const auto made = does(start);
        batch = made.id<model::BatchId>(EntryKind::batch);
        first = made.id<model::PieceId>(EntryKind::piece, 0);
        second = made.id<model::PieceId>(EntryKind::piece, 1);
    }
    static Instant day(double days) { return at_s(test_now_s) + Duration::days(days - 30); }
    Performed does(const Command& command) {
        return take(book.perform(command, context("test", test_now_s)));
    }
    model::ChamberId chamber(const char* name) {
        model::Chamber chamber;
        chamber.name = name;
        return does(AddChamber{chamber}).id<model::ChamberId>(EntryKind::chamber);
    }
    void hang(model::PieceId piece, double at) {
        does(RecordEvent{
            {.piece = piece, .kind = model::EventKind::hung, .at = day(at), .chamber = cabinet}});
    }
    void move(model::PieceId piece, double at, model::ChamberId to) {
        does(RecordEvent{
            {.piece = piece, .kind = model::EventKind::moved, .at = day(at), .chamber = to}});
    }
    void weigh(model::PieceId piece, double at, double grams, bool wet = false) {
        auto weighing = saltloft::testing::weighing(piece, grams + 20, test_now_s, 20);
        weighing.taken_at = day(at);
        weighing.state = model::WeighedState::cured;
        weighing.wet_surface = wet;
        does(AddWeighing{weighing});
    }
    void sign(model::PieceId piece, double at, model::Verdict verdict) {
        model::Person person{.name = "Test person (invented)", .initials = "TP"};
        const auto who = does(AddPerson{person}).id<model::PersonId>(EntryKind::person);
        does(SignDecision{{.piece = piece,
                           .at = day(at),
                           .verdict = verdict,
                           .signed_by = who,
                           .evidence = "{}",
                           .why = "test"}});
    }
    std::vector<chamber::LoadPiece> load(model::ChamberId where) {
        return take(services::load_pieces(book, where, day(30)));
    }
    std::vector<chamber::PieceThen> then(model::ChamberId where, double at) {
        return take(services::pieces_then(book, where, day(at), facts::built_in_facts()));
    }
    static std::vector<std::string> codes(const std::vector<chamber::PieceThen>& pieces) {
        std::vector<std::string> out;
        for (const auto& piece : pieces) {
            out.push_back(piece.code);
        }
        std::sort(out.begin(), out.end());
        return out;
    }
    using Codes = std::vector<std::string>;

    TempFolder folder;
    Book book =
        take(Book::create(folder.file("pieces.saltloft"), {.now = at_s(test_now_s - 40 * 86400)}));
    model::ChamberId cold_room;
    model::ChamberId cabinet;
    model::BatchId batch;
    model::PieceId first;
    model::PieceId second;
};

} // namespace

TEST_F(ChamberPieces, APieceNotHungYetHasNoLossAndNoPace) {
    const auto pieces = load(cold_room);
    ASSERT_EQ(pieces.size(), 2U);
    EXPECT_EQ(pieces[0].net, Mass::grams(1000));
    EXPECT_EQ(pieces[0].hung, Duration::seconds(0));
    EXPECT_FALSE(pieces[0].loss || pieces[0].water_per_day);
    EXPECT_TRUE(load(cabinet).empty());
}

TEST_F(ChamberPieces, AHangingPieceHasItsLossAndThePaceOfItsLastWeighings) {
    weigh(first, 6.75, 900); // six hours before it was hung: the hung weight
    hang(first, 7);
    weigh(first, 20, 780);
    weigh(first, 25, 720);
    weigh(first, 25.5, 719);     // too near the one before to tell a pace
    weigh(first, 26, 800, true); // wet
    const auto pieces = load(cabinet);
    ASSERT_EQ(pieces.size(), 1U);
    const auto& piece = pieces.front();
    EXPECT_EQ(piece.piece, first);
    EXPECT_EQ(piece.code, "B01a");
    EXPECT_EQ(piece.net, Mass::grams(719)) << "without the tare, not the wet one";
    EXPECT_EQ(piece.hung, Duration::days(23));
    ASSERT_TRUE(piece.loss && piece.target_loss && piece.water_per_day);
    EXPECT_NEAR(piece.loss->as_fraction(), 181.0 / 900, 1e-9);
    EXPECT_NEAR(piece.target_loss->in_percent(), 35, 1e-9);
    EXPECT_NEAR(piece.water_per_day->in_grams(), 61 / 5.5, 1e-6) << "719 g against 780 g";
}

TEST_F(ChamberPieces, WhatDrainedInTheCureIsNoPaceOfDrying) {
    hang(first, 7);
    weigh(first, 8, 900);
    const auto pieces = load(cabinet);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_FALSE(pieces[0].water_per_day) << "its earlier weighing was raw, before it was hung";
}

TEST_F(ChamberPieces, ATargetFromAnotherReferenceIsNotTakenForOneFromHanging) {
    auto piece = take(book.piece(first));
    piece.target->reference = model::ReferenceWeight::raw;
    does(ChangePiece{piece});
    EXPECT_FALSE(load(cold_room).at(0).target_loss);
}

TEST_F(ChamberPieces, APieceNeverWeighedOrFinishedOrDiscardedIsNoLoad) {
    auto bare = saltloft::testing::new_piece("X1");
    bare.piece.batch = batch;
    bare.piece.chamber = cold_room;
    bare.piece.state = model::PieceState::curing;
    bare.weighings.clear();
    does(AddPiece{bare});
    EXPECT_EQ(load(cold_room).size(), 2U);
    sign(first, 29, model::Verdict::done);
    does(DiscardPiece{second, day(29)});
    EXPECT_TRUE(load(cold_room).empty());
}

TEST_F(ChamberPieces, APieceWasWhereItsMovesSay) {
    hang(first, 7);
    move(first, 20, cold_room);
    EXPECT_EQ(codes(then(cabinet, 10)), (Codes{"B01a"}));
    EXPECT_EQ(codes(then(cabinet, 25)), Codes{});
    EXPECT_EQ(codes(then(cold_room, 25)), (Codes{"B01a", "B01b"}));
    EXPECT_EQ(codes(then(cold_room, 10)), (Codes{"B01b"})) << "never moved: where it is now";
    EXPECT_EQ(codes(then(cold_room, 5)), (Codes{"B01b"}))
        << "where the other was before its first move is not known";
}

TEST_F(ChamberPieces, AnUpsetSeesThePieceAsItWasThen) {
    weigh(first, 7, 900);
    hang(first, 7);
    weigh(first, 20, 720);
    weigh(first, 28, 600); // later than the moment asked for
    const auto pieces = then(cabinet, 21);
    ASSERT_EQ(pieces.size(), 1U);
    const auto& piece = pieces.front();
    EXPECT_EQ(piece.piece, first);
    EXPECT_EQ(piece.stage, model::StageKind::salt);
    EXPECT_EQ(piece.in_stage, Duration::days(21));
    EXPECT_EQ(piece.hung, Duration::days(14));
    ASSERT_TRUE(piece.loss && piece.salt && piece.nitrite && piece.water_activity);
    EXPECT_NEAR(piece.loss->in_percent(), 20, 1e-9);
    EXPECT_NEAR(piece.salt->in_percent(), 32.25 / 720 * 100, 1e-3) << "32.25 g in 720 g";
    EXPECT_NEAR(piece.nitrite->in_percent(), 0.015, 1e-6) << "of the green weight";
    EXPECT_GT(piece.water_activity->low.as_fraction(), 0.8);
    EXPECT_LE(piece.water_activity->low.as_fraction(), piece.water_activity->high.as_fraction());
    EXPECT_LT(piece.water_activity->high.as_fraction(), 1);
    const auto earlier = then(cabinet, 8);
    ASSERT_EQ(earlier.size(), 1U);
    EXPECT_NEAR(earlier[0].loss->in_percent(), 0, 1e-9);
    EXPECT_GT(earlier[0].water_activity->best.as_fraction(),
              piece.water_activity->best.as_fraction())
        << "it was wetter";
}

TEST_F(ChamberPieces, AnEndedStageIsNotTheStageThen) {
    does(EndStage{take(book.stages(batch)).front().id, day(10), "done"});
    EXPECT_EQ(then(cold_room, 9.5).at(0).stage, model::StageKind::salt);
    EXPECT_FALSE(then(cold_room, 10).at(0).stage || then(cold_room, 10).at(0).in_stage);
}

TEST_F(ChamberPieces, WithoutARecipeSaltNitriteAndWaterActivityAreUnknown) {
    auto start = saltloft::testing::start_batch("B02");
    start.pieces.resize(1);
    start.pieces[0].piece.chamber = cabinet;
    start.pieces[0].piece.state = model::PieceState::curing;
    start.pieces[0].weighings.front().taken_at = day(0);
    does(start);
    const auto pieces = then(cabinet, 10);
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0].code, "B02a");
    EXPECT_FALSE(pieces[0].salt || pieces[0].nitrite || pieces[0].water_activity);
    EXPECT_FALSE(pieces[0].stage || pieces[0].hung || pieces[0].loss);
}

TEST_F(ChamberPieces, APieceFinishedOrDiscardedSinceWasStillThere) {
    hang(first, 7);
    hang(second, 7);
    sign(first, 22, model::Verdict::done);
    sign(second, 24, model::Verdict::discard);
    EXPECT_EQ(codes(then(cabinet, 20)), (Codes{"B01a", "B01b"}));
    EXPECT_EQ(codes(then(cabinet, 23)), (Codes{"B01b"}));
    EXPECT_EQ(codes(then(cabinet, 25)), Codes{});
}
