#include "ui/print/print_sheet.h"

#include "ui/print/pdf_file.h"
#include "ui/print/record_words.h"
#include "ui/print/sheet_document.h"

#include <QAbstractTextDocumentLayout>
#include <QCoreApplication>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <cmath>

namespace ui::print {
namespace {

constexpr double foot_points = 7.5;

QString tr(const char* text) {
    return QCoreApplication::translate("ui::print::sheet", text);
}

void paint_foot(QPainter& painter, const QRectF& area, const QString& left, int page, int pages) {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans CJK SC")});
    font.setPointSizeF(foot_points);
    painter.setFont(font);
    painter.setPen(Qt::black);
    painter.drawLine(area.topLeft(), area.topRight());
    const QString right = tr("Page %1 of %2").arg(page).arg(pages);
    painter.drawText(area, Qt::AlignRight | Qt::AlignBottom, right);
    const double room =
        area.width() - painter.fontMetrics().horizontalAdvance(right + QStringLiteral("   "));
    painter.drawText(
        area, Qt::AlignLeft | Qt::AlignBottom,
        painter.fontMetrics().elidedText(left, Qt::ElideRight, static_cast<int>(room)));
}

} // namespace

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
    const QRect page = painter.viewport();
    const double line = device.logicalDpiY() * foot_points / 72.0;
    const double foot_height = 2.2 * line;
    // Whole pixels: the layout counts in 64ths, and a rest would add up from page to page.
    const double body_height = std::floor(page.height() - foot_height - line);
    const auto document = make_document(sheet, device, page.width(), body_height);
    const int pages = document->pageCount();
    QString foot = tr("Printed %1").arg(moment_words(stamp.at, style));
    foot += QStringLiteral(" · ") + stamp.by;
    if (!sheet.foot.isEmpty()) {
        foot.prepend(sheet.foot + QStringLiteral(" · "));
    }
    for (int i = 0; i < pages; ++i) {
        if (i > 0 && !device.newPage()) {
            return 0;
        }
        painter.save();
        painter.setClipRect(QRectF(0, 0, page.width(), body_height));
        painter.translate(0, -i * body_height);
        QAbstractTextDocumentLayout::PaintContext context;
        context.clip = QRectF(0, i * body_height, page.width(), body_height);
        context.palette.setColor(QPalette::Text, Qt::black);
        document->documentLayout()->draw(&painter, context);
        painter.restore();
        paint_foot(painter, QRectF(0, page.height() - foot_height, page.width(), foot_height), foot,
                   i + 1, pages);
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
