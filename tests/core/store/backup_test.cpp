// Backups that are verified, rotate, restore with a preview, and a salvage that keeps what it can.
#include "core/store/backup.h"

#include "core/actions/perform.h"
#include "core/store/climate.h"
#include "core/store/fault.h"
#include "core/store/integrity.h"
#include "core/store/restore.h"
#include "core/store/store.h"
#include "tests/support/book_dump.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <set>

using namespace core::store;
using core::base::ErrorCode;
using namespace saltloft::testing;

namespace fs = std::filesystem;

namespace {

class BackupTest : public ::testing::Test {
  protected:
    void SetUp() override { reopen(true); }
    void reopen(bool create = false) {
        store.reset();
        auto opened = Store::open(path, {.now = at_s(test_now_s), .create = create});
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        store = std::move(*opened);
    }
    core::model::PieceId start(const std::string& code) {
        const auto made = core::actions::perform(*store, start_batch(code), context());
        EXPECT_TRUE(made.has_value()) << made.error().detail;
        return made->id<core::model::PieceId>(core::model::EntryKind::piece);
    }
    /// So many weighings, entered one by one or as one round.
    void weigh(core::model::PieceId piece, int times, bool as_one = false) {
        core::actions::AddWeighings round;
        for (int i = 0; i < times; ++i) {
            round.weighings.push_back(weighing(piece, 900 - 0.1 * i, test_now_s + i));
            if (!as_one) {
                ASSERT_TRUE(
                    core::actions::perform(
                        *store, core::actions::AddWeighing{round.weighings.back()}, context())
                        .has_value());
            }
        }
        if (as_one) {
            ASSERT_TRUE(core::actions::perform(*store, round, context()).has_value());
        }
    }
    ErrorCode fault_of(const std::function<void()>& work) {
        const auto result = guarded(work);
        EXPECT_FALSE(result.has_value());
        return result.has_value() ? ErrorCode::io_failure : result.error().code;
    }
    TempFolder folder;
    std::string path = folder.file("cellar.saltloft");
    std::unique_ptr<Store> store;
};

} // namespace

TEST_F(BackupTest, IsAWholeVerifiedBookOfItsOwn) {
    weigh(start("B01"), 5);
    const std::string target = folder.file("away/copy.saltloft");
    const BookFacts facts = back_up(store->connection(), target);
    EXPECT_TRUE(facts.verified);
    EXPECT_EQ(facts.weighings, 7);
    EXPECT_EQ(facts.revision, 6);
    EXPECT_EQ(dump(target, DumpOf::all), dump(path, DumpOf::all));
    EXPECT_FALSE(fs::exists(target + "-wal"));
    EXPECT_FALSE(fs::exists(target + ".partial"));
    EXPECT_EQ(fault_of([&] { back_up(store->connection(), target); }), ErrorCode::conflict)
        << "an existing backup is never replaced";
}

TEST_F(BackupTest, OfADamagedBookIsNotPassedOffAsOne) {
    weigh(start("B01"), 800, true);
    store.reset();
    std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
    file.seekp(-5 * 4096, std::ios::end);
    file << std::string(4096, 'x');
    file.close();
    reopen();
    EXPECT_TRUE(store->is_read_only());
    const std::string target = folder.file("copy.saltloft");
    EXPECT_EQ(fault_of([&] { back_up(store->connection(), target); }), ErrorCode::damaged);
    EXPECT_FALSE(fs::exists(target));
    EXPECT_FALSE(fs::exists(target + ".partial"));
}

TEST_F(BackupTest, RotatesSevenDailyAndEightWeekly) {
    start("B01");
    const std::string backups = folder.file("backups");
    static constexpr std::int64_t day = 86400;
    for (int i = 0; i < 90; ++i) {
        const auto at = at_s(test_now_s + i * day);
        EXPECT_TRUE(rotate_backups(store->connection(), path, backups, at).made.has_value());
        EXPECT_FALSE(rotate_backups(store->connection(), path, backups, at).made.has_value())
            << "once a day";
    }
    std::set<std::string> names;
    for (const auto& entry : fs::directory_iterator(backups)) {
        names.insert(entry.path().filename().string());
    }
    // 2026-03-01 + 89 days is Friday, 2026-05-29; weeks begin on Monday.
    std::set<std::string> expected;
    for (const char* date : {"05-23", "05-24", "05-25", "05-26", "05-27", "05-28", "05-29"}) {
        expected.insert(std::string("cellar.daily-2026-") + date + ".saltloft");
    }
    for (const char* date :
         {"04-06", "04-13", "04-20", "04-27", "05-04", "05-11", "05-18", "05-25"}) {
        expected.insert(std::string("cellar.weekly-2026-") + date + ".saltloft");
    }
    EXPECT_EQ(names, expected);
    EXPECT_EQ(backup_files(path, backups).size(), 15U);
}

TEST_F(BackupTest, RestoreShowsWhatItWouldTakeAndKeepsTheReplacedFile) {
    const auto piece = start("B01");
    weigh(piece, 3);
    const std::string copy = folder.file("copy.saltloft");
    back_up(store->connection(), copy);
    const auto then = dump(path, DumpOf::all);
    weigh(piece, 4);
    const auto now = dump(path, DumpOf::all);

    const RestorePlan plan = plan_restore(path, copy);
    EXPECT_TRUE(plan.backup.verified);
    EXPECT_EQ(plan.backup.weighings, 5);
    EXPECT_EQ(plan.current.weighings, 9);
    EXPECT_EQ(plan.steps_lost, 4);

    EXPECT_EQ(fault_of([&] { restore(path, copy, at_s(test_now_s)); }), ErrorCode::locked)
        << "not under the feet of an open book";
    EXPECT_EQ(dump(path, DumpOf::all), now);
    store.reset();
    const std::string kept = restore(path, copy, at_s(test_now_s));
    EXPECT_EQ(dump(path, DumpOf::all), then);
    EXPECT_EQ(dump(kept, DumpOf::all), now) << "what was replaced is still there";
    reopen();
    EXPECT_FALSE(store->is_read_only());
}

TEST_F(BackupTest, RestoreRefusesWhatIsNoBook) {
    start("B01");
    store.reset();
    const auto before = dump(path, DumpOf::all);
    std::ofstream(folder.file("letter")) << "dear all";
    EXPECT_EQ(fault_of([&] { restore(path, folder.file("letter"), at_s(0)); }),
              ErrorCode::not_a_book);
    EXPECT_EQ(fault_of([&] { restore(path, folder.file("nothing"), at_s(0)); }),
              ErrorCode::not_found);
    EXPECT_EQ(dump(path, DumpOf::all), before);
}

TEST_F(BackupTest, SalvageOfASoundBookKeepsEverything) {
    weigh(start("B01"), 20);
    store.reset();
    const std::string target = folder.file("saved.saltloft");
    const auto tables = salvage(path, target, at_s(test_now_s));
    EXPECT_EQ(dump(target, DumpOf::all), dump(path, DumpOf::all));
    for (const SalvagedTable& table : tables) {
        EXPECT_EQ(table.lost, 0) << table.name;
    }
}

TEST_F(BackupTest, SalvageGoesRoundDamageAndTheNewBookIsSound) {
    const auto piece = start("B01");
    weigh(piece, 1500, true);
    store.reset();
    const std::int64_t weighings = std::stoll(query(path, "SELECT count(*) FROM weighing"));
    // Scribble over two of the weighings' own pages, found by asking the file itself.
    const auto pages = query(path, "SELECT group_concat(pageno) FROM (SELECT pageno FROM dbstat"
                                   " WHERE name = 'weighing' AND pagetype = 'leaf'"
                                   " ORDER BY pageno LIMIT 2 OFFSET 3)");
    for (const int page : {std::stoi(pages), std::stoi(pages.substr(pages.find(',') + 1))}) {
        std::fstream file(path, std::ios::in | std::ios::out | std::ios::binary);
        file.seekp((page - 1) * 4096L);
        file << std::string(4096, '\xff');
    }
    reopen();
    ASSERT_TRUE(store->is_read_only());
    store.reset();

    const std::string target = folder.file("saved.saltloft");
    const auto tables = salvage(path, target, at_s(test_now_s));
    const std::int64_t kept = std::stoll(query(target, "SELECT count(*) FROM weighing"));
    EXPECT_GT(kept, weighings / 2);
    EXPECT_LT(kept, weighings) << "two pages of it are gone for good";
    for (const SalvagedTable& table : tables) {
        if (table.name == "weighing") {
            EXPECT_EQ(table.kept, kept);
            EXPECT_EQ(table.kept + table.lost, weighings) << "and the loss is counted";
        }
    }
    EXPECT_EQ(query(target, "PRAGMA integrity_check"), "ok");
    EXPECT_EQ(query(target, "SELECT count(*) FROM pragma_foreign_key_check"), "0");
    path = target;
    reopen();
    EXPECT_FALSE(store->is_read_only());
}

TEST_F(BackupTest, SalvageGivesOrphansAStandIn) {
    weigh(start("B01"), 3);
    store.reset();
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM piece WHERE code = 'B01a'");
    const std::string target = folder.file("saved.saltloft");
    salvage(path, target, at_s(test_now_s));
    EXPECT_EQ(query(target, "SELECT count(*) FROM weighing"), query(path, "SELECT count(*) FROM"
                                                                          " weighing"));
    EXPECT_EQ(query(target, "SELECT count(*) FROM piece WHERE name = 'recovered'"), "1");
    EXPECT_EQ(query(target, "SELECT count(*) FROM pragma_foreign_key_check"), "0");
}

TEST_F(BackupTest, SalvageKeepsReadingsAndTheLogWhateverTheyLost) {
    weigh(start("B01"), 3);
    store.reset();
    run_sql(path, "PRAGMA foreign_keys=OFF;"
                  "INSERT INTO climate_reading VALUES (4, 1000, 1250, 7510, 9), (4, 5000, 1260,"
                  " 7490, 9);"
                  "INSERT INTO climate_bucket VALUES (4, 900, 0, 9, 9, 1, 1, 1, 1, 1, 1);"
                  "DELETE FROM step WHERE id = 2; DELETE FROM batch;");
    const std::string target = folder.file("saved.saltloft");
    salvage(path, target, at_s(test_now_s));
    EXPECT_EQ(query(target, "SELECT count(*) FROM climate_reading"), "2");
    EXPECT_EQ(query(target, "SELECT file_name FROM climate_import WHERE id = 9"), "recovered");
    EXPECT_EQ(query(target, "SELECT sum(temp_count) FROM climate_bucket WHERE width_s = 900"), "2");
    EXPECT_EQ(query(target, "SELECT why FROM step WHERE id = 2"), "recovered");
    EXPECT_EQ(query(target, "SELECT count(*) FROM weighing"), "5");
    path = target;
    reopen();
    EXPECT_FALSE(store->is_read_only());
    // And the roll-ups of an open book can be made anew.
    run_sql(path, "UPDATE climate_bucket SET temp_sum_centic = 1");
    EXPECT_FALSE(integrity_problems(store->connection(), true).empty());
    ASSERT_TRUE(
        store->change([](Connection& book) { rebuild_climate_roll_ups(book); }).has_value());
    EXPECT_TRUE(integrity_problems(store->connection(), true).empty());
}
