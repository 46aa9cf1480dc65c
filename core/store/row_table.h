#pragma once

// Internal to core/store: one description a table serves insert, update, select and find, so that
// the columns cannot come apart. A specialisation of Table<T> gives
//   name                     the table
//   blank()                  a T to read into
//   visit(visitor, t)        calls visitor("column", t.member) for every column but `id`
// A visitor that reads has `reads == true`; columns only read (never written) are visited under
// `if constexpr (V::reads)`.

#include "core/store/codec.h"
#include "core/store/entries.h"

#include <SQLiteCpp/Statement.h>

#include <string>
#include <string_view>
#include <vector>

namespace core::store {

template <class T>
struct Table;

template <bool Reads>
struct ColumnNames {
    static constexpr bool reads = Reads;
    std::vector<std::string_view> names;
    template <class M>
    void operator()(std::string_view name, const M& /*member*/) {
        names.push_back(name);
    }
};

struct ColumnBinder {
    static constexpr bool reads = false;
    SQLite::Statement& statement;
    int index = 1;
    template <class M>
    void operator()(std::string_view /*name*/, const M& member) {
        bind_value(statement, index++, member);
    }
};

struct ColumnReader {
    static constexpr bool reads = true;
    SQLite::Statement& statement;
    int index = 0;
    template <class M>
    void operator()(std::string_view /*name*/, M& member) {
        read_value(statement.getColumn(index++), member);
    }
};

template <class T, bool Reads>
std::vector<std::string_view> column_names() {
    ColumnNames<Reads> visitor;
    T blank = Table<T>::blank();
    Table<T>::visit(visitor, blank);
    return visitor.names;
}

template <class T>
const std::string& insert_sql() {
    static const std::string sql = [] {
        std::string columns;
        std::string marks;
        for (const auto name : column_names<T, false>()) {
            columns += (columns.empty() ? "" : ", ") + std::string(name);
            marks += marks.empty() ? "?" : ", ?";
        }
        return "INSERT INTO " + std::string(Table<T>::name) + " (" + columns + ") VALUES (" +
               marks + ")";
    }();
    return sql;
}

template <class T>
const std::string& update_sql() {
    static const std::string sql = [] {
        std::string sets;
        for (const auto name : column_names<T, false>()) {
            sets += (sets.empty() ? "" : ", ") + std::string(name) + " = ?";
        }
        return "UPDATE " + std::string(Table<T>::name) + " SET " + sets + " WHERE id = ?";
    }();
    return sql;
}

/// "SELECT id, columns FROM table"
template <class T>
const std::string& select_sql() {
    static const std::string sql = [] {
        const std::string table(Table<T>::name);
        std::string columns = table + ".id";
        for (const auto name : column_names<T, true>()) {
            columns += ", ";
            columns += name.front() == '(' ? std::string(name) : table + "." + std::string(name);
        }
        return "SELECT " + columns + " FROM " + table;
    }();
    return sql;
}

/// All rows of `SELECT ... FROM table <tail>`; `values` are bound to the tail's parameters.
template <class T, class... Values>
std::vector<T> select(Connection& book, std::string_view tail, const Values&... values) {
    const std::string sql = select_sql<T>() + " " + std::string(tail);
    const auto statement = book.prepared(sql);
    int index = 1;
    (bind_value(*statement, index++, values), ...);
    std::vector<T> rows;
    while (statement->executeStep()) {
        T& row = rows.emplace_back(Table<T>::blank());
        read_value(statement->getColumn(0), row.id);
        ColumnReader reader{*statement, 1};
        // cppcheck-suppress danglingTemporaryLifetime ; the statement outlives its reader
        Table<T>::visit(reader, row);
    }
    return rows;
}

template <class T>
IdOf<T> insert_row(Connection& book, const T& entry) {
    const auto statement = book.prepared(insert_sql<T>());
    ColumnBinder binder{*statement};
    // Visiting never changes an entry when it is not reading.
    Table<T>::visit(binder, const_cast<T&>(entry)); // NOLINT(cppcoreguidelines-pro-type-const-cast)
    statement->exec();
    return IdOf<T>::from_row(book.integer("SELECT last_insert_rowid()"));
}

template <class T>
void update_row(Connection& book, const T& entry) {
    const auto statement = book.prepared(update_sql<T>());
    ColumnBinder binder{*statement};
    Table<T>::visit(binder, const_cast<T&>(entry)); // NOLINT(cppcoreguidelines-pro-type-const-cast)
    bind_value(*statement, binder.index, entry.id);
    if (statement->exec() != 1) {
        refuse(base::ErrorCode::no_such_entry, std::string(Table<T>::name));
    }
}

template <class T>
void remove_row(Connection& book, IdOf<T> id) {
    const auto statement =
        book.prepared("DELETE FROM " + std::string(Table<T>::name) + " WHERE id = ?");
    bind_value(*statement, 1, id);
    if (statement->exec() != 1) {
        refuse(base::ErrorCode::no_such_entry, std::string(Table<T>::name));
    }
}

template <class T>
std::optional<T> find(Connection& book, IdOf<T> id) {
    auto rows = select<T>(book, "WHERE id = ?", id);
    return rows.empty() ? std::nullopt : std::optional<T>(std::move(rows.front()));
}

template <class T>
T get(Connection& book, IdOf<T> id) {
    auto found = find<T>(book, id);
    if (!found) {
        refuse(base::ErrorCode::no_such_entry, std::string(Table<T>::name));
    }
    return std::move(*found);
}

template <class T>
IdOf<T> insert(Connection& book, const T& entry) {
    return insert_row(book, entry);
}
template <class T>
void update(Connection& book, const T& entry) {
    update_row(book, entry);
}
template <class T>
void remove(Connection& book, IdOf<T> id) {
    remove_row<T>(book, id);
}

} // namespace core::store

/// Instantiates the functions of entries.h for one type; once, in the file of its table.
#define SALTLOFT_STORE_ENTRY(Type)                                                                 \
    template IdOf<Type> insert<Type>(Connection&, const Type&);                                    \
    template void update<Type>(Connection&, const Type&);                                          \
    template void remove<Type>(Connection&, IdOf<Type>);                                           \
    template std::optional<Type> find<Type>(Connection&, IdOf<Type>);                              \
    template Type get<Type>(Connection&, IdOf<Type>);
