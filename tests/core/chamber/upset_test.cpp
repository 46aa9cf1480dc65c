#include "core/chamber/upset.h"

#include <gtest/gtest.h>

namespace {

using namespace core::chamber;
namespace facts = core::facts;
using core::model::ClimateReading;
using core::units::Duration;
using core::units::Instant;
using core::units::MassShare;
using core::units::Temperature;
using core::units::WaterActivity;

const Instant noon = Instant::from_unix_seconds(1746093600);

const facts::Hurdles& known() {
    static const facts::Hurdles hurdles = facts::built_in_hurdles();
    return hurdles;
}

const facts::GrowthRange& range_of(std::string_view organism) {
    for (const auto& range : known().organisms) {
        if (range.name == organism) {
            return range;
        }
    }
    throw std::logic_error("no such range");
}

const Exposure& exposure_of(const PieceExposure& piece, std::string_view organism) {
    for (const auto& exposure : piece.exposures) {
        if (exposure.range.name == organism) {
            return exposure;
        }
    }
    throw std::logic_error("no such exposure");
}

// "Off 36 h, reached 21 C" from a fridge at 3 C. In a straight line from 3 to 21 C, 7 C is passed
// after (7-3)/(21-3) of the time, so 7 C and over last 36 x 14/18 = 28 h; at worst all 36.
TEST(Upset, ATypedAccountGivesBothBounds) {
    const auto course =
        course_of({noon, Duration::hours(36), Temperature::celsius(3), Temperature::celsius(21)});
    const auto& aureus = range_of("Staphylococcus aureus");
    const auto [least, most] = time_within(course, aureus.lowest, aureus.highest);
    EXPECT_NEAR(least.in_hours(), 28, 0.2);
    EXPECT_NEAR(most.in_hours(), 36, 1e-9);
    EXPECT_NEAR(course.highest->in_celsius(), 21, 1e-9);
}

TEST(Upset, ALogGivesHoursAndSaysWhatItDoesNotKnow) {
    std::vector<ClimateReading> readings;
    const auto put = [&](int hour, double celsius) {
        readings.push_back(
            {noon + Duration::hours(hour), Temperature::celsius(celsius), std::nullopt});
    };
    for (int h = 0; h < 10; ++h) {
        put(h, h < 4 ? 3 : 12);
    }
    put(20, 15); // ten hours were not read
    put(21, 3);
    const auto course = course_of(readings, noon, noon + Duration::hours(22), Duration::hours(1));
    const auto [least, most] =
        time_within(course, Temperature::celsius(10), Temperature::celsius(50));
    EXPECT_NEAR(least.in_hours(), 6 + 1, 1e-9);
    EXPECT_NEAR(most.in_hours(), 6 + 10 + 1, 1e-9);
    EXPECT_NEAR(course.unknown.in_hours(), 10, 1e-9);
}

TEST(Upset, WithoutReadingsEverythingIsUnknown) {
    const auto course = course_of({}, noon, noon + Duration::hours(5), Duration::hours(1));
    EXPECT_DOUBLE_EQ(course.unknown.in_hours(), 5);
    EXPECT_FALSE(course.highest.has_value());
}

TEST(Upset, TheFreshestAreLookedAtFirstAndActivityIsSaid) {
    PieceThen curing;
    curing.code = "C1";
    curing.stage = core::model::StageKind::salt;
    PieceThen wet;
    wet.code = "W1";
    wet.stage = core::model::StageKind::dry;
    wet.loss = MassShare::percent(4);
    wet.water_activity = {WaterActivity::fraction(0.95), WaterActivity::fraction(0.96),
                          WaterActivity::fraction(0.97)};
    PieceThen dry = wet;
    dry.code = "D1";
    dry.loss = MassShare::percent(40);
    dry.water_activity = {WaterActivity::fraction(0.82), WaterActivity::fraction(0.84),
                          WaterActivity::fraction(0.86)};
    PieceThen unknown = wet;
    unknown.code = "U1";
    unknown.loss.reset();
    unknown.water_activity.reset();
    const auto record = upset_record(
        course_of({noon, Duration::hours(36), Temperature::celsius(3), Temperature::celsius(21)}),
        {dry, wet, unknown, curing}, known());
    ASSERT_EQ(record.pieces.size(), 4U);
    EXPECT_EQ(record.pieces[0].piece.code, "C1");
    EXPECT_EQ(record.pieces[1].piece.code, "U1");
    EXPECT_EQ(record.pieces[2].piece.code, "W1");
    EXPECT_EQ(record.pieces[3].piece.code, "D1");
    using Activity = Exposure::Activity;
    EXPECT_EQ(exposure_of(record.pieces[3], "Staphylococcus aureus").activity, Activity::below);
    EXPECT_EQ(exposure_of(record.pieces[2], "Staphylococcus aureus").activity, Activity::above);
    EXPECT_EQ(exposure_of(record.pieces[2], "Clostridium botulinum E").activity, Activity::around);
    EXPECT_EQ(exposure_of(record.pieces[1], "Salmonella").activity, Activity::unknown);
    EXPECT_EQ(exposure_of(record.pieces[2], "Yersinia enterocolitica").activity, Activity::unknown);
}

} // namespace
