#pragma once

#include <QColor>
#include <QString>

class QTextDocument;

namespace ui::print {

/// Colours of a chapter, on the screen or on paper.
struct GuideLook {
    QColor line; ///< of tables
    QColor sunk; ///< behind code and table heads
    QColor link; ///< invalid: links look like the text around them (paper)
};

/// Puts a chapter's Markdown (ui/text/guide.h, marks taken out) into `document`, whose default
/// font is the size of its text; spaces follow that font, so a doubled font keeps its looks.
void lay_guide(QTextDocument& document, const QString& markdown, const GuideLook& look);

/// Moves a heading that would stand at the foot of a page to the next. `page_height` is that of
/// the document's page size.
void keep_guide_headings(QTextDocument& document, double page_height);

} // namespace ui::print
