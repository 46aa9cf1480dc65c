#include "ui/print/tag_sheet.h"

#include "ui/print/pdf_file.h"
#include "ui/print/qr_code.h"
#include "ui/print/sheet_words.h"

#include <QPainter>
#include <QPdfWriter>
#include <algorithm>
#include <cmath>

namespace ui::print {
namespace {

struct Grid {
    int columns;
    int rows;
};

constexpr Grid grid_of(TagSize size) {
    return size == TagSize::large ? Grid{2, 4} : Grid{3, 6};
}

/// The largest bold font, up to `height` pixels tall, in which `text` is no wider than `width`.
QFont fitting(const QString& text, double width, double height, bool bold) {
    QFont font;
    font.setFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans CJK SC")});
    font.setBold(bold);
    font.setPixelSize(std::max(1, static_cast<int>(height)));
    const double needed = QFontMetricsF(font).horizontalAdvance(text);
    if (needed > width) {
        font.setPixelSize(std::max(1, static_cast<int>(height * width / needed)));
    }
    return font;
}

void paint_words(QPainter& painter, const QRectF& area, const QString& words, bool bold,
                 int alignment = Qt::AlignLeft) {
    painter.setFont(fitting(words, area.width(), area.height() * 0.72, bold));
    painter.drawText(area, alignment | Qt::AlignVCenter | Qt::TextSingleLine, words);
}

/// "Start 1140 g": the label small, the value large and bold; without a value a line to write on.
void paint_field(QPainter& painter, const QRectF& area, const QString& label,
                 const QString& value) {
    const double label_width = area.width() * 0.32;
    paint_words(painter, QRectF(area.left(), area.top(), label_width, area.height()), label, false);
    const QRectF place = area.adjusted(label_width + area.width() * 0.03, 0, 0, 0);
    if (value.isEmpty()) {
        const double y = area.bottom() - area.height() * 0.15;
        painter.drawLine(QPointF(place.left(), y), QPointF(place.right(), y));
    } else {
        paint_words(painter, place, value, true);
    }
}

void paint_tag(QPainter& painter, const QRectF& cell, const Tag& tag, TagSize size) {
    const double pad = cell.height() * 0.05;
    const QRectF area = cell.adjusted(pad, pad, -pad, -pad);
    const QString code = QString::fromStdString(tag.code.piece);
    // Left the square code, its own quiet zone included; right the words.
    const double square = std::min(area.height() * 0.62, area.width() * 0.42);
    const QRectF qr_area(area.left(), area.top(), square, square);
    if (const auto qr = qr_code(core::exchange::tag_text(tag.code))) {
        paint(*qr, painter, qr_area);
    }
    painter.setPen(Qt::black);
    const double gap = area.width() * 0.03;
    const QRectF right(qr_area.right() + gap, area.top(), area.right() - qr_area.right() - gap,
                       square);
    paint_words(painter, QRectF(right.left(), right.top(), right.width(), square * 0.58), code,
                true);
    paint_words(painter,
                QRectF(right.left(), right.top() + square * 0.58, right.width(), square * 0.22),
                tag.product, true);
    const QString batch = TagText::tr("Batch %1").arg(QString::fromStdString(tag.code.batch));
    paint_words(painter,
                QRectF(right.left(), right.top() + square * 0.79, right.width(), square * 0.2),
                batch, false);
    // Below: what to weigh against.
    const QRectF below(area.left(), area.top() + square, area.width(), area.height() - square);
    struct Field {
        QString label;
        QString value;
    };
    std::vector<Field> fields{{TagText::tr("Start"), tag.start},
                              {TagText::tr("Target"), tag.target},
                              {TagText::tr("Hung"), tag.hung},
                              {TagText::tr("Tare"), tag.tare}};
    if (size == TagSize::large) {
        fields.push_back({TagText::tr("Loss"), tag.loss});
        fields.push_back({TagText::tr("Note"), QString()});
    }
    const std::size_t row_count = (fields.size() + 1) / 2;
    const auto rows = static_cast<double>(row_count);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        const std::size_t above = i / 2;
        const double column = static_cast<double>(i % 2);
        const double row = static_cast<double>(above);
        paint_field(painter,
                    QRectF(below.left() + column * below.width() / 2,
                           below.top() + row * below.height() / rows, below.width() / 2 - gap,
                           below.height() / rows),
                    fields[i].label, fields[i].value);
    }
}

} // namespace

int print_tags(const std::vector<Tag>& tags, TagSize size, QPagedPaintDevice& device) {
    QPainter painter;
    if (tags.empty() || !painter.begin(&device)) {
        return 0;
    }
    const Grid grid = grid_of(size);
    const auto a_page =
        static_cast<std::size_t>(grid.columns) * static_cast<std::size_t>(grid.rows);
    const QRectF page = painter.viewport();
    const QSizeF cell(page.width() / grid.columns, page.height() / grid.rows);
    int pages = 1;
    for (std::size_t i = 0; i < tags.size(); ++i) {
        if (i > 0 && i % a_page == 0) {
            if (!device.newPage()) {
                return 0;
            }
            ++pages;
        }
        const auto place = static_cast<int>(i % a_page);
        const int above = place / grid.columns;
        const QRectF area(QPointF(page.left() + (place % grid.columns) * cell.width(),
                                  page.top() + above * cell.height()),
                          cell);
        painter.setPen(QPen(QColor(0x90, 0x90, 0x90), 0, Qt::DashLine));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(area);
        paint_tag(painter, area, tags[i], size);
    }
    return painter.end() ? pages : 0;
}

core::base::Result<int> write_tags_pdf(const std::vector<Tag>& tags, TagSize size,
                                       const QString& path, const PrintStamp& stamp,
                                       const text::Style& style) {
    return write_pdf_file(path, TagText::tr("Tags"), stamp.by, [&](QPdfWriter& writer) {
        writer.setPageLayout(page_layout(style, false, 8));
        return print_tags(tags, size, writer);
    });
}

} // namespace ui::print
