#pragma once

#include "core/units/parse.h"
#include "core/units/zone.h"

#include <QLocale>
#include <QString>

namespace ui::text {

/// How masses are written and what a bare number means. `pounds` writes pounds and ounces from
/// one pound up; `kilograms` writes kilograms from one kilogram up.
enum class MassStyle { grams, kilograms, ounces, pounds };
enum class TemperatureStyle { celsius, fahrenheit };
enum class LengthStyle { millimetres, inches };
enum class VolumeStyle { millilitres, fluid_ounces };

/// Everything that turns a value into this person's words: units, language, time zone. A plain
/// value; handed to every function that writes.
struct Style {
    MassStyle mass = MassStyle::grams;
    TemperatureStyle temperature = TemperatureStyle::celsius;
    LengthStyle length = LengthStyle::millimetres;
    VolumeStyle volume = VolumeStyle::millilitres;
    QLocale locale = QLocale(QLocale::English, QLocale::UnitedKingdom);
    core::units::Zone zone = core::units::Zone::utc();
};

/// How a number without a unit is read, and which decimal sign this person's language uses.
core::units::MassUnit bare_mass_unit(const Style& style);
core::units::TemperatureUnit bare_temperature_unit(const Style& style);
core::units::LengthUnit bare_length_unit(const Style& style);
core::units::VolumeUnit bare_volume_unit(const Style& style);
core::units::ParseStyle parse_style(const Style& style);

/// The unit's short name as written after a bare number: "g", "oz", "°C", "mm", "mL".
QString mass_unit_name(const Style& style);
QString temperature_unit_name(const Style& style);
QString length_unit_name(const Style& style);
QString volume_unit_name(const Style& style);

} // namespace ui::text
