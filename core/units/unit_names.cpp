#include "core/units/unit_names.h"

#include "core/units/mass.h"
#include "core/units/volume.h"

#include <algorithm>
#include <array>

namespace core::units::detail {
namespace {

constexpr double ounce = Mass::grams_per_ounce;
constexpr double pound = Mass::grams_per_pound;
constexpr double gallon = Volume::millilitres_per_us_gallon;
constexpr double minute = 60;
constexpr double hour = 3600;
constexpr double day = 86400;

// Names people write. Left out on purpose, because they mean two things: "gr" (gram or grain),
// "cwt" (100 or 112 lb), "pint" and "cup" (by country), "m" for a time (minute or month),
// "month" (28 to 31 days). Spoons are sizes named by the person: core/facts.
constexpr std::array names = {
    UnitName{"g", Kind::mass, 1},
    UnitName{"gram", Kind::mass, 1},
    UnitName{"grams", Kind::mass, 1},
    UnitName{"gramme", Kind::mass, 1},
    UnitName{"grammes", Kind::mass, 1},
    UnitName{"kg", Kind::mass, 1000},
    UnitName{"kgs", Kind::mass, 1000},
    UnitName{"kilo", Kind::mass, 1000},
    UnitName{"kilos", Kind::mass, 1000},
    UnitName{"kilogram", Kind::mass, 1000},
    UnitName{"kilograms", Kind::mass, 1000},
    UnitName{"kilogramme", Kind::mass, 1000},
    UnitName{"kilogrammes", Kind::mass, 1000},
    UnitName{"mg", Kind::mass, 1e-3},
    UnitName{"milligram", Kind::mass, 1e-3},
    UnitName{"milligrams", Kind::mass, 1e-3},
    UnitName{"oz", Kind::mass, ounce},
    UnitName{"ounce", Kind::mass, ounce},
    UnitName{"ounces", Kind::mass, ounce},
    UnitName{"lb", Kind::mass, pound},
    UnitName{"lbs", Kind::mass, pound},
    UnitName{"pound", Kind::mass, pound},
    UnitName{"pounds", Kind::mass, pound},
    UnitName{"jin", Kind::mass, 500}, // the Chinese market pound, 500 g since 1959

    UnitName{"ml", Kind::volume, 1},
    UnitName{"millilitre", Kind::volume, 1},
    UnitName{"millilitres", Kind::volume, 1},
    UnitName{"milliliter", Kind::volume, 1},
    UnitName{"milliliters", Kind::volume, 1},
    UnitName{"cc", Kind::volume, 1},
    UnitName{"cm3", Kind::volume, 1},
    UnitName{"cl", Kind::volume, 10},
    UnitName{"dl", Kind::volume, 100},
    UnitName{"l", Kind::volume, 1000},
    UnitName{"litre", Kind::volume, 1000},
    UnitName{"litres", Kind::volume, 1000},
    UnitName{"liter", Kind::volume, 1000},
    UnitName{"liters", Kind::volume, 1000},
    UnitName{"fl oz", Kind::volume, gallon / 128},
    UnitName{"floz", Kind::volume, gallon / 128},
    UnitName{"fl. oz", Kind::volume, gallon / 128},
    UnitName{"us fl oz", Kind::volume, gallon / 128},
    UnitName{"fluid ounce", Kind::volume, gallon / 128},
    UnitName{"fluid ounces", Kind::volume, gallon / 128},
    UnitName{"gal", Kind::volume, gallon},
    UnitName{"us gal", Kind::volume, gallon},
    UnitName{"gallon", Kind::volume, gallon},
    UnitName{"gallons", Kind::volume, gallon},
    UnitName{"us gallon", Kind::volume, gallon},
    UnitName{"us gallons", Kind::volume, gallon},

    UnitName{"mm", Kind::length, 1},
    UnitName{"millimetre", Kind::length, 1},
    UnitName{"millimetres", Kind::length, 1},
    UnitName{"millimeter", Kind::length, 1},
    UnitName{"millimeters", Kind::length, 1},
    UnitName{"cm", Kind::length, 10},
    UnitName{"centimetre", Kind::length, 10},
    UnitName{"centimetres", Kind::length, 10},
    UnitName{"centimeter", Kind::length, 10},
    UnitName{"centimeters", Kind::length, 10},
    UnitName{"m", Kind::length, 1000},
    UnitName{"metre", Kind::length, 1000},
    UnitName{"metres", Kind::length, 1000},
    UnitName{"meter", Kind::length, 1000},
    UnitName{"meters", Kind::length, 1000},
    UnitName{"in", Kind::length, 25.4},
    UnitName{"inch", Kind::length, 25.4},
    UnitName{"inches", Kind::length, 25.4},
    UnitName{"\"", Kind::length, 25.4},
    UnitName{"\xE2\x80\xB3", Kind::length, 25.4}, // double prime
    UnitName{"\xE2\x80\x9D", Kind::length, 25.4}, // right double quote
    UnitName{"ft", Kind::length, 304.8},
    UnitName{"foot", Kind::length, 304.8},
    UnitName{"feet", Kind::length, 304.8},
    UnitName{"'", Kind::length, 304.8},

    UnitName{"c", Kind::temperature, celsius_scale},
    UnitName{"\xC2\xB0"
             "c",
             Kind::temperature, celsius_scale},
    UnitName{"\xC2\xB0 c", Kind::temperature, celsius_scale},
    UnitName{"\xE2\x84\x83", Kind::temperature, celsius_scale},
    UnitName{"deg c", Kind::temperature, celsius_scale},
    UnitName{"degc", Kind::temperature, celsius_scale},
    UnitName{"degrees c", Kind::temperature, celsius_scale},
    UnitName{"celsius", Kind::temperature, celsius_scale},
    UnitName{"f", Kind::temperature, fahrenheit_scale},
    UnitName{"\xC2\xB0"
             "f",
             Kind::temperature, fahrenheit_scale},
    UnitName{"\xC2\xB0 f", Kind::temperature, fahrenheit_scale},
    UnitName{"\xE2\x84\x89", Kind::temperature, fahrenheit_scale},
    UnitName{"deg f", Kind::temperature, fahrenheit_scale},
    UnitName{"degf", Kind::temperature, fahrenheit_scale},
    UnitName{"degrees f", Kind::temperature, fahrenheit_scale},
    UnitName{"fahrenheit", Kind::temperature, fahrenheit_scale},
    UnitName{"k", Kind::temperature, kelvin_scale},
    UnitName{"kelvin", Kind::temperature, kelvin_scale},

    UnitName{"%", Kind::share, 1e-2},
    UnitName{"percent", Kind::share, 1e-2},
    UnitName{"per cent", Kind::share, 1e-2},
    UnitName{"pct", Kind::share, 1e-2},
    UnitName{"% w/w", Kind::share, 1e-2},
    UnitName{"\xE2\x80\xB0", Kind::share, 1e-3}, // per mille
    UnitName{"g/kg", Kind::share, 1e-3},
    UnitName{"g per kg", Kind::share, 1e-3},
    UnitName{"g/100g", Kind::share, 1e-2},
    UnitName{"g/100 g", Kind::share, 1e-2},
    UnitName{"mg/kg", Kind::share, 1e-6},
    UnitName{"mg per kg", Kind::share, 1e-6},
    UnitName{"mg/g", Kind::share, 1e-3},
    UnitName{"ppm", Kind::share, 1e-6},
    UnitName{"g/lb", Kind::share, 1 / pound},
    UnitName{"oz/lb", Kind::share, 1.0 / 16},
    UnitName{"oz/100lb", Kind::share, 1.0 / 1600},
    UnitName{"oz/100 lb", Kind::share, 1.0 / 1600},
    UnitName{"lb/100lb", Kind::share, 1e-2},
    UnitName{"lb/100 lb", Kind::share, 1e-2},

    UnitName{"%", Kind::alcohol, 1e-2},
    UnitName{"percent", Kind::alcohol, 1e-2},
    UnitName{"% abv", Kind::alcohol, 1e-2},
    UnitName{"%abv", Kind::alcohol, 1e-2},
    UnitName{"abv", Kind::alcohol, 1e-2},
    UnitName{"% vol", Kind::alcohol, 1e-2},
    UnitName{"%vol", Kind::alcohol, 1e-2},
    UnitName{"vol%", Kind::alcohol, 1e-2},
    UnitName{"vol %", Kind::alcohol, 1e-2},
    UnitName{"vol", Kind::alcohol, 1e-2},
    UnitName{"proof us", Kind::alcohol, 1.0 / 200},
    UnitName{"us proof", Kind::alcohol, 1.0 / 200},
    UnitName{"proof (us)", Kind::alcohol, 1.0 / 200},
    UnitName{"proof uk", Kind::alcohol, 1.0 / 175},
    UnitName{"uk proof", Kind::alcohol, 1.0 / 175},
    UnitName{"proof (uk)", Kind::alcohol, 1.0 / 175},

    UnitName{"%", Kind::humidity, 1e-2},
    UnitName{"percent", Kind::humidity, 1e-2},
    UnitName{"% rh", Kind::humidity, 1e-2},
    UnitName{"%rh", Kind::humidity, 1e-2},
    UnitName{"rh", Kind::humidity, 1e-2},
    UnitName{"% r.h", Kind::humidity, 1e-2},

    UnitName{"s", Kind::duration, 1},
    UnitName{"sec", Kind::duration, 1},
    UnitName{"second", Kind::duration, 1},
    UnitName{"seconds", Kind::duration, 1},
    UnitName{"min", Kind::duration, minute},
    UnitName{"mins", Kind::duration, minute},
    UnitName{"minute", Kind::duration, minute},
    UnitName{"minutes", Kind::duration, minute},
    UnitName{"h", Kind::duration, hour},
    UnitName{"hr", Kind::duration, hour},
    UnitName{"hrs", Kind::duration, hour},
    UnitName{"hour", Kind::duration, hour},
    UnitName{"hours", Kind::duration, hour},
    UnitName{"d", Kind::duration, day},
    UnitName{"day", Kind::duration, day},
    UnitName{"days", Kind::duration, day},
    UnitName{"w", Kind::duration, 7 * day},
    UnitName{"wk", Kind::duration, 7 * day},
    UnitName{"wks", Kind::duration, 7 * day},
    UnitName{"week", Kind::duration, 7 * day},
    UnitName{"weeks", Kind::duration, 7 * day},
};

} // namespace

std::optional<UnitName> find_unit(Kind kind, std::string_view name) {
    const auto it = std::find_if(names.begin(), names.end(), [&](const UnitName& unit) {
        return unit.kind == kind && unit.name == name;
    });
    return it == names.end() ? std::nullopt : std::optional(*it);
}

bool is_unit_of_any_kind(std::string_view name) {
    // Proof without a country and degrees without a scale are units, but of no kind we can name.
    constexpr std::array<std::string_view, 4> two_meanings = {"proof", "\xC2\xB0", "deg",
                                                              "degrees"};
    return std::any_of(names.begin(), names.end(),
                       [&](const UnitName& unit) { return unit.name == name; }) ||
           std::find(two_meanings.begin(), two_meanings.end(), name) != two_meanings.end();
}

} // namespace core::units::detail
