#pragma once

#include "core/model/ids.h"
#include "core/units/mass.h"
#include "core/units/time.h"

#include <optional>
#include <string>

namespace core::model {

/// A recipe as kept in the book: a named line of versions, each never changed once made. The
/// content of a version is the recipe document (JSON, see core/mix/recipe_document.h); the book
/// keeps it byte for byte "as used".
struct Recipe {
    RecipeId id;
    std::string name;
    bool archived = false;
};

struct RecipeVersion {
    RecipeVersionId id;
    RecipeId recipe;
    int number = 1;
    units::Instant made_at;
    std::string document; ///< JSON
    std::string why;
};

/// A thing bought to go into a cure, and a lot of it (one back).
struct Ingredient {
    IngredientId id;
    std::string catalogue_id; ///< entry of core/facts, or "user:..." for a label the user typed
    std::string name;
    std::string composition; ///< JSON of the user's own label; empty for catalogue entries
};

struct Lot {
    LotId id;
    IngredientId ingredient;
    std::string code;
    std::string supplier;
    std::string bought_on; ///< ISO date, may be empty
};

/// What really went into a batch (or one piece of it): planned against weighed, and from which lot.
struct IngredientUse {
    IngredientUseId id;
    BatchId batch;
    std::optional<PieceId> piece; ///< absent: for the batch as a whole
    std::string ingredient;       ///< the line's id in the recipe document
    std::string name;             ///< as printed on the mix sheet
    std::optional<LotId> lot;
    std::optional<units::Mass> planned;
    std::optional<units::Mass> weighed;
};

} // namespace core::model
