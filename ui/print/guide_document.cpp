#include "ui/print/guide_document.h"

#include <QAbstractTextDocumentLayout>
#include <QFontMetricsF>
#include <QTextBlock>
#include <QTextCursor>
#include <QTextDocument>
#include <QTextTable>

namespace ui::print {
namespace {

constexpr double line_percent = 125; // easier to read than the font's own

bool is_code(const QTextBlock& block) {
    return block.blockFormat().hasProperty(QTextFormat::BlockCodeFence) ||
           block.blockFormat().hasProperty(QTextFormat::BlockCodeLanguage);
}

bool is_picture(const QTextBlock& block) {
    return !block.begin().atEnd() && block.begin().fragment().charFormat().isImageFormat();
}

/// Space above and below by what a block is, in heights of a line of text.
void lay_block(const QTextBlock& block, double line, const GuideLook& look) {
    QTextBlockFormat format = block.blockFormat();
    const int level = format.headingLevel();
    if (level > 0) {
        format.setTopMargin(block.blockNumber() == 0 ? 0 : line * (level < 3 ? 1.1 : 0.8));
        format.setBottomMargin(line * 0.35);
    } else if (is_code(block)) {
        format.setBackground(look.sunk);
        format.setNonBreakableLines(false); // a long command wraps, the page stays whole
        format.setLeftMargin(line * 0.5);
        format.setTopMargin(is_code(block.previous()) ? 0 : line * 0.2);
        format.setBottomMargin(is_code(block.next()) ? 0 : line * 0.6);
    } else if (block.textList() != nullptr) {
        format.setTopMargin(0);
        format.setBottomMargin(line * (block.next().textList() != nullptr ? 0.2 : 0.6));
        format.setLineHeight(line_percent, QTextBlockFormat::ProportionalHeight);
    } else if (is_picture(block)) {
        format.setTopMargin(line * 0.3); // a line a quarter higher would overlap the page's foot
        format.setBottomMargin(line * 0.3);
    } else {
        format.setTopMargin(0);
        format.setBottomMargin(line * 0.6);
        format.setLineHeight(line_percent, QTextBlockFormat::ProportionalHeight);
    }
    QTextCursor(block).setBlockFormat(format);
}

/// Headings a little quieter than Markdown's own, links in the look's colour, code in a font whose
/// letters are all as wide.
void lay_letters(const QTextBlock& block, const GuideLook& look) {
    struct Piece {
        int from;
        int length;
        QTextCharFormat format;
    };
    QVector<Piece> pieces;
    for (auto it = block.begin(); !it.atEnd(); ++it) {
        const QTextFragment fragment = it.fragment();
        QTextCharFormat format = fragment.charFormat();
        if (const int level = block.blockFormat().headingLevel(); level > 0) {
            format.setProperty(QTextFormat::FontSizeAdjustment, level == 1   ? 2
                                                                : level == 2 ? 1
                                                                             : 0);
            format.setFontWeight(QFont::DemiBold);
        }
        if (format.isAnchor()) {
            format.setFontUnderline(look.link.isValid());
            if (look.link.isValid()) {
                format.setForeground(look.link);
            } else {
                format.clearForeground();
            }
        }
        if (format.fontFixedPitch() || is_code(block)) {
            format.setFontFamilies(
                {QStringLiteral("DejaVu Sans Mono"), QStringLiteral("monospace")});
        }
        pieces.push_back({fragment.position(), fragment.length(), format});
    }
    for (const Piece& piece : pieces) {
        QTextCursor cursor(block);
        cursor.setPosition(piece.from);
        cursor.setPosition(piece.from + piece.length, QTextCursor::KeepAnchor);
        cursor.setCharFormat(piece.format);
    }
}

void lay_table(QTextTable& table, double line, const GuideLook& look) {
    QTextTableFormat format = table.format();
    format.setBorder(1);
    format.setBorderStyle(QTextFrameFormat::BorderStyle_Solid);
    format.setBorderBrush(look.line);
    format.setBorderCollapse(true);
    format.setCellSpacing(0);
    format.setCellPadding(line * 0.25);
    format.setTopMargin(line * 0.2);
    format.setBottomMargin(line * 0.8);
    table.setFormat(format);
    for (int row = 0; row < table.rows(); ++row) {
        for (int column = 0; column < table.columns(); ++column) {
            QTextTableCell cell = table.cellAt(row, column);
            if (row == 0) {
                QTextCharFormat head = cell.format();
                head.setBackground(look.sunk);
                cell.setFormat(head);
            }
            for (auto it = cell.begin(); !it.atEnd(); ++it) {
                QTextBlockFormat inside = it.currentBlock().blockFormat();
                inside.setBottomMargin(0);
                QTextCursor(it.currentBlock()).setBlockFormat(inside);
            }
        }
    }
}

} // namespace

void lay_guide(QTextDocument& document, const QString& markdown, const GuideLook& look) {
    document.setUndoRedoEnabled(false);
    document.setMarkdown(markdown, QTextDocument::MarkdownDialectGitHub);
    const double line = QFontMetricsF(document.defaultFont()).height();
    QTextCursor whole(&document);
    whole.beginEditBlock();
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        lay_block(block, line, look);
        lay_letters(block, look);
    }
    for (QTextFrame* frame : document.rootFrame()->childFrames()) {
        if (auto* table = qobject_cast<QTextTable*>(frame)) {
            lay_table(*table, line, look);
        }
    }
    whole.endEditBlock();
}

void keep_guide_headings(QTextDocument& document, double page_height) {
    const QAbstractTextDocumentLayout* layout = document.documentLayout();
    const auto page_of = [&](double y) { return static_cast<int>(y / page_height); };
    const auto is_heading = [](const QTextBlock& b) { return b.blockFormat().headingLevel() > 0; };
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (!is_heading(block)) {
            continue;
        }
        QTextBlock next = block.next();
        while (next.isValid() && is_heading(next)) {
            next = next.next();
        }
        if (!next.isValid()) {
            continue;
        }
        const double here = layout->blockBoundingRect(block).top();
        // Two lines of what follows are enough; a whole paragraph may be taller than a page.
        const QRectF there = layout->blockBoundingRect(next);
        const double seen =
            std::min(there.height(),
                     3 * QFontMetricsF(document.defaultFont(), layout->paintDevice()).height());
        if (page_of(here) != page_of(there.top() + seen - 1)) {
            QTextBlockFormat format = block.blockFormat();
            format.setPageBreakPolicy(QTextFormat::PageBreak_AlwaysBefore);
            QTextCursor(block).setBlockFormat(format);
            // All of it anew: what follows a moved heading is otherwise left where tables were.
            document.markContentsDirty(0, document.characterCount());
        }
    }
}

} // namespace ui::print
