#include "core/store/integrity.h"

#include "core/store/climate.h"
#include "core/store/migrations.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>

#include <sqlite3.h>

namespace core::store {

namespace {

constexpr std::size_t most_reported = 100;

void collect(Connection& book, std::string_view sql, const std::string& prefix,
             std::vector<std::string>& problems) {
    // Damage can also end the check itself; that is a finding too, not a failure to find.
    try {
        const auto statement = book.prepared(sql);
        while (problems.size() < most_reported && statement->executeStep()) {
            const std::string text = statement->getColumn(0).getString();
            if (text != "ok") {
                problems.push_back(prefix + text);
            }
        }
    } catch (const SQLite::Exception& exception) {
        if ((exception.getErrorCode() & 0xff) != SQLITE_CORRUPT) {
            throw;
        }
        problems.push_back(prefix + exception.what());
    }
}

/// Table by table, leaving out climate readings and their roll-ups: ten years of them are half a
/// gigabyte, and a book must open as fast as an empty one. The full check reads them.
std::vector<std::string> quick_problems(Connection& book) {
    std::vector<std::string> problems;
    collect(book,
            "SELECT checked.quick_check FROM sqlite_schema AS kept, pragma_quick_check(kept.name)"
            " AS checked WHERE kept.type = 'table' AND kept.name NOT LIKE 'sqlite\\_%' ESCAPE '\\'"
            " AND kept.name NOT IN ('climate_reading', 'climate_bucket')",
            "", problems);
    return problems;
}

} // namespace

std::vector<std::string> integrity_problems(Connection& book, bool full) {
    std::vector<std::string> problems;
    if (!full) {
        return quick_problems(book);
    }
    collect(book, "PRAGMA integrity_check", "", problems);
    collect(book,
            "SELECT \"table\" || ' row ' || coalesce(rowid, '?') || ' names a missing ' || parent"
            " FROM pragma_foreign_key_check",
            "foreign key: ", problems);
    if (schema_of(book) != newest_schema()) {
        return problems; // an older book about to be brought up to date: its tables are others
    }
    collect(book,
            "SELECT 'weighing ' || later.id || ' corrects one of another piece' FROM weighing AS"
            " later JOIN weighing AS first ON first.id = later.amends_id"
            " WHERE first.piece_id <> later.piece_id",
            "", problems);
    collect(book,
            "SELECT 'pack ' || id || ' has less than nothing left' FROM pack WHERE left_mg < 0", "",
            problems);
    collect(book,
            "SELECT 'action ' || id || ' has no step' FROM action WHERE NOT EXISTS"
            " (SELECT 1 FROM step WHERE step.id = action.id)",
            "log: ", problems);
    // Climate is only walked where the file itself is sound: it is the largest part.
    if (problems.empty()) {
        problems = climate_problems(book);
    }
    return problems;
}

} // namespace core::store
