#pragma once

#include "ui/text/style.h"

#include <QString>
#include <QStringList>
#include <vector>

class QSettings;

namespace ui::presenters {

enum class ThemeChoice { system, light, dark };

/// What one person at one desk prefers. Kept outside the book (QSettings): the same book may be
/// read in grams by one and in ounces by another.
struct Preferences {
    text::MassStyle mass = text::MassStyle::grams;
    text::TemperatureStyle temperature = text::TemperatureStyle::celsius;
    text::LengthStyle length = text::LengthStyle::millimetres;
    text::VolumeStyle volume = text::VolumeStyle::millilitres;
    QString language;  ///< BCP 47 ("de", "en-US"); empty follows the desktop
    QString time_zone; ///< IANA name; empty follows the desktop
    QString limit_set; ///< id of core/facts; empty until chosen
    ThemeChoice theme = ThemeChoice::system;
    QString person; ///< initials of who sits here; empty until chosen
    friend bool operator==(const Preferences&, const Preferences&) = default;
};

/// One row a setting: its key, and how it is read and written. Used by load, save and the test
/// that every setting survives the round trip.
struct SettingRow {
    const char* key;
    QString (*read)(const Preferences&);
    /// Leaves the preference alone when the text means nothing.
    void (*write)(Preferences&, const QString&);
};
const std::vector<SettingRow>& setting_rows();

/// Defaults for a desk that has never run the program: units from its locale.
Preferences default_preferences(const QLocale& desktop);
Preferences load_preferences(QSettings& settings, const QLocale& desktop);
void save_preferences(QSettings& settings, const Preferences& preferences);

/// The style these preferences mean. An unknown time zone falls back to the desktop's, then UTC.
text::Style style_of(const Preferences& preferences, const QLocale& desktop);

} // namespace ui::presenters
