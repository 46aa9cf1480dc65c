#include "core/services/document_match.h"

#include "core/store/people_and_places.h"
#include "core/store/recipes.h"

#include <map>
#include <tuple>

namespace core::services {
namespace {

using Found = std::function<void(const char*, std::int64_t, std::int64_t)>;

/// Matches one kind. `key_in_book` and `key_in_document` give what makes two entries alike; the
/// latter may say that the entry hangs on one the book does not have (nothing). What was matched
/// goes into `rows`: id in the document -> id in the book.
template <class T, class InBook, class InDocument>
std::map<std::int64_t, std::int64_t> match(const char* kind, const std::vector<T>& book,
                                           const exchange::Entries<T>& document, InBook key_in_book,
                                           InDocument key_in_document, const Found& found) {
    std::map<decltype(key_in_book(std::declval<const T&>())), std::int64_t> known;
    for (const T& entry : book) {
        known.emplace(key_in_book(entry), entry.id.row());
    }
    std::map<std::int64_t, std::int64_t> rows;
    for (const auto& entry : document) {
        const auto key = key_in_document(entry.value);
        const auto alike = key ? known.find(*key) : known.end();
        if (alike != known.end()) {
            rows[entry.value.id.row()] = alike->second;
            found(kind, entry.value.id.row(), alike->second);
        }
    }
    return rows;
}

/// `key(entry, the book's row of what it hangs on)` for both sides of a kind that hangs on another.
template <class T, class OwnerId, class Key>
std::map<std::int64_t, std::int64_t> match_below(const char* kind, const std::vector<T>& book,
                                                 const exchange::Entries<T>& document,
                                                 const std::map<std::int64_t, std::int64_t>& owners,
                                                 OwnerId T::*owner, Key key, const Found& found) {
    using KeyType = decltype(key(std::declval<const T&>(), std::int64_t{}));
    return match(
        kind, book, document, [&](const T& e) { return key(e, (e.*owner).row()); },
        [&](const T& e) -> std::optional<KeyType> {
            const auto row = owners.find((e.*owner).row());
            return row == owners.end() ? std::nullopt : std::optional(key(e, row->second));
        },
        found);
}

template <class Key>
auto always(Key key) {
    return [key](const auto& entry) { return std::optional(key(entry)); };
}

} // namespace

void match_registers(store::Connection& book, const exchange::BookDocument& document,
                     const Found& found) {
    const auto person = [](const model::Person& p) { return std::tuple(p.name, p.initials); };
    match("people", store::people(book), document.people, person, always(person), found);
    const auto name = [](const auto& e) { return e.name; };
    const auto chambers =
        match("chambers", store::chambers(book), document.chambers, name, always(name), found);
    match_below(
        "sensors", store::sensors(book), document.sensors, chambers, &model::Sensor::chamber,
        [](const model::Sensor& s, std::int64_t on) { return std::tuple(on, s.name); }, found);
    const auto instrument = [](const model::Instrument& i) { return std::tuple(i.kind, i.name); };
    const auto instruments = match("instruments", store::instruments(book), document.instruments,
                                   instrument, always(instrument), found);
    match_below(
        "checks", store::checks(book, {}), document.checks, instruments,
        &model::CalibrationCheck::instrument,
        [](const model::CalibrationCheck& c, std::int64_t on) {
            return std::tuple(on, c.at, c.against, c.found);
        },
        found);

    const auto recipes =
        match("recipes", store::recipes(book, true), document.recipes, name, always(name), found);
    std::vector<model::RecipeVersion> versions;
    for (const auto& [old, row] : recipes) {
        for (auto& version : store::recipe_versions(book, model::RecipeId::from_row(row))) {
            versions.push_back(std::move(version));
        }
    }
    match_below(
        "recipe_versions", versions, document.recipe_versions, recipes,
        &model::RecipeVersion::recipe,
        [](const model::RecipeVersion& v, std::int64_t on) { return std::tuple(on, v.document); },
        found);
    const auto ingredient = [](const model::Ingredient& i) {
        return std::tuple(i.catalogue_id, i.name, i.composition);
    };
    const auto ingredients = match("ingredients", store::ingredients(book), document.ingredients,
                                   ingredient, always(ingredient), found);
    match_below(
        "lots", store::lots(book), document.lots, ingredients, &model::Lot::ingredient,
        [](const model::Lot& l, std::int64_t on) { return std::tuple(on, l.code); }, found);
}

} // namespace core::services
