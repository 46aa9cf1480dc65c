#include "core/store/backup.h"

#include "core/store/codec.h"
#include "core/store/file_facts.h"
#include "core/store/integrity.h"
#include "core/store/migrations.h"

#include <SQLiteCpp/Backup.h>
#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>

namespace core::store {

namespace fs = std::filesystem;

namespace {

std::string text(Connection& book, std::string_view sql) {
    const auto statement = book.prepared(sql);
    return statement->executeStep() ? statement->getColumn(0).getString() : std::string();
}

BookFacts facts_in(Connection& book, const std::string& path, bool verify) {
    BookFacts facts;
    facts.path = path;
    facts.bytes = static_cast<std::int64_t>(fs::file_size(path));
    facts.schema = schema_of(book);
    facts.written_by = text(book, "SELECT written_by FROM about");
    facts.title = text(book, "SELECT value FROM preference WHERE key = 'title'");
    const auto last = book.integer("SELECT max(at_s) FROM step", 0);
    facts.revision = book.integer("SELECT max(id) FROM step");
    if (facts.revision > 0) {
        facts.last_change = Instant::from_unix_seconds(last);
    }
    facts.batches = book.integer("SELECT count(*) FROM batch");
    facts.pieces = book.integer("SELECT count(*) FROM piece");
    facts.weighings = book.integer("SELECT count(*) FROM weighing");
    facts.verified = verify && integrity_problems(book, true).empty();
    return facts;
}

void remove_with_journals(const std::string& path) {
    std::error_code ignored;
    for (const char* suffix : {"", "-wal", "-shm", "-journal"}) {
        fs::remove(path + suffix, ignored);
    }
}

/// Copies page by page into a file of its own; a writer may go on meanwhile.
void copy_pages(Connection& book, const std::string& target) {
    Connection copy(target, Access::create_or_write);
    SQLite::Backup backup(copy.database(), book.database());
    static constexpr int all_pages = -1;
    backup.executeStep(all_pages);
}

} // namespace

BookFacts look_at(const std::string& path, bool verify) {
    const FileFacts facts = facts_of(path);
    require_book_header(path, facts);
    const bool frozen = !facts.has_leftover_journal && !facts.is_folder_writable;
    Connection book(path, frozen ? Access::read_frozen : Access::read);
    if (schema_of(book) > newest_schema()) {
        refuse(base::ErrorCode::newer_book, text(book, "SELECT written_by FROM about"), path);
    }
    return facts_in(book, path, verify);
}

BookFacts back_up(Connection& book, const std::string& target) {
    if (fs::exists(target)) {
        refuse(base::ErrorCode::conflict, target, target);
    }
    fs::create_directories(folder_of(target));
    const std::string partial = target + ".partial";
    remove_with_journals(partial);
    try {
        copy_pages(book, partial);
        BookFacts facts;
        {
            Connection copy(partial, Access::write);
            copy.run("PRAGMA journal_mode=DELETE"); // one file, which can be carried anywhere
            facts = facts_in(copy, partial, true);
        }
        if (!facts.verified) {
            refuse(base::ErrorCode::damaged, "the copy does not pass its check", target);
        }
        sync_to_disk(partial);
        rename_new(partial, target);
        facts.path = target;
        return facts;
    } catch (...) {
        remove_with_journals(partial);
        throw;
    }
}

std::string date_for_name(Instant at) {
    static constexpr std::int64_t day = 86400;
    const std::int64_t seconds = at.unix_seconds();
    const std::int64_t days = seconds >= 0 ? seconds / day : (seconds - day + 1) / day;
    const auto date = Day::from_days_since_epoch(static_cast<std::int32_t>(days)).date();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::string moment_for_name(Instant at) {
    const std::int64_t second = ((at.unix_seconds() % 86400) + 86400) % 86400;
    return fmt::format("{}T{:02}{:02}{:02}Z", date_for_name(at), second / 3600, second / 60 % 60,
                       second % 60);
}

namespace {

constexpr std::size_t daily_kept = 7;
constexpr std::size_t weekly_kept = 8;

std::string stem_of(const std::string& book_path) {
    return fs::path(book_path).stem().string();
}

/// Backups of one rhythm, newest first: their names sort by date.
std::vector<fs::path> files_of(const std::string& book_path, const std::string& folder,
                               const std::string& rhythm) {
    const std::string prefix = stem_of(book_path) + "." + rhythm;
    std::vector<fs::path> files;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error)) {
        const std::string name = entry.path().filename().string();
        if (name.rfind(prefix, 0) == 0 && entry.path().extension() == ".saltloft") {
            files.push_back(entry.path());
        }
    }
    std::sort(files.rbegin(), files.rend());
    return files;
}

int drop_beyond(const std::vector<fs::path>& files, std::size_t kept) {
    int dropped = 0;
    for (std::size_t i = kept; i < files.size(); ++i) {
        std::error_code error;
        dropped += fs::remove(files[i], error) ? 1 : 0;
    }
    return dropped;
}

/// The Monday of the week of `at` (UTC), as a moment.
Instant week_start(Instant at) {
    static constexpr std::int64_t day = 86400;
    static constexpr std::int64_t epoch_weekday = 3; // 1970-01-01 was a Thursday; Monday is 0
    const std::int64_t days = at.unix_seconds() / day;
    return Instant::from_unix_seconds((days - (days + epoch_weekday) % 7) * day);
}

} // namespace

RotationResult rotate_backups(Connection& book, const std::string& book_path,
                              const std::string& folder, Instant now) {
    RotationResult result;
    const std::string base = folder + "/" + stem_of(book_path);
    const std::string daily = base + ".daily-" + date_for_name(now) + ".saltloft";
    const std::string weekly = base + ".weekly-" + date_for_name(week_start(now)) + ".saltloft";
    if (!fs::exists(daily)) {
        result.made = back_up(book, daily);
        if (!fs::exists(weekly)) {
            back_up(book, weekly);
        }
    }
    // Old ones go only after a new one is there and known to be good.
    result.dropped = drop_beyond(files_of(book_path, folder, "daily-"), daily_kept) +
                     drop_beyond(files_of(book_path, folder, "weekly-"), weekly_kept);
    return result;
}

std::vector<std::string> backup_files(const std::string& book_path, const std::string& folder) {
    std::vector<fs::path> files = files_of(book_path, folder, "");
    std::stable_sort(files.begin(), files.end(), [](const fs::path& a, const fs::path& b) {
        std::error_code error;
        return fs::last_write_time(a, error) > fs::last_write_time(b, error);
    });
    std::vector<std::string> paths;
    paths.reserve(files.size());
    for (const fs::path& file : files) {
        paths.push_back(file.string());
    }
    return paths;
}

} // namespace core::store
