#pragma once

#include <QCoreApplication>
#include <QString>

/// Words of units that differ by language, both ways.
namespace ui::text {

/// The translators' context of units' names and words.
struct UnitWords {
    Q_DECLARE_TR_FUNCTIONS(UnitWords)
};

QString humidity_unit_name(); ///< "% RH"

/// "10 Tage" -> "10 days": what a person types in their language's words for times and humidity, in
/// the words that core/units reads. All else, and English, comes back as it was.
QString in_parsed_units(const QString& typed);

} // namespace ui::text
