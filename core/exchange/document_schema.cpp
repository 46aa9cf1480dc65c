#include "core/exchange/document_schema.h"

#include "core/exchange/document_blank.h"
#include "core/exchange/document_fields.h"
#include "core/exchange/document_names.h"

#include <nlohmann/json.hpp>

#include <type_traits>

namespace core::exchange {
namespace {

using json = nlohmann::ordered_json;

json number(double low, double high) {
    return {{"type", "number"}, {"minimum", low}, {"maximum", high}};
}

// The ranges are those of document_values.cpp; a test sends values at and beyond them through both.
json schema_of(units::Mass) {
    return number(-1e9, 1e9);
}
json schema_of(units::MassShare) {
    return number(-1e4, 1e4);
}
json schema_of(units::Length) {
    return number(0, 1e5);
}
json schema_of(units::Temperature) {
    return number(-273.15, 1e3);
}
json schema_of(units::TemperatureStep) {
    return number(-1e3, 1e3);
}
json schema_of(units::RelativeHumidity) {
    return number(-200, 200);
}
json schema_of(units::Instant) {
    return {{"type", "string"}, {"format", "date-time"}};
}
json schema_of(units::Day) {
    return {{"type", "string"}, {"format", "date"}};
}
json schema_of(double) {
    return number(-1e15, 1e15);
}
json schema_of(int) {
    return {{"type", "integer"}, {"minimum", -1'000'000'000}, {"maximum", 1'000'000'000}};
}
json schema_of(bool) {
    return {{"type", "boolean"}};
}
json schema_of(const std::string&) {
    return {{"type", "string"}};
}
template <class Tag>
json schema_of(base::Id<Tag>) {
    return {{"$ref", "#/$defs/id"}};
}
template <class E>
requires std::is_enum_v<E> json schema_of(E) {
    json words = json::array();
    for (const auto& [value, name] : names::table_of(E{})) {
        words.push_back(name);
    }
    return {{"enum", words}};
}
json schema_of(const model::StageTemplate&) {
    json kinds = json::array();
    for (const auto& [value, name] : model::names::stage_kinds) {
        kinds.push_back(name);
    }
    return {{"type", "object"},
            {"description", "A stage template as in resources/plans (core/model/plan_document.h)"},
            {"properties", {{"name", {{"type", "string"}}}, {"kind", {{"enum", kinds}}}}},
            {"required", {"name", "kind"}}};
}
template <class T>
json object_schema(T value);
json schema_of(model::Target target) {
    return object_schema(target);
}

class SchemaWriter {
  public:
    template <class T>
    void operator()(const char* key, const T& value) {
        properties[key] = schema_of(value);
        required.push_back(key);
    }
    template <class T>
    void operator()(const char* key, const std::optional<T>&) {
        properties[key] = schema_of(detail::blank<T>());
    }
    template <class Id>
    void own(const char* key, const Id& id) {
        (*this)(key, id);
    }
    template <class Id>
    void ref(const char* key, const Id& id) {
        (*this)(key, id);
    }
    template <class Id>
    void ref(const char* key, const std::vector<Id>&) {
        properties[key] = {{"type", "array"}, {"items", schema_of(Id{})}};
    }
    template <class Id>
    void maybe_ref(const char* key, const Id& id) {
        properties[key] = schema_of(id);
    }
    void text(const char* key, const std::string& value) { properties[key] = schema_of(value); }
    void flag(const char* key, bool value, bool usual) {
        properties[key] = schema_of(value);
        properties[key]["default"] = usual;
    }
    void count(const char* key, int value, int usual) {
        properties[key] = schema_of(value);
        properties[key]["default"] = usual;
    }
    void bytes(const char* key, const std::vector<unsigned char>&) {
        properties[key] = {{"type", "string"}, {"contentEncoding", "base64"}};
    }
    json properties = json::object();
    json required = json::array();
};

json closed_object(SchemaWriter&& writer) {
    json out{{"type", "object"}, {"properties", std::move(writer.properties)}};
    if (!writer.required.empty()) {
        out["required"] = std::move(writer.required);
    }
    out["additionalProperties"] = false;
    return out;
}

template <class T>
json object_schema(T value) {
    SchemaWriter writer;
    visit(writer, value);
    return closed_object(std::move(writer));
}

template <class T>
json entry_schema(const Entries<T>&) {
    SchemaWriter writer;
    T value = detail::blank<T>();
    visit(writer, value);
    writer.properties["entered"] = {{"$ref", "#/$defs/stamp"}};
    writer.properties["taken_back"] = {{"$ref", "#/$defs/stamp"}};
    return closed_object(std::move(writer));
}

} // namespace

std::string book_document_schema() {
    json properties{{"$schema", {{"type", "string"}}},
                    {"format", {{"const", document_format}}},
                    {"version", {{"const", document_version}}},
                    {"scope", schema_of(DocumentScope{})},
                    {"written_by", {{"type", "string"}}},
                    {"written_at", schema_of(detail::blank<units::Instant>())}};
    const BookDocument none;
    each_kind(
        [&](const char* kind, const auto& entries) {
            properties[kind] = {{"type", "array"}, {"items", entry_schema(entries)}};
        },
        none);
    properties["preferences"] = {{"type", "object"},
                                 {"additionalProperties", {{"type", "string"}}}};
    properties["log"] = {{"type", "array"},
                         {"items", object_schema(detail::blank<model::LoggedStep>())}};
    const json schema{
        {"$schema", "https://json-schema.org/draft/2020-12/schema"},
        {"$id", "urn:saltloft:book-exchange:1"},
        {"title", "Saltloft book exchange, version 1"},
        {"description",
         "A whole book, or one batch with all it refers to. The end of a key is its unit: _g "
         "grams, "
         "_mm millimetres, _c degrees Celsius, _k kelvins of difference, _percent percent. Times "
         "are ISO 8601 with a zone. What is not known is left out. Ids only tie entries together."},
        {"type", "object"},
        {"properties", properties},
        {"required", {"format", "version", "scope"}},
        {"additionalProperties", false},
        {"$defs",
         {{"id", {{"type", "integer"}, {"minimum", 1}, {"maximum", INT64_MAX}}},
          {"stamp", object_schema(detail::blank<Stamp>())}}}};
    return schema.dump(1) + "\n";
}

} // namespace core::exchange
