#pragma once

#include <optional>
#include <string_view>

/// Inside of the parsing doors (core/units/parse.h): not for other layers.
namespace core::units::detail {

enum class Kind { mass, volume, length, temperature, share, alcohol, humidity, duration };

struct UnitName {
    std::string_view name; ///< lower case, blanks single
    Kind kind;
    double to_base; ///< factor to the base unit of the kind (for temperature: a scale's number)
};

/// The scales of Kind::temperature, kept in to_base because two of them have an offset.
inline constexpr double celsius_scale = 1;
inline constexpr double fahrenheit_scale = 2;
inline constexpr double kelvin_scale = 3;

/// The unit `name` (lower case) of `kind`.
std::optional<UnitName> find_unit(Kind kind, std::string_view name);
/// True where `name` is a unit of some kind, so that the fault is "wrong kind", not "unknown".
bool is_unit_of_any_kind(std::string_view name);

} // namespace core::units::detail
