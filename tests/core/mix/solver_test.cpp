#include "core/mix/mix_sheet.h"
#include "core/mix/solver.h"

#include <gtest/gtest.h>

namespace solver_test {
namespace {

using namespace core::mix;
using core::base::ErrorCode;
using core::facts::Facts;
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

// "I have 100 mL of this sauce" on 1 kg: 100 mL x 1.18 g/mL x 16 % = 18.88 g of salt are there,
// so 27.5 - 18.88 = 8.62 g are missing, by hand.
TEST(Solver, HoldsTheSauceAndFindsTheSalt) {
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"marinade","lines":[
            {"ingredient":"soy_sauce","amount":"100 mL","held":true,"label":{"salt":"16 %","density":"1.18"}},
            {"ingredient":"table_salt","amount":"1 %"}],
            "wishes":[{"what":"salt","at_least":"2.75 %","at_most":"2.75 %"}]})");
    const auto solution = solve_mix(recipe, Mass::kilograms(1), facts());
    ASSERT_TRUE(solution.has_value());
    EXPECT_TRUE(solution->unmet.empty());
    EXPECT_NEAR(solution->masses[0].in_grams(), 118, 1e-6);
    EXPECT_NEAR(solution->masses[1].in_grams(), 27.5 - 18.88, 1e-6);
    // The rewritten recipe gives that dose on any weight of meat but the held bottle.
    MixRequest request;
    request.recipe = solution->recipe;
    request.pieces = {{"A", Mass::kilograms(1)}};
    // The second pass may give up a billionth of a wish to stay nearer to what is written.
    EXPECT_NEAR(make_mix_sheet(request, facts()).dose.salt.best.in_percent(), 2.75, 1e-7);
}

TEST(Solver, SaltAndNitriteTogetherCountTheSaltInTheCureOnce) {
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"dry","lines":[
            {"ingredient":"table_salt","amount":"3 %"},{"ingredient":"cure_no1","amount":"0.1 %"}],
            "wishes":[{"what":"salt","at_least":"2.5 %","at_most":"2.5 %"},
                      {"what":"nitrite","at_least":"150 ppm","at_most":"150 ppm"}]})");
    const auto solution = solve_mix(recipe, Mass::kilograms(2), facts());
    ASSERT_TRUE(solution.has_value());
    EXPECT_TRUE(solution->unmet.empty());
    // By hand: cure = 150 ppm / 6.25 % = 2.4 g/kg; salt = 25 - 2.4 x 0.9375 = 22.75 g/kg.
    EXPECT_NEAR(solution->masses[1].in_grams(), 4.8, 1e-6);
    EXPECT_NEAR(solution->masses[0].in_grams(), 45.5, 1e-6);
}

TEST(Solver, NamesTheWishThatCannotBeMetAndByHowMuch) {
    // 300 mL of sauce bring 300 x 1.18 x 16 % = 56.64 g of salt to 1 kg: at most 3 % cannot be.
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"marinade","lines":[
            {"ingredient":"soy_sauce","amount":"300 mL","held":true,"label":{"salt":"16 %","density":"1.18"}},
            {"ingredient":"white_sugar","amount":"1 %"}],
            "wishes":[{"what":"sugar","at_least":"2 %"},{"what":"salt","at_most":"3 %"}]})");
    const auto solution = solve_mix(recipe, Mass::kilograms(1), facts());
    ASSERT_TRUE(solution.has_value());
    ASSERT_EQ(solution->unmet.size(), 1U);
    const auto& unmet = solution->unmet[0];
    EXPECT_EQ(unmet.wish, 1U);
    EXPECT_FALSE(unmet.at_least);
    EXPECT_NEAR(unmet.got.in_percent(), 5.664, 1e-6);
    EXPECT_NEAR(unmet.by().in_percent(), 2.664, 1e-6);
    const auto findings = findings_of(*solution);
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].code, "wish_unmet");
    EXPECT_EQ(findings[0].place, "wishes[1]");
}

TEST(Solver, ALawsMaximumGoesBeforeAWish) {
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"dry","lines":[
            {"ingredient":"table_salt","amount":"2.5 %"},{"ingredient":"cure_no1","amount":"0.25 %"}],
            "wishes":[{"what":"nitrite","at_least":"400 ppm"}]})");
    const auto* limits = facts().limit_sets.find("us-fsis-bacon-dry");
    const auto solution = solve_mix(recipe, Mass::kilograms(1), facts(), limits);
    ASSERT_TRUE(solution.has_value());
    ASSERT_EQ(solution->unmet.size(), 1U);
    EXPECT_FALSE(solution->unmet[0].of_limit);
    EXPECT_NEAR(solution->unmet[0].got.in_ppm(), 200, 0.001) << "9 CFR 424.22(b), dry bacon";
    EXPECT_NEAR(solution->unmet[0].by().in_ppm(), 200, 0.001);
}

// Canada, Meat Inspection Regulations as quoted in resources/facts/limits.json (ca-cured): at most
// 200 ppm of nitrite and nitrate in any combination. Asked for 150 of each, the sum is held.
TEST(Solver, AMaximumForNitriteAndNitrateTogetherIsHeldForTheirSum) {
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"dry","lines":[
            {"ingredient":"table_salt","amount":"2.5 %"},
            {"ingredient":"cure_no2","amount":"0.25 %","label":{"nitrite":"6.25 %","nitrate":"4 %"}}],
            "wishes":[{"what":"nitrite","at_least":"150 ppm"},{"what":"nitrate","at_least":"150 ppm"}]})");
    const auto* limits = facts().limit_sets.find("ca-cured");
    ASSERT_NE(limits, nullptr);
    const auto free = solve_mix(recipe, Mass::kilograms(1), facts());
    ASSERT_TRUE(free.has_value());
    EXPECT_TRUE(free->unmet.empty());
    EXPECT_GT(free->masses[1].in_grams(), 3.7) << "150 ppm of nitrate at 4 % take 3.75 g";

    const auto held = solve_mix(recipe, Mass::kilograms(1), facts(), limits);
    ASSERT_TRUE(held.has_value());
    // 200 ppm at 6.25 % + 4 % in one kilogram: 0.2 g / 0.1025.
    EXPECT_NEAR(held->masses[1].in_grams(), 0.2 / 0.1025, 1e-4);
    EXPECT_FALSE(held->unmet.empty());
    for (const auto& unmet : held->unmet) {
        EXPECT_FALSE(unmet.of_limit);
    }
}

TEST(Solver, WorksInAPumpedPickle) {
    const auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"injected","pump":"10 %","lines":[
            {"ingredient":"water","amount":"1 L","held":true},
            {"ingredient":"table_salt","amount":"100 g"},{"ingredient":"cure_no1","amount":"10 g"}],
            "wishes":[{"what":"salt","at_least":"2 %","at_most":"2 %"},
                      {"what":"nitrite","at_least":"120 ppm","at_most":"120 ppm"}]})");
    const auto solution = solve_mix(recipe, Mass::kilograms(5), facts());
    ASSERT_TRUE(solution.has_value());
    EXPECT_TRUE(solution->unmet.empty());
    // By hand: the pickle is 20 % salt and 0.12 % nitrite: cure 1.92 %, salt 18.2 %.
    const double pickle =
        (solution->masses[0] + solution->masses[1] + solution->masses[2]).in_grams();
    EXPECT_NEAR(solution->masses[2].in_grams() / pickle, 0.0192, 1e-8);
    EXPECT_NEAR(solution->masses[1].in_grams() / pickle, 0.20 - 0.0192 * 0.9375, 1e-8);
    EXPECT_NEAR(solution->masses[0].in_grams(), 998.2, 1e-6);
}

TEST(Solver, FaultsAreNamed) {
    auto recipe = recipe_of(
        R"({"saltloft_recipe":1,"method":"dry","lines":[{"ingredient":"table_salt","amount":"2 %"}]})");
    EXPECT_EQ(solve_mix(recipe, Mass::kilograms(1), facts()).error().code,
              ErrorCode::no_such_entry);
    recipe.wishes.push_back({Aim::salt, MassShare::percent(2), {}});
    recipe.lines.push_back({});
    recipe.lines.back().ingredient = "curing_salt_labelled";
    recipe.lines.back().amount = ShareAmount{MassShare::percent(0.25), Basis::meat};
    const auto unknown = solve_mix(recipe, Mass::kilograms(1), facts());
    ASSERT_FALSE(unknown.has_value());
    EXPECT_EQ(unknown.error().code, ErrorCode::not_allowed);
    EXPECT_EQ(unknown.error().detail, "strength_unknown");
}

} // namespace

} // namespace solver_test
