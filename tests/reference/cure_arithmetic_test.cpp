// The computed cases of the reference sheet "limits" section 9, by number, each with its source.
// Inputs are ours, the formulae and limits are the named texts'.
#include "core/facts/chemistry.h"
#include "core/facts/facts.h"
#include "core/mix/dose.h"
#include "core/mix/mix_sheet.h"
#include "core/units/parse.h"

#include <gtest/gtest.h>

namespace {

using namespace core::mix;
using core::facts::built_in_facts;
using core::facts::Facts;
using core::units::Mass;
using core::units::MassShare;

const Facts& facts() {
    static const Facts all = built_in_facts();
    return all;
}

MixSheet sheet_of(const std::string& json, Mass meat) {
    const auto recipe = read_recipe(json);
    EXPECT_TRUE(recipe.has_value()) << json;
    MixRequest request;
    request.recipe = recipe.value_or(RecipeDocument{});
    request.pieces = {{"A", meat}};
    return make_mix_sheet(request, facts());
}

std::string dry(const std::string& lines) {
    return R"({"saltloft_recipe":1,"name":"t","method":"dry","lines":[)" + lines + "]}";
}

// 9 CFR 424.21(c): 1 oz to 100 lb in a dry cure; 1/4 oz to 100 lb chopped. Vectors 10.
TEST(CureArithmetic, OuncesToAHundredPounds) {
    const Mass meat = Mass::pounds(100);
    EXPECT_NEAR(ingoing_on_green_weight(Mass::ounces(1), meat).in_ppm(), 625, 1e-9);
    EXPECT_NEAR(ingoing_on_green_weight(Mass::ounces(0.25), meat).in_ppm(), 156.25, 1e-9);
    EXPECT_NEAR(ingoing_on_green_weight(Mass::ounces(3.5), meat).in_ppm(), 2187.5, 1e-9);
    EXPECT_NEAR(ingoing_on_green_weight(Mass::ounces(2.75), meat).in_ppm(), 1718.75, 1e-9);
    // Vector 19, USDA farm bulletin 8-2-2: 2 oz nitrate to 100 lb.
    EXPECT_NEAR(ingoing_on_green_weight(Mass::ounces(2), meat).in_ppm(), 1250, 1e-9);
}

// FSIS Directive 7620.3, cure mix: 4 oz of 6.25 % cure to 100 lb is 156.25 ppm. Vector 11.
TEST(CureArithmetic, FourOuncesOfCureToAHundredPounds) {
    const auto sheet =
        sheet_of(dry(R"({"ingredient":"cure_no1","amount":"4 oz per 100 lb"})"), Mass::pounds(100));
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 156.25, 1e-9);
    EXPECT_NEAR(sheet.dose.nitrite_as_weighed.best.in_ppm(), 156.25, 1e-9);
}

// FSIS Directive 7620.3, method one with the pump as pick-up: 2 lb in 1000 lb pickle, 10 %.
// Vector 12.
TEST(CureArithmetic, TwoPoundsInAThousandPoundsOfPickleAtTenPercentPump) {
    EXPECT_NEAR(
        ingoing_by_pickup(Mass::pounds(2), MassShare::percent(10), Mass::pounds(1000)).in_ppm(),
        200, 1e-9);
    const auto sheet = sheet_of(
        R"({"saltloft_recipe":1,"method":"injected","pump":"10 %","lines":[
            {"ingredient":"water","amount":"898 lb"},{"ingredient":"table_salt","amount":"100 lb"},
            {"ingredient":"sodium_nitrite","amount":"2 lb"}]})",
        Mass::pounds(500));
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 200, 1e-9);
}

// The 10 lb/gal trap: "2 lb to 100 gal at 10 % pump" is 200 ppm only where the pickle weighs
// 10 lb to the gallon; counted as plain water (8.33 lb/gal) the same line is 240.1 ppm.
TEST(CureArithmetic, PickleIsCountedByItsRealWeightNotByTheGallon) {
    const auto at = [](double pounds_per_gallon) {
        return ingoing_by_pickup(Mass::pounds(2), MassShare::percent(10),
                                 Mass::pounds(100 * pounds_per_gallon))
            .in_ppm();
    };
    EXPECT_NEAR(at(10), 200.0, 0.05);
    EXPECT_NEAR(at(8.33), 240.1, 0.05);
    // A recipe of 100 gal of water: the program weighs water and all that is in it.
    const std::string pickle =
        R"({"saltloft_recipe":1,"method":"injected","pump":"10 %","lines":[
            {"ingredient":"water","amount":"100 gal"},{"ingredient":"table_salt","amount":")";
    const std::string rest = R"( lb"},{"ingredient":"sodium_nitrite","amount":"2 lb"}]})";
    const double water_pounds = core::units::Density::grams_per_millilitre(0.9982)
                                    .mass_of(core::units::Volume::us_gallons(100))
                                    .in_pounds();
    const auto weak = sheet_of(pickle + "20" + rest, Mass::pounds(500));
    EXPECT_NEAR(weak.dose.nitrite.best.in_ppm(), 0.1 * 2e6 / (water_pounds + 22), 1e-6);
    const auto strong = sheet_of(pickle + "165" + rest, Mass::pounds(500));
    EXPECT_NEAR(strong.dose.nitrite.best.in_ppm(), 0.1 * 2e6 / (water_pounds + 167), 1e-6);
    EXPECT_NEAR(strong.dose.nitrite.best.in_ppm(), 200, 0.05) << "1000 lb of pickle in all";
}

// FSIS Directive 7620.3, method two: 0.0025 lb in 10 lb meat and 10 lb pickle. Vector 13.
TEST(CureArithmetic, MeatAndPickleAtRest) {
    EXPECT_NEAR(
        ingoing_at_equilibrium(Mass::pounds(0.0025), Mass::pounds(10), Mass::pounds(10)).in_ppm(),
        125, 1e-9);
    const auto sheet = sheet_of(
        R"({"saltloft_recipe":1,"method":"immersion_equilibrium","lines":[
            {"ingredient":"water","amount":"9.4975 lb"},{"ingredient":"table_salt","amount":"0.5 lb"},
            {"ingredient":"sodium_nitrite","amount":"0.0025 lb"}]})",
        Mass::pounds(10));
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 125, 1e-9);
    EXPECT_NEAR(sheet.dose.salt.best.in_percent(), 2.5, 1e-9);
}

// Atomic masses: 80 mg/kg NO2 is 120.0 mg/kg NaNO2; that is 1.92 g/kg of a 6.25 % cure or
// 24 g/kg of a 0.5 % salt. Vector 14.
TEST(CureArithmetic, EightyMilligramsOfTheIon) {
    const auto salt = core::facts::sodium_nitrite_from_ion(MassShare::ppm(80));
    EXPECT_NEAR(salt.in_ppm(), 120.0, 0.05);
    EXPECT_NEAR(salt / MassShare::percent(6.25) * 1000, 1.92, 0.005) << "g/kg";
    EXPECT_NEAR(salt / MassShare::percent(0.5) * 1000, 24, 0.01) << "g/kg";
    const auto cure =
        sheet_of(dry(R"({"ingredient":"cure_no1","amount":"1.92 g/kg"})"), Mass::kilograms(1));
    EXPECT_NEAR(cure.dose.nitrite_ion.best.in_ppm(), 80, 0.05);
    const auto labelled = sheet_of(
        dry(R"({"ingredient":"nitrite_salt_de","amount":"24 g/kg","label":{"nitrite":"0.5 %"}})"),
        Mass::kilograms(1));
    EXPECT_NEAR(labelled.dose.nitrite_ion.best.in_ppm(), 80, 0.05);
}

// Atomic masses against the law's own rounded factors: NaNO2 0.67, NaNO3 0.73, KNO3 0.61
// (Regulation (EU) 2023/2108 as summarised); to four digits 0.6668, 0.7295, 0.6133, KNO2 0.5406.
TEST(CureArithmetic, IonFactors) {
    EXPECT_NEAR(core::facts::no2_in_sodium_nitrite, 0.6668, 5e-5);
    EXPECT_NEAR(core::facts::no2_in_potassium_nitrite, 0.5406, 5e-5);
    EXPECT_NEAR(core::facts::no3_in_sodium_nitrate, 0.7295, 5e-5);
    EXPECT_NEAR(core::facts::no3_in_potassium_nitrate, 0.6133, 5e-5);
    EXPECT_NEAR(core::facts::salt_per_sodium, 2.5421, 5e-4);
    const auto sheet =
        sheet_of(dry(R"({"ingredient":"saltpetre","amount":"1 g/kg"})"), Mass::kilograms(1));
    EXPECT_NEAR(sheet.dose.nitrate_ion.best.in_ppm(), 613.3, 0.1);
    EXPECT_NEAR(sheet.dose.nitrate_as_weighed.best.in_ppm(), 1000, 1e-9);
    EXPECT_NEAR(sheet.dose.nitrate.best.in_ppm(), 613.3 / 0.7295, 0.1);
}

// 2.5 g/kg of cure No. 2 at 6.25 and 4 %: 156.25 ppm nitrite and 100 ppm nitrate. Vector 15.
TEST(CureArithmetic, CureNumberTwo) {
    const auto sheet = sheet_of(
        dry(R"({"ingredient":"cure_no2","amount":"2.5 g/kg","label":{"nitrite":"6.25 %","nitrate":"4 %"}})"),
        Mass::kilograms(2));
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 156.25, 1e-9);
    EXPECT_NEAR(sheet.dose.nitrate.best.in_ppm(), 100, 1e-9);
    // Salt inside curing salt counts, once: 2.5 g/kg x 89.75 %.
    EXPECT_NEAR(sheet.dose.salt.best.in_grams_per_kilogram(), 2.5 * 0.8975, 1e-9);
}

// FSRE Shelf-Stable training: brine strength = salt / (salt + moisture). Vector 16.
TEST(CureArithmetic, WaterPhaseSalt) {
    // The sheet rounds to two digits: 3.5 / 43.5 = 8.0460 %.
    EXPECT_NEAR(water_phase_salt(MassShare::percent(3.5), MassShare::percent(40)).in_percent(),
                8.05, 0.005);
    EXPECT_DOUBLE_EQ(water_phase_salt(MassShare::percent(0), MassShare::percent(40)).in_percent(),
                     0);
}

// Worked example in the Handbook's form: target 120 ppm, 20 % injection, 100 lb brine needs
// 0.06 lb nitrite. Vector 23.
TEST(CureArithmetic, TargetAtTwentyPercentInjection) {
    EXPECT_NEAR(
        ingoing_by_pickup(Mass::pounds(0.06), MassShare::percent(20), Mass::pounds(100)).in_ppm(),
        120, 1e-9);
}

// 10 % off for the skin before the ppm sum: 10 lb skin-on belly counts as 9 lb. Vector 24.
TEST(CureArithmetic, SkinOnBellyCountsAsNinePounds) {
    const auto recipe = read_recipe(
        R"({"saltloft_recipe":1,"method":"dry","limits":"us-fsis-bacon-dry","meat":{"skin":"one_side","fatty":true},
            "lines":[{"ingredient":"table_salt","amount":"2.25 %"},{"ingredient":"cure_no1","amount":"2.5 g/kg"}]})");
    ASSERT_TRUE(recipe.has_value());
    MixRequest request;
    request.recipe = *recipe;
    request.pieces = {{"A", Mass::pounds(10)}};
    const auto sheet = make_mix_sheet(request, facts());
    ASSERT_FALSE(sheet.limits.empty());
    EXPECT_NEAR(sheet.limits[0].value.best.in_ppm(),
                ingoing_on_green_weight(MassShare::percent(0.25).part_of(Mass::pounds(10)) * 0.0625,
                                        Mass::pounds(9))
                    .in_ppm(),
                1e-9);
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 156.25, 1e-9);
}

// FSRE Shelf-Stable training: saturated brine is 26.3 % salt, so 50 degrees SAL is 13.15 %.
// Vector 8.
TEST(CureArithmetic, FiftyDegreesOfBrine) {
    EXPECT_NEAR(MassShare::percent(26.3).in_percent() * 50 / 100, 13.15, 1e-9);
}

// Stated doses seen in practice, reckoned at 5.67 g of 6.25 % cure to the US teaspoon (common
// practice, no source): 3/4 tsp on 1.58 lb is about 370 ppm; 2 tbsp on 11 lb about 425; 3.2 % is
// 2000; 0.25 % of a 0.6 % salt is 15; 2.75 % of 6.25 % cure taken for nitrite salt about 1720.
TEST(CureArithmetic, StatedDosesOfPractice) {
    const auto nitrite = [](const std::string& line, Mass meat) {
        return sheet_of(dry(line), meat).dose.nitrite.best.in_ppm();
    };
    EXPECT_NEAR(
        nitrite(R"({"ingredient":"cure_no1","amount":"3/4 us_teaspoon"})", Mass::pounds(1.58)), 370,
        2);
    EXPECT_NEAR(
        nitrite(R"({"ingredient":"cure_no1","amount":"2 us_tablespoon"})", Mass::pounds(11)), 425,
        2);
    EXPECT_NEAR(nitrite(R"({"ingredient":"cure_no1","amount":"3.2 %"})", Mass::kilograms(1)), 2000,
                1e-6);
    EXPECT_NEAR(
        nitrite(R"({"ingredient":"nitrite_salt_06","amount":"0.25 %"})", Mass::kilograms(1)), 15,
        1e-6);
    EXPECT_NEAR(nitrite(R"({"ingredient":"cure_no1","amount":"2.75 %"})", Mass::kilograms(1)), 1720,
                2);
}

// USDA food composition data: 879 mg sodium to the tablespoon of 16 g is 2.23 g of salt.
TEST(CureArithmetic, SoySauceByItsSodium) {
    const auto by_weight = sheet_of(
        dry(R"({"ingredient":"soy_sauce","amount":"16 g","label":{"sodium":"5.493 g/100 g"}})"),
        Mass::kilograms(1));
    EXPECT_NEAR(by_weight.dose.salt.best.in_grams_per_kilogram(), 2.23, 0.005);
    // The same off a label that states it per serving; the weight of 15 mL cancels out.
    const auto by_serving = sheet_of(
        dry(R"({"ingredient":"soy_sauce","amount":"15 mL","label":{"sodium_per_serving":"879 mg","serving":"15 mL"}})"),
        Mass::kilograms(1));
    EXPECT_NEAR(by_serving.dose.salt.best.in_grams_per_kilogram(), 2.23, 0.005);
}

} // namespace
