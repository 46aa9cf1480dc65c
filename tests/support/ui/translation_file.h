#pragma once

#include <QString>
#include <QStringList>

#include <vector>

/// Reads the translators' files (resources/languages/*.ts) for the tests of the languages.
namespace test_support {

struct Translation {
    QString context;
    QString source;
    QString comment; ///< tells two equal sources of one context apart; mostly empty
    bool counted = false;
    bool finished = false;
    QStringList texts; ///< one, or one a plural form
    /// What a text is looked up by.
    [[nodiscard]] QString key() const {
        return context + QLatin1Char('\x1f') + source + QLatin1Char('\x1f') + comment;
    }
};

/// Throws std::runtime_error when the file cannot be read: a test must not pass on nothing.
std::vector<Translation> read_translations(const QString& file);
QString language_file(const QString& code); ///< resources/languages/saltloft_CODE.ts

} // namespace test_support
