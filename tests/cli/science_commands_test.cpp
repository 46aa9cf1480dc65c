// `saltloft air`, `saltloft cure-time` and `saltloft water-activity` as a shell would call them.
#include "tests/cli/support/run_program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>

namespace science_commands_test {
namespace {

using nlohmann::json;
using tests::cli::Ran;
using tests::cli::run_program;

/// One plain sentence on standard error that says how to mend it, nothing on standard output.
void expect_refusal(const Ran& ran, const std::string& what, const std::string& mend) {
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(ran.out, "");
    EXPECT_NE(ran.err.find(what), std::string::npos) << ran.err;
    EXPECT_NE(ran.err.find(mend), std::string::npos) << ran.err;
    EXPECT_EQ(std::count(ran.err.begin(), ran.err.end(), '\n'), 1) << ran.err;
}

bool has_finding(const json& findings, const std::string& code) {
    return std::any_of(findings.begin(), findings.end(),
                       [&](const json& finding) { return finding["code"] == code; });
}

// The state point 13 C, 75 % of tests/reference/data/psychro_state_points.csv.
TEST(AirCommand, JsonOfAStatePoint) {
    const auto ran = run_program("air --temp 13C --rh 75 --json");
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto doc = json::parse(ran.out);
    EXPECT_NEAR(doc["vapour_pressure_pa"].get<double>(), 1123.3581, 1e-4);
    EXPECT_NEAR(doc["humidity_ratio_kg_per_kg"].get<double>(), 0.006972610, 1e-9);
    EXPECT_NEAR(doc["dew_point_c"].get<double>(), 8.677716, 1e-6);
    EXPECT_NEAR(doc["wet_bulb_c"].get<double>(), 10.614684, 1e-6);
    EXPECT_NEAR(doc["enthalpy_kj_per_kg"].get<double>(), 30.685095, 1e-6);
    EXPECT_NEAR(doc["vapour_pressure_deficit_pa"].get<double>(), 374.4527, 1e-4);
}

TEST(AirCommand, FahrenheitHeightAndWords) {
    const auto doc = json::parse(run_program("air --temp 55.4F --rh 75% --height 1000 --json").out);
    EXPECT_NEAR(doc["temp_c"].get<double>(), 13, 1e-9);
    EXPECT_NEAR(doc["pressure_pa"].get<double>(), 89875, 5);
    EXPECT_NEAR(doc["humidity_ratio_kg_per_kg"].get<double>(), 0.007872158, 1e-6);
    const auto words = run_program("air --temp 13C --rh 75");
    EXPECT_EQ(words.code, 0);
    EXPECT_NE(words.out.find("drying force"), std::string::npos);
    EXPECT_NE(words.out.find("8.7 C"), std::string::npos);
    EXPECT_NE(run_program("air --temp 2C --rh 80").out.find("frost point"), std::string::npos);
}

TEST(AirCommand, DryAirHasNoDewPoint) {
    const auto doc = json::parse(run_program("air --temp 20C --rh 0 --json").out);
    EXPECT_TRUE(doc["dew_point_c"].is_null());
}

TEST(AirCommand, RefusesWithTheWayToMendIt) {
    expect_refusal(run_program("air --temp 13 --rh 75"), "has no unit", "--temp 13C");
    expect_refusal(run_program("air --temp 13kg --rh 75"), "another kind", "--temp 13C");
    expect_refusal(run_program("air --temp 13C --rh 175"), "out of range", "--rh 75");
    expect_refusal(run_program("air --temp 400C --rh 5"), "outside -100 to 200 C", "give");
    expect_refusal(run_program("air --temp 190C --rh 99"), "cannot hold", "lower temperature");
    EXPECT_EQ(run_program("air --rh 75").code, 2);
}

// 4.5 % salt and 45 % moisture by hand: brine strength 4.5/49.5 = 9.09 %, m 1.711, brine alone
// 0.942, meat 0.903.
TEST(WaterActivityCommand, JsonByHand) {
    const auto ran = run_program("water-activity --salt 4.5% --moisture 45% --json");
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto doc = json::parse(ran.out);
    EXPECT_NEAR(doc["water_phase_salt_percent"].get<double>(), 9.0909, 1e-3);
    EXPECT_NEAR(doc["salt_solution_activity"].get<double>(), 0.9420, 5e-4);
    EXPECT_NEAR(doc["water_activity"]["p50"].get<double>(), 0.9033, 5e-4);
    EXPECT_LT(doc["water_activity"]["p10"], doc["water_activity"]["p50"]);
    EXPECT_LT(doc["water_activity"]["p50"], doc["water_activity"]["p90"]);
    EXPECT_TRUE(has_finding(doc["findings"], "estimate_is_no_measurement"));
    EXPECT_TRUE(has_finding(doc["findings"], "above_growth_limit"));
}

TEST(WaterActivityCommand, NeverAVerdict) {
    for (const char* arguments :
         {"--salt 4.5% --moisture 45%", "--salt 9% --moisture 25%", "--salt 2% --moisture 70%"}) {
        const auto ran = run_program(std::string("water-activity ") + arguments);
        EXPECT_EQ(ran.code, 0);
        EXPECT_NE(ran.out.find("estimate"), std::string::npos);
        for (const char* word : {"safe", "Safe", "fit to eat"}) {
            EXPECT_EQ(ran.out.find(word), std::string::npos) << ran.out;
        }
    }
}

TEST(WaterActivityCommand, SaturatedBrineIsSaid) {
    const auto doc =
        json::parse(run_program("water-activity --salt 15% --moisture 30% --json").out);
    EXPECT_TRUE(has_finding(doc["findings"], "brine_saturated"));
    EXPECT_NEAR(doc["salt_solution_activity"].get<double>(), 0.752, 1e-3);
}

TEST(WaterActivityCommand, RefusesWithTheWayToMendIt) {
    expect_refusal(run_program("water-activity --salt 4.5 --moisture 45%"), "has no unit",
                   "--salt 4.5%");
    expect_refusal(run_program("water-activity --salt 40% --moisture 70%"), "leave no water",
                   "less than 100 %");
}

// By hand at 5 C (tests/core/uptake): even after about 9 days, rules of 6 to 14 days beside it.
TEST(CureTimeCommand, JsonOfABelly) {
    const auto ran =
        run_program("cure-time --thickness 50mm --form slab --temp 5C --salt 2.5% --json");
    ASSERT_EQ(ran.code, 0) << ran.err;
    const auto doc = json::parse(ran.out);
    EXPECT_EQ(doc["form"], "slab");
    EXPECT_EQ(doc["salt_assumed"], false);
    const double even = doc["weighed"]["even_days"]["p50"].get<double>();
    EXPECT_GT(even, 8.7);
    EXPECT_LT(even, 10);
    EXPECT_LT(doc["weighed"]["even_days"]["p10"], doc["weighed"]["even_days"]["p50"]);
    EXPECT_LT(doc["excess_salt"]["salt_in_days"]["p50"], 1);
    EXPECT_TRUE(has_finding(doc["weighed"]["findings"], "cure_rules_disagree"));
    EXPECT_GE(doc["rules"].size(), 6U);
    EXPECT_TRUE(std::any_of(doc["rules"].begin(), doc["rules"].end(), [](const json& rule) {
        return rule["method"] == "excess_salt" && rule["id"] == "inch_a_week_in_box";
    }));
    EXPECT_GT(doc["curve"].size(), 50U);
}

TEST(CureTimeCommand, SkinOnOneSideTakesFourTimesAsLong) {
    const auto even = [](const std::string& more) {
        const auto ran = run_program("cure-time --thickness 2in --form slab --json " + more);
        return json::parse(ran.out)["weighed"]["even_days"]["p50"].get<double>();
    };
    EXPECT_NEAR(even("--skin one-side") / even(""), 4, 1e-6);
}

TEST(CureTimeCommand, AllFormsAndWords) {
    for (const char* form : {"slab", "cylinder", "round", "block"}) {
        const auto ran =
            run_program(std::string("cure-time --thickness 80mm --weight 1.5kg --form ") + form);
        EXPECT_EQ(ran.code, 0) << ran.err;
        EXPECT_NE(ran.out.find("Buried in salt"), std::string::npos);
        EXPECT_NE(ran.out.find("2 to 3 days per kg"), std::string::npos);
        EXPECT_NE(ran.out.find("local code"), std::string::npos);
    }
}

TEST(CureTimeCommand, FindingsChangeNothingButAClosedPieceIsSomethingWrong) {
    const auto warm = run_program("cure-time --thickness 50mm --form slab --temp 12C --json");
    EXPECT_EQ(warm.code, 0);
    EXPECT_TRUE(has_finding(json::parse(warm.out)["weighed"]["findings"], "cure_too_warm"));
    const auto closed =
        run_program("cure-time --thickness 50mm --form slab --skin all-round --json");
    EXPECT_EQ(closed.code, 1);
    EXPECT_TRUE(json::parse(closed.out)["weighed"]["even_days"].is_null());
    EXPECT_TRUE(has_finding(json::parse(closed.out)["weighed"]["findings"], "no_open_face"));
}

TEST(CureTimeCommand, RefusesWithTheWayToMendIt) {
    expect_refusal(run_program("cure-time --thickness 50 --form slab"), "has no unit",
                   "--thickness 50mm");
    expect_refusal(run_program("cure-time --thickness 50mm --form slob"), "'slob'",
                   "block, cylinder, round, slab");
    expect_refusal(run_program("cure-time --thickness 50mm --form slab --skin half"), "'half'",
                   "one-side");
    expect_refusal(run_program("cure-time --thickness 0mm --form slab"), "thickness",
                   "between 1 mm and 500 mm");
    expect_refusal(run_program("cure-time --thickness 50mm --form slab --salt 60%"), "salt",
                   "at most 20 %");
    EXPECT_EQ(run_program("cure-time --form slab").code, 2);
}

} // namespace

} // namespace science_commands_test
