#include "core/store/restore.h"

#include "core/store/codec.h"
#include "core/store/fault.h"
#include "core/store/file_facts.h"
#include "core/store/integrity.h"
#include "core/store/migrations.h"
#include "core/store/salvage_links.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sqlite3.h>
#include <utility>
#include <vector>

namespace core::store {

namespace fs = std::filesystem;
using base::ErrorCode;

namespace {

struct TableShape {
    std::string name;
    std::string columns; ///< "id, code, ..." as in the new book
    int column_count = 0;
    bool has_rowid = true;
};

std::set<std::string> columns_of(Connection& book, const std::string& table) {
    const auto statement = book.prepared("SELECT name FROM pragma_table_info(?)");
    statement->bind(1, table);
    std::set<std::string> columns;
    while (statement->executeStep()) {
        columns.insert(statement->getColumn(0).getString());
    }
    return columns;
}

/// The new book's tables with the columns that the damaged one has too.
std::vector<TableShape> shapes_of(Connection& book, Connection& damaged) {
    std::vector<TableShape> shapes;
    {
        const auto statement = book.prepared(
            "SELECT name, wr FROM pragma_table_list WHERE schema = 'main' AND type = 'table'"
            " AND name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY name");
        while (statement->executeStep()) {
            shapes.push_back({.name = statement->getColumn(0).getString(),
                              .has_rowid = statement->getColumn(1).getInt() == 0});
        }
    }
    for (TableShape& shape : shapes) {
        // An older book has fewer columns; the new ones then keep their defaults.
        const std::set<std::string> known = columns_of(damaged, shape.name);
        for (const std::string& column : columns_of(book, shape.name)) {
            if (known.count(column) == 1) {
                shape.columns += (shape.columns.empty() ? "" : ", ") + ("\"" + column + "\"");
                ++shape.column_count;
            }
        }
    }
    return shapes;
}

bool is_damage(const SQLite::Exception& exception) {
    const int code = exception.getErrorCode() & 0xff;
    return code == SQLITE_CORRUPT || code == SQLITE_NOTADB || code == SQLITE_IOERR ||
           code == SQLITE_ERROR; // a column the damaged schema does not have
}

/// The value whatever its type: the new book's STRICT table judges it.
void bind_as_it_is(SQLite::Statement& statement, int index, const SQLite::Column& value) {
    if (value.isInteger()) {
        statement.bind(index, value.getInt64());
    } else if (value.isFloat()) {
        statement.bind(index, value.getDouble());
    } else if (value.isText()) {
        statement.bind(index, value.getString());
    } else if (value.isBlob()) {
        statement.bind(index, value.getBlob(), value.getBytes());
    } else {
        statement.bind(index);
    }
}

/// Copies one table from a damaged file, going round what cannot be read.
class TableRescue {
  public:
    TableRescue(Connection& from, Connection& to, const TableShape& shape)
        : from_(from), to_(to), shape_(shape) {
        std::string marks = "?"; // a table always has a column in common: its key
        for (int i = 1; i < shape.column_count; ++i) {
            marks += ", ?";
        }
        insert_ = "INSERT OR IGNORE INTO \"" + shape.name + "\" (" + shape.columns + ") VALUES (" +
                  marks + ")";
        select_ = "SELECT " + shape.columns + (shape.has_rowid ? ", rowid" : ", 0") + " FROM \"" +
                  shape.name + "\" NOT INDEXED";
    }

    SalvagedTable run() {
        SalvagedTable result{.name = shape_.name};
        if (!shape_.has_rowid) {
            // Keyed by their own columns: forward until it breaks.
            walk(select_, result.kept);
            return result;
        }
        const bool whole = walk(select_ + " ORDER BY rowid", result.kept);
        if (!whole) {
            const std::int64_t last_before_gap = last_kept_;
            walk(select_ + " ORDER BY rowid DESC", result.kept);
            if (lowest_from_behind_ > last_before_gap) {
                try_gap(last_before_gap, lowest_from_behind_, result);
            }
        }
        return result;
    }

  private:
    /// False when the walk met damage.
    bool walk(const std::string& sql, std::int64_t& kept) {
        try {
            SQLite::Statement rows(from_.database(), sql);
            while (rows.executeStep()) {
                keep(rows, kept);
            }
            return true;
        } catch (const SQLite::Exception& exception) {
            if (!is_damage(exception)) {
                throw;
            }
            return false;
        }
    }

    void keep(SQLite::Statement& row, std::int64_t& kept) {
        const auto statement = to_.prepared(insert_);
        for (int i = 0; i < shape_.column_count; ++i) {
            bind_as_it_is(*statement, i + 1, row.getColumn(i));
        }
        const std::int64_t id = row.getColumn(shape_.column_count).getInt64();
        try {
            if (statement->exec() == 1) {
                ++kept;
                last_kept_ = std::max(last_kept_, id);
            }
            lowest_from_behind_ = id;
        } catch (const SQLite::Exception&) {
            // Refused by the new book (wrong type, a second of what must be one): lost, counted
            // as what the file holds and the new book does not.
        }
    }

    /// Rows between the two walks, each by its number: interior pages may still lead to them.
    void try_gap(std::int64_t after, std::int64_t before, SalvagedTable& result) {
        static constexpr std::int64_t most_tried = 200000;
        static constexpr int most_missing = 5000; // in a row: nothing more lies there
        const std::int64_t until = before - after > most_tried ? after + most_tried : before;
        SQLite::Statement row(from_.database(), select_ + " WHERE rowid = ?");
        int missing = 0;
        for (std::int64_t id = after + 1; id < until && missing < most_missing; ++id) {
            try {
                row.bind(1, id);
                if (row.executeStep()) {
                    keep(row, result.kept);
                    missing = 0;
                } else {
                    ++missing;
                }
            } catch (const SQLite::Exception& exception) {
                if (!is_damage(exception)) {
                    throw;
                }
                ++result.lost;
                missing = 0;
            }
            row.tryReset();
        }
    }

    Connection& from_;
    Connection& to_;
    const TableShape& shape_;
    std::string insert_;
    std::string select_;
    std::int64_t last_kept_ = 0;
    std::int64_t lowest_from_behind_ = 0;
};

} // namespace

std::vector<SalvagedTable> salvage(const std::string& damaged, const std::string& target,
                                   units::Instant now) {
    if (fs::exists(target)) {
        refuse(ErrorCode::conflict, target, target);
    }
    require_book_header(damaged, facts_of(damaged));
    const std::string partial = target + ".partial";
    std::error_code ignored;
    fs::remove(partial, ignored);
    std::vector<SalvagedTable> tables;
    {
        Connection from(damaged, Access::read);
        Connection to(partial, Access::create_or_write);
        to.run("PRAGMA journal_mode=MEMORY"); // a file that can be made again
        to.run("PRAGMA synchronous=OFF");
        migrate(to, migrations(), SALTLOFT_VERSION, now.unix_seconds());
        to.run("PRAGMA foreign_keys=OFF"); // owners may come after what they own
        const auto shapes = shapes_of(to, from);
        Transaction transaction(to, Transaction::Kind::immediate);
        to.run("DELETE FROM about");
        for (const TableShape& shape : shapes) {
            if (shape.column_count == 0) {
                continue; // the damaged book does not have this table (or lost it whole)
            }
            tables.push_back(TableRescue(from, to, shape).run());
        }
        if (to.integer("SELECT count(*) FROM about") == 0) {
            const auto about = to.prepared(
                "INSERT INTO about (id, made_by, written_by, made_at_s) VALUES (1, ?1, ?1, ?2)");
            about->bind(1, SALTLOFT_VERSION);
            about->bind(2, now.unix_seconds());
            about->exec();
        }
        mend_climate(to); // may name a lost sensor, which is given a stand-in next
        mend_links(to);
        transaction.commit();
        if (const auto problems = integrity_problems(to, true); !problems.empty()) {
            refuse(ErrorCode::damaged, "the salvaged book does not pass: " + problems.front(),
                   target);
        }
        to.run("PRAGMA journal_mode=DELETE");
    }
    sync_to_disk(partial);
    rename_new(partial, target);
    return tables;
}

} // namespace core::store
