#pragma once

#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"
#include "ui/presenters/workspace.h"

#include <gtest/gtest.h>

#include <memory>

/// A small book with a past: pieces that were finished, pieces that dry.
namespace saltloft::testing {

class PastBook : public ::testing::Test {
  protected:
    using Piece = core::model::PieceId;
    using Kind = core::model::EntryKind;
    static core::units::Instant day(int n) { return at_s(test_now_s + std::int64_t(n) * 86400); }

    PastBook() {
        auto book = core::services::Book::open(folder.file("past.saltloft"),
                                               {.now = day(0), .create_if_missing = true});
        workspace = std::make_unique<ui::presenters::Workspace>(
            std::move(*book), ui::presenters::Preferences{},
            QLocale(QLocale::English, QLocale::UnitedKingdom), [] { return day(0); });
        who = must(core::actions::AddPerson{
                       {.name = "Test Person", .initials = "TP", .active = true}})
                  .id<core::model::PersonId>(Kind::person);
    }

    core::actions::Performed must(const core::actions::Command& command) {
        auto done = workspace->perform(command);
        EXPECT_TRUE(done.has_value());
        return done.value_or(core::actions::Performed{});
    }

    struct Made {
        core::model::BatchId batch;
        Piece piece;
        core::model::RecipeId recipe;
    };
    /// A piece of 1000 g that was hung `hung` days from now and weighed once a week at 5 % less,
    /// `weeks` times; 3 % salt.
    Made dry(const std::string& code, const std::string& product, int hung, int weeks) {
        core::actions::StartBatch start{.batch = batch("B" + code)};
        start.batch.product = product;
        start.recipe = core::actions::AddRecipe{
            "Recipe " + code,
            R"({"saltloft_recipe": 1, "name": "Coppa", "method": "dry", "lines": [
                {"ingredient": "table_salt", "amount": "3 %", "of": "meat"}]})"};
        start.pieces = {new_piece(code, 1100)};
        start.pieces[0].piece.form = core::model::Form::cylinder;
        start.pieces[0].weighings[0].taken_at = day(hung - 14);
        const auto made = must(start);
        const Made out{made.id<core::model::BatchId>(Kind::batch), made.id<Piece>(Kind::piece),
                       made.id<core::model::RecipeId>(Kind::recipe)};
        must(core::actions::RecordEvent{
            {.piece = out.piece, .kind = core::model::EventKind::hung, .at = day(hung)}});
        for (int week = 0; week <= weeks; ++week) {
            auto entry = weighing(out.piece, 1000 - 50.0 * week);
            entry.taken_at = day(hung + 7 * week);
            entry.state = core::model::WeighedState::rinsed;
            must(core::actions::AddWeighing{entry});
        }
        return out;
    }
    Made finish(const std::string& code, const std::string& product, int hung, int weeks) {
        const Made made = dry(code, product, hung, weeks);
        must(core::actions::SignDecision{{.piece = made.piece,
                                          .at = day(hung + 7 * weeks),
                                          .verdict = core::model::Verdict::done,
                                          .signed_by = who}});
        return made;
    }
    /// Two finished coppas, 9 and 7 weeks on the hook; the newer one too salty and too soft.
    Made coppa_past() {
        finish("OLD1", "Coppa", -300, 9);
        const Made newer = finish("OLD2", "coppa", -200, 7);
        must(core::actions::RecordOutcome{
            {.batch = newer.batch, .salt = 1, .texture = -1, .change_next_time = "less salt"}});
        return newer;
    }

    TempFolder folder;
    std::unique_ptr<ui::presenters::Workspace> workspace;
    core::model::PersonId who;
};

} // namespace saltloft::testing
