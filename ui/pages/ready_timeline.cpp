#include "ui/pages/ready_timeline.h"

#include "ui/look/theme.h"
#include "ui/text/date_words.h"

#include <QDate>
#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace ui::pages {
namespace {

/// Steps between dates, in days, from a week to a quarter.
int tick_days(double days, double width, double label_width) {
    for (const int step : {1, 2, 7, 14, 28, 56, 91}) {
        if (width / days * step > label_width) {
            return step;
        }
    }
    return 182;
}

} // namespace

ReadyTimeline::ReadyTimeline(Read read, QObject* parent)
    : QStyledItemDelegate(parent), read_(std::move(read)) {}

void ReadyTimeline::paint(QPainter* painter, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const {
    QStyledItemDelegate::paint(painter, option, QModelIndex()); // ground and selection only
    const auto& t = look::tokens();
    const Row row = read_(index);
    painter->save();
    painter->setClipRect(option.rect);
    painter->setRenderHint(QPainter::Antialiasing);
    const QRectF r = QRectF(option.rect).adjusted(2, 0, -2, 0);
    if ((option.state & QStyle::State_Selected) != 0) {
        painter->fillRect(option.rect, t.selection);
    }
    const auto x = [&](core::units::Instant at) { return r.left() + window_.x(at, r.width()); };
    const double middle = r.center().y();
    const double half = r.height() * 0.22;
    if (window_.asked) {
        painter->setPen(QPen(t.text, 1, Qt::DashLine));
        painter->drawLine(QPointF(x(*window_.asked), r.top()),
                          QPointF(x(*window_.asked), r.bottom()));
    }
    painter->setPen(QPen(t.muted, 1, Qt::DotLine));
    painter->drawLine(QPointF(x(window_.now), r.top()), QPointF(x(window_.now), r.bottom()));
    const QColor way = look::chart_colours(t.dark)[0];
    const QColor goal = look::chart_colours(t.dark)[2];
    if (row.hung) {
        const double from = std::max(r.left(), x(*row.hung));
        const double to = x(window_.now);
        painter->fillRect(QRectF(from, middle - half * 0.5, to - from, half), t.line);
        const double done = std::clamp(row.progress.value_or(0.0), 0.0, 1.0);
        painter->fillRect(QRectF(from, middle - half * 0.5, (to - from) * done, half), way);
    }
    if (row.forecast && row.forecast->ready && row.forecast->ready->p10) {
        const auto& ready = *row.forecast->ready;
        const double from = x(std::max(*ready.p10, window_.from));
        const double to = ready.p90 ? x(*ready.p90) : r.right();
        QRectF span(from, middle - half, std::max(3.0, to - from), 2 * half);
        painter->setPen(QPen(goal, 1.5));
        QColor ground = goal;
        ground.setAlpha(70);
        painter->setBrush(ground);
        painter->drawRoundedRect(span, half * 0.6, half * 0.6);
        if (!ready.p90) {
            painter->drawLine(QPointF(r.right() - half * 2, middle - half),
                              QPointF(r.right(), middle));
            painter->drawLine(QPointF(r.right() - half * 2, middle + half),
                              QPointF(r.right(), middle));
        }
        if (ready.p50) {
            painter->setPen(QPen(t.text, 2));
            painter->drawLine(QPointF(x(*ready.p50), middle - half * 1.5),
                              QPointF(x(*ready.p50), middle + half * 1.5));
        }
    }
    painter->restore();
}

QSize ReadyTimeline::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
    return {option.fontMetrics.averageCharWidth() * 40, option.fontMetrics.height() * 2};
}

TimelineHeader::TimelineHeader(QWidget* parent) : QHeaderView(Qt::Horizontal, parent) {
    setSectionsClickable(true);
    setHighlightSections(false);
}

void TimelineHeader::set_window(const TimeWindow& window, const text::Style& style) {
    window_ = window;
    style_ = style;
    viewport()->update();
}

void TimelineHeader::paintSection(QPainter* painter, const QRect& rect, int section) const {
    QHeaderView::paintSection(painter, rect, section);
    if (section != count() - 1) {
        return;
    }
    const auto& t = look::tokens();
    painter->save();
    painter->fillRect(rect, t.window);
    painter->setClipRect(rect);
    const double days = (window_.to - window_.from).in_days();
    const int label = fontMetrics().horizontalAdvance(
        style_.locale.toString(QDate(2000, 12, 30), text::axis_day_format()) +
        QStringLiteral("  "));
    const int step = tick_days(days, rect.width(), label);
    painter->setPen(t.muted);
    const auto first = style_.zone.day_of(window_.from);
    for (int day = 0; day <= static_cast<int>(days); day += step) {
        const auto at = style_.zone.instant_at(first + day);
        const double x = rect.left() + 2 + window_.x(at, rect.width() - 4);
        if (x < rect.left() || x + label > rect.right()) {
            continue;
        }
        painter->drawLine(QPointF(x, rect.bottom() - 4), QPointF(x, rect.bottom()));
        painter->drawText(
            QRectF(x + 2, rect.top(), label, rect.height()), Qt::AlignLeft | Qt::AlignVCenter,
            style_.locale.toString(text::to_qdate(first + day), text::axis_day_format()));
    }
    painter->setPen(t.line);
    painter->drawLine(rect.bottomLeft(), rect.bottomRight());
    painter->restore();
}

} // namespace ui::pages
