#include "ui/print/sheet_document.h"

#include "ui/print/sheet_words.h"

#include <QAbstractTextDocumentLayout>
#include <QFont>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextTable>
#include <numeric>

namespace ui::print {
namespace {

/// Marks headings: they must not stand alone at the foot of a page.
constexpr int keep_property = QTextFormat::UserProperty + 1;

const QColor frame_colour(0x70, 0x70, 0x70);
const QColor head_ground(0xE8, 0xE8, 0xE8);

Qt::Alignment alignment(Align align) {
    switch (align) {
    case Align::left:
        return Qt::AlignLeft;
    case Align::right:
        return Qt::AlignRight;
    case Align::centre:
        return Qt::AlignHCenter;
    }
    return Qt::AlignLeft;
}

class Builder {
  public:
    Builder(QTextDocument& document, const Sheet& sheet)
        : cursor_(&document), size_(sheet.point_size) {}

    void add(const Sheet& sheet) {
        // One edit: outside of it every cell filled would lay the whole document out again.
        cursor_.beginEditBlock();
        text(sheet.title, size_ * 1.8, true, 0, size_ * 0.3);
        if (!sheet.subtitle.isEmpty()) {
            text(sheet.subtitle, size_ * 1.1, false, 0, size_ * 0.8);
        }
        for (const Block& block : sheet.blocks) {
            std::visit([this](const auto& b) { put(b); }, block);
        }
        cursor_.endEditBlock();
    }

  private:
    [[nodiscard]] QTextCharFormat characters(double points, bool bold, bool struck = false) const {
        QTextCharFormat format;
        format.setFontFamilies({QStringLiteral("DejaVu Sans"), QStringLiteral("Noto Sans"),
                                QStringLiteral("Noto Sans CJK SC")});
        format.setFontPointSize(points);
        format.setFontWeight(bold ? QFont::Bold : QFont::Normal);
        format.setFontStrikeOut(struck);
        format.setForeground(Qt::black);
        return format;
    }

    /// A block of text after what is there. A fresh document and the place after a table begin
    /// with an empty block, which is used rather than left as a gap.
    void text(const QString& words, double points, bool bold, double above, double below,
              bool keep_with_next = false) {
        QTextBlockFormat block;
        block.setTopMargin(above);
        block.setBottomMargin(below);
        if (keep_with_next) {
            block.setProperty(keep_property, true);
        }
        if (page_break_) {
            block.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            page_break_ = false;
        }
        if (fresh_) {
            cursor_.setBlockFormat(block);
            fresh_ = false;
        } else {
            cursor_.insertBlock(block);
        }
        cursor_.setBlockCharFormat(characters(points, bold));
        cursor_.insertText(words, characters(points, bold));
    }

    void put(const Heading& heading) {
        const double points = size_ * (heading.level == 1 ? 1.3 : 1.1);
        text(heading.text, points, true, size_ * 1.2, size_ * 0.4, true);
        after_heading_ = true;
    }

    void put(const Paragraph& paragraph) {
        // What a heading says first stays with it.
        text(paragraph.text, size_ * (paragraph.small ? 0.85 : 1), false, 0, size_ * 0.5,
             after_heading_);
        after_heading_ = false;
    }

    QTextTable* table(int rows, const std::vector<int>& shares, double border, double padding,
                      int head_rows) {
        const int total = std::accumulate(shares.begin(), shares.end(), 0);
        QTextTableFormat format;
        format.setBorder(border);
        format.setBorderBrush(frame_colour);
        format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
        format.setBorderCollapse(true);
        format.setCellPadding(padding);
        format.setCellSpacing(0);
        format.setHeaderRowCount(head_rows);
        format.setBottomMargin(size_ * 0.5);
        format.setWidth(QTextLength(QTextLength::PercentageLength, 100));
        QList<QTextLength> widths;
        for (const int share : shares) {
            widths.append(QTextLength(QTextLength::PercentageLength, 100.0 * share / total));
        }
        format.setColumnWidthConstraints(widths);
        if (page_break_) {
            format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            page_break_ = false;
        }
        return cursor_.insertTable(rows, static_cast<int>(shares.size()), format);
    }

    void fill(QTextTable* into, int row, int column, const Cell& cell, Align align, double points) {
        QTextCursor at = into->cellAt(row, column).firstCursorPosition();
        QTextBlockFormat block;
        block.setAlignment(alignment(align));
        at.setBlockFormat(block);
        // Merged, not set: the format of a cell's block also holds the cell's own ground and frame.
        at.mergeBlockCharFormat(characters(points, cell.bold, cell.struck));
        at.insertText(cell.text, characters(points, cell.bold, cell.struck));
    }

    void after_table() {
        after_heading_ = false;
        cursor_.movePosition(QTextCursor::End);
        // Qt keeps an empty block after a table: as small as it can be, then used by what follows.
        cursor_.setBlockCharFormat(characters(1, false));
        fresh_ = true;
    }

    void put(const Fields& fields) {
        const auto count = static_cast<int>(fields.rows.size());
        const int rows = (count + 1) / 2;
        QTextTable* into = table(rows, {3, 5, 3, 5}, 1, 4, 0);
        for (int i = 0; i < count; ++i) {
            const auto& [name, value] = fields.rows[static_cast<std::size_t>(i)];
            const int column = i < rows ? 0 : 2; // down the left pair first, then the right
            fill(into, i % rows, column, {name}, Align::left, size_ * 0.85);
            fill(into, i % rows, column + 1, {value, true}, Align::left, size_);
        }
        after_table();
    }

    void put(const Table& table_block) {
        if (table_block.rows.empty()) {
            text(table_block.empty, size_, false, 0, size_ * 0.5);
            return;
        }
        std::vector<int> shares;
        for (const Column& column : table_block.columns) {
            shares.push_back(column.share);
        }
        const double points = size_ * table_block.size;
        QTextTable* into = table(static_cast<int>(table_block.rows.size()) + 1, shares, 1, 4, 1);
        for (int c = 0; c < static_cast<int>(shares.size()); ++c) {
            const Column& column = table_block.columns[static_cast<std::size_t>(c)];
            QTextTableCell head = into->cellAt(0, c);
            QTextCharFormat format = head.format();
            format.setBackground(head_ground);
            head.setFormat(format);
            fill(into, 0, c, {column.head, true}, column.align, points * 0.9);
        }
        int r = 0;
        for (const std::vector<Cell>& row : table_block.rows) {
            ++r;
            for (std::size_t c = 0; c < row.size() && c < shares.size(); ++c) {
                fill(into, r, static_cast<int>(c), row[c], table_block.columns[c].align, points);
            }
        }
        after_table();
    }

    void put(const Notice& notice) {
        QTextTable* into = table(1, {1}, 2, 5, 0);
        QTextCursor at = into->cellAt(0, 0).firstCursorPosition();
        at.insertText(notice.kind + QStringLiteral(": "), characters(size_, true));
        at.insertText(notice.text, characters(size_, false));
        after_table();
    }

    void put(const Signatures& signatures) {
        const auto rows = static_cast<int>(signatures.labels.size());
        QTextTable* into = table(rows + 1, {3, 4, 4, 3}, 1, 4, 1);
        const QStringList heads{SheetText::tr("As"), SheetText::tr("Name"),
                                SheetText::tr("Signature"), SheetText::tr("Date and time")};
        for (int c = 0; c < heads.size(); ++c) {
            fill(into, 0, c, {heads[c], true}, Align::left, size_ * 0.9);
        }
        for (int r = 0; r < rows; ++r) {
            // A taller line than the text's own leaves room for a pen.
            fill(into, r + 1, 0, {signatures.labels[r]}, Align::left, size_);
            fill(into, r + 1, 1, {QStringLiteral(" ")}, Align::left, size_ * 2.2);
        }
        after_table();
    }

    void put(const WritingLines& lines) {
        QTextTable* into = table(lines.count + 1, {1}, 1, 3, 0);
        fill(into, 0, 0, {lines.label}, Align::left, size_ * 0.85);
        for (int r = 1; r <= lines.count; ++r) {
            fill(into, r, 0, {QStringLiteral(" ")}, Align::left, size_ * 1.8);
        }
        after_table();
    }

    void put(const PageBreak&) { page_break_ = true; }

    QTextCursor cursor_;
    double size_;
    bool fresh_ = true;
    bool page_break_ = false;
    bool after_heading_ = false;
};

/// Moves each heading that would stand at the foot of a page, away from what it heads, to the next
/// page. Qt has no "keep with next"; one pass a heading is enough, since what stands before a moved
/// heading does not move.
void keep_headings_with_text(QTextDocument& document, double page_height) {
    const QAbstractTextDocumentLayout* layout = document.documentLayout();
    const auto page_of = [&](double y) { return static_cast<int>(y / page_height); };
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (!block.blockFormat().boolProperty(keep_property)) {
            continue;
        }
        QTextBlock next = block.next();
        while (next.isValid() && (next.blockFormat().boolProperty(keep_property) ||
                                  (next.text().isEmpty() && next.next().isValid()))) {
            next = next.next();
        }
        if (!next.isValid()) {
            continue;
        }
        const QRectF here = layout->blockBoundingRect(block);
        const QRectF there = layout->blockBoundingRect(next);
        if (page_of(here.top()) != page_of(there.bottom() - 1)) {
            QTextCursor cursor(block);
            QTextBlockFormat format = block.blockFormat();
            format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            cursor.setBlockFormat(format);
        }
    }
}

} // namespace

std::unique_ptr<QTextDocument> make_document(const Sheet& sheet, QPaintDevice& device, double width,
                                             double height) {
    auto document = std::make_unique<QTextDocument>();
    document->setUndoRedoEnabled(false);
    document->documentLayout()->setPaintDevice(&device);
    document->setDocumentMargin(0);
    Builder(*document, sheet).add(sheet);
    document->setPageSize(QSizeF(width, height));
    keep_headings_with_text(*document, height);
    return document;
}

} // namespace ui::print
