#include "ui/presenters/preferences.h"

#include "ui/text/languages.h"

#include <QSettings>
#include <QTimeZone>

namespace ui::presenters {
namespace {

template <class Enum>
struct Word {
    Enum value;
    const char* word;
};

constexpr Word<text::MassStyle> mass_words[] = {{text::MassStyle::grams, "g"},
                                                {text::MassStyle::kilograms, "kg"},
                                                {text::MassStyle::ounces, "oz"},
                                                {text::MassStyle::pounds, "lb"}};
constexpr Word<text::TemperatureStyle> temperature_words[] = {
    {text::TemperatureStyle::celsius, "C"}, {text::TemperatureStyle::fahrenheit, "F"}};
constexpr Word<text::LengthStyle> length_words[] = {{text::LengthStyle::millimetres, "mm"},
                                                    {text::LengthStyle::inches, "in"}};
constexpr Word<text::VolumeStyle> volume_words[] = {{text::VolumeStyle::millilitres, "mL"},
                                                    {text::VolumeStyle::fluid_ounces, "fl oz"}};
constexpr Word<ThemeChoice> theme_words[] = {
    {ThemeChoice::system, "system"}, {ThemeChoice::light, "light"}, {ThemeChoice::dark, "dark"}};

template <class Enum, std::size_t N>
QString word_of(const Word<Enum> (&words)[N], Enum value) {
    for (const auto& word : words) {
        if (word.value == value) {
            return QString::fromLatin1(word.word);
        }
    }
    return {};
}

template <class Enum, std::size_t N>
void value_of(const Word<Enum> (&words)[N], const QString& text, Enum& value) {
    for (const auto& word : words) {
        if (text == QLatin1String(word.word)) {
            value = word.value;
        }
    }
}

} // namespace

const std::vector<SettingRow>& setting_rows() {
    static const std::vector<SettingRow> rows = {
        {"units/mass", [](const Preferences& p) { return word_of(mass_words, p.mass); },
         [](Preferences& p, const QString& t) { value_of(mass_words, t, p.mass); }},
        {"units/temperature",
         [](const Preferences& p) { return word_of(temperature_words, p.temperature); },
         [](Preferences& p, const QString& t) { value_of(temperature_words, t, p.temperature); }},
        {"units/length", [](const Preferences& p) { return word_of(length_words, p.length); },
         [](Preferences& p, const QString& t) { value_of(length_words, t, p.length); }},
        {"units/volume", [](const Preferences& p) { return word_of(volume_words, p.volume); },
         [](Preferences& p, const QString& t) { value_of(volume_words, t, p.volume); }},
        {"language", [](const Preferences& p) { return p.language; },
         [](Preferences& p, const QString& t) { p.language = t; }},
        {"time_zone", [](const Preferences& p) { return p.time_zone; },
         [](Preferences& p, const QString& t) { p.time_zone = t; }},
        {"limit_set", [](const Preferences& p) { return p.limit_set; },
         [](Preferences& p, const QString& t) { p.limit_set = t; }},
        {"theme", [](const Preferences& p) { return word_of(theme_words, p.theme); },
         [](Preferences& p, const QString& t) { value_of(theme_words, t, p.theme); }},
        {"person", [](const Preferences& p) { return p.person; },
         [](Preferences& p, const QString& t) { p.person = t; }},
    };
    return rows;
}

Preferences default_preferences(const QLocale& desktop) {
    Preferences preferences;
    if (desktop.measurementSystem() == QLocale::ImperialUSSystem) {
        preferences.mass = text::MassStyle::pounds;
        preferences.temperature = text::TemperatureStyle::fahrenheit;
        preferences.length = text::LengthStyle::inches;
        preferences.volume = text::VolumeStyle::fluid_ounces;
    }
    return preferences;
}

Preferences load_preferences(QSettings& settings, const QLocale& desktop) {
    Preferences preferences = default_preferences(desktop);
    for (const auto& row : setting_rows()) {
        const QVariant value = settings.value(QLatin1String(row.key));
        if (value.isValid()) {
            row.write(preferences, value.toString());
        }
    }
    return preferences;
}

void save_preferences(QSettings& settings, const Preferences& preferences) {
    for (const auto& row : setting_rows()) {
        settings.setValue(QLatin1String(row.key), row.read(preferences));
    }
}

text::Style style_of(const Preferences& preferences, const QLocale& desktop) {
    text::Style style;
    style.mass = preferences.mass;
    style.temperature = preferences.temperature;
    style.length = preferences.length;
    style.volume = preferences.volume;
    style.locale = text::locale_for(preferences.language, desktop);
    for (const QString& name :
         {preferences.time_zone, QString::fromLatin1(QTimeZone::systemTimeZoneId())}) {
        if (name.isEmpty()) {
            continue;
        }
        if (const auto zone = core::units::Zone::named(name.toStdString())) {
            style.zone = *zone;
            break;
        }
    }
    return style;
}

} // namespace ui::presenters
