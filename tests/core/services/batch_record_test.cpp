// What an inspector reads of a batch in a real book: mix and air, from round numbers whose answers
// are worked out by hand; the losses and the balance alone: batch_losses_test.cpp.
#include "core/services/batch_record.h"

#include "core/services/demo_book.h"
#include "tests/support/climate_log.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::actions;
using core::services::BatchRecord;
using core::services::Book;
using model::EntryKind;
using model::WeighedState;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using units::Duration;
using units::Mass;
using units::RelativeHumidity;
using units::Temperature;

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
        saltloft::testing::keep_log(book, probe.id, readings);
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
