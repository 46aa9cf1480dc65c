// Backups and integrity: the part of services::Book that keeps the file itself.
#include "core/services/book.h"
#include "core/store/backup.h"
#include "core/store/integrity.h"
#include "core/store/store.h"

namespace core::services {

using base::Result;
using store::Connection;

namespace {

BookSummary summary_of(const store::BookFacts& facts) {
    return {.path = facts.path,
            .bytes = facts.bytes,
            .schema_version = facts.schema,
            .written_by = facts.written_by,
            .title = facts.title,
            .last_change = facts.last_change,
            .revision = facts.revision,
            .batches = facts.batches,
            .pieces = facts.pieces,
            .weighings = facts.weighings,
            .verified = facts.verified};
}

} // namespace

Result<IntegrityReport> Book::check_integrity(bool full) const {
    return store::guarded([&] {
        return IntegrityReport{full, store::integrity_problems(store_->connection(), full)};
    });
}

Result<BookSummary> Book::backup_to(const std::string& target) const {
    return store::guarded([&] { return summary_of(store::back_up(store_->connection(), target)); });
}

Result<std::optional<BookSummary>> Book::backup_if_due(units::Instant now) {
    return store::guarded([&]() -> std::optional<BookSummary> {
        const auto result = store::rotate_backups(store_->connection(), store_->path(),
                                                  store_->backup_folder(), now);
        return result.made ? std::optional(summary_of(*result.made)) : std::nullopt;
    });
}

Book::Rows<BookSummary> Book::backups() const {
    return store::guarded([&] {
        std::vector<BookSummary> list;
        for (const std::string& path :
             store::backup_files(store_->path(), store_->backup_folder())) {
            try {
                list.push_back(summary_of(store::look_at(path, false)));
            } catch (const std::exception&) {
                list.push_back({.path = path}); // listed, with nothing known of it
            }
        }
        return list;
    });
}

} // namespace core::services
