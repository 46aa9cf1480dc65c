// Climate readings and their roll-ups over a real file.
#include "core/store/climate.h"

#include "core/actions/perform.h"
#include "core/store/action_log.h"
#include "core/store/store.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace core;
using model::ClimateLevel;
using model::ClimateReading;
using saltloft::testing::at_s;
using saltloft::testing::context;
using saltloft::testing::TempFolder;
using saltloft::testing::test_now_s;
using store::Connection;

namespace {

ClimateReading reading(std::int64_t at, double celsius, std::optional<double> percent = 75.0) {
    return {at_s(at), units::Temperature::celsius(celsius),
            percent ? std::optional(units::RelativeHumidity::percent(*percent)) : std::nullopt};
}

class ClimateStore : public ::testing::Test {
  protected:
    void SetUp() override {
        auto opened = store::Store::open(folder.file("book.saltloft"),
                                         {.now = at_s(test_now_s), .create = true});
        ASSERT_TRUE(opened.has_value()) << opened.error().detail;
        book = std::move(*opened);
        model::Chamber chamber;
        chamber.name = "cabinet";
        const auto added = actions::perform(*book, actions::AddChamber{chamber}, context());
        ASSERT_TRUE(added.has_value());
        model::Sensor probe;
        probe.chamber = added->id<model::ChamberId>(model::EntryKind::chamber);
        probe.name = "probe";
        const auto with_sensor = actions::perform(*book, actions::AddSensor{probe}, context());
        ASSERT_TRUE(with_sensor.has_value());
        sensor = with_sensor->id<model::SensorId>(model::EntryKind::sensor);
    }

    /// One log in one chunk, ended.
    model::ClimateImportId add(const std::vector<ClimateReading>& readings) {
        const auto id = book->change([&](Connection& c) {
            model::ClimateImport log{.sensor = sensor, .made_at = at_s(test_now_s)};
            log.file_name = "log.csv";
            const auto import_id = store::begin_climate_import(c, log, "{}");
            store::append_climate(c, import_id, readings);
            store::end_climate_import(c, import_id, {.at = at_s(test_now_s)});
            return import_id;
        });
        EXPECT_TRUE(id.has_value()) << id.error().detail;
        return id.value_or(model::ClimateImportId{});
    }

    std::vector<model::ClimateBucket> buckets(ClimateLevel level, std::int64_t from = -1'000'000,
                                              std::int64_t to = 4'000'000) {
        return *book->read([&](Connection& c) {
            return store::climate_buckets(c, sensor, level, at_s(from), at_s(to));
        });
    }
    std::vector<std::string> problems() {
        return *book->read([](Connection& c) { return store::climate_problems(c); });
    }
    std::vector<model::ClimateImport> imports() {
        return *book->read([](Connection& c) { return store::climate_imports(c); });
    }
    void run(const std::string& sql) {
        ASSERT_TRUE(book->change([&](Connection& c) { c.run(sql); }).has_value());
    }

    TempFolder folder;
    std::unique_ptr<store::Store> book;
    model::SensorId sensor;
};

} // namespace

TEST_F(ClimateStore, AppendsReadingsAndRollsThemUp) {
    add({reading(0, 12, 70), reading(60, 13, std::nullopt), reading(3600, 20, 80)});
    const auto raw = buckets(ClimateLevel::reading);
    ASSERT_EQ(raw.size(), 3U);
    EXPECT_FALSE(raw[1].humidity.has_value());
    const auto quarter = buckets(ClimateLevel::quarter_hour);
    ASSERT_EQ(quarter.size(), 2U);
    EXPECT_NEAR(quarter[0].temperature->mean.in_celsius(), 12.5, 1e-9);
    EXPECT_EQ(quarter[0].humidity->count, 1);
    const auto day = buckets(ClimateLevel::day);
    ASSERT_EQ(day.size(), 1U);
    EXPECT_NEAR(day[0].temperature->mean.in_celsius(), 15, 1e-9);
    EXPECT_NEAR(day[0].temperature->high.in_celsius(), 20, 1e-9);
    EXPECT_EQ(day[0].temperature->count, 3);
    EXPECT_TRUE(problems().empty());
}

TEST_F(ClimateStore, ReImportAddsNothingAndAContradictionKeepsTheOlderReading) {
    const std::vector<ClimateReading> log{reading(0, 12), reading(60, 13), reading(120, 14)};
    add(log);
    const auto before = buckets(ClimateLevel::hour);
    add(log);
    EXPECT_EQ(buckets(ClimateLevel::hour), before);
    EXPECT_EQ(imports().size(), 1U); // nothing new, so no second import to take back
    add({reading(60, 13), reading(120, 19), reading(180, 15), reading(180, 16)});
    EXPECT_EQ(imports()[0].added, 1);
    EXPECT_EQ(imports()[0].known, 3);
    EXPECT_EQ(imports()[0].conflicts, 2); // of two lines of one moment the first stays
    EXPECT_NEAR(buckets(ClimateLevel::day)[0].temperature->high.in_celsius(), 15, 1e-9);
    EXPECT_TRUE(problems().empty());
}

TEST_F(ClimateStore, OneUndoTakesALogBackAndCannotBeRedone) {
    add({reading(0, 12), reading(600, 12)});
    const auto before = buckets(ClimateLevel::quarter_hour);
    add({reading(300, 40), reading(90'000, 10)});
    EXPECT_EQ(buckets(ClimateLevel::day).size(), 2U);
    const auto undone = actions::undo(*book, context());
    ASSERT_TRUE(undone.has_value()) << undone.error().detail;
    EXPECT_EQ(undone->verb, "import_climate");
    EXPECT_EQ(undone->subject, "log.csv");
    EXPECT_EQ(buckets(ClimateLevel::quarter_hour), before);
    EXPECT_EQ(buckets(ClimateLevel::day).size(), 1U);
    EXPECT_TRUE(imports()[0].undone);
    EXPECT_TRUE(problems().empty());
    const auto redone = actions::redo(*book, context());
    ASSERT_FALSE(redone.has_value());
    EXPECT_EQ(redone.error().code, base::ErrorCode::nothing_to_redo);
    // The next undo is the log before it, then the sensor.
    ASSERT_TRUE(actions::undo(*book, context()).has_value());
    EXPECT_TRUE(buckets(ClimateLevel::reading).empty());
    EXPECT_TRUE(buckets(ClimateLevel::six_hours).empty());
}

TEST_F(ClimateStore, AnImportIsTakenBackOnceAndEndsOnce) {
    const auto id = add({reading(0, 12)});
    const auto back = [&] {
        return book->change([&](Connection& c) { return store::take_back_climate_import(c, id); });
    };
    EXPECT_EQ(back().value_or(-1), 1);
    const auto again = back();
    ASSERT_FALSE(again.has_value());
    EXPECT_EQ(again.error().code, base::ErrorCode::not_allowed);
    const auto late = book->change([&](Connection& c) {
        return store::append_climate(c, id, std::vector<ClimateReading>{reading(5, 1)});
    });
    EXPECT_EQ(late.error().code, base::ErrorCode::not_allowed);
}

TEST_F(ClimateStore, ARolledBackChunkLeavesNothing) {
    const auto failed = book->change([&](Connection& c) -> int {
        model::ClimateImport log{.sensor = sensor, .made_at = at_s(test_now_s)};
        const auto id = store::begin_climate_import(c, log, "{}");
        store::append_climate(c, id, std::vector<ClimateReading>{reading(0, 12)});
        store::refuse(base::ErrorCode::cancelled);
    });
    ASSERT_FALSE(failed.has_value());
    EXPECT_TRUE(buckets(ClimateLevel::reading).empty());
    EXPECT_TRUE(buckets(ClimateLevel::day).empty());
    EXPECT_TRUE(imports().empty());
}

TEST_F(ClimateStore, ASensorThatIsNotThereIsRefused) {
    const auto refused = book->change([&](Connection& c) {
        model::ClimateImport log{.sensor = model::SensorId::from_row(99),
                                 .made_at = at_s(test_now_s)};
        return store::begin_climate_import(c, log, "{}");
    });
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, base::ErrorCode::no_such_entry);
}

TEST_F(ClimateStore, TheCheckFindsWhatDoesNotAgree) {
    add({reading(0, 12), reading(60, 13), reading(90'000, 14)});
    EXPECT_TRUE(problems().empty());
    run("UPDATE climate_bucket SET temp_max_centic = 1301 WHERE width_s = 3600 AND start_s = 0");
    ASSERT_EQ(problems().size(), 1U);
    EXPECT_NE(problems()[0].find("width 3600 s, start 0"), std::string::npos) << problems()[0];
    run("UPDATE climate_bucket SET temp_max_centic = 1300 WHERE width_s = 3600 AND start_s = 0");
    run("DELETE FROM climate_bucket WHERE width_s = 86400 AND start_s = 86400");
    ASSERT_EQ(problems().size(), 1U);
    EXPECT_NE(problems()[0].find("is missing"), std::string::npos);
    run("DELETE FROM climate_reading WHERE at_s = 90000");
    EXPECT_EQ(problems().size(), 3U); // the three other widths have buckets without readings
    run("UPDATE climate_reading SET import_id = 77");
    EXPECT_EQ(problems().size(), 4U);
}

TEST_F(ClimateStore, TellsTheExtentAndCountWithoutReadingAll) {
    const auto extent = [&] {
        return *book->read([&](Connection& c) { return store::climate_extent(c, sensor); });
    };
    EXPECT_FALSE(extent().has_value());
    add({reading(-60, 12), reading(60, 13), reading(90'000, 14)});
    EXPECT_EQ(extent()->first, at_s(-60));
    EXPECT_EQ(extent()->last, at_s(90'000));
    EXPECT_EQ(extent()->readings, 3);
    const auto count = book->read(
        [&](Connection& c) { return store::climate_count(c, sensor, at_s(0), at_s(90'001)); });
    EXPECT_EQ(*count, 2);
}
