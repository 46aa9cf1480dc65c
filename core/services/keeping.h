#pragma once

#include "core/services/book_types.h"

#include <stop_token>
#include <string>
#include <vector>

/// Looking after the file of a book through a door of its own: for a worker while the book is
/// open, or where the book itself does not open. More of it (restore, salvage): book.h.
namespace core::services {

/// A full check with the part of it that can be mended told apart.
struct BookCheck {
    IntegrityReport report;
    /// So many of the problems are climate roll-ups that disagree with their readings: the readings
    /// are whole, and rebuild_roll_ups mends it.
    std::size_t roll_ups = 0;
    [[nodiscard]] bool only_roll_ups() const {
        return !report.sound() && roll_ups == report.problems.size();
    }
};
BookCheck with_roll_ups_told(IntegrityReport report);

/// Reads the book from end to end, changing nothing. Fails as opening it fails, and with cancelled
/// soon after `stop` is asked for.
base::Result<BookCheck> check_book(const std::string& book, const std::stop_token& stop = {});

/// Makes all climate roll-ups anew from their readings. The book must be open for writing in this
/// program. Cancelled, it leaves the old ones.
base::Status rebuild_roll_ups(const std::string& book, const std::stop_token& stop = {});

/// The rotating backups in the folder "backups" beside the book, newest first; also when the book
/// itself is missing or does not open. One that cannot be read has nothing but its path.
base::Result<std::vector<BookSummary>> backups_of(const std::string& book);

/// Entries known to be lost in a salvage.
std::int64_t lost_rows(const SalvageReport& report);

} // namespace core::services
