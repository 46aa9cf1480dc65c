#include "ui/charts/envelope.h"

#include <QImage>
#include <QPainter>
#include <QSvgGenerator>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

using namespace ui::charts;

namespace {

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
const QRectF area(10, 0, 100, 50);

double covered(const QVector<QRectF>& rects) {
    double sum = 0;
    for (const auto& r : rects) {
        sum += r.width() * r.height();
    }
    return sum;
}

} // namespace

TEST(Envelope, ALevelRangeIsOneRectangleCutAtTheArea) {
    const auto rects = columns_of({{0, 20, 30}, {200, 20, 30}}, area);
    ASSERT_EQ(rects.size(), 1);
    EXPECT_EQ(rects[0], QRectF(10, 20, 100, 10));
}

TEST(Envelope, ASlopeCoversWhatItsPolygonWould) {
    // A wedge from 0 to 20 pixels over 100: its area is 1000.
    const auto rects = columns_of({{10, 25, 25}, {110, 15, 35}}, area);
    EXPECT_NEAR(covered(rects), 1000, 10);
    for (const auto& r : rects) {
        EXPECT_NEAR(r.center().y(), 25, 0.01);
    }
}

TEST(Envelope, AColumnHoldsAllThatFallsIntoIt) {
    // Ten points in the same pixel: one spike up, one down.
    QVector<Reach> reaches;
    for (int i = 0; i < 10; ++i) {
        reaches.push_back({50.0 + i * 0.1, i == 4 ? 5.0 : 20.0, i == 7 ? 45.0 : 22.0});
    }
    const auto rects = columns_of(reaches, area);
    ASSERT_EQ(rects.size(), 1);
    EXPECT_EQ(rects[0].top(), 5);
    EXPECT_EQ(rects[0].bottom(), 45);
}

TEST(Envelope, AGapStaysEmptyAndWhatLiesOutsideIsLeftOut) {
    const auto rects = columns_of({{10, 20, 30},
                                   {30, 20, 30},
                                   {40, nothing, nothing},
                                   {60, 20, 30},
                                   {80, 20, 30},
                                   {90, 60, 70},
                                   {109, 60, 70}},
                                  area);
    for (const auto& r : rects) {
        EXPECT_TRUE(r.right() <= 31 || r.left() >= 60) << r.left() << " to " << r.right();
        EXPECT_LE(r.right(), 90) << "the rest is below the area";
    }
    EXPECT_TRUE(columns_of({}, area).isEmpty());
    EXPECT_TRUE(columns_of({{10, 20, 30}}, area).isEmpty());
    EXPECT_TRUE(columns_of({{10, 20, 30}, {20, 20, 30}}, QRectF()).isEmpty());
}

TEST(Envelope, LooksAsThePolygonDoes) {
    const auto drawn = [](bool columns) {
        QCustomPlot plot;
        plot.resize(400, 300);
        auto* low = plot.addGraph();
        auto* high = columns ? new Envelope(plot.xAxis, plot.yAxis, low) : plot.addGraph();
        if (!columns) {
            high->setChannelFillGraph(low);
        }
        high->setAntialiasedFill(false);
        high->setBrush(QColor(255, 0, 0));
        low->setPen(Qt::NoPen);
        high->setPen(Qt::NoPen);
        for (int i = 0; i <= 200; ++i) {
            low->addData(i, std::sin(i * 0.05) - 0.3);
            high->addData(i, std::sin(i * 0.05) + 0.3 + 0.1 * (i % 3));
        }
        plot.xAxis->setRange(20, 180);
        plot.yAxis->setRange(-2, 2);
        return plot.toPixmap(400, 300).toImage();
    };
    const QImage columns = drawn(true);
    const QImage polygon = drawn(false);
    int red = 0;
    int other = 0;
    for (int y = 0; y < 300; ++y) {
        for (int x = 0; x < 400; ++x) {
            red += polygon.pixelColor(x, y) == QColor(255, 0, 0) ? 1 : 0;
            other += polygon.pixel(x, y) != columns.pixel(x, y) ? 1 : 0;
        }
    }
    ASSERT_GT(red, 5000);
    EXPECT_LT(other, red / 20) << "only pixels at the edges may differ";
}

TEST(Envelope, AVectorFileGetsThePolygon) {
    QCustomPlot plot;
    auto* low = plot.addGraph();
    auto* high = new Envelope(plot.xAxis, plot.yAxis, low);
    high->setBrush(QColor(1, 2, 3));
    for (int i = 0; i <= 50; ++i) {
        low->addData(i, 1);
        high->addData(i, 2 + i % 2);
    }
    plot.rescaleAxes();
    QByteArray svg;
    QBuffer buffer(&svg);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setSize({400, 300});
    {
        QCPPainter painter(&generator);
        painter.setMode(QCPPainter::pmVectorized);
        plot.toPainter(&painter, 400, 300);
    }
    EXPECT_LT(svg.count("<rect"), 10);
    EXPECT_TRUE(svg.contains("#010203"));
}
