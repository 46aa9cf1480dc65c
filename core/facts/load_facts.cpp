#include "core/facts/embedded.h"
#include "core/facts/fact_reader.h"
#include "core/facts/facts.h"
#include "core/units/parse.h"

#include <cassert>
#include <fmt/format.h>
#include <set>

namespace core::facts {
namespace {

using base::ErrorCode;
using detail::FactObject;
using detail::Json;
using detail::SourceTable;

template <class Value>
using Words = std::pair<std::string_view, Value>;

constexpr std::array<Words<IngredientKind>, 12> kinds = {{
    {"salt", IngredientKind::salt},
    {"curing_salt", IngredientKind::curing_salt},
    {"pure_cure", IngredientKind::pure_cure},
    {"sugar", IngredientKind::sugar},
    {"sauce", IngredientKind::sauce},
    {"wine", IngredientKind::wine},
    {"spirit", IngredientKind::spirit},
    {"vinegar", IngredientKind::vinegar},
    {"water", IngredientKind::water},
    {"spice", IngredientKind::spice},
    {"accelerator", IngredientKind::accelerator},
    {"other", IngredientKind::other},
}};

constexpr std::array<Words<LabelQuestion>, 3> questions = {{
    {"nitrite_strength", LabelQuestion::nitrite_strength},
    {"alcohol", LabelQuestion::alcohol},
    {"sodium", LabelQuestion::sodium},
}};

constexpr std::array<Words<Substance>, 6> substances = {{
    {"nitrite", Substance::nitrite},
    {"nitrate", Substance::nitrate},
    {"nitrite_and_nitrate", Substance::nitrite_and_nitrate},
    {"ascorbate", Substance::ascorbate},
    {"ascorbic_acid", Substance::ascorbic_acid},
    {"phosphate", Substance::phosphate},
}};

constexpr std::array<Words<ExpressedAs>, 3> expressions = {{
    {"salt_as_weighed", ExpressedAs::salt_as_weighed},
    {"sodium_salt", ExpressedAs::sodium_salt},
    {"ion", ExpressedAs::ion},
}};

constexpr std::array<Words<LimitBasis>, 3> bases = {{
    {"ingoing", LimitBasis::ingoing},
    {"finished", LimitBasis::finished},
    {"residual", LimitBasis::residual},
}};

constexpr std::array<Words<CureRoute>, 3> routes = {{
    {"dry", CureRoute::dry},
    {"immersion", CureRoute::immersion},
    {"injected", CureRoute::injected},
}};

constexpr std::array<Words<int>, 3> measure_roles = {
    {{"tablespoon", 1}, {"teaspoon", 2}, {"cup", 3}}};

ShareInterval percent(const FactObject& object) {
    const auto b = object.bounds("percent", 0, 100);
    return {units::MassShare::percent(b.low), units::MassShare::percent(b.best),
            units::MassShare::percent(b.high)};
}

void read_component(CatalogueEntry& entry, const std::string& name, const Json& value,
                    const FactObject& composition, const SourceTable& sources) {
    const auto component = component_named(name);
    if (!component) {
        composition.fail(ErrorCode::bad_format, name, "unknown component");
    }
    if (value.is_string() && value.get<std::string>() == "unknown") {
        entry.composition.set_unknown(*component);
        return;
    }
    const FactObject share(value, composition.where() + "." + name);
    share.only({"percent", "source"});
    entry.composition.set(*component, percent(share));
    entry.sources.emplace(*component, sources.of(share));
}

CatalogueEntry read_entry(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "kind", "asks", "composition", "density_g_per_ml", "note"});
    CatalogueEntry entry;
    entry.id = object.text("id");
    entry.name = object.text("name");
    entry.kind = object.word("kind", kinds);
    entry.note = object.text_or_empty("note");
    if (object.has("asks")) {
        entry.asks = object.word("asks", questions);
    }
    const FactObject composition = object.object("composition");
    for (const auto& [name, value] : composition.json().items()) {
        read_component(entry, name, value, composition, sources);
    }
    if (entry.composition.total_best() > units::MassShare::percent(100 + 1e-9)) {
        object.fail(ErrorCode::out_of_range, "composition", "more than the whole");
    }
    if (object.has("density_g_per_ml")) {
        const FactObject density = object.object("density_g_per_ml");
        density.only({"value", "source"});
        const auto b = density.bounds("value", 0.05, 3);
        const auto make = units::Density::grams_per_millilitre;
        entry.density = {{make(b.low), make(b.best), make(b.high)}, sources.of(density)};
    }
    return entry;
}

Limit read_limit(const FactObject& object, const SourceTable& sources) {
    object.only({"substance", "expressed_as", "basis", "maximum_ppm", "minimum_ppm",
                 "not_permitted", "source", "note"});
    constexpr double million = 1e6;
    Limit limit;
    limit.substance = object.word("substance", substances);
    limit.expressed_as = object.word("expressed_as", expressions);
    limit.basis = object.word("basis", bases);
    limit.not_permitted = object.flag("not_permitted");
    if (object.has("maximum_ppm")) {
        limit.maximum = units::MassShare::ppm(object.number("maximum_ppm", 0, million));
    }
    if (object.has("minimum_ppm")) {
        limit.minimum = units::MassShare::ppm(object.number("minimum_ppm", 0, million));
    }
    if (!limit.maximum && !limit.minimum && !limit.not_permitted) {
        object.fail(ErrorCode::missing_column, "maximum_ppm", "the limit limits nothing");
    }
    if (limit.maximum && limit.minimum && *limit.minimum > *limit.maximum) {
        object.fail(ErrorCode::out_of_range, "minimum_ppm", "above the maximum");
    }
    limit.source = sources.of(object);
    limit.note = object.text_or_empty("note");
    return limit;
}

std::optional<units::Day> read_day(const FactObject& object, const std::string& field) {
    if (!object.has(field)) {
        return std::nullopt;
    }
    const auto day = units::parse_day(object.text(field));
    if (!day) {
        object.fail(day.error().code, field, object.text(field));
    }
    return *day;
}

LimitSet read_set(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "jurisdiction", "product_class", "routes", "subtract_skin",
                 "in_force_from", "in_force_until", "limits", "note"});
    LimitSet set;
    set.id = object.text("id");
    set.name = object.text("name");
    set.jurisdiction = object.text("jurisdiction");
    set.product_class = object.text("product_class");
    set.subtract_skin = object.flag("subtract_skin");
    set.in_force_from = read_day(object, "in_force_from");
    set.in_force_until = read_day(object, "in_force_until");
    set.note = object.text_or_empty("note");
    for (const auto& route : object.array("routes")) {
        const Json wrapped = {{"route", route}};
        set.routes.push_back(FactObject(wrapped, object.where() + ".routes").word("route", routes));
    }
    int number = 0;
    for (const auto& limit : object.array("limits")) {
        const std::string where = object.where() + ".limits[" + std::to_string(number++) + "]";
        set.limits.push_back(read_limit(FactObject(limit, where), sources));
    }
    return set;
}

Measure read_measure(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "ml", "role", "source"});
    const auto b = object.bounds("ml", 0.1, 5000);
    const int role = object.word("role", measure_roles);
    const auto make = units::Volume::millilitres;
    return {object.text("id"),  object.text("name"), {make(b.low), make(b.best), make(b.high)},
            sources.of(object), role == 1,           role == 2};
}

/// Reads the list `field` of a file entry by entry, each named by its id, no id twice.
template <class Read>
auto read_list(std::string_view text, const std::string& file, const std::string& field,
               Read read) {
    const Json json = detail::parse_fact_file(text, file);
    const FactObject top(json, file);
    top.only({"about", "sources", field});
    const SourceTable sources(top);
    std::vector<decltype(read(top, sources))> entries;
    std::set<std::string> ids;
    for (const auto& item : top.array(field)) {
        const std::string place = fmt::format("{}.{}[{}]", file, field, entries.size());
        const FactObject unnamed(item, place);
        const FactObject object(item, fmt::format("{}.{}.{}", file, field, unnamed.text("id")));
        if (!ids.insert(object.text("id")).second) {
            object.fail(ErrorCode::conflict, "id", "used twice");
        }
        entries.push_back(read(object, sources));
    }
    return entries;
}

Constants read_constants(std::string_view text, const std::string& file) {
    const Json json = detail::parse_fact_file(text, file);
    const FactObject top(json, file);
    top.only({"about", "sources", "skin_share", "lean_moisture", "fatty_moisture", "wash_pickup"});
    const SourceTable sources(top);
    const auto interval = [&](const std::string& field) {
        const FactObject object = top.object(field);
        object.only({"percent", "source"});
        return base::Cited<ShareInterval>{percent(object), sources.of(object)};
    };
    const auto skin = interval("skin_share");
    return {{skin.value.best, skin.source},
            interval("lean_moisture"),
            interval("fatty_moisture"),
            interval("wash_pickup")};
}

} // namespace

base::Result<Facts> load_facts(const FactTexts& texts) {
    try {
        return Facts{
            Catalogue(read_list(texts.ingredients, "ingredients.json", "ingredients", read_entry)),
            LimitSets(read_list(texts.limits, "limits.json", "sets", read_set)),
            Measures(read_list(texts.measures, "measures.json", "measures", read_measure)),
            read_constants(texts.constants, "constants.json"),
        };
    } catch (const detail::FactFault& fault) {
        return tl::unexpected(fault.error);
    }
}

FactTexts built_in_fact_texts() {
    return {embedded("ingredients.json"), embedded("limits.json"), embedded("measures.json"),
            embedded("constants.json")};
}

Facts built_in_facts() {
    auto facts = load_facts(built_in_fact_texts());
    assert(facts.has_value() && "our own fact files are held good by a test");
    return std::move(*facts);
}

} // namespace core::facts
