#include "core/store/restore.h"

#include "core/store/fault.h"
#include "core/store/file_facts.h"
#include "core/store/instance_lock.h"
#include "core/store/migrations.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdio>
#include <filesystem>

namespace core::store {

namespace fs = std::filesystem;
using base::ErrorCode;

namespace {

void remove_quietly(const std::string& path) {
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        fs::remove(path + suffix, ignored);
    }
}

/// Steps of the current book that the backup does not have.
std::int64_t steps_beyond(const std::string& book, std::int64_t revision) {
    Connection current(book, Access::read);
    const auto statement = current.prepared("SELECT count(*) FROM step WHERE id > ?");
    statement->bind(1, revision);
    return statement->executeStep() ? statement->getColumn(0).getInt64() : 0;
}

/// Folds the journal into the file where the file is good enough for that.
void fold_journal(const std::string& book) {
    try {
        Connection connection(book, Access::write);
        connection.integer("PRAGMA wal_checkpoint(TRUNCATE)");
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch)
        // Damaged: the journal is kept beside the replaced file instead.
    }
}

/// Gives the file in the book's place a second name and moves its journals to that name.
std::string keep_replaced(const std::string& book, units::Instant now) {
    fold_journal(book);
    std::string kept = book + ".replaced-" + moment_for_name(now);
    for (int n = 2; fs::exists(kept); ++n) {
        kept = book + ".replaced-" + moment_for_name(now) + "-" + std::to_string(n);
    }
    std::error_code no_links;
    fs::create_hard_link(book, kept, no_links);
    if (no_links) {
        fs::copy_file(book, kept);
        sync_to_disk(kept);
    }
    for (const char* suffix : {"-wal", "-journal"}) {
        std::error_code ignored;
        fs::rename(book + suffix, kept + suffix, ignored); // mostly not there
    }
    fs::remove(book + "-shm");
    sync_to_disk(folder_of(book));
    return kept;
}

} // namespace

RestorePlan plan_restore(const std::string& book, const std::string& backup) {
    RestorePlan plan;
    plan.backup = look_at(backup, true);
    plan.current.path = book;
    std::error_code missing;
    plan.current.bytes = static_cast<std::int64_t>(fs::file_size(book, missing));
    if (missing) {
        plan.current.bytes = 0;
        return plan;
    }
    try {
        plan.current = look_at(book, false);
        plan.steps_lost = steps_beyond(book, plan.backup.revision);
    } catch (const std::exception&) { // NOLINT(bugprone-empty-catch)
        // A book that cannot be read is what one restores over; nothing is known of it.
    }
    return plan;
}

std::string restore(const std::string& book, const std::string& backup, units::Instant now) {
    const auto lock = InstanceLock::take(book);
    if (!lock) {
        refuse(ErrorCode::locked, InstanceLock::holder(book), book);
    }
    const std::string incoming = book + ".restoring";
    remove_quietly(incoming);
    try {
        {
            look_at(backup, false); // a book of ours, not newer
            Connection source(backup, Access::read);
            if (!back_up(source, incoming).verified) {
                refuse(ErrorCode::damaged, "the backup does not pass its check", backup);
            }
        }
        std::string kept = fs::exists(book) ? keep_replaced(book, now) : std::string();
        rename_over(incoming, book);
        return kept;
    } catch (...) {
        remove_quietly(incoming);
        throw;
    }
}

} // namespace core::store
