#pragma once

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>
#include <unordered_map>

namespace SQLite {
class Database;
class Statement;
} // namespace SQLite

namespace core::store {

/// How a connection reaches its file.
enum class Access {
    create_or_write,
    write,
    read,
    read_frozen, ///< a file nobody can change (read-only folder): no locks, no side files
};

/// One connection to one file, set up the way every connection of ours is: foreign keys on,
/// `synchronous=EXTRA` (FULL and more), schema not trusted, defensive mode, no triggers or views
/// run. Throws. Statements are kept prepared, because a weigh-in runs the same few again and again.
class Connection {
  public:
    /// Opens `path` with the journal as the file has it. `vfs` is for tests; empty for the
    /// system's.
    Connection(const std::string& path, Access access, const std::string& vfs = {});
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// A prepared statement, given back (reset, unbound) when the lease ends.
    class Lease {
      public:
        Lease(Connection& owner, std::string_view sql);
        ~Lease();
        Lease(const Lease&) = delete;
        Lease& operator=(const Lease&) = delete;
        SQLite::Statement& operator*() const { return *statement_; }
        SQLite::Statement* operator->() const { return statement_.get(); }

      private:
        Connection& owner_;
        std::string sql_;
        std::unique_ptr<SQLite::Statement> statement_;
    };
    Lease prepared(std::string_view sql) { return {*this, sql}; }

    [[nodiscard]] SQLite::Database& database() { return *database_; }
    /// Statements that return nothing and take no parameters (pragmas, migrations).
    void run(const std::string& sql);
    /// First column of the first row as an integer; `fallback` without a row.
    std::int64_t integer(std::string_view sql, std::int64_t fallback = 0);
    [[nodiscard]] bool is_in_transaction() const;
    /// True when the file was moved, replaced or removed under the open connection.
    [[nodiscard]] bool file_is_gone();

  private:
    std::unique_ptr<SQLite::Database> database_;
    std::unordered_map<std::string, std::unique_ptr<SQLite::Statement>> idle_;
};

/// A transaction that rolls back unless committed. `immediate` takes the write lock at once, so
/// that a change never fails halfway because another writer came first.
class Transaction {
  public:
    enum class Kind { read, immediate };
    Transaction(Connection& connection, Kind kind);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

  private:
    Connection& connection_;
    bool open_ = true;
};

/// While it lives, commits are not forced to the disk: for files that can be made again (the demo
/// book, a salvage, tests). The file is forced to the disk when it ends.
class LazyWriting {
  public:
    explicit LazyWriting(Connection& connection);
    ~LazyWriting();
    LazyWriting(const LazyWriting&) = delete;
    LazyWriting& operator=(const LazyWriting&) = delete;

  private:
    Connection& connection_;
};

} // namespace core::store
