#include "tests/support/book_dump.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <set>

namespace saltloft::testing {

std::vector<std::string> dump(const std::string& path, DumpOf of) {
    SQLite::Database book(path, SQLite::OPEN_READWRITE);
    return dump(book, of);
}

std::vector<std::string> dump(SQLite::Database& book, DumpOf of) {
    static const std::set<std::string> log_tables{"action", "step", "action_entry",
                                                  "piece_revision", "photo"};
    std::vector<std::string> tables;
    SQLite::Statement names(book, "SELECT name FROM sqlite_schema WHERE type = 'table'"
                                  " AND name NOT LIKE 'sqlite%' ORDER BY name");
    while (names.executeStep()) {
        const std::string name = names.getColumn(0).getString();
        if (of == DumpOf::all || log_tables.count(name) == 0) {
            tables.push_back(name);
        }
    }
    std::vector<std::string> lines;
    for (const std::string& table : tables) {
        SQLite::Statement rows(book, "SELECT * FROM \"" + table + "\" ORDER BY 1, 2");
        while (rows.executeStep()) {
            std::string line = table;
            for (int i = 0; i < rows.getColumnCount(); ++i) {
                const SQLite::Column column = rows.getColumn(i);
                line += "|" + (column.isNull() ? std::string("NULL") : column.getString());
            }
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

void run_sql(const std::string& path, const std::string& sql) {
    SQLite::Database book(path, SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    book.exec(sql);
}

std::string query(const std::string& path, const std::string& sql) {
    SQLite::Database book(path, SQLite::OPEN_READWRITE);
    SQLite::Statement statement(book, sql);
    return statement.executeStep() ? statement.getColumn(0).getString() : std::string();
}

} // namespace saltloft::testing
