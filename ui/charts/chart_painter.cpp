#include "ui/charts/chart_painter.h"

#include "ui/charts/envelope.h"
#include "ui/charts/plot_library.h"
#include "ui/look/theme.h"

#include <QFileInfo>
#include <QMouseEvent>
#include <QPdfWriter>
#include <QSvgGenerator>
#include <QTimeZone>

#include <cmath>

namespace ui::charts {
namespace {

QColor series_colour(int index, bool dark) {
    const auto& colours = look::chart_colours(dark);
    return colours[static_cast<std::size_t>(index) % colours.size()];
}

QCPScatterStyle scatter_of(Mark mark, const QColor& colour, const QColor& ground, double size) {
    switch (mark) {
    case Mark::dot:
        return {QCPScatterStyle::ssCircle, colour, colour, size};
    case Mark::square:
        return {QCPScatterStyle::ssSquare, colour, colour, size};
    case Mark::triangle:
        return {QCPScatterStyle::ssTriangle, colour, colour, size + 2};
    case Mark::diamond:
        return {QCPScatterStyle::ssDiamond, colour, colour, size + 2};
    case Mark::ring:
        return {QCPScatterStyle::ssCircle, colour, ground, size};
    case Mark::cross:
        return {QCPScatterStyle::ssCross, QPen(colour, 1.5), Qt::NoBrush, size};
    case Mark::none:
        break;
    }
    return QCPScatterStyle(QCPScatterStyle::ssNone);
}

Qt::PenStyle pen_style(Dash dash) {
    return dash == Dash::solid ? Qt::SolidLine : dash == Dash::dashed ? Qt::DashLine : Qt::DotLine;
}

QVector<QCPGraphData> data_of(const QVector<double>& x, const QVector<double>& y) {
    QVector<QCPGraphData> data;
    data.reserve(x.size());
    for (qsizetype i = 0; i < x.size() && i < y.size(); ++i) {
        data.push_back({x[i], y[i]});
    }
    return data;
}

void fill(QCPGraph* graph, const QVector<QCPGraphData>& data) {
    graph->data()->set(data, true);
}

} // namespace

ChartPainter::ChartPainter(QWidget* parent) : QObject(parent), plot_(new QCustomPlot(parent)) {
    plot_->setObjectName(QStringLiteral("plot"));
    plot_->setFocusPolicy(Qt::NoFocus); // ChartView takes the keys
    plot_->setPlottingHints(QCP::phFastPolylines);
    plot_->setNotAntialiasedElements(QCP::aeFills);
    plot_->setInteractions(QCP::iRangeDrag | QCP::iRangeZoom);
    plot_->setNoAntialiasingOnDrag(true);
    plot_->setMinimumHeight(QFontMetrics(parent->font()).height() * 14);
    connect(plot_, &QCustomPlot::mouseMove, this,
            [this](QMouseEvent* event) { Q_EMIT moved_over(event->position()); });
    // A press that turns into a drag is no choice: compare where it ends.
    connect(plot_, &QCustomPlot::mousePress, this,
            [this](QMouseEvent* event) { plot_->setProperty("pressed_at", event->position()); });
    connect(plot_, &QCustomPlot::mouseRelease, this, [this](QMouseEvent* event) {
        const QPointF from = plot_->property("pressed_at").toPointF();
        if ((event->position() - from).manhattanLength() < 4) {
            Q_EMIT clicked(event->position());
        }
    });
    plot_->setAutoAddPlottableToLegend(false); // build_legend says which
    connect(plot_, &QCustomPlot::beforeReplot, this, [this] { fit_legend(plot_->width()); });
    connect(plot_, &QCustomPlot::mouseDoubleClick, this, [this] { show_all(); });
}

ChartPainter::~ChartPainter() = default;

QWidget* ChartPainter::widget() const {
    return plot_;
}

void ChartPainter::set_spec(const ChartSpec& spec) {
    const bool keep = main_ != nullptr && spec_.time == spec.time && spec_.title == spec.title &&
                      plot_->property("zoomed").toBool();
    spec_ = spec;
    marked_.reset();
    build();
    apply_ranges(keep);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void ChartPainter::redraw() {
    const bool keep = main_ != nullptr && plot_->property("zoomed").toBool();
    build();
    apply_ranges(keep);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void ChartPainter::build() {
    dark_ = look::tokens().dark;
    std::optional<QCPRange> x;
    std::optional<QCPRange> y;
    if (main_ != nullptr) {
        x = main_->axis(QCPAxis::atBottom)->range();
        y = main_->axis(QCPAxis::atLeft)->range();
    }
    plot_->clearItems();
    plot_->clearPlottables();
    listed_.clear();
    plot_->plotLayout()->clear();
    plot_->setBackground(look::tokens().surface);
    build_axes();
    build_stretches();
    build_bands();
    build_series();
    build_levels_and_flags();
    build_strips();
    build_legend();
    if (x) {
        main_->axis(QCPAxis::atBottom)->setRange(*x);
        main_->axis(QCPAxis::atLeft)->setRange(*y);
    }
}

void ChartPainter::build_series() {
    const auto& t = look::tokens();
    auto* x = main_->axis(QCPAxis::atBottom);
    auto* y = main_->axis(QCPAxis::atLeft);
    for (const auto& series : spec_.series) {
        auto* graph = plot_->addGraph(x, y);
        const QColor colour = series.ghost ? t.muted : series_colour(series.colour, dark_);
        list(graph, series.legend);
        graph->setLineStyle(series.joined ? QCPGraph::lsLine : QCPGraph::lsNone);
        graph->setPen(QPen(colour, series.ghost ? 1.0 : 1.5,
                           series.ghost ? Qt::DotLine : pen_style(series.dash)));
        graph->setScatterStyle(
            scatter_of(series.ghost ? Mark::none : series.mark, colour, t.surface, 7));
        QVector<QCPGraphData> data;
        QVector<QCPGraphData> faded;
        for (const auto& point : series.points) {
            (point.faded ? faded : data).push_back({point.x, point.y});
        }
        fill(graph, data);
        if (!faded.isEmpty()) {
            auto* aside = plot_->addGraph(x, y);
            aside->setLineStyle(QCPGraph::lsNone);
            aside->setScatterStyle(scatter_of(Mark::cross, t.muted, t.surface, 8));
            fill(aside, faded);
        }
    }
}

void ChartPainter::build_bands() {
    auto* x = main_->axis(QCPAxis::atBottom);
    auto* y = main_->axis(QCPAxis::atLeft);
    for (const auto& band : spec_.bands) {
        const QColor colour = series_colour(band.colour, dark_);
        QColor ground = colour;
        ground.setAlpha(dark_ ? 70 : 50);
        auto* low = plot_->addGraph(x, y);
        low->setPen(QPen(ground, 1.0));
        fill(low, data_of(band.x, band.low));
        auto* high = new Envelope(x, y, low);
        list(high, band.legend);
        high->setPen(QPen(ground, 1.0));
        high->setBrush(ground);
        fill(high, data_of(band.x, band.high));
        if (!band.middle.isEmpty()) {
            auto* middle = plot_->addGraph(x, y);
            middle->setPen(QPen(colour, 1.0, Qt::DashLine));
            fill(middle, data_of(band.x, band.middle));
        }
    }
}

void ChartPainter::apply_ranges(bool keep) {
    if (keep) {
        return;
    }
    plot_->setProperty("zoomed", false);
    if (const auto extent = extent_of(spec_)) {
        main_->axis(QCPAxis::atBottom)->setRange(extent->x_low, extent->x_high);
        main_->axis(QCPAxis::atLeft)->setRange(extent->y_low, extent->y_high);
    }
}

void ChartPainter::show_all() {
    apply_ranges(false);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void ChartPainter::zoom(double factor) {
    if (main_ == nullptr) {
        return;
    }
    auto* x = main_->axis(QCPAxis::atBottom);
    x->scaleRange(factor, x->range().center());
    plot_->setProperty("zoomed", true);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

void ChartPainter::pan(double share) {
    if (main_ == nullptr) {
        return;
    }
    auto* x = main_->axis(QCPAxis::atBottom);
    x->moveRange(x->range().size() * share);
    plot_->setProperty("zoomed", true);
    plot_->replot(QCustomPlot::rpQueuedReplot);
}

std::optional<ChartPainter::Hit> ChartPainter::hit(const QPointF& at, double reach) const {
    if (main_ == nullptr) {
        return {};
    }
    const auto* x = main_->axis(QCPAxis::atBottom);
    const auto* y = main_->axis(QCPAxis::atLeft);
    std::optional<Hit> best;
    double best_distance = reach;
    for (int s = 0; s < spec_.series.size(); ++s) {
        const auto& points = spec_.series[s].points;
        for (int p = 0; p < points.size(); ++p) {
            if (!is_read(spec_.series[s], p)) {
                continue; // read with another series
            }
            // A ghost gives way to a piece that lies on it.
            const double distance = (spec_.series[s].ghost ? 3.0 : 0.0) +
                                    std::hypot(x->coordToPixel(points[p].x) - at.x(),
                                               y->coordToPixel(points[p].y) - at.y());
            if (distance < best_distance) {
                best_distance = distance;
                best = Hit{s, p};
            }
        }
    }
    return best;
}

bool ChartPainter::save(const QString& path) {
    const QString suffix = QFileInfo(path).suffix().toLower();
    // A chart that was never laid out has the toolkit's thumbnail size.
    const QSize size = plot_->width() < 300 ? QSize(900, 540) : plot_->size();
    fit_legend(size.width());
    if (suffix == QLatin1String("svg")) {
        QSvgGenerator svg;
        svg.setFileName(path);
        svg.setSize(size);
        svg.setViewBox(QRect(QPoint(0, 0), size));
        svg.setTitle(spec_.title);
        QCPPainter painter;
        if (!painter.begin(&svg)) {
            return false;
        }
        plot_->toPainter(&painter, size.width(), size.height());
        return painter.end();
    }
    if (suffix == QLatin1String("pdf")) {
        QPdfWriter pdf(path);
        pdf.setTitle(spec_.title);
        pdf.setResolution(96);
        pdf.setPageMargins(QMarginsF(0, 0, 0, 0));
        pdf.setPageSize(QPageSize(QSizeF(size) * 0.75, QPageSize::Point));
        QCPPainter painter;
        if (!painter.begin(&pdf)) {
            return false;
        }
        painter.setMode(QCPPainter::pmVectorized);
        plot_->toPainter(&painter, size.width(), size.height());
        return painter.end();
    }
    return plot_->toPixmap(size.width(), size.height(), 2.0).save(path, "PNG");
}

void ChartPainter::draw(QPainter* painter, QSize size) {
    // QCustomPlot draws vectors only through its own painter class: a picture carries them over.
    QPicture picture;
    QCPPainter recorder;
    recorder.begin(&picture);
    recorder.setMode(QCPPainter::pmVectorized);
    plot_->toPainter(&recorder, size.width(), size.height());
    recorder.end();
    painter->drawPicture(0, 0, picture);
}

} // namespace ui::charts
