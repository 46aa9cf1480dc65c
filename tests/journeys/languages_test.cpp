// Walks every page in each complete language in a small window: nothing cut off, and no word of
// English where the language has its own.
#include "tests/journeys/support/every_page.h"
#include "tests/support/ui/translation_file.h"
#include "ui/text/languages.h"

#include <QAbstractButton>
#include <QApplication>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>
#include <QTableView>
#include <QTranslator>
#include <gtest/gtest.h>
#include <map>
#include <set>

using saltloft::testing::EveryPage;
using test_support::language_file;
using test_support::read_translations;
using ui::pages::Page;

namespace {

/// Hears every text that the program asks for and answers none, so that the next one does.
class Listener : public QTranslator {
  public:
    Listener() { QCoreApplication::installTranslator(this); }
    ~Listener() override { QCoreApplication::removeTranslator(this); }
    Listener(const Listener&) = delete;
    Listener& operator=(const Listener&) = delete;
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char*,
                                    int) const override {
        asked.insert({QString::fromUtf8(context), QString::fromUtf8(source)});
        return {};
    }
    mutable std::set<std::pair<QString, QString>> asked;
};

/// What is to be read on a page: labels, buttons, heads of tables, tabs, menus, hints.
QStringList texts_of(const QWidget& root) {
    QStringList texts;
    for (const auto* widget : root.findChildren<QWidget*>()) {
        texts << widget->toolTip() << widget->accessibleName();
        if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            texts << label->text();
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            texts << button->text();
        } else if (const auto* group = qobject_cast<const QGroupBox*>(widget)) {
            texts << group->title();
        } else if (const auto* line = qobject_cast<const QLineEdit*>(widget)) {
            texts << line->placeholderText();
        } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int i = 0; i < tabs->count(); ++i) {
                texts << tabs->tabText(i);
            }
        } else if (widget->objectName() == QLatin1String("guide_chapter_choice")) {
            continue; // the guide's own headings, in the guide's language
        } else if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
            for (int i = 0; i < box->count(); ++i) {
                texts << box->itemText(i);
            }
        } else if (const auto* table = qobject_cast<const QTableView*>(widget)) {
            for (int i = 0; table->model() != nullptr && i < table->model()->columnCount(); ++i) {
                texts << table->model()->headerData(i, Qt::Horizontal).toString();
            }
        }
        for (const auto* action : widget->actions()) {
            texts << action->text();
        }
    }
    texts.removeAll(QString());
    return texts;
}

class EveryLanguage : public EveryPage {
  protected:
    void TearDown() override {
        ui::text::load_texts(*qApp, QStringLiteral("en"));
        QLocale::setDefault(QLocale(QStringLiteral("en-GB")));
        EveryPage::TearDown();
    }
    void speak(const QString& code) {
        ui::presenters::Preferences preferences;
        preferences.language = QString(code).replace(u'_', u'-');
        ui::text::speak(*qApp, preferences.language, QLocale(QStringLiteral("en-GB")));
        prefer(preferences);
    }
};

/// English texts whose translation differs wherever they stand: seen on the screen, they were
/// forgotten. (A word that is right in one place and English in another is left to the Listener.)
std::set<QString> foreign_texts(const QString& code) {
    std::map<QString, bool> differs;
    std::set<QString> own; // "Note" is Italian too: for "Notes"
    for (const auto& text : read_translations(language_file(code))) {
        own.insert(text.texts.begin(), text.texts.end());
        const bool same = text.texts.contains(text.source);
        const auto [at, is_new] = differs.insert({text.source, !same});
        at->second = at->second && !same;
    }
    std::set<QString> foreign;
    for (const auto& [source, all] : differs) {
        if (all && own.count(source) == 0) {
            foreign.insert(source);
        }
    }
    return foreign;
}

} // namespace

TEST_F(EveryLanguage, NothingIsCutOffInASmallWindowOrWithADoubledFont) {
    for (const QString& code : ui::text::languages()) {
        SCOPED_TRACE(code.toStdString());
        speak(code);
        for (const double font : {1.0, 2.0}) {
            visit({1024, 640}, font, [font](Page& page, const std::string& id) {
                saltloft::testing::expect_whole_buttons(page, id);
                saltloft::testing::expect_whole_labels(page, id);
                saltloft::testing::expect_no_sideways_scrolling(page, id, font);
            });
        }
    }
}

TEST_F(EveryLanguage, NoEnglishIsLeftOnThePages) {
    for (const QString& code : ui::text::languages()) {
        if (code == QLatin1String("en")) {
            continue;
        }
        SCOPED_TRACE(code.toStdString());
        speak(code);
        const auto foreign = foreign_texts(code);
        visit({1024, 640}, 1, [&](Page& page, const std::string& id) {
            const QStringList texts = texts_of(*page.window());
            EXPECT_GT(texts.size(), 20) << id;
            for (const QString& text : texts) {
                EXPECT_EQ(foreign.count(text), 0U) << id << ": " << text.toStdString();
            }
        });
    }
}

TEST_F(EveryLanguage, WhateverIsAskedForIsInTheTranslatorsFiles) {
    // Any language will do: their files have the same texts. German's is there from the start.
    std::set<std::pair<QString, QString>> known;
    for (const auto& text : read_translations(language_file(QStringLiteral("de")))) {
        known.insert({text.context, text.source});
    }
    Listener listener;
    visit({1180, 760}, 1, [](Page&, const std::string&) {});
    EXPECT_GT(listener.asked.size(), 300U);
    for (const auto& [context, source] : listener.asked) {
        const bool of_qt = context.startsWith(u'Q') || context == QLatin1String("Data");
        EXPECT_TRUE(of_qt || known.count({context, source}) == 1)
            << "lupdate does not see: " << context.toStdString() << ": " << source.toStdString();
    }
}
