#include "ui/pages/guide_reader.h"

#include "ui/look/pieces.h"
#include "ui/look/theme.h"
#include "ui/print/guide_document.h"

#include <QAbstractTextDocumentLayout>
#include <QScrollBar>
#include <QTextBlock>

namespace ui::pages {
namespace {

constexpr double text_width = 36; // heights of a line: some 75 letters

QTextBlock heading_block(const QTextDocument& document, const QString& slug) {
    for (QTextBlock block = document.begin(); block.isValid(); block = block.next()) {
        if (block.blockFormat().headingLevel() > 0 && text::guide_slug(block.text()) == slug) {
            return block;
        }
    }
    return {};
}

} // namespace

GuideReader::GuideReader(QWidget* parent) : QTextBrowser(parent) {
    setOpenLinks(false);
    setLineWrapMode(QTextEdit::FixedPixelWidth);
    setTextInteractionFlags(Qt::TextBrowserInteraction | Qt::TextSelectableByKeyboard);
    connect(verticalScrollBar(), &QScrollBar::actionTriggered, this, [this] { hold_ = false; });
}

void GuideReader::show_chapter(const text::GuideChapter& chapter) {
    const auto& tokens = look::tokens();
    // A document of its own: one that is being shown lays itself out while it is read, and Qt's
    // Markdown reader does not stand that.
    auto* fresh = new QTextDocument(this);
    fresh->setDefaultFont(font());
    fresh->setDocumentMargin(look::lines(this, 0.8));
    print::lay_guide(*fresh, text::guide_markdown(chapter),
                     {tokens.line, tokens.sunk, tokens.accent});
    setExtraSelections({}); // they point into the old document
    setDocument(fresh);
    delete chapter_;
    chapter_ = fresh;
    moveCursor(QTextCursor::Start);
    verticalScrollBar()->setValue(0);
}

bool GuideReader::go_to(const QString& slug) {
    if (!slug.isEmpty() && !heading_block(*document(), slug).isValid()) {
        return false;
    }
    heading_ = slug;
    hold_ = true;
    return_to_heading();
    return true;
}

void GuideReader::return_to_heading() {
    if (!hold_) {
        return;
    }
    int top = 0;
    QTextCursor cursor(document());
    if (const QTextBlock block = heading_block(*document(), heading_); block.isValid()) {
        top = static_cast<int>(document()->documentLayout()->blockBoundingRect(block).top());
        cursor.setPosition(block.position());
    }
    setTextCursor(cursor); // so that Tab and a search go on from here
    verticalScrollBar()->setValue(top);
}

void GuideReader::mark(const QString& words) {
    QList<QTextEdit::ExtraSelection> marks;
    QTextCharFormat format;
    format.setBackground(look::tokens().caution_ground);
    format.setForeground(look::tokens().caution);
    QTextCursor found(document());
    while (!words.isEmpty()) {
        found = document()->find(words, found);
        if (found.isNull()) {
            break;
        }
        marks.push_back({found, format});
    }
    setExtraSelections(marks);
}

void GuideReader::resizeEvent(QResizeEvent* event) {
    QTextBrowser::resizeEvent(event);
    setLineWrapColumnOrWidth(std::min(viewport()->width(), look::lines(this, text_width)));
    return_to_heading();
}

void GuideReader::showEvent(QShowEvent* event) {
    QTextBrowser::showEvent(event);
    return_to_heading();
}

} // namespace ui::pages
