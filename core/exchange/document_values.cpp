#include "core/exchange/document_values.h"

#include "core/units/parse.h"

#include <nlohmann/json.hpp>

namespace core::exchange::detail {

using base::ErrorCode;

namespace {

Fault number(const json& j, double low, double high, double& out) {
    if (!j.is_number()) {
        return ErrorCode::wrong_kind;
    }
    const double value = j.get<double>();
    if (!(value >= low && value <= high)) { // also turns NaN away
        return ErrorCode::out_of_range;
    }
    out = value;
    return {};
}

template <class Quantity>
Fault quantity(const json& j, double low, double high, Quantity (*maker)(double), Quantity& out) {
    double value = 0;
    const Fault fault = number(j, low, high, value);
    if (!fault) {
        out = maker(value);
    }
    return fault;
}

template <class T>
Fault parsed(const json& j, base::Result<T> (*parse)(std::string_view), T& out) {
    if (!j.is_string()) {
        return ErrorCode::wrong_kind;
    }
    const auto value = parse(j.get_ref<const std::string&>());
    if (!value) {
        return value.error().code;
    }
    out = *value;
    return {};
}

} // namespace

// Ranges that no real entry leaves and whose grains fit the integers on disk with room to spare.
Fault value_of(const json& j, units::Mass& out) {
    return quantity(j, -1e9, 1e9, &units::Mass::grams, out);
}
Fault value_of(const json& j, units::MassShare& out) {
    return quantity(j, -1e4, 1e4, &units::MassShare::percent, out);
}
Fault value_of(const json& j, units::Length& out) {
    return quantity(j, 0, 1e5, &units::Length::millimetres, out);
}
Fault value_of(const json& j, units::Temperature& out) {
    return quantity(j, -273.15, 1e3, &units::Temperature::celsius, out);
}
Fault value_of(const json& j, units::TemperatureStep& out) {
    return quantity(j, -1e3, 1e3, &units::TemperatureStep::kelvins, out);
}
Fault value_of(const json& j, units::RelativeHumidity& out) {
    return quantity(j, -200, 200, &units::RelativeHumidity::percent, out);
}
Fault value_of(const json& j, double& out) {
    return number(j, -1e15, 1e15, out);
}

Fault value_of(const json& j, int& out) {
    if (!j.is_number_integer()) {
        return ErrorCode::wrong_kind;
    }
    const auto value = j.get<std::int64_t>();
    if (value < -1'000'000'000 || value > 1'000'000'000) {
        return ErrorCode::out_of_range;
    }
    out = static_cast<int>(value);
    return {};
}

Fault value_of(const json& j, bool& out) {
    if (!j.is_boolean()) {
        return ErrorCode::wrong_kind;
    }
    out = j.get<bool>();
    return {};
}

Fault value_of(const json& j, std::string& out) {
    if (!j.is_string()) {
        return ErrorCode::wrong_kind;
    }
    out = j.get<std::string>();
    return {};
}

Fault value_of(const json& j, units::Instant& out) {
    return parsed(j, &units::parse_instant, out);
}
Fault value_of(const json& j, units::Day& out) {
    return parsed(j, &units::parse_day, out);
}

Fault id_of(const json& j, std::int64_t& out) {
    if (!j.is_number_integer()) {
        return ErrorCode::wrong_kind;
    }
    const bool too_large = j.is_number_unsigned() && j.get<std::uint64_t>() > INT64_MAX;
    if (too_large || j.get<std::int64_t>() <= 0) {
        return ErrorCode::out_of_range;
    }
    out = j.get<std::int64_t>();
    return {};
}

bool is_word(const json& j, std::string_view word) {
    return j.is_string() && j.get_ref<const std::string&>() == word;
}

Fault word_fault(const json& j) {
    return j.is_string() ? ErrorCode::bad_format : ErrorCode::wrong_kind;
}

} // namespace core::exchange::detail
