#include "ui/text/style.h"

#include "ui/text/unit_words.h"

namespace ui::text {
namespace {

bool customary(const Style& style) {
    return style.mass == MassStyle::ounces || style.mass == MassStyle::pounds;
}

} // namespace

// A bare number means the small unit: people type "740", not "0.74", and a pound typed as a
// bare "2" next to ounces would be a sixteenfold error.
core::units::MassUnit bare_mass_unit(const Style& style) {
    return customary(style) ? core::units::MassUnit::ounce : core::units::MassUnit::gram;
}

core::units::TemperatureUnit bare_temperature_unit(const Style& style) {
    return style.temperature == TemperatureStyle::celsius
               ? core::units::TemperatureUnit::celsius
               : core::units::TemperatureUnit::fahrenheit;
}

core::units::LengthUnit bare_length_unit(const Style& style) {
    return style.length == LengthStyle::millimetres ? core::units::LengthUnit::millimetre
                                                    : core::units::LengthUnit::inch;
}

core::units::VolumeUnit bare_volume_unit(const Style& style) {
    return style.volume == VolumeStyle::millilitres ? core::units::VolumeUnit::millilitre
                                                    : core::units::VolumeUnit::us_fluid_ounce;
}

core::units::ParseStyle parse_style(const Style& style) {
    return {style.locale.decimalPoint() == QLatin1String(",") ? core::units::DecimalSign::comma
                                                              : core::units::DecimalSign::point};
}

QString mass_unit_name(const Style& style) {
    return customary(style) ? UnitWords::tr("oz") : UnitWords::tr("g");
}

QString temperature_unit_name(const Style& style) {
    return style.temperature == TemperatureStyle::celsius ? UnitWords::tr("°C")
                                                          : UnitWords::tr("°F");
}

QString length_unit_name(const Style& style) {
    return style.length == LengthStyle::millimetres ? UnitWords::tr("mm") : UnitWords::tr("in");
}

QString volume_unit_name(const Style& style) {
    return style.volume == VolumeStyle::millilitres ? UnitWords::tr("mL") : UnitWords::tr("fl oz");
}

} // namespace ui::text
