#include "core/chamber/log_dialect.h"

#include <nlohmann/json.hpp>

#include <array>
#include <utility>

namespace core::chamber {
namespace {

template <class E>
using Codes = std::pair<E, std::string_view>;

constexpr std::array<Codes<Encoding>, 4> encodings{{{Encoding::utf8, "utf8"},
                                                    {Encoding::utf16_le, "utf16_le"},
                                                    {Encoding::utf16_be, "utf16_be"},
                                                    {Encoding::latin1, "latin1"}}};
constexpr std::array<Codes<StampForm>, 6> stamp_forms{
    {{StampForm::year_month_day, "year_month_day"},
     {StampForm::day_month_year, "day_month_year"},
     {StampForm::month_day_year, "month_day_year"},
     {StampForm::epoch_seconds, "epoch_seconds"},
     {StampForm::epoch_milliseconds, "epoch_milliseconds"},
     {StampForm::spreadsheet_days, "spreadsheet_days"}}};
constexpr std::array<Codes<TemperatureScale>, 3> temperature_scales{
    {{TemperatureScale::celsius, "celsius"},
     {TemperatureScale::fahrenheit, "fahrenheit"},
     {TemperatureScale::kelvin, "kelvin"}}};
constexpr std::array<Codes<HumidityScale>, 2> humidity_scales{
    {{HumidityScale::percent, "percent"}, {HumidityScale::fraction, "fraction"}}};
constexpr std::array<Codes<ClockKind>, 3> clock_kinds{{{ClockKind::in_stamp, "in_stamp"},
                                                       {ClockKind::fixed_offset, "fixed_offset"},
                                                       {ClockKind::named_zone, "named_zone"}}};
constexpr std::array<Codes<DialectField>, 10> fields{
    {{DialectField::encoding, "encoding"},
     {DialectField::separator, "separator"},
     {DialectField::decimal_sign, "decimal_sign"},
     {DialectField::stamp_form, "stamp_form"},
     {DialectField::clock, "clock"},
     {DialectField::stamp_column, "stamp_column"},
     {DialectField::temperature_column, "temperature_column"},
     {DialectField::humidity_column, "humidity_column"},
     {DialectField::temperature_scale, "temperature_scale"},
     {DialectField::humidity_scale, "humidity_scale"}}};
constexpr std::array<Codes<Evidence>, 9> evidences{{{Evidence::told, "told"},
                                                    {Evidence::remembered, "remembered"},
                                                    {Evidence::mark, "mark"},
                                                    {Evidence::heading, "heading"},
                                                    {Evidence::only_possible, "only_possible"},
                                                    {Evidence::even_steps, "even_steps"},
                                                    {Evidence::contents, "contents"},
                                                    {Evidence::context, "context"},
                                                    {Evidence::assumed, "assumed"}}};
constexpr std::array<Codes<char>, 5> signs{
    {{',', "comma"}, {';', "semicolon"}, {'\t', "tab"}, {'|', "bar"}, {'.', "point"}}};

template <class E, std::size_t N>
std::string_view code_in(const std::array<Codes<E>, N>& table, E value) {
    for (const auto& [key, code] : table) {
        if (key == value) {
            return code;
        }
    }
    return {}; // every enumerator is listed above
}

template <class E, std::size_t N>
std::optional<E> value_in(const std::array<Codes<E>, N>& table, std::string_view wanted) {
    for (const auto& [key, code] : table) {
        if (code == wanted) {
            return key;
        }
    }
    return std::nullopt;
}

using nlohmann::json;

json column_json(const std::optional<std::size_t>& column) {
    return column ? json(*column) : json(nullptr);
}

std::optional<std::size_t> column_from(const json& value) {
    return value.is_null() ? std::nullopt : std::optional(value.get<std::size_t>());
}

/// The coded value under `key`; a code we do not know is a type error like any other.
template <class E, std::size_t N>
E coded(const json& doc, const char* key, const std::array<Codes<E>, N>& table) {
    const auto value = value_in(table, doc.at(key).get<std::string>());
    if (!value) {
        throw json::other_error::create(501, std::string(key), &doc);
    }
    return *value;
}

} // namespace

std::string_view code_of(Encoding value) {
    return code_in(encodings, value);
}
std::string_view code_of(StampForm value) {
    return code_in(stamp_forms, value);
}
std::string_view code_of(TemperatureScale value) {
    return code_in(temperature_scales, value);
}
std::string_view code_of(HumidityScale value) {
    return code_in(humidity_scales, value);
}
std::string_view code_of(ClockKind value) {
    return code_in(clock_kinds, value);
}
std::string_view code_of(DialectField value) {
    return code_in(fields, value);
}
std::string_view code_of(Evidence value) {
    return code_in(evidences, value);
}

std::string code_of_sign(char sign) {
    const auto code = code_in(signs, sign);
    return code.empty() ? std::string(1, sign) : std::string(code);
}

std::optional<StampForm> stamp_form_from(std::string_view code) {
    return value_in(stamp_forms, code);
}
std::optional<TemperatureScale> temperature_scale_from(std::string_view code) {
    return value_in(temperature_scales, code);
}
std::optional<HumidityScale> humidity_scale_from(std::string_view code) {
    return value_in(humidity_scales, code);
}
std::optional<Encoding> encoding_from(std::string_view code) {
    return value_in(encodings, code);
}

std::optional<char> sign_from(std::string_view code) {
    if (const auto named = value_in(signs, code)) {
        return named;
    }
    return code.size() == 1 ? std::optional(code.front()) : std::nullopt;
}

std::string to_json(const LogDialect& d) {
    return json{{"encoding", code_of(d.encoding)},
                {"separator", std::string(1, d.separator)},
                {"decimal_sign", std::string(1, d.decimal_sign)},
                {"carriage_return_ends_line", d.carriage_return_ends_line},
                {"lines_before_data", d.lines_before_data},
                {"stamp", code_of(d.stamp)},
                {"stamp_column", d.columns.stamp},
                {"time_column", column_json(d.columns.time_of_day)},
                {"temperature_column", column_json(d.columns.temperature)},
                {"humidity_column", column_json(d.columns.humidity)},
                {"temperature", code_of(d.temperature)},
                {"humidity", code_of(d.humidity)},
                {"clock", code_of(d.clock)},
                {"offset_seconds", d.offset_seconds},
                {"zone", d.zone},
                {"newest_first", d.newest_first}}
        .dump();
}

base::Result<LogDialect> dialect_from_json(std::string_view text) {
    try {
        const json doc = json::parse(text);
        LogDialect d;
        const auto one_char = [&](const char* key) {
            const auto value = doc.at(key).get<std::string>();
            if (value.size() != 1) {
                throw json::other_error::create(501, key, &doc);
            }
            return value.front();
        };
        d.encoding = coded(doc, "encoding", encodings);
        d.separator = one_char("separator");
        d.decimal_sign = one_char("decimal_sign");
        d.carriage_return_ends_line = doc.at("carriage_return_ends_line").get<bool>();
        d.lines_before_data = doc.at("lines_before_data").get<int>();
        d.stamp = coded(doc, "stamp", stamp_forms);
        d.columns.stamp = doc.at("stamp_column").get<std::size_t>();
        d.columns.time_of_day = column_from(doc.at("time_column"));
        d.columns.temperature = column_from(doc.at("temperature_column"));
        d.columns.humidity = column_from(doc.at("humidity_column"));
        d.temperature = coded(doc, "temperature", temperature_scales);
        d.humidity = coded(doc, "humidity", humidity_scales);
        d.clock = coded(doc, "clock", clock_kinds);
        d.offset_seconds = doc.at("offset_seconds").get<int>();
        d.zone = doc.at("zone").get<std::string>();
        d.newest_first = doc.at("newest_first").get<bool>();
        return d;
    } catch (const json::exception& error) {
        return base::fault(base::ErrorCode::bad_format, error.what(), "log dialect");
    }
}

} // namespace core::chamber
