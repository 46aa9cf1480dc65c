#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QTranslator>

#include <algorithm>

namespace ui::text {
namespace {

std::string_view file_text(const QString& name) {
    for (const auto& file : language_files()) {
        if (file.name == name.toStdString()) {
            return file.text;
        }
    }
    return {};
}

/// "zh-Hans-CN", "zh_CN" and "zh" all mean the language's file "zh_CN".
QString file_code(const QString& tag) {
    const QLocale wanted(tag);
    const auto& all = languages();
    const auto same = std::find_if(all.begin(), all.end(), [&](const QString& code) {
        const QLocale have(code);
        return have.language() == wanted.language() && have.script() == wanted.script();
    });
    return same == all.end() ? QString() : *same;
}

QString capital(QString name) {
    if (!name.isEmpty()) {
        name[0] = name[0].toUpper(); // "français" begins a line of its own here
    }
    return name;
}

/// Takes the translators of the language before out again.
void forget(QCoreApplication& application) {
    for (auto* old : application.findChildren<QTranslator*>(QStringLiteral("language"))) {
        QCoreApplication::removeTranslator(old);
        delete old;
    }
}

} // namespace

const QStringList& languages() {
    static const QStringList all = [] {
        QStringList codes{QStringLiteral("en")};
        const std::string_view list = file_text(QStringLiteral("complete.txt"));
        const auto lines =
            QString::fromUtf8(list.data(), static_cast<qsizetype>(list.size())).split(u'\n');
        for (const QString& line : lines) {
            if (!line.trimmed().isEmpty() && !line.startsWith(u'#')) {
                codes << line.trimmed();
            }
        }
        return codes;
    }();
    return all;
}

std::vector<LanguageChoice> language_choices() {
    std::vector<LanguageChoice> choices;
    // Two kinds of English, because they write days differently.
    for (const char* tag : {"en-GB", "en-US"}) {
        const QLocale locale(QString::fromLatin1(tag));
        choices.push_back({QString::fromLatin1(tag),
                           QStringLiteral("English (%1)").arg(locale.nativeTerritoryName())});
    }
    for (const QString& code : languages()) {
        if (code != QLatin1String("en")) {
            choices.push_back(
                {QString(code).replace(u'_', u'-'), capital(QLocale(code).nativeLanguageName())});
        }
    }
    return choices;
}

QString language_for(const QString& preference, const QStringList& desktop_wishes) {
    const QStringList wishes = preference.isEmpty() ? desktop_wishes : QStringList{preference};
    for (const QString& wish : wishes) {
        if (QString code = file_code(wish); !code.isEmpty()) {
            return code;
        }
    }
    return QStringLiteral("en");
}

QLocale locale_for(const QString& preference, const QLocale& desktop) {
    if (!preference.isEmpty()) {
        return QLocale(preference);
    }
    const QLocale spoken(language_for({}, desktop.uiLanguages()));
    if (desktop.language() == spoken.language() || desktop.language() == QLocale::C) {
        return desktop;
    }
    return QLocale(spoken.language(), spoken.script(), desktop.territory());
}

void speak(QCoreApplication& application, const QString& preference, const QLocale& desktop) {
    QLocale::setDefault(locale_for(preference, desktop));
    load_texts(application, language_for(preference, desktop.uiLanguages()));
}

bool load_texts(QCoreApplication& application, const QString& code) {
    forget(application);
    const auto add = [&](auto load) {
        auto* translator = new QTranslator(&application);
        translator->setObjectName(QStringLiteral("language"));
        const bool loaded = load(*translator);
        if (loaded) {
            QCoreApplication::installTranslator(translator);
        } else {
            delete translator;
        }
        return loaded;
    };
    add([&](QTranslator& of_qt) {
        return of_qt.load(QStringLiteral("qtbase_") + code,
                          QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    });
    return add([&](QTranslator& ours) {
        const auto texts = file_text(QStringLiteral("saltloft_%1.qm").arg(code));
        return ours.load(reinterpret_cast<const uchar*>(texts.data()),
                         static_cast<int>(texts.size()));
    });
}

} // namespace ui::text
