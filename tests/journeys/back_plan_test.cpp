// A ham is wanted for Christmas and there are nine days. The plan says no, offers what would do,
// and the cure stays as long as its rule. By mouse and keyboard only, in the real window.
#include "tests/support/temp_folder.h"
#include "ui/pages/main_window.h"
#include "ui/presenters/workspace.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTest>

#include <gtest/gtest.h>

#include <memory>

using namespace ui;
using core::services::Book;
using saltloft::testing::TempFolder;

namespace {

// 2026-12-15T08:00:00Z
const auto now = core::units::Instant::from_unix_seconds(1'797'321'600);

class BackPlanJourney : public ::testing::Test {
  protected:
    BackPlanJourney() {
        auto book =
            Book::open(folder_.file("journey.saltloft"), {.now = now, .create_if_missing = true});
        presenters::Preferences preferences;
        preferences.time_zone = QStringLiteral("Europe/Rome");
        preferences.language = QStringLiteral("en-GB");
        workspace = std::make_unique<presenters::Workspace>(
            std::move(*book), preferences, QLocale(QStringLiteral("en-GB")), [] { return now; });
        window = std::make_unique<pages::MainWindow>(*workspace);
        window->resize(1024, 640);
        window->show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    }
    template <class W>
    W* find(const char* name) {
        QCoreApplication::processEvents(); // what was just added shows with the next events
        for (auto* widget : window->findChildren<W*>(QLatin1String(name))) {
            if (widget->isVisible()) {
                return widget;
            }
        }
        ADD_FAILURE() << name << " is not to be seen";
        return nullptr;
    }
    void click(const char* name) {
        auto* button = find<QAbstractButton>(name);
        ASSERT_NE(button, nullptr);
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void go_to(const QString& title) {
        auto* side = find<QListWidget>("side");
        ASSERT_NE(side, nullptr);
        for (int row = 0; row < side->count(); ++row) {
            if (side->item(row)->text() == title) {
                side->scrollToItem(side->item(row));
                QTest::mouseClick(side->viewport(), Qt::LeftButton, {},
                                  side->visualItemRect(side->item(row)).center());
                return;
            }
        }
        ADD_FAILURE() << title.toStdString() << " is not on the side";
    }
    void type_into(const char* name, const QString& text) {
        auto* line = find<QLineEdit>(name);
        ASSERT_NE(line, nullptr);
        line->setFocus();
        QTest::keySequence(line, QKeySequence::SelectAll);
        QTest::keyClicks(line, text);
    }
    QString answer() { return find<QLabel>("plan_answer")->text(); }

    TempFolder folder_;
    std::unique_ptr<presenters::Workspace> workspace;
    std::unique_ptr<pages::MainWindow> window;
};

} // namespace

TEST_F(BackPlanJourney, RefusedWithTheShortfallThenTakenAsOffered) {
    go_to(QStringLiteral("Plan"));
    auto* kind = find<QComboBox>("plan_template");
    ASSERT_NE(kind, nullptr);
    kind->setFocus();
    QTest::keyClicks(kind, QStringLiteral("Raw"));
    QTest::keyClick(kind, Qt::Key_Down);
    ASSERT_EQ(kind->currentText().toStdString(), "Raw ham, smoked");
    type_into("plan_weight_1_line", QStringLiteral("2.5 kg"));
    type_into("plan_thickness_1_line", QStringLiteral("90 mm"));
    click("plan_backwards");
    type_into("plan_day_line", QStringLiteral("2026-12-24"));

    EXPECT_EQ(answer().toStdString(), "Not by 24 Dec 2026");
    EXPECT_FALSE(find<QPushButton>("plan_accept")->isEnabled());
    const QString more = find<QLabel>("plan_more_words")->text();
    EXPECT_TRUE(more.contains(QStringLiteral("days late"))) << more.toStdString();
    EXPECT_TRUE(more.contains(QStringLiteral("shorter cure")));

    // The only offer for nine days is a later day; taking it makes a plan with slack.
    click("plan_offer_1");
    EXPECT_EQ(answer().toStdString(), "Start today");
    ASSERT_TRUE(find<QPushButton>("plan_accept")->isEnabled());
    type_into("plan_name", QStringLiteral("Easter ham"));
    click("plan_accept");

    const auto batches = workspace->book().batches();
    ASSERT_TRUE(batches.has_value());
    ASSERT_EQ(batches->size(), 1U);
    EXPECT_EQ(batches->front().name, "Easter ham");
    const auto stages = workspace->book().stages(batches->front().id);
    ASSERT_TRUE(stages.has_value());
    ASSERT_FALSE(stages->empty());
    EXPECT_EQ(stages->front().what.name, "Cure");
    // 1.5 days per cm and 3 more, up to whole days: the rule of the template, not a day less.
    EXPECT_EQ(stages->front().planned_end - stages->front().planned_start, 17);

    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    find<QListWidget>("side")->setFocus(); // not in a field, which would undo its own typing
    QTest::keySequence(find<QListWidget>("side"), QKeySequence::Undo);
    EXPECT_TRUE(workspace->book().batches()->empty()) << "one step of undo takes all of it back";
}

TEST_F(BackPlanJourney, ASmallerPieceIsOfferedAndFits) {
    go_to(QStringLiteral("Plan"));
    auto* kind = find<QComboBox>("plan_template");
    ASSERT_NE(kind, nullptr);
    kind->setFocus();
    QTest::keyClicks(kind, QStringLiteral("Lonz"));
    ASSERT_TRUE(kind->currentText().startsWith(QStringLiteral("Lonzino")));
    type_into("plan_weight_1_line", QStringLiteral("2.4 kg"));
    type_into("plan_thickness_1_line", QStringLiteral("100 mm"));
    click("plan_backwards");
    type_into("plan_day_line", QStringLiteral("2027-03-14")); // 89 days
    ASSERT_EQ(answer().toStdString(), "Not by 14 Mar 2027");
    auto* offer = find<QPushButton>("plan_offer_1");
    ASSERT_NE(offer, nullptr);
    EXPECT_EQ(offer->text().toStdString(), "Plan it smaller");
    QTest::mouseClick(offer, Qt::LeftButton);
    EXPECT_TRUE(answer().startsWith(QStringLiteral("Start"))) << answer().toStdString();
    EXPECT_NE(find<QLineEdit>("plan_thickness_1_line")->text(), QStringLiteral("100"));
}
