#include "ui/pages/page.h"

#include "ui/presenters/workspace.h"
#include "ui/print/printable.h"
#include "ui/text/date_words.h"

namespace ui::pages {

Page::Page(presenters::Workspace& workspace, QWidget* parent)
    : QWidget(parent), workspace_(workspace) {}

std::vector<print::Printable> Page::printables() {
    return {};
}

print::Printable Page::list_printable(const QAbstractItemModel& model,
                                      print::TablePaper paper) const {
    if (paper.subtitle.isEmpty()) {
        paper.subtitle = text::words(workspace_.today(), workspace_.style());
    }
    return {paper.title, paper.title, [&model, paper]() -> core::base::Result<print::Paper> {
                return print::Paper(print::table_sheet(model, paper));
            }};
}

} // namespace ui::pages
