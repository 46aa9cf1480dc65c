// The legend below a chart: names beside the marks and dashes that tell series apart.
#include "ui/charts/chart_painter.h"

#include "ui/charts/plot_library.h"
#include "ui/look/theme.h"

#include <algorithm>

namespace ui::charts {

void ChartPainter::list(QCPGraph* graph, const QString& legend) {
    graph->setName(legend);
    if (!legend.isEmpty()) {
        listed_.push_back(graph);
    }
}

/// In a row of its own at the foot, below the strips: inside the chart it would lie on a curve.
void ChartPainter::build_legend() {
    if (listed_.size() < 2) {
        return; // one curve is named by the chart's title
    }
    const auto& t = look::tokens();
    auto* legend = new QCPLegend;
    const int row = plot_->plotLayout()->rowCount();
    plot_->plotLayout()->addElement(row, 0, legend);
    plot_->plotLayout()->setRowStretchFactor(row, 0.001); // no more than it needs
    legend->setLayer(QStringLiteral("legend"));
    legend->setFont(plot_->font());
    legend->setTextColor(t.text);
    legend->setBrush(Qt::NoBrush);
    legend->setBorderPen(Qt::NoPen);
    legend->setFillOrder(QCPLayoutGrid::foColumnsFirst);
    legend->setRowSpacing(0);
    legend->setMargins(QMargins(6, 2, 6, plot_->fontMetrics().descent() + 3));
    legend->setColumnSpacing(plot_->fontMetrics().averageCharWidth() * 2);
    legend->setIconSize(plot_->fontMetrics().height() * 2, plot_->fontMetrics().height());
    // Bands are drawn first, and named last.
    std::stable_partition(listed_.begin(), listed_.end(),
                          [](const QCPGraph* graph) { return !graph->channelFillGraph(); });
    for (auto* graph : listed_) {
        auto* item = new QCPPlottableLegendItem(legend, graph);
        // An item is clipped to its frame, which the letters' tails would leave.
        item->setMargins(QMargins(0, 0, 0, plot_->fontMetrics().descent()));
        legend->addItem(item);
    }
    plot_->legend = legend;
    fit_legend(plot_->width());
}

/// As many names beside each other as the width has room for.
void ChartPainter::fit_legend(int width) {
    auto* legend = plot_->legend;
    if (legend == nullptr || legend->itemCount() == 0) {
        return;
    }
    // The grid's cells, of which the last may be empty: five names in two rows of three.
    int widest = 1;
    int names = 0;
    for (int n = 0; n < legend->itemCount(); ++n) {
        if (const auto* item = legend->item(n)) {
            widest = std::max(widest, item->minimumOuterSizeHint().width());
            ++names;
        }
    }
    const int room = width - legend->margins().left() - legend->margins().right();
    const int beside =
        std::clamp((room + legend->columnSpacing()) / (widest + legend->columnSpacing()), 1,
                   std::max(names, 1));
    if (beside != legend->wrap()) {
        legend->setWrap(beside);
        legend->setFillOrder(QCPLayoutGrid::foColumnsFirst, true);
    }
    // The curve keeps its height: the legend's lines come on top of it.
    const int lines = (names + beside - 1) / beside;
    const int line = plot_->fontMetrics().height();
    const int least = line * (15 + lines + (spec_.x_label.isEmpty() ? 0 : 1));
    if (plot_->minimumHeight() != least) {
        plot_->setMinimumHeight(least);
    }
}

} // namespace ui::charts
