#include "core/chamber/log_cell.h"

#include "core/base/ascii.h"

#include <array>

namespace core::chamber {
namespace {

std::string_view trimmed(std::string_view text) {
    const auto blank = [](char c) { return c == ' ' || c == '\t'; };
    while (!text.empty() && blank(text.front())) {
        text.remove_prefix(1);
    }
    while (!text.empty() && blank(text.back())) {
        text.remove_suffix(1);
    }
    return text;
}

bool equals_fold(std::string_view a, std::string_view lower_b) {
    if (a.size() != lower_b.size()) {
        return false;
    }
    for (std::size_t i = 0; i < a.size(); ++i) {
        const char c = a[i] >= 'A' && a[i] <= 'Z' ? static_cast<char>(a[i] - 'A' + 'a') : a[i];
        if (c != lower_b[i]) {
            return false;
        }
    }
    return true;
}

bool is_unit(std::string_view text) {
    constexpr std::array<std::string_view, 13> units{"c",
                                                     "f",
                                                     "k",
                                                     "%",
                                                     "%rh",
                                                     "% rh",
                                                     "rh",
                                                     "\xC2\xB0\x63",
                                                     "\xC2\xB0\x66",
                                                     "\xC2\xB0 c",
                                                     "\xE2\x84\x83",
                                                     "\xE2\x84\x89",
                                                     "\xC2\xB0"};
    for (const auto unit : units) {
        if (equals_fold(text, unit)) {
            return true;
        }
    }
    return false;
}

constexpr std::array<double, 10> powers{1e0, 1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9};

} // namespace

std::optional<double> cell_number(std::string_view text, char decimal_sign) {
    text = trimmed(text);
    std::size_t i = 0;
    bool negative = false;
    if (i < text.size() && (text[i] == '-' || text[i] == '+')) {
        negative = text[i] == '-';
        ++i;
    } else if (text.starts_with("\xE2\x88\x92")) { // the typographic minus
        negative = true;
        i = 3;
    }
    double value = 0;
    std::size_t digits = 0;
    for (; i < text.size() && base::is_digit(text[i]) && digits < 15; ++i, ++digits) {
        value = value * 10.0 + (text[i] - '0');
    }
    std::size_t decimals = 0;
    if (digits > 0 && i < text.size() && text[i] == decimal_sign) {
        ++i;
        for (; i < text.size() && base::is_digit(text[i]); ++i) {
            // Digits past the ninth are below anything a sensor resolves.
            if (decimals < powers.size() - 1) {
                value = value * 10.0 + (text[i] - '0');
                ++decimals;
            }
        }
    }
    if (digits == 0) {
        return std::nullopt;
    }
    const auto rest = trimmed(text.substr(i));
    if (!rest.empty() && !is_unit(rest)) {
        return std::nullopt;
    }
    value *= powers[decimals];
    return negative ? -value : value;
}

bool is_blank_cell(std::string_view text) {
    text = trimmed(text);
    constexpr std::array<std::string_view, 9> signs{"",    "-",    "--",   "---", "nan",
                                                    "n/a", "null", "none", "nil"};
    for (const auto sign : signs) {
        if (equals_fold(text, sign)) {
            return true;
        }
    }
    return false;
}

Cell<units::Temperature> temperature_cell(std::string_view text, char decimal_sign,
                                          TemperatureScale scale) {
    const auto number = cell_number(text, decimal_sign);
    if (!number) {
        return {std::nullopt,
                is_blank_cell(text) ? std::nullopt : std::optional(CellFault::not_a_number)};
    }
    const auto value = scale == TemperatureScale::celsius ? units::Temperature::celsius(*number)
                       : scale == TemperatureScale::fahrenheit
                           ? units::Temperature::fahrenheit(*number)
                           : units::Temperature::kelvins(*number);
    if (value < units::Temperature::celsius(-60) || value > units::Temperature::celsius(100)) {
        return {std::nullopt, CellFault::out_of_range};
    }
    return {value, std::nullopt};
}

Cell<units::RelativeHumidity> humidity_cell(std::string_view text, char decimal_sign,
                                            HumidityScale scale) {
    const auto number = cell_number(text, decimal_sign);
    if (!number) {
        return {std::nullopt,
                is_blank_cell(text) ? std::nullopt : std::optional(CellFault::not_a_number)};
    }
    const auto value = scale == HumidityScale::percent ? units::RelativeHumidity::percent(*number)
                                                       : units::RelativeHumidity::fraction(*number);
    if (value < units::RelativeHumidity::percent(0) ||
        value > units::RelativeHumidity::percent(110)) {
        return {std::nullopt, CellFault::out_of_range};
    }
    return {value, std::nullopt};
}

} // namespace core::chamber
