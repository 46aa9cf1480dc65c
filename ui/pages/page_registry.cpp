#include "ui/pages/page_registry.h"

namespace ui::pages {

#define SALTLOFT_PAGE(entry) PageEntry entry();
#include "ui/pages/page_list.inc"
#undef SALTLOFT_PAGE

std::vector<PageEntry> all_pages() {
    return {
#define SALTLOFT_PAGE(entry) entry(),
#include "ui/pages/page_list.inc"
#undef SALTLOFT_PAGE
    };
}

} // namespace ui::pages
