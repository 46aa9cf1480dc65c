#pragma once

#include "core/base/cited.h"
#include "core/base/interval.h"
#include "core/base/result.h"

#include <array>
#include <initializer_list>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

/// Inside of load_facts(): checked reading of one JSON fact file.
namespace core::facts::detail {

using Json = nlohmann::json;

/// Thrown inside the loader only and turned into a Result at its door: a fact file is nested
/// six levels deep, and handing an error up by hand would drown the schema.
struct FactFault {
    base::Error error;
};

/// One object of a fact file together with where it is, so that every fault names its place.
class FactObject {
  public:
    FactObject(const Json& json, std::string where);

    /// Refuses fields that the schema does not know: a misspelt name must not be ignored.
    void only(std::initializer_list<std::string_view> fields) const;
    [[nodiscard]] bool has(const std::string& field) const { return json_.contains(field); }
    [[nodiscard]] std::string text(const std::string& field) const;
    [[nodiscard]] std::string text_or_empty(const std::string& field) const;
    [[nodiscard]] double number(const std::string& field, double low, double high) const;
    [[nodiscard]] bool flag(const std::string& field) const;
    [[nodiscard]] FactObject object(const std::string& field) const;
    [[nodiscard]] const Json& array(const std::string& field) const;
    /// One number, or [low, best, high] in order; all within `low` and `high`.
    [[nodiscard]] base::Interval<double> bounds(const std::string& field, double low,
                                                double high) const;
    /// The word of `field` looked up in `words`.
    template <class Value, std::size_t n>
    [[nodiscard]] Value word(const std::string& field,
                             const std::array<std::pair<std::string_view, Value>, n>& words) const {
        const std::string given = text(field);
        for (const auto& [name, value] : words) {
            if (name == given) {
                return value;
            }
        }
        fail(base::ErrorCode::bad_format, field, given);
    }
    [[nodiscard]] const Json& json() const { return json_; }
    [[nodiscard]] const std::string& where() const { return where_; }
    [[noreturn]] void fail(base::ErrorCode code, const std::string& field,
                           const std::string& detail) const;

  private:
    [[nodiscard]] const Json& field_of(const std::string& field) const;
    const Json& json_;
    std::string where_;
};

/// The `sources` table of a file; every value names one by its key.
class SourceTable {
  public:
    explicit SourceTable(const FactObject& file);
    /// The source that `object` names in its field "source".
    [[nodiscard]] base::Source of(const FactObject& object) const;

  private:
    std::map<std::string, base::Source> sources_;
};

/// The file's text as JSON; a FactFault where it is none.
Json parse_fact_file(std::string_view text, const std::string& file);

} // namespace core::facts::detail
