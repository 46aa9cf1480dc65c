#pragma once

#include "core/store/backup.h"

#include <string>
#include <vector>

/// Putting a backup in a book's place, and carrying a damaged book over into a new one. All throw.
namespace core::store {

struct RestorePlan {
    BookFacts backup;
    BookFacts current; ///< only `path` and `bytes` when the book is missing or cannot be read
    std::int64_t steps_lost = 0;
};
RestorePlan plan_restore(const std::string& book, const std::string& backup);

/// Puts a verified copy of `backup` in the place of `book` and returns where the replaced file is
/// kept ("<book>.replaced-<moment>"; empty when there was none). Fault locked while another
/// instance writes the book. A crash at any point leaves the old or the new book in place, and the
/// replaced one under one of its names.
std::string restore(const std::string& book, const std::string& backup, units::Instant now);

struct SalvagedTable {
    std::string name;
    std::int64_t kept = 0;
    std::int64_t lost = 0;
};
/// Carries every readable row of `damaged` into a new book at `target` (Fault conflict when it is
/// there). Rows whose owner is lost keep a stand-in owner named "recovered"; `damaged` itself is
/// not changed.
std::vector<SalvagedTable> salvage(const std::string& damaged, const std::string& target,
                                   units::Instant now);

} // namespace core::store
