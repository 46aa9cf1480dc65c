#include "core/facts/fact_reader.h"

#include <algorithm>
#include <cmath>

namespace core::facts::detail {
namespace {

using base::ErrorCode;

constexpr std::array<std::pair<std::string_view, base::Sureness>, 6> sureness_words = {{
    {"verified", base::Sureness::verified},
    {"verified_second_hand", base::Sureness::verified_second_hand},
    {"computed", base::Sureness::computed},
    {"derived", base::Sureness::derived},
    {"memory", base::Sureness::memory},
    {"common_practice", base::Sureness::common_practice},
}};

} // namespace

FactObject::FactObject(const Json& json, std::string where)
    : json_(json), where_(std::move(where)) {
    if (!json_.is_object()) {
        throw FactFault{{ErrorCode::bad_format, "an object is needed here", where_}};
    }
}

void FactObject::fail(ErrorCode code, const std::string& field, const std::string& detail) const {
    throw FactFault{{code, detail, where_ + "." + field}};
}

void FactObject::only(std::initializer_list<std::string_view> fields) const {
    for (const auto& [name, value] : json_.items()) {
        if (std::find(fields.begin(), fields.end(), name) == fields.end()) {
            fail(ErrorCode::bad_format, name, "unknown field");
        }
    }
}

const Json& FactObject::field_of(const std::string& field) const {
    const auto it = json_.find(field);
    if (it == json_.end()) {
        fail(ErrorCode::missing_column, field, "field missing");
    }
    return *it;
}

std::string FactObject::text(const std::string& field) const {
    const Json& value = field_of(field);
    if (!value.is_string()) {
        fail(ErrorCode::bad_format, field, "a text is needed here");
    }
    return value.get<std::string>();
}

std::string FactObject::text_or_empty(const std::string& field) const {
    return has(field) ? text(field) : std::string();
}

double FactObject::number(const std::string& field, double low, double high) const {
    const Json& value = field_of(field);
    if (!value.is_number()) {
        fail(ErrorCode::bad_format, field, "a number is needed here");
    }
    const double number = value.get<double>();
    if (!(number >= low && number <= high)) {
        fail(ErrorCode::out_of_range, field, value.dump());
    }
    return number;
}

bool FactObject::flag(const std::string& field) const {
    if (!has(field)) {
        return false;
    }
    if (!json_.at(field).is_boolean()) {
        fail(ErrorCode::bad_format, field, "true or false is needed here");
    }
    return json_.at(field).get<bool>();
}

FactObject FactObject::object(const std::string& field) const {
    return {field_of(field), where_ + "." + field};
}

const Json& FactObject::array(const std::string& field) const {
    const Json& value = field_of(field);
    if (!value.is_array()) {
        fail(ErrorCode::bad_format, field, "a list is needed here");
    }
    return value;
}

base::Interval<double> FactObject::bounds(const std::string& field, double low, double high) const {
    if (field_of(field).is_number()) {
        return base::Interval<double>::exactly(number(field, low, high));
    }
    const Json& list = array(field);
    if (list.size() != 3 ||
        !std::all_of(list.begin(), list.end(), [](const Json& item) { return item.is_number(); })) {
        fail(ErrorCode::bad_format, field, "one number or [low, best, high] is needed here");
    }
    const base::Interval<double> bounds{list[0].get<double>(), list[1].get<double>(),
                                        list[2].get<double>()};
    if (!(low <= bounds.low && bounds.low <= bounds.best && bounds.best <= bounds.high &&
          bounds.high <= high)) {
        fail(ErrorCode::out_of_range, field, list.dump());
    }
    return bounds;
}

SourceTable::SourceTable(const FactObject& file) {
    const FactObject table = file.object("sources");
    for (const auto& [key, value] : table.json().items()) {
        const FactObject entry(value, table.where() + "." + key);
        entry.only({"title", "edition", "sureness"});
        base::Source source{entry.text("title"), entry.text("edition"),
                            entry.word("sureness", sureness_words)};
        if (source.title.empty()) {
            entry.fail(ErrorCode::missing_column, "title", "a source needs a title");
        }
        sources_.emplace(key, std::move(source));
    }
}

base::Source SourceTable::of(const FactObject& object) const {
    const auto it = sources_.find(object.text("source"));
    if (it == sources_.end()) {
        object.fail(ErrorCode::bad_format, "source", "no such source: " + object.text("source"));
    }
    return it->second;
}

Json parse_fact_file(std::string_view text, const std::string& file) {
    Json json = Json::parse(text.begin(), text.end(), nullptr, false);
    if (json.is_discarded()) {
        throw FactFault{{ErrorCode::bad_format, "not a JSON text", file}};
    }
    return json;
}

} // namespace core::facts::detail
