#include "ui/presenters/mix_salt.h"

#include "core/mix/mix_sheet.h"
#include "ui/presenters/mix_bench.h"

#include <gtest/gtest.h>

using namespace core::mix;
using core::units::Mass;
using core::units::MassShare;
using ui::presenters::with_salt;

namespace {

RecipeDocument coppa() {
    RecipeDocument recipe;
    recipe.name = "Coppa";
    for (const auto& [ingredient, percent] :
         {std::pair{"table_salt", 3.0}, {"cure_no1", 0.25}, {"white_sugar", 0.5}}) {
        Line line;
        line.ingredient = ingredient;
        line.amount = ShareAmount{MassShare::percent(percent), Basis::meat};
        recipe.lines.push_back(line);
    }
    return recipe;
}

double share_of(const Line& line) {
    return std::get<ShareAmount>(line.amount).share.in_percent();
}

} // namespace

// By hand: 0.25 % of a curing salt that is 93.75 % salt brings 0.234 %, so 2.5 % in all leaves
// 2.27 % for the plain salt.
TEST(WithSalt, OnlyThePlainSaltMoves) {
    const auto changed = with_salt(coppa(), MassShare::percent(2.5), Mass::grams(1480));
    ASSERT_TRUE(changed);
    EXPECT_NEAR(share_of(changed->lines[0]), 2.27, 0.006);
    EXPECT_DOUBLE_EQ(share_of(changed->lines[1]), 0.25) << "a taste never moves the curing salt";
    EXPECT_DOUBLE_EQ(share_of(changed->lines[2]), 0.5);
    EXPECT_TRUE(changed->wishes.empty());
    const auto sheet =
        make_mix_sheet({.recipe = *changed, .pieces = {{.code = "P1", .mass = Mass::grams(1480)}}},
                       ui::presenters::mix_facts());
    EXPECT_NEAR(sheet.dose.salt.best.in_percent(), 2.5, 0.01);
}

TEST(WithSalt, LeavesAloneWhatItCannotKeepTrue) {
    auto held = coppa();
    held.lines[0].held = true;
    EXPECT_FALSE(with_salt(held, MassShare::percent(2.5), Mass::kilograms(1)));
    auto box = coppa();
    box.method = Method::box;
    EXPECT_FALSE(with_salt(box, MassShare::percent(2.5), Mass::kilograms(1)));
    EXPECT_FALSE(with_salt(coppa(), MassShare::percent(0.1), Mass::kilograms(1)))
        << "the curing salt alone brings more";
}
