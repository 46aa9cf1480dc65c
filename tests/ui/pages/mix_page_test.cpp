// The mix bench in a window, by keyboard, over an empty and over the invented demo book.
#include "core/services/demo_book.h"
#include "tests/support/temp_folder.h"
#include "ui/pages/mix_lines.h"
#include "ui/pages/page_registry.h"
#include "ui/presenters/mix_bench.h"
#include "ui/presenters/workspace.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QRegularExpression>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <QToolButton>
#include <algorithm>
#include <gtest/gtest.h>
#include <memory>

namespace mix_page_test {
namespace {

using namespace ui;
using core::services::Book;
using saltloft::testing::TempFolder;

const auto now = core::units::Instant::from_unix_seconds(1'772'352'000); // 2026-03-01T08:00:00Z

class MixBenchPage : public ::testing::Test {
  protected:
    void SetUp() override { open(false); }
    void open(bool demo) {
        page.reset();
        workspace.reset();
        auto book = Book::open(folder.file(demo ? "demo.saltloft" : "mix.saltloft"),
                               {.now = now, .create_if_missing = true});
        ASSERT_TRUE(book.has_value());
        if (demo) {
            ASSERT_TRUE(core::services::fill_demo_book(*book, {.now = now}).has_value());
        }
        workspace = std::make_unique<presenters::Workspace>(
            std::move(*book), presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return now; });
        for (const auto& entry : pages::all_pages()) {
            if (QLatin1String(entry.id) == QLatin1String("mix")) {
                page.reset(entry.make(*workspace, nullptr));
            }
        }
        ASSERT_NE(page, nullptr);
        page->resize(1200, 900);
        page->show();
        page->arrive({});
        page->refresh();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(page.get()));
    }
    template <class W>
    W* find(const char* name) {
        auto* widget = page->findChild<W*>(QLatin1String(name));
        EXPECT_NE(widget, nullptr) << name;
        return widget;
    }
    void type(const char* name, const char* text) {
        auto* line = find<QLineEdit>(name);
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, QString::fromUtf8(text));
    }
    QString cell(const char* table, int row, int column) {
        auto* item = find<QTableWidget>(table)->item(row, column);
        // Numbers and units hang together by a blank that does not break.
        return item == nullptr ? QString() : item->text().replace(QChar(0xA0), QLatin1Char(' '));
    }
    QString findings() {
        QString all;
        for (auto* label : page->findChildren<QLabel*>()) {
            if (label->parentWidget()->objectName().startsWith(QLatin1String("mix_finding_"))) {
                all += label->text() + QLatin1Char('\n');
            }
        }
        return all;
    }
    /// The third line becomes curing salt No. 2 with its label.
    void choose_cure() {
        auto* box = find<QComboBox>("mix_ingredient_3");
        box->setCurrentIndex(box->findData(QStringLiteral("cure_no2")));
        type("mix_amount_3", "2.5 g/kg");
        type("mix_label_3", "nitrite 6.25 %; nitrate 4 %");
    }

    TempFolder folder;
    std::unique_ptr<presenters::Workspace> workspace;
    std::unique_ptr<pages::Page> page;
};

TEST_F(MixBenchPage, TheSheetFollowsTheWeightAsItIsTyped) {
    EXPECT_FALSE(find<QTableWidget>("mix_weigh")->isVisible());
    type("mix_meat", "150 g");
    EXPECT_EQ(cell("mix_weigh", 0, 1), QStringLiteral("4 g")) << "2.5 % of 150 g on a 1 g scale";
    type("mix_meat", "1500 g");
    EXPECT_EQ(cell("mix_weigh", 0, 1), QStringLiteral("38 g"));
    auto* scale = find<QComboBox>("mix_scale");
    scale->setCurrentIndex(scale->findData(0.1));
    EXPECT_EQ(cell("mix_weigh", 0, 1), QStringLiteral("37.5 g"));
    type("mix_meat", "1500 stone");
    EXPECT_TRUE(find<QLabel>("mix_meat_echo")->isVisible()) << "an unknown unit is told";
}

TEST_F(MixBenchPage, ManyPiecesGetAColumnEach) {
    type("mix_meat", "800 g; 1200 g");
    auto* table = find<QTableWidget>("mix_weigh");
    EXPECT_EQ(table->columnCount(), 5) << "name, all, two pieces, scale";
    EXPECT_EQ(cell("mix_weigh", 0, 1), QStringLiteral("50 g"));
    EXPECT_EQ(cell("mix_weigh", 0, 3), QStringLiteral("30 g"));
}

TEST_F(MixBenchPage, StopsBlockKeepingAndCautionsAreTakenOnByName) {
    type("mix_meat", "1000 g");
    type("mix_name", "Coppa");
    choose_cure();
    EXPECT_TRUE(find<QPushButton>("mix_keep")->isEnabled());
    const auto cautions =
        page->findChildren<QCheckBox*>(QRegularExpression(QStringLiteral("^mix_accept_")));
    ASSERT_FALSE(cautions.isEmpty());
    EXPECT_TRUE(find<QLabel>("mix_standing")->text().contains(QLatin1String("Cautions")));
    for (auto* caution : cautions) {
        caution->click();
    }
    EXPECT_EQ(find<QLabel>("mix_standing")->text(), QStringLiteral("Nothing stands open."));
    type("mix_amount_3", "3.2 %");
    EXPECT_FALSE(find<QPushButton>("mix_keep")->isEnabled());
    EXPECT_TRUE(findings().contains(QLatin1String("amount for salt"))) << findings().toStdString();
}

TEST_F(MixBenchPage, CautionsTakenOnGoIntoTheBookWithABatch) {
    open(true);
    type("mix_meat", "1000 g");
    type("mix_name", "Coppa of the test");
    choose_cure();
    auto* use = find<QPushButton>("mix_use");
    use->click();
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr) << "cautions are read first";
    const auto cautions =
        page->findChildren<QCheckBox*>(QRegularExpression(QStringLiteral("^mix_accept_")));
    ASSERT_FALSE(cautions.isEmpty());
    for (auto* caution : cautions) {
        caution->click();
    }
    QTimer::singleShot(0, [&] {
        auto* dialog = QApplication::activeModalWidget();
        ASSERT_NE(dialog, nullptr);
        dialog->findChild<QComboBox*>(QStringLiteral("use_batch"))->setCurrentIndex(0);
        dialog->findChild<QComboBox*>(QStringLiteral("use_person"))->setCurrentIndex(1);
        dialog->findChild<QPushButton*>(QStringLiteral("dialog_keep"))->click();
    });
    use->click();
    bool found = false;
    const auto batches = workspace->book().batches();
    ASSERT_TRUE(batches.has_value());
    for (const auto& batch : *batches) {
        const auto accepted = workspace->book().acceptances(batch.id);
        ASSERT_TRUE(accepted.has_value());
        const auto mine = std::count_if(accepted->begin(), accepted->end(), [](const auto& one) {
            return one.at == now && one.by.has_value();
        });
        if (mine > 0) {
            found = true;
            EXPECT_EQ(mine, cautions.size());
            const auto version = workspace->book().recipe_version(*batch.recipe);
            ASSERT_TRUE(version.has_value());
            EXPECT_NE(version->document.find("Coppa of the test"), std::string::npos);
        }
    }
    EXPECT_TRUE(found);
}

TEST_F(MixBenchPage, KeepsVersionsAndReadsThemBack) {
    type("mix_meat", "1000 g");
    type("mix_name", "Coppa");
    choose_cure();
    find<QPushButton>("mix_keep")->click();
    ASSERT_EQ(workspace->book().recipes()->size(), 1U);
    type("mix_amount_1", "2.25 %");
    type("mix_why", "less salt");
    find<QPushButton>("mix_keep")->click();
    const auto recipe = workspace->book().recipes()->front();
    const auto versions = *workspace->book().recipe_versions(recipe.id);
    ASSERT_EQ(versions.size(), 2U);
    EXPECT_EQ(find<QComboBox>("mix_versions")->count(), 2);
    // Nothing new is not kept again.
    find<QPushButton>("mix_keep")->click();
    EXPECT_EQ(workspace->book().recipe_versions(recipe.id)->size(), 2U);
    // The first version is still there to go back to, and to compare with.
    auto* box = find<QComboBox>("mix_versions");
    const auto first = std::find_if(versions.begin(), versions.end(),
                                    [](const auto& version) { return version.number == 1; });
    box->setCurrentIndex(box->findData(qlonglong(first->id.row())));
    Q_EMIT box->activated(box->currentIndex());
    EXPECT_EQ(find<QLineEdit>("mix_amount_1")->text(), QStringLiteral("2.5 %"));
    EXPECT_EQ(find<QLineEdit>("mix_label_3")->text(),
              QStringLiteral("nitrite 6.25 %; nitrate 4 %"));
}

TEST_F(MixBenchPage, FindsTheRestForAWish) {
    type("mix_meat", "1000 g");
    choose_cure();
    find<QCheckBox>("mix_held_3")->setChecked(true);
    type("mix_salt_wish", "2.75 %");
    find<QPushButton>("mix_find")->click();
    EXPECT_TRUE(cell("mix_dose", 0, 1).startsWith(QLatin1String("2.75 %")))
        << cell("mix_dose", 0, 1).toStdString();
    EXPECT_EQ(find<QLineEdit>("mix_amount_3")->text(), QStringLiteral("0.25 %"))
        << "held: the same 2.5 g/kg";
}

TEST_F(MixBenchPage, ComparesWithAnotherRecipe) {
    open(true);
    type("mix_meat", "1000 g");
    auto* compare = find<QComboBox>("mix_compare");
    ASSERT_GT(compare->count(), 1);
    compare->setCurrentIndex(1);
    Q_EMIT compare->activated(1);
    EXPECT_GE(find<QTableWidget>("mix_dose")->columnCount(), 3);
    EXPECT_EQ(find<QTableWidget>("mix_dose")->horizontalHeaderItem(2)->text(),
              compare->currentText());
}

TEST_F(MixBenchPage, LaysAKeptRecipeOnTheBench) {
    open(true);
    const auto recipes = workspace->book().recipes().value();
    ASSERT_FALSE(recipes.empty());
    for (const auto& recipe : recipes) {
        page->arrive({QStringLiteral("mix"), static_cast<qint64>(recipe.id.row()), {}});
        EXPECT_EQ(find<QLineEdit>("mix_name")->text().toStdString(), recipe.name);
        EXPECT_FALSE(find<QTableWidget>("mix_weigh")->isHidden()) << recipe.name;
    }
}

TEST_F(MixBenchPage, EveryFieldIsNamedAndReachedByKeyboard) {
    type("mix_meat", "1000 g");
    for (auto* widget : page->findChildren<QWidget*>()) {
        if (widget->focusPolicy() != Qt::NoFocus && widget->isVisible() &&
            (qobject_cast<QLineEdit*>(widget) || qobject_cast<QComboBox*>(widget) ||
             qobject_cast<QAbstractButton*>(widget) || qobject_cast<QTableWidget*>(widget))) {
            if (widget->objectName().startsWith(QLatin1String("qt_"))) {
                continue;
            }
            EXPECT_FALSE(widget->accessibleName().isEmpty())
                << widget->objectName().toStdString() << " " << widget->metaObject()->className();
        }
    }
}

// What the form does not show belongs to its line and stays with it when another line goes.
TEST(MixLinesWidget, NotesAndRubsStayWithTheirLines) {
    pages::MixLines lines;
    const auto basis = core::mix::Basis::meat;
    lines.set_lines({{QStringLiteral("table_salt"),
                      QStringLiteral("2.5 %"),
                      basis,
                      {},
                      false,
                      false,
                      "first half",
                      1},
                     {QStringLiteral("white_sugar"),
                      QStringLiteral("1 %"),
                      basis,
                      {},
                      true,
                      true,
                      "dark one",
                      2}},
                    {});
    lines.findChild<QToolButton*>(QStringLiteral("mix_remove_1"))->click();
    lines.add_line();
    const auto left = lines.lines();
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(left[0].note, "dark one");
    EXPECT_EQ(left[0].rub, 2);
    EXPECT_TRUE(left[0].as_wash);
    EXPECT_TRUE(left[0].held);
    EXPECT_EQ(left[1].note, "");
    EXPECT_FALSE(left[1].rub.has_value());
}

TEST(MixLabelText, ReadsAndWritesTheSame) {
    const text::Style style;
    using core::facts::IngredientKind;
    for (const auto* words :
         {"nitrite 6.25 %; nitrate 4 %", "alcohol 40 %", "salt 16 %; density 1.18",
          "sodium 0.879 g per 15 mL", "salt 13 g per 100 mL"}) {
        const auto label =
            presenters::parse_label(QString::fromUtf8(words), IngredientKind::sauce, style);
        ASSERT_TRUE(label.has_value()) << words;
        EXPECT_EQ(presenters::label_words(*label, style).toStdString(), words);
    }
    EXPECT_DOUBLE_EQ(
        presenters::parse_label(QStringLiteral("80 proof US"), IngredientKind::spirit, style)
            ->alcohol->in_percent(),
        40);
    EXPECT_DOUBLE_EQ(
        presenters::parse_label(QStringLiteral("6.25"), IngredientKind::curing_salt, style)
            ->nitrite->in_percent(),
        6.25);
    EXPECT_FALSE(
        presenters::parse_label(QStringLiteral("strength 6 %"), IngredientKind::curing_salt, style)
            .has_value());
    EXPECT_FALSE(presenters::parse_label(QStringLiteral("80 proof"), IngredientKind::spirit, style)
                     .has_value());
}

// With a decimal comma "1.025" is a thousand and twenty-five: what a recipe holds must be spelled
// in the sign it is read with, or opening and keeping it would change a dose.
TEST(MixEntryText, ComesBackTheSameWithADecimalComma) {
    text::Style style;
    style.locale = QLocale(QLocale::German, QLocale::Germany);
    core::mix::RecipeDocument recipe;
    recipe.method = core::mix::Method::immersion_pickup;
    recipe.pickup = core::units::MassShare::percent(10.125);
    core::mix::Line salt{.ingredient = "table_salt",
                         .amount = core::mix::ShareAmount{core::units::MassShare::percent(2.125)}};
    salt.label.density = core::units::Density::grams_per_millilitre(1.025);
    salt.label.nitrite = core::units::MassShare::percent(0.625);
    core::mix::Line water{.ingredient = "water",
                          .amount = core::mix::FixedAmount{core::units::Volume::millilitres(1.5)}};
    recipe.lines = {salt, water};
    recipe.wishes = {{.what = core::mix::Aim::salt,
                      .at_least = core::units::MassShare::percent(2.375),
                      .at_most = core::units::MassShare::percent(2.375)}};
    auto entry = presenters::entry_of(recipe, style);
    EXPECT_EQ(entry.lines[0].amount.toStdString(), "2,125 %");
    EXPECT_EQ(entry.lines[1].amount.toStdString(), "1,5 mL");
    entry.meat = QStringLiteral("1 kg");
    const auto read = presenters::read_entry(entry, style);
    EXPECT_TRUE(read.faults.empty());
    EXPECT_EQ(core::mix::write_recipe(read.recipe), core::mix::write_recipe(recipe));
}

} // namespace

} // namespace mix_page_test
