#include "ui/pages/plan_strip.h"

#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/text/date_words.h"

#include <QDate>
#include <QPainter>

#include <algorithm>

namespace ui::pages {

PlanStrip::PlanStrip(const char* object_name, QWidget* parent) : QWidget(parent) {
    look::named(this, object_name, tr("The plan along time"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PlanStrip::show_plan(std::vector<Block> blocks, core::units::Day latest_end,
                          const text::Style& style) {
    blocks_ = std::move(blocks);
    latest_end_ = latest_end;
    style_ = style;
    QStringList spoken;
    for (const auto& block : blocks_) {
        spoken << tr("%1 %2").arg(block.name, text::range_words(block.start, block.end, style_));
    }
    setAccessibleDescription(spoken.join(QStringLiteral("; ")));
    update();
}

QSize PlanStrip::sizeHint() const {
    return {look::lines(this, 20), look::lines(this, 3.4)};
}

QSize PlanStrip::minimumSizeHint() const {
    return {look::lines(this, 8), look::lines(this, 3.4)};
}

double PlanStrip::x_of(core::units::Day day) const {
    const double days = std::max(1, latest_end_ - blocks_.front().start);
    return (width() - 1) * (day - blocks_.front().start) / days;
}

void PlanStrip::paint_months(QPainter& painter) const {
    const auto& colours = look::tokens();
    const QDate first = text::to_qdate(blocks_.front().start);
    const QDate last = text::to_qdate(latest_end_);
    const int line = look::lines(this, 1);
    const int months = (last.year() - first.year()) * 12 + last.month() - first.month() + 1;
    const int room = width() / std::max(1, months);
    const QFontMetrics metrics(font());
    // A year of names does not fit in a narrow window: then every third month has its name.
    const int step = room >= metrics.horizontalAdvance(QStringLiteral("Mmm "))       ? 1
                     : room * 3 >= metrics.horizontalAdvance(QStringLiteral("Mmm ")) ? 3
                                                                                     : 12;
    painter.setPen(colours.muted);
    for (QDate month(first.year(), first.month(), 1); month <= last; month = month.addMonths(1)) {
        const QDate shown = std::max(month, first);
        const double x = x_of(text::to_day(shown));
        if (month >= first) {
            painter.drawLine(QPointF(x, line * 1.1), QPointF(x, height()));
        }
        if ((month.month() - 1) % step == 0 || months <= 2) {
            painter.drawText(QPointF(x + 3, line * 0.8), style_.locale.standaloneMonthName(
                                                             month.month(), QLocale::ShortFormat));
        }
    }
}

void PlanStrip::paintEvent(QPaintEvent*) {
    if (blocks_.empty()) {
        return;
    }
    QPainter painter(this);
    const auto& colours = look::tokens();
    const auto& palette = look::chart_colours(colours.dark);
    painter.fillRect(rect(), colours.surface);
    paint_months(painter);
    const int top = look::lines(this, 1.2);
    const int tall = look::lines(this, 1.5);
    const QFontMetrics metrics(font());
    for (const auto& block : blocks_) {
        const double left = x_of(block.start);
        const double right = std::max(left + 2, x_of(block.end) - 1);
        const QRectF box(left, top, right - left, tall);
        QColor ground = palette[static_cast<std::size_t>(block.kind) % palette.size()];
        painter.fillRect(QRectF(left, top, std::min(3.0, box.width()), tall), ground);
        ground.setAlphaF(colours.dark ? 0.35F : 0.25F);
        painter.fillRect(box, ground);
        painter.setPen(colours.text);
        const int room = static_cast<int>(box.width()) - 8;
        if (metrics.horizontalAdvance(block.name) <= room) {
            painter.drawText(box.adjusted(6, 0, 0, 0), Qt::AlignVCenter | Qt::AlignLeft,
                             block.name);
        }
    }
    // The slack behind the likely end: how late it may be.
    const double end = x_of(blocks_.back().end);
    if (x_of(latest_end_) - end > 2) {
        painter.fillRect(QRectF(end, top, x_of(latest_end_) - end, tall),
                         QBrush(colours.muted, Qt::BDiagPattern));
    }
}

} // namespace ui::pages
