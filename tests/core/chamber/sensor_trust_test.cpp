#include "core/chamber/sensor_trust.h"

#include <gtest/gtest.h>

#include <cmath>

// The thresholds are common practice, no source; the cases are invented.

namespace {

using namespace core::chamber;
using core::model::ClimateBucket;
using core::model::Finding;
using core::model::Spread;
using core::units::Duration;
using core::units::Instant;
using core::units::RelativeHumidity;
using core::units::Temperature;

/// An hour with a swing of `swing` points around `percent`.
ClimateBucket hour(int n, double percent, double swing = 1.0, double celsius = 12.0) {
    const auto rh = [](double v) { return RelativeHumidity::percent(v); };
    const auto t = [](double v) { return Temperature::celsius(v); };
    return {Instant::from_unix_seconds(n * 3600),
            Spread<Temperature>{t(celsius - 0.5), t(celsius), t(celsius + 0.5), 60},
            Spread<RelativeHumidity>{rh(percent - swing), rh(percent), rh(percent + swing), 60}};
}

double number(const Finding& f, const std::string& name) {
    return std::get<double>(f.values.at(name));
}
double percent(const Finding& f, const std::string& name) {
    return std::get<RelativeHumidity>(f.values.at(name)).in_percent();
}

/// A chamber that cycles by a point or two, as rooms do.
std::vector<ClimateBucket> room(int hours, double percent) {
    std::vector<ClimateBucket> out;
    for (int i = 0; i < hours; ++i) {
        out.push_back(hour(i, percent + 0.5 * std::sin(i)));
    }
    return out;
}

TEST(SensorTrust, AHealthyRoomGivesNoFinding) {
    const auto hours = room(24 * 30, 75);
    EXPECT_TRUE(flat_lines(hours).empty());
    EXPECT_TRUE(steps(hours).empty());
}

TEST(SensorTrust, AFlatLineIsFoundWithItsLength) {
    auto hours = room(24 * 6, 75);
    for (int i = 40; i < 90; ++i) {
        hours[static_cast<std::size_t>(i)] = hour(i, 99.9, 0.0);
    }
    const auto found = flat_lines(hours);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].code, "sensor_flat");
    EXPECT_EQ(found[0].at->unix_seconds(), 40 * 3600);
    EXPECT_DOUBLE_EQ(std::get<Duration>(found[0].values.at("lasted")).in_hours(), 50);
    EXPECT_NEAR(std::get<RelativeHumidity>(found[0].values.at("value")).in_percent(), 99.9, 1e-9);
}

TEST(SensorTrust, AHalfDayAtOneValueIsNotFlat) {
    auto hours = room(24 * 6, 75);
    for (int i = 40; i < 52; ++i) {
        hours[static_cast<std::size_t>(i)] = hour(i, 75, 0.0);
    }
    EXPECT_TRUE(flat_lines(hours).empty());
}

TEST(SensorTrust, AStepAfterABatteryIsFoundAtItsHourWithItsSize) {
    auto hours = room(24 * 4, 75);
    for (int i = 50; i < 24 * 4; ++i) {
        hours[static_cast<std::size_t>(i)] = hour(i + 2, 80 + 0.5 * std::sin(i)); // two hours off
    }
    const auto found = steps(hours);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].at->unix_seconds(), 52 * 3600);
    EXPECT_NEAR(percent(found[0], "by"), 5, 0.6);
    EXPECT_EQ(number(found[0], "after_gap"), 1.0);
}

TEST(SensorTrust, ARampAndAWarmingAreNoSteps) {
    std::vector<ClimateBucket> ramp;
    std::vector<ClimateBucket> warming;
    for (int i = 0; i < 96; ++i) {
        ramp.push_back(hour(i, 70 + i * 0.15));
        warming.push_back(hour(i, i < 48 ? 75 : 65, 1.0, i < 48 ? 12.0 : 15.0));
    }
    EXPECT_TRUE(steps(ramp).empty());
    EXPECT_TRUE(steps(warming).empty());
}

TEST(SensorTrust, TwoSensorsMoreThanFivePointsApartDisagreeAfterTheirOffsets) {
    core::model::Sensor a;
    core::model::Sensor b;
    a.name = "door";
    b.name = "back";
    const auto low = room(100, 70);
    const auto high = room(100, 78);
    const auto found = disagreement(low, a, high, b);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_NEAR(percent(found[0], "humidity_apart"), 8, 1e-6);
    EXPECT_EQ(number(found[0], "hours"), 100);
    b.humidity_offset = RelativeHumidity::percent(-4); // as its salt-bag check said
    EXPECT_TRUE(disagreement(low, a, high, b).empty());
    EXPECT_TRUE(disagreement(low, a, {}, b).empty());
}

TEST(SensorTrust, ChecksFallDueByTheirOwnInterval) {
    core::model::Sensor sensor;
    sensor.id = core::model::SensorId::from_row(1);
    core::model::Instrument bag;
    bag.id = core::model::InstrumentId::from_row(7);
    bag.kind = core::model::InstrumentKind::hygrometer;
    bag.sensor = sensor.id;
    bag.check_every_days = 90;
    const auto at = Instant::from_unix_seconds((20000LL - 89) * 86400);
    core::model::CalibrationCheck check{{}, bag.id, at, "salt slurry 75 %", 75, 71, "", {}};
    const auto today = core::units::Day::from_days_since_epoch(20000);
    auto due = checks_due(sensor, std::span(&bag, 1), std::span(&check, 1), today);
    ASSERT_EQ(due.size(), 2U);
    EXPECT_EQ(due[0].kind, CheckDue::Kind::salt_bag);
    EXPECT_FALSE(due[0].overdue);
    EXPECT_EQ(due[0].due, today + 1);
    EXPECT_DOUBLE_EQ(*due[0].found_off, 4);
    EXPECT_TRUE(due[1].overdue); // never had ice
    EXPECT_FALSE(due[1].last.has_value());
    check.at = Instant::from_unix_seconds((20000LL - 90) * 86400);
    due = checks_due(sensor, std::span(&bag, 1), std::span(&check, 1), today);
    EXPECT_TRUE(due[0].overdue);
}

// The case practitioners tell: two weeks at 55 % believed to be 78 %.
TEST(SensorTrust, TheMeatSaysOtherwise) {
    core::model::Sensor sensor;
    sensor.name = "meter";
    const auto hours = room(24 * 14, 78);
    const auto from = Instant::from_unix_seconds(0);
    const auto to = Instant::from_unix_seconds(14LL * 86400);
    const auto rh = [](double v) { return RelativeHumidity::percent(v); };
    const std::vector<MeatWitness> dry{{"A1", from, to, {rh(50), rh(55), rh(61)}},
                                       {"A2", from, to, {rh(52), rh(57), rh(63)}}};
    const auto found = meat_as_witness(hours, sensor, dry);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].code, "meat_contradicts_sensor");
    EXPECT_NEAR(percent(found[0], "stated"), 78, 0.1);
    EXPECT_NEAR(percent(found[0], "implied"), 56, 0.1);
    EXPECT_EQ(number(found[0], "pieces"), 2);
    const std::vector<MeatWitness> agrees{{"A1", from, to, {rh(70), rh(74), rh(77)}}};
    EXPECT_TRUE(meat_as_witness(hours, sensor, agrees).empty());
    const std::vector<MeatWitness> elsewhere{
        {"A1", to, Instant::from_unix_seconds(15LL * 86400 + 86400), {rh(50), rh(55), rh(61)}}};
    EXPECT_TRUE(meat_as_witness(hours, sensor, elsewhere).empty());
}

} // namespace
