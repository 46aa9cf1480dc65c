#include "core/mix/mix_sheet.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace {

using namespace core::mix;
using core::facts::Facts;
using core::model::Severity;
using core::units::Mass;
using core::units::MassShare;

const Facts& facts() {
    static const Facts all = core::facts::built_in_facts();
    return all;
}

RecipeDocument recipe_of(const std::string& json) {
    const auto recipe = read_recipe(json);
    EXPECT_TRUE(recipe.has_value()) << json;
    return recipe.value_or(RecipeDocument{});
}

// Weighed cure at 2.75 % salt and 0.25 % curing salt: usual whole-muscle figures (common
// practice, no source).
const char* const coppa =
    R"({"saltloft_recipe":1,"name":"Coppa","method":"dry","limits":"us-fsis-dry-cured","lines":[
        {"ingredient":"table_salt","amount":"2.5 %"},
        {"ingredient":"cure_no2","amount":"0.25 %","label":{"nitrite":"6.25 %","nitrate":"4 %"}},
        {"ingredient":"white_sugar","amount":"10 g/kg"},
        {"ingredient":"black_pepper","amount":"5 g/kg"}]})";

MixSheet sheet_of(const std::string& json, Mass meat, std::optional<Mass> step = {}) {
    MixRequest request;
    request.recipe = recipe_of(json);
    request.pieces = {{"A", meat}};
    request.scale_step = step;
    return make_mix_sheet(request, facts());
}

const core::model::Finding* find(const MixSheet& sheet, const std::string& code) {
    const auto it = std::find_if(sheet.findings.begin(), sheet.findings.end(),
                                 [&](const auto& finding) { return finding.code == code; });
    return it == sheet.findings.end() ? nullptr : &*it;
}

TEST(MixSheet, DryCureByHand) {
    const auto sheet = sheet_of(coppa, Mass::grams(1500));
    ASSERT_EQ(sheet.lines.size(), 4U);
    EXPECT_NEAR(sheet.lines[0].weigh_out.in_grams(), 37.5, 1e-9);
    EXPECT_NEAR(sheet.lines[1].weigh_out.in_grams(), 3.75, 1e-9);
    EXPECT_NEAR(sheet.lines[2].weigh_out.in_grams(), 15, 1e-9);
    EXPECT_NEAR(sheet.lines[3].weigh_out.in_grams(), 7.5, 1e-9);
    // 2.5 % and the 89.75 % salt in 0.25 % of cure.
    EXPECT_NEAR(sheet.dose.salt.best.in_percent(), 2.5 + 0.25 * 0.8975, 1e-9);
    EXPECT_NEAR(sheet.dose.nitrite.best.in_ppm(), 156.25, 1e-9);
    EXPECT_NEAR(sheet.dose.nitrate.best.in_ppm(), 100, 1e-9);
    EXPECT_NEAR(sheet.dose.sugar.best.in_percent(), 1, 1e-9);
    EXPECT_FALSE(sheet.has_stop());
    EXPECT_FALSE(sheet.half_absorbed.has_value()) << "no liquid";
}

TEST(MixSheet, FollowsTheMeatWeight) {
    const auto one = sheet_of(coppa, Mass::kilograms(1));
    const auto six = sheet_of(coppa, Mass::kilograms(6));
    for (std::size_t i = 0; i < one.lines.size(); ++i) {
        EXPECT_NEAR(six.lines[i].weigh_out / one.lines[i].weigh_out, 6, 1e-12);
    }
    EXPECT_NEAR(six.dose.salt.best / one.dose.salt.best, 1, 1e-12);
}

TEST(MixSheet, ManyPiecesEachWithItsOwnSheet) {
    MixRequest request;
    request.recipe = recipe_of(coppa);
    request.pieces = {{"A1", Mass::grams(820)}, {"A2", Mass::grams(1180)}};
    request.scale_step = Mass::grams(0.1);
    const auto sheet = make_mix_sheet(request, facts());
    ASSERT_EQ(sheet.pieces.size(), 2U);
    EXPECT_NEAR(sheet.meat.in_grams(), 2000, 1e-9);
    EXPECT_NEAR(sheet.pieces[0].lines[0].weigh_out.in_grams(), 20.5, 1e-9);
    // 1180 x 0.25 % = 2.95 g: the nearest tenths are 2.9 and 3.0, and 3.0 keeps the limit.
    EXPECT_NEAR(sheet.pieces[1].lines[1].weigh_out.in_grams(), 3.0, 1e-9);
    EXPECT_LE(sheet.pieces[1].as_weighed.nitrite.low, sheet.pieces[1].as_weighed.nitrite.best);
}

TEST(MixSheet, RoundingNeverCarriesNitritePastTheLimit) {
    // 156.25 ppm is the limit itself (1/4 oz to 100 lb, 9 CFR 424.21(c)): 2.5 g for 1 kg must
    // not become 3 g on a 1 g scale.
    const std::string at_limit =
        R"({"saltloft_recipe":1,"method":"dry","limits":"us-fsis-comminuted","lines":[
            {"ingredient":"table_salt","amount":"2.5 %"},
            {"ingredient":"cure_no1","amount":"0.25 %","label":{"nitrite":"6.25 %"}}]})";
    const auto sheet = sheet_of(at_limit, Mass::kilograms(1), Mass::grams(1));
    EXPECT_NEAR(sheet.lines[1].weigh_out.in_grams(), 2, 1e-12);
    EXPECT_NEAR(sheet.pieces[0].lines[1].weigh_out.in_grams(), 2, 1e-12);
    EXPECT_NEAR(sheet.lines[0].weigh_out.in_grams(), 25, 1e-12);
    // Where the limit leaves room the nearest step is taken.
    const auto roomy = sheet_of(coppa, Mass::kilograms(1), Mass::grams(1));
    EXPECT_NEAR(roomy.lines[1].weigh_out.in_grams(), 3, 1e-12);
}

TEST(MixSheet, HalfAndFullyAbsorbedLiquidSideBySide) {
    const std::string soy =
        R"({"saltloft_recipe":1,"method":"marinade","lines":[
            {"ingredient":"soy_sauce","amount":"100 mL per 1 kg","label":{"salt":"16 %","density":"1.18"}},
            {"ingredient":"spirit","amount":"20 mL per 1 kg","label":{"alcohol":"50 %"}}]})";
    const auto sheet = sheet_of(soy, Mass::kilograms(2));
    EXPECT_NEAR(sheet.dose.salt.best.in_percent(), 0.1 * 1.18 * 16, 1e-9);
    ASSERT_TRUE(sheet.half_absorbed.has_value());
    EXPECT_NEAR(sheet.half_absorbed->salt.best / sheet.dose.salt.best, 0.5, 1e-12);
    // 20 mL of 50 % spirit: 930.14 kg/m3 and 42.43 % by mass (OIML R 22).
    const double ethanol = 20 * 0.93014 * 0.4243;
    const double taken_up = 100 * 1.18 + 20 * 0.93014;
    EXPECT_NEAR(sheet.dose.alcohol.best.in_percent(), 100 * ethanol / (1000 + taken_up), 0.6)
        << "the catalogue gives soy sauce about 1 % of its own";
    ASSERT_TRUE(sheet.dose.alcohol_of_liquid.has_value());
}

TEST(MixSheet, AWashLeavesOnlyAFilm) {
    const std::string wash =
        R"({"saltloft_recipe":1,"method":"wash","lines":[
            {"ingredient":"vinegar","amount":"200 mL"}]})";
    const auto sheet = sheet_of(wash, Mass::kilograms(1));
    const auto& film = facts().constants.wash_pickup.value;
    EXPECT_LE(sheet.dose.added_water.high, film.high);
    EXPECT_GE(sheet.dose.added_water.low, film.low * 0.9);
    // Never more than was used.
    const auto little = sheet_of(
        R"({"saltloft_recipe":1,"method":"wash","lines":[{"ingredient":"vinegar","amount":"1 g"}]})",
        Mass::kilograms(1));
    EXPECT_LE(little.dose.added_water.high, MassShare::percent(0.1));
}

TEST(MixSheet, SharesOfWaterFormsAgree) {
    // 1 kg meat at 75 % water and 500 g of added water, 5 % salt of each form's whole.
    const auto with = [](const std::string& of) {
        return sheet_of(
            R"({"saltloft_recipe":1,"method":"equilibrium_brine","meat":{"moisture":"75 %"},"lines":[
                {"ingredient":"water","amount":"500 g/kg"},{"ingredient":"table_salt","amount":"5 %","of":")" +
                of + R"("}]})",
            Mass::kilograms(1));
    };
    EXPECT_NEAR(with("meat").lines[1].weigh_out.in_grams(), 50, 1e-9);
    EXPECT_NEAR(with("water").lines[1].weigh_out.in_grams(), 25, 1e-9);
    EXPECT_NEAR(with("meat_and_water").lines[1].weigh_out.in_grams(), 75, 1e-9);
    EXPECT_NEAR(with("total_water").lines[1].weigh_out.in_grams(), 62.5, 1e-9);
    // At rest: 62.5 g of salt in 1250 g of water, wherever it is.
    EXPECT_NEAR(with("total_water").dose.water_phase_salt.best.in_percent(),
                100 * 62.5 / (62.5 + 1250), 1e-9);
}

TEST(MixSheet, SeveralRubsAddUpToTheWhole) {
    const std::string rubs =
        R"({"saltloft_recipe":1,"method":"dry","rubs":[{"after":"0 d","share":"33.3 %"},
            {"after":"3 d","share":"33.3 %"},{"after":"10 d","share":"33.4 %"}],"lines":[
            {"ingredient":"table_salt","amount":"54 g/kg"},
            {"ingredient":"white_sugar","amount":"20 g/kg","rub":0}]})";
    const auto sheet = sheet_of(rubs, Mass::grams(777), Mass::grams(1));
    ASSERT_EQ(sheet.lines[0].rubs.size(), 3U);
    EXPECT_NEAR(
        (sheet.lines[0].rubs[0] + sheet.lines[0].rubs[1] + sheet.lines[0].rubs[2]).in_grams(),
        sheet.lines[0].weigh_out.in_grams(), 1e-9);
    EXPECT_EQ(sheet.lines[1].rubs[0], sheet.lines[1].weigh_out);
    EXPECT_EQ(sheet.lines[1].rubs[2], Mass::grams(0));
}

TEST(MixSheet, FixedAmountsFollowTheMeatTheyWereWrittenFor) {
    const std::string fixed =
        R"({"saltloft_recipe":1,"method":"dry","for_meat":"500 g","lines":[
            {"ingredient":"table_salt","amount":"14 g"}]})";
    EXPECT_NEAR(sheet_of(fixed, Mass::kilograms(1)).lines[0].weigh_out.in_grams(), 28, 1e-9);
    const std::string loose =
        R"({"saltloft_recipe":1,"method":"dry","lines":[{"ingredient":"table_salt","amount":"25 g"}]})";
    const auto sheet = sheet_of(loose, Mass::kilograms(1));
    EXPECT_NEAR(sheet.lines[0].weigh_out.in_grams(), 25, 1e-9);
    EXPECT_NE(find(sheet, "fixed_amount_does_not_scale"), nullptr);
}

TEST(MixSheet, LimitSetsAreCheckedOnTheirOwnTerms) {
    MixRequest request;
    request.recipe = recipe_of(coppa);
    request.pieces = {{"A", Mass::kilograms(1)}};
    request.limits = "eu-raw";
    request.today = core::units::Day::from_date(std::chrono::year(2026) / 3 / 1);
    auto sheet = make_mix_sheet(request, facts());
    // 156.25 mg/kg NaNO2 is 104.2 mg/kg of the ion, above 80.
    ASSERT_NE(find(sheet, "limit_exceeded"), nullptr);
    EXPECT_NEAR(sheet.limits[0].value.best.in_ppm(), 104.2, 0.05);
    EXPECT_NE(find(sheet, "limit_unverified"), nullptr);
    EXPECT_TRUE(sheet.has_stop());

    request.limits = "eu-raw-until-2025-10";
    sheet = make_mix_sheet(request, facts());
    EXPECT_NE(find(sheet, "limit_not_in_force"), nullptr);

    request.limits = "us-fsis-bacon-dry";
    sheet = make_mix_sheet(request, facts());
    ASSERT_NE(find(sheet, "limit_not_permitted"), nullptr) << "nitrate in bacon";
    EXPECT_EQ(find(sheet, "limit_not_permitted")->severity, Severity::stop);
    ASSERT_TRUE(find(sheet, "limit_not_permitted")->source.has_value());
}

TEST(MixSheet, FinishedBasisCountsTheLoss) {
    MixRequest request;
    request.recipe = recipe_of(coppa);
    request.recipe.expected_loss = MassShare::percent(35);
    request.pieces = {{"A", Mass::kilograms(1)}};
    request.limits = "us-home";
    const auto sheet = make_mix_sheet(request, facts());
    // 21 CFR 172.170 speaks of the finished meat: 156.25 / 0.65 = 240 ppm is above 200.
    EXPECT_NEAR(sheet.limits[0].value.best.in_ppm(), 156.25 / 0.65, 1e-6);
    EXPECT_NE(find(sheet, "limit_exceeded"), nullptr);
}

} // namespace
