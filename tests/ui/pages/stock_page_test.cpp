// Stock, packing, hanging again and the piece's troubles: real widgets over the invented demo book.
#include "core/services/demo_book.h"
#include "core/services/planning_desk.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"
#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/pages/lost_weight_dialog.h"
#include "ui/pages/mix_use_dialog.h"
#include "ui/pages/pack_dialogs.h"
#include "ui/pages/page_registry.h"
#include "ui/pages/split_dialogs.h"
#include "ui/pages/warm_dialog.h"
#include "ui/presenters/acceptances.h"
#include "ui/presenters/hanging.h"
#include "ui/presenters/keep_by.h"
#include "ui/presenters/stock.h"
#include "ui/presenters/workspace.h"

#include <QAction>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QRadioButton>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <algorithm>
#include <chrono>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <memory>

using namespace ui;
using core::model::MoveKind;
using core::model::PieceState;
using core::services::Book;
using core::units::Day;
using core::units::Mass;
using saltloft::testing::take;

namespace stock_page_test {
namespace {

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class StockPages : public ::testing::Test {
  protected:
    void SetUp() override {
        auto book = take(
            Book::open(folder.file("stock.saltloft"), {.now = now, .create_if_missing = true}));
        ASSERT_TRUE(core::services::fill_demo_book(book, {.now = now}).has_value());
        workspace = std::make_unique<presenters::Workspace>(
            std::move(book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
        core::services::PieceFilter done;
        done.states = {PieceState::finished};
        for (const auto& one : take(workspace->book().pieces(done))) {
            finished = one;
        }
        ASSERT_TRUE(finished.id.is_assigned());
    }
    void show(const char* id, qint64 row = 0) {
        for (const auto& entry : pages::all_pages()) {
            if (QLatin1String(entry.id) == QLatin1String(id)) {
                page.reset(entry.make(*workspace, nullptr));
            }
        }
        page->resize(1200, 900);
        page->show();
        page->arrive({QString::fromLatin1(id), row, {}});
        page->refresh();
        QObject::connect(workspace.get(), &presenters::Workspace::changed, page.get(),
                         [this] { page->refresh(); });
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    }
    template <class W>
    W* find(const char* name, QWidget* root = nullptr) {
        auto* widget = (root != nullptr ? root : page.get())->findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    void type(QWidget& root, const char* field, const char* text) {
        auto* line = find<QLineEdit>(field, &root);
        line->selectAll();
        QTest::keyClicks(line, QString::fromUtf8(text));
    }
    void keep(QDialog& dialog) {
        QTest::mouseClick(find<QPushButton>("dialog_keep", &dialog), Qt::LeftButton);
    }
    void in_dialog(const std::function<void()>& open, const std::function<void(QDialog&)>& with) {
        bool met = false;
        QTimer::singleShot(0, [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            met = true;
            with(*dialog);
            if (dialog->isVisible()) {
                dialog->reject();
            }
        });
        open();
        EXPECT_TRUE(met);
    }
    /// A finished piece of its own with one pack of all of it.
    core::model::Pack packed(double grams) {
        for (const auto& old : take(workspace->book().packs_of(finished.id))) {
            if (!old.gone) {
                workspace->perform(core::actions::MovePack{{.pack = old.id,
                                                            .kind = MoveKind::used,
                                                            .amount = old.weight_left,
                                                            .at = now}});
            }
        }
        workspace->perform(core::actions::AddPack{{.piece = finished.id,
                                                   .code = "Z1",
                                                   .packed_weight = Mass::grams(grams),
                                                   .weight_left = Mass::grams(grams),
                                                   .packed_on = workspace->today() - 20}});
        for (const auto& pack : take(workspace->book().packs_of(finished.id))) {
            if (pack.code == "Z1") {
                return pack;
            }
        }
        ADD_FAILURE();
        return {.packed_weight = Mass::grams(0),
                .weight_left = Mass::grams(0),
                .packed_on = workspace->today()};
    }
    std::vector<std::string> hanging() {
        std::vector<std::string> codes;
        for (const auto& line : presenters::hanging_lines(workspace->book())) {
            codes.push_back(line.line.piece().code);
        }
        return codes;
    }
    bool hangs(const std::string& code) {
        const auto codes = hanging();
        return std::find(codes.begin(), codes.end(), code) != codes.end();
    }

    saltloft::testing::TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
    std::unique_ptr<pages::Page> page;
    core::model::Piece finished;
};

} // namespace

TEST_F(StockPages, ARuleGivesTheDayAndIsShownAsUnverified) {
    pages::PackDialog dialog(*workspace, finished.id, nullptr);
    dialog.show();
    auto* kind = find<QComboBox>("pack_kind", &dialog);
    kind->setCurrentIndex(kind->findData(int(core::model::PackKind::vacuum)));
    auto* rule = find<QComboBox>("pack_rule", &dialog);
    ASSERT_GT(rule->count(), 1);
    rule->setCurrentIndex(1);
    EXPECT_TRUE(find<QLabel>("pack_rule_source", &dialog)
                    ->text()
                    .contains(QStringLiteral("common practice, no source")));
    type(dialog, "pack_weight_line", "200 g");
    keep(dialog);
    EXPECT_FALSE(dialog.isVisible());
    const auto packs = take(workspace->book().packs_of(finished.id));
    EXPECT_EQ(packs.back().keep_by_rule, "muscle_vacuum_cold");
    EXPECT_EQ(packs.back().keep_by, workspace->today() + 180);
    show("stock", static_cast<qint64>(packs.back().id.row()));
    EXPECT_TRUE(find<QLabel>("pack_facts")->text().contains(QStringLiteral("by a rule: ")));
}

TEST_F(StockPages, AnOwnDayNeedsItsReasonAndShowsIt) {
    pages::PackDialog dialog(*workspace, finished.id, nullptr);
    dialog.show();
    find<QComboBox>("pack_rule", &dialog)->setCurrentIndex(1);
    type(dialog, "pack_weight_line", "200 g");
    type(dialog, "pack_keep_by_line", "2026-05-01");
    EXPECT_EQ(find<QComboBox>("pack_rule", &dialog)->currentIndex(), 0)
        << "another day is the person's own";
    keep(dialog);
    EXPECT_TRUE(dialog.isVisible());
    EXPECT_TRUE(
        find<look::Banner>("dialog_banner", &dialog)->text().contains(QStringLiteral("Say why")));
    type(dialog, "pack_why", "promised to my sister");
    keep(dialog);
    EXPECT_FALSE(dialog.isVisible());
    const auto packs = take(workspace->book().packs_of(finished.id));
    const auto pack = *std::find_if(packs.begin(), packs.end(), [](const auto& one) {
        return one.keep_by == Day::from_date(std::chrono::year(2026) / 5 / 1);
    });
    EXPECT_EQ(presenters::own_day_why(workspace->book(), pack),
              QStringLiteral("promised to my sister"));
    show("stock", static_cast<qint64>(pack.id.row()));
    EXPECT_TRUE(
        find<QLabel>("pack_facts")->text().contains(QStringLiteral("promised to my sister")));
}

TEST_F(StockPages, OpeningAPackGoesByTheRuleForOpening) {
    const auto closed =
        presenters::keep_choices(core::model::PackKind::vacuum, workspace->today(), {});
    const auto opened = presenters::keep_choices(core::model::PackKind::vacuum, workspace->today(),
                                                 workspace->today() + 3);
    ASSERT_FALSE(closed.isEmpty());
    ASSERT_FALSE(opened.isEmpty());
    EXPECT_EQ(opened.front().day, workspace->today() + 3 + 21);
    const auto late = presenters::keep_choices(core::model::PackKind::vacuum, workspace->today(),
                                               closed.front().day - 2, closed.front().day);
    EXPECT_EQ(late.front().day, closed.front().day) << "opening never lengthens";
}

TEST_F(StockPages, HungAgainFromAPackIsAPieceOnHangingAndOnTheDaySheet) {
    const auto pack = packed(150); // a part: the demo's packs of it were all used up
    EXPECT_FALSE(hangs("Q9"));
    show("stock", static_cast<qint64>(pack.id.row()));
    in_dialog([&] { QTest::mouseClick(find<QPushButton>("take"), Qt::LeftButton); },
              [&](QDialog& dialog) {
                  auto* kind = find<QComboBox>("take_kind", &dialog);
                  EXPECT_FALSE(find<QLabel>("take_what", &dialog)->isVisible());
                  kind->setCurrentIndex(kind->findData(int(MoveKind::re_hung)));
                  EXPECT_FALSE(find<QLineEdit>("take_to_whom", &dialog)->isVisible());
                  type(dialog, "take_amount_line", "150 g");
                  EXPECT_TRUE(find<QLabel>("take_what", &dialog)
                                  ->text()
                                  .contains(QStringLiteral("becomes a piece of its own")));
                  type(dialog, "take_code", "Q9");
                  keep(dialog);
                  EXPECT_FALSE(dialog.isVisible());
              });
    ASSERT_TRUE(hangs("Q9"));
    for (const auto& line : presenters::hanging_lines(workspace->book())) {
        if (line.line.piece().code == "Q9") {
            ASSERT_TRUE(line.line.towards_target.has_value()) << "it has its parent's start";
            EXPECT_GT(line.line.towards_target->loss.in_percent(), 10);
        }
    }
    // The day sheet a week on asks for its weight.
    core::services::DeskView view{.now = now + core::units::Duration::days(8),
                                  .zone = workspace->style().zone};
    const auto sheet = take(core::services::day_sheet(workspace->book(), view));
    const auto pieces = take(workspace->book().pieces());
    const auto part = std::find_if(pieces.begin(), pieces.end(),
                                   [](const auto& one) { return one.code == "Q9"; });
    bool asked = false;
    for (const auto* list : {&sheet.due, &sheet.overdue, &sheet.coming}) {
        for (const auto& task : *list) {
            asked =
                asked || (task.verb == "weigh" && std::find(task.pieces.begin(), task.pieces.end(),
                                                            part->id) != task.pieces.end());
        }
    }
    EXPECT_TRUE(asked);
    workspace->undo();
    EXPECT_FALSE(hangs("Q9"));
}

TEST_F(StockPages, TheReviewHangsAFinishedPieceAgain) {
    auto pack = packed(1);
    workspace->perform(core::actions::MovePack{
        {.pack = pack.id, .kind = MoveKind::used, .amount = Mass::grams(1), .at = now}});
    show("review", static_cast<qint64>(finished.id.row()));
    auto* again = find<QRadioButton>("verdict_hang_again");
    EXPECT_TRUE(again->isEnabled());
    EXPECT_FALSE(find<QRadioButton>("verdict_done")->isEnabled());
    again->click();
    EXPECT_TRUE(find<QWidget>("review_again")->isVisible()) << "with the next day to weigh";
    auto* person = find<QComboBox>("review_person");
    person->setCurrentIndex(1);
    QTest::mouseClick(find<QPushButton>("review_sign"), Qt::LeftButton);
    EXPECT_EQ(take(workspace->book().piece(finished.id)).state, PieceState::drying);
    EXPECT_TRUE(hangs(finished.code));
    const auto decision = take(workspace->book().decisions(finished.id)).back();
    EXPECT_EQ(decision.why, "Hung again.");
    EXPECT_TRUE(decision.weigh_again.has_value());
    workspace->undo();
    EXPECT_EQ(take(workspace->book().piece(finished.id)).state, PieceState::finished);
}

TEST_F(StockPages, YieldAndCostAreAtTheLossItReallyHad) {
    show("stock");
    // 1000 g raw, 650 g at the last weighing, 1100 g bought for it at 10: 10 x 1.1 / 0.65.
    presenters::PieceLine line;
    line.losses = {{core::model::ReferenceWeight::raw, Mass::grams(1000),
                    core::units::MassShare::percent(35)}};
    line.net = Mass::grams(650);
    core::model::Batch batch{.started = workspace->today()};
    batch.price_per_kilogram = 10.0;
    batch.bought_weight = Mass::grams(2200);
    const auto yield = presenters::yield_of(line, batch, {}, {}, Mass::grams(2000));
    ASSERT_TRUE(yield && yield->cost_per_kilogram);
    EXPECT_NEAR(yield->share.in_percent(), 65, 1e-9);
    EXPECT_NEAR(yield->lost.in_percent(), 35, 1e-9);
    EXPECT_NEAR(*yield->cost_per_kilogram, 10 * 1.1 / 0.65, 1e-9);
    EXPECT_FALSE(yield->packed.has_value());
}

TEST_F(StockPages, WeighingAsOneShowsTheNewStartAndTargetFirst) {
    core::services::PieceFilter drying;
    drying.states = {PieceState::drying};
    std::map<core::model::BatchId, std::vector<core::model::Piece>> by_batch;
    for (const auto& piece : take(workspace->book().pieces(drying))) {
        by_batch[piece.batch].push_back(piece);
    }
    const auto two = std::find_if(by_batch.begin(), by_batch.end(),
                                  [](const auto& entry) { return entry.second.size() >= 2; });
    ASSERT_NE(two, by_batch.end());
    show("piece", static_cast<qint64>(two->second.front().id.row()));
    in_dialog([&] { page->findChild<QAction*>(QStringLiteral("event_merge"))->trigger(); },
              [&](QDialog& dialog) {
                  auto* preview = find<QLabel>("merge_preview", &dialog);
                  EXPECT_FALSE(preview->text().contains(QStringLiteral("target")) &&
                               preview->text().contains(QStringLiteral("\u2192")));
                  find<QListWidget>("merge_others", &dialog)->item(0)->setCheckState(Qt::Checked);
                  type(dialog, "merge_on_scale_line", "2500 g");
                  EXPECT_TRUE(preview->text().contains(QStringLiteral("Weighed apart")));
                  EXPECT_TRUE(preview->text().contains(QStringLiteral("target on the scale")))
                      << preview->text().toStdString();
                  EXPECT_FALSE(preview->text().contains(QStringLiteral("\u2192 \u2014")))
                      << "the bundle has a start: " << preview->text().toStdString();
              });
}

TEST_F(StockPages, CautionsAreTakenOnByAPersonAndKeptWithTheBatch) {
    const auto recipe =
        workspace->perform(core::actions::AddRecipe{"Neck", R"({"saltloft_recipe": 1})"});
    const auto version =
        recipe->id<core::model::RecipeVersionId>(core::model::EntryKind::recipe_version);
    core::model::Finding caution{
        .code = "warm_rim", .severity = core::model::Severity::caution, .place = "humidity"};
    caution.values["humidity"] = core::units::RelativeHumidity::percent(30);
    pages::MixUseDialog dialog(*workspace, version, QStringLiteral("Neck"), {caution}, nullptr);
    dialog.show();
    auto* batches = find<QComboBox>("use_batch", &dialog);
    ASSERT_GT(batches->count(), 0);
    keep(dialog);
    EXPECT_TRUE(dialog.isVisible()) << "a caution is taken on by somebody";
    find<QComboBox>("use_person", &dialog)->setCurrentIndex(1);
    type(dialog, "use_why", "thin piece");
    keep(dialog);
    EXPECT_FALSE(dialog.isVisible());
    ASSERT_EQ(dialog.acceptances().size(), 1U);
    const auto& kept = dialog.acceptances().front();
    EXPECT_TRUE(kept.by.has_value());
    EXPECT_EQ(kept.why, "thin piece");
    EXPECT_EQ(kept.at, now);
    EXPECT_TRUE(presenters::acceptance_words(kept).contains(QStringLiteral("30")))
        << "the sentence as it was shown";
    const auto batch = take(workspace->book().batch(*kept.batch));
    EXPECT_EQ(batch.recipe, version);
    core::model::Acceptance old{.code = "dose_coarse", .at = now};
    old.detail = R"({"share":0.5})";
    EXPECT_EQ(presenters::acceptance_words(old), QStringLiteral("dose coarse"));
}

// Pictures of the forms, light and dark, for whoever changes them.
TEST_F(StockPages, FormsForTheEye) {
    const QString shots = qEnvironmentVariable("SALTLOFT_SHOTS");
    if (shots.isEmpty()) {
        GTEST_SKIP() << "set SALTLOFT_SHOTS to a folder to see the forms";
    }
    core::services::PieceFilter filter;
    filter.states = {PieceState::drying};
    const auto drying = take(workspace->book().piece_histories(filter)).front();
    const auto line = presenters::line_in(workspace->book(), drying);
    const auto pack = packed(150);
    for (const auto mode : {look::Mode::light, look::Mode::dark}) {
        look::apply_theme(*qApp, mode);
        const QString name = shots + (mode == look::Mode::light ? QStringLiteral("/light-")
                                                                : QStringLiteral("/dark-"));
        const auto grab = [&](QDialog& dialog, const char* what) {
            dialog.show();
            QTest::qWait(80);
            ASSERT_TRUE(dialog.grab().save(name + QLatin1String(what) + QStringLiteral(".png")));
        };
        pages::WarmDialog warm(*workspace, line, nullptr);
        grab(warm, "warm");
        pages::PackDialog packing(*workspace, finished.id, nullptr);
        find<QComboBox>("pack_rule", &packing)->setCurrentIndex(1);
        grab(packing, "pack");
        pages::TakeDialog taking(*workspace, pack, nullptr);
        auto* kind = find<QComboBox>("take_kind", &taking);
        kind->setCurrentIndex(kind->findData(int(MoveKind::re_hung)));
        grab(taking, "take");
        pages::LostWeightDialog lost(*workspace, line, nullptr);
        grab(lost, "lost");
        core::model::Finding caution{.code = "warm_rim",
                                     .severity = core::model::Severity::caution};
        caution.values["humidity"] = core::units::RelativeHumidity::percent(30);
        pages::MixUseDialog use(*workspace, {}, QStringLiteral("House coppa"), {caution}, nullptr);
        grab(use, "use");
        pages::MergeDialog merge(*workspace, line, nullptr);
        grab(merge, "merge");
    }
}

} // namespace stock_page_test
