// The parts of a chart around its curves: axes, stage stretches, levels, flags, strips, cursor.
#include "ui/charts/chart_painter.h"

#include "ui/charts/envelope.h"
#include "ui/charts/plot_library.h"
#include "ui/look/theme.h"
#include "ui/text/date_words.h"

#include <QTimeZone>

namespace ui::charts {
namespace {

/// Axis colours and fonts from the palette and the widget's font.
void dress(QCPAxis* axis, const QFont& font, bool grid) {
    const auto& t = look::tokens();
    axis->setBasePen(QPen(t.muted, 1.0));
    axis->setTickPen(QPen(t.muted, 1.0));
    axis->setSubTickPen(Qt::NoPen);
    axis->setTickLabelFont(font);
    axis->setLabelFont(font);
    axis->setTickLabelColor(t.text);
    axis->setLabelColor(t.muted);
    axis->grid()->setPen(QPen(t.line, 1.0));
    axis->grid()->setZeroLinePen(QPen(t.line, 1.0));
    axis->grid()->setVisible(grid);
}

void dress_time(QCPAxis* axis, const ChartSpec& spec) {
    if (spec.time == TimeAxis::calendar) {
        const QSharedPointer<QCPAxisTickerDateTime> ticker(new QCPAxisTickerDateTime);
        ticker->setTimeZone(QTimeZone(spec.time_zone));
        ticker->setDateTimeFormat(text::axis_day_format());
        ticker->setTickCount(6);
        axis->setTicker(ticker);
    } else {
        axis->setTicker(QSharedPointer<QCPAxisTicker>(new QCPAxisTicker));
    }
}

QCPItemText* words_at(QCustomPlot* plot, QCPAxis* x, QCPAxis* y, const QString& text) {
    auto* item = new QCPItemText(plot);
    item->position->setAxes(x, y);
    item->setText(text);
    item->setFont(plot->font());
    item->setPadding(QMargins(3, 1, 3, 1));
    item->setSelectable(false);
    return item;
}

/// A name that is longer than its strip is high, in two lines.
QString within(const QString& name, const QFontMetrics& metrics, int height) {
    if (metrics.horizontalAdvance(name) <= height) {
        return name;
    }
    const qsizetype middle = name.size() / 2;
    const qsizetype before = name.lastIndexOf(QLatin1Char(' '), middle);
    const qsizetype after = name.indexOf(QLatin1Char(' '), middle);
    const qsizetype at = before < 0                                       ? after
                         : after < 0 || middle - before <= after - middle ? before
                                                                          : after;
    QString lines = name;
    return at < 0 ? name : lines.replace(at, 1, QLatin1Char('\n'));
}

} // namespace

void ChartPainter::build_axes() {
    plot_->setLocale(plot_->parentWidget()->locale());
    main_ = new QCPAxisRect(plot_, true);
    plot_->plotLayout()->addElement(0, 0, main_);
    main_->setRangeDrag(Qt::Horizontal);
    main_->setRangeZoom(Qt::Horizontal);
    main_->axis(QCPAxis::atRight)->setVisible(false);
    main_->axis(QCPAxis::atTop)->setVisible(false);
    auto* x = main_->axis(QCPAxis::atBottom);
    auto* y = main_->axis(QCPAxis::atLeft);
    for (auto* axis : {x, y}) {
        axis->setLayer(QStringLiteral("axes"));
        axis->grid()->setLayer(QStringLiteral("grid"));
    }
    dress(x, plot_->font(), false);
    dress(y, plot_->font(), true);
    dress_time(x, spec_);
    x->setLabel(spec_.strips.isEmpty() ? spec_.x_label : QString());
    y->setLabel(spec_.y_label);
    delete margins_; // of the rects before, which are gone
    margins_ = new QCPMarginGroup(plot_);
    main_->setMarginGroup(QCP::msLeft | QCP::msRight, margins_);
    // Room for half a tick label above and below; more would be taken from the curve.
    const int half = plot_->fontMetrics().height() / 2;
    main_->setMinimumMargins(QMargins(0, half, half, half));
    x->setTickLabels(spec_.strips.isEmpty()); // the lowest rect names the days for all
    plot_->plotLayout()->setRowStretchFactor(0, 3);
    connect(x, qOverload<const QCPRange&, const QCPRange&>(&QCPAxis::rangeChanged), this,
            [this](const QCPRange& range, const QCPRange&) {
                if (plot_->isVisible() && QApplication::mouseButtons() != Qt::NoButton) {
                    plot_->setProperty("zoomed", true);
                }
                for (auto* rect : plot_->axisRects()) {
                    rect->axis(QCPAxis::atBottom)->setRange(range);
                }
            });
}

void ChartPainter::build_stretches() {
    const auto& t = look::tokens();
    auto* x = main_->axis(QCPAxis::atBottom);
    auto* y = main_->axis(QCPAxis::atLeft);
    bool odd = false;
    for (const auto& stretch : spec_.stretches) {
        auto* rect = new QCPItemRect(plot_);
        rect->setLayer(QStringLiteral("background"));
        rect->setSelectable(false);
        rect->topLeft->setAxes(x, y);
        rect->bottomRight->setAxes(x, y);
        for (auto* position : {rect->topLeft, rect->bottomRight}) {
            position->setAxisRect(main_);
            position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        }
        rect->topLeft->setCoords(stretch.from, 0);
        rect->bottomRight->setCoords(stretch.to, 1);
        rect->setPen(Qt::NoPen);
        rect->setBrush(odd ? t.surface : t.sunk);
        rect->setClipToAxisRect(true);
        rect->setClipAxisRect(main_);
        odd = !odd;
        auto* label = words_at(plot_, x, y, stretch.label);
        label->position->setAxisRect(main_);
        label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        label->position->setCoords(stretch.from, 0.0);
        label->setPositionAlignment(Qt::AlignLeft | Qt::AlignTop);
        label->setColor(t.muted);
        label->setClipToAxisRect(true);
        label->setClipAxisRect(main_);
    }
}

void ChartPainter::build_levels_and_flags() {
    const auto& t = look::tokens();
    auto* x = main_->axis(QCPAxis::atBottom);
    auto* y = main_->axis(QCPAxis::atLeft);
    const auto straight = [&](double x1, double y1, double x2, double y2, const QPen& pen) {
        auto* line = new QCPItemStraightLine(plot_);
        line->setSelectable(false);
        line->point1->setAxes(x, y);
        line->point2->setAxes(x, y);
        line->point1->setCoords(x1, y1);
        line->point2->setCoords(x2, y2);
        line->setPen(pen);
        line->setClipAxisRect(main_);
    };
    for (const auto& level : spec_.levels) {
        straight(0, level.y, 1, level.y, QPen(t.text, 1.0, Qt::DashLine));
        auto* label = words_at(plot_, x, y, level.label);
        label->position->setAxisRect(main_);
        label->position->setTypeX(QCPItemPosition::ptAxisRectRatio);
        label->position->setCoords(0.45, level.y);
        label->setPositionAlignment(Qt::AlignHCenter | Qt::AlignBottom);
        label->setColor(t.text);
    }
    if (spec_.now) {
        straight(*spec_.now, 0, *spec_.now, 1, QPen(t.accent, 1.0, Qt::DotLine));
        auto* label = words_at(plot_, x, y, tr("now"));
        label->position->setAxisRect(main_);
        label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        label->position->setCoords(*spec_.now, 0.0);
        label->setPositionAlignment(Qt::AlignRight | Qt::AlignTop);
        label->setColor(t.accent);
    }
    bool upper = false;
    for (const auto& flag : spec_.flags) {
        straight(flag.x, 0, flag.x, 1, QPen(t.line, 1.0));
        // In two rows, by turns: neighbours a week apart would write over each other in one.
        auto* label = words_at(plot_, x, y, flag.label);
        label->position->setAxisRect(main_);
        label->position->setTypeY(QCPItemPosition::ptAxisRectRatio);
        label->position->setCoords(flag.x, upper ? 0.93 : 1.0);
        label->setPositionAlignment(Qt::AlignLeft | Qt::AlignBottom);
        label->setColor(t.muted);
        label->setClipToAxisRect(true);
        label->setClipAxisRect(main_);
        upper = !upper;
    }
}

void ChartPainter::build_strips() {
    const auto& t = look::tokens();
    int row = 1;
    for (const auto& strip : spec_.strips) {
        auto* rect = new QCPAxisRect(plot_, true);
        rect->setMarginGroup(QCP::msLeft | QCP::msRight, margins_);
        rect->setMinimumMargins(main_->minimumMargins());
        rect->setRangeDrag(Qt::Horizontal);
        rect->setRangeZoom(Qt::Horizontal);
        rect->axis(QCPAxis::atRight)->setVisible(false);
        rect->axis(QCPAxis::atTop)->setVisible(false);
        rect->setMaximumSize(QWIDGETSIZE_MAX, plot_->fontMetrics().height() * 6);
        rect->setMinimumSize(0, plot_->fontMetrics().height() * 4);
        plot_->plotLayout()->addElement(row, 0, rect);
        plot_->plotLayout()->setRowStretchFactor(row, 0.5); // what is spare is the curve's
        auto* x = rect->axis(QCPAxis::atBottom);
        auto* y = rect->axis(QCPAxis::atLeft);
        dress(x, plot_->font(), false);
        dress(y, plot_->font(), true);
        dress_time(x, spec_);
        y->ticker()->setTickCount(3);
        y->setLabel(within(strip.name, plot_->fontMetrics(), plot_->fontMetrics().height() * 4));
        const bool lowest = row == spec_.strips.size();
        x->setLabel(lowest ? spec_.x_label : QString());
        x->setTickLabels(lowest);
        connect(x, qOverload<const QCPRange&>(&QCPAxis::rangeChanged),
                main_->axis(QCPAxis::atBottom), qOverload<const QCPRange&>(&QCPAxis::setRange));
        const QColor colour =
            look::chart_colours(dark_)[static_cast<std::size_t>(strip.colour) % 7];
        QColor ground = colour;
        ground.setAlpha(80);
        auto* low = plot_->addGraph(x, y);
        auto* high = new Envelope(x, y, low);
        auto* mean = plot_->addGraph(x, y);
        for (const auto& p : strip.points) {
            low->addData(p.x, p.low);
            high->addData(p.x, p.high);
            mean->addData(p.x, p.mean);
        }
        low->setPen(Qt::NoPen);
        high->setPen(Qt::NoPen);
        high->setBrush(ground);
        mean->setPen(QPen(colour, 1.0));
        y->rescale();
        if (strip.wanted) {
            for (const double edge : {strip.wanted->first, strip.wanted->second}) {
                auto* line = new QCPItemStraightLine(plot_);
                line->setSelectable(false);
                line->point1->setAxes(x, y);
                line->point2->setAxes(x, y);
                line->point1->setCoords(0, edge);
                line->point2->setCoords(1, edge);
                line->setPen(QPen(t.muted, 1.0, Qt::DashLine));
                line->setClipAxisRect(rect);
            }
            y->setRange(y->range().expanded(strip.wanted->first).expanded(strip.wanted->second));
        }
        y->scaleRange(1.1, y->range().center());
        ++row;
    }
}

void ChartPainter::mark(std::optional<Hit> hit) {
    marked_ = hit;
    if (auto* old = plot_->findChild<QObject*>(QStringLiteral("cursor_ring"))) {
        plot_->removeItem(qobject_cast<QCPAbstractItem*>(old));
    }
    if (hit) {
        const auto& point = spec_.series[hit->series].points[hit->point];
        auto* ring = new QCPItemTracer(plot_);
        ring->setObjectName(QStringLiteral("cursor_ring"));
        ring->setSelectable(false);
        ring->position->setAxes(main_->axis(QCPAxis::atBottom), main_->axis(QCPAxis::atLeft));
        ring->position->setCoords(point.x, point.y);
        ring->setStyle(QCPItemTracer::tsCircle);
        ring->setSize(14);
        ring->setPen(QPen(look::tokens().text, 2));
        ring->setBrush(Qt::NoBrush);
        ring->setClipAxisRect(main_);
    }
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

} // namespace ui::charts
