// "What if…" on the piece page, with real widgets over the invented demo book.
#include "core/services/demo_book.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/look/pieces.h"
#include "ui/pages/page_registry.h"
#include "ui/pages/what_if_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>
#include <memory>

using namespace ui;
using core::model::PieceState;
using core::services::Book;
using saltloft::testing::take;

namespace what_if_dialog_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class WhatIfDialogTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(
            Book::open(folder.file("pages.saltloft"), {.now = now, .create_if_missing = true}));
        ASSERT_TRUE(core::services::fill_demo_book(book, {.now = now}).has_value());
        workspace = std::make_unique<presenters::Workspace>(
            std::move(book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
        core::services::PieceFilter drying;
        drying.states = {PieceState::drying};
        std::size_t most = 0;
        for (auto& history : take(workspace->book().piece_histories(drying))) {
            if (history.weighings.size() > most) {
                most = history.weighings.size();
                line = presenters::line_in(workspace->book(), std::move(history));
            }
        }
    }
    template <class W>
    static W* find(const char* name, QWidget& root) {
        auto* widget = root.findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    static QString cell(QWidget& dialog, int row, int column) {
        auto* model = find<QTableView>("what_if_table", dialog)->model();
        return model->index(row, column).data().toString();
    }
    /// Types and waits for the pause after typing and for the answer.
    static void type(pages::WhatIfDialog& dialog, const char* field, const QString& text) {
        auto* entry = find<QLineEdit>(field, dialog);
        entry->selectAll();
        QTest::keyClicks(entry, text);
        QTest::qWait(400);
        dialog.what_if().wait();
    }

    saltloft::testing::TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
    presenters::PieceLine line;
};

constexpr int air_row = 0;
constexpr int state_row = 2;
constexpr int even_row = 4;
constexpr int levels_row = 6;

} // namespace

TEST_F(WhatIfDialogTest, UnchangedBothSidesSayWhatThePageSays) {
    workspace->ask_forecasts({{line.history, line.kin, {}}});
    workspace->forecasts().wait();
    const auto* page = workspace->forecasts().find(line.piece().id, line.history.revision);
    ASSERT_NE(page, nullptr);
    pages::WhatIfDialog dialog(*workspace, line, nullptr); // before the page had its forecast
    dialog.show();
    dialog.what_if().wait();
    const auto& answer = *dialog.what_if().answer();
    ASSERT_TRUE(page->levels_off && answer.now.levels_off);
    EXPECT_EQ(answer.now.state, page->state);
    EXPECT_EQ(answer.now.levels_off, page->levels_off);
    EXPECT_EQ(answer.now.loss, page->loss);
    ASSERT_TRUE(page->ready && answer.now.ready);
    EXPECT_EQ(answer.now.ready->p10, page->ready->p10);
    EXPECT_EQ(answer.now.ready->p50, page->ready->p50);
    EXPECT_EQ(answer.now.ready->p90, page->ready->p90);
    for (int row = 0; row < 7; ++row) {
        EXPECT_EQ(cell(dialog, row, 1), cell(dialog, row, 2)) << row;
    }
}

TEST_F(WhatIfDialogTest, WetterAirLevelsOffEarlierAndATargetBeyondItIsPlainlyNotReachable) {
    pages::WhatIfDialog dialog(*workspace, line, nullptr);
    dialog.show();
    dialog.what_if().wait();
    const auto before = workspace->book().revision();
    type(dialog, "what_if_humidity_line", QStringLiteral("88"));
    const auto& answer = *dialog.what_if().answer();
    ASSERT_TRUE(answer.now.levels_off && answer.changed.levels_off);
    EXPECT_LT(answer.changed.levels_off->best, answer.now.levels_off->best);
    EXPECT_TRUE(cell(dialog, air_row, 2).contains(QStringLiteral("88")));
    EXPECT_NE(cell(dialog, levels_row, 1), cell(dialog, levels_row, 2));
    type(dialog, "what_if_target_line", QStringLiteral("60"));
    EXPECT_TRUE(cell(dialog, state_row, 2).startsWith(QStringLiteral("not reachable")));
    EXPECT_EQ(cell(dialog, even_row, 2), QStringLiteral("not reached"));
    EXPECT_EQ(take(workspace->book().revision()), *before) << "nothing is kept";
}

TEST_F(WhatIfDialogTest, AnotherTemperatureNamesItsEqualHumidityAndTheCitedRanges) {
    pages::WhatIfDialog dialog(*workspace, line, nullptr);
    dialog.show();
    dialog.what_if().wait();
    EXPECT_FALSE(find<QPushButton>("what_if_take", dialog)->isVisible());
    EXPECT_FALSE(find<look::Banner>("what_if_caution", dialog)->isVisible());
    type(dialog, "what_if_temperature_line", QStringLiteral("4"));
    EXPECT_FALSE(find<look::Banner>("what_if_caution", dialog)->isVisible())
        << "colder enters no range";
    type(dialog, "what_if_temperature_line", QStringLiteral("18"));
    const auto same =
        presenters::same_power(dialog.what_if().air(), core::units::Temperature::celsius(18));
    ASSERT_TRUE(same);
    EXPECT_GT(*same, dialog.what_if().air().humidity) << "warmer air must be wetter";
    auto* power = find<QLabel>("what_if_power", dialog);
    EXPECT_TRUE(power->text().contains(text::words(*same, workspace->style())))
        << power->text().toStdString();
    QTest::mouseClick(find<QPushButton>("what_if_take", dialog), Qt::LeftButton);
    QTest::qWait(400);
    dialog.what_if().wait();
    EXPECT_TRUE(cell(dialog, air_row, 2).contains(text::words(*same, workspace->style())));
    auto* growth = find<QLabel>("what_if_growth", dialog);
    EXPECT_TRUE(growth->text().contains(QStringLiteral("Listeria monocytogenes")));
    EXPECT_FALSE(growth->text().contains(QStringLiteral("safe"), Qt::CaseInsensitive));
}

TEST_F(WhatIfDialogTest, APieceThatWasNeverWeighedSaysWhatIsMissing) {
    auto history = line.history;
    history.weighings.clear();
    history.events.clear();
    const auto bare = presenters::line_of(std::move(history));
    pages::WhatIfDialog dialog(*workspace, bare, nullptr);
    EXPECT_NE(dialog.findChild<look::EmptyState*>(QStringLiteral("what_if_empty")), nullptr);
    EXPECT_EQ(dialog.findChild<QTableView*>(QStringLiteral("what_if_table")), nullptr);
}

TEST_F(WhatIfDialogTest, ThePiecePageOpensIt) {
    std::unique_ptr<pages::Page> page;
    for (const auto& entry : pages::all_pages()) {
        if (QLatin1String(entry.id) == QLatin1String("piece")) {
            page.reset(entry.make(*workspace, nullptr));
        }
    }
    ASSERT_NE(page, nullptr);
    page->show();
    page->arrive({QStringLiteral("piece"), static_cast<qint64>(line.piece().id.row()), {}});
    page->refresh();
    QString opened;
    QTimer::singleShot(0, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        opened = dialog->objectName();
        QTest::mouseClick(find<QPushButton>("what_if_close", *dialog), Qt::LeftButton);
    });
    QTest::mouseClick(find<QPushButton>("piece_what_if", *page), Qt::LeftButton);
    EXPECT_EQ(opened, QStringLiteral("what_if_dialog"));
}

} // namespace what_if_dialog_test
