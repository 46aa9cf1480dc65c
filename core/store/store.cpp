#include "core/store/store.h"

#include "core/store/backup.h"
#include "core/store/file_facts.h"
#include "core/store/integrity.h"
#include "core/store/migrations.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <filesystem>

namespace core::store {

using base::ErrorCode;
using model::Finding;
using model::Severity;

namespace {

std::string written_by(Connection& book) {
    try {
        const auto statement = book.prepared("SELECT written_by FROM about");
        return statement->executeStep() ? statement->getColumn(0).getString() : "unknown";
    } catch (...) {
        return "unknown"; // a newer book may have put it elsewhere
    }
}

/// A new book is made under another name and renamed when it is whole, so that a half-made file
/// never stands where a book is looked for.
void make_book_file(const std::string& path, units::Instant now) {
    const std::string making = path + ".making";
    std::error_code ignored;
    for (const char* suffix : {"", "-journal", "-wal", "-shm"}) {
        std::filesystem::remove(making + suffix, ignored);
    }
    {
        Connection book(making, Access::create_or_write);
        migrate(book, migrations(), SALTLOFT_VERSION, now.unix_seconds());
    }
    sync_to_disk(making);
    rename_new(making, path);
}

} // namespace

/// The steps of opening, in order; each adds to the store being made or throws.
class Opening {
  public:
    Opening(const std::string& path, const StoreOptions& options) : options_(options) {
        store_->path_ = path;
        store_->backup_folder_ =
            options.backup_folder.empty() ? folder_of(path) + "/backups" : options.backup_folder;
    }

    std::unique_ptr<Store> run() {
        if (options_.vfs.empty()) {
            look_at_file();
            connect();
        } else {
            connect_through_vfs();
        }
        refuse_newer();
        check();
        set_journal();
        bring_up_to_date();
        return std::move(store_);
    }

  private:
    void note(const char* code, Severity severity,
              std::map<std::string, model::FindingValue> values = {}) {
        store_->findings_.push_back(
            Finding{.code = code, .severity = severity, .values = std::move(values)});
    }

    void look_at_file() {
        facts_ = facts_of(store_->path_);
        if (!facts_.exists && options_.create) {
            make_book_file(store_->path_, options_.now);
            facts_ = facts_of(store_->path_);
        } else if (facts_.exists && options_.create) {
            refuse(ErrorCode::conflict, "the file is there already", store_->path_);
        }
        require_book_header(store_->path_, facts_);
    }

    void connect() {
        store_->read_only_ = options_.read_only || !facts_.is_writable;
        if (store_->read_only_) {
            note("book_read_only", Severity::note);
        } else {
            store_->lock_ = InstanceLock::take(store_->path_);
            if (!store_->lock_) {
                store_->read_only_ = true;
                note("book_in_use", Severity::caution,
                     {{"by", InstanceLock::holder(store_->path_)}});
            } else if (facts_.has_leftover_journal) {
                note("book_recovered_after_crash", Severity::note);
            }
        }
        const bool frozen =
            store_->read_only_ && !facts_.is_folder_writable && !facts_.has_leftover_journal;
        store_->connection_ =
            std::make_unique<Connection>(store_->path_, frozen               ? Access::read_frozen
                                                        : store_->read_only_ ? Access::read
                                                                             : Access::write);
    }

    void connect_through_vfs() {
        store_->has_file_ = false;
        store_->read_only_ = options_.read_only;
        store_->connection_ =
            std::make_unique<Connection>(store_->path_,
                                         options_.read_only ? Access::read
                                         : options_.create  ? Access::create_or_write
                                                            : Access::write,
                                         options_.vfs);
        if (schema_of(*store_->connection_) == 0 && options_.create) {
            migrate(*store_->connection_, migrations(), SALTLOFT_VERSION,
                    options_.now.unix_seconds());
        }
    }

    void refuse_newer() {
        schema_ = schema_of(*store_->connection_);
        if (schema_ > newest_schema()) {
            refuse(ErrorCode::newer_book, written_by(*store_->connection_), store_->path_);
        }
        if (schema_ <= 0) {
            refuse(ErrorCode::damaged, "the book has no schema", store_->path_);
        }
        if (const auto difference = schema_difference(*store_->connection_); !difference.empty()) {
            refuse(ErrorCode::damaged, "the book's schema is not ours: " + difference,
                   store_->path_);
        }
    }

    void check() {
        if (!options_.check) {
            return;
        }
        const auto problems = integrity_problems(*store_->connection_, false);
        if (problems.empty()) {
            return;
        }
        // What is damaged is looked at and carried over, never written to.
        store_->read_only_ = true;
        note("book_damaged", Severity::stop, {{"problem", problems.front()}});
    }

    void set_journal() {
        if (facts_.is_on_network) {
            note("book_on_network_drive", Severity::caution);
        }
        if (!store_->read_only_) {
            // Shared memory, which WAL needs, does not work across a network.
            store_->connection_->run(facts_.is_on_network ? "PRAGMA journal_mode=DELETE"
                                                          : "PRAGMA journal_mode=WAL");
        }
    }

    void bring_up_to_date() {
        if (schema_ == newest_schema()) {
            return;
        }
        if (store_->read_only_) {
            refuse(ErrorCode::read_only,
                   "the book is of an older version and cannot be brought up to date now",
                   store_->path_);
        }
        std::string kept;
        if (store_->has_file_) {
            kept = store_->backup_folder_ + "/" +
                   std::filesystem::path(store_->path_).stem().string() + ".before-schema-" +
                   std::to_string(newest_schema()) + "-" + moment_for_name(options_.now) +
                   ".saltloft";
            back_up(*store_->connection_, kept);
        }
        migrate(*store_->connection_, migrations(), SALTLOFT_VERSION, options_.now.unix_seconds());
        note("book_migrated", Severity::note,
             {{"from", static_cast<double>(schema_)},
              {"to", static_cast<double>(newest_schema())},
              {"backup", kept}});
    }

    const StoreOptions& options_;
    FileFacts facts_;
    int schema_ = 0;
    std::unique_ptr<Store> store_{new Store}; // the constructor is private to Store and Opening
};

base::Result<std::unique_ptr<Store>> Store::open(const std::string& path,
                                                 const StoreOptions& options) {
    return guarded([&] { return Opening(path, options).run(); });
}

Store::~Store() = default;

void Store::require_writable() {
    if (read_only_) {
        refuse(ErrorCode::read_only, path_, path_);
    }
    require_file();
}

void Store::require_file() {
    if (has_file_ && connection_->file_is_gone()) {
        refuse(ErrorCode::not_found, "the file was moved or removed while it was open", path_);
    }
}

} // namespace core::store
