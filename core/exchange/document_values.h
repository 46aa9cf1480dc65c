#pragma once

#include "core/base/id.h"
#include "core/base/result.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include "core/exchange/document_names.h"

#include <nlohmann/json_fwd.hpp>

#include <optional>
#include <string>

/// How each kind of value reads from JSON: nothing comes back when it was read, else what is
/// wrong with it.
namespace core::exchange::detail {

using json = nlohmann::ordered_json;
using Fault = std::optional<base::ErrorCode>;

Fault value_of(const json& j, units::Mass& out);             ///< grams
Fault value_of(const json& j, units::MassShare& out);        ///< percent
Fault value_of(const json& j, units::Length& out);           ///< millimetres
Fault value_of(const json& j, units::Temperature& out);      ///< degrees Celsius
Fault value_of(const json& j, units::TemperatureStep& out);  ///< kelvins
Fault value_of(const json& j, units::RelativeHumidity& out); ///< percent
Fault value_of(const json& j, units::Instant& out);          ///< ISO 8601 with a zone
Fault value_of(const json& j, units::Day& out);              ///< ISO 8601
Fault value_of(const json& j, double& out);
Fault value_of(const json& j, int& out);
Fault value_of(const json& j, bool& out);
Fault value_of(const json& j, std::string& out);
Fault id_of(const json& j, std::int64_t& out);
bool is_word(const json& j, std::string_view word);
Fault word_fault(const json& j);

template <class Tag>
Fault value_of(const json& j, base::Id<Tag>& out) {
    std::int64_t row = 0;
    const Fault fault = id_of(j, row);
    if (!fault) {
        out = base::Id<Tag>::from_row(row);
    }
    return fault;
}

template <class E>
requires std::is_enum_v<E> Fault value_of(const json& j, E& out) {
    for (const auto& [value, name] : names::table_of(E{})) {
        if (is_word(j, name)) {
            out = value;
            return {};
        }
    }
    return word_fault(j);
}

} // namespace core::exchange::detail
