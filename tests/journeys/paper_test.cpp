// Every page's paper, from the Book menu's Print onto a real PDF that is read back with pdftotext
// and zbarimg.
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "tests/support/ui/printed.h"
#include "ui/pages/main_window.h"
#include "ui/pages/page_registry.h"
#include "ui/pages/print_dialog.h"
#include "ui/presenters/workspace.h"

#include <QAction>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>

using namespace ui::pages;

namespace {

const core::units::Instant story_end = core::units::Instant::from_unix_seconds(1794646800);

class Paper : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = core::services::Book::create(folder_.file("demo.saltloft"), {story_end});
        ASSERT_TRUE(book.has_value());
        ASSERT_TRUE(core::services::fill_demo_book(*book, {story_end}).has_value());
        workspace_ = std::make_unique<ui::presenters::Workspace>(
            std::move(*book), ui::presenters::Preferences{}, QLocale(QStringLiteral("en-GB")),
            [] { return story_end; });
        window_ = std::make_unique<MainWindow>(*workspace_);
        window_->resize(1180, 760);
        window_->show();
    }

    Page& go(const char* id, qint64 row = 0) {
        window_->show_place({QString::fromLatin1(id), row, {}});
        workspace_->forecasts().wait();
        QTest::qWait(20);
        return *window_->page();
    }

    /// Triggers Print and hands the dialog to `look`, which must leave it open.
    void print(const std::function<void(PrintDialog&)>& look) {
        bool seen = false;
        QTimer::singleShot(0, window_.get(), [&] {
            auto* dialog = window_->findChild<PrintDialog*>();
            ASSERT_NE(dialog, nullptr);
            seen = true;
            look(*dialog);
            const QString keep = qEnvironmentVariable("SALTLOFT_KEEP_SHEETS");
            if (!keep.isEmpty()) {
                dialog->grab().save(keep + QStringLiteral("/print-dialog-") +
                                    window_->place().page + QStringLiteral(".png"));
            }
            dialog->reject();
        });
        window_->findChild<QAction*>(QStringLiteral("action_print"))->trigger();
        EXPECT_TRUE(seen);
    }

    QString saved(PrintDialog& dialog, int row) {
        dialog.findChild<QListWidget*>(QStringLiteral("print_list"))->setCurrentRow(row);
        const auto path =
            QString::fromStdString(folder_.file("paper" + std::to_string(row) + ".pdf"));
        dialog.save_as(path);
        return path;
    }

    saltloft::testing::TempFolder folder_;
    std::unique_ptr<ui::presenters::Workspace> workspace_;
    std::unique_ptr<MainWindow> window_;
};

} // namespace

TEST_F(Paper, EachListPageComesOutWithItsRows) {
    const std::pair<const char*, const char*> pages[] = {
        {"today", "Remarks"}, {"weigh_in", "On the scale"}, {"hanging", "What hangs"}};
    for (const auto& [id, word] : pages) {
        go(id);
        print([&, head = QString::fromLatin1(word)](PrintDialog& dialog) {
            EXPECT_GE(dialog.pages(), 1) << id;
            const QString text = test_support::pdf_text(saved(dialog, 0));
            EXPECT_TRUE(text.contains(head)) << id << text.toStdString();
            EXPECT_TRUE(text.contains(QStringLiteral("A17"))) << id << text.toStdString();
        });
    }
}

TEST_F(Paper, ABatchHasSixPapersAndItsTagsReadBack) {
    const auto pieces = workspace_->book().pieces({.states = {core::model::PieceState::drying}});
    const auto batch = workspace_->book().batch(pieces->front().batch);
    const QString code = QString::fromStdString(batch->code);
    go("batches", batch->id.row());
    print([&](PrintDialog& dialog) {
        auto* list = dialog.findChild<QListWidget*>(QStringLiteral("print_list"));
        ASSERT_EQ(list->count(), 7);
        for (int row = 0; row < 7; ++row) {
            const QString text = test_support::pdf_text(saved(dialog, row));
            EXPECT_TRUE(text.contains(
                row == 2 || row == 3 ? QString::fromStdString(pieces->front().code) : code))
                << list->item(row)->text().toStdString() << ": " << text.left(200).toStdString();
        }
        const auto pages = test_support::pdf_pages(saved(dialog, 2),
                                                   QString::fromStdString(folder_.file("")), 150);
        ASSERT_FALSE(pages.isEmpty());
        EXPECT_TRUE(test_support::codes_on(pages.front())
                        .join(QLatin1Char(' '))
                        .contains(QString::fromStdString(pieces->front().code)));
    });
}

TEST_F(Paper, WhereNothingCanBePrintedItSaysSo) {
    go("cautions");
    window_->findChild<QAction*>(QStringLiteral("action_print"))->trigger();
    EXPECT_FALSE(window_->findChild<QLabel*>(QStringLiteral("status_line"))->text().isEmpty());
}

TEST_F(Paper, AFileThatCannotBeWrittenIsSaidAndNothingIsLeft) {
    go("preferences");
    print([&](PrintDialog& dialog) {
        const QString said = dialog.save_as(QStringLiteral("/nowhere/at/all.pdf"));
        EXPECT_FALSE(said.isEmpty());
        EXPECT_EQ(dialog.findChild<QLabel*>(QStringLiteral("print_said"))->text(), said);
        EXPECT_TRUE(test_support::pdf_text(saved(dialog, 0)).contains(QStringLiteral("2026")));
    });
}
