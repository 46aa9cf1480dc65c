#pragma once

#include <string>
#include <vector>

namespace SQLite {
class Database;
} // namespace SQLite

namespace saltloft::testing {

/// Which tables a dump shows.
enum class DumpOf {
    entries, ///< what people entered: without the log, revisions, photos kept for redo
    all,
};

/// Every row of the book at `path`, a line a row, for comparing states; read through a connection
/// of its own, so nothing of an open book's cache can flatter the result.
std::vector<std::string> dump(const std::string& path, DumpOf of = DumpOf::entries);

/// The same through a connection that is open already.
std::vector<std::string> dump(SQLite::Database& book, DumpOf of = DumpOf::entries);

/// Runs SQL on the file with no rules of ours: for making old, hostile and broken books.
void run_sql(const std::string& path, const std::string& sql);
/// First column of the first row as text.
std::string query(const std::string& path, const std::string& sql);

} // namespace saltloft::testing
