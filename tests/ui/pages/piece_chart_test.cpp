// The piece page's chart: terms, company, earlier pieces, and amending a weighing from it.
#include "tests/ui/pages/support/past_pages.h"
#include "ui/charts/chart_view.h"
#include "ui/pages/compare_dialog.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/presenters/compare.h"

#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTableView>
#include <QTimer>

using namespace ui;
using charts::ChartView;
using presenters::CompareWith;

namespace {

class PieceChart : public saltloft::testing::PastPages {
  protected:
    const charts::ChartSpec& open(core::model::PieceId piece, const QString& detail = {}) {
        show("piece", {QStringLiteral("piece"), piece.row(), detail}, {1180, 900});
        workspace->forecasts().wait();
        return find<ChartView>("loss_chart")->spec();
    }
    void choose(const char* box, int data) {
        auto* combo = find<QComboBox>(box);
        combo->setCurrentIndex(combo->findData(data));
        Q_EMIT combo->activated(combo->currentIndex());
        workspace->forecasts().wait();
    }
    const charts::ChartSpec& spec() { return find<ChartView>("loss_chart")->spec(); }
    static QStringList names(const charts::ChartSpec& spec) {
        QStringList all;
        for (const auto& series : spec.series) {
            all << series.name;
        }
        return all;
    }
};

} // namespace

TEST_F(PieceChart, PiecesOfTheProductShareTheChartByName) {
    const auto one = dry("P1", "Coppa", -60, 5);
    dry("P2", "coppa", -40, 4);
    dry("P3", "Loin", -40, 4);
    EXPECT_EQ(names(open(one.piece)), QStringList{QStringLiteral("P1")});
    choose("chart_compare", static_cast<int>(CompareWith::product));
    EXPECT_EQ(names(spec()), (QStringList{QStringLiteral("P1"), QStringLiteral("P2")}));
    EXPECT_FALSE(find<QLabel>("chart_note")->isVisible());
    choose("chart_compare", static_cast<int>(CompareWith::batch));
    EXPECT_EQ(names(spec()), QStringList{QStringLiteral("P1")});
    EXPECT_TRUE(find<QLabel>("chart_note")->isVisible()) << "alone in its batch, and says so";
}

TEST_F(PieceChart, TheBatchPageOpensItWithTheBatch) {
    const auto one = dry("P1", "Coppa", -60, 5);
    open(one.piece, QStringLiteral("with_batch"));
    EXPECT_EQ(find<QComboBox>("chart_compare")->currentData().toInt(),
              static_cast<int>(CompareWith::batch));
}

TEST_F(PieceChart, ChosenPiecesAreTicked) {
    const auto one = dry("P1", "Coppa", -60, 5);
    dry("P2", "Loin", -40, 4);
    dry("P3", "Ham", -40, 4);
    open(one.piece);
    QTimer::singleShot(0, [] {
        auto* dialog = qobject_cast<pages::CompareDialog*>(QApplication::activeModalWidget());
        ASSERT_NE(dialog, nullptr);
        auto* draw = dialog->findChild<QPushButton*>(QStringLiteral("compare_show"));
        EXPECT_FALSE(draw->isEnabled()) << "nothing ticked";
        auto* list = dialog->findChild<QListWidget*>(QStringLiteral("compare_list"));
        ASSERT_EQ(list->count(), 2) << "not the piece itself";
        list->setCurrentRow(0);
        QTest::keyClick(list, Qt::Key_Space);
        EXPECT_TRUE(draw->isEnabled());
        draw->click();
    });
    choose("chart_compare", static_cast<int>(CompareWith::chosen));
    EXPECT_EQ(names(spec()), (QStringList{QStringLiteral("P1"), QStringLiteral("P3")}));
}

TEST_F(PieceChart, EarlierPiecesComeAsGhostsAndGoAgain) {
    const auto now = dry("P1", "Coppa", -20, 2);
    open(now.piece);
    auto* earlier = find<QCheckBox>("chart_earlier");
    EXPECT_FALSE(earlier->isEnabled()) << "no piece of it was finished yet";
    coppa_past();
    finish("HAM", "Ham", -200, 7);
    EXPECT_TRUE(earlier->isEnabled());
    earlier->click();
    ASSERT_EQ(spec().series.size(), 3) << "not the ham";
    EXPECT_TRUE(spec().series[1].ghost && spec().series[2].ghost);
    EXPECT_EQ(spec().bands.size(), 1) << "only what still dries has a forecast";
    earlier->click();
    EXPECT_EQ(spec().series.size(), 1);
}

// By hand: raw 1100 g, hung 1000 g, last 900 g: lost 10 % of the hung, 18.2 % of the raw weight.
TEST_F(PieceChart, LossesCountFromANamedWeight) {
    const auto one = dry("P1", "Coppa", -20, 2);
    open(one.piece);
    EXPECT_NEAR(spec().series[0].points.back().y, 10, 1e-9);
    EXPECT_TRUE(spec().y_label.contains(QStringLiteral("hung weight")));
    choose("chart_measure", static_cast<int>(core::model::ReferenceWeight::raw));
    EXPECT_NEAR(spec().series[0].points.back().y, 100.0 * 200 / 1100, 1e-9);
    EXPECT_TRUE(spec().y_label.contains(QStringLiteral("raw weight")));
    EXPECT_NEAR(spec().levels[0].y, 100 - 100.0 * 650 / 1100, 1e-9) << "35 % of the hung weight";
    choose("chart_measure", -1);
    EXPECT_NEAR(spec().series[0].points.back().y, 900, 1e-9);
}

TEST_F(PieceChart, EnterOnAPointAmendsThatWeighingAlsoOfAnotherPiece) {
    const auto one = dry("P1", "Coppa", -60, 2);
    dry("P2", "Coppa", -40, 2);
    open(one.piece);
    choose("chart_compare", static_cast<int>(CompareWith::product));
    auto* chart = find<ChartView>("loss_chart");
    QString title;
    const auto amend = [&] {
        title.clear();
        QTimer::singleShot(0, [&title] {
            auto* dialog = qobject_cast<pages::WeighingDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            title = dialog->windowTitle();
            dialog->reject();
        });
        QTest::keyClick(chart, Qt::Key_Return);
    };
    QTest::keyClick(chart, Qt::Key_Left);
    amend();
    EXPECT_TRUE(title.contains(QStringLiteral("P1"))) << title.toStdString();
    QTest::keyClick(chart, Qt::Key_Down);
    amend();
    EXPECT_TRUE(title.contains(QStringLiteral("P2"))) << title.toStdString();
}

TEST_F(PieceChart, TheTableStaysWhileTheBookChanges) {
    const auto one = dry("P1", "Coppa", -20, 2);
    open(one.piece);
    find<QPushButton>("loss_chart_as_table")->click();
    auto entry = saltloft::testing::weighing(one.piece, 880);
    entry.taken_at = day(-1);
    entry.state = core::model::WeighedState::rinsed;
    must(core::actions::AddWeighing{entry});
    EXPECT_TRUE(find<ChartView>("loss_chart")->is_table());
    const auto* table = find<QTableView>("loss_chart_table");
    EXPECT_GE(table->model()->rowCount(), 4);
}
