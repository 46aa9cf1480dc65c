// Forty-odd things that people get wrong, each with the finding it must raise. Doses and slips
// are those of the practice notes, sections 0, 2d, 4a and 7 (common practice, no source) and of
// the limit texts named in resources/facts/limits.json.
#include "core/mix/mix_sheet.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <optional>
#include <set>
#include <string>

namespace wrong_inputs_test {
namespace {

using namespace core::mix;
using core::facts::Facts;
using core::model::Severity;
using core::units::Mass;

const Facts& facts() {
    static const Facts all = core::facts::built_in_facts();
    return all;
}

struct WrongInput {
    const char* what;
    std::string json;
    const char* code;
    Severity severity;
    double meat_grams = 1000;
    std::optional<double> scale_step = {};
};

std::string doc(const std::string& rest) {
    return R"({"saltloft_recipe":1,)" + rest + "}";
}
std::string dry(const std::string& lines, const std::string& more = {}) {
    return doc(R"("method":"dry",)" + more + R"("lines":[)" + lines + "]");
}
const std::string salt = R"({"ingredient":"table_salt","amount":"2.5 %"})";
const std::string water = R"({"ingredient":"water","amount":"1 L"})";

std::vector<WrongInput> wrong_inputs() {
    constexpr auto stop = Severity::stop;
    constexpr auto caution = Severity::caution;
    return {
        // --- the document itself
        {"not JSON", "salt 25 g", "recipe_not_json", stop},
        {"a version from the future", R"({"saltloft_recipe":9,"method":"dry","lines":[]})",
         "recipe_version", stop},
        {"a misspelt field", dry(R"({"ingredient":"table_salt","amout":"2.5 %"})"), "field_unknown",
         stop},
        {"no amount", dry(R"({"ingredient":"table_salt"})"), "field_missing", stop},
        {"a number where a text belongs", dry(R"({"ingredient":7,"amount":"2 %"})"),
         "field_wrong_type", stop},
        {"an unknown method", doc(R"("method":"sous vide","lines":[])"), "word_unknown", stop},
        {"a bare number", dry(R"({"ingredient":"table_salt","amount":2.5})"), "quantity_unreadable",
         stop},
        {"a comma that may be a thousand", dry(R"({"ingredient":"table_salt","amount":"1,250 g"})"),
         "quantity_unreadable", stop},
        {"a spoon without a country", dry(R"({"ingredient":"table_salt","amount":"2 tbsp"})"),
         "quantity_unreadable", stop},
        {"proof without a country",
         dry(salt + R"(,{"ingredient":"spirit","amount":"20 mL","label":{"alcohol":"80 proof"}})"),
         "quantity_unreadable", stop},
        {"a negative amount", dry(R"({"ingredient":"table_salt","amount":"-2 %"})"),
         "quantity_unreadable", stop},
        // --- names, labels, forms
        {"no lines", dry(""), "no_lines", stop},
        {"an ingredient nobody knows", dry(R"({"ingredient":"pink_stuff","amount":"2 %"})"),
         "ingredient_unknown", stop},
        {"salt entered twice", dry(salt + "," + salt), "ingredient_twice", caution},
        {"an own ingredient described twice",
         dry(salt,
             R"("ingredients":[{"id":"user:a","name":"A","kind":"spice"},{"id":"user:a","name":"B","kind":"spice"}],)"),
         "own_ingredient_twice", stop},
        {"a curing salt of unknown strength",
         dry(salt + R"(,{"ingredient":"curing_salt_labelled","amount":"0.25 %"})"),
         "strength_unknown", stop},
        {"an own curing salt without its strength",
         dry(salt + R"(,{"ingredient":"user:pink","amount":"0.25 %"})",
             R"("ingredients":[{"id":"user:pink","name":"Pink salt","kind":"curing_salt"}],)"),
         "strength_unknown", stop},
        {"strength typed as a proportion (0.0625 % for 6.25 %)",
         dry(salt +
             R"(,{"ingredient":"cure_no1","amount":"0.25 %","label":{"nitrite":"0.0625 %"}})"),
         "strength_as_proportion", stop},
        {"strength above anything sold",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %","label":{"nitrite":"62.5 %"}})"),
         "strength_out_of_range", stop},
        {"curing salt chosen by name only",
         dry(salt + R"(,{"ingredient":"cure_no2","amount":"0.25 %"})"), "cure_strength_assumed",
         caution},
        {"a spirit without its strength",
         dry(salt + R"(,{"ingredient":"spirit","amount":"20 mL"})"), "alcohol_unknown", stop},
        {"stronger than distilling goes",
         dry(salt + R"(,{"ingredient":"spirit","amount":"20 mL","label":{"alcohol":"99 %"}})"),
         "alcohol_too_strong", stop},
        {"US proof typed as percent",
         dry(salt + R"(,{"ingredient":"spirit","amount":"20 mL","label":{"alcohol":"80 %"}})"),
         "alcohol_may_be_proof", caution},
        {"wine of spirit's strength",
         dry(salt + R"(,{"ingredient":"wine","amount":"20 mL","label":{"alcohol":"40 %"}})"),
         "wine_too_strong", caution},
        {"milligrams of sodium typed as grams",
         dry(salt + R"(,{"ingredient":"soy_sauce","amount":"20 g","label":{"sodium":"54.9 %"}})"),
         "sodium_impossible", stop},
        {"soy sauce without its label",
         dry(salt + R"(,{"ingredient":"soy_sauce","amount":"20 g"})"), "sodium_assumed", caution},
        {"a label that adds up to more than the whole",
         dry(salt +
             R"(,{"ingredient":"soy_sauce","amount":"20 g","label":{"salt":"20 %","sugar":"30 %","water":"70 %"}})"),
         "composition_over_whole", stop},
        {"a density ten times off",
         dry(salt +
             R"(,{"ingredient":"soy_sauce","amount":"20 mL","label":{"salt":"16 %","density":"11.8"}})"),
         "density_implausible", stop},
        {"a volume of something without a density",
         dry(R"({"ingredient":"rock_salt","amount":"100 mL"})"), "density_missing", stop},
        {"a measure nobody knows",
         dry(R"({"ingredient":"table_salt","amount":"2 grand_mothers_spoon"})"), "measure_unknown",
         stop},
        {"percent of water without water",
         dry(R"({"ingredient":"table_salt","amount":"5 %","of":"water"})"), "water_missing", stop},
        {"water as a percent of water",
         doc(R"("method":"equilibrium_brine","lines":[{"ingredient":"water","amount":"50 %","of":"total_water"},)" +
             salt + "]"),
         "basis_circular", stop},
        {"nothing of it", dry(R"({"ingredient":"table_salt","amount":"0 %"})"), "amount_zero",
         stop},
        // --- methods
        {"a pump without its percentage",
         doc(R"("method":"injected","lines":[)" + water + "," + salt + "]"), "pump_missing", stop},
        {"a pump typed as a proportion (0.1 % for 10 %)",
         doc(R"("method":"injected","pump":"0.1 %","lines":[)" + water + "," + salt + "]"),
         "uptake_as_proportion", stop},
        {"a pump past what meat holds",
         doc(R"("method":"injected","pump":"100 %","lines":[)" + water + "," + salt + "]"),
         "uptake_implausible", stop},
        {"an immersion without its pick-up",
         doc(R"("method":"immersion_pickup","lines":[)" + water + "," + salt + "]"),
         "pickup_missing", stop},
        {"a brine without a liquid", doc(R"("method":"equilibrium_brine","lines":[)" + salt + "]"),
         "water_missing", stop},
        {"excess salt taken for a dose", doc(R"("method":"box","lines":[)" + salt + "]"),
         "uptake_unknown", caution},
        {"rubs that do not add up",
         dry(salt, R"("rubs":[{"after":"0 d","share":"50 %"},{"after":"3 d","share":"30 %"}],)"),
         "rubs_not_whole", stop},
        {"rubs out of order",
         dry(salt, R"("rubs":[{"after":"3 d","share":"50 %"},{"after":"0 d","share":"50 %"}],)"),
         "rubs_out_of_order", stop},
        {"a rub that is not there", dry(R"({"ingredient":"table_salt","amount":"2.5 %","rub":4})"),
         "rub_unknown", stop},
        {"a loss no meat has", dry(salt, R"("expected_loss":"95 %",)"), "loss_implausible", stop},
        // --- doses
        {"25 % salt for 2.5 %", dry(R"({"ingredient":"table_salt","amount":"25 %"})"),
         "tenfold_high", stop},
        {"0.25 % salt for 2.5 %", dry(R"({"ingredient":"table_salt","amount":"0.25 %"})"),
         "tenfold_low", stop},
        {"0.025 % salt for 2.5 % (a proportion)",
         dry(R"({"ingredient":"table_salt","amount":"0.025 %"})"), "share_as_proportion", stop},
        {"3.2 % of strong cure", dry(R"({"ingredient":"cure_no1","amount":"3.2 %"})"),
         "cure_taken_for_salt", stop},
        {"2.75 % of strong cure taken for nitrite salt",
         dry(R"({"ingredient":"cure_no1","amount":"2.75 %"})"), "cure_taken_for_salt", stop},
        {"ten times the cure", dry(salt + R"(,{"ingredient":"cure_no1","amount":"1.2 %"})"),
         "tenfold_high", stop},
        {"a tenth of the cure", dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.025 %"})"),
         "tenfold_low", stop},
        {"0.25 % of a 0.6 % salt: 15 ppm",
         dry(salt + R"(,{"ingredient":"nitrite_salt_06","amount":"0.25 %"})"),
         "weak_cure_taken_for_strong", caution},
        {"2 tablespoons of cure on 11 lb where teaspoons were meant",
         dry(R"({"ingredient":"table_salt","amount":"2.5 %"},{"ingredient":"cure_no1","amount":"2 us_tablespoon"})"),
         "spoon_swap", stop, 11 * 453.59237},
        {"6 tablespoons of salt where teaspoons were meant",
         dry(R"({"ingredient":"table_salt","amount":"6 us_tablespoon"})"), "spoon_swap", stop},
        {"cure by the spoon",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"3/4 us_teaspoon"})"), "cure_by_spoon",
         caution, 1.58 * 453.59237},
        {"undiluted nitrite at a cure's amount",
         dry(salt + R"(,{"ingredient":"sodium_nitrite","amount":"0.25 %"})"),
         "nitrite_above_any_limit", stop},
        {"undiluted saltpetre", dry(salt + R"(,{"ingredient":"saltpetre","amount":"0.1 %"})"),
         "undiluted_cure", caution},
        {"saltpetre at salt's amount", dry(salt + R"(,{"ingredient":"saltpetre","amount":"1 %"})"),
         "nitrate_above_any_limit", stop},
        {"hardly any salt", dry(R"({"ingredient":"table_salt","amount":"1.2 %"})"), "salt_low",
         caution},
        {"more salt than is eaten", dry(R"({"ingredient":"table_salt","amount":"8 %"})"),
         "salt_high", caution},
        {"sugar in place of salt", dry(salt + R"(,{"ingredient":"white_sugar","amount":"25 %"})"),
         "sugar_high", caution},
        {"grams of accelerator for milligrams",
         dry(salt + R"(,{"ingredient":"sodium_ascorbate","amount":"0.55 %"})"), "accelerator_high",
         caution},
        // --- limits
        {"a limit set nobody knows", dry(salt, R"("limits":"us-fsis-hams",)"), "limit_set_unknown",
         stop},
        {"nitrate in bacon",
         dry(salt + R"(,{"ingredient":"cure_no2","amount":"0.25 %"})",
             R"("limits":"us-fsis-bacon-dry",)"),
         "limit_not_permitted", stop},
        {"above 200 ppm in dry bacon",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.4 %"})",
             R"("limits":"us-fsis-bacon-dry",)"),
         "limit_exceeded", stop},
        {"a US dose under the EU's new limit",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %"})", R"("limits":"eu-raw",)"),
         "limit_exceeded", stop},
        {"skin-on belly at 0.3 % counted on the whole piece",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.3 %"})",
             R"("limits":"us-fsis-bacon-dry","meat":{"skin":"one_side"},)"),
         "limit_exceeded", stop},
        {"less nitrite than Canada calls curing",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.1 %"})", R"("limits":"ca-cured",)"),
         "limit_minimum", caution},
        {"a pumping limit on a dry rub",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.15 %"})",
             R"("limits":"us-fsis-bacon-pumped",)"),
         "limit_other_route", caution},
        {"a home limit on finished meat without an expected loss",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %"})", R"("limits":"us-home",)"),
         "limit_needs_loss", caution},
        {"cure without a limit set", dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %"})"),
         "no_limit_set", caution},
        // --- the meat and the scale
        {"no meat weight", dry(salt), "meat_weight_missing", stop, 0},
        {"kilograms typed as grams", dry(salt), "meat_weight_small", caution, 1.5},
        {"grams typed as kilograms", dry(salt), "meat_weight_large", caution, 1.5e6},
        {"a scale too coarse for the cure",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %"})"), "scale_too_coarse", caution,
         500, 1.0},
        {"a scale that shows nothing of the cure",
         dry(salt + R"(,{"ingredient":"cure_no1","amount":"0.25 %"})"), "scale_rounds_to_nothing",
         stop, 150, 1.0},
    };
}

core::model::Findings findings_of(const WrongInput& input) {
    const auto recipe = read_recipe(input.json);
    if (!recipe) {
        return recipe.error();
    }
    MixRequest request;
    request.recipe = *recipe;
    request.pieces = {{"A", Mass::grams(input.meat_grams)}};
    if (input.scale_step) {
        request.scale_step = Mass::grams(*input.scale_step);
    }
    return make_mix_sheet(request, facts()).findings;
}

TEST(WrongInputs, EachRaisesItsFinding) {
    const auto inputs = wrong_inputs();
    EXPECT_GE(inputs.size(), 40U);
    for (const auto& input : inputs) {
        const auto findings = findings_of(input);
        const auto it = std::find_if(findings.begin(), findings.end(), [&](const auto& finding) {
            return finding.code == input.code;
        });
        std::string seen;
        for (const auto& finding : findings) {
            seen += finding.code + " at " + finding.place + "; ";
        }
        ASSERT_NE(it, findings.end()) << input.what << ": no " << input.code << " in: " << seen;
        EXPECT_EQ(it->severity, input.severity) << input.what;
        // Each says where, but for what has no place in the document.
        EXPECT_TRUE(!it->place.empty() || it->code == "recipe_not_json") << input.what;
    }
}

// The other side: ordinary recipes are left in peace, so that a stop keeps its meaning.
TEST(WrongInputs, OrdinaryRecipesHaveNoStop) {
    const std::string cure2 =
        R"({"ingredient":"cure_no2","amount":"2.5 g/kg","label":{"nitrite":"6.25 %","nitrate":"4 %"}})";
    const std::string ordinary[] = {
        dry(salt + "," + cure2, R"("limits":"us-fsis-dry-cured",)"),
        // American country ham: 54 g salt, 10 g cure No. 2, 20 g sugar to the kilogram.
        dry(R"({"ingredient":"table_salt","amount":"54 g/kg"},{"ingredient":"cure_no2","amount":"10 g/kg","label":{"nitrite":"6.25 %","nitrate":"4 %"}},{"ingredient":"white_sugar","amount":"20 g/kg"})",
            R"("limits":"us-fsis-dry-cured",)"),
        // German nitrite salt as the whole salt, 30 to 50 g/kg.
        dry(R"({"ingredient":"nitrite_salt_de","amount":"35 g/kg"})"),
        // Bacon at 1.75 % salt, 0.25 % No. 1, 1 % sugar.
        dry(R"({"ingredient":"table_salt","amount":"1.75 %"},{"ingredient":"cure_no1","amount":"0.25 %"},{"ingredient":"white_sugar","amount":"1 %"})",
            R"("limits":"us-fsis-bacon-dry",)"),
        // 18 g of salt to the jin of belly, with soy sauce and spirit.
        dry(R"({"ingredient":"table_salt","amount":"10 g per 500 g"},{"ingredient":"soy_sauce","amount":"30 mL per 500 g","label":{"salt":"16 %"}},{"ingredient":"spirit","amount":"10 mL per 500 g","label":{"alcohol":"52 %"}})"),
        doc(R"("method":"equilibrium_brine","lines":[{"ingredient":"water","amount":"500 g/kg"},{"ingredient":"table_salt","amount":"2.5 %","of":"meat_and_water"},{"ingredient":"cure_no1","amount":"0.25 %","of":"meat_and_water"}])"),
    };
    for (const auto& json : ordinary) {
        const auto recipe = read_recipe(json);
        ASSERT_TRUE(recipe.has_value()) << json;
        MixRequest request;
        request.recipe = *recipe;
        request.pieces = {{"A", Mass::grams(2000)}};
        request.scale_step = Mass::grams(0.1);
        for (const auto& finding : make_mix_sheet(request, facts()).findings) {
            EXPECT_NE(finding.severity, Severity::stop)
                << finding.code << " at " << finding.place << " in " << json;
        }
    }
}

} // namespace

} // namespace wrong_inputs_test
