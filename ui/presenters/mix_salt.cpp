#include "ui/presenters/mix_salt.h"

#include "core/mix/solver.h"
#include "ui/presenters/mix_bench.h"

#include <cmath>

namespace ui::presenters {
namespace {

using core::units::MassShare;

bool is_plain_salt(const std::string& ingredient) {
    const auto* entry = mix_facts().catalogue.find(ingredient);
    return entry != nullptr && entry->kind == core::facts::IngredientKind::salt;
}

} // namespace

std::optional<core::mix::RecipeDocument> with_salt(core::mix::RecipeDocument recipe,
                                                   MassShare total, core::units::Mass meat) {
    if (recipe.method != core::mix::Method::dry) {
        return std::nullopt;
    }
    auto asked = recipe;
    asked.wishes = {{.what = core::mix::Aim::salt, .at_least = total, .at_most = total}};
    for (auto& line : asked.lines) {
        line.held = line.held || !is_plain_salt(line.ingredient);
    }
    const auto solution = core::mix::solve_mix(asked, meat, mix_facts());
    if (!solution || !solution->unmet.empty()) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        if (!asked.lines[i].held) {
            const auto share = MassShare::of(solution->masses[i], meat);
            recipe.lines[i].amount = core::mix::ShareAmount{
                MassShare::percent(std::round(share.in_percent() * 100) / 100),
                core::mix::Basis::meat};
        }
    }
    return recipe;
}

} // namespace ui::presenters
