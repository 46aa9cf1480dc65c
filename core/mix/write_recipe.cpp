#include "core/mix/recipe_document.h"
#include "core/mix/words.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace core::mix {
namespace {

// Keys keep the order they are written in: the file is read by people too.
using Json = nlohmann::ordered_json;

// 15 significant digits: any decimal number a person types survives doubles unharmed, and the
// factor between a kind's base and its unit cannot leave a tail of nines.
std::string write_share(units::MassShare share) {
    return fmt::format("{:.15g} %", share.in_percent());
}

std::string write_mass(units::Mass mass) {
    return fmt::format("{:.15g} g", mass.in_grams());
}

void put_share(Json& to, const char* field, const std::optional<units::MassShare>& share) {
    if (share) {
        to[field] = write_share(*share);
    }
}

Json label_json(const Label& label) {
    Json json = Json::object();
    put_share(json, "nitrite", label.nitrite);
    put_share(json, "nitrate", label.nitrate);
    if (label.alcohol) {
        json["alcohol"] = fmt::format("{:.15g} %", label.alcohol->in_percent());
    }
    put_share(json, "salt", label.salt);
    put_share(json, "sodium", label.sodium);
    if (label.sodium_per_volume) {
        json["sodium_per_serving"] = write_mass(label.sodium_per_volume->sodium);
        json["serving"] =
            fmt::format("{:.15g} mL", label.sodium_per_volume->serving.in_millilitres());
    }
    if (label.salt_per_100ml) {
        json["salt_per_100ml"] = write_mass(*label.salt_per_100ml);
    }
    put_share(json, "sugar", label.sugar);
    put_share(json, "water", label.water);
    put_share(json, "acid", label.acid);
    if (label.density) {
        json["density"] = fmt::format("{:.15g}", label.density->in_grams_per_millilitre());
    }
    return json;
}

Json line_json(const Line& line) {
    Json json = Json::object();
    json["ingredient"] = line.ingredient;
    json["amount"] = to_text(line.amount);
    if (const auto* share = std::get_if<ShareAmount>(&line.amount)) {
        json["of"] = name_of(share->basis);
    }
    if (!(line.label == Label{})) {
        json["label"] = label_json(line.label);
    }
    if (line.held) {
        json["held"] = true;
    }
    if (line.as_wash) {
        json["as"] = "wash";
    }
    if (line.rub) {
        json["rub"] = *line.rub;
    }
    if (!line.note.empty()) {
        json["note"] = line.note;
    }
    return json;
}

Json meat_json(const Meat& meat) {
    Json json = Json::object();
    json["skin"] = words::word(words::skins, meat.skin);
    put_share(json, "skin_share", meat.skin_share);
    put_share(json, "moisture", meat.moisture);
    if (meat.fatty) {
        json["fatty"] = true;
    }
    return json;
}

template <class Items, class Make>
void put_list(Json& to, const char* field, const Items& items, Make make) {
    if (items.empty()) {
        return;
    }
    Json list = Json::array();
    for (const auto& item : items) {
        list.push_back(make(item));
    }
    to[field] = std::move(list);
}

Json own_json(const OwnIngredient& own) {
    Json json = Json::object();
    json["id"] = own.id;
    json["name"] = own.name;
    json["kind"] = name_of(own.kind);
    json["label"] = label_json(own.label);
    return json;
}

Json rub_json(const Rub& rub) {
    return {{"after", fmt::format("{:.15g} s", rub.after.in_seconds())},
            {"share", write_share(rub.share)}};
}

Json wish_json(const Wish& wish) {
    Json json = Json::object();
    json["what"] = name_of(wish.what);
    put_share(json, "at_least", wish.at_least);
    put_share(json, "at_most", wish.at_most);
    return json;
}

} // namespace

std::string write_recipe(const RecipeDocument& recipe) {
    Json json = Json::object();
    json["saltloft_recipe"] = 1;
    json["name"] = recipe.name;
    json["method"] = name_of(recipe.method);
    if (!recipe.limits.empty()) {
        json["limits"] = recipe.limits;
    }
    if (recipe.for_meat) {
        json["for_meat"] = write_mass(*recipe.for_meat);
    }
    put_share(json, "pump", recipe.pump);
    put_share(json, "pickup", recipe.pickup);
    put_share(json, "expected_loss", recipe.expected_loss);
    if (!(recipe.meat == Meat{})) {
        json["meat"] = meat_json(recipe.meat);
    }
    put_list(json, "ingredients", recipe.ingredients, own_json);
    json["lines"] = Json::array();
    put_list(json, "lines", recipe.lines, line_json);
    put_list(json, "rubs", recipe.rubs, rub_json);
    put_list(json, "wishes", recipe.wishes, wish_json);
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string_view name_of(Method method) {
    return words::word(words::methods, method);
}

std::string_view name_of(Basis basis) {
    return words::word(words::bases, basis);
}

std::string_view name_of(Aim aim) {
    return words::word(words::aims, aim);
}

std::string_view name_of(facts::IngredientKind kind) {
    return words::word(words::kinds, kind);
}

} // namespace core::mix
