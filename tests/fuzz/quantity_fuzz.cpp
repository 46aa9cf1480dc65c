// Any text through every door that reads a quantity, a moment or a day: it may be refused, never
// crash. What is read is finite and within its kind, blanks around it change nothing, and written
// in its base unit it reads back as the same. "Either decimal sign" never reads what neither sign
// by itself would read.
#include "core/units/parse.h"

#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <fmt/format.h>
#include <limits>
#include <optional>
#include <string>
#include <string_view>

namespace {

using namespace core::units;

void demand(bool holds) {
    if (!holds) {
        std::abort();
    }
}

/// The shortest text that is `value`, with the decimal sign of `sign`.
std::string written(double value, DecimalSign sign) {
    std::string text = fmt::format("{}", value);
    if (const auto point = text.find('.'); sign == DecimalSign::comma && point != text.npos) {
        text[point] = ',';
    }
    return text;
}

/// `read(text, style)` is a door, `base(value)` the value in the unit that `unit` names. A number
/// that a comma might group is ambiguous under `either`, so values are written with a point there.
template <class Read, class Base>
void through_door(const std::string& text, Read read, Base base, double low, double high,
                  std::string_view unit) {
    const auto either = read(text, {DecimalSign::either});
    bool one_agrees = !either;
    for (const DecimalSign sign : {DecimalSign::either, DecimalSign::point, DecimalSign::comma}) {
        const auto value = read(text, {sign});
        const auto padded = read(" " + text + "\t", {sign});
        demand(value.has_value() == padded.has_value());
        if (!value) {
            demand(value.error().code == padded.error().code);
            continue;
        }
        const double number = base(*value);
        demand(std::isfinite(number) && number >= low && number <= high);
        demand(*value == *padded);
        const auto again = read(written(number, sign) + std::string(unit), {sign});
        demand(again && std::abs(base(*again) - number) <= 1e-12 * std::abs(number));
        one_agrees = one_agrees || (sign != DecimalSign::either && *value == *either);
    }
    demand(one_agrees);
}

void quantities(const std::string& text) {
    const double most = std::numeric_limits<double>::max();
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_number(t, s); },
        [](double v) { return v; }, -most, most, "");
    for (const auto bare : {std::optional<MassUnit>{}, std::optional(MassUnit::kilogram)}) {
        through_door(
            text, [&](const auto& t, ParseStyle s) { return parse_mass(t, bare, s); },
            [](Mass v) { return v.in_grams(); }, 0, most, " g");
    }
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_length(t, LengthUnit::inch, s); },
        [](Length v) { return v.in_millimetres(); }, 0, most, "mm");
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_volume(t, VolumeUnit::us_gallon, s); },
        [](Volume v) { return v.in_millilitres(); }, 0, most, " ml");
    through_door(
        text,
        [](const auto& t, ParseStyle s) {
            return parse_temperature(t, TemperatureUnit::fahrenheit, s);
        },
        [](Temperature v) { return v.in_kelvins(); }, 0, most, " K");
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_duration(t, s); },
        [](Duration v) { return v.in_seconds(); }, 0, 1000 * 365.25 * 86400, " s");
}

void shares(const std::string& text) {
    // Shares are printed in percent: times 100, so the largest double would not be.
    const double most = std::numeric_limits<double>::max();
    for (const bool bare_is_percent : {false, true}) {
        through_door(
            text,
            [&](const auto& t, ParseStyle s) { return parse_mass_share(t, bare_is_percent, s); },
            [](MassShare v) { return v.in_percent(); }, 0, most, " %");
    }
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_relative_humidity(t, s); },
        [](RelativeHumidity v) { return v.in_percent(); }, 0, 100, " % RH");
    through_door(
        text, [](const auto& t, ParseStyle s) { return parse_alcohol(t, s); },
        [](AlcoholByVolume v) { return v.in_percent(); }, 0, 100, " % vol");
}

void moments(const std::string& text) {
    const auto day = parse_day(text);
    const auto padded_day = parse_day(" " + text + "\t");
    demand(day.has_value() == padded_day.has_value());
    if (day) {
        demand(*day == *padded_day && parse_day(to_iso(*day)) == day);
    }
    const auto at = parse_instant(text);
    demand(at.has_value() == parse_instant("\n" + text + " ").has_value());
    if (at) {
        const std::string iso = to_iso(*at);
        // An offset can carry the first or last day of four-digit years out of them.
        demand(iso.size() != std::string_view("2026-03-01T17:30:00Z").size() ||
               iso.front() == '-' || parse_instant(iso) == at);
    }
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string text(reinterpret_cast<const char*>(data), size); // NOLINT
    quantities(text);
    shares(text);
    moments(text);
    return 0;
}
