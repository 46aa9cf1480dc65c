#pragma once

#include "core/base/embedded.h"

#include <QLocale>
#include <QString>
#include <QStringList>

#include <span>
#include <vector>

class QCoreApplication;

/// The languages of the window. Their texts (resources/languages/*.ts) are built into the program;
/// those named in resources/languages/complete.txt are offered.
namespace ui::text {

/// The compiled texts "saltloft_de.qm"... and the list "complete.txt".
std::span<const core::base::EmbeddedFile> language_files();

/// Codes as in the file names: "en" first, then the complete ones: "de", "zh_CN".
const QStringList& languages();

/// What a person chooses between: a BCP 47 tag for the preference, and its name in itself.
struct LanguageChoice {
    QString tag;
    QString name; ///< "English (United Kingdom)", "Deutsch", "简体中文"
};
std::vector<LanguageChoice> language_choices();

/// Which of languages() serves a preference ("de", "en-GB"; empty follows the desktop) or, in
/// their order, the desktop's wishes. English when none does.
QString language_for(const QString& preference, const QStringList& desktop_wishes);

/// How numbers and dates are written. An empty preference keeps the desktop's country, and its
/// language too where the window speaks it: month names must be in the language around them.
QLocale locale_for(const QString& preference, const QLocale& desktop);

/// Makes the program speak as the preference and the desktop wish: texts, and the locale of Qt's
/// own fields and calendars. Widgets made before keep their texts.
void speak(QCoreApplication& application, const QString& preference, const QLocale& desktop);

/// Puts the texts of one file of resources/languages in force in place of those before, and Qt's
/// own for standard buttons. False, and English, when that language is not built in. The door of
/// tests and pictures of languages that are not complete yet; `speak` is the program's.
bool load_texts(QCoreApplication& application, const QString& code);

} // namespace ui::text
