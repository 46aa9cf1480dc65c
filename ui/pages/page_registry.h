#pragma once

#include "ui/pages/page.h"

#include <vector>

namespace ui::pages {

/// Every page of the program, in the order of the side. Made anew at each call so that titles
/// are in the language in force.
std::vector<PageEntry> all_pages();

} // namespace ui::pages
