#pragma once

#include "ui/look/adaptive.h"
#include "ui/pages/page.h"

class QVBoxLayout;

namespace ui::pages {

/// The usual frame of a page: a title row (title on the left, room for buttons on the right)
/// above a body that scrolls when the window is small or the font large, so nothing is clipped. A
/// page whose tables are to fill the rest gives them a least height (Table::set_least_height).
struct PageFrame {
    look::HeadRow* head; ///< add buttons here; the title is in it already
    QVBoxLayout* body;
};

/// Lays the frame into `page`, which must have no layout yet.
PageFrame frame_page(Page* page, const QString& title);

} // namespace ui::pages
