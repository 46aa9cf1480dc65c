#pragma once

#include "core/model/recipe.h"
#include "core/store/entries.h"

#include <vector>

/// Recipes with their versions, ingredients and lots. All throw (see fault.h).
namespace core::store {

std::vector<model::Recipe> recipes(Connection& book, bool with_archived); ///< by name
std::vector<model::RecipeVersion> recipe_versions(Connection& book,
                                                  model::RecipeId recipe); ///< newest first
/// The number the recipe's next version gets.
int next_version_number(Connection& book, model::RecipeId recipe);
std::vector<model::Ingredient> ingredients(Connection& book); ///< by name
std::vector<model::Lot> lots(Connection& book);               ///< newest first
std::vector<model::IngredientUse> ingredient_uses(Connection& book, model::BatchId batch);

} // namespace core::store
