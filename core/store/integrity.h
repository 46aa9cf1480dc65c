#pragma once

#include "core/store/connection.h"

#include <string>
#include <vector>

namespace core::store {

/// What the engine finds wrong with the file; empty when sound. The quick check leaves climate
/// readings out, so that it takes no longer in a book with millions of them. `full` also compares
/// indexes with tables, checks every foreign key and what the book promises across tables (a pack's
/// weight left against its moves, an amended weighing on the same piece, climate roll-ups against
/// their readings). Throws when the file cannot be read
/// far enough to tell.
std::vector<std::string> integrity_problems(Connection& book, bool full);

} // namespace core::store
