#include "core/actions/applying.h"
#include "core/store/notes_and_stock.h"
#include "core/store/people_and_places.h"
#include "core/store/recipes.h"

namespace core::actions {

using model::EntryKind;

void apply(Applying& a, const AddPerson& c) {
    a.add(EntryKind::person, c.person);
    a.about(c.person.name);
}
void apply(Applying& a, const ChangePerson& c) {
    store::update(a.book, c.person);
    a.about(c.person.name);
}

namespace {
void require_free_chamber_name(Applying& a, const model::Chamber& chamber) {
    for (const model::Chamber& other : store::chambers(a.book)) {
        if (other.name == chamber.name && other.id != chamber.id) {
            store::refuse(base::ErrorCode::conflict, "name_taken", chamber.name);
        }
    }
}
} // namespace

void apply(Applying& a, const AddChamber& c) {
    require_free_chamber_name(a, c.chamber);
    a.add(EntryKind::chamber, c.chamber);
    a.about(c.chamber.name);
}
void apply(Applying& a, const ChangeChamber& c) {
    require_free_chamber_name(a, c.chamber);
    store::update(a.book, c.chamber);
    a.about(c.chamber.name);
}

void apply(Applying& a, const AddSensor& c) {
    a.add(EntryKind::sensor, c.sensor);
    a.about(c.sensor.name);
}
void apply(Applying& a, const ChangeSensor& c) {
    store::update(a.book, c.sensor);
    a.about(c.sensor.name);
}

void apply(Applying& a, const AddInstrument& c) {
    a.add(EntryKind::instrument, c.instrument);
    a.about(c.instrument.name);
}
void apply(Applying& a, const ChangeInstrument& c) {
    store::update(a.book, c.instrument);
    a.about(c.instrument.name);
}
void apply(Applying& a, const AddCheck& c) {
    a.about(store::get<model::Instrument>(a.book, c.check.instrument).name);
    a.add(EntryKind::check, c.check);
}

namespace {
void add_version(Applying& a, model::RecipeId recipe, const std::string& document) {
    a.add(EntryKind::recipe_version,
          model::RecipeVersion{.recipe = recipe,
                               .number = store::next_version_number(a.book, recipe),
                               .made_at = a.context.now,
                               .document = document,
                               .why = a.context.why});
}
} // namespace

void apply(Applying& a, const AddRecipe& c) {
    add_version(a, a.add(EntryKind::recipe, model::Recipe{.name = c.name}), c.document);
    a.about(c.name);
}
void apply(Applying& a, const AddRecipeVersion& c) {
    a.about(store::get<model::Recipe>(a.book, c.recipe).name);
    add_version(a, c.recipe, c.document);
}
void apply(Applying& a, const RenameRecipe& c) {
    auto recipe = store::get<model::Recipe>(a.book, c.recipe);
    recipe.name = c.name;
    store::update(a.book, recipe);
    a.about(c.name);
}
void apply(Applying& a, const ArchiveRecipe& c) {
    auto recipe = store::get<model::Recipe>(a.book, c.recipe);
    recipe.archived = c.archived;
    store::update(a.book, recipe);
    a.about(recipe.name);
}

void apply(Applying& a, const AddIngredient& c) {
    a.add(EntryKind::ingredient, c.ingredient);
    a.about(c.ingredient.name);
}
void apply(Applying& a, const ChangeIngredient& c) {
    store::update(a.book, c.ingredient);
    a.about(c.ingredient.name);
}
void apply(Applying& a, const AddLot& c) {
    a.add(EntryKind::lot, c.lot);
    a.about(c.lot.code);
}
void apply(Applying& a, const ChangeLot& c) {
    store::update(a.book, c.lot);
    a.about(c.lot.code);
}

void apply(Applying& a, const SetPreference& c) {
    store::set_preference(a.book, c.key, c.value);
    a.about(c.key);
}

} // namespace core::actions
