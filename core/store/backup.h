#pragma once

#include "core/store/connection.h"
#include "core/units/time.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

/// Copies of a book by SQLite's online backup, each verified by opening it. All throw.
namespace core::store {

struct BookFacts {
    std::string path;
    std::int64_t bytes = 0;
    int schema = 0;
    std::string written_by;
    std::string title; ///< preference "title"; empty when none
    std::optional<units::Instant> last_change;
    std::int64_t revision = 0;
    std::int64_t batches = 0;
    std::int64_t pieces = 0;
    std::int64_t weighings = 0;
    bool verified = false; ///< a full integrity check passed
};

/// Reads what is in the file without changing it. `verify` also runs the full integrity check.
BookFacts look_at(const std::string& path, bool verify);

/// A verified copy of the open book at `target`, as one file without a journal. The copy is made
/// under another name and renamed when it is known to be good; Fault conflict when `target` is
/// there, damaged when the copy does not pass (the half-made copy is removed).
BookFacts back_up(Connection& book, const std::string& target);

/// The rotation: 7 daily and 8 weekly copies in `folder`, named after the book.
struct RotationResult {
    std::optional<BookFacts> made; ///< absent when today's was there
    int dropped = 0;
};
RotationResult rotate_backups(Connection& book, const std::string& book_path,
                              const std::string& folder, units::Instant now);
/// Paths of all backups of the book in `folder`, newest first.
std::vector<std::string> backup_files(const std::string& book_path, const std::string& folder);

/// "2026-11-25" and "2026-11-25T083000Z": for file names.
std::string date_for_name(units::Instant at);
std::string moment_for_name(units::Instant at);

} // namespace core::store
