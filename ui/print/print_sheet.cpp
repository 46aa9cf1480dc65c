#include "ui/print/print_sheet.h"

#include "ui/print/page_painter.h"
#include "ui/print/pdf_file.h"
#include "ui/print/record_words.h"
#include "ui/print/sheet_document.h"
#include "ui/print/sheet_words.h"

#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <QTextDocument>

namespace ui::print {

QPageLayout page_layout(const text::Style& style, bool landscape, double margin_mm) {
    const bool letter = style.locale.measurementSystem() == QLocale::ImperialUSSystem;
    return QPageLayout(QPageSize(letter ? QPageSize::Letter : QPageSize::A4),
                       landscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                       QMarginsF(margin_mm, margin_mm, margin_mm, margin_mm),
                       QPageLayout::Millimeter);
}

int print_sheet(const Sheet& sheet, QPagedPaintDevice& device, const PrintStamp& stamp,
                const text::Style& style) {
    QPainter painter;
    if (!painter.begin(&device)) {
        return 0;
    }
    const PageRoom room = page_room(painter, device);
    const auto document = make_document(sheet, device, room.page.width(), room.body_height);
    const int pages = document->pageCount();
    QString foot = SheetText::tr("Printed %1").arg(moment_words(stamp.at, style));
    foot += QStringLiteral(" · ") + stamp.by;
    if (!sheet.foot.isEmpty()) {
        foot.prepend(sheet.foot + QStringLiteral(" · "));
    }
    for (int i = 0; i < pages; ++i) {
        if (i > 0 && !device.newPage()) {
            return 0;
        }
        paint_page_body(painter, *document, i, room);
        paint_page_foot(painter, room, foot, i + 1, pages);
    }
    return painter.end() ? pages : 0;
}

core::base::Result<int> write_pdf(const Sheet& sheet, const QString& path, const PrintStamp& stamp,
                                  const text::Style& style) {
    return write_pdf_file(path, sheet.title, stamp.by, [&](QPdfWriter& writer) {
        writer.setPageLayout(page_layout(style, sheet.landscape));
        return print_sheet(sheet, writer, stamp, style);
    });
}

} // namespace ui::print
