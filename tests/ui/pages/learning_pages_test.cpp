// What own finished batches say on the pages where the next one is made, and using it.
#include "tests/support/take.h"
#include "tests/ui/pages/support/past_pages.h"
#include "ui/edits/quantity_fields.h"
#include "ui/look/theme.h"
#include "ui/pages/mix_lines.h"
#include "ui/pages/outcome_dialog.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTimer>

using namespace ui;
using core::units::MassShare;

namespace {

using LearningPages = saltloft::testing::PastPages;

void choose_product(QWidget* page, const QString& product) {
    page->findChild<QComboBox*>(QStringLiteral("new_product"))->setEditText(product);
}

double percent_in(QWidget* page, const char* field) {
    const auto value = page->findChild<edits::ShareField*>(QLatin1String(field))->value();
    return value ? value->in_percent() : -1;
}

} // namespace

// By hand: 3 % salt at 35 % loss is 4.62 % finished. Too soft by one: 35 + 2.5 = 37.5 % loss. Too
// salty by one: 4.62 x 0.9 x (1 - 0.375) = 2.6 % of the raw weight.
TEST_F(LearningPages, NewBatchShowsThePastAndUsesItOnlyWhenTold) {
    coppa_past();
    show("new_batch", {QStringLiteral("new_batch"), 0, QStringLiteral("fresh")});
    auto* box = find<QWidget>("new_past");
    EXPECT_FALSE(box->isVisible()) << "nothing to say without a product";
    choose_product(page.get(), QStringLiteral("COPPA "));
    ASSERT_TRUE(box->isVisible());
    EXPECT_TRUE(find<QLabel>("new_past_history")->text().contains(QStringLiteral("7 to 9 weeks")))
        << find<QLabel>("new_past_history")->text().toStdString();
    const QString proposal = find<QLabel>("new_past_proposal")->text();
    EXPECT_TRUE(proposal.contains(QStringLiteral("less salt"))) << proposal.toStdString();
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "new_target"), 35) << "never by itself";
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "new_salt"), 2.5);
    auto* use = find<QPushButton>("new_past_use");
    EXPECT_TRUE(use->accessibleName().contains(QStringLiteral("salty")));
    QTest::keyClick(use, Qt::Key_Space);
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "new_target"), 37.5);
    EXPECT_NEAR(percent_in(page.get(), "new_salt"), 2.6, 1e-9);
    EXPECT_TRUE(find<QLabel>("new_past_done")->text().contains(QStringLiteral("BOLD2")));
    QTest::keyClick(use, Qt::Key_Space);
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "new_target"), 35) << "taken back";
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "new_salt"), 2.5);
    EXPECT_FALSE(find<QLabel>("new_past_done")->isVisible());
}

TEST_F(LearningPages, TheReasonGoesIntoTheBatchUnlessTypedOver) {
    coppa_past();
    show("new_batch", {QStringLiteral("new_batch"), 0, QStringLiteral("fresh")});
    choose_product(page.get(), QStringLiteral("Coppa"));
    find<QPushButton>("new_past_use")->click();
    auto* salt = find<edits::ShareField>("new_salt");
    salt->set_value(MassShare::percent(2.8)); // the person knows better about the salt
    find<edits::MassField>("new_piece_raw_1")->set_value(core::units::Mass::kilograms(1.5));
    find<QCheckBox>("new_accept")->setChecked(true);
    find<QComboBox>("new_accept_by")->setEditText(QStringLiteral("Orla Fern"));
    find<QPushButton>("new_start")->click();
    const auto batches = *workspace->book().batches();
    ASSERT_EQ(batches.size(), 3U);
    std::string notes;
    for (const auto& batch : batches) {
        notes += batch.notes;
    }
    EXPECT_NE(notes.find("too soft"), std::string::npos) << notes;
    EXPECT_EQ(notes.find("too salty"), std::string::npos) << notes;
}

TEST_F(LearningPages, AnotherProductHasNoPast) {
    coppa_past();
    show("new_batch", {QStringLiteral("new_batch"), 0, QStringLiteral("fresh")});
    choose_product(page.get(), QStringLiteral("Loin"));
    EXPECT_FALSE(find<QWidget>("new_past")->isVisible());
}

TEST_F(LearningPages, ThePlanUsesTheTargetWithItsReason) {
    coppa_past();
    show("plan");
    find<QComboBox>("plan_product")->setEditText(QStringLiteral("Coppa"));
    QTest::qWait(10);
    EXPECT_TRUE(find<QLabel>("plan_history")->text().contains(QStringLiteral("weeks")));
    auto* use = find<QPushButton>("plan_use_proposal");
    ASSERT_TRUE(use->isVisible());
    EXPECT_TRUE(use->accessibleName().contains(QStringLiteral("37.5")));
    use->click();
    EXPECT_DOUBLE_EQ(percent_in(page.get(), "plan_target"), 37.5);
    EXPECT_FALSE(use->isVisible());
    find<QPushButton>("plan_accept")->click();
    std::string notes;
    for (const auto& batch : saltloft::testing::take(workspace->book().batches())) {
        notes += batch.notes;
    }
    EXPECT_NE(notes.find("BOLD2 was too soft"), std::string::npos) << notes;
}

TEST_F(LearningPages, TheMixBenchChangesThePlainSaltAndSaysWhy) {
    const auto past = coppa_past();
    show("mix", {QStringLiteral("mix"), past.recipe.row(), {}});
    ASSERT_TRUE(find<QWidget>("mix_past")->isVisible());
    auto* lines = page->findChild<pages::MixLines*>();
    ASSERT_NE(lines, nullptr);
    const auto before = lines->lines();
    find<QPushButton>("mix_past_use")->click();
    ASSERT_EQ(lines->lines().size(), 1U);
    EXPECT_TRUE(lines->lines()[0].amount.startsWith(QStringLiteral("2.6")))
        << lines->lines()[0].amount.toStdString();
    EXPECT_TRUE(find<QLineEdit>("mix_why")->text().contains(QStringLiteral("too salty")));
    find<QPushButton>("mix_past_use")->click();
    EXPECT_EQ(lines->lines(), before) << "taken back";
    EXPECT_TRUE(find<QLineEdit>("mix_why")->text().isEmpty());
}

TEST_F(LearningPages, WhatHangsSaysHowLongSuchPiecesTook) {
    coppa_past();
    dry("NOW", "Coppa", -21, 2);
    show("hanging");
    workspace->forecasts().wait();
    const auto* past = find<QLabel>("hanging_past");
    EXPECT_TRUE(past->isVisible());
    EXPECT_TRUE(past->text().startsWith(QStringLiteral("Coppa"))) << past->text().toStdString();
    EXPECT_TRUE(past->text().contains(QStringLiteral("7 to 9 weeks")));
}

TEST_F(LearningPages, AnOutcomeIsKeptShownAndUndone) {
    const auto done = finish("P1", "Loin", -100, 7);
    show("batches", {QStringLiteral("batches"), done.batch.row(), {}});
    auto* action = find<QAction>("batch_outcome");
    ASSERT_TRUE(action->isEnabled());
    QTimer::singleShot(0, [] {
        auto* dialog = qobject_cast<pages::OutcomeDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        auto* salt = dialog->findChild<QComboBox*>(QStringLiteral("outcome_salt"));
        salt->setCurrentIndex(salt->findData(1));
        dialog->findChild<QPlainTextEdit*>(QStringLiteral("outcome_words"))
            ->setPlainText(QStringLiteral("a colder cellar"));
        for (auto* each : dialog->findChildren<QPushButton*>()) {
            if (each->isDefault()) {
                each->click();
            }
        }
    });
    action->trigger();
    const auto kept = *workspace->book().outcome(done.batch);
    ASSERT_TRUE(kept.has_value());
    EXPECT_EQ(kept->salt, 1);
    EXPECT_FALSE(kept->texture);
    const auto* words = find<QLabel>("batch_outcome_words");
    EXPECT_TRUE(words->text().contains(QStringLiteral("a colder cellar")));
    ASSERT_TRUE(workspace->undo());
    EXPECT_FALSE(words->isVisible());
}

TEST_F(LearningPages, NothingEatenNoOutcome) {
    const auto drying = dry("P1", "Loin", -30, 3);
    show("batches", {QStringLiteral("batches"), drying.batch.row(), {}});
    EXPECT_FALSE(find<QAction>("batch_outcome")->isEnabled());
}

TEST_F(LearningPages, TheCurvesOfABatchGoToOneChart) {
    const auto drying = dry("P1", "Loin", -30, 3);
    show("batches", {QStringLiteral("batches"), drying.batch.row(), {}});
    QSignalSpy go(page.get(), &pages::Page::go);
    find<QAction>("batch_compare")->trigger();
    ASSERT_EQ(go.size(), 1);
    const auto place = go.at(0).at(0).value<pages::Place>();
    EXPECT_EQ(place.page, QStringLiteral("piece"));
    EXPECT_EQ(place.row, drying.piece.row());
    EXPECT_EQ(place.detail, QStringLiteral("with_batch"));
}

// Rendered only when asked: SALTLOFT_SHOTS=folder.
TEST_F(LearningPages, RendersForTheEye) {
    const QString shots = qEnvironmentVariable("SALTLOFT_SHOTS");
    if (shots.isEmpty()) {
        GTEST_SKIP() << "set SALTLOFT_SHOTS to a folder to see the pages";
    }
    const auto past = coppa_past();
    const auto drying = dry("NOW", "Coppa", -35, 4);
    dry("NEXT", "Coppa", -21, 3);
    for (const auto mode : {look::Mode::light, look::Mode::dark}) {
        look::apply_theme(*qApp, mode);
        for (const QSize size : {QSize(890, 600), QSize(1300, 860)}) {
            const auto shoot = [&](const char* name) {
                workspace->forecasts().wait();
                QTest::qWait(60);
                page->grab().save(QStringLiteral("%1/%2-%3-%4.png")
                                      .arg(shots, QLatin1String(name),
                                           mode == look::Mode::light ? QStringLiteral("light")
                                                                     : QStringLiteral("dark"))
                                      .arg(size.width()));
            };
            show("new_batch", {QStringLiteral("new_batch"), 0, QStringLiteral("fresh")}, size);
            choose_product(page.get(), QStringLiteral("Coppa"));
            shoot("new_batch_past");
            find<QPushButton>("new_past_use")->click();
            shoot("new_batch_used");
            show("mix", {QStringLiteral("mix"), past.recipe.row(), {}}, size);
            shoot("mix_past");
            show("plan", {}, size);
            find<QComboBox>("plan_product")->setEditText(QStringLiteral("Coppa"));
            shoot("plan_past");
            show("batches", {QStringLiteral("batches"), past.batch.row(), {}}, size);
            shoot("batches_outcome");
            show("piece", {QStringLiteral("piece"), drying.piece.row(), {}}, size);
            auto* compare = find<QComboBox>("chart_compare");
            compare->setCurrentIndex(3);
            Q_EMIT compare->activated(3);
            find<QCheckBox>("chart_earlier")->click();
            shoot("piece_compared");
            find<QComboBox>("chart_axis")->setCurrentIndex(1);
            find<QPushButton>("loss_chart_as_table")->click();
            shoot("piece_table");
            find<QPushButton>("loss_chart_as_table")->click();
            shoot("piece_by_days");
        }
    }
}
