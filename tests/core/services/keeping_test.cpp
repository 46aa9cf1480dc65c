// Looking after a book's file from outside: checks, mended roll-ups, the list of backups.
#include "core/services/keeping.h"

#include "core/services/book.h"
#include "tests/support/book_dump.h"
#include "tests/support/climate_log.h"
#include "tests/support/sample_entries.h"
#include "tests/support/take.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

using namespace core;
using base::ErrorCode;
using core::services::Book;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::run_sql;
using saltloft::testing::take;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;

namespace {

/// A book with a batch and a day of climate.
class Keeping : public ::testing::Test {
  protected:
    Keeping() : book(take(Book::create(path, {.now = at_s(test_now_s)}))) {
        does(actions::Command{saltloft::testing::start_batch("B01")});
        model::Chamber chamber;
        chamber.name = "Test cabinet";
        model::Sensor sensor;
        sensor.name = "Test probe";
        sensor.chamber =
            does(actions::AddChamber{chamber}).id<model::ChamberId>(model::EntryKind::chamber);
        const auto probe =
            does(actions::AddSensor{sensor}).id<model::SensorId>(model::EntryKind::sensor);
        std::vector<model::ClimateReading> readings;
        for (int i = 0; i < 96; ++i) {
            readings.push_back(
                {at_s(test_now_s - 86400 + i * 900), units::Temperature::celsius(12), {}});
        }
        saltloft::testing::keep_log(book, probe, readings);
    }
    actions::Performed does(const actions::Command& command) {
        return take(book.perform(command, context()));
    }
    void falsify_roll_ups() const {
        run_sql(path, "UPDATE climate_bucket SET temp_max_centic = temp_max_centic + 1 "
                      "WHERE width_s = 86400");
    }
    static std::stop_token stopped() {
        std::stop_source source;
        source.request_stop();
        return source.get_token();
    }

    TempFolder folder;
    std::string path = folder.file("keep.saltloft");
    Book book;
};

} // namespace

TEST_F(Keeping, AWholeBookIsSoundAndLeftAsItIs) {
    const auto before = saltloft::testing::dump(path, saltloft::testing::DumpOf::all);
    const auto check = take(services::check_book(path));
    EXPECT_TRUE(check.report.full);
    EXPECT_TRUE(check.report.sound());
    EXPECT_EQ(check.roll_ups, 0U);
    EXPECT_FALSE(check.only_roll_ups()) << "nothing to mend";
    EXPECT_EQ(saltloft::testing::dump(path, saltloft::testing::DumpOf::all), before);
}

TEST_F(Keeping, FalseRollUpsAreToldApartAndMended) {
    const auto before = saltloft::testing::dump(path, saltloft::testing::DumpOf::all);
    falsify_roll_ups();
    const auto check = take(services::check_book(path));
    EXPECT_GT(check.roll_ups, 0U);
    EXPECT_EQ(check.roll_ups, check.report.problems.size());
    EXPECT_TRUE(check.only_roll_ups());
    const auto mended = services::rebuild_roll_ups(path);
    ASSERT_TRUE(mended.has_value()) << mended.error().detail;
    EXPECT_TRUE(take(services::check_book(path)).report.sound());
    EXPECT_EQ(saltloft::testing::dump(path, saltloft::testing::DumpOf::all), before);
}

TEST_F(Keeping, AProblemOfAnotherKindIsNotMendedByRollUps) {
    falsify_roll_ups();
    run_sql(path, "PRAGMA foreign_keys=OFF; DELETE FROM batch");
    const auto check = take(services::check_book(path));
    EXPECT_FALSE(check.report.sound());
    EXPECT_EQ(check.roll_ups, 0U) << "climate is only walked where the rest is sound";
    EXPECT_FALSE(check.only_roll_ups());
}

TEST(BookCheck, CountsTheRollUpsAmongTheProblems) {
    const auto check = services::with_roll_ups_told(
        {true,
         {"climate roll-up of sensor 1", "row 3 is no climate roll-up of", "climate roll-up x"}});
    EXPECT_EQ(check.roll_ups, 2U);
    EXPECT_EQ(check.report.problems.size(), 3U);
    EXPECT_FALSE(check.only_roll_ups());
}

TEST_F(Keeping, CancelledWorkSaysSoAndChangesNothing) {
    falsify_roll_ups();
    const auto before = saltloft::testing::dump(path, saltloft::testing::DumpOf::all);
    EXPECT_EQ(services::check_book(path, stopped()).error().code, ErrorCode::cancelled);
    EXPECT_EQ(services::rebuild_roll_ups(path, stopped()).error().code, ErrorCode::cancelled);
    EXPECT_EQ(saltloft::testing::dump(path, saltloft::testing::DumpOf::all), before);
}

TEST_F(Keeping, WhatIsNoBookFailsAsOpeningItDoes) {
    const std::string missing = folder.file("missing.saltloft");
    const std::string foreign = folder.file("foreign.saltloft");
    std::ofstream(foreign) << std::string(8192, 'x');
    for (const std::string& bad : {missing, foreign, folder.path().string()}) {
        const auto opened = Book::open(bad, {.now = at_s(test_now_s)});
        ASSERT_FALSE(opened.has_value()) << bad;
        EXPECT_EQ(services::check_book(bad).error().code, opened.error().code) << bad;
        EXPECT_EQ(services::rebuild_roll_ups(bad).error().code, opened.error().code) << bad;
    }
    const std::string target = folder.file("target.saltloft");
    EXPECT_EQ(services::salvage(missing, target, at_s(test_now_s)).error().code,
              ErrorCode::not_found);
    EXPECT_FALSE(std::filesystem::exists(target));
    EXPECT_FALSE(std::filesystem::exists(missing)) << "a check makes no book";
}

TEST_F(Keeping, BackupsAreListedNewestFirstAlsoWithoutTheBook) {
    EXPECT_TRUE(take(services::backups_of(path)).empty());
    ASSERT_TRUE(take(book.backup_if_due(at_s(test_now_s))).has_value());
    does(saltloft::testing::start_batch("B02"));
    ASSERT_TRUE(take(book.backup_if_due(at_s(test_now_s + 86400))).has_value());
    const auto list = take(services::backups_of(path));
    ASSERT_GE(list.size(), 2U);
    EXPECT_EQ(list.front().batches, 2);
    EXPECT_EQ(list.back().batches, 1);
    EXPECT_FALSE(list.front().written_by.empty());
    EXPECT_GT(list.front().bytes, 0);
    const auto alone = folder.file("nowhere") + "/keep.saltloft";
    EXPECT_TRUE(take(services::backups_of(alone)).empty()) << "no folder is no backups";
    { const Book closed = std::move(book); }
    std::filesystem::remove(path);
    EXPECT_EQ(take(services::backups_of(path)).size(), list.size());
}

TEST_F(Keeping, ABackupThatCannotBeReadIsListedByItsPathAlone) {
    ASSERT_TRUE(take(book.backup_if_due(at_s(test_now_s))).has_value());
    const auto before = take(services::backups_of(path));
    ASSERT_FALSE(before.empty());
    const std::string torn = before.back().path;
    std::ofstream(torn, std::ios::trunc) << "torn";
    const auto list = take(services::backups_of(path));
    ASSERT_EQ(list.size(), before.size()) << "listed all the same";
    for (const auto& backup : list) {
        EXPECT_EQ(backup.batches, backup.path == torn ? 0 : 1) << backup.path;
        EXPECT_EQ(backup.last_change.has_value(), backup.path != torn) << backup.path;
    }
    EXPECT_EQ(std::count_if(list.begin(), list.end(),
                            [&](const auto& backup) { return backup.path == torn; }),
              1);
}

TEST(LostRows, AreAddedUpOverTheTables) {
    EXPECT_EQ(services::lost_rows({}), 0);
    services::SalvageReport report;
    report.tables = {{"piece", 10, 2}, {"weighing", 90, 5}, {"batch", 3, 0}};
    EXPECT_EQ(services::lost_rows(report), 7);
}
