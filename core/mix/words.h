#pragma once

#include "core/mix/recipe_document.h"
#include "core/model/piece.h"

#include <array>
#include <string_view>
#include <utility>

/// The stable words of the recipe document. Inside of core/mix; others use name_of().
namespace core::mix::words {

template <class Value, std::size_t n>
using Table = std::array<std::pair<std::string_view, Value>, n>;

inline constexpr Table<Method, 8> methods = {{
    {"dry", Method::dry},
    {"box", Method::box},
    {"immersion_pickup", Method::immersion_pickup},
    {"immersion_equilibrium", Method::immersion_equilibrium},
    {"equilibrium_brine", Method::equilibrium_brine},
    {"injected", Method::injected},
    {"marinade", Method::marinade},
    {"wash", Method::wash},
}};

inline constexpr Table<Basis, 4> bases = {{
    {"meat", Basis::meat},
    {"water", Basis::water},
    {"meat_and_water", Basis::meat_and_water},
    {"total_water", Basis::total_water},
}};

inline constexpr Table<Aim, 7> aims = {{
    {"salt", Aim::salt},
    {"sugar", Aim::sugar},
    {"nitrite", Aim::nitrite},
    {"nitrate", Aim::nitrate},
    {"nitrite_and_nitrate", Aim::nitrite_and_nitrate},
    {"added_water", Aim::added_water},
    {"alcohol", Aim::alcohol},
}};

inline constexpr Table<facts::IngredientKind, 12> kinds = {{
    {"salt", facts::IngredientKind::salt},
    {"curing_salt", facts::IngredientKind::curing_salt},
    {"pure_cure", facts::IngredientKind::pure_cure},
    {"sugar", facts::IngredientKind::sugar},
    {"sauce", facts::IngredientKind::sauce},
    {"wine", facts::IngredientKind::wine},
    {"spirit", facts::IngredientKind::spirit},
    {"vinegar", facts::IngredientKind::vinegar},
    {"water", facts::IngredientKind::water},
    {"spice", facts::IngredientKind::spice},
    {"accelerator", facts::IngredientKind::accelerator},
    {"other", facts::IngredientKind::other},
}};

inline constexpr Table<model::SkinSide, 3> skins = {{
    {"none", model::SkinSide::none},
    {"one_side", model::SkinSide::one_side},
    {"all_round", model::SkinSide::all_round},
}};

template <class Value, std::size_t n>
constexpr std::string_view word(const Table<Value, n>& table, Value value) {
    for (const auto& [name, entry] : table) {
        if (entry == value) {
            return name;
        }
    }
    return {};
}

} // namespace core::mix::words
