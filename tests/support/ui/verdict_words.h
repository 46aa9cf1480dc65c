#pragma once

#include <QMap>
#include <QRegularExpression>

namespace test_support {

/// The words of a language for "safe": the program gives no such verdict. Empty for a language it
/// does not know, which a test must refuse.
inline QRegularExpression verdict_in(const QString& language) {
    static const QMap<QString, QString> words{
        {QStringLiteral("en"), QStringLiteral("\\b(un)?safe(ly|ty)?\\b")},
        {QStringLiteral("de"),
         QStringLiteral("\\b(sicher(e[nmrs]?)?|unbedenklich\\w*|gefahrlos\\w*)\\b")},
        {QStringLiteral("it"), QStringLiteral("\\bsicur[oaie]\\b|senza (pericolo|rischi)")},
        {QStringLiteral("es"), QStringLiteral("\\bsegur[oa]s?\\b|sin (peligro|riesgo)")},
        {QStringLiteral("fr"), QStringLiteral("\\bs\u00FBre?s?\\b|sans (danger|risque)")},
        {QStringLiteral("zh"), QStringLiteral("\u5B89\u5168")},
    };
    return QRegularExpression(words.value(language.section(QLatin1Char('_'), 0, 0)),
                              QRegularExpression::CaseInsensitiveOption |
                                  QRegularExpression::UseUnicodePropertiesOption);
}

} // namespace test_support
