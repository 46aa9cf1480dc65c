#include "core/planning/day_sheet.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace {

using namespace core;
using planning::DaySheet;
using planning::DayTask;
using units::Day;
using units::Duration;
using units::Zone;

constexpr Day d0 = Day::from_days_since_epoch(20600);

units::Instant at(Day day, int hour = 9) {
    return Zone::utc().instant_at(day, hour * 60);
}

model::Piece piece(int row, int hanging, int batch = 1, int chamber = 1) {
    return {.id = model::PieceId::from_row(row),
            .batch = model::BatchId::from_row(batch),
            .chamber = model::ChamberId::from_row(chamber),
            .hanging_order = hanging,
            .state = model::PieceState::drying};
}

model::Stage running(std::vector<model::Routine> routines, int row = 1, int batch = 1) {
    model::Stage stage{.id = model::StageId::from_row(row),
                       .batch = model::BatchId::from_row(batch),
                       .planned_start = d0,
                       .planned_end = d0 + 60,
                       .started_at = at(d0),
                       .chamber = model::ChamberId::from_row(1)};
    stage.what.name = "Dry";
    stage.what.routines = std::move(routines);
    return stage;
}

struct Sheet {
    Zone zone = Zone::utc();
    planning::DaySheetInput in{.now = at(d0), .zone = zone};

    DaySheet on(int day) {
        in.now = at(d0 + day);
        return planning::make_day_sheet(in);
    }
    void tick(const DayTask& task, int day) {
        in.ticks.push_back({.id = model::TaskId::from_row(static_cast<int>(in.ticks.size()) + 1),
                            .key = task.key,
                            .at = at(d0 + day),
                            .due = task.due});
    }
    void weigh(int piece_row, int day) {
        in.last_weighings.push_back({.piece = model::PieceId::from_row(piece_row),
                                     .taken_at = at(d0 + day),
                                     .on_scale = units::Mass::grams(900),
                                     .tare = units::Mass::grams(0)});
    }
};

std::vector<std::string> verbs(const std::vector<DayTask>& tasks) {
    std::vector<std::string> out;
    for (const auto& task : tasks) {
        out.push_back(task.verb);
    }
    return out;
}

std::vector<DayTask> of(const std::vector<DayTask>& tasks, const std::string& verb) {
    std::vector<DayTask> out;
    std::copy_if(tasks.begin(), tasks.end(), std::back_inserter(out),
                 [&](const DayTask& task) { return task.verb == verb; });
    return out;
}

TEST(DaySheet, ATurnIsDueTickedAndDueAgain) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.in.stages = {running({{.verb = "turn", .every = Duration::days(2)}})};
    EXPECT_TRUE(of(sheet.on(1).due, "turn").empty());
    const auto due = of(sheet.on(2).due, "turn");
    ASSERT_EQ(due.size(), 1U);
    EXPECT_EQ(due[0].key, "turn:s1:0:1");
    EXPECT_EQ(due[0].pieces.size(), 1U);
    sheet.tick(due[0], 2);
    const auto after = sheet.on(2);
    EXPECT_TRUE(of(after.due, "turn").empty());
    ASSERT_EQ(after.done.size(), 1U);
    EXPECT_EQ(after.done[0].verb, "turn");
    EXPECT_EQ(of(sheet.on(4).due, "turn").at(0).key, "turn:s1:0:2");
}

TEST(DaySheet, ATickTakenBackIsDueAgain) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.in.stages = {running({{.verb = "turn", .every = Duration::days(2)}})};
    sheet.tick(of(sheet.on(2).due, "turn").at(0), 2);
    sheet.in.ticks[0].withdrawn = true;
    const auto again = sheet.on(2);
    EXPECT_EQ(of(again.due, "turn").size(), 1U);
    EXPECT_TRUE(again.done.empty());
}

TEST(DaySheet, MissedTurnsAreOneTaskAndOneTickSettlesThem) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.in.stages = {running({{.verb = "turn", .every = Duration::days(2)}})};
    const auto late = of(sheet.on(7).overdue, "turn");
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].due, d0 + 2);
    EXPECT_EQ(late[0].missed, 2);
    EXPECT_EQ(late[0].days_overdue, 5);
    EXPECT_EQ(late[0].key, "turn:s1:0:3");
    sheet.tick(late[0], 7);
    EXPECT_TRUE(of(sheet.on(7).overdue, "turn").empty());
    EXPECT_EQ(of(sheet.on(8).due, "turn").size(), 1U);
}

TEST(DaySheet, KeysStayTheSameWhenTheSheetIsMadeAgain) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1), piece(2, 2)};
    sheet.in.stages = {running({{.verb = "turn", .every = Duration::days(1)},
                                {.verb = "weigh", .every = Duration::days(7)},
                                {.verb = "check", .every = Duration::days(1)}})};
    const auto keys = [&](const DaySheet& made) {
        std::multiset<std::string> out;
        for (const auto* list : {&made.overdue, &made.due, &made.coming}) {
            for (const auto& task : *list) {
                out.insert(task.key);
            }
        }
        return out;
    };
    const auto once = keys(sheet.on(9));
    std::reverse(sheet.in.pieces.begin(), sheet.in.pieces.end());
    EXPECT_EQ(keys(sheet.on(9)), once);
    for (const auto& key : once) {
        EXPECT_EQ(once.count(key), 1U) << key;
    }
}

TEST(DaySheet, WeighingFollowsEachPiecesOwnLastWeighing) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 2), piece(2, 1), piece(3, 3)};
    sheet.in.stages = {running({{.verb = "weigh", .every = Duration::days(7)}})};
    sheet.weigh(1, 7);
    sheet.weigh(2, 7);
    sheet.weigh(3, 10);
    const auto made = sheet.on(14);
    const auto due = of(made.due, "weigh");
    ASSERT_EQ(due.size(), 1U);
    EXPECT_THAT(due[0].pieces,
                testing::ElementsAre(model::PieceId::from_row(2), model::PieceId::from_row(1)))
        << "in hanging order";
    ASSERT_EQ(of(made.coming, "weigh").size(), 1U);
    EXPECT_EQ(of(made.coming, "weigh")[0].due, d0 + 17);
    sheet.weigh(1, 14);
    sheet.weigh(2, 14);
    EXPECT_TRUE(of(sheet.on(14).due, "weigh").empty());
}

TEST(DaySheet, AWeighingTickedWithoutANumberComesBackNextTime) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.in.stages = {running({{.verb = "weigh", .every = Duration::days(7)}})};
    const auto due = of(sheet.on(7).due, "weigh");
    ASSERT_EQ(due.size(), 1U);
    sheet.tick(due[0], 7);
    EXPECT_TRUE(of(sheet.on(7).due, "weigh").empty());
    EXPECT_EQ(of(sheet.on(14).due, "weigh").size(), 1U);
}

TEST(DaySheet, OneLookAtAChamberServesEveryBatchInIt) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1, 1), piece(2, 2, 2)};
    sheet.in.stages = {running({{.verb = "check", .every = Duration::days(1)}}, 1, 1),
                       running({{.verb = "check", .every = Duration::days(3)}}, 2, 2)};
    const auto first = of(sheet.on(1).due, "check");
    ASSERT_EQ(first.size(), 1U);
    EXPECT_FALSE(first[0].batch);
    EXPECT_EQ(first[0].pieces.size(), 2U);
    const auto late = of(sheet.on(5).overdue, "check");
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].missed, 4);
    sheet.tick(late[0], 5); // done late: the next one counts from the day it was done
    EXPECT_TRUE(of(sheet.on(5).overdue, "check").empty());
    EXPECT_EQ(of(sheet.on(6).due, "check").size(), 1U);
}

TEST(DaySheet, StagesEndAndTheNextOneBegins) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    auto first = running({});
    first.planned_end = d0 + 3;
    auto second = running({}, 2);
    second.order = 1;
    second.started_at.reset();
    second.planned_start = d0 + 3;
    sheet.in.stages = {second, first};
    EXPECT_THAT(verbs(sheet.on(3).due), testing::ElementsAre("end_stage"));
    sheet.in.stages[1].ended_at = at(d0 + 3);
    EXPECT_THAT(verbs(sheet.on(3).due), testing::ElementsAre("start_stage"));
    EXPECT_EQ(sheet.on(3).due[0].stage, model::StageId::from_row(2));
}

TEST(DaySheet, AReadyPieceIsReviewedUntilSomebodyDecides) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.weigh(1, 20);
    sheet.in.forecasts[model::PieceId::from_row(1)] = {.state = model::ForecastState::ready,
                                                       .as_of = at(d0 + 20)};
    ASSERT_EQ(of(sheet.on(20).due, "review").size(), 1U);
    sheet.in.decisions = {{.piece = model::PieceId::from_row(1),
                           .at = at(d0 + 20, 18),
                           .verdict = model::Verdict::not_yet,
                           .weigh_again = d0 + 24}};
    const auto after = sheet.on(20);
    EXPECT_TRUE(of(after.due, "review").empty());
    EXPECT_EQ(of(after.coming, "weigh_again").size(), 1U);
    EXPECT_EQ(of(sheet.on(24).due, "weigh_again").size(), 1U);
    sheet.weigh(1, 24);
    EXPECT_TRUE(of(sheet.on(24).due, "weigh_again").empty());
    EXPECT_EQ(of(sheet.on(24).overdue, "review").size(), 1U) << "weighed since: judge again";
}

TEST(DaySheet, APieceExpectedReadySoonIsComing) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 1)};
    sheet.in.forecasts[model::PieceId::from_row(1)] = {
        .state = model::ForecastState::drying,
        .ready = model::ReadyDate{.p10 = at(d0 + 1), .p50 = at(d0 + 5), .p90 = {}}};
    EXPECT_EQ(of(sheet.on(0).coming, "review").at(0).due, d0 + 5);
    sheet.in.horizon_days = 3;
    EXPECT_TRUE(of(sheet.on(0).coming, "review").empty());
}

TEST(DaySheet, InstrumentsSensorsAndStock) {
    Sheet sheet;
    sheet.in.instruments = {
        {.id = model::InstrumentId::from_row(1), .check_every_days = 30},
        {.id = model::InstrumentId::from_row(2), .check_every_days = 30},
        {.id = model::InstrumentId::from_row(3), .check_every_days = 30, .active = false}};
    sheet.in.checks = {{.instrument = model::InstrumentId::from_row(2), .at = at(d0 - 28)}};
    sheet.in.sensors = {{.id = model::SensorId::from_row(1), .check_due = d0 - 1}};
    sheet.in.packs = {{.id = model::PackId::from_row(1),
                       .packed_weight = units::Mass::grams(100),
                       .weight_left = units::Mass::grams(100),
                       .packed_on = d0 - 60,
                       .keep_by = d0 + 5},
                      {.id = model::PackId::from_row(2),
                       .packed_weight = units::Mass::grams(100),
                       .weight_left = units::Mass::grams(0),
                       .packed_on = d0 - 60,
                       .keep_by = d0 + 5,
                       .gone = true}};
    const auto made = sheet.on(0);
    EXPECT_THAT(verbs(made.due), testing::ElementsAre("calibrate")); // never checked
    EXPECT_THAT(verbs(made.overdue), testing::ElementsAre("check_sensor"));
    EXPECT_THAT(verbs(made.coming), testing::ElementsAre("calibrate", "eat_first"));
}

TEST(DaySheet, PacksPastTheirDayAreOneLineThatComesBackForTheNext) {
    Sheet sheet;
    for (int row = 1; row <= 3; ++row) {
        sheet.in.packs.push_back({.id = model::PackId::from_row(row),
                                  .packed_weight = units::Mass::grams(100),
                                  .weight_left = units::Mass::grams(100),
                                  .packed_on = d0 - 60,
                                  .keep_by = d0 + row * 2});
    }
    const auto late = of(sheet.on(5).overdue, "eat_first");
    ASSERT_EQ(late.size(), 1U);
    EXPECT_EQ(late[0].packs.size(), 2U);
    EXPECT_EQ(late[0].due, d0 + 2);
    sheet.tick(late[0], 5);
    EXPECT_TRUE(of(sheet.on(5).overdue, "eat_first").empty());
    EXPECT_EQ(of(sheet.on(6).overdue, "eat_first").size(), 1U) << "a third pack came to its day";
}

TEST(DaySheet, FinishedPiecesAndEmptyBooksAskForNothing) {
    Sheet sheet;
    EXPECT_TRUE(sheet.on(0).nothing_to_do());
    EXPECT_TRUE(sheet.on(0).coming.empty());
    auto gone = piece(1, 1);
    gone.state = model::PieceState::finished;
    sheet.in.pieces = {gone};
    sheet.in.forecasts[gone.id] = {.state = model::ForecastState::ready};
    EXPECT_TRUE(of(sheet.on(0).due, "review").empty());
}

TEST(DaySheet, IsWalkedChamberByChamberInHangingOrder) {
    Sheet sheet;
    sheet.in.pieces = {piece(1, 5, 1, 1), piece(2, 1, 2, 1), piece(3, 1, 3, 2)};
    for (int batch : {3, 1, 2}) {
        auto stage = running({{.verb = "turn", .every = Duration::days(1)}}, batch, batch);
        stage.chamber = model::ChamberId::from_row(batch == 3 ? 2 : 1);
        sheet.in.stages.push_back(stage);
    }
    std::vector<std::int64_t> order;
    for (const auto& task : sheet.on(1).due) {
        order.push_back(task.pieces.front().row());
    }
    EXPECT_THAT(order, testing::ElementsAre(2, 1, 3));
}

// The day changes at local midnight, also on the short and the long day of the year.
TEST(DaySheet, TodayIsTheLocalDay) {
    const auto rome = Zone::named("Europe/Rome");
    ASSERT_TRUE(rome.has_value());
    const Day spring = Day::from_date(std::chrono::year(2026) / 3 / 29);
    planning::DaySheetInput input{.now = rome->instant_at(spring, 23 * 60 + 59), .zone = *rome};
    EXPECT_EQ(planning::make_day_sheet(input).today, spring);
    input.now = input.now + Duration::minutes(2);
    EXPECT_EQ(planning::make_day_sheet(input).today, spring + 1);
}

} // namespace
