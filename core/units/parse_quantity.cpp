#include "core/units/parse.h"
#include "core/units/scan.h"
#include "core/units/unit_names.h"

#include <cmath>
#include <string>

namespace core::units {
namespace {

using base::ErrorCode;
using detail::Kind;
using detail::UnitName;

struct FoundUnit {
    UnitName unit;
    std::string leftover; ///< words after the unit
};

/// Strips a full stop of an abbreviation ("oz.") and a comma of a list ("1 lb, 3 oz").
std::string_view without_stop(std::string_view word, bool more_follows) {
    if (!word.empty() && (word.back() == '.' || (word.back() == ',' && more_follows))) {
        word.remove_suffix(1);
    }
    return word;
}

/// The longest run of leading words of `text` that is a unit of `kind`.
base::Result<FoundUnit> resolve_unit(Kind kind, const std::string& text, bool more_follows) {
    std::string_view words = text;
    for (;;) {
        const auto word = without_stop(words, more_follows || words.size() < text.size());
        if (const auto unit = detail::find_unit(kind, word)) {
            std::string leftover = text.substr(words.size());
            leftover.erase(0, leftover.find_first_not_of(' '));
            return FoundUnit{*unit, leftover};
        }
        if (detail::is_unit_of_any_kind(word)) {
            return base::fault(ErrorCode::wrong_kind, std::string(word));
        }
        const auto blank = words.rfind(' ');
        if (blank == std::string_view::npos) {
            return base::fault(ErrorCode::unknown_unit, text);
        }
        words = words.substr(0, blank);
    }
}

/// A number may fit where its base unit does not: "1e308 kg" is no number of grams.
base::Result<double> finite(double value, std::string_view text) {
    if (!std::isfinite(value)) {
        return base::fault(ErrorCode::out_of_range, std::string(text));
    }
    return value;
}

/// A number, or a sum of falling units of one kind, in the base unit of the kind.
base::Result<double> parse_sum(Kind kind, std::string_view text, std::optional<double> bare,
                               ParseStyle style) {
    detail::Scanner scanner(text);
    if (scanner.at_end()) {
        return base::fault(ErrorCode::empty_input);
    }
    double total = 0;
    double last_factor = 0;
    for (bool first = true; first || !scanner.at_end(); first = false) {
        const std::string before(scanner.rest());
        const auto value = scanner.number(style);
        if (!value) {
            return tl::unexpected(value.error());
        }
        const std::string unit_text = scanner.unit_text();
        const bool more = !scanner.at_end();
        if (unit_text.empty()) {
            if (!first || more || !bare) {
                return base::fault(ErrorCode::unit_missing, std::string(text));
            }
            return finite(*value * *bare, text);
        }
        // Case is meaning here: a megagram is no milligram.
        if (kind == Kind::mass && scanner.unit_as_written().substr(0, 2) == "Mg") {
            return base::fault(ErrorCode::unknown_unit, "Mg");
        }
        const auto found = resolve_unit(kind, unit_text, more);
        if (!found) {
            return tl::unexpected(found.error());
        }
        const double factor = found->unit.to_base;
        if (!found->leftover.empty()) {
            return base::fault(ErrorCode::trailing_text, found->leftover);
        }
        if (!first && (factor >= last_factor || *value < 0 || total < 0)) {
            return base::fault(ErrorCode::trailing_text, before);
        }
        last_factor = factor;
        total += *value * factor;
    }
    return finite(total, text);
}

base::Result<double> not_negative(base::Result<double> value, std::string_view text) {
    if (value && *value < 0) {
        return base::fault(ErrorCode::out_of_range, std::string(text));
    }
    return value;
}

base::Result<double> within(base::Result<double> value, double low, double high,
                            std::string_view text) {
    if (value && !(*value >= low && *value <= high)) {
        return base::fault(ErrorCode::out_of_range, std::string(text));
    }
    return value;
}

template <class Unit, class Factor>
std::optional<double> bare_factor(std::optional<Unit> bare, Factor factor) {
    return bare ? std::optional<double>(factor(*bare)) : std::nullopt;
}

double factor_of(MassUnit unit) {
    switch (unit) {
    case MassUnit::gram:
        return 1;
    case MassUnit::kilogram:
        return Mass::kilograms(1).in_grams();
    case MassUnit::milligram:
        return Mass::milligrams(1).in_grams();
    case MassUnit::ounce:
        return Mass::ounces(1).in_grams();
    case MassUnit::pound:
        return Mass::pounds(1).in_grams();
    }
    return 1;
}

double factor_of(LengthUnit unit) {
    switch (unit) {
    case LengthUnit::millimetre:
        return 1;
    case LengthUnit::centimetre:
        return Length::centimetres(1).in_millimetres();
    case LengthUnit::inch:
        return Length::inches(1).in_millimetres();
    }
    return 1;
}

double factor_of(VolumeUnit unit) {
    switch (unit) {
    case VolumeUnit::millilitre:
        return 1;
    case VolumeUnit::litre:
        return Volume::litres(1).in_millilitres();
    case VolumeUnit::us_fluid_ounce:
        return Volume::us_fluid_ounces(1).in_millilitres();
    case VolumeUnit::us_gallon:
        return Volume::us_gallons(1).in_millilitres();
    }
    return 1;
}

Temperature on_scale(double value, double scale) {
    if (scale == detail::fahrenheit_scale) {
        return Temperature::fahrenheit(value);
    }
    return scale == detail::kelvin_scale ? Temperature::kelvins(value)
                                         : Temperature::celsius(value);
}

} // namespace

base::Result<double> parse_number(std::string_view text, ParseStyle style) {
    detail::Scanner scanner(text);
    if (scanner.at_end()) {
        return base::fault(ErrorCode::empty_input);
    }
    auto value = scanner.number(style);
    if (value && !scanner.at_end()) {
        return base::fault(ErrorCode::trailing_text, std::string(scanner.rest()));
    }
    return value;
}

base::Result<Mass> parse_mass(std::string_view text, std::optional<MassUnit> bare,
                              ParseStyle style) {
    const auto factor = bare_factor(bare, [](MassUnit unit) { return factor_of(unit); });
    return not_negative(parse_sum(Kind::mass, text, factor, style), text).map(Mass::grams);
}

base::Result<Length> parse_length(std::string_view text, std::optional<LengthUnit> bare,
                                  ParseStyle style) {
    const auto factor = bare_factor(bare, [](LengthUnit unit) { return factor_of(unit); });
    return not_negative(parse_sum(Kind::length, text, factor, style), text)
        .map(Length::millimetres);
}

base::Result<Volume> parse_volume(std::string_view text, std::optional<VolumeUnit> bare,
                                  ParseStyle style) {
    const auto factor = bare_factor(bare, [](VolumeUnit unit) { return factor_of(unit); });
    return not_negative(parse_sum(Kind::volume, text, factor, style), text)
        .map(Volume::millilitres);
}

base::Result<Temperature> parse_temperature(std::string_view text,
                                            std::optional<TemperatureUnit> bare, ParseStyle style) {
    detail::Scanner scanner(text);
    if (scanner.at_end()) {
        return base::fault(ErrorCode::empty_input);
    }
    const auto value = scanner.number(style);
    if (!value) {
        return tl::unexpected(value.error());
    }
    const std::string unit_text = scanner.unit_text();
    if (!scanner.at_end()) {
        return base::fault(ErrorCode::trailing_text, std::string(scanner.rest()));
    }
    double scale = detail::celsius_scale;
    if (unit_text.empty()) {
        if (!bare) {
            return base::fault(ErrorCode::unit_missing, std::string(text));
        }
        scale = *bare == TemperatureUnit::fahrenheit ? detail::fahrenheit_scale
                : *bare == TemperatureUnit::kelvin   ? detail::kelvin_scale
                                                     : detail::celsius_scale;
    } else {
        const auto found = resolve_unit(Kind::temperature, unit_text, false);
        if (!found) {
            return tl::unexpected(found.error());
        }
        if (!found->leftover.empty()) {
            return base::fault(ErrorCode::trailing_text, found->leftover);
        }
        scale = found->unit.to_base;
    }
    const Temperature point = on_scale(*value, scale);
    if (point.in_kelvins() < 0) {
        return base::fault(ErrorCode::out_of_range, std::string(text));
    }
    return point;
}

base::Result<MassShare> parse_mass_share(std::string_view text, bool bare_is_percent,
                                         ParseStyle style) {
    const std::optional<double> bare =
        bare_is_percent ? std::optional(MassShare::percent(1).as_fraction()) : std::nullopt;
    return not_negative(parse_sum(Kind::share, text, bare, style), text).map(MassShare::fraction);
}

base::Result<RelativeHumidity> parse_relative_humidity(std::string_view text, ParseStyle style) {
    return within(
               parse_sum(Kind::humidity, text, RelativeHumidity::percent(1).as_fraction(), style),
               0, 1, text)
        .map(RelativeHumidity::fraction);
}

base::Result<AlcoholByVolume> parse_alcohol(std::string_view text, ParseStyle style) {
    return within(parse_sum(Kind::alcohol, text, std::nullopt, style), 0, 1, text)
        .map(AlcoholByVolume::fraction);
}

base::Result<Duration> parse_duration(std::string_view text, ParseStyle style) {
    // Longer is a slip, and added to a moment it would leave what a moment can hold.
    constexpr double most = 1000 * 365.25 * 86400;
    return within(parse_sum(Kind::duration, text, std::nullopt, style), 0, most, text)
        .map(Duration::seconds);
}

} // namespace core::units
