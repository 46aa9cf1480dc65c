#include "ui/print/page_painter.h"

#include "ui/print/sheet_words.h"

#include <QAbstractTextDocumentLayout>
#include <QPagedPaintDevice>
#include <QPainter>
#include <QTextDocument>

#include <cmath>

namespace ui::print {
namespace {

constexpr double foot_points = 7.5;

} // namespace

PageRoom page_room(const QPainter& painter, const QPagedPaintDevice& device) {
    const QRect page = painter.viewport();
    const double line = device.logicalDpiY() * foot_points / 72.0;
    const double foot_height = 2.2 * line;
    // Whole pixels: the layout counts in 64ths, and a rest would add up from page to page.
    return {page, std::floor(page.height() - foot_height - line), foot_height};
}

void paint_page_body(QPainter& painter, const QTextDocument& document, int index,
                     const PageRoom& room) {
    const double width = room.page.width();
    painter.save();
    painter.setClipRect(QRectF(0, 0, width, room.body_height));
    painter.translate(0, -index * room.body_height);
    QAbstractTextDocumentLayout::PaintContext context;
    context.clip = QRectF(0, index * room.body_height, width, room.body_height);
    context.palette.setColor(QPalette::Text, Qt::black);
    document.documentLayout()->draw(&painter, context);
    painter.restore();
}

void paint_page_foot(QPainter& painter, const PageRoom& room, const QString& left, int page,
                     int pages) {
    const QRectF area(0, room.page.height() - room.foot_height, room.page.width(),
                      room.foot_height);
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans CJK SC")});
    font.setPointSizeF(foot_points);
    painter.setFont(font);
    painter.setPen(Qt::black);
    painter.drawLine(area.topLeft(), area.topRight());
    const QString right = SheetText::tr("Page %1 of %2").arg(page).arg(pages);
    painter.drawText(area, Qt::AlignRight | Qt::AlignBottom, right);
    const double rest =
        area.width() - painter.fontMetrics().horizontalAdvance(right + QStringLiteral("   "));
    painter.drawText(
        area, Qt::AlignLeft | Qt::AlignBottom,
        painter.fontMetrics().elidedText(left, Qt::ElideRight, static_cast<int>(rest)));
}

} // namespace ui::print
