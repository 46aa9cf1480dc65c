// Today and Calendar in a window, by keyboard, over the invented demo book.
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "ui/look/theme.h"
#include "ui/models/work_model.h"
#include "ui/pages/page_registry.h"
#include "ui/pages/save_calendar.h"
#include "ui/presenters/workspace.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

using namespace ui;
using core::services::Book;
using pages::Page;
using saltloft::testing::TempFolder;

namespace planning_pages_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class PlanningPages : public ::testing::Test {
  protected:
    void open(bool demo) {
        auto book =
            Book::open(folder.file("pages.saltloft"), {.now = now, .create_if_missing = true});
        ASSERT_TRUE(book.has_value());
        if (demo) {
            ASSERT_TRUE(core::services::fill_demo_book(*book, {.now = now}).has_value());
        }
        workspace = std::make_unique<presenters::Workspace>(
            std::move(*book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
    }
    Page* show(const char* id) {
        for (const auto& entry : pages::all_pages()) {
            if (QLatin1String(entry.id) == QLatin1String(id)) {
                page.reset(entry.make(*workspace, nullptr));
            }
        }
        page->resize(824, 600);
        page->show();
        page->refresh();
        QObject::connect(workspace.get(), &presenters::Workspace::changed, page.get(),
                         [this] { page->refresh(); });
        EXPECT_TRUE(QTest::qWaitForWindowExposed(page.get()));
        return page.get();
    }
    template <class W>
    W* find(const char* name) {
        auto* widget = page->findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }

    TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
    std::unique_ptr<Page> page;
};

int lines_in(const QAbstractItemModel* model, const QString& heading) {
    for (int row = 0; row < model->rowCount(); ++row) {
        const auto index = model->index(row, 0);
        if (index.data().toString().startsWith(heading)) {
            return model->rowCount(index);
        }
    }
    return 0;
}

} // namespace

TEST_F(PlanningPages, AnEmptyBookTeachesWhatTodayIs) {
    open(false);
    show("today");
    auto* action = find<QWidget>("today_empty")->findChild<QPushButton*>();
    ASSERT_NE(action, nullptr);
    ASSERT_TRUE(action->isVisible());
    QSignalSpy go(page.get(), &Page::go);
    QTest::mouseClick(action, Qt::LeftButton);
    ASSERT_EQ(go.count(), 1);
    EXPECT_EQ(go.at(0).at(0).value<pages::Place>().page, QStringLiteral("plan"));
}

TEST_F(PlanningPages, SpaceTicksALineAndUndoBringsItBack) {
    open(true);
    show("today");
    auto* list = find<QAbstractItemView>("work_list");
    const auto* model = list->model();
    // The first line that can be ticked where it stands.
    QModelIndex line;
    for (int p = 0; p < model->rowCount() && !line.isValid(); ++p) {
        const auto part = model->index(p, 0);
        for (int r = 0; r < model->rowCount(part); ++r) {
            const auto index = model->index(r, 0, part);
            if (index.data(Qt::CheckStateRole).isValid() &&
                index.data(Qt::CheckStateRole).toInt() == Qt::Unchecked) {
                line = index;
                break;
            }
        }
    }
    ASSERT_TRUE(line.isValid()) << "the demo book has work for today";
    const int done_before = lines_in(model, QStringLiteral("Done today"));
    list->setCurrentIndex(line);
    list->setFocus();
    const QString said = line.data(Qt::AccessibleTextRole).toString();
    QTest::keyClick(list, Qt::Key_Space);
    const bool ticked = lines_in(model, QStringLiteral("Done today")) == done_before + 1;
    const bool staged = workspace->undo_words().has_value();
    EXPECT_TRUE(ticked || staged) << said.toStdString();
    EXPECT_TRUE(list->currentIndex().isValid()) << "the next line is current";
    ASSERT_TRUE(workspace->undo());
    EXPECT_EQ(lines_in(model, QStringLiteral("Done today")), done_before);
}

TEST_F(PlanningPages, EnterOnAWeighingOpensTheRound) {
    open(true);
    show("today");
    auto* list = find<QAbstractItemView>("work_list");
    const auto* model = list->model();
    QModelIndex weigh;
    for (int p = 0; p < model->rowCount(); ++p) {
        const auto part = model->index(p, 0);
        for (int r = 0; r < model->rowCount(part) && !weigh.isValid(); ++r) {
            const auto index = model->index(r, 0, part);
            if (!index.data(Qt::CheckStateRole).isValid() &&
                index.data().toString().startsWith(QStringLiteral("Weigh"))) {
                weigh = index;
            }
        }
    }
    ASSERT_TRUE(weigh.isValid());
    QSignalSpy go(page.get(), &Page::go);
    list->setCurrentIndex(weigh);
    QTest::keyClick(list, Qt::Key_Return);
    ASSERT_EQ(go.count(), 1);
    EXPECT_EQ(go.at(0).at(0).value<pages::Place>().page, QStringLiteral("weigh_in"));
}

TEST_F(PlanningPages, TheCalendarIsWalkedByKeysAndSaved) {
    open(true);
    show("calendar");
    auto* month = find<QAbstractItemView>("month");
    month->setFocus();
    const QString first = find<QLabel>("month_title")->text();
    EXPECT_EQ(first, QStringLiteral("March 2026"));
    QTest::keyClick(month, Qt::Key_PageDown);
    EXPECT_EQ(find<QLabel>("month_title")->text(), QStringLiteral("April 2026"));
    QTest::keyClick(month, Qt::Key_Home);
    EXPECT_EQ(find<QLabel>("month_title")->text(), first);
    const QString day = find<QLabel>("day_title")->text();
    QTest::keyClick(month, Qt::Key_Down);
    EXPECT_NE(find<QLabel>("day_title")->text(), day);
    pages::calendar_path_for_tests = QString::fromStdString(folder.file("plan"));
    QTest::mouseClick(find<QPushButton>("save_calendar"), Qt::LeftButton);
    QFile file(pages::calendar_path_for_tests + QStringLiteral(".ics"));
    pages::calendar_path_for_tests.clear();
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    EXPECT_TRUE(text.startsWith("BEGIN:VCALENDAR\r\n"));
    EXPECT_GT(text.count("BEGIN:VEVENT"), 5);
}

// Rendered only when asked: SALTLOFT_SHOTS=folder.
TEST_F(PlanningPages, RendersForTheEye) {
    const QString shots = qEnvironmentVariable("SALTLOFT_SHOTS");
    if (shots.isEmpty()) {
        GTEST_SKIP() << "set SALTLOFT_SHOTS to a folder to see the pages";
    }
    open(true);
    for (const auto mode : {look::Mode::light, look::Mode::dark}) {
        look::apply_theme(*qApp, mode);
        for (const char* id : {"today", "calendar", "plan"}) {
            for (const QSize size : {QSize(824, 600), QSize(1220, 860)}) {
                show(id)->resize(size);
                QTest::qWait(50);
                page->grab().save(QStringLiteral("%1/%2-%3-%4.png")
                                      .arg(shots, QLatin1String(id),
                                           mode == look::Mode::light ? QStringLiteral("light")
                                                                     : QStringLiteral("dark"))
                                      .arg(size.width()));
                if (QLatin1String(id) == QLatin1String("plan")) {
                    QTest::mouseClick(find<QAbstractButton>("plan_backwards"), Qt::LeftButton);
                    auto* day = find<QLineEdit>("plan_day_line");
                    day->selectAll();
                    QTest::keyClicks(day, QStringLiteral("2026-04-15"));
                    QTest::qWait(50);
                    page->grab().save(QStringLiteral("%1/plan-no-%2-%3.png")
                                          .arg(shots, mode == look::Mode::light
                                                          ? QStringLiteral("light")
                                                          : QStringLiteral("dark"))
                                          .arg(size.width()));
                }
            }
        }
    }
}

} // namespace planning_pages_test
