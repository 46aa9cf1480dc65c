// What air a piece had in its stages: worked out by hand from logs of round numbers.
#include "core/services/stage_air.h"

#include "tests/support/climate_log.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

using namespace core;
using namespace core::actions;
using core::services::Book;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::take;
using saltloft::testing::test_now_s;
using units::Duration;
using units::RelativeHumidity;
using units::Temperature;

namespace stage_air_test {
namespace {

constexpr std::int64_t hour = 3600;
constexpr std::int64_t start_s = test_now_s - 72 * hour; // a whole quarter of an hour

class StageAirTest : public ::testing::Test {
  protected:
    void SetUp() override {
        cellar = chamber("cellar");
        loft = chamber("loft");
        auto start = saltloft::testing::start_batch("B01");
        start.stages.front().what.kind = model::StageKind::dry;
        start.stages.front().what.temperature = {Temperature::celsius(10), Temperature::celsius(14),
                                                 Temperature::celsius(10),
                                                 Temperature::celsius(14)};
        start.stages.front().what.humidity = {
            RelativeHumidity::percent(70), RelativeHumidity::percent(80),
            RelativeHumidity::percent(70), RelativeHumidity::percent(80)};
        start.stages.front().started_at = at_s(start_s);
        const auto made = does(start);
        piece = made.id<model::PieceId>(EntryKind::piece);
    }
    Performed does(const Command& command) { return take(book.perform(command, context())); }

    model::SensorId chamber(const char* name) {
        model::Chamber chamber;
        chamber.name = name;
        chambers.push_back(does(AddChamber{chamber}).id<model::ChamberId>(EntryKind::chamber));
        model::Sensor sensor;
        sensor.chamber = chambers.back();
        sensor.name = name;
        return does(AddSensor{sensor}).id<model::SensorId>(EntryKind::sensor);
    }
    /// A reading every five minutes over [from, to), hours since the stage began.
    void log(model::SensorId sensor, double from, double to, double celsius, double percent) {
        std::vector<model::ClimateReading> readings;
        for (auto at = start_s + static_cast<std::int64_t>(from * hour);
             at < start_s + static_cast<std::int64_t>(to * hour); at += 300) {
            readings.push_back(
                {at_s(at), Temperature::celsius(celsius), RelativeHumidity::percent(percent)});
        }
        saltloft::testing::keep_log(book, sensor, readings);
    }
    void moved(std::size_t to, double hours) {
        does(RecordEvent{{.piece = piece,
                          .kind = model::EventKind::moved,
                          .at = at_s(start_s + static_cast<std::int64_t>(hours * hour)),
                          .chamber = chambers.at(to)}});
    }
    doneness::StageRecord stage() {
        const auto history = take(book.piece_history(piece));
        return take(services::stage_records(book, history, at_s(test_now_s))).at(0);
    }

    saltloft::testing::TempFolder folder;
    Book book = take(Book::open(folder.file("air.saltloft"),
                                {.now = at_s(test_now_s), .create_if_missing = true}));
    std::vector<model::ChamberId> chambers;
    model::SensorId cellar;
    model::SensorId loft;
    model::PieceId piece;
};

} // namespace

TEST_F(StageAirTest, NoLogIsAbsentAndNotZero) {
    moved(0, 0);
    const auto record = stage();
    EXPECT_FALSE(record.temperature.has_value());
    EXPECT_FALSE(record.humidity.has_value());
    EXPECT_FALSE(record.air.has_value());
}

TEST_F(StageAirTest, FollowsThePieceFromChamberToChamber) {
    moved(0, 0);
    moved(1, 24);
    log(cellar, 0, 72, 12, 75); // in band, and still there after the piece has gone
    log(loft, 0, 72, 18, 60);   // too warm and too dry
    const auto record = stage();
    ASSERT_TRUE(record.air && record.temperature && record.humidity);
    EXPECT_NEAR(record.temperature->low.in_celsius(), 12, 1e-9);
    EXPECT_NEAR(record.temperature->best.in_celsius(), 16, 1e-9) << "a day of 12, two days of 18";
    EXPECT_NEAR(record.temperature->high.in_celsius(), 18, 1e-9);
    EXPECT_NEAR(record.humidity->best.in_percent(), 65, 1e-9) << "a day of 75, two days of 60";
    EXPECT_EQ(record.air->watched, Duration::hours(72));
    EXPECT_EQ(record.air->silent, Duration::hours(0));
    EXPECT_EQ(record.air->too_warm, Duration::hours(48));
    EXPECT_EQ(record.air->too_dry, Duration::hours(48));
    EXPECT_EQ(record.air->too_cold, Duration::hours(0));
    EXPECT_EQ(record.air->too_damp, Duration::hours(0));
}

TEST_F(StageAirTest, ASilentLoggerIsSilentAndNotInItsBand) {
    moved(0, 0);
    log(cellar, 0, 10, 20, 75);
    const auto record = stage();
    ASSERT_TRUE(record.air.has_value());
    // The last quarter of an hour stands for two hours at most.
    EXPECT_EQ(record.air->watched, Duration::hours(11.75));
    EXPECT_EQ(record.air->silent, Duration::hours(60.25));
    EXPECT_EQ(record.air->too_warm, Duration::hours(11.75));
}

TEST_F(StageAirTest, TheSensorsOffsetIsApplied) {
    auto sensor = take(book.sensors()).front();
    sensor.temperature_offset = units::TemperatureStep::kelvins(3);
    sensor.humidity_offset = RelativeHumidity::percent(-10);
    does(ChangeSensor{sensor});
    moved(0, 0);
    log(cellar, 0, 72, 12, 75);
    const auto record = stage();
    ASSERT_TRUE(record.air && record.temperature && record.humidity);
    EXPECT_NEAR(record.temperature->best.in_celsius(), 15, 1e-9);
    EXPECT_NEAR(record.humidity->best.in_percent(), 65, 1e-9);
    EXPECT_EQ(record.air->too_warm, Duration::hours(72));
    EXPECT_EQ(record.air->too_dry, Duration::hours(72));
    const auto history = take(book.piece_history(piece));
    const auto lately =
        take(services::humidity_lately(book, history.piece, at_s(test_now_s), Duration::days(1)));
    ASSERT_TRUE(lately.has_value());
    EXPECT_NEAR(lately->in_percent(), 65, 1e-9);
}

TEST(StageStays, BeforeTheFirstMoveTheStagesChamberCounts) {
    const auto room = [](std::int64_t row) { return model::ChamberId::from_row(row); };
    services::PieceHistory history;
    history.piece.chamber = room(9);
    EXPECT_EQ(services::stage_stays(history, {}, at_s(0), at_s(10)).at(0).chamber, room(9))
        << "it never moved";
    history.events.push_back({.kind = model::EventKind::moved, .at = at_s(4), .chamber = room(2)});
    EXPECT_EQ(services::stage_stays(history, {}, at_s(0), at_s(10)).size(), 1U)
        << "where it was before the move is not known";
    const auto stays = services::stage_stays(history, room(1), at_s(0), at_s(10));
    ASSERT_EQ(stays.size(), 2U);
    EXPECT_EQ(stays[0].chamber, room(1));
    EXPECT_EQ(stays[0].to, at_s(4));
    EXPECT_EQ(stays[1].chamber, room(2));
    history.events.back().withdrawn = true;
    EXPECT_EQ(services::stage_stays(history, room(1), at_s(0), at_s(10)).size(), 1U);
}

} // namespace stage_air_test
