// The translators' files: nothing missing, nothing lost on the way, and the choice of a language.
#include "core/facts/facts.h"
#include "core/facts/hurdles.h"
#include "core/facts/keeping.h"
#include "core/planning/catalogue.h"
#include "tests/support/temp_folder.h"
#include "tests/support/ui/translation_file.h"
#include "tests/support/ui/verdict_words.h"
#include "ui/text/data_name.h"
#include "ui/text/languages.h"

#include <QCoreApplication>
#include <QProcess>
#include <QRegularExpression>
#include <gtest/gtest.h>
#include <map>
#include <set>

using namespace ui::text;
using test_support::language_file;
using test_support::read_translations;
using test_support::Translation;

namespace {

std::string said(const QString& language, const Translation& of) {
    return (language + QStringLiteral(", ") + of.context + QStringLiteral(": ") + of.source)
        .toStdString();
}

/// Calls `look` with every text of every language that says it is complete, and of English.
void each_text(
    const std::function<void(const QString&, const Translation&, const QString&)>& look) {
    for (const QString& language : languages()) {
        for (const auto& message : read_translations(language_file(language))) {
            for (const QString& text : message.texts) {
                look(language, message, text);
            }
        }
    }
}

/// The parts that the program fills: "%1", "%n", "{place}", with how often each stands there.
std::map<QString, int> blanks(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("%L?[1-9n]|\\{\\w+\\}"));
    std::map<QString, int> found;
    for (auto match = pattern.globalMatch(text); match.hasNext();) {
        ++found[match.next().captured()];
    }
    return found;
}

/// The last mark of a text, with full-width marks taken for their Latin ones. Brackets and quotes
/// are not looked at.
QChar closing_mark(QString text) {
    static const QString wide = QStringLiteral("。？！：；，");
    static const QString plain = QStringLiteral(".?!:;,");
    text = text.trimmed();
    const QChar last = text.isEmpty() ? QChar() : text.back();
    const auto at = wide.indexOf(last);
    const QChar latin = at >= 0 ? plain[at] : last;
    return plain.contains(latin) || latin == QChar(0x2026) ? latin : QChar();
}

/// Letters that every keyboard has: Latin ones and digits.
int accelerators(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("&(?!&)[\\w]"));
    QString plain = text;
    plain.remove(QStringLiteral("&&"));
    int count = 0;
    for (auto match = pattern.globalMatch(plain); match.hasNext(); match.next()) {
        ++count;
    }
    return count;
}

/// Sources as a fresh scan finds them.
std::set<QString> keys_of(const QString& file) {
    std::set<QString> keys;
    for (const auto& message : read_translations(file)) {
        keys.insert(message.key());
    }
    return keys;
}

std::set<std::string> names_in_files() {
    std::set<std::string> names;
    const auto facts = core::facts::built_in_facts();
    for (const auto& entry : facts.catalogue.entries()) {
        names.insert(entry.name);
    }
    for (const auto& measure : facts.measures.all()) {
        names.insert(measure.name);
    }
    for (const auto& set : facts.limit_sets.sets()) {
        names.insert({set.name, set.note});
    }
    for (const auto& hurdle : core::facts::built_in_hurdles().hurdles) {
        names.insert(hurdle.name);
    }
    for (const auto& rule : core::facts::built_in_keep_rules().rules) {
        names.insert({rule.name, rule.note});
    }
    const auto catalogue = core::planning::Catalogue::built_in();
    for (const auto& plan : catalogue.templates()) {
        names.insert({plan.name, plan.family, plan.species});
        for (const auto& stage : plan.stages) {
            names.insert({stage.name, stage.note});
        }
    }
    names.erase(std::string());
    return names;
}

} // namespace

TEST(Languages, NamesOfTheDataFilesAreAllListed) {
    const auto listed = data_names();
    const std::set<std::string> have(listed.begin(), listed.end());
    EXPECT_EQ(have.size(), listed.size()) << "a name stands there twice";
    // Run packaging/languages.sh after a change of resources/facts or resources/plans.
    EXPECT_EQ(have, names_in_files());
}

TEST(Languages, AFreshScanOfTheSourcesFindsNoOtherTexts) {
    const saltloft::testing::TempFolder folder;
    const QString out = QString::fromStdString(folder.file(""));
    QProcess scan;
    auto environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("LUPDATE"), QStringLiteral(SALTLOFT_LUPDATE));
    scan.setProcessEnvironment(environment);
    scan.start(QStringLiteral("bash"),
               {QStringLiteral(SALTLOFT_SOURCE_DIR "/packaging/languages.sh"), out});
    ASSERT_TRUE(scan.waitForFinished(120'000));
    ASSERT_EQ(scan.exitCode(), 0) << scan.readAllStandardError().toStdString();
    for (const QString& language : languages()) {
        const auto fresh = keys_of(out + QStringLiteral("/saltloft_%1.ts").arg(language));
        const auto kept = keys_of(language_file(language));
        for (const QString& key : fresh) {
            EXPECT_EQ(kept.count(key), 1U)
                << language.toStdString()
                << " lacks (run packaging/languages.sh and translate): " << key.toStdString();
        }
        for (const QString& key : kept) {
            EXPECT_EQ(fresh.count(key), 1U)
                << language.toStdString() << " has a text that is gone: " << key.toStdString();
        }
    }
}

TEST(Languages, EveryTextIsFinishedInAsManyFormsAsTheLanguageCounts) {
    // Forms by the Unicode plural rules as Qt keeps them (French: 0 and 1 are singular).
    const std::map<QString, qsizetype> forms = {
        {QStringLiteral("en"), 2}, {QStringLiteral("de"), 2}, {QStringLiteral("it"), 2},
        {QStringLiteral("es"), 2}, {QStringLiteral("fr"), 2}, {QStringLiteral("zh_CN"), 1}};
    for (const QString& language : languages()) {
        ASSERT_EQ(forms.count(language), 1U) << "say how " << language.toStdString() << " counts";
        for (const auto& message : read_translations(language_file(language))) {
            EXPECT_TRUE(message.finished) << said(language, message);
            EXPECT_EQ(message.texts.size(), message.counted ? forms.at(language) : 1)
                << said(language, message);
            for (const QString& text : message.texts) {
                EXPECT_FALSE(text.trimmed().isEmpty()) << said(language, message);
            }
        }
    }
}

TEST(Languages, WhatIsFilledInStandsInTheTranslationToo) {
    each_text([](const QString& language, const Translation& of, const QString& text) {
        auto wanted = blanks(of.source);
        auto found = blanks(text);
        if (of.counted && text == of.texts.front() && of.texts.size() > 1) {
            // "one piece" needs no figure.
            wanted.erase(QStringLiteral("%n"));
            found.erase(QStringLiteral("%n"));
        }
        EXPECT_EQ(found, wanted) << said(language, of) << "\n  " << text.toStdString();
    });
}

TEST(Languages, MarksAndBlanksAtTheEndsAreKept) {
    static const QRegularExpression date_format(QStringLiteral("^[dMy ,]+$"));
    each_text([](const QString& language, const Translation& of, const QString& text) {
        // A date's marks are the language's own: "d" is "d." in German.
        EXPECT_TRUE(closing_mark(text) == closing_mark(of.source) ||
                    date_format.match(of.source).hasMatch())
            << said(language, of) << "\n  " << text.toStdString();
        EXPECT_EQ(text.count(u'\n'), of.source.count(u'\n')) << said(language, of);
        EXPECT_EQ(text.startsWith(u' '), of.source.startsWith(u' ')) << said(language, of);
        EXPECT_EQ(text.endsWith(u' '), of.source.endsWith(u' ')) << said(language, of);
    });
}

TEST(Languages, AKeyForTheKeyboardIsGivenWhereEnglishGivesOne) {
    each_text([](const QString& language, const Translation& of, const QString& text) {
        EXPECT_EQ(accelerators(text), accelerators(of.source))
            << said(language, of) << "\n  " << text.toStdString();
    });
}

TEST(Languages, NoLanguageGivesAVerdictOnSafety) {
    // The words for "safe"; where English denies it ("no figure here makes meat safe"), so may
    // they.
    const QRegularExpression in_english = test_support::verdict_in(QStringLiteral("en"));
    each_text([&](const QString& language, const Translation& of, const QString& text) {
        const QRegularExpression word = test_support::verdict_in(language);
        ASSERT_FALSE(word.pattern().isEmpty()) << language.toStdString();
        if (!in_english.match(of.source).hasMatch()) {
            EXPECT_FALSE(word.match(text).hasMatch())
                << said(language, of) << "\n  " << text.toStdString();
        }
    });
}

TEST(Languages, EachIsOfferedInItsOwnName) {
    const auto choices = language_choices();
    ASSERT_GE(choices.size(), 2U);
    EXPECT_EQ(choices[0].tag, QStringLiteral("en-GB"));
    EXPECT_EQ(choices[0].name, QStringLiteral("English (United Kingdom)"));
    EXPECT_EQ(static_cast<qsizetype>(choices.size()), languages().size() + 1);
    for (const auto& choice : choices) {
        EXPECT_FALSE(choice.name.isEmpty());
        // Choosing it brings its file.
        EXPECT_TRUE(languages().contains(language_for(choice.tag, {})));
        EXPECT_EQ(QLocale(choice.tag).language(), QLocale(language_for(choice.tag, {})).language());
    }
}

TEST(Languages, APreferenceWinsOverTheDesktopAndEnglishIsWhereNobodySpeaks) {
    EXPECT_EQ(language_for(QStringLiteral("en-US"), {QStringLiteral("de-AT")}),
              QStringLiteral("en"));
    EXPECT_EQ(language_for({}, {QStringLiteral("sv-SE"), QStringLiteral("en-GB")}),
              QStringLiteral("en"));
    EXPECT_EQ(language_for({}, {}), QStringLiteral("en"));
    for (const QString& code : languages()) {
        EXPECT_EQ(language_for(QString(code).replace(u'_', u'-'), {QStringLiteral("sv-SE")}), code);
        EXPECT_EQ(language_for({}, {QStringLiteral("sv-SE"), code}), code);
    }
}

TEST(Languages, NumbersFollowTheDesktopsCountryInTheLanguageOfTheWindow) {
    EXPECT_EQ(locale_for({}, QLocale(QStringLiteral("en-US"))), QLocale(QStringLiteral("en-US")));
    EXPECT_EQ(locale_for(QStringLiteral("de"), QLocale(QStringLiteral("en-US"))).language(),
              QLocale::German);
    // Swedish is not spoken: English words, with the decimal comma of Sweden (CLDR en_SE).
    const QLocale in_sweden = locale_for({}, QLocale(QStringLiteral("sv-SE")));
    EXPECT_EQ(in_sweden.language(), QLocale::English);
    EXPECT_EQ(in_sweden.territory(), QLocale::Sweden);
    EXPECT_EQ(in_sweden.decimalPoint(), QStringLiteral(","));
}

TEST(Languages, EnglishCountsOneAndMany) {
    ASSERT_TRUE(load_texts(*qApp, QStringLiteral("en")));
    const auto days = [](int n) {
        return QCoreApplication::translate("PlanWords", "%n day(s)", nullptr, n).toStdString();
    };
    EXPECT_EQ(days(1), "1 day");
    EXPECT_EQ(days(2), "2 days");
    EXPECT_FALSE(load_texts(*qApp, QStringLiteral("xx")));
    ASSERT_TRUE(load_texts(*qApp, QStringLiteral("en")));
}

TEST(Languages, WhatAPersonNamedStaysAsItIs) {
    EXPECT_EQ(data_name(std::string("Aunt's loin")), QStringLiteral("Aunt's loin"));
    EXPECT_EQ(data_name(std::string()), QString());
    EXPECT_EQ(data_name(std::string("Poitrine séchée, dried belly")),
              QStringLiteral("Poitrine séchée, dried belly"));
}
