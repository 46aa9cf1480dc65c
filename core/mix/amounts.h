#pragma once

#include "core/facts/facts.h"
#include "core/mix/dose.h"
#include "core/mix/recipe_document.h"
#include "core/model/finding.h"

#include <vector>

namespace core::mix {

/// What the recipe's lines are, before any meat is on the table: it depends on the recipe only
/// and is reused while the meat weight is typed.
struct ResolvedRecipe {
    std::vector<ResolvedIngredient> ingredients; ///< one a line, in order; unknown ones are empty
    model::Findings findings;                    ///< of labels and names
};

/// Looks the lines' ingredients up and applies the labels. Findings: ingredient_unknown,
/// ingredient_twice, own_ingredient_twice, those of resolve().
ResolvedRecipe resolve_recipe(const RecipeDocument& recipe, const facts::Facts& facts);

/// Bounds of the raw meat's water: the recipe's own figure, else the catalogue's.
ShareInterval meat_moisture(const Meat& meat, const facts::Constants& constants);

/// The weight of each line for so much meat; a line that cannot be weighed is zero and has a
/// finding: density_missing, measure_unknown, water_missing, basis_circular.
std::vector<MassInterval> line_masses(const RecipeDocument& recipe, const ResolvedRecipe& resolved,
                                      units::Mass meat, const facts::Facts& facts,
                                      model::Findings& findings);

} // namespace core::mix
