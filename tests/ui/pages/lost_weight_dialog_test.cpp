// "A weight is lost…" on the piece page, with real widgets over the invented demo book, whose
// weighings are known: what is taken away can be compared with what is estimated.
#include "ui/pages/lost_weight_dialog.h"

#include "core/services/demo_book.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/workspace.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>
#include <map>
#include <memory>

using namespace ui;
using core::model::ReferenceWeight;
using core::services::Book;
using saltloft::testing::take;

namespace lost_weight_dialog_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class LostWeightDialogTest : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(
            Book::open(folder.file("pages.saltloft"), {.now = now, .create_if_missing = true}));
        ASSERT_TRUE(core::services::fill_demo_book(book, {.now = now}).has_value());
        workspace = std::make_unique<presenters::Workspace>(
            std::move(book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
    }
    /// A piece that dried long, of a batch with others that did, so that siblings can speak.
    presenters::PieceLine some_piece(std::size_t kin_at_least) {
        std::map<core::model::BatchId, std::vector<core::services::PieceHistory>> by_batch;
        for (auto& history : take(workspace->book().piece_histories({}))) {
            if (history.weighings.size() >= 8) {
                by_batch[history.piece.batch].push_back(std::move(history));
            }
        }
        for (auto& [batch, histories] : by_batch) {
            if (histories.size() > kin_at_least) {
                return presenters::line_in(workspace->book(), histories.front());
            }
        }
        ADD_FAILURE() << "the demo book has no such batch";
        return {};
    }
    template <class W>
    static W* find(const char* name, QWidget& root) {
        auto* widget = root.findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    /// Takes back what was weighed within half a day of hanging, and returns what that was.
    core::units::Mass lose_hung_weight(const presenters::PieceLine& line) {
        auto truth = core::units::Mass::grams(0);
        for (const auto& loss : line.losses) {
            truth = loss.reference == ReferenceWeight::hung ? loss.start : truth;
        }
        for (const auto& w : line.history.weighings) {
            if (std::abs((w.taken_at - *line.hung_at).in_hours()) <= 24) {
                EXPECT_TRUE(workspace->perform(core::actions::WithdrawWeighing{w.id}, "lost"));
            }
        }
        for (auto event : line.history.events) {
            if (event.kind == core::model::EventKind::hung) {
                EXPECT_TRUE(workspace->perform(core::actions::WithdrawEvent{event.id}, "lost"));
                event.net_after.reset();
                event.net_before.reset();
                EXPECT_TRUE(workspace->perform(core::actions::RecordEvent{event}));
            }
        }
        return truth;
    }
    presenters::PieceLine again(core::model::PieceId id) {
        return presenters::line_in(workspace->book(), take(workspace->book().piece_history(id)));
    }

    saltloft::testing::TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
};

} // namespace

TEST_F(LostWeightDialogTest, SiblingsFindALostHungWeightAndItIsEnteredAsAnEstimate) {
    const auto whole = some_piece(2);
    ASSERT_TRUE(whole.hung_at);
    const auto truth = lose_hung_weight(whole);
    ASSERT_GT(truth.in_grams(), 0);
    const auto line = again(whole.piece().id);
    pages::LostWeightDialog dialog(*workspace, line, nullptr);
    dialog.show();
    dialog.lost().wait();
    ASSERT_TRUE(dialog.lost().answer()->weight);
    ASSERT_GE(dialog.lost().answer()->siblings, 2);
    const auto between = *dialog.lost().answer()->weight;
    // One piece in five lies outside its 80 % range; the estimate itself stays near.
    EXPECT_NEAR(between.best.in_grams(), truth.in_grams(), truth.in_grams() * 0.08)
        << between.low.in_grams() << " to " << between.high.in_grams();
    EXPECT_LT(between.low.in_grams(), between.best.in_grams());
    EXPECT_GT(between.high.in_grams(), between.best.in_grams());
    auto* words = find<QLabel>("lost_estimate", dialog);
    EXPECT_TRUE(words->text().startsWith(QStringLiteral("About "))) << words->text().toStdString();
    EXPECT_FALSE(find<QLineEdit>("lost_weight_line", dialog)->text().isEmpty());
    QTest::mouseClick(find<QPushButton>("dialog_keep", dialog), Qt::LeftButton);
    ASSERT_FALSE(dialog.isVisible());
    const auto after = again(whole.piece().id);
    std::optional<core::units::Mass> hung;
    for (const auto& loss : after.losses) {
        hung = loss.reference == ReferenceWeight::hung ? std::optional(loss.start) : hung;
    }
    ASSERT_TRUE(hung);
    EXPECT_NEAR(hung->in_grams(), between.best.in_grams(), 1);
    for (const auto& point : after.points) {
        EXPECT_GT(point.at, *whole.hung_at) << "no curve leans on an estimate";
    }
    const auto noted = [&] {
        const auto all = take(workspace->book().weighings(whole.piece().id));
        return std::count_if(all.begin(), all.end(), [](const auto& w) {
            return w.stands() && w.note.rfind("estimated, ", 0) == 0;
        });
    };
    EXPECT_EQ(noted(), 1);
    EXPECT_TRUE(workspace->undo());
    EXPECT_EQ(noted(), 0);
}

TEST_F(LostWeightDialogTest, TheDayIsAskedForAndAnOwnEntryIsKept) {
    const auto whole = some_piece(2);
    lose_hung_weight(whole);
    pages::LostWeightDialog dialog(*workspace, again(whole.piece().id), nullptr);
    dialog.show();
    dialog.lost().wait();
    auto* day = find<QLineEdit>("lost_day_line", dialog);
    day->selectAll();
    QTest::keyClick(day, Qt::Key_Delete);
    EXPECT_FALSE(find<QPushButton>("dialog_keep", dialog)->isEnabled());
    auto* weight = find<QLineEdit>("lost_weight_line", dialog);
    weight->selectAll();
    QTest::keyClicks(weight, QStringLiteral("1234 g"));
    QTest::keyClicks(day, QStringLiteral("2026-01-20"));
    dialog.lost().wait();
    EXPECT_EQ(weight->text(), QStringLiteral("1234 g")) << "what a person typed is not replaced";
}

TEST_F(LostWeightDialogTest, WithoutASiblingItSaysSoAndKeepsNothing) {
    auto line = some_piece(0);
    lose_hung_weight(line);
    line = again(line.piece().id);
    auto batch = take(workspace->book().batch(line.piece().batch));
    batch.id = {};
    batch.code = "B99";
    const auto made = workspace->perform(core::actions::AddBatch{batch});
    ASSERT_TRUE(made);
    // The same piece in a batch where nothing else hangs.
    for (const auto& b : take(workspace->book().batches())) {
        if (b.code == "B99") {
            line.history.piece.batch = b.id;
        }
    }
    pages::LostWeightDialog dialog(*workspace, line, nullptr);
    dialog.show();
    dialog.lost().wait();
    EXPECT_TRUE(find<QLabel>("lost_estimate", dialog)
                    ->text()
                    .startsWith(QStringLiteral("No sibling can say")));
    EXPECT_FALSE(find<QPushButton>("dialog_keep", dialog)->isEnabled());
    EXPECT_TRUE(find<QLabel>("lost_unknown", dialog)->text().contains(QStringLiteral("rate")));
}

TEST_F(LostWeightDialogTest, ThePiecePageOffersItUnderWhatHappened) {
    std::unique_ptr<pages::Page> page;
    for (const auto& entry : pages::all_pages()) {
        if (QLatin1String(entry.id) == QLatin1String("piece")) {
            page.reset(entry.make(*workspace, nullptr));
        }
    }
    const auto line = some_piece(0);
    page->arrive({QStringLiteral("piece"), static_cast<qint64>(line.piece().id.row()), {}});
    page->refresh();
    QString opened;
    QTimer::singleShot(0, [&] {
        auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        opened = dialog->objectName();
        dialog->reject();
    });
    page->findChild<QAction*>(QStringLiteral("event_lost"))->trigger();
    EXPECT_EQ(opened, QStringLiteral("lost_weight_dialog"));
}

} // namespace lost_weight_dialog_test
