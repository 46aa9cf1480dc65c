// Looking after the file of a book with real dialogs: restore, check, salvage, and the ways out of
// a book that does not open. Set SALTLOFT_KEEP_DIALOGS=FOLDER to keep pictures of them.
#include "core/services/demo_book.h"
#include "tests/support/book_dump.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/pages/check_dialog.h"
#include "ui/pages/main_window.h"
#include "ui/pages/open_trouble_dialog.h"
#include "ui/pages/restore_dialog.h"
#include "ui/pages/salvage_dialog.h"
#include "ui/pages/table.h"
#include "ui/presenters/workspace.h"

#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QDir>
#include <QLineEdit>
#include <QMessageBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QTimer>
#include <filesystem>
#include <fstream>
#include <functional>
#include <gtest/gtest.h>
#include <set>

using namespace ui;
using core::services::Book;
using saltloft::testing::dump;
using saltloft::testing::DumpOf;
using saltloft::testing::query;
using saltloft::testing::run_sql;
using saltloft::testing::take;

namespace book_keeping_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class BookKeepingDialogs : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(Book::open(path, {.now = now, .create_if_missing = true}));
        ASSERT_TRUE(core::services::fill_demo_book(book, {.now = now}).has_value());
        ASSERT_TRUE(take(book.backup_if_due(now)).has_value());
        take(book.perform(core::actions::AddPerson{{.name = "Ada", .initials = "AL"}},
                          {.now = now, .why = {}}));
    }
    template <class W>
    W* find(QWidget& root, const char* name) {
        auto* widget = root.findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    QString said(QWidget& root, const char* banner) {
        return find<look::Banner>(root, banner)->text();
    }
    /// Every widget that can be reached has a name of its own and is not cut off.
    static void walk(QDialog& dialog, const char* picture) {
        dialog.show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&dialog));
        EXPECT_FALSE(dialog.accessibleName().isEmpty());
        std::set<QString> seen;
        for (auto* widget : dialog.findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus ||
                widget->objectName().startsWith(QLatin1String("qt_"))) {
                continue;
            }
            EXPECT_FALSE(widget->objectName().isEmpty()) << widget->metaObject()->className();
            EXPECT_TRUE(seen.insert(widget->objectName()).second)
                << widget->objectName().toStdString();
            auto* face = QAccessible::queryAccessibleInterface(widget);
            ASSERT_NE(face, nullptr);
            EXPECT_FALSE(face->text(QAccessible::Name).isEmpty())
                << widget->objectName().toStdString();
            if (auto* button = qobject_cast<QPushButton*>(widget); button && button->isVisible()) {
                EXPECT_GE(button->width() + 1, button->minimumSizeHint().width())
                    << button->text().toStdString();
            }
        }
        const QString folder = qEnvironmentVariable("SALTLOFT_KEEP_DIALOGS");
        if (!folder.isEmpty()) {
            for (const auto mode : {look::Mode::light, look::Mode::dark}) {
                look::apply_theme(*qApp, mode);
                QCoreApplication::processEvents();
                dialog.grab().save(QDir(folder).filePath(QLatin1String(picture) +
                                                         (mode == look::Mode::dark
                                                              ? QStringLiteral("-dark.png")
                                                              : QStringLiteral("-light.png"))));
            }
        }
    }
    void disagree() {
        run_sql(path,
                "UPDATE climate_bucket SET temp_max_centic = temp_max_centic + 1 WHERE width_s"
                " = 86400");
    }

    saltloft::testing::TempFolder folder;
    std::string path = folder.file("cellar.saltloft");
    text::Style style;
};

} // namespace

TEST_F(BookKeepingDialogs, RestoreShowsWhatIsLostAndAsksOnceMore) {
    const auto before = dump(path, DumpOf::all);
    pages::RestoreDialog dialog(path, style, nullptr);
    auto* table = find<pages::Table>(dialog, "restore_backups");
    ASSERT_GE(table->model()->rowCount(), 1);
    dialog.keeping().wait();
    table->setCurrentIndex(table->model()->index(0, 0));
    dialog.keeping().wait();
    auto* start = find<QPushButton>(dialog, "restore_start");
    ASSERT_TRUE(start->isEnabled());
    const QString words = said(dialog, "restore_banner");
    EXPECT_TRUE(words.contains(QStringLiteral("gone from the book: 1"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("not deleted"))) << words.toStdString();
    walk(dialog, "restore");
    const auto answer = [&](const char* button) {
        bool met = false;
        QTimer::singleShot(0, [&] {
            auto* sure = qobject_cast<QMessageBox*>(QApplication::activeModalWidget());
            ASSERT_NE(sure, nullptr);
            met = true;
            QTest::mouseClick(find<QPushButton>(*sure, button), Qt::LeftButton);
        });
        QTest::mouseClick(start, Qt::LeftButton);
        EXPECT_TRUE(met);
    };
    answer("restore_no");
    EXPECT_NE(dialog.result(), QDialog::Accepted);
    answer("restore_yes");
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_TRUE(std::filesystem::exists(dialog.backup()));
    EXPECT_EQ(dump(path, DumpOf::all), before) << "the dialog only chooses";
}

TEST_F(BookKeepingDialogs, ARestoreTakesNoLetterAndNoDamagedBackup) {
    std::ofstream(folder.file("letter.saltloft")) << "dear all, this is a letter and not a book";
    const std::string bad = folder.file("bad.saltloft");
    take(take(Book::open(path, {.now = now})).backup_to(bad));
    run_sql(bad, "PRAGMA foreign_keys=OFF; DELETE FROM batch");
    pages::RestoreDialog dialog(path, style, nullptr);
    dialog.show();
    for (const auto& [file, words] :
         {std::pair{folder.file("letter.saltloft"), "not a Saltloft"},
          std::pair{bad, "damaged itself"}, std::pair{folder.file("none"), "not found"}}) {
        dialog.add_file(QString::fromStdString(file));
        dialog.keeping().wait();
        EXPECT_TRUE(said(dialog, "restore_banner").contains(QLatin1String(words)))
            << said(dialog, "restore_banner").toStdString();
        EXPECT_FALSE(find<QPushButton>(dialog, "restore_start")->isEnabled()) << file;
    }
}

TEST_F(BookKeepingDialogs, RestoreWorksWithoutTheBook) {
    std::filesystem::remove(path);
    pages::RestoreDialog dialog(path, style, nullptr);
    auto* table = find<pages::Table>(dialog, "restore_backups");
    ASSERT_GE(table->model()->rowCount(), 1);
    table->setCurrentIndex(table->model()->index(0, 0));
    dialog.keeping().wait();
    EXPECT_TRUE(said(dialog, "restore_banner").contains(QStringLiteral("nothing is replaced")));
    EXPECT_TRUE(find<QPushButton>(dialog, "restore_start")->isEnabled());
}

TEST_F(BookKeepingDialogs, CheckOfASoundBookOffersNothing) {
    pages::CheckDialog dialog({path, true, true}, style, nullptr);
    dialog.show();
    dialog.keeping().wait();
    EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("sound")));
    for (const char* button : {"check_rebuild", "check_salvage", "check_restore"}) {
        EXPECT_FALSE(find<QPushButton>(dialog, button)->isVisible()) << button;
    }
    walk(dialog, "check-sound");
}

TEST_F(BookKeepingDialogs, RollUpsAreMadeAnewWhileTheBookIsOpen) {
    disagree();
    const auto open = take(Book::open(path, {.now = now}));
    pages::CheckDialog dialog({path, true, true}, style, nullptr);
    QSignalSpy mended(&dialog, &pages::CheckDialog::mended);
    dialog.show();
    dialog.keeping().wait();
    EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("do not agree")));
    EXPECT_FALSE(find<QPlainTextEdit>(dialog, "check_problems")->toPlainText().isEmpty());
    EXPECT_FALSE(find<QPushButton>(dialog, "check_salvage")->isVisible()) << "nothing is damaged";
    walk(dialog, "check-sums");
    QTest::mouseClick(find<QPushButton>(dialog, "check_rebuild"), Qt::LeftButton);
    dialog.keeping().wait();
    EXPECT_EQ(mended.count(), 1);
    EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("sound")))
        << said(dialog, "check_banner").toStdString();
    EXPECT_TRUE(take(open.check_integrity(true)).sound());
}

TEST_F(BookKeepingDialogs, ABookThatIsOnlyReadIsNotMended) {
    disagree();
    pages::CheckDialog dialog({path, false, false}, style, nullptr);
    dialog.show();
    dialog.keeping().wait();
    EXPECT_FALSE(find<QPushButton>(dialog, "check_rebuild")->isVisible());
    EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("reading only")));
}

TEST_F(BookKeepingDialogs, ACheckCanBeCancelled) {
    pages::CheckDialog dialog({path, true, true}, style, nullptr);
    dialog.show();
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible()) << "the first press stops the check";
    dialog.keeping().wait();
    EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("Stopped")))
        << said(dialog, "check_banner").toStdString();
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST_F(BookKeepingDialogs, ADamagedBookIsSalvagedIntoANewOne) {
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM batch WHERE id = 1");
    const auto before = dump(path, DumpOf::all);
    {
        pages::CheckDialog dialog({path, true, true}, style, nullptr);
        dialog.show();
        dialog.keeping().wait();
        EXPECT_TRUE(said(dialog, "check_banner").contains(QStringLiteral("damaged")));
        EXPECT_FALSE(find<QPushButton>(dialog, "check_rebuild")->isVisible());
        walk(dialog, "check-damaged");
        QTest::mouseClick(find<QPushButton>(dialog, "check_salvage"), Qt::LeftButton);
        EXPECT_EQ(dialog.wish(), pages::CheckDialog::Wish::salvage);
    }
    pages::SalvageDialog dialog(path, style, now, nullptr);
    dialog.show();
    auto* file = find<QLineEdit>(dialog, "salvage_file");
    const QString offered = file->text();
    file->setText(QString::fromStdString(path));
    QTest::mouseClick(find<QPushButton>(dialog, "salvage_start"), Qt::LeftButton);
    EXPECT_TRUE(said(dialog, "salvage_banner").contains(QStringLiteral("there already")));
    file->setText(offered);
    QTest::mouseClick(find<QPushButton>(dialog, "salvage_start"), Qt::LeftButton);
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_TRUE(dialog.isVisible()) << "a salvage is not broken off";
    dialog.keeping().wait();
    auto* lines = find<pages::Table>(dialog, "salvage_lines")->model();
    ASSERT_GT(lines->rowCount(), 5);
    EXPECT_EQ(lines->index(0, 0).data().toString(), QStringLiteral("Batches"));
    walk(dialog, "salvage");
    QTest::mouseClick(find<QPushButton>(dialog, "salvage_open"), Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(query(dialog.target().toStdString(), "SELECT count(*) FROM weighing"),
              query(path, "SELECT count(*) FROM weighing"));
    EXPECT_EQ(dump(path, DumpOf::all), before);
}

TEST_F(BookKeepingDialogs, TheWaysOutFitTheFault) {
    using core::base::ErrorCode;
    using pages::WayOut;
    using Ways = std::vector<WayOut>;
    const auto ways = [](ErrorCode code, bool backups, bool window) {
        return pages::ways_out({code, {}, {}}, backups, window);
    };
    EXPECT_EQ(ways(ErrorCode::damaged, false, true), (Ways{WayOut::restore, WayOut::salvage}));
    EXPECT_EQ(ways(ErrorCode::not_a_book, true, true), Ways{WayOut::restore});
    EXPECT_EQ(ways(ErrorCode::not_a_book, false, true), Ways{}) << "somebody's letter";
    EXPECT_EQ(ways(ErrorCode::no_permission, true, true), Ways{});
    EXPECT_EQ(ways(ErrorCode::newer_book, false, false),
              (Ways{WayOut::open_another, WayOut::make_new}))
        << "nobody is left without a book";
    const core::base::Error error{ErrorCode::damaged, "page 7 is torn", path};
    pages::OpenTroubleDialog dialog(error, pages::ways_out(error, true, false), nullptr);
    walk(dialog, "trouble");
    EXPECT_TRUE(said(dialog, "trouble_banner").contains(QStringLiteral("page 7 is torn")));
    QTest::mouseClick(find<QPushButton>(dialog, "trouble_salvage"), Qt::LeftButton);
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    EXPECT_EQ(dialog.way(), WayOut::salvage);
}

TEST_F(BookKeepingDialogs, TheMenuRestoresOwnBooksAndDamagedOnesOnly) {
    struct Seen {
        bool enabled = false;
        QString tip;
    };
    const auto seen = [&](bool read_only, bool demo) {
        core::services::OpenOptions options{.now = now};
        options.read_only = read_only;
        presenters::Workspace workspace(take(Book::open(path, options)), {},
                                        QLocale(QLocale::English), [] { return now; });
        workspace.set_demo(demo);
        pages::MainWindow window(workspace);
        QSignalSpy asked(&window, &pages::MainWindow::check_asked);
        window.findChild<QAction*>(QStringLiteral("action_check"))->trigger();
        EXPECT_EQ(asked.count(), 1);
        const auto* action = window.findChild<QAction*>(QStringLiteral("action_restore"));
        return Seen{action->isEnabled(), action->statusTip()};
    };
    EXPECT_TRUE(seen(false, false).enabled);
    EXPECT_FALSE(seen(false, true).enabled);
    EXPECT_TRUE(seen(false, true).tip.contains(QStringLiteral("demonstration")));
    EXPECT_FALSE(seen(true, false).enabled);
    EXPECT_TRUE(seen(true, false).tip.contains(QStringLiteral("permissions")));
    {
        const auto other = take(Book::open(path, {.now = now}));
        EXPECT_TRUE(seen(false, false).tip.contains(QStringLiteral("open elsewhere")));
    }
    // Some page of the weighings is torn: it opens for reading only, and is the one to restore.
    const int page = std::stoi(query(path, "SELECT pageno FROM dbstat WHERE name = 'weighing' AND"
                                           " pagetype = 'leaf' ORDER BY pageno LIMIT 1"));
    {
        std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
        file.seekp((page - 1) * 4096L);
        file << std::string(4096, '\xff');
    }
    EXPECT_TRUE(seen(false, false).enabled);
}

} // namespace book_keeping_test
