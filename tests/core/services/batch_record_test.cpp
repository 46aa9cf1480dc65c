// What an inspector reads of a batch: losses, mass balance, mix and air, from round numbers whose
// answers are worked out by hand.
#include "core/services/batch_record.h"

#include "core/services/demo_book.h"
#include "core/store/climate.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::actions;
using core::services::BatchRecord;
using core::services::Book;
using core::services::PieceLoss;
using model::EntryKind;
using model::EventKind;
using model::MoveKind;
using model::PieceState;
using model::WeighedState;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using units::Duration;
using units::Instant;
using units::Mass;
using units::RelativeHumidity;
using units::Temperature;

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

namespace {

/// A batch of 1000 g and 1200 g raw whose stage began 48 h ago in a chamber of 10 to 14 C and 70
/// to 80 %.
class BatchRecordTest : public ::testing::Test {
  protected:
    static constexpr std::int64_t began = test_now_s - 48 * 3600;

    BatchRecordTest()
        : book(take(Book::create(folder.file("record.saltloft"), {.now = at_s(began)}))) {
        model::Chamber chamber;
        chamber.name = "Test cabinet";
        chamber.low_temperature = Temperature::celsius(10);
        chamber.high_temperature = Temperature::celsius(14);
        chamber.low_humidity = RelativeHumidity::percent(70);
        chamber.high_humidity = RelativeHumidity::percent(80);
        room = does(AddChamber{chamber}).id<model::ChamberId>(EntryKind::chamber);
        probe.chamber = room;
        probe.name = "Test probe";
        probe.temperature_offset = units::TemperatureStep::kelvins(1);
        probe.humidity_offset = RelativeHumidity::percent(-5);
        probe.id = does(AddSensor{probe}).id<model::SensorId>(EntryKind::sensor);
        for (const double step : {5.0, 0.1, 1.0}) {
            model::Instrument scale;
            scale.name = "Test scale";
            scale.scale_step = Mass::grams(step);
            does(AddInstrument{scale});
        }
    }
    Performed does(const Command& command) {
        return take(book.perform(command, context("test", began)));
    }
    model::BatchId begin(StartBatch start) {
        start.stages.front().started_at = at_s(began);
        start.stages.front().chamber = room;
        return does(start).id<model::BatchId>(EntryKind::batch);
    }
    static StartBatch with_recipe() {
        auto start = saltloft::testing::start_batch("B01");
        start.recipe = AddRecipe{"Test cure", R"({"saltloft_recipe": 1, "name": "Test cure",
            "method": "dry", "lines": [{"ingredient": "table_salt", "amount": "3 %",
            "of": "meat"}]})"};
        return start;
    }
    /// A reading every quarter of an hour over [from, to), hours since the stage began.
    void log(int from, int to, double celsius, double percent) {
        std::vector<model::ClimateReading> readings;
        for (auto at = began + from * 3600; at < began + to * 3600; at += 900) {
            readings.push_back(
                {at_s(at), Temperature::celsius(celsius), RelativeHumidity::percent(percent)});
        }
        const auto kept = book.store().change([&](store::Connection& c) {
            model::ClimateImport import{.sensor = probe.id, .made_at = at_s(test_now_s)};
            import.file_name = "log.csv";
            const auto id = store::begin_climate_import(c, import, "{}");
            store::append_climate(c, id, readings);
            store::end_climate_import(c, id, {.at = at_s(test_now_s)});
        });
        ASSERT_TRUE(kept.has_value());
    }
    BatchRecord record(model::BatchId batch) {
        return take(services::batch_record(book, batch, at_s(test_now_s)));
    }

    TempFolder folder;
    Book book;
    model::ChamberId room;
    model::Sensor probe;
};

} // namespace

TEST_F(BatchRecordTest, AnUnknownBatchIsRefused) {
    const auto none = services::batch_record(book, model::BatchId::from_row(99), at_s(test_now_s));
    ASSERT_FALSE(none.has_value());
    EXPECT_EQ(none.error().code, base::ErrorCode::no_such_entry);
}

TEST_F(BatchRecordTest, WithoutARecipeAndALogBothAreLeftOut) {
    const auto made = record(begin(saltloft::testing::start_batch("B01")));
    EXPECT_EQ(made.batch().code, "B01");
    EXPECT_EQ(made.made_at, at_s(test_now_s));
    EXPECT_FALSE(made.recipe || made.mix);
    EXPECT_TRUE(made.ingredients.empty());
    EXPECT_TRUE(made.limit_set_name.empty());
    EXPECT_TRUE(made.climate.empty());
    ASSERT_EQ(made.losses.size(), 2U);
    EXPECT_EQ(made.losses[1].piece, made.entries.pieces[1].value.id);
    EXPECT_EQ(made.balance.green, Mass::grams(2200));
}

TEST_F(BatchRecordTest, TheMixIsTheRecipeOnTheGreenWeights) {
    auto start = with_recipe();
    start.pieces[1].weighings.push_back(
        saltloft::testing::weighing({}, 1000, test_now_s - 47 * 3600));
    start.pieces[1].weighings.back().state = WeighedState::trimmed;
    const auto made = record(begin(start));
    ASSERT_TRUE(made.recipe && made.mix);
    EXPECT_EQ(made.recipe->name, "Test cure");
    ASSERT_EQ(made.ingredients.size(), 1U);
    EXPECT_EQ(made.mix->meat, Mass::grams(2000)) << "1000 g raw and 1000 g trimmed";
    ASSERT_EQ(made.mix->lines.size(), 1U);
    EXPECT_NEAR(made.mix->lines[0].amount.best.in_grams(), 60, 1e-6) << "3 % of 2000 g";
    EXPECT_TRUE(made.mix->scale.empty()) << "the finest scale shows 0.1 g";
}

TEST_F(BatchRecordTest, APieceCutFromAnotherIsNotCuredTwice) {
    const auto batch = begin(with_recipe());
    const auto pieces = take(book.pieces());
    SplitPiece split{.piece = pieces.front().id, .at = at_s(began + 3600)};
    split.children = {saltloft::testing::new_piece("C1", 480),
                      saltloft::testing::new_piece("C2", 480)};
    for (auto& child : split.children) {
        child.weighings.front().taken_at = at_s(began + 3600);
    }
    does(split);
    const auto made = record(batch);
    EXPECT_EQ(made.losses.size(), 4U);
    ASSERT_TRUE(made.mix);
    EXPECT_EQ(made.mix->meat, Mass::grams(2200));
}

TEST_F(BatchRecordTest, ARecipeThatWasNeverWeighedOutHasNoMix) {
    auto start = with_recipe();
    for (auto& piece : start.pieces) {
        piece.weighings.clear();
    }
    const auto made = record(begin(start));
    EXPECT_TRUE(made.recipe);
    EXPECT_FALSE(made.mix);
}

TEST_F(BatchRecordTest, TheAirOfAStageHasTheOffsetsAndTheChambersBand) {
    const auto batch = begin(saltloft::testing::start_batch("B01"));
    log(0, 24, 11, 80);  // with the offsets 12 C and 75 %: in the band
    log(24, 48, 17, 60); // 18 C and 55 %: too warm and too dry
    const auto made = record(batch);
    ASSERT_EQ(made.climate.size(), 1U);
    const auto& air = made.climate.front();
    EXPECT_EQ(air.stage, made.entries.stages.front().value.id);
    EXPECT_EQ(air.sensor, probe.id);
    ASSERT_TRUE(air.temperature && air.humidity);
    EXPECT_EQ(air.temperature->count, 2 * 24 * 4);
    EXPECT_NEAR(air.temperature->low.in_celsius(), 12, 1e-6);
    EXPECT_NEAR(air.temperature->mean.in_celsius(), 15, 1e-6);
    EXPECT_NEAR(air.temperature->high.in_celsius(), 18, 1e-6);
    EXPECT_NEAR(air.humidity->low.in_percent(), 55, 1e-6);
    EXPECT_NEAR(air.humidity->mean.in_percent(), 65, 1e-6);
    EXPECT_NEAR(air.humidity->high.in_percent(), 75, 1e-6);
    // The last reading stands for nothing.
    EXPECT_EQ(air.out_of_band.watched, Duration::hours(47.75));
    EXPECT_EQ(air.out_of_band.too_warm, Duration::hours(23.75));
    EXPECT_EQ(air.out_of_band.too_dry, Duration::hours(23.75));
    EXPECT_EQ(air.out_of_band.too_cold, Duration::hours(0));
    EXPECT_EQ(air.out_of_band.excursions.size(), 2U);
}

TEST_F(BatchRecordTest, TheStagesOwnBandGoesBeforeTheChambersAtItsOutermostBounds) {
    auto start = saltloft::testing::start_batch("B01");
    start.stages.front().what.temperature = {Temperature::celsius(16), Temperature::celsius(20),
                                             Temperature::celsius(12), Temperature::celsius(14)};
    start.stages.front().what.humidity = {
        RelativeHumidity::percent(60), RelativeHumidity::percent(65), RelativeHumidity::percent(50),
        RelativeHumidity::percent(58)};
    const auto batch = begin(start);
    log(0, 24, 17, 60);  // 18 C and 55 %: within 12 to 20 C and 50 to 65 %
    log(24, 48, 10, 80); // 11 C and 75 %: below and above
    const auto air = record(batch).climate.at(0).out_of_band;
    EXPECT_EQ(air.too_warm, Duration::hours(0));
    EXPECT_EQ(air.too_dry, Duration::hours(0));
    EXPECT_EQ(air.too_cold, Duration::hours(23.75));
    EXPECT_EQ(air.too_damp, Duration::hours(23.75));
}

TEST_F(BatchRecordTest, AirAfterTheStageEndedIsNotItsAir) {
    const auto batch = begin(saltloft::testing::start_batch("B01"));
    does(EndStage{take(book.stages(batch)).front().id, at_s(began + 24 * 3600), "done"});
    log(0, 24, 11, 80);
    log(24, 48, 30, 20);
    const auto made = record(batch);
    ASSERT_EQ(made.climate.size(), 1U);
    EXPECT_NEAR(made.climate[0].temperature->high.in_celsius(), 12, 1e-6);
    EXPECT_EQ(made.climate[0].out_of_band.too_warm, Duration::hours(0));
}

TEST(BatchRecord, EveryBatchOfTheInventedBookBalances) {
    const TempFolder folder;
    Book book = take(Book::create(folder.file("demo.saltloft"), {.now = at_s(test_now_s)}));
    ASSERT_TRUE(services::fill_demo_book(book, {at_s(test_now_s)}).has_value());
    for (const auto& batch : take(book.batches())) {
        const auto made = take(services::batch_record(book, batch.id, at_s(test_now_s)));
        EXPECT_EQ(made.batch().id, batch.id);
        EXPECT_EQ(made.losses.size(), made.entries.pieces.size()) << batch.code;
        EXPECT_NEAR(made.balance.unaccounted().in_grams(), 0, 0.5) << batch.code;
        for (const auto& loss : made.losses) {
            if (const auto lost = loss.loss_from_hung()) {
                EXPECT_GE(lost->in_percent(), -1) << batch.code;
                EXPECT_LT(lost->in_percent(), 60) << batch.code;
            }
        }
    }
}
