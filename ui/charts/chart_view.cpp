#include "ui/charts/chart_view.h"

#include "ui/charts/chart_painter.h"
#include "ui/look/pieces.h"

#include <QKeyEvent>
#include <QVBoxLayout>

namespace ui::charts {
namespace {

constexpr double reach_pixels = 14; // a fingertip's slack around a 7 px mark

} // namespace

ChartView::ChartView(const char* object_name, QWidget* parent)
    : QWidget(parent), painter_(std::make_unique<ChartPainter>(this)) {
    setObjectName(QLatin1String(object_name));
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(look::lines(this, 0.2));
    column->addWidget(painter_->widget(), 1);
    read_out_ = look::caption(tr("Move over a point, or use Left and Right, to read it."), this);
    read_out_->setObjectName(QLatin1String(object_name) + QStringLiteral("_reading"));
    column->addWidget(read_out_);
    painter_->widget()->setAccessibleName(tr("Chart"));
    connect(painter_.get(), &ChartPainter::moved_over, this, [this](const QPointF& at) {
        if (const auto hit = painter_->hit(at, reach_pixels)) {
            painter_->mark(hit);
            const auto& series = spec().series[hit->series];
            read(spec().series.size() > 1
                     ? tr("%1: %2").arg(series.name, series.points[hit->point].reading)
                     : series.points[hit->point].reading);
        }
    });
    connect(painter_.get(), &ChartPainter::clicked, this, [this](const QPointF& at) {
        setFocus(Qt::MouseFocusReason);
        if (const auto hit = painter_->hit(at, reach_pixels)) {
            const auto& point = spec().series[hit->series].points[hit->point];
            if (point.tag > 0 && !spec().series[hit->series].ghost) {
                Q_EMIT chosen(point.tag);
            }
        }
    });
}

ChartView::~ChartView() = default;

void ChartView::show_spec(const ChartSpec& spec) {
    setAccessibleName(spec.title);
    setAccessibleDescription(spec.summary);
    painter_->widget()->setAccessibleName(spec.title);
    painter_->widget()->setAccessibleDescription(spec.summary);
    series_ = 0;
    point_ = -1;
    painter_->set_spec(spec);
}

const ChartSpec& ChartView::spec() const {
    return painter_->spec();
}

QString ChartView::reading() const {
    return read_out_->text();
}

void ChartView::read(const QString& text) {
    read_out_->setText(text);
    setAccessibleDescription(text);
}

bool ChartView::save(const QString& path) {
    return painter_->save(path);
}

void ChartView::draw(QPainter* painter, QSize size) {
    painter_->draw(painter, size);
}

void ChartView::zoom(double factor) {
    painter_->zoom(factor);
}

void ChartView::show_all() {
    painter_->show_all();
}

void ChartView::step(int points) {
    const auto& all = spec().series;
    if (series_ >= all.size() || all[series_].points.isEmpty()) {
        return;
    }
    const auto& series = all[series_];
    const int last = static_cast<int>(series.points.size()) - 1;
    point_ = point_ < 0 ? (points > 0 ? 0 : last) : std::clamp(point_ + points, 0, last);
    painter_->mark(ChartPainter::Hit{series_, point_});
    read(series.points[point_].reading);
}

void ChartView::keyPressEvent(QKeyEvent* event) {
    const auto& all = spec().series;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Right: {
        const int way = event->key() == Qt::Key_Right ? 1 : -1;
        if (event->modifiers() & Qt::ShiftModifier) {
            painter_->pan(0.1 * way);
        } else {
            step(way);
        }
        return;
    }
    case Qt::Key_Up:
    case Qt::Key_Down:
        if (all.size() > 1) {
            const int count = static_cast<int>(all.size());
            series_ = (series_ + (event->key() == Qt::Key_Down ? 1 : count - 1)) % count;
            point_ = -1;
            step(1);
            read(tr("%1: %2").arg(spec().series[series_].name, reading()));
            return;
        }
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoom(0.8);
        return;
    case Qt::Key_Minus:
        zoom(1.25);
        return;
    case Qt::Key_0:
    case Qt::Key_Home:
        show_all();
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (point_ >= 0 && series_ < all.size() && all[series_].points[point_].tag > 0) {
            Q_EMIT chosen(all[series_].points[point_].tag);
            return;
        }
        break;
    default:
        break;
    }
    QWidget::keyPressEvent(event);
}

void ChartView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) {
        painter_->redraw();
    }
}

} // namespace ui::charts
