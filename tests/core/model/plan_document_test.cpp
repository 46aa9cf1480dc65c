#include "core/model/plan_document.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using namespace core::model;
using core::units::Duration;
using core::units::MassShare;
using core::units::RelativeHumidity;
using core::units::Temperature;

constexpr const char* full_stage = R"({"name":"Warm start","kind":"dry","salting":"weighed",
 "temperature_c":{"low":24,"high":26,"low_at_end":12,"high_at_end":14},
 "humidity_percent":{"low":58,"high":70},
 "humidity_pulse":{"low":80,"high":85,"every_hours":24,"lasting_hours":6},
 "temperature_pulse":{"low":10,"high":11,"every_hours":12,"lasting_hours":2},
 "ends":[{"kind":"days_per_cm","days_per_unit":1,"days":2},
         {"kind":"loss","loss_percent":35,"reference":"hung"},
         {"kind":"flat_curve","loss_percent":0.7},{"kind":"on_date","date":"2026-03-01"},
         {"kind":"feel","text":"firm through"}],
 "ends_by_all":true,"typical_days":[3,4,6],
 "routines":[{"verb":"turn","every_days":2,"first_after_days":1},
             {"verb":"rub_again","at_days":[3,10]}],
 "weight":"resets_tare","repeats":8,"repeat_with_next":1,"repeats_at_least":7,
 "repeats_at_most":12,"optional":true,"pauses_when_frozen":false,"pauses_out_of_band":true,
 "same_room_as":"Cool dry","note":"ramps down"})";

TEST(PlanDocument, ReadsEveryFieldOfAStage) {
    const auto read = read_stage_template(full_stage);
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->kind, StageKind::dry);
    EXPECT_EQ(read->salting, SaltingMethod::weighed);
    ASSERT_TRUE(read->temperature);
    EXPECT_NEAR(read->temperature->low_at_end.in_celsius(), 12, 1e-9);
    ASSERT_TRUE(read->humidity);
    EXPECT_EQ(read->humidity->high_at_end, RelativeHumidity::percent(70));
    ASSERT_TRUE(read->humidity_pulse && read->temperature_pulse);
    EXPECT_EQ(read->humidity_pulse->lasting, Duration::hours(6));
    ASSERT_EQ(read->ends.size(), 5U);
    EXPECT_EQ(read->ends[0].time, Duration::days(2));
    EXPECT_EQ(read->ends[1].loss, MassShare::percent(35));
    EXPECT_EQ(read->ends[1].reference, ReferenceWeight::hung);
    EXPECT_EQ(read->ends[3].date, core::units::Day::from_date(std::chrono::year(2026) / 3 / 1));
    EXPECT_TRUE(read->ends_by_all);
    EXPECT_EQ(read->typical->high, Duration::days(6));
    EXPECT_EQ(read->routines[0].first_after, Duration::days(1));
    EXPECT_EQ(read->routines[1].at.size(), 2U);
    EXPECT_EQ(read->weight, WeightEffect::resets_tare);
    EXPECT_EQ(read->repeats_at_most, 12);
    EXPECT_TRUE(read->optional && read->pauses_out_of_band && !read->pauses_when_frozen);
    EXPECT_EQ(read->same_room_as, "Cool dry");
}

TEST(PlanDocument, WritingAndReadingGivesTheSameTextBack) {
    const auto once = read_stage_template(full_stage);
    ASSERT_TRUE(once.has_value());
    const std::string written = write_stage_template(*once);
    const auto twice = read_stage_template(written);
    ASSERT_TRUE(twice.has_value()) << written;
    EXPECT_EQ(write_stage_template(*twice), written);
    EXPECT_NE(written.find("\"at_days\":[3.0,10.0]"), std::string::npos) << written;
}

TEST(PlanDocument, DefaultsAreLeftOut) {
    StageTemplate stage;
    stage.name = "Rest";
    stage.kind = StageKind::rest;
    EXPECT_EQ(write_stage_template(stage), R"({"name":"Rest","kind":"rest"})");
}

TEST(PlanDocument, ReportsEveryFaultWithItsPlace) {
    const auto read = read_stage_template(R"({"kind":"bake","colour":"red",
        "humidity_percent":{"low":90,"high":70},"ends":[{"kind":"after"},{"kind":"days_per_cm"}],
        "routines":[{"verb":"turn"}],"repeats":2.5,"typical_days":[3,2,1]})");
    ASSERT_FALSE(read.has_value());
    std::vector<std::string> places;
    for (const auto& fault : read.error()) {
        places.push_back(fault.where);
    }
    EXPECT_THAT(places, testing::UnorderedElementsAre("name", "kind", "colour", "humidity_percent",
                                                      "ends[0]", "ends[1]", "routines[0]",
                                                      "repeats", "typical_days"));
}

TEST(PlanDocument, RefusesWhatIsNotJson) {
    const auto read = read_plan_template("{\"id\": ");
    ASSERT_FALSE(read.has_value());
    EXPECT_EQ(read.error().front().code, core::base::ErrorCode::bad_format);
    EXPECT_FALSE(read_plan_template("[]").has_value());
}

TEST(PlanDocument, APlanKeepsItsMinimaAndUsualPiece) {
    const auto read = read_plan_template(R"({"id":"ham","name":"Ham","family":"ham",
      "species":"pork","usual_weight_kg":10,"usual_thickness_mm":200,"usual_form":"round",
      "usual_loss_percent":18,"usual_loss_from":"raw","source":"s","sureness":"verified",
      "stages":[{"name":"Salt","kind":"salt","ends":[{"kind":"days_per_kilogram",
        "days_per_unit":1,"days":3}]}],
      "minima":[{"code":"whole","days":70,"source":"9 CFR 319.106","sureness":"verified"}]})");
    ASSERT_TRUE(read.has_value());
    EXPECT_EQ(read->usual_target->reference, ReferenceWeight::raw);
    EXPECT_EQ(read->minima.at(0).at_least, Duration::days(70));
    const auto again = read_plan_template(write_plan_template(*read));
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(write_plan_template(*again), write_plan_template(*read));
}

} // namespace
