// Opening books that are not there, not ours, broken, locked, read-only, gone.
#include "core/store/store.h"

#include "core/store/migrations.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <sys/wait.h>
#include <unistd.h>

using namespace core::store;
using core::base::ErrorCode;
using saltloft::testing::at_s;
using saltloft::testing::run_sql;
using saltloft::testing::TempFolder;

namespace fs = std::filesystem;

namespace store_test {
namespace {

core::base::Result<std::unique_ptr<Store>> open(const std::string& path, bool create = false) {
    return Store::open(path, {.now = at_s(saltloft::testing::test_now_s), .create = create});
}

std::string bytes_of(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void write_bytes(const std::string& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << bytes;
}

/// The fault of opening `path`, checking that the attempt changed neither it nor its folder.
ErrorCode refused(const std::string& path) {
    const std::string before = fs::is_regular_file(path) ? bytes_of(path) : "";
    const auto result = open(path);
    EXPECT_FALSE(result.has_value()) << path;
    if (fs::is_regular_file(path)) {
        EXPECT_EQ(bytes_of(path), before) << "a refused file is not changed";
    }
    EXPECT_FALSE(fs::exists(path + "-wal")) << "and nothing is left beside it";
    return result.has_value() ? ErrorCode::io_failure : result.error().code;
}

std::string new_book(const TempFolder& folder) {
    std::string path = folder.file("book.saltloft");
    const auto made = open(path, true);
    EXPECT_TRUE(made.has_value()) << made.error().detail;
    return path;
}

std::vector<std::string> codes(const Store& store) {
    std::vector<std::string> list;
    for (const auto& finding : store.opening_findings()) {
        list.push_back(finding.code);
    }
    return list;
}

using Codes = std::vector<std::string>;

} // namespace

TEST(StoreOpening, TurnsAwayWhatIsNoBookAndNeverChangesIt) {
    const TempFolder folder;
    EXPECT_EQ(refused(folder.file("nothing")), ErrorCode::not_found);
    EXPECT_FALSE(fs::exists(folder.file("nothing")));
    EXPECT_EQ(refused(folder.path().string()), ErrorCode::is_a_directory);

    write_bytes(folder.file("empty"), "");
    EXPECT_EQ(refused(folder.file("empty")), ErrorCode::not_a_book);
    write_bytes(folder.file("short"), std::string("SQLite format 3\0", 16));
    EXPECT_EQ(refused(folder.file("short")), ErrorCode::not_a_book);
    write_bytes(folder.file("picture"), "\x89PNG\r\n" + std::string(5000, 'x'));
    EXPECT_EQ(refused(folder.file("picture")), ErrorCode::not_a_book);

    run_sql(folder.file("foreign"), "CREATE TABLE t (a); INSERT INTO t VALUES (1)");
    EXPECT_EQ(refused(folder.file("foreign")), ErrorCode::not_a_book);
}

TEST(StoreOpening, RefusesABookWhoseSchemaIsNotOurs) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const std::string sound = bytes_of(path);
    for (const char* trap :
         {"CREATE TRIGGER trap AFTER INSERT ON weighing BEGIN DELETE FROM piece; END",
          "CREATE VIEW batch_copy AS SELECT * FROM batch",
          "CREATE INDEX slow ON batch (upper(name))", "DROP INDEX weighing_amended_once",
          "ALTER TABLE piece ADD COLUMN extra TEXT", "DROP TABLE outcome",
          "DROP TABLE preference; CREATE VIEW preference AS SELECT 'a' AS key, 'b' AS value"}) {
        write_bytes(path, sound);
        run_sql(path, trap);
        const auto result = open(path);
        ASSERT_FALSE(result.has_value()) << trap;
        EXPECT_EQ(result.error().code, ErrorCode::damaged) << trap;
        EXPECT_NE(result.error().detail.find("schema"), std::string::npos) << trap;
    }
}

TEST(StoreOpening, ATruncatedOrScribbledBookOpensForReadingOnlyOrIsRefused) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const std::string sound = bytes_of(path);
    ASSERT_GT(sound.size(), 40000U);
    for (const double part : {0.9, 0.5, 0.1}) {
        write_bytes(path, sound.substr(0, static_cast<std::size_t>(
                                              part * static_cast<double>(sound.size()))));
        const auto result = open(path);
        if (result.has_value()) {
            EXPECT_TRUE((*result)->is_read_only());
            EXPECT_EQ(codes(**result), Codes{"book_damaged"});
        } else {
            EXPECT_EQ(result.error().code, ErrorCode::damaged) << result.error().detail;
        }
    }
    // A page in the middle overwritten: the schema still reads, the content does not.
    std::string scribbled = sound;
    scribbled.replace(scribbled.size() - 3 * 4096, 4096, std::string(4096, '\x5a'));
    write_bytes(path, scribbled);
    const auto result = open(path);
    ASSERT_TRUE(result.has_value()) << result.error().detail;
    EXPECT_TRUE((*result)->is_read_only());
    EXPECT_EQ(codes(**result), Codes{"book_damaged"});
    EXPECT_EQ((*result)->change([](Connection&) {}).error().code, ErrorCode::read_only);
}

TEST(StoreOpening, ASecondInstanceReadsAndSaysSo) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const auto writer = open(path);
    ASSERT_TRUE(writer.has_value());
    EXPECT_FALSE((*writer)->is_read_only());
    const auto reader = open(path);
    ASSERT_TRUE(reader.has_value());
    EXPECT_TRUE((*reader)->is_read_only());
    EXPECT_EQ(codes(**reader), Codes{"book_in_use"});
    const auto by = std::get<std::string>((*reader)->opening_findings().at(0).values.at("by"));
    EXPECT_NE(by.find(std::to_string(getpid())), std::string::npos) << by;
    EXPECT_EQ((*reader)->change([](Connection&) {}).error().code, ErrorCode::read_only);
    // It sees what the writer writes.
    ASSERT_TRUE(
        (*writer)
            ->change([](Connection& book) { book.run("INSERT INTO preference VALUES ('k', 'v')"); })
            .has_value());
    const auto seen = (*reader)->read(
        [](Connection& book) { return book.integer("SELECT count(*) FROM preference"); });
    EXPECT_EQ(seen.value_or(-1), 1);
}

TEST(StoreOpening, TheWriterLockGoesWithAProcessThatDies) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const pid_t child = fork();
    if (child == 0) {
        const auto store = open(path);
        _exit(store.has_value() && !(*store)->is_read_only() ? 0 : 1); // without closing
    }
    int status = 0;
    ASSERT_EQ(waitpid(child, &status, 0), child);
    ASSERT_EQ(status, 0);
    const auto after = open(path);
    ASSERT_TRUE(after.has_value());
    EXPECT_FALSE((*after)->is_read_only());
}

TEST(StoreOpening, ABookOnAReadOnlyPlaceIsReadable) {
    if (geteuid() == 0) {
        // Root may write anywhere, so permission is tried as another user.
        const TempFolder folder;
        const std::string path = new_book(folder);
        fs::permissions(folder.path(), fs::perms(0555));
        fs::permissions(path, fs::perms(0444));
        const pid_t child = fork();
        if (child == 0) {
            static constexpr uid_t nobody = 65534;
            if (setuid(nobody) != 0) {
                _exit(99);
            }
            const auto store = open(path);
            const bool good = store.has_value() && (*store)->is_read_only() &&
                              codes(**store) == Codes{"book_read_only"} &&
                              (*store)->read([](Connection& book) {
                                          return book.integer("SELECT count(*) FROM about");
                                      })
                                      .value_or(0) == 1;
            _exit(good ? 0 : 1);
        }
        int status = 0;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        EXPECT_EQ(status, 0);
        // And one that may not even be read.
        fs::permissions(path, fs::perms::none);
        const pid_t second = fork();
        if (second == 0) {
            if (setuid(65534) != 0) {
                _exit(99);
            }
            const auto store = open(path);
            _exit(!store.has_value() && store.error().code == ErrorCode::no_permission ? 0 : 1);
        }
        ASSERT_EQ(waitpid(second, &status, 0), second);
        EXPECT_EQ(status, 0);
    } else {
        const TempFolder folder;
        const std::string path = new_book(folder);
        fs::permissions(path, fs::perms(0444));
        const auto store = open(path);
        ASSERT_TRUE(store.has_value());
        EXPECT_EQ(codes(**store), Codes{"book_read_only"});
        fs::permissions(path, fs::perms::none);
        EXPECT_EQ(open(path).error().code, ErrorCode::no_permission);
    }
}

TEST(StoreOpening, AFileMovedAwayWhileOpenTakesNoMoreEntries) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const auto store = open(path);
    ASSERT_TRUE(store.has_value());
    const auto write = [&] {
        return (*store)->change([](Connection& book) {
            book.run("INSERT INTO preference VALUES (hex(randomblob(8)), '')");
        });
    };
    ASSERT_TRUE(write().has_value());
    fs::rename(path, folder.file("elsewhere"));
    const auto lost = write();
    ASSERT_FALSE(lost.has_value()) << "it would be written to a file nobody looks at";
    EXPECT_EQ(lost.error().code, ErrorCode::not_found);
    fs::rename(folder.file("elsewhere"), path);
    EXPECT_TRUE(write().has_value()) << "put back, all goes on";
    fs::remove(path);
    EXPECT_EQ(write().error().code, ErrorCode::not_found);
}

TEST(StoreOpening, ALongTransactionElsewhereIsLockedNotAHang) {
    const TempFolder folder;
    const std::string path = new_book(folder);
    const auto store = open(path);
    ASSERT_TRUE(store.has_value());
    Connection other(path, Access::write);
    other.run("BEGIN IMMEDIATE");
    const auto result =
        (*store)->change([](Connection& book) { book.run("DELETE FROM preference"); });
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, ErrorCode::locked);
    other.run("ROLLBACK");
    EXPECT_TRUE(
        (*store)->change([](Connection& book) { book.run("DELETE FROM preference"); }).has_value());
}

TEST(StoreOpening, CreatingNeverReplacesAFile) {
    const TempFolder folder;
    write_bytes(folder.file("letter"), "dear all");
    const auto made = open(folder.file("letter"), true);
    ASSERT_FALSE(made.has_value());
    EXPECT_EQ(made.error().code, ErrorCode::conflict);
    EXPECT_EQ(bytes_of(folder.file("letter")), "dear all");
    EXPECT_EQ(open(folder.file("no/such/folder/book"), true).error().code, ErrorCode::not_found);
}

TEST(StoreConnection, IsSetUpAsEveryConnectionOfOurs) {
    const TempFolder folder;
    const auto store = open(new_book(folder));
    ASSERT_TRUE(store.has_value());
    Connection& book = (*store)->connection();
    EXPECT_EQ(book.integer("PRAGMA foreign_keys"), 1);
    EXPECT_EQ(book.integer("PRAGMA synchronous"), 3) << "EXTRA: FULL and folder syncs";
    EXPECT_EQ(book.integer("PRAGMA trusted_schema"), 0);
    EXPECT_EQ(book.integer("SELECT journal_mode = 'wal' FROM pragma_journal_mode"), 1);
    EXPECT_EQ(book.integer("PRAGMA cell_size_check"), 1);
    // Defensive mode: the schema cannot be written to as a table.
    book.run("PRAGMA writable_schema=ON");
    EXPECT_ANY_THROW(book.run("UPDATE sqlite_schema SET sql = ''"));
    // Strict tables: a text is no weight.
    EXPECT_ANY_THROW(book.run("INSERT INTO outcome VALUES (1, 'much', 0, '')"));
}

} // namespace store_test
