#include "core/services/keeping.h"

#include "core/services/book_summary.h"
#include "core/store/backup.h"
#include "core/store/climate.h"
#include "core/store/climate_check.h"
#include "core/store/fault.h"
#include "core/store/file_facts.h"
#include "core/store/integrity.h"
#include "core/store/interrupt.h"

#include <utility>

namespace core::services {

using base::Result;
using store::Access;
using store::Connection;

BookCheck with_roll_ups_told(IntegrityReport report) {
    BookCheck check{std::move(report)};
    for (const std::string& problem : check.report.problems) {
        check.roll_ups += problem.starts_with(store::roll_up_problem) ? 1U : 0U;
    }
    return check;
}

Result<BookCheck> check_book(const std::string& book, const std::stop_token& stop) {
    return store::guarded([&] {
        store::require_book_header(book, store::facts_of(book));
        Connection connection(book, Access::read);
        const store::Interruptible interruptible(connection, stop);
        return with_roll_ups_told({true, store::integrity_problems(connection, true)});
    });
}

base::Status rebuild_roll_ups(const std::string& book, const std::stop_token& stop) {
    return store::guarded([&] {
        store::require_book_header(book, store::facts_of(book));
        Connection connection(book, Access::write);
        const store::Interruptible interruptible(connection, stop);
        store::Transaction transaction(connection, store::Transaction::Kind::immediate);
        store::rebuild_climate_roll_ups(connection);
        transaction.commit();
    });
}

Result<std::vector<BookSummary>> backups_of(const std::string& book) {
    return store::guarded([&] {
        std::vector<BookSummary> list;
        for (const std::string& path :
             store::backup_files(book, store::folder_of(book) + "/backups")) {
            try {
                list.push_back(summary_of(store::look_at(path, false)));
            } catch (const std::exception&) {
                list.push_back({.path = path}); // listed, with nothing known of it
            }
        }
        return list;
    });
}

std::int64_t lost_rows(const SalvageReport& report) {
    std::int64_t rows = 0;
    for (const SalvageReport::Table& table : report.tables) {
        rows += table.lost;
    }
    return rows;
}

} // namespace core::services
