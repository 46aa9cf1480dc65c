#include "ui/charts/chart_view.h"

#include "ui/charts/chart_painter.h"
#include "ui/charts/chart_table.h"
#include "ui/look/pieces.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace ui::charts {
namespace {

constexpr double reach_pixels = 14; // a fingertip's slack around a 7 px mark

} // namespace

ChartView::ChartView(const char* object_name, QWidget* parent)
    : QWidget(parent), painter_(std::make_unique<ChartPainter>(this)),
      stack_(new QStackedWidget(this)),
      table_(new ChartTable(QLatin1String(object_name) + QStringLiteral("_table"), this)) {
    setObjectName(QLatin1String(object_name));
    setFocusPolicy(Qt::StrongFocus);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(look::lines(this, 0.2));
    stack_->addWidget(painter_->widget());
    stack_->addWidget(table_);
    column->addWidget(stack_, 1);
    column->addWidget(build_foot(object_name));
    connect(table_, &ChartTable::chosen, this, &ChartView::chosen);
    painter_->widget()->setAccessibleName(tr("Chart"));
    connect(painter_.get(), &ChartPainter::moved_over, this, [this](const QPointF& at) {
        if (const auto hit = painter_->hit(at, reach_pixels)) {
            read_at(hit->series, hit->point);
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

QWidget* ChartView::build_foot(const char* object_name) {
    const QString stem = QLatin1String(object_name);
    auto* foot = new QWidget;
    auto* row = new QHBoxLayout(foot);
    row->setContentsMargins(0, 0, 0, 0);
    read_out_ = look::caption(tr("Move over a point, or use Left and Right, to read it."), this);
    read_out_->setObjectName(stem + QStringLiteral("_reading"));
    copy_ = look::button((stem + QStringLiteral("_copy")).toLatin1().constData(),
                         tr("Copy the table"), look::ButtonLook::plain);
    as_table_ = look::button((stem + QStringLiteral("_as_table")).toLatin1().constData(),
                             tr("As a table"), look::ButtonLook::plain);
    as_table_->setCheckable(true);
    row->addWidget(read_out_, 1);
    row->addWidget(copy_);
    row->addWidget(as_table_);
    copy_->hide();
    connect(as_table_, &QPushButton::toggled, this, &ChartView::show_as_table);
    connect(copy_, &QPushButton::clicked, this, [this] {
        table_->copy();
        read_out_->setText(tr("Copied: paste it into a spreadsheet or a text."));
    });
    return foot;
}

void ChartView::show_as_table(bool table) {
    if (table == is_table()) {
        return;
    }
    as_table_->setChecked(table);
    if (table) {
        table_->show_spec(spec());
        read_out_->setText(tr("Enter chooses a row that was weighed; Ctrl+C copies."));
    } else {
        read_out_->setText(tr("Move over a point, or use Left and Right, to read it."));
    }
    copy_->setVisible(table);
    as_table_->setText(table ? tr("As a drawing") : tr("As a table"));
    stack_->setCurrentWidget(table ? static_cast<QWidget*>(table_) : painter_->widget());
}

bool ChartView::is_table() const {
    return stack_->currentWidget() == table_;
}

void ChartView::show_spec(const ChartSpec& spec) {
    setAccessibleName(spec.title);
    setAccessibleDescription(spec.summary);
    painter_->widget()->setAccessibleName(spec.title);
    painter_->widget()->setAccessibleDescription(spec.summary);
    const bool same = painter_->spec().title == spec.title && series_ < spec.series.size() &&
                      point_ >= 0 && point_ < spec.series[series_].points.size();
    painter_->set_spec(spec);
    if (same) { // a forecast that arrives must not take the cursor from under the keys
        painter_->mark(ChartPainter::Hit{series_, point_});
    } else {
        series_ = 0;
        point_ = -1;
    }
    as_table_->setAccessibleName(tr("%1, as a table").arg(spec.title));
    copy_->setAccessibleName(tr("Copy the table: %1").arg(spec.title));
    if (is_table()) {
        table_->show_spec(spec);
    }
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
    const int last = static_cast<int>(all[series_].points.size()) - 1;
    point_ = point_ < 0 ? (points > 0 ? 0 : last) : std::clamp(point_ + points, 0, last);
    read_at(series_, point_);
}

void ChartView::read_at(int series_index, int point) {
    painter_->mark(ChartPainter::Hit{series_index, point});
    const auto& series = spec().series[series_index];
    const QString reading = words_of(series, point).reading;
    read(spec().series.size() > 1 ? tr("%1: %2").arg(series.name, reading) : reading);
}

/// To the next series that can be read, at the point nearest to where the cursor was.
void ChartView::next_series(int way) {
    const auto& all = spec().series;
    const int count = static_cast<int>(all.size());
    const bool on_a_point = point_ >= 0 && series_ < count;
    const double x = on_a_point ? all[series_].points[point_].x : 0;
    for (int tried = 0; tried < count; ++tried) {
        series_ = (series_ + way + count) % count;
        const auto& points = all[series_].points;
        if (points.isEmpty() || !is_read(all[series_], 0)) {
            continue;
        }
        const auto nearest =
            std::min_element(points.begin(), points.end(), [x](const Point& a, const Point& b) {
                return std::abs(a.x - x) < std::abs(b.x - x);
            });
        point_ = on_a_point ? static_cast<int>(nearest - points.begin()) : 0;
        read_at(series_, point_);
        return;
    }
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
            next_series(event->key() == Qt::Key_Down ? 1 : -1);
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
