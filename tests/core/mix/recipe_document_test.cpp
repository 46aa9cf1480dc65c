#include "core/mix/recipe_document.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace {

using namespace core::mix;
using core::base::ErrorCode;
using core::units::Mass;
using core::units::MassShare;
using core::units::Volume;

const char* const full =
    R"({"saltloft_recipe": 1, "name": "Coppa", "method": "dry", "limits": "us-fsis-dry-cured",
        "for_meat": "1 kg", "expected_loss": "35 %", "pump": "10 %", "pickup": "12 %",
        "meat": {"skin": "one_side", "skin_share": "10 %", "moisture": "74 %", "fatty": true},
        "ingredients": [{"id": "user:my_soy", "name": "My soy sauce", "kind": "sauce",
                         "label": {"sodium_per_serving": "879 mg", "serving": "15 mL", "density": "1.16"}}],
        "lines": [{"ingredient": "table_salt", "amount": "2.5 %", "of": "total_water"},
                  {"ingredient": "cure_no2", "amount": "2.5 g/kg", "label": {"nitrite": "6.25 %", "nitrate": "4 %"}},
                  {"ingredient": "user:my_soy", "amount": "100 mL", "held": true},
                  {"ingredient": "spirit", "amount": "2 us_tablespoon per 500 g",
                   "label": {"alcohol": "80 proof US"}, "as": "wash"},
                  {"ingredient": "bay_leaf", "amount": "3 g", "rub": 1, "note": "crushed"}],
        "rubs": [{"after": "0 d", "share": "60 %"}, {"after": "3 d 12 h", "share": "40 %"}],
        "wishes": [{"what": "salt", "at_least": "2.5 %", "at_most": "3 %"}]})";

TEST(RecipeDocument, ReadsEveryForm) {
    const auto recipe = read_recipe(full);
    ASSERT_TRUE(recipe.has_value());
    EXPECT_EQ(recipe->name, "Coppa");
    EXPECT_EQ(recipe->for_meat, Mass::kilograms(1));
    ASSERT_EQ(recipe->lines.size(), 5U);
    EXPECT_EQ(std::get<ShareAmount>(recipe->lines[0].amount).basis, Basis::total_water);
    EXPECT_EQ(std::get<Volume>(std::get<FixedAmount>(recipe->lines[2].amount).portion),
              Volume::millilitres(100));
    const auto& spoons = std::get<PerMeatAmount>(recipe->lines[3].amount);
    EXPECT_EQ(std::get<Spoons>(spoons.portion), (Spoons{2, "us_tablespoon"}));
    EXPECT_EQ(spoons.meat, Mass::grams(500));
    EXPECT_DOUBLE_EQ(recipe->lines[3].label.alcohol->in_percent(), 40);
    EXPECT_TRUE(recipe->lines[3].as_wash);
    EXPECT_EQ(recipe->lines[4].rub, 1);
    EXPECT_DOUBLE_EQ(recipe->rubs[1].after.in_hours(), 84);
}

TEST(RecipeDocument, WrittenAndReadBackIsTheSame) {
    const auto recipe = read_recipe(full);
    ASSERT_TRUE(recipe.has_value());
    const auto again = read_recipe(write_recipe(*recipe));
    ASSERT_TRUE(again.has_value());
    EXPECT_TRUE(*again == *recipe) << write_recipe(*recipe);
    EXPECT_EQ(write_recipe(*again), write_recipe(*recipe));
}

TEST(RecipeDocument, AllFaultsAtOnceEachWithItsPlace) {
    const auto bad = read_recipe(
        R"({"saltloft_recipe": 1, "method": "dryish", "lines": [
            {"ingredient": "table_salt", "amount": 2.5},
            {"ingredient": "table_salt", "amount": "2.5 %", "percnt": 3},
            {"amount": "3 tbsp"},
            {"ingredient": "x", "amount": "1,250 g"}]})");
    ASSERT_FALSE(bad.has_value());
    const auto has = [&](const std::string& code, const std::string& place) {
        return std::any_of(bad.error().begin(), bad.error().end(), [&](const auto& finding) {
            return finding.code == code && finding.place == place &&
                   finding.severity == core::model::Severity::stop;
        });
    };
    EXPECT_TRUE(has("word_unknown", "method"));
    EXPECT_TRUE(has("quantity_unreadable", "lines[0].amount")) << "a bare number has no unit";
    EXPECT_TRUE(has("field_unknown", "lines[1].percnt"));
    EXPECT_TRUE(has("field_missing", "lines[2].ingredient"));
    EXPECT_TRUE(has("quantity_unreadable", "lines[2].amount")) << "a spoon needs a nationality";
    EXPECT_TRUE(has("quantity_unreadable", "lines[3].amount")) << "1,250 may be 1.25";
    EXPECT_EQ(bad.error().size(), 6U);
}

TEST(RecipeDocument, NotJsonAndOtherVersions) {
    EXPECT_EQ(read_recipe("salt 2.5 %").error()[0].code, "recipe_not_json");
    EXPECT_EQ(read_recipe("[]").error()[0].code, "field_wrong_type");
    const auto newer = read_recipe(R"({"saltloft_recipe": 2, "method": "dry", "lines": []})");
    EXPECT_EQ(newer.error()[0].code, "recipe_version");
}

TEST(Amount, TextForms) {
    EXPECT_EQ(*parse_amount("2.5 %"), Amount(ShareAmount{MassShare::percent(2.5), Basis::meat}));
    EXPECT_EQ(*parse_amount("25 g per kg"),
              Amount(ShareAmount{MassShare::grams_per_kilogram(25), Basis::meat}));
    EXPECT_EQ(*parse_amount("40 g"), Amount(FixedAmount{Mass::grams(40)}));
    EXPECT_EQ(*parse_amount("1 oz per 100 lb"),
              Amount(PerMeatAmount{Mass::ounces(1), Mass::pounds(100)}));
    EXPECT_EQ(*parse_amount("1 1/2 us_teaspoon"), Amount(FixedAmount{Spoons{1.5, "us_teaspoon"}}));
    EXPECT_EQ(parse_amount("2 tbsp").error().code, ErrorCode::wrong_kind);
    EXPECT_EQ(parse_amount("2 tbsp").error().detail, "tbsp");
    EXPECT_EQ(parse_amount("").error().code, ErrorCode::empty_input);
    EXPECT_EQ(parse_amount("40").error().code, ErrorCode::unit_missing);
    EXPECT_EQ(parse_amount("40 g per 0 kg").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_amount("40 g per bowl").error().code, ErrorCode::not_a_number);
    EXPECT_EQ(parse_amount("-2 %").error().code, ErrorCode::out_of_range);
}

TEST(Amount, WrittenReadsBack) {
    for (const auto* text : {"2.8 %", "40 g", "100 mL", "2 us_tablespoon", "3 g per 500 g",
                             "1.5 us_teaspoon per 453.59237 g"}) {
        const auto amount = parse_amount(text);
        ASSERT_TRUE(amount.has_value()) << text;
        EXPECT_EQ(to_text(*amount), text);
    }
}

} // namespace
