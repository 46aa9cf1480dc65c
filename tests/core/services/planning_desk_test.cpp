// Planning over a real book: what is read, moved and put on the day sheet.
#include "core/planning/catalogue.h"
#include "core/planning/dated_plan.h"
#include "core/services/planning_desk.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"

#include <gtest/gtest.h>

#include <algorithm>

using namespace core;
using namespace core::actions;
using core::services::Book;
using core::services::DeskView;
using model::EntryKind;
using saltloft::testing::at_s;
using saltloft::testing::TempFolder;
using units::Day;
using units::Duration;
using units::Instant;
using units::Mass;
using units::Zone;

namespace {

class PlanningDesk : public ::testing::Test {
  protected:
    PlanningDesk()
        : book(*Book::open(folder.file("plan.saltloft"),
                           {.now = morning(0), .create_if_missing = true})) {}

    static Instant morning(int day) { return Zone::utc().instant_at(start() + day, 9 * 60); }
    static Day start() { return Day::from_date(std::chrono::year(2026) / 3 / 2); }

    Performed must(const Command& command, int day) {
        const auto done = book.perform(command, {.now = morning(day), .why = "test"});
        EXPECT_TRUE(done.has_value()) << done.error().detail;
        return done.value_or(Performed{});
    }
    static DeskView view(int day) { return {.now = morning(day), .zone = Zone::utc()}; }

    /// A batch planned from the built-in template, its cure begun on day 0.
    Performed begin(const std::string& code, const char* id = "loin") {
        const auto catalogue = planning::Catalogue::built_in();
        const auto plan = planning::date_plan({*catalogue.find(id), {}, start(), {}});
        StartBatch batch{.batch = saltloft::testing::batch(code),
                         .stages = planning::to_stages(plan)};
        batch.batch.product = "Loin ";
        batch.recipe = AddRecipe{code, R"({"saltloft_recipe": 1, "name": "Loin", "method": "dry",
            "lines": [{"ingredient": "table_salt", "amount": "3 %", "of": "meat"}]})"};
        batch.batch.started = start();
        batch.pieces = {saltloft::testing::new_piece(code + "a")};
        batch.pieces[0].piece.form = model::Form::cylinder;
        batch.pieces[0].piece.thickness = units::Length::millimetres(70);
        const Performed made = must(batch, 0);
        must(StartStage{made.id<model::StageId>(EntryKind::stage), morning(0), {}}, 0);
        return made;
    }

    TempFolder folder;
    Book book;
};

std::vector<std::string> verbs(const std::vector<planning::DayTask>& tasks) {
    std::vector<std::string> out;
    for (const auto& task : tasks) {
        out.push_back(task.verb);
    }
    return out;
}

bool has(const std::vector<planning::DayTask>& tasks, const std::string& verb) {
    const auto all = verbs(tasks);
    return std::find(all.begin(), all.end(), verb) != all.end();
}

} // namespace

TEST_F(PlanningDesk, ANewBookHasAnEmptySheet) {
    const auto sheet = services::day_sheet(book, view(0));
    ASSERT_TRUE(sheet.has_value());
    EXPECT_TRUE(sheet->nothing_to_do());
}

TEST_F(PlanningDesk, ATurnIsTickedInTheBookAndUndone) {
    begin("B01");
    const auto sheet = services::day_sheet(book, view(1));
    ASSERT_TRUE(sheet.has_value());
    const auto turn = std::find_if(sheet->due.begin(), sheet->due.end(),
                                   [](const auto& task) { return task.verb == "turn"; });
    ASSERT_NE(turn, sheet->due.end());
    must(TickTask{{.key = turn->key, .at = morning(1), .due = turn->due, .batch = turn->batch}}, 1);
    const auto after = services::day_sheet(book, view(1));
    EXPECT_FALSE(has(after->due, "turn"));
    ASSERT_EQ(after->done.size(), 1U);
    ASSERT_TRUE(book.undo({.now = morning(1)}).has_value());
    EXPECT_TRUE(has(services::day_sheet(book, view(1))->due, "turn"));
}

TEST_F(PlanningDesk, FreezingMovesTheDaysOfTheRest) {
    const Performed made = begin("B01");
    const auto before = services::current_stages(book, view(1));
    ASSERT_TRUE(before.has_value());
    const auto piece = made.id<model::PieceId>(EntryKind::piece);
    must(RecordEvent{{.piece = piece, .kind = model::EventKind::frozen, .at = morning(2)}}, 2);
    must(RecordEvent{{.piece = piece, .kind = model::EventKind::thawed, .at = morning(6)}}, 6);
    const auto after = services::current_stages(book, view(6));
    ASSERT_TRUE(after.has_value());
    ASSERT_EQ(after->size(), before->size());
    EXPECT_EQ(after->front().planned_end, before->front().planned_end + 4);
    EXPECT_EQ(after->back().planned_end, before->back().planned_end + 4);
}

TEST_F(PlanningDesk, AForecastMovesTheEndOfDryingAndAsksForAReview) {
    const Performed made = begin("B01");
    for (std::size_t i = 0; i < 2; ++i) {
        const auto stage = made.id<model::StageId>(EntryKind::stage, i);
        if (i > 0) {
            must(StartStage{stage, morning(11), {}}, 11);
        }
        must(EndStage{stage, morning(11), "done"}, 11);
    }
    must(StartStage{made.id<model::StageId>(EntryKind::stage, 2), morning(12), {}}, 12);
    must(RecordEvent{{.piece = made.id<model::PieceId>(EntryKind::piece),
                      .kind = model::EventKind::hung,
                      .at = morning(12)}},
         12);
    DeskView with = view(20);
    with.horizon_days = 60;
    with.forecast_of = [&](const services::PieceHistory&) {
        return model::Forecast{.state = model::ForecastState::drying,
                               .ready = model::ReadyDate{.p50 = morning(50)}};
    };
    const auto stages = services::current_stages(book, with);
    EXPECT_EQ(stages->back().planned_end, start() + 50);
    const auto sheet = services::day_sheet(book, with);
    EXPECT_TRUE(has(sheet->coming, "review"));
    EXPECT_TRUE(has(sheet->overdue, "weigh")) << "a week since hanging, not weighed";
}

TEST_F(PlanningDesk, FinishedPiecesTeachTheNextPlan) {
    const auto person = must(AddPerson{{.name = "Test Person", .initials = "TP"}}, 0)
                            .id<model::PersonId>(EntryKind::person);
    for (int i = 0; i < 3; ++i) {
        const Performed made = begin("B0" + std::to_string(i + 1));
        const auto piece = made.id<model::PieceId>(EntryKind::piece);
        must(RecordEvent{{.piece = piece, .kind = model::EventKind::hung, .at = morning(12)}}, 12);
        const int end = 12 + 63 + 7 * i;
        must(AddWeighing{{.piece = piece,
                          .taken_at = morning(12),
                          .on_scale = Mass::grams(1000),
                          .tare = Mass::grams(0)}},
             12);
        must(AddWeighing{{.piece = piece,
                          .taken_at = morning(end),
                          .on_scale = Mass::grams(640),
                          .tare = Mass::grams(0)}},
             end);
        must(SignDecision{{.piece = piece,
                           .at = morning(end),
                           .verdict = model::Verdict::done,
                           .signed_by = person}},
             end);
    }
    const auto finished = services::finished_pieces(book, Zone::utc());
    ASSERT_TRUE(finished.has_value());
    ASSERT_EQ(finished->size(), 3U);
    EXPECT_NEAR(finished->front().loss->in_percent(), 36, 1e-9);
    ASSERT_TRUE(finished->front().salt_dose);
    EXPECT_NEAR(finished->front().salt_dose->in_percent(), 3, 0.01);
    const auto summary = planning::summarise(*finished, {.product = services::product_key("LOIN")});
    ASSERT_TRUE(summary);
    EXPECT_DOUBLE_EQ(summary->took.low.in_weeks(), 9);
    EXPECT_DOUBLE_EQ(summary->took.high.in_weeks(), 11);
    const auto sources = services::length_sources(*finished, "loin");
    const auto own = sources.own_drying(
        {.form = model::Form::cylinder, .thickness = units::Length::millimetres(70)});
    ASSERT_TRUE(own);
    EXPECT_NEAR(own->best.in_weeks(), 10, 0.1);
}

TEST_F(PlanningDesk, TheWeighRoundKnowsTheTare) {
    const Performed made = begin("B01");
    const auto piece = made.id<model::PieceId>(EntryKind::piece);
    EXPECT_TRUE(services::weigh_round(book, view(1))->empty()) << "nothing hangs yet";
    must(RecordEvent{{.piece = piece,
                      .kind = model::EventKind::dressed,
                      .at = morning(12),
                      .tare_after = Mass::grams(40)}},
         12);
    must(RecordEvent{{.piece = piece, .kind = model::EventKind::hung, .at = morning(12)}}, 12);
    const auto rows = services::weigh_round(book, view(19));
    ASSERT_EQ(rows->size(), 1U);
    EXPECT_EQ(rows->front().tare, Mass::grams(40));
}
