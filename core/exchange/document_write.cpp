#include "core/exchange/base64.h"
#include "core/exchange/book_document.h"
#include "core/exchange/document_fields.h"
#include "core/exchange/document_names.h"
#include "core/model/plan_document.h"
#include "core/units/parse.h"

#include <nlohmann/json.hpp>

#include <cmath>

namespace core::exchange {
namespace {

using json = nlohmann::ordered_json;

/// The book's own grain, so that a number in the document is the one on disk and not the residue
/// of a unit's factor (4.4 degrees is 277.55 K, and back 4.4000000000000341).
double grained(double value, double grains_per_unit) {
    return std::round(value * grains_per_unit) / grains_per_unit;
}

json as_json(units::Mass v) {
    return grained(v.in_grams(), 1e3);
}
json as_json(units::MassShare v) {
    return grained(v.in_percent(), 1e4);
}
json as_json(units::Length v) {
    return grained(v.in_millimetres(), 1e3);
}
json as_json(units::Temperature v) {
    return grained(v.in_celsius(), 1e3);
}
json as_json(units::TemperatureStep v) {
    return grained(v.in_kelvins(), 1e3);
}
json as_json(units::RelativeHumidity v) {
    return grained(v.in_percent(), 1e2);
}
json as_json(units::Instant v) {
    return units::to_iso(v);
}
json as_json(units::Day v) {
    return units::to_iso(v);
}
json as_json(const std::string& v) {
    return v;
}
json as_json(double v) {
    return v;
}
json as_json(int v) {
    return v;
}
template <class Tag>
json as_json(base::Id<Tag> v) {
    return v.row();
}
json as_json(const model::StageTemplate& v) {
    return json::parse(model::write_stage_template(v));
}
template <class E>
requires std::is_enum_v<E> json as_json(E v) {
    return model::names::name_in(names::table_of(v), v);
}

json object_of(auto& value);
json as_json(model::Target v) {
    return object_of(v);
}
json as_json(Stamp v) {
    return object_of(v);
}

class Writer {
  public:
    template <class T>
    void operator()(const char* key, const T& value) {
        out[key] = as_json(value);
    }
    template <class T>
    void operator()(const char* key, const std::optional<T>& value) {
        if (value) {
            out[key] = as_json(*value);
        }
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
    void ref(const char* key, const std::vector<Id>& ids) {
        for (const Id id : ids) {
            out[key].push_back(id.row());
        }
    }
    template <class Id>
    void maybe_ref(const char* key, const Id& id) {
        if (id.is_assigned()) {
            (*this)(key, id);
        }
    }
    void text(const char* key, const std::string& value) {
        if (!value.empty()) {
            out[key] = value;
        }
    }
    void flag(const char* key, bool value, bool usual) {
        if (value != usual) {
            out[key] = value;
        }
    }
    void count(const char* key, int value, int usual) {
        if (value != usual) {
            out[key] = value;
        }
    }
    void bytes(const char* key, const std::vector<unsigned char>& value) {
        if (!value.empty()) {
            out[key] = to_base64(value);
        }
    }
    json out = json::object();
};

json object_of(auto& value) {
    Writer writer;
    visit(writer, value);
    return std::move(writer.out);
}

} // namespace

std::string write_book_document(const BookDocument& document) {
    json out{{"format", document_format},
             {"version", document_version},
             {"scope", as_json(document.scope)}};
    if (!document.written_by.empty()) {
        out["written_by"] = document.written_by;
    }
    if (document.written_at) {
        out["written_at"] = as_json(*document.written_at);
    }
    each_kind(
        [&](const char* kind, const auto& entries) {
            json& array = out[kind] = json::array();
            for (auto entry : entries) { // a copy: the field lists name members of a mutable value
                json object = object_of(entry.value);
                if (entry.entered) {
                    object["entered"] = as_json(*entry.entered);
                }
                if (entry.withdrawn) {
                    object["taken_back"] = as_json(*entry.withdrawn);
                }
                array.push_back(std::move(object));
            }
        },
        document);
    json& preferences = out["preferences"] = json::object();
    for (const auto& [key, value] : document.preferences) {
        preferences[key] = value;
    }
    json& log = out["log"] = json::array();
    for (model::LoggedStep step : document.log) {
        log.push_back(object_of(step));
    }
    return out.dump(1, ' ', false, json::error_handler_t::replace) + "\n";
}

} // namespace core::exchange
