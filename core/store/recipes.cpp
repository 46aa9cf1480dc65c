#include "core/store/recipes.h"

#include "core/store/row_table.h"

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

template <>
struct Table<Recipe> {
    static constexpr std::string_view name = "recipe";
    static Recipe blank() { return {}; }
    template <class V>
    static void visit(V& v, Recipe& r) {
        v("name", r.name);
        v("archived", r.archived);
    }
};

template <>
struct Table<RecipeVersion> {
    static constexpr std::string_view name = "recipe_version";
    static RecipeVersion blank() { return {.made_at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, RecipeVersion& r) {
        v("recipe_id", r.recipe);
        v("number", r.number);
        v("made_at_s", r.made_at);
        v("document_json", r.document);
        v("why", r.why);
    }
};

template <>
struct Table<Ingredient> {
    static constexpr std::string_view name = "ingredient";
    static Ingredient blank() { return {}; }
    template <class V>
    static void visit(V& v, Ingredient& i) {
        v("catalogue_id", i.catalogue_id);
        v("name", i.name);
        v("composition_json", i.composition);
    }
};

template <>
struct Table<Lot> {
    static constexpr std::string_view name = "lot";
    static Lot blank() { return {}; }
    template <class V>
    static void visit(V& v, Lot& l) {
        v("ingredient_id", l.ingredient);
        v("code", l.code);
        v("supplier", l.supplier);
        v("bought_on", l.bought_on);
    }
};

template <>
struct Table<IngredientUse> {
    static constexpr std::string_view name = "ingredient_use";
    static IngredientUse blank() { return {}; }
    template <class V>
    static void visit(V& v, IngredientUse& u) {
        v("batch_id", u.batch);
        v("piece_id", u.piece);
        v("ingredient", u.ingredient);
        v("name", u.name);
        v("lot_id", u.lot);
        v("planned_mg", u.planned);
        v("weighed_mg", u.weighed);
    }
};

SALTLOFT_STORE_ENTRY(Recipe)
SALTLOFT_STORE_ENTRY(RecipeVersion)
SALTLOFT_STORE_ENTRY(Ingredient)
SALTLOFT_STORE_ENTRY(Lot)
SALTLOFT_STORE_ENTRY(IngredientUse)

std::vector<Recipe> recipes(Connection& book, bool with_archived) {
    return select<Recipe>(book, with_archived ? "ORDER BY archived, name, id"
                                              : "WHERE archived = 0 ORDER BY name, id");
}

std::vector<RecipeVersion> recipe_versions(Connection& book, RecipeId recipe) {
    return select<RecipeVersion>(book, "WHERE recipe_id = ? ORDER BY number DESC", recipe);
}

int next_version_number(Connection& book, RecipeId recipe) {
    const auto newest =
        select<RecipeVersion>(book, "WHERE recipe_id = ? ORDER BY number DESC LIMIT 1", recipe);
    return newest.empty() ? 1 : newest.front().number + 1;
}

std::vector<Ingredient> ingredients(Connection& book) {
    return select<Ingredient>(book, "ORDER BY name, id");
}
std::vector<Lot> lots(Connection& book) {
    return select<Lot>(book, "ORDER BY id DESC");
}

std::vector<IngredientUse> ingredient_uses(Connection& book, BatchId batch) {
    return select<IngredientUse>(book, "WHERE batch_id = ? ORDER BY id", batch);
}

} // namespace core::store
