#include "core/exchange/base64.h"
#include "core/exchange/book_document.h"
#include "core/exchange/document_blank.h"
#include "core/exchange/document_fields.h"
#include "core/exchange/document_kinds.h"
#include "core/exchange/document_values.h"
#include "core/model/plan_document.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <set>

namespace core::exchange {
namespace {

using namespace detail;
using base::ErrorCode;

constexpr std::size_t max_faults = 100;
constexpr int max_depth = 32; ///< the format itself is at most 7 deep

struct Reference {
    const char* kind;
    std::int64_t row;
    std::string path;
};

/// What the whole reading shares.
struct Reading {
    DocumentFaults faults;
    std::map<std::string, std::set<std::int64_t>, std::less<>> ids;
    std::vector<Reference> references;

    void fault(ErrorCode code, std::string detail, std::string path) {
        if (faults.size() < max_faults) {
            faults.push_back({code, std::move(detail), std::move(path)});
        }
    }
};

// --- objects -----------------------------------------------------------------------------------

class Reader {
  public:
    Reader(const json& object, std::string path, Reading& reading)
        : object_(object), path_(std::move(path)), reading_(reading) {}

    template <class T>
    void operator()(const char* key, T& out) {
        if (const json* value = required(key)) {
            take(*value, key, out);
        }
    }
    template <class T>
    void operator()(const char* key, std::optional<T>& out) {
        if (const json* value = find(key)) {
            T read = blank<T>();
            take(*value, key, read);
            out = std::move(read);
        }
    }
    template <class Id>
    void own(const char* key, Id& out) {
        (*this)(key, out);
        if (out.is_assigned() && !reading_.ids[kind_of(out)].insert(out.row()).second) {
            reading_.fault(ErrorCode::conflict, fmt::format("{}", out.row()), at(key));
        }
    }
    template <class Id>
    void ref(const char* key, Id& out) {
        (*this)(key, out);
        note(out, at(key));
    }
    template <class Id>
    void ref(const char* key, std::optional<Id>& out) {
        (*this)(key, out);
        note(out.value_or(Id{}), at(key));
    }
    template <class Id>
    void ref(const char* key, std::vector<Id>& out) {
        const json* value = find(key);
        if (value == nullptr) {
            return;
        }
        if (!value->is_array()) {
            reading_.fault(ErrorCode::wrong_kind, value->type_name(), at(key));
            return;
        }
        for (std::size_t i = 0; i < value->size(); ++i) {
            const std::string path = fmt::format("{}[{}]", at(key), i);
            Id id;
            take_at((*value)[i], path, id);
            note(id, path);
            out.push_back(id);
        }
    }
    template <class Id>
    void maybe_ref(const char* key, Id& out) {
        std::optional<Id> read;
        ref(key, read);
        out = read.value_or(Id{});
    }
    void text(const char* key, std::string& out) { usual(key, out, std::string()); }
    void flag(const char* key, bool& out, bool usual_value) { usual(key, out, usual_value); }
    void count(const char* key, int& out, int usual_value) { usual(key, out, usual_value); }
    void bytes(const char* key, std::vector<unsigned char>& out) {
        std::string coded;
        text(key, coded);
        if (auto decoded = from_base64(coded)) {
            out = std::move(*decoded);
        } else {
            reading_.fault(ErrorCode::bad_format, "base64", at(key));
        }
    }

    /// Tells of keys that no field list asked for.
    void finish() {
        for (const auto& [key, value] : object_.items()) {
            if (std::find(asked_.begin(), asked_.end(), key) == asked_.end()) {
                reading_.fault(ErrorCode::bad_format, key, path_);
            }
        }
    }

  private:
    [[nodiscard]] std::string at(const char* key) const {
        return path_.empty() ? key : fmt::format("{}.{}", path_, key);
    }
    const json* find(const char* key) {
        asked_.emplace_back(key);
        const auto found = object_.find(key);
        return found == object_.end() ? nullptr : &*found;
    }
    const json* required(const char* key) {
        const json* value = find(key);
        if (value == nullptr) {
            reading_.fault(ErrorCode::missing_column, key, path_);
        }
        return value;
    }
    template <class T>
    void usual(const char* key, T& out, T usual_value) {
        out = std::move(usual_value);
        if (const json* value = find(key)) {
            take(*value, key, out);
        }
    }
    template <class Id>
    void note(Id id, std::string path) {
        if (id.is_assigned()) {
            reading_.references.push_back({kind_of(id), id.row(), std::move(path)});
        }
    }
    template <class T>
    void take(const json& value, const char* key, T& out) {
        take_at(value, at(key), out);
    }
    template <class T>
    void take_at(const json& value, const std::string& path, T& out) {
        if (const Fault fault = value_of(value, out)) {
            reading_.fault(*fault, value.is_string() ? value.get<std::string>() : value.type_name(),
                           path);
        }
    }
    void take_at(const json& value, const std::string& path, model::Target& out) {
        take_object(value, path, out);
    }
    void take_at(const json& value, const std::string& path, Stamp& out) {
        take_object(value, path, out);
    }
    void take_at(const json& value, const std::string& path, model::StageTemplate& out) {
        const auto stage =
            model::read_stage_template(value.dump(-1, ' ', false, json::error_handler_t::replace));
        if (stage) {
            out = *stage;
            return;
        }
        for (const base::Error& error : stage.error()) {
            reading_.fault(error.code, error.detail,
                           error.where.empty() ? path : fmt::format("{}.{}", path, error.where));
        }
    }
    template <class T>
    void take_object(const json& value, const std::string& path, T& out) {
        if (!value.is_object()) {
            reading_.fault(ErrorCode::wrong_kind, value.type_name(), path);
            return;
        }
        Reader reader(value, path, reading_);
        visit(reader, out);
        reader.finish();
    }

    const json& object_;
    std::string path_;
    Reading& reading_;
    std::vector<std::string> asked_;
};

template <class T>
void read_entry(Reader& reader, Entry<T>& entry) {
    visit(reader, entry.value);
    reader("entered", entry.entered);
    reader("taken_back", entry.withdrawn);
}

void read_entry(Reader& reader, model::LoggedStep& step) {
    visit(reader, step);
}

template <class T>
Entry<T> blank_entry(const Entries<T>&) {
    return {blank<T>(), {}, {}};
}
model::LoggedStep blank_entry(const std::vector<model::LoggedStep>&) {
    return blank<model::LoggedStep>();
}

template <class Array>
void read_array(const json& root, const char* kind, Array& out, Reading& reading) {
    const auto found = root.find(kind);
    if (found == root.end()) {
        return;
    }
    if (!found->is_array()) {
        reading.fault(ErrorCode::wrong_kind, found->type_name(), kind);
        return;
    }
    for (std::size_t i = 0; i < found->size(); ++i) {
        const json& object = (*found)[i];
        const std::string path = fmt::format("{}[{}]", kind, i);
        if (!object.is_object()) {
            reading.fault(ErrorCode::wrong_kind, object.type_name(), path);
            continue;
        }
        Reader reader(object, path, reading);
        auto entry = blank_entry(out);
        read_entry(reader, entry);
        reader.finish();
        out.push_back(std::move(entry));
    }
}

void read_preferences(const json& root, BookDocument& out, Reading& reading) {
    const auto found = root.find("preferences");
    if (found == root.end()) {
        return;
    }
    if (!found->is_object()) {
        reading.fault(ErrorCode::wrong_kind, found->type_name(), "preferences");
        return;
    }
    for (const auto& [key, value] : found->items()) {
        if (value.is_string()) {
            out.preferences.emplace_back(key, value.get<std::string>());
        } else {
            reading.fault(ErrorCode::wrong_kind, value.type_name(), "preferences." + key);
        }
    }
}

/// Format and version decide whether the rest means anything.
bool read_heading(const json& root, Reading& reading) {
    if (!root.is_object()) {
        reading.fault(ErrorCode::bad_format, "no object", "");
        return false;
    }
    const auto format = root.find("format");
    if (format == root.end() || *format != document_format) {
        reading.fault(ErrorCode::bad_format, std::string(document_format), "format");
        return false;
    }
    const auto version = root.find("version");
    if (version == root.end() || !version->is_number_integer() ||
        version->get<std::int64_t>() < 1) {
        reading.fault(ErrorCode::bad_format, "no version", "version");
        return false;
    }
    if (version->get<std::int64_t>() > document_version) {
        reading.fault(ErrorCode::newer_book, version->dump(), "version");
        return false;
    }
    return true;
}

void check_root_keys(const json& root, BookDocument& document, Reading& reading) {
    std::set<std::string, std::less<>> known{"format",     "version",     "scope", "written_by",
                                             "written_at", "preferences", "log",   "$schema"};
    each_kind([&](const char* kind, const auto&) { known.insert(kind); }, document);
    for (const auto& [key, value] : root.items()) {
        if (known.count(key) == 0) {
            reading.fault(ErrorCode::bad_format, key, "");
        }
    }
}

void check_references(Reading& reading) {
    for (Reference& reference : reading.references) {
        const auto ids = reading.ids.find(std::string_view(reference.kind));
        if (ids == reading.ids.end() || ids->second.count(reference.row) == 0) {
            reading.fault(ErrorCode::no_such_entry,
                          fmt::format("{} {}", reference.kind, reference.row),
                          std::move(reference.path));
        }
    }
}

std::optional<json> parse_text(std::string_view text, Reading& reading) {
    bool too_deep = false;
    const auto watch = [&](int depth, json::parse_event_t, json&) {
        too_deep = too_deep || depth > max_depth;
        return depth <= max_depth;
    };
    try {
        json root = json::parse(text.begin(), text.end(), watch);
        if (!too_deep) {
            return root;
        }
        reading.fault(ErrorCode::bad_format, "nested too deeply", "");
    } catch (const json::parse_error& error) {
        reading.fault(ErrorCode::bad_format, "not JSON", fmt::format("byte {}", error.byte));
    } catch (const json::exception& error) { // a number beyond a double
        reading.fault(ErrorCode::out_of_range, error.what(), "");
    }
    return {};
}

} // namespace

DocumentResult<BookDocument> read_book_document(std::string_view text) {
    Reading reading;
    const auto root = parse_text(text, reading);
    if (!root || !read_heading(*root, reading)) {
        return tl::unexpected(std::move(reading.faults));
    }
    BookDocument document;
    Reader heading(*root, "", reading);
    heading("scope", document.scope);
    heading.text("written_by", document.written_by);
    heading("written_at", document.written_at);
    check_root_keys(*root, document, reading);
    each_kind([&](const char* kind, auto& out) { read_array(*root, kind, out, reading); },
              document);
    read_array(*root, "log", document.log, reading);
    read_preferences(*root, document, reading);
    check_references(reading);
    if (!reading.faults.empty()) {
        return tl::unexpected(std::move(reading.faults));
    }
    return document;
}

} // namespace core::exchange
