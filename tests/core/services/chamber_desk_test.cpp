// The air of a chamber over a window: two sensors of round numbers, and the hours out of band.
#include "core/services/chamber_desk.h"

#include "tests/support/climate_log.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

using namespace core;
using namespace core::actions;
using core::services::Book;
using core::services::ClimateReader;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using units::Duration;
using units::RelativeHumidity;
using units::Temperature;

namespace {

constexpr std::int64_t desk_hour = 3600;
constexpr std::int64_t desk_start = test_now_s - 100 * 24 * desk_hour;

/// One cabinet of 10 to 14 C and 70 to 80 % with two sensors.
class ChamberDesk : public ::testing::Test {
  protected:
    void SetUp() override {
        model::Chamber cabinet;
        cabinet.name = "Test cabinet";
        chamber = does(AddChamber{cabinet}).id<model::ChamberId>(EntryKind::chamber);
        upper = sensor("Upper");
        lower = sensor("Lower");
        request.sensors = {upper};
        request.band = {Temperature::celsius(10), Temperature::celsius(14),
                        RelativeHumidity::percent(70), RelativeHumidity::percent(80)};
    }
    Performed does(const Command& command) { return take(book.perform(command, context())); }
    model::Sensor sensor(const char* name) {
        model::Sensor made;
        made.chamber = chamber;
        made.name = name;
        made.id = does(AddSensor{made}).id<model::SensorId>(EntryKind::sensor);
        return made;
    }
    using Course = std::function<double(std::int64_t)>; ///< of the reading's number
    /// A reading every `step` minutes over [from, to), hours since the start.
    void log(const model::Sensor& of, std::int64_t from, std::int64_t to, const Course& celsius,
             const Course& percent, int step = 5) {
        std::vector<model::ClimateReading> readings;
        std::int64_t n = 0;
        for (auto at = desk_start + from * desk_hour; at < desk_start + to * desk_hour;
             at += step * 60, ++n) {
            readings.push_back({at_s(at), Temperature::celsius(celsius(n)),
                                RelativeHumidity::percent(percent(n))});
        }
        saltloft::testing::keep_log(book, of.id, readings);
    }
    /// Moves a little about `middle`, as air does.
    static Course about(double middle) {
        return [middle](std::int64_t n) { return middle + (n % 2 == 0 ? 0.5 : -0.5); };
    }
    static Course still(double value) {
        return [value](std::int64_t) { return value; };
    }
    services::ChamberAir air() {
        const auto reader = take(ClimateReader::open(book.path()));
        return take(services::chamber_air(reader, request));
    }
    static bool says(const model::Findings& findings, const std::string& code) {
        return std::any_of(findings.begin(), findings.end(),
                           [&](const auto& finding) { return finding.code == code; });
    }

    TempFolder folder;
    Book book = take(Book::create(folder.file("desk.saltloft"), {.now = at_s(desk_start)}));
    model::ChamberId chamber;
    model::Sensor upper;
    model::Sensor lower;
    services::ChamberAirRequest request{.sensors = {},
                                        .band = {},
                                        .from = at_s(desk_start),
                                        .to = at_s(desk_start + 48 * desk_hour)};
};

} // namespace

TEST_F(ChamberDesk, WithoutASensorThereIsNoAir) {
    request.sensors.clear();
    const auto none = air();
    EXPECT_TRUE(none.sensors.empty());
    EXPECT_EQ(none.out_of_band.watched, Duration::seconds(0));
}

TEST_F(ChamberDesk, ASensorThatNeverSpokeHasNoExtentAndWatchedNothing) {
    const auto silent = air();
    ASSERT_EQ(silent.sensors.size(), 1U);
    EXPECT_EQ(silent.sensors[0].sensor.id, upper.id);
    EXPECT_FALSE(silent.sensors[0].extent.has_value());
    EXPECT_TRUE(silent.sensors[0].findings.empty());
    EXPECT_EQ(silent.out_of_band.watched, Duration::seconds(0));
}

TEST_F(ChamberDesk, HoursOutOfBandHaveTheOffsetsOfTheFirstSensor) {
    request.sensors[0].temperature_offset = units::TemperatureStep::kelvins(2);
    request.sensors[0].humidity_offset = RelativeHumidity::percent(-5);
    log(upper, 0, 24, about(10), about(80));  // 12 C, 75 %: in the band
    log(upper, 24, 48, about(14), about(70)); // 16 C, 65 %: too warm and too dry
    const auto made = air();
    EXPECT_FALSE(made.by_quarter_hours);
    const Duration last = Duration::minutes(5); // the last reading stands for nothing
    EXPECT_EQ(made.out_of_band.watched, Duration::hours(48) - last);
    EXPECT_EQ(made.out_of_band.too_warm, Duration::hours(24) - last);
    EXPECT_EQ(made.out_of_band.too_dry, Duration::hours(24) - last);
    EXPECT_EQ(made.out_of_band.too_cold, Duration::seconds(0));
    EXPECT_EQ(made.out_of_band.too_damp, Duration::seconds(0));
    ASSERT_TRUE(made.sensors.at(0).extent.has_value());
    EXPECT_EQ(made.sensors[0].extent->first, at_s(desk_start));
    EXPECT_EQ(made.sensors[0].extent->readings, 48 * 12);
}

TEST_F(ChamberDesk, OnlyTheWindowIsJudgedButTheExtentIsOfAllReadings) {
    log(upper, 0, 72, about(20), about(75));
    request.from = at_s(desk_start + 10 * desk_hour);
    request.to = at_s(desk_start + 20 * desk_hour);
    const auto made = air();
    EXPECT_EQ(made.out_of_band.too_warm, Duration::hours(10) - Duration::minutes(5));
    EXPECT_EQ(made.sensors.at(0).extent->readings, 72 * 12);
}

TEST_F(ChamberDesk, ALoggerOfAnHourIsNotFullOfGaps) {
    log(upper, 0, 48, about(12), about(75), 60);
    const auto made = air();
    EXPECT_EQ(made.out_of_band.watched, Duration::hours(47));
    EXPECT_EQ(made.out_of_band.unknown, Duration::seconds(0));
}

TEST_F(ChamberDesk, AnHourWithoutAWordIsUnknownAndNotInTheBand) {
    log(upper, 0, 10, about(12), about(75));
    log(upper, 20, 30, about(12), about(75));
    const auto made = air();
    // The last reading before the gap, at 9 h 55 min, stands for three usual steps of 5 minutes.
    EXPECT_EQ(made.out_of_band.unknown, Duration::hours(10) - Duration::minutes(10));
}

TEST_F(ChamberDesk, LongWindowsAreJudgedByQuarterHoursToTheSameHours) {
    log(upper, 0, 24 * 70, about(12), about(75));
    log(upper, 24 * 70, 24 * 80, about(18), about(75));
    request.to = at_s(desk_start + 62 * 24 * desk_hour);
    EXPECT_FALSE(air().by_quarter_hours);
    request.to = at_s(desk_start + 80 * 24 * desk_hour);
    const auto made = air();
    EXPECT_TRUE(made.by_quarter_hours);
    EXPECT_NEAR(made.out_of_band.too_warm.in_hours(), 240, 0.5);
    EXPECT_NEAR(made.out_of_band.watched.in_hours(), 80 * 24, 0.5);
}

TEST_F(ChamberDesk, AStuckOrJumpingSensorIsToldByItsName) {
    log(upper, 0, 48, about(12), still(75));
    auto made = air();
    ASSERT_TRUE(says(made.sensors.at(0).findings, "sensor_flat"));
    EXPECT_EQ(made.sensors[0].findings.front().place, "Upper");
    log(lower, 0, 24, about(12), about(75));
    log(lower, 24, 48, about(12), about(85));
    request.sensors = {lower};
    made = air();
    ASSERT_TRUE(says(made.sensors.at(0).findings, "sensor_step"));
    EXPECT_FALSE(says(made.sensors[0].findings, "sensor_flat"));
    EXPECT_EQ(made.sensors[0].findings.front().place, "Lower");
}

TEST_F(ChamberDesk, TwoSensorsAreHeldAgainstEachOtherAndTheFirstIsJudged) {
    log(upper, 0, 48, about(12), about(75));
    log(lower, 0, 48, about(16), about(85));
    request.sensors = {upper, lower};
    const auto apart = air();
    ASSERT_EQ(apart.sensors.size(), 2U);
    EXPECT_EQ(apart.sensors[1].sensor.id, lower.id);
    EXPECT_TRUE(says(apart.findings, "sensors_disagree"));
    EXPECT_EQ(apart.out_of_band.too_warm, Duration::seconds(0)) << "of the first sensor";
    request.sensors[1].temperature_offset = units::TemperatureStep::kelvins(-4);
    request.sensors[1].humidity_offset = RelativeHumidity::percent(-10);
    EXPECT_TRUE(air().findings.empty()) << "their offsets bring them together";
}
