#pragma once

#include <QRect>
#include <QString>

class QPagedPaintDevice;
class QPainter;
class QTextDocument;

namespace ui::print {

/// A page's room in device pixels: the body above, a foot of one line below.
struct PageRoom {
    QRect page;
    double body_height;
    double foot_height;
};

PageRoom page_room(const QPainter& painter, const QPagedPaintDevice& device);

/// Paints page `index` (from 0) of a document laid out to the room, in black.
void paint_page_body(QPainter& painter, const QTextDocument& document, int index,
                     const PageRoom& room);

/// Paints a line over `left` and "Page 2 of 3".
void paint_page_foot(QPainter& painter, const PageRoom& room, const QString& left, int page,
                     int pages);

} // namespace ui::print
