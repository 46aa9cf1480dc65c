#include "core/store/connection.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>

#include <chrono>
#include <cstdint>
#include <sqlite3.h>
#include <thread>

namespace core::store {

namespace {

constexpr int busy_timeout_ms = 3000;

/// SQLite's own waiting grows to a tenth of a second between two looks and misses the moments in
/// which another connection lets go between two transactions; a window would stand still for it.
int look_again_soon(void* /*unused*/, int looks) {
    if (looks >= busy_timeout_ms) {
        return 0;
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(1));
    return 1;
}

int flags_of(Access access) {
    switch (access) {
    case Access::create_or_write:
        return SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE;
    case Access::write:
        return SQLite::OPEN_READWRITE;
    case Access::read:
        return SQLite::OPEN_READONLY;
    case Access::read_frozen:
        return SQLite::OPEN_READONLY | SQLite::OPEN_URI;
    }
    return SQLite::OPEN_READONLY;
}

/// A file name as a URI that promises nobody changes the file.
std::string frozen_uri(const std::string& path) {
    static constexpr char digits[] = "0123456789ABCDEF";
    std::string uri = "file:";
    for (const char c : path) {
        const auto byte = static_cast<unsigned char>(c);
        if (std::isalnum(byte) != 0 || c == '/' || c == '.' || c == '-' || c == '_') {
            uri += c;
        } else {
            uri += '%';
            uri += digits[byte >> 4U];
            uri += digits[byte & 15U];
        }
    }
    return uri + "?immutable=1";
}

void set_up(SQLite::Database& database) {
    sqlite3* handle = database.getHandle();
    sqlite3_extended_result_codes(handle, 1);
    // A book may come from anywhere: nothing in its schema runs, and no SQL can harm the file's
    // structure. (SQLite documentation, "Defense Against The Dark Arts".)
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DML, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_DQS_DDL, 0, nullptr);
    sqlite3_db_config(handle, SQLITE_DBCONFIG_ENABLE_LOAD_EXTENSION, 0, nullptr);
    database.exec("PRAGMA trusted_schema=OFF");
    database.exec("PRAGMA cell_size_check=ON");
    database.exec("PRAGMA mmap_size=0");
    database.exec("PRAGMA foreign_keys=ON");
    // EXTRA is FULL, and also forces the removal of a rollback journal to the disk: one that came
    // back after a power cut (from before the switch to WAL, say) would undo later commits.
    database.exec("PRAGMA synchronous=EXTRA");
    database.exec("PRAGMA temp_store=MEMORY");
}

/// SQLite counts the memory it uses under one lock for all threads: while a log came in, the window
/// waited up to 70 ms in it. Nobody reads the count. Can only be said before the first connection;
/// after it SQLite leaves things as they are.
void count_no_memory() {
    static const int said = sqlite3_config(SQLITE_CONFIG_MEMSTATUS, 0);
    static_cast<void>(said);
}

std::unique_ptr<SQLite::Database> opened(const std::string& path, Access access,
                                         const std::string& vfs) {
    count_no_memory();
    return std::make_unique<SQLite::Database>(access == Access::read_frozen ? frozen_uri(path)
                                                                            : path,
                                              flags_of(access), busy_timeout_ms, vfs);
}

} // namespace

Connection::Connection(const std::string& path, Access access, const std::string& vfs)
    : database_(opened(path, access, vfs)) {
    sqlite3_busy_handler(database_->getHandle(), look_again_soon, nullptr);
    set_up(*database_);
}

Connection::~Connection() {
    idle_.clear();
}

Connection::Lease::Lease(Connection& owner, std::string_view sql) : owner_(owner), sql_(sql) {
    if (const auto found = owner.idle_.find(sql_); found != owner.idle_.end()) {
        statement_ = std::move(found->second);
        owner.idle_.erase(found);
    } else {
        statement_ = std::make_unique<SQLite::Statement>(*owner.database_, sql_);
    }
}

Connection::Lease::~Lease() {
    // A statement that failed is not worth keeping; its reset repeats the error.
    if (statement_ == nullptr || statement_->tryReset() != SQLITE_OK) {
        return;
    }
    try {
        statement_->clearBindings();
        owner_.idle_.insert_or_assign(std::move(sql_), std::move(statement_));
    } catch (...) { // NOLINT(bugprone-empty-catch): the statement is dropped, nothing else is lost
    }
}

void Connection::run(const std::string& sql) {
    database_->exec(sql);
}

std::int64_t Connection::integer(std::string_view sql, std::int64_t fallback) {
    const Lease statement = prepared(sql);
    return statement->executeStep() ? statement->getColumn(0).getInt64() : fallback;
}

bool Connection::is_in_transaction() const {
    return sqlite3_get_autocommit(database_->getHandle()) == 0;
}

bool Connection::file_is_gone() {
    int moved = 0;
    const int code =
        sqlite3_file_control(database_->getHandle(), "main", SQLITE_FCNTL_HAS_MOVED, &moved);
    return code == SQLITE_OK && moved != 0;
}

Transaction::Transaction(Connection& connection, Kind kind) : connection_(connection) {
    connection.run(kind == Kind::immediate ? "BEGIN IMMEDIATE" : "BEGIN");
}

Transaction::~Transaction() {
    // The engine may have rolled back by itself (disk full, I/O error).
    if (open_ && connection_.is_in_transaction()) {
        try {
            connection_.run("ROLLBACK");
        } catch (...) { // NOLINT(bugprone-empty-catch): closing the connection rolls back too
        }
    }
}

void Transaction::commit() {
    connection_.run("COMMIT");
    open_ = false;
}

LazyWriting::LazyWriting(Connection& connection) : connection_(connection) {
    connection_.run("PRAGMA synchronous=OFF");
}

LazyWriting::~LazyWriting() {
    try {
        connection_.run("PRAGMA synchronous=EXTRA");
        connection_.integer("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (...) { // NOLINT(bugprone-empty-catch): the next commit is forced to the disk anyway
    }
}

} // namespace core::store
