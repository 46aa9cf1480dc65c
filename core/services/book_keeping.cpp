// Backups and integrity: the part of services::Book that keeps the file itself.
#include "core/services/book.h"
#include "core/services/book_summary.h"
#include "core/store/backup.h"
#include "core/store/climate.h"
#include "core/store/integrity.h"
#include "core/store/restore.h"
#include "core/store/store.h"

namespace core::services {

using base::Result;
using store::Connection;

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

Result<IntegrityReport> Book::check_integrity(bool full) const {
    return store::guarded([&] {
        return IntegrityReport{full, store::integrity_problems(store_->connection(), full)};
    });
}

base::Status Book::rebuild_roll_ups() {
    return store_->change([](Connection& book) { store::rebuild_climate_roll_ups(book); });
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

Result<RestorePreview> preview_restore(const std::string& book, const std::string& backup) {
    return store::guarded([&] {
        const auto plan = store::plan_restore(book, backup);
        return RestorePreview{summary_of(plan.backup), summary_of(plan.current), plan.steps_lost};
    });
}

Result<std::string> restore(const std::string& book, const std::string& backup,
                            units::Instant now) {
    return store::guarded([&] { return store::restore(book, backup, now); });
}

Result<SalvageReport> salvage(const std::string& damaged, const std::string& target,
                              units::Instant now) {
    return store::guarded([&] {
        SalvageReport report;
        for (const store::SalvagedTable& table : store::salvage(damaged, target, now)) {
            report.tables.push_back({table.name, table.kept, table.lost});
        }
        return report;
    });
}

} // namespace core::services
