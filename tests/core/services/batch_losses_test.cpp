// Losses of a piece and the mass balance of a batch, from round numbers worked out by hand.
#include "core/services/batch_record.h"

#include "tests/support/sample_entries.h"

#include <gtest/gtest.h>

using namespace core;
using core::services::PieceLoss;
using model::EventKind;
using model::MoveKind;
using model::PieceState;
using model::WeighedState;
using saltloft::testing::at_s;
using saltloft::testing::test_now_s;
using units::Mass;

namespace {

constexpr std::int64_t record_day = 86400;

model::Weighing record_weight(double grams, int day, WeighedState state = WeighedState::cured) {
    auto weighing = saltloft::testing::weighing({}, grams, test_now_s + day * record_day);
    weighing.state = state;
    return weighing;
}

model::PieceEvent record_event(EventKind kind, int day) {
    return {.kind = kind, .at = at_s(test_now_s + day * record_day)};
}

PieceLoss loss_of_piece(const std::vector<model::Weighing>& weighings,
                        const std::vector<model::PieceEvent>& events = {}) {
    return services::piece_loss(model::Piece{}, weighings, events);
}

/// Raw 1000 g on day 0, trimmed to 800 g, hung on day 7 at 750 g, 600 g on day 20.
std::vector<model::Weighing> plain_course() {
    return {record_weight(1000, 0, WeighedState::raw), record_weight(800, 1, WeighedState::trimmed),
            record_weight(750, 7), record_weight(600, 20)};
}

} // namespace

TEST(PieceLoss, NothingWeighedIsAbsentAndNotZero) {
    const auto loss = loss_of_piece({});
    EXPECT_FALSE(loss.raw || loss.trimmed || loss.hung || loss.latest || loss.latest_at);
    EXPECT_FALSE(loss.green() || loss.loss_from_green() || loss.loss_from_hung());
}

TEST(PieceLoss, IsCountedFromTheTrimmedWeightAndFromTheHungOne) {
    const auto loss = loss_of_piece(plain_course(), {record_event(EventKind::hung, 7)});
    EXPECT_EQ(loss.raw, Mass::grams(1000));
    EXPECT_EQ(loss.green(), Mass::grams(800)) << "trimmed where it was weighed so";
    EXPECT_EQ(loss.hung, Mass::grams(750));
    EXPECT_EQ(loss.latest, Mass::grams(600));
    EXPECT_EQ(loss.latest_at, at_s(test_now_s + 20 * record_day));
    EXPECT_NEAR(loss.loss_from_green()->in_percent(), 25, 1e-9);
    EXPECT_NEAR(loss.loss_from_hung()->in_percent(), 20, 1e-9);
}

TEST(PieceLoss, FallsBackOnTheRawWeightAndKnowsNoHungOneWithoutHanging) {
    const auto loss =
        loss_of_piece({record_weight(1000, 0, WeighedState::raw), record_weight(600, 20)});
    EXPECT_EQ(loss.green(), Mass::grams(1000));
    EXPECT_NEAR(loss.loss_from_green()->in_percent(), 40, 1e-9);
    EXPECT_FALSE(loss.hung || loss.loss_from_hung());
}

TEST(PieceLoss, TheWeightTakenAtHangingGoesBeforeTheNextWeighing) {
    auto hung = record_event(EventKind::hung, 6);
    hung.net_after = Mass::grams(760);
    EXPECT_EQ(loss_of_piece(plain_course(), {hung}).hung, Mass::grams(760));
    hung.net_after.reset();
    EXPECT_EQ(loss_of_piece(plain_course(), {hung}).hung, Mass::grams(750))
        << "the first weighing after it";
    hung.withdrawn = true;
    EXPECT_FALSE(loss_of_piece(plain_course(), {hung}).hung);
}

TEST(PieceLoss, OnlyStandingDryNetWeightsCountInWhateverOrder) {
    auto weighings = plain_course();
    auto amended = record_weight(300, 21);
    amended.amended_by = model::WeighingId::from_row(9);
    auto withdrawn = record_weight(200, 22);
    withdrawn.withdrawn = true;
    auto wet = record_weight(900, 23);
    wet.wet_surface = true;
    auto netted = record_weight(640, 24);
    netted.tare = Mass::grams(50);
    weighings.insert(weighings.begin(), {netted, wet, withdrawn, amended});
    const auto loss = loss_of_piece(weighings, {record_event(EventKind::hung, 7)});
    EXPECT_EQ(loss.raw, Mass::grams(1000));
    EXPECT_EQ(loss.hung, Mass::grams(750));
    EXPECT_EQ(loss.latest, Mass::grams(590)) << "without the tare";
}

TEST(PieceLoss, AChangeOfThePieceAfterAReferenceLeavesThatLossOut) {
    const auto with = [](EventKind kind, int day, bool withdrawn = false) {
        auto change = record_event(kind, day);
        change.withdrawn = withdrawn;
        return loss_of_piece(plain_course(), {record_event(EventKind::hung, 7), change});
    };
    for (const auto kind : {EventKind::coated, EventKind::trimmed, EventKind::sampled,
                            EventKind::split, EventKind::merged}) {
        const auto cured = with(kind, 3);
        EXPECT_FALSE(cured.loss_from_green()) << static_cast<int>(kind);
        EXPECT_TRUE(cured.loss_from_hung()) << static_cast<int>(kind);
        const auto hanging = with(kind, 9);
        EXPECT_FALSE(hanging.loss_from_green() || hanging.loss_from_hung())
            << static_cast<int>(kind);
        EXPECT_TRUE(with(kind, 9, true).loss_from_hung()) << "taken back";
    }
    EXPECT_TRUE(with(EventKind::trimmed, 0).loss_from_green())
        << "cut before the trimmed weight, which has it already";
    EXPECT_TRUE(with(EventKind::washed, 9).loss_from_hung());
    EXPECT_TRUE(with(EventKind::moved, 9).loss_from_green());
}

namespace {

struct BalanceCase {
    exchange::BookDocument entries;
    std::vector<PieceLoss> losses;

    BalanceCase() {
        model::Batch batch = saltloft::testing::batch("B01");
        batch.bought_weight = Mass::grams(2500);
        batch.trim_weight = Mass::grams(300);
        entries.batches.push_back({batch, {}, {}});
    }
    void piece(PieceState state, std::optional<double> raw, std::optional<double> latest,
               bool cut_from_another = false) {
        model::Piece piece{.state = state};
        if (cut_from_another) {
            piece.parent = model::PieceId::from_row(1);
        }
        entries.pieces.push_back({piece, {}, {}});
        PieceLoss loss{};
        if (raw) {
            loss.raw = Mass::grams(*raw);
        }
        if (latest) {
            loss.latest = Mass::grams(*latest);
        }
        losses.push_back(loss);
    }
    void pack(double packed, double left) {
        model::Pack pack{.packed_weight = Mass::grams(packed),
                         .weight_left = Mass::grams(left),
                         .packed_on = units::Day::from_days_since_epoch(20600)};
        entries.packs.push_back({pack, {}, {}});
    }
    void move(MoveKind kind, double grams) {
        model::PackMove move{.kind = kind, .amount = Mass::grams(grams), .at = at_s(test_now_s)};
        entries.pack_moves.push_back({move, {}, {}});
    }
    [[nodiscard]] services::MassBalance balance() const {
        return services::mass_balance(entries, losses);
    }
};

} // namespace

TEST(MassBalance, PiecesCutFromOthersAreGreenOnceAndGoneOnesWeighNothingNow) {
    BalanceCase made;
    made.piece(PieceState::split_up, 1000, 700);
    made.piece(PieceState::drying, 400, 350, true);
    made.piece(PieceState::finished, 300, 250, true);
    made.piece(PieceState::discarded, 600, 500);
    made.piece(PieceState::merged_away, 500, 400);
    const auto balance = made.balance();
    EXPECT_EQ(balance.bought, Mass::grams(2500));
    EXPECT_EQ(balance.trimmed_off, Mass::grams(300));
    EXPECT_EQ(balance.green, Mass::grams(1000 + 600 + 500));
    EXPECT_EQ(balance.dried, Mass::grams(350 + 250));
}

TEST(MassBalance, WhatWasNotWeighedIsAbsent) {
    BalanceCase made;
    made.piece(PieceState::planned, {}, {});
    const auto balance = made.balance();
    EXPECT_FALSE(balance.green || balance.dried);
    EXPECT_EQ(balance.unaccounted(), Mass::grams(0));
}

TEST(MassBalance, EveryWayOutOfAPackIsAddedUpAndTheRestTold) {
    BalanceCase made;
    made.pack(500, 100);
    made.pack(300, 50);
    made.move(MoveKind::used, 200);
    made.move(MoveKind::used, 20);
    made.move(MoveKind::given, 110);
    made.move(MoveKind::sold, 130);
    made.move(MoveKind::wasted, 30);
    made.move(MoveKind::re_hung, 150);
    made.move(MoveKind::counted, 999);
    const auto balance = made.balance();
    EXPECT_EQ(balance.packed, Mass::grams(800));
    EXPECT_EQ(balance.left, Mass::grams(150));
    EXPECT_EQ(balance.used, Mass::grams(220));
    EXPECT_EQ(balance.given, Mass::grams(110));
    EXPECT_EQ(balance.sold, Mass::grams(130));
    EXPECT_EQ(balance.wasted, Mass::grams(30));
    EXPECT_EQ(balance.re_hung, Mass::grams(150));
    EXPECT_EQ(balance.unaccounted(), Mass::grams(10)) << "a count moves nothing";
}
