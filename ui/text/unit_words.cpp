#include "ui/text/unit_words.h"

#include <QRegularExpression>

namespace ui::text {

QString humidity_unit_name() {
    return UnitWords::tr("% RH");
}

QString in_parsed_units(const QString& typed) {
    // Symbols of mass, length, volume and temperature are the same everywhere and are read as such.
    static constexpr const char* units[] = {
        QT_TRANSLATE_NOOP("UnitWords", "weeks"), QT_TRANSLATE_NOOP("UnitWords", "week"),
        QT_TRANSLATE_NOOP("UnitWords", "days"),  QT_TRANSLATE_NOOP("UnitWords", "day"),
        QT_TRANSLATE_NOOP("UnitWords", "hours"), QT_TRANSLATE_NOOP("UnitWords", "hour"),
        QT_TRANSLATE_NOOP("UnitWords", "d"),     QT_TRANSLATE_NOOP("UnitWords", "h"),
        QT_TRANSLATE_NOOP("UnitWords", "min"),   QT_TRANSLATE_NOOP("UnitWords", "% RH")};
    QString read = typed;
    for (const char* unit : units) {
        const QString own = UnitWords::tr(unit);
        const QString english = QString::fromLatin1(unit);
        if (own != english) {
            // Not inside a longer word: "d" must not be found in "days". Made anew, as the language
            // may change.
            const QRegularExpression word(QStringLiteral("(?<!\\p{L})") +
                                              QRegularExpression::escape(own) +
                                              QStringLiteral("(?!\\p{L})"),
                                          QRegularExpression::CaseInsensitiveOption |
                                              QRegularExpression::UseUnicodePropertiesOption);
            read.replace(word, english); // clazy:exclude=use-static-qregularexpression
        }
    }
    return read;
}

} // namespace ui::text
