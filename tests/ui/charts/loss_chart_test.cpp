#include "ui/charts/chart_view.h"
#include "ui/charts/loss_chart.h"

#include <QFile>
#include <QImage>
#include <QPushButton>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <gtest/gtest.h>

#include <cmath>

using namespace ui::charts;
using core::units::Instant;
using core::units::Mass;
using core::units::MassShare;

namespace {

constexpr std::int64_t day_s = 86400;

Instant day(int n) {
    return Instant::from_unix_seconds(1772352000 + n * day_s);
}

/// 1000 g hung; 10 % and 20 % lost after one and two weeks; target 35 %.
LossChartInput input() {
    LossCurve curve;
    curve.name = QStringLiteral("P1");
    curve.reference = Mass::grams(1000);
    curve.target = MassShare::percent(35);
    curve.start = day(0);
    int row = 1;
    for (const auto& [at, net] : {std::pair{0, 1000.0}, {7, 900.0}, {14, 800.0}}) {
        curve.points.push_back({day(at),
                                Mass::grams(net),
                                MassShare::fraction(1 - net / 1000),
                                core::model::WeighingId::from_row(row++),
                                false,
                                {}});
    }
    core::model::Forecast forecast;
    forecast.state = core::model::ForecastState::drying;
    forecast.as_of = day(14);
    for (int d : {0, 14, 28, 42}) {
        const double p = d < 14 ? 0.0 : 20.0 + 0.5 * (d - 14);
        forecast.curve.push_back(
            {day(d), MassShare::percent(p - 1), MassShare::percent(p), MassShare::percent(p + 1)});
    }
    curve.forecast = forecast;
    LossChartInput chart;
    chart.title = QStringLiteral("Loss curve of P1");
    chart.curves = {curve};
    chart.events = {{day(0), QStringLiteral("hung")}, {day(0), QStringLiteral("dressed")}};
    return chart;
}

} // namespace

TEST(LossChart, PointsTargetAndBandInPercent) {
    const ChartSpec spec = loss_chart(input(), {}, {});
    ASSERT_EQ(spec.series.size(), 1);
    ASSERT_EQ(spec.series[0].points.size(), 3);
    EXPECT_DOUBLE_EQ(spec.series[0].points[2].y, 20.0);
    EXPECT_EQ(spec.series[0].points[2].tag, 3);
    ASSERT_EQ(spec.levels.size(), 1);
    EXPECT_DOUBLE_EQ(spec.levels[0].y, 35.0);
    ASSERT_EQ(spec.bands.size(), 1);
    EXPECT_EQ(spec.bands[0].x.size(), 3) << "the forecast starts at the last weighing";
    EXPECT_DOUBLE_EQ(spec.bands[0].middle.back(), 34.0);
}

TEST(LossChart, AsWeightTheBandTurnsOver) {
    const ChartSpec spec = loss_chart(input(), {.weight = true}, {});
    EXPECT_DOUBLE_EQ(spec.series[0].points[2].y, 800.0);
    EXPECT_DOUBLE_EQ(spec.levels[0].y, 650.0);
    EXPECT_LT(spec.bands[0].low.back(), spec.bands[0].high.back());
    EXPECT_DOUBLE_EQ(spec.bands[0].low.back(), 650.0);
}

TEST(LossChart, ElapsedAxisStartsAtHanging) {
    const ChartSpec spec = loss_chart(input(), {.time = TimeAxis::elapsed}, {});
    EXPECT_DOUBLE_EQ(spec.series[0].points[0].x, 0.0);
    EXPECT_DOUBLE_EQ(spec.series[0].points[2].x, 14.0);
}

TEST(LossChart, EventsOfOneDayShareAFlag) {
    const ChartSpec spec = loss_chart(input(), {}, {});
    ASSERT_EQ(spec.flags.size(), 1);
    EXPECT_EQ(spec.flags[0].label, QStringLiteral("hung, dressed"));
}

TEST(LossChart, TheAirHangsBelowWithItsGapsOpen) {
    EXPECT_TRUE(air_strips({}, {}).isEmpty());
    const auto at = [](double d) {
        return core::units::Instant::from_unix_seconds(1'772'323'200) +
               core::units::Duration::days(d);
    };
    const auto reading = [&](double d) {
        return core::drying::AirReading{at(d), core::units::Temperature::celsius(10),
                                        core::units::RelativeHumidity::percent(75)};
    };
    ui::text::Style style;
    style.temperature = ui::text::TemperatureStyle::fahrenheit;
    const auto strips = air_strips({reading(0), reading(0.25), reading(3)}, style);
    ASSERT_EQ(strips.size(), 2);
    ASSERT_EQ(strips[0].points.size(), 4) << "three readings and one gap";
    EXPECT_DOUBLE_EQ(strips[0].points[1].mean, 75);
    EXPECT_TRUE(std::isnan(strips[0].points[2].mean));
    EXPECT_DOUBLE_EQ(strips[1].points[3].mean, 50) << "10 C is 50 F";
    ASSERT_EQ(strips[0].cells.size(), 1) << "a row a week";
    EXPECT_TRUE(strips[0].cells[0].back().contains(QStringLiteral("75 (75 to 75)")));
    auto with_air = input();
    with_air.climate = strips;
    EXPECT_EQ(loss_chart(with_air, {}, {}).strips.size(), 2);
    EXPECT_TRUE(loss_chart(with_air, {.time = TimeAxis::elapsed}, {}).strips.isEmpty())
        << "the log is by date";
}

TEST(LossChart, HasATextCounterpart) {
    const ChartSpec spec = loss_chart(input(), {}, {});
    const auto rows = rows_of(spec);
    ASSERT_GE(rows.size(), 3);
    EXPECT_TRUE(rows[2].reading.contains(QStringLiteral("800")));
    EXPECT_TRUE(spec.summary.contains(QStringLiteral("P1")));
}

TEST(LossChart, SeveralPiecesDifferByMarkAndDashAndShareTheForecastsLegend) {
    auto many = input();
    for (int n = 2; n <= 6; ++n) {
        auto other = many.curves.front();
        other.name = QStringLiteral("P%1").arg(n);
        many.curves.push_back(other);
    }
    const ChartSpec spec = loss_chart(many, {}, {});
    ASSERT_EQ(spec.series.size(), 6);
    for (int a = 0; a < 6; ++a) {
        EXPECT_EQ(spec.series[a].legend, QStringLiteral("P%1").arg(a + 1));
        for (int b = 0; b < a; ++b) {
            EXPECT_FALSE(spec.series[a].mark == spec.series[b].mark &&
                         spec.series[a].dash == spec.series[b].dash)
                << a << " and " << b << " differ by colour alone";
        }
    }
    EXPECT_FALSE(spec.bands[0].legend.isEmpty());
    EXPECT_TRUE(spec.bands[1].legend.isEmpty());
    EXPECT_EQ(spec.levels.size(), 1) << "one line for one and the same target";
}

TEST(LossChart, AnEarlierPieceHangsBesideThisOneFromItsFirstDay) {
    auto both = input();
    LossCurve ghost = both.curves.front();
    ghost.name = QStringLiteral("OLD");
    ghost.ghost = true;
    ghost.start = day(-365);
    ghost.forecast.reset();
    for (auto& point : ghost.points) {
        point.at = point.at - core::units::Duration::days(365);
        point.net = Mass::grams(2 * point.net.in_grams());
    }
    both.curves.push_back(ghost);
    const ChartSpec by_date = loss_chart(both, {}, {});
    ASSERT_EQ(by_date.series.size(), 2);
    EXPECT_TRUE(by_date.series[1].ghost);
    EXPECT_DOUBLE_EQ(by_date.series[1].points[1].x, by_date.series[0].points[1].x);
    EXPECT_EQ(by_date.series[1].points[1].tag, 0) << "nothing to amend on a ghost";
    EXPECT_TRUE(by_date.series[1].points[1].reading.contains(QStringLiteral("day 7")));
    const ChartSpec by_day = loss_chart(both, {.time = TimeAxis::elapsed}, {});
    EXPECT_DOUBLE_EQ(by_day.series[1].points[1].x, 7.0);
    // Twice as heavy: drawn at what this piece weighs at the same loss, read at its own weight.
    const ChartSpec weight = loss_chart(both, {.weight = true}, {});
    EXPECT_DOUBLE_EQ(weight.series[1].points[1].y, 900.0);
    EXPECT_TRUE(weight.series[1].points[1].cells.value(2).contains(QStringLiteral("1800")))
        << weight.series[1].points[1].cells.value(2).toStdString();
    EXPECT_TRUE(by_date.summary.contains(QStringLiteral("earlier")));
}

// By hand: hung at 900 g of 1000 g raw. 35 % of the hung weight leaves 585 g: 41.5 % of the raw.
TEST(LossChart, TargetAndForecastAreCountedAsTheCurveIs) {
    auto raw = input();
    raw.counted_from = core::model::ReferenceWeight::raw;
    raw.curves.front().target_reference = Mass::grams(900);
    const ChartSpec spec = loss_chart(raw, {}, {});
    EXPECT_NEAR(spec.levels[0].y, 41.5, 1e-9);
    EXPECT_NEAR(spec.bands[0].middle.back(), 100 - 0.9 * (100 - 34), 1e-9);
    EXPECT_TRUE(spec.y_label.contains(QStringLiteral("raw weight")));
    const ChartSpec weight = loss_chart(raw, {.weight = true}, {});
    EXPECT_NEAR(weight.levels[0].y, 585, 1e-9);
}

TEST(LossChart, TheTableHasDaysWeightsAndTheForecastWeekByWeek) {
    auto chart = input();
    chart.stages = {{day(0), day(20), QStringLiteral("Drying")}};
    const ChartSpec spec = loss_chart(chart, {}, {});
    const auto rows = rows_of(spec);
    EXPECT_EQ(spec.columns.size(), 5);
    EXPECT_EQ(rows[1].cells.value(1), QStringLiteral("7"));
    int forecast = 0;
    int stages = 0;
    for (const auto& row : rows) {
        forecast += row.series.contains(QStringLiteral("forecast")) ? 1 : 0;
        stages += row.series == QStringLiteral("Drying") ? 1 : 0;
    }
    EXPECT_EQ(forecast, 3);
    EXPECT_EQ(stages, 1);
}

TEST(ChartView, TheTableTakesTheDrawingsPlaceAndChoosesToo) {
    ChartView view("chart");
    view.resize(600, 400);
    view.show();
    view.show_spec(loss_chart(input(), {}, {}));
    qint64 chosen = 0;
    QObject::connect(&view, &ChartView::chosen, [&](qint64 tag) { chosen = tag; });
    auto* toggle = view.findChild<QPushButton*>(QStringLiteral("chart_as_table"));
    ASSERT_NE(toggle, nullptr);
    toggle->click();
    EXPECT_TRUE(view.is_table());
    auto* table = view.findChild<QTableView*>(QStringLiteral("chart_table"));
    ASSERT_TRUE(table != nullptr && table->isVisible());
    table->setCurrentIndex(table->model()->index(2, 0));
    QTest::keyClick(table, Qt::Key_Return);
    EXPECT_EQ(chosen, 3);
    auto longer = input();
    longer.curves.front().points.pop_back();
    view.show_spec(loss_chart(longer, {}, {}));
    EXPECT_TRUE(view.is_table()) << "the choice stays when the book changes";
    toggle->click();
    EXPECT_FALSE(view.is_table());
}

TEST(ChartView, UpAndDownGoToTheOtherPieceOnTheSameDay) {
    ChartView view("chart");
    view.resize(600, 400);
    view.show();
    auto two = input();
    auto other = two.curves.front();
    other.name = QStringLiteral("P2");
    two.curves.push_back(other);
    view.show_spec(loss_chart(two, {}, {}));
    QTest::keyClick(&view, Qt::Key_Left);
    QTest::keyClick(&view, Qt::Key_Left);
    QTest::keyClick(&view, Qt::Key_Down);
    EXPECT_TRUE(view.reading().startsWith(QStringLiteral("P2")));
    EXPECT_TRUE(view.reading().contains(QStringLiteral("900"))) << view.reading().toStdString();
}

TEST(ChartView, KeysReadAndChoose) {
    ChartView view("chart");
    view.resize(600, 400);
    view.show();
    view.show_spec(loss_chart(input(), {}, {}));
    qint64 chosen = 0;
    QObject::connect(&view, &ChartView::chosen, [&](qint64 tag) { chosen = tag; });
    QTest::keyClick(&view, Qt::Key_Left);
    EXPECT_TRUE(view.reading().contains(QStringLiteral("800"))) << view.reading().toStdString();
    QTest::keyClick(&view, Qt::Key_Left);
    EXPECT_TRUE(view.reading().contains(QStringLiteral("900")));
    QTest::keyClick(&view, Qt::Key_Return);
    EXPECT_EQ(chosen, 2);
}

// Names fill a grid whose last cells may be empty: asking such a cell for its width once crashed.
TEST(ChartView, NamesAnyNumberOfCurvesAtAnyWidth) {
    for (int curves = 2; curves <= 7; ++curves) {
        auto many = input();
        for (int n = 1; n < curves; ++n) {
            many.curves.push_back(many.curves.front());
            many.curves.back().name = QStringLiteral("another piece %1").arg(n);
        }
        ChartView view("chart");
        view.show();
        view.show_spec(loss_chart(many, {}, {}));
        for (const int width : {320, 500, 700, 1000, 1400}) {
            view.resize(width, 500);
            QTest::qWait(5);
        }
        EXPECT_EQ(view.spec().series.size(), curves);
    }
}

TEST(ChartView, WritesAllThreeForms) {
    QTemporaryDir folder;
    ChartView view("chart");
    view.resize(600, 400);
    view.show_spec(loss_chart(input(), {}, {}));
    ASSERT_TRUE(view.save(folder.filePath(QStringLiteral("c.png"))));
    ASSERT_TRUE(view.save(folder.filePath(QStringLiteral("c.svg"))));
    ASSERT_TRUE(view.save(folder.filePath(QStringLiteral("c.pdf"))));
    EXPECT_GT(QImage(folder.filePath(QStringLiteral("c.png"))).width(), 600);
    QFile svg(folder.filePath(QStringLiteral("c.svg")));
    ASSERT_TRUE(svg.open(QIODevice::ReadOnly));
    EXPECT_TRUE(svg.readAll().contains("target 35"));
    QFile pdf(folder.filePath(QStringLiteral("c.pdf")));
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    const QByteArray bytes = pdf.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF"));
    EXPECT_LT(bytes.size(), 300000) << "a drawing, not a picture of one";
}
