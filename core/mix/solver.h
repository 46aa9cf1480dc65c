#pragma once

#include "core/base/result.h"
#include "core/facts/facts.h"
#include "core/mix/recipe_document.h"
#include "core/model/finding.h"
#include "core/units/mass.h"

#include <vector>

/// "I have 100 mL of this sauce and want 2.75 % salt": holds what is held, finds the rest.
namespace core::mix {

/// A wish that no amounts can meet together with the others, and by how much.
struct UnmetWish {
    std::size_t wish = 0; ///< index into the recipe's wishes; `limit` where a law's maximum broke
    bool of_limit = false;
    Aim what{};
    bool at_least = true; ///< else at_most
    units::MassShare asked = units::MassShare::fraction(0);
    units::MassShare got = units::MassShare::fraction(0);
    [[nodiscard]] units::MassShare by() const { return at_least ? asked - got : got - asked; }
};

struct Solution {
    std::vector<units::Mass> masses; ///< a line each, for the meat that was given
    std::vector<UnmetWish> unmet;    ///< empty where every wish is met
    /// The recipe with the free lines that changed rewritten in g/kg of meat.
    RecipeDocument recipe;
};

/// Meets the recipe's wishes by changing the lines that are not held, none below zero, staying
/// as near to what is written as that allows. Where not all can be met the shortfalls are as
/// small as they can be together, each counted as a share of what was asked; the maximum that
/// `limit_set` puts on nitrite, nitrate or their sum goes before any wish. Uses best values.
/// Faults: not_allowed (a line's composition or weight is unknown; detail: the line), no_such_entry
/// (no wishes), no_solution (only through held lines that contradict each other), no_convergence.
base::Result<Solution> solve_mix(const RecipeDocument& recipe, units::Mass meat,
                                 const facts::Facts& facts,
                                 const facts::LimitSet* limit_set = nullptr);

/// The unmet wishes as findings: wish_unmet (caution), limit_unmet (stop), with values what,
/// asked, got, by.
model::Findings findings_of(const Solution& solution);

} // namespace core::mix
