#include "ui/pages/page.h"

namespace ui::pages {

Page::Page(presenters::Workspace& workspace, QWidget* parent)
    : QWidget(parent), workspace_(workspace) {}

} // namespace ui::pages
