// The guide in the window: F1 from every page, links, Back, and the search through all chapters.
#include "tests/support/temp_folder.h"
#include "ui/look/theme.h"
#include "ui/pages/guide_reader.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/workspace.h"
#include "ui/text/guide.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QScrollBar>
#include <QTest>
#include <QTextBlock>
#include <gtest/gtest.h>

using namespace ui::pages;
using ui::text::Guide;

namespace guide_page_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

Guide english() {
    return ui::text::guide_in(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

QStringList page_ids(bool inner_too = true) {
    QStringList ids;
    for (const auto& entry : all_pages()) {
        if (inner_too || entry.side != Side::inner) {
            ids << QString::fromLatin1(entry.id);
        }
    }
    return ids;
}

class GuideInTheWindow : public ::testing::Test {
  protected:
    void SetUp() override { open(QStringLiteral("en-GB")); }
    void open(const QString& language) {
        window.reset();
        auto book = core::services::Book::open(folder.file("guide.saltloft"),
                                               {.now = now, .create_if_missing = true});
        ASSERT_TRUE(book.has_value());
        ui::presenters::Preferences preferences;
        preferences.language = language;
        workspace = std::make_unique<ui::presenters::Workspace>(
            std::move(*book), preferences, QLocale(language), [] { return now; });
        window = std::make_unique<MainWindow>(*workspace);
        window->resize(1180, 760);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    void open_guide(const char* detail = "") {
        window->show_place({QStringLiteral("guide"), 0, QLatin1String(detail)});
        QCoreApplication::processEvents();
    }
    template <class W>
    W* find(const char* name) {
        auto* found = window->page()->findChild<W*>(QLatin1String(name));
        EXPECT_NE(found, nullptr) << name;
        return found;
    }
    QString chapter() { return find<QListWidget>("guide_chapters")->currentItem()->text(); }
    /// The heading at the top of what is seen.
    QString heading() {
        auto* reader = find<GuideReader>("guide_text");
        const QTextCursor cursor = reader->textCursor();
        return cursor.block().text();
    }

    saltloft::testing::TempFolder folder;
    std::unique_ptr<ui::presenters::Workspace> workspace;
    std::unique_ptr<MainWindow> window;
};

} // namespace

TEST(GuidePages, EveryPageHasAChapterForF1) {
    const Guide guide = english();
    for (const QString& id : page_ids()) {
        EXPECT_TRUE(guide_for_page(guide, id).has_value()) << id.toStdString();
    }
}

TEST(GuidePages, EveryPageThatAChapterNamesIsThere) {
    for (const auto& chapter : english().chapters) {
        for (const auto& section : chapter.sections) {
            for (const QString& id : section.help_for) {
                EXPECT_TRUE(page_ids().contains(id)) << id.toStdString();
            }
        }
        ui::text::guide_markdown(chapter, [&](const QString& id, const QString& caption) {
            EXPECT_TRUE(page_ids().contains(id)) << "picture of " << id.toStdString();
            EXPECT_FALSE(caption.isEmpty()) << "picture of " << id.toStdString();
            return QString();
        });
        // A page about one thing cannot be opened by a link: which one?
        const QRegularExpression link(QStringLiteral("\\(page:([a-z_]+)\\)"));
        for (auto it = link.globalMatch(chapter.markdown); it.hasNext();) {
            const QString id = it.next().captured(1);
            EXPECT_TRUE(page_ids(false).contains(id))
                << chapter.id.toStdString() << ": page:" << id.toStdString();
        }
    }
}

TEST_F(GuideInTheWindow, F1OpensWhatBelongsToThePageAndBackReturns) {
    auto* help = window->findChild<QAction*>(QStringLiteral("action_guide"));
    ASSERT_NE(help, nullptr);
    EXPECT_EQ(help->shortcut(), QKeySequence(Qt::Key_F1));
    window->show_place({QStringLiteral("weigh_in"), 0, {}});
    help->trigger();
    QCoreApplication::processEvents();
    EXPECT_EQ(window->place().page, QStringLiteral("guide"));
    EXPECT_EQ(chapter(), QStringLiteral("The round"));
    EXPECT_EQ(heading(), QStringLiteral("The weigh-in"));
    help->trigger(); // on the guide: its own page
    EXPECT_EQ(chapter(), QStringLiteral("The guide"));
    auto* back = window->findChild<QAction*>(QStringLiteral("action_back"));
    back->trigger();
    EXPECT_EQ(chapter(), QStringLiteral("The round"));
    back->trigger();
    EXPECT_EQ(window->place().page, QStringLiteral("weigh_in"));
}

TEST_F(GuideInTheWindow, LinksLeadToChaptersHeadingsAndPages) {
    open_guide("contents");
    auto* reader = find<GuideReader>("guide_text");
    Q_EMIT reader->anchorClicked(QUrl(QStringLiteral("stock.md")));
    EXPECT_EQ(chapter(), QStringLiteral("Stock"));
    Q_EMIT reader->anchorClicked(QUrl(QStringLiteral("paper-and-files.md#backups")));
    EXPECT_EQ(chapter(), QStringLiteral("Paper, files and backups"));
    EXPECT_EQ(heading(), QStringLiteral("Backups"));
    Q_EMIT reader->anchorClicked(QUrl(QStringLiteral("nothing.md")));
    EXPECT_EQ(chapter(), QStringLiteral("Paper, files and backups"));
    Q_EMIT reader->anchorClicked(QUrl(QStringLiteral("page:stock")));
    EXPECT_EQ(window->place().page, QStringLiteral("stock"));
}

TEST_F(GuideInTheWindow, AHeadingGoneToIsAtTheTopOnceThePageIsSeen) {
    open_guide("what-to-do-when#the-rim-is-dry");
    auto* reader = find<GuideReader>("guide_text");
    const int top = reader->cursorRect().top();
    EXPECT_GE(top, 0);
    EXPECT_LT(top, reader->viewport()->height() / 4) << "the heading stands near the top";
    window->resize(900, 600); // another line width moves all text
    QCoreApplication::processEvents();
    EXPECT_LT(reader->cursorRect().top(), reader->viewport()->height() / 4);
    EXPECT_EQ(heading(), QStringLiteral("The rim is dry"));
}

TEST_F(GuideInTheWindow, TheSearchGoesThroughAllChaptersByKeyAndComesAround) {
    open_guide("contents");
    auto* search = find<QLineEdit>("guide_search");
    search->setFocus();
    QTest::keyClicks(search, QStringLiteral("vacuum packed")); // one place: in Stock
    EXPECT_EQ(find<QLabel>("guide_found")->text(), QStringLiteral("1 place"));
    EXPECT_EQ(chapter(), QStringLiteral("The guide")) << "typing does not turn the page";
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(chapter(), QStringLiteral("Stock"));
    auto* reader = find<GuideReader>("guide_text");
    EXPECT_EQ(reader->textCursor().selectedText(), QStringLiteral("vacuum packed"));
    EXPECT_EQ(reader->extraSelections().size(), 1);

    search->clear();
    QTest::keyClicks(search, QStringLiteral("slurry"));
    EXPECT_TRUE(find<QLabel>("guide_found")->text().contains(QStringLiteral("chapters")));
    QSet<QString> seen;
    for (int i = 0; i < 12; ++i) {
        QTest::keyClick(search, Qt::Key_Return);
        seen << chapter();
        EXPECT_EQ(reader->textCursor().selectedText().toLower(), QStringLiteral("slurry"));
    }
    EXPECT_GE(seen.size(), 3);
    QTest::keyClick(search, Qt::Key_F3, Qt::ShiftModifier);
    EXPECT_EQ(reader->textCursor().selectedText().toLower(), QStringLiteral("slurry"));

    search->clear();
    EXPECT_TRUE(reader->extraSelections().isEmpty());
    QTest::keyClicks(search, QStringLiteral("xyzzy"));
    EXPECT_EQ(find<QLabel>("guide_found")->text(), QStringLiteral("0 places"));
    const QString before = chapter();
    QTest::keyClick(search, Qt::Key_Return);
    EXPECT_EQ(chapter(), before);
}

TEST_F(GuideInTheWindow, ANarrowWindowHasABoxInsteadOfTheList) {
    open_guide("stock");
    EXPECT_TRUE(find<QWidget>("guide_chapters")->isVisible());
    EXPECT_FALSE(find<QWidget>("guide_chapter_choice")->isVisible());
    window->resize(700, 600);
    QCoreApplication::processEvents();
    EXPECT_FALSE(find<QWidget>("guide_chapters")->isVisible());
    EXPECT_TRUE(find<QWidget>("guide_chapter_choice")->isVisible());
}

TEST_F(GuideInTheWindow, LinesStayReadable) {
    window->resize(1900, 900);
    open_guide("stock");
    auto* reader = find<GuideReader>("guide_text");
    QCoreApplication::processEvents();
    // 45 to 75 letters a line are read with ease (R. Bringhurst, from memory); up to 95 accepted.
    const double letters =
        reader->lineWrapColumnOrWidth() / QFontMetricsF(reader->font()).averageCharWidth();
    EXPECT_LT(letters, 105);
    EXPECT_EQ(reader->horizontalScrollBar()->maximum(), 0);
}

TEST_F(GuideInTheWindow, SaysThatItIsInEnglishWhereThePersonsLanguageIsAnother) {
    open_guide();
    EXPECT_FALSE(find<QWidget>("guide_language")->isVisible());
    open(QStringLiteral("cy")); // there is no Welsh guide
    open_guide();
    EXPECT_TRUE(find<QWidget>("guide_language")->isVisible());
    EXPECT_GT(find<QListWidget>("guide_chapters")->count(), 10);
}

// A heading in Chinese is no ASCII address: what the Markdown reader makes of the link must come
// back as it was written.
TEST_F(GuideInTheWindow, LinksToHeadingsLeadThereInEveryScript) {
    for (const auto& [language, from] :
         {std::pair(QStringLiteral("zh_CN"), QStringLiteral("chambers")),
          std::pair(QStringLiteral("fr"), QStringLiteral("chambers"))}) {
        open(language);
        int followed = 0;
        open_guide(from.toLatin1().constData());
        auto* reader = find<GuideReader>("guide_text");
        QStringList links;
        for (auto block = reader->document()->begin(); block.isValid(); block = block.next()) {
            for (auto it = block.begin(); !it.atEnd(); ++it) {
                const QString href = it.fragment().charFormat().anchorHref();
                if (href.contains(QLatin1Char('#'))) {
                    links << href;
                }
            }
        }
        for (const QString& link : links) {
            open_guide(from.toLatin1().constData());
            Q_EMIT reader->anchorClicked(QUrl(link));
            QCoreApplication::processEvents();
            EXPECT_EQ(ui::text::guide_slug(heading()),
                      QUrl(link).toString().section(QLatin1Char('#'), 1))
                << link.toStdString();
            ++followed;
        }
        EXPECT_GE(followed, 1) << language.toStdString();
        EXPECT_FALSE(find<QWidget>("guide_language")->isVisible());
    }
}

} // namespace guide_page_test
