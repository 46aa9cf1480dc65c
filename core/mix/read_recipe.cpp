#include "core/mix/finding_maker.h"
#include "core/mix/recipe_document.h"
#include "core/mix/words.h"
#include "core/units/parse.h"

#include <algorithm>
#include <initializer_list>
#include <nlohmann/json.hpp>

namespace core::mix {
namespace {

using model::Severity;
using Json = nlohmann::json;

std::string reason_of(base::ErrorCode code) {
    switch (code) {
    case base::ErrorCode::empty_input:
        return "empty_input";
    case base::ErrorCode::not_a_number:
        return "not_a_number";
    case base::ErrorCode::unknown_unit:
        return "unknown_unit";
    case base::ErrorCode::unit_missing:
        return "unit_missing";
    case base::ErrorCode::wrong_kind:
        return "wrong_kind";
    case base::ErrorCode::out_of_range:
        return "out_of_range";
    case base::ErrorCode::trailing_text:
        return "trailing_text";
    case base::ErrorCode::ambiguous_number:
        return "ambiguous_number";
    default:
        return "bad_format";
    }
}

/// Collects every fault of the document instead of stopping at the first.
class Reader {
  public:
    model::Findings findings;

    void add(const char* code, const std::string& place, const std::string& found,
             const std::string& wanted, const std::string& reason = {}) {
        std::map<std::string, model::FindingValue> values = {{"found", found}, {"wanted", wanted}};
        if (!reason.empty()) {
            values.emplace("reason", reason);
        }
        findings.push_back(make_finding(code, Severity::stop, place, std::move(values)));
    }

    bool is_object(const Json& json, const std::string& place) {
        if (!json.is_object()) {
            add("field_wrong_type", place, json.dump(), "object");
        }
        return json.is_object();
    }

    void only(const Json& json, const std::string& place,
              std::initializer_list<std::string_view> fields) {
        for (const auto& [name, value] : json.items()) {
            if (std::find(fields.begin(), fields.end(), name) == fields.end()) {
                std::string wanted;
                for (const auto field : fields) {
                    wanted += (wanted.empty() ? "" : ", ") + std::string(field);
                }
                add("field_unknown", dotted(place, name), name, wanted);
            }
        }
    }

    std::string text(const Json& json, const std::string& place, const char* field,
                     bool needed = false) {
        const auto it = json.find(field);
        if (it == json.end()) {
            if (needed) {
                add("field_missing", dotted(place, field), "", "text");
            }
            return {};
        }
        if (!it->is_string()) {
            add("field_wrong_type", dotted(place, field), it->dump(), "text");
            return {};
        }
        return it->get<std::string>();
    }

    bool flag(const Json& json, const std::string& place, const char* field) {
        const auto it = json.find(field);
        if (it == json.end()) {
            return false;
        }
        if (!it->is_boolean()) {
            add("field_wrong_type", dotted(place, field), it->dump(), "true or false");
            return false;
        }
        return it->get<bool>();
    }

    template <class Value, std::size_t n>
    Value word(const Json& json, const std::string& place, const char* field,
               const words::Table<Value, n>& table, Value otherwise, bool needed = false) {
        const auto it = json.find(field);
        if (it == json.end() && !needed) {
            return otherwise;
        }
        const std::string given = text(json, place, field, needed);
        std::string wanted;
        for (const auto& [name, value] : table) {
            if (name == given) {
                return value;
            }
            wanted += (wanted.empty() ? "" : ", ") + std::string(name);
        }
        if (it != json.end() && it->is_string()) {
            add("word_unknown", dotted(place, field), given, wanted);
        }
        return otherwise;
    }

    /// A quantity through one of the parsing doors of core/units.
    template <class Parse>
    auto quantity(const Json& json, const std::string& place, const char* field, const char* wanted,
                  Parse parse, bool needed = false)
        -> std::optional<typename decltype(parse(std::string()))::value_type> {
        const auto it = json.find(field);
        if (it == json.end()) {
            if (needed) {
                add("field_missing", dotted(place, field), "", wanted);
            }
            return std::nullopt;
        }
        // A bare number has no unit: 2.5 could be percent, grams or a proportion.
        const std::string given = it->is_string() ? it->get<std::string>() : it->dump();
        if (!it->is_string()) {
            add("quantity_unreadable", dotted(place, field), given, wanted, "unit_missing");
            return std::nullopt;
        }
        auto value = parse(given);
        if (!value) {
            add("quantity_unreadable", dotted(place, field), given, wanted,
                reason_of(value.error().code));
            return std::nullopt;
        }
        return *value;
    }

    std::optional<units::MassShare> share(const Json& json, const std::string& place,
                                          const char* field, bool needed = false) {
        return quantity(
            json, place, field, "2.5 %, 25 g/kg, 150 ppm",
            [](const std::string& s) { return units::parse_mass_share(s); }, needed);
    }

    std::optional<units::Mass> mass(const Json& json, const std::string& place, const char* field) {
        return quantity(json, place, field, "500 g, 1 lb 3 oz",
                        [](const std::string& s) { return units::parse_mass(s); });
    }

    /// Calls `each(item, place)` for the list `field`.
    template <class Each>
    void list(const Json& json, const char* field, bool needed, Each each) {
        const auto it = json.find(field);
        if (it == json.end()) {
            if (needed) {
                add("field_missing", field, "", "list");
            }
            return;
        }
        if (!it->is_array()) {
            add("field_wrong_type", field, it->dump(), "list");
            return;
        }
        for (std::size_t i = 0; i < it->size(); ++i) {
            const std::string place = std::string(field) + "[" + std::to_string(i) + "]";
            if (is_object((*it)[i], place)) {
                each((*it)[i], place);
            }
        }
    }

    static std::string dotted(const std::string& place, const std::string& field) {
        return place.empty() ? field : place + "." + field;
    }
};

Label read_label(Reader& reader, const Json& owner, const std::string& owner_place) {
    Label label;
    const auto it = owner.find("label");
    const std::string place = Reader::dotted(owner_place, "label");
    if (it == owner.end() || !reader.is_object(*it, place)) {
        return label;
    }
    const Json& json = *it;
    reader.only(json, place,
                {"nitrite", "nitrate", "alcohol", "salt", "sodium", "sodium_per_serving", "serving",
                 "salt_per_100ml", "sugar", "water", "acid", "density"});
    label.nitrite = reader.share(json, place, "nitrite");
    label.nitrate = reader.share(json, place, "nitrate");
    label.alcohol = reader.quantity(json, place, "alcohol", "40 %, 80 proof US, 70 proof UK",
                                    [](const std::string& s) { return units::parse_alcohol(s); });
    label.salt = reader.share(json, place, "salt");
    label.sodium = reader.share(json, place, "sodium");
    const auto sodium = reader.mass(json, place, "sodium_per_serving");
    const auto serving = reader.quantity(json, place, "serving", "15 mL", [](const std::string& s) {
        return units::parse_volume(s);
    });
    if (json.contains("sodium_per_serving") != json.contains("serving")) {
        const char* missing = json.contains("serving") ? "sodium_per_serving" : "serving";
        reader.add("field_missing", Reader::dotted(place, missing), "", "both or neither");
    } else if (sodium && serving) {
        label.sodium_per_volume = SodiumPerVolume{*sodium, *serving};
    }
    label.salt_per_100ml = reader.mass(json, place, "salt_per_100ml");
    label.sugar = reader.share(json, place, "sugar");
    label.water = reader.share(json, place, "water");
    label.acid = reader.share(json, place, "acid");
    const auto density =
        reader.quantity(json, place, "density", "1.16 (g/mL)",
                        [](const std::string& s) { return units::parse_number(s); });
    if (density) {
        label.density = units::Density::grams_per_millilitre(*density);
    }
    return label;
}

Line read_line(Reader& reader, const Json& json, const std::string& place) {
    reader.only(json, place, {"ingredient", "amount", "of", "label", "held", "as", "rub", "note"});
    Line line;
    line.ingredient = reader.text(json, place, "ingredient", true);
    const Basis basis = reader.word(json, place, "of", words::bases, Basis::meat);
    const auto amount = reader.quantity(
        json, place, "amount", "2.5 %, 25 g/kg, 40 g, 100 mL, 2 us_tablespoon per 500 g",
        [&](const std::string& s) { return parse_amount(s, basis); }, true);
    if (amount) {
        line.amount = *amount;
        if (json.contains("of") && !std::holds_alternative<ShareAmount>(*amount)) {
            reader.add("field_unknown", Reader::dotted(place, "of"), "of",
                       "only with a percent or g/kg amount");
        }
    }
    line.label = read_label(reader, json, place);
    line.held = reader.flag(json, place, "held");
    constexpr words::Table<bool, 2> uses = {{{"cure", false}, {"wash", true}}};
    line.as_wash = reader.word(json, place, "as", uses, false);
    if (const auto it = json.find("rub"); it != json.end()) {
        if (it->is_number_integer() && it->get<long long>() >= 0 && it->get<long long>() < 1000) {
            line.rub = it->get<int>();
        } else {
            reader.add("field_wrong_type", Reader::dotted(place, "rub"), it->dump(), "0, 1, 2...");
        }
    }
    line.note = reader.text(json, place, "note");
    return line;
}

Meat read_meat(Reader& reader, const Json& top) {
    Meat meat;
    const auto it = top.find("meat");
    if (it == top.end() || !reader.is_object(*it, "meat")) {
        return meat;
    }
    reader.only(*it, "meat", {"skin", "skin_share", "moisture", "fatty"});
    meat.skin = reader.word(*it, "meat", "skin", words::skins, model::SkinSide::none);
    meat.skin_share = reader.share(*it, "meat", "skin_share");
    meat.moisture = reader.share(*it, "meat", "moisture");
    meat.fatty = reader.flag(*it, "meat", "fatty");
    return meat;
}

void read_lists(Reader& reader, const Json& top, RecipeDocument& recipe) {
    reader.list(top, "ingredients", false, [&](const Json& json, const std::string& place) {
        reader.only(json, place, {"id", "name", "kind", "label"});
        recipe.ingredients.push_back(
            {reader.text(json, place, "id", true), reader.text(json, place, "name", true),
             reader.word(json, place, "kind", words::kinds, facts::IngredientKind::other, true),
             read_label(reader, json, place)});
    });
    reader.list(top, "lines", true, [&](const Json& json, const std::string& place) {
        recipe.lines.push_back(read_line(reader, json, place));
    });
    reader.list(top, "rubs", false, [&](const Json& json, const std::string& place) {
        reader.only(json, place, {"after", "share"});
        const auto after = reader.quantity(
            json, place, "after", "3 d, 36 h",
            [](const std::string& s) { return units::parse_duration(s); }, true);
        const auto share = reader.share(json, place, "share", true);
        recipe.rubs.push_back({after.value_or(units::Duration::seconds(0)),
                               share.value_or(units::MassShare::fraction(0))});
    });
    reader.list(top, "wishes", false, [&](const Json& json, const std::string& place) {
        reader.only(json, place, {"what", "at_least", "at_most"});
        recipe.wishes.push_back({reader.word(json, place, "what", words::aims, Aim::salt, true),
                                 reader.share(json, place, "at_least"),
                                 reader.share(json, place, "at_most")});
        if (!json.contains("at_least") && !json.contains("at_most")) {
            reader.add("field_missing", place, "", "at_least or at_most");
        }
    });
}

} // namespace

tl::expected<RecipeDocument, model::Findings> read_recipe(std::string_view text) {
    Reader reader;
    const Json json = Json::parse(text.begin(), text.end(), nullptr, false);
    if (json.is_discarded()) {
        reader.add("recipe_not_json", "", "", "a JSON object");
        return tl::unexpected(reader.findings);
    }
    if (!reader.is_object(json, "")) {
        return tl::unexpected(reader.findings);
    }
    reader.only(json, "",
                {"saltloft_recipe", "name", "method", "limits", "for_meat", "pump", "pickup",
                 "expected_loss", "meat", "ingredients", "lines", "rubs", "wishes"});
    const auto version = json.find("saltloft_recipe");
    if (version == json.end() || *version != 1) {
        reader.add("recipe_version", "saltloft_recipe",
                   version == json.end() ? "" : version->dump(), "1");
    }
    RecipeDocument recipe;
    recipe.name = reader.text(json, "", "name");
    recipe.method = reader.word(json, "", "method", words::methods, Method::dry, true);
    recipe.limits = reader.text(json, "", "limits");
    recipe.for_meat = reader.mass(json, "", "for_meat");
    recipe.pump = reader.share(json, "", "pump");
    recipe.pickup = reader.share(json, "", "pickup");
    recipe.expected_loss = reader.share(json, "", "expected_loss");
    recipe.meat = read_meat(reader, json);
    read_lists(reader, json, recipe);
    if (!reader.findings.empty()) {
        return tl::unexpected(reader.findings);
    }
    return recipe;
}

} // namespace core::mix
