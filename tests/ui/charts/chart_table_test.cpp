#include "ui/charts/chart_table.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QTest>
#include <gtest/gtest.h>

using namespace ui::charts;

namespace {

QStringList cells(const char* when, const char* net) {
    return {QString::fromLatin1(when), QString::fromLatin1(net)};
}

ChartSpec spec() {
    ChartSpec made;
    made.title = QStringLiteral("Loss curve of P1");
    made.columns = {QStringLiteral("When"), QStringLiteral("Net")};
    Series series;
    series.name = QStringLiteral("P1");
    series.points = {{0, 1000, 11, QStringLiteral("hung"), false, cells("1 Mar", "1000 g")},
                     {7, 900, 12, QStringLiteral("a week on"), false, cells("8 Mar", "900\tg")}};
    Series dew = series;
    dew.name = QStringLiteral("dew");
    for (auto& point : dew.points) {
        point.reading.clear();
    }
    Band band;
    band.name = QStringLiteral("P1: forecast");
    band.cells = {cells("15 Mar", "820 g")};
    made.series = {series, dew};
    made.bands = {band};
    return made;
}

} // namespace

TEST(ChartRows, HoldWhatIsDrawnAndLeaveOutWhatIsReadElsewhere) {
    const auto rows = rows_of(spec());
    ASSERT_EQ(rows.size(), 3);
    EXPECT_EQ(rows[1].cells, cells("8 Mar", "900\tg"));
    EXPECT_EQ(rows[1].tag, 12);
    EXPECT_EQ(rows[2].series, QStringLiteral("P1: forecast"));
}

TEST(ChartRows, WithoutColumnsTheReadingIsTheOnlyCell) {
    auto plain = spec();
    plain.columns.clear();
    EXPECT_EQ(rows_of(plain)[0].cells, QStringList{QStringLiteral("hung")});
}

TEST(ChartTable, IsCopiedWithHeadsForASpreadsheet) {
    ChartTable table(QStringLiteral("t"));
    table.show_spec(spec());
    table.show();
    QTest::keyClick(&table, Qt::Key_C, Qt::ControlModifier);
    EXPECT_EQ(QGuiApplication::clipboard()->text(),
              QStringLiteral("Curve\tWhen\tNet\nP1\t1 Mar\t1000 g\nP1\t8 Mar\t900 g\n"
                             "P1: forecast\t15 Mar\t820 g\n"))
        << "a tab inside a cell would shift the rest";
    table.selectRow(0);
    EXPECT_TRUE(table.copied().contains(QStringLiteral("820 g"))) << "one marked row is no choice";
    table.setSelectionMode(QAbstractItemView::MultiSelection);
    table.selectRow(1);
    EXPECT_FALSE(table.copied().contains(QStringLiteral("820 g")));
}

TEST(ChartTable, EnterChoosesAWeighingAndNothingElse) {
    ChartTable table(QStringLiteral("t"));
    table.show_spec(spec());
    QVector<qint64> chosen;
    QObject::connect(&table, &ChartTable::chosen, [&](qint64 tag) { chosen << tag; });
    table.setCurrentIndex(table.model()->index(1, 0));
    QTest::keyClick(&table, Qt::Key_Return);
    table.setCurrentIndex(table.model()->index(2, 0));
    QTest::keyClick(&table, Qt::Key_Return);
    EXPECT_EQ(chosen, QVector<qint64>{12});
    EXPECT_TRUE(table.accessibleName().contains(QStringLiteral("P1")));
}
