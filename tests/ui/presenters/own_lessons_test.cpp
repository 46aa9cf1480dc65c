// Own finished pieces move and narrow an early forecast; those of another product do not.
#include "ui/presenters/own_lessons.h"

#include "core/services/planning_desk.h"
#include "tests/support/forecast_trial.h"
#include "tests/support/sample_entries.h"
#include "tests/support/temp_folder.h"
#include "ui/presenters/piece_forecast.h"
#include "ui/presenters/preferences.h"
#include "ui/presenters/workspace.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

using namespace ui::presenters;
using core::model::EntryKind;
using core::services::Book;
using core::units::Duration;
using core::units::Instant;
using core::units::Mass;
using tests::support::VirtualPiece;

namespace {

/// Whole muscle that dries slower than the general prior thinks, all alike and of one form.
std::vector<VirtualPiece> slow_pieces(std::size_t count, std::uint64_t first) {
    auto kind = tests::support::usual_pieces();
    kind.d_median = 2.5e-11;
    kind.d_spread = 0.15;
    kind.thick_lo = 0.06;
    kind.thick_hi = 0.065;
    kind.target_lo = 0.35;
    kind.target_hi = 0.35;
    std::vector<VirtualPiece> alike;
    for (auto number = first; alike.size() < count; ++number) {
        auto piece = tests::support::make_piece(kind, number);
        if (piece.spec.form == tests::support::VirtualForm::slab && piece.ready_day > 0) {
            alike.push_back(std::move(piece));
        }
    }
    return alike;
}

class OwnLessonsTest : public ::testing::Test {
  protected:
    OwnLessonsTest()
        : workspace(*Book::open(folder.file("lessons.saltloft"),
                                {.now = start(), .create_if_missing = true}),
                    Preferences{}, QLocale::c(), [] { return start(); }) {
        const auto person = must(
            core::actions::AddPerson{{.name = "Test Person", .initials = "TP", .active = true}});
        who = person.id<core::model::PersonId>(EntryKind::person);
    }
    static Instant start() { return tests::support::hung_at(); }

    core::actions::Performed must(const core::actions::Command& command) {
        auto done = workspace.perform(command);
        EXPECT_TRUE(done.has_value());
        return done.value_or(core::actions::Performed{});
    }

    /// The virtual piece in the book, with its weighings up to `until` of its way; signed as done
    /// when that is all of it.
    core::model::PieceId keep(const VirtualPiece& piece, const std::string& code,
                              const std::string& product, double until) {
        core::actions::StartBatch batch{.batch = saltloft::testing::batch("B" + code)};
        batch.batch.product = product;
        core::actions::NewPiece fresh;
        fresh.piece.code = code;
        fresh.piece.form =
            piece.spec.form == tests::support::VirtualForm::slab       ? core::model::Form::slab
            : piece.spec.form == tests::support::VirtualForm::cylinder ? core::model::Form::cylinder
                                                                       : core::model::Form::round;
        fresh.piece.thickness = core::units::Length::metres(piece.spec.thickness_m);
        fresh.piece.target =
            core::model::Target{core::units::MassShare::fraction(piece.spec.target_loss),
                                core::model::ReferenceWeight::hung};
        batch.pieces = {fresh};
        const auto id = must(batch).id<core::model::PieceId>(EntryKind::piece);
        must(core::actions::RecordEvent{
            {.piece = id, .kind = core::model::EventKind::hung, .at = start()}});
        Instant last = start();
        for (const auto& weighing : piece.weighings) {
            if (weighing.day <= until * piece.ready_day + 1e-9) {
                last = start() + Duration::days(weighing.day);
                must(core::actions::AddWeighing{{.piece = id,
                                                 .taken_at = last,
                                                 .on_scale = Mass::grams(weighing.grams),
                                                 .tare = Mass::grams(0),
                                                 .state = core::model::WeighedState::rinsed}});
            }
        }
        if (until >= 1) {
            must(core::actions::SignDecision{{.piece = id,
                                              .at = last,
                                              .verdict = core::model::Verdict::done,
                                              .signed_by = who}});
        }
        return id;
    }

    core::model::Forecast forecast_of(core::model::PieceId id) {
        const auto history = *workspace.book().piece_history(id);
        PieceRecord record{history, kin_of(workspace.book(), history), {}};
        workspace.ask_forecasts({record});
        workspace.forecasts().wait();
        const auto* made = workspace.forecasts().find(id, history.revision);
        EXPECT_NE(made, nullptr);
        return made != nullptr ? *made : core::model::Forecast{};
    }

    saltloft::testing::TempFolder folder;
    Workspace workspace;
    core::model::PersonId who;
};

struct Dates {
    double p10, p50, p90;
    [[nodiscard]] double width() const { return std::log(p90 / p10); }
};

std::optional<Dates> dates_of(const core::model::Forecast& forecast) {
    if (!forecast.ready || !forecast.ready->p10 || !forecast.ready->p50 || !forecast.ready->p90) {
        return std::nullopt;
    }
    const auto day = [](const Instant& at) { return (at - tests::support::hung_at()).in_days(); };
    return Dates{day(*forecast.ready->p10), day(*forecast.ready->p50), day(*forecast.ready->p90)};
}

} // namespace

TEST_F(OwnLessonsTest, FinishedPiecesMoveAnEarlyForecastTowardsTheirTimesAndNarrowIt) {
    // One pupil may be lucky: five are judged by the sum of their errors (of the logarithm).
    const auto pupils = slow_pieces(5, 900);
    const auto teachers = slow_pieces(6, 500);
    std::vector<core::model::PieceId> ids;
    std::vector<Dates> alone;
    for (std::size_t n = 0; n < pupils.size(); ++n) {
        ids.push_back(keep(pupils[n], "P" + std::to_string(n), "Coppa", 0.2));
        const auto dates = dates_of(forecast_of(ids.back()));
        ASSERT_TRUE(dates);
        alone.push_back(*dates);
    }
    for (std::size_t n = 0; n < teachers.size(); ++n) {
        keep(teachers[n], "T" + std::to_string(n), "coppa ", 1.0);
    }
    double error_alone = 0, error_taught = 0, width_alone = 0, width_taught = 0;
    for (std::size_t n = 0; n < pupils.size(); ++n) {
        const auto taught = dates_of(forecast_of(ids[n]));
        ASSERT_TRUE(taught);
        EXPECT_EQ(workspace.forecasts().learnt_from(ids[n]), 6) << "same revision, asked anew";
        const double truth = std::log(pupils[n].ready_day);
        error_alone += std::abs(std::log(alone[n].p50) - truth);
        error_taught += std::abs(std::log(taught->p50) - truth);
        width_alone += alone[n].width();
        width_taught += taught->width();
        std::printf("true %5.1f d: alone %5.1f (%5.1f to %5.1f), taught %5.1f (%5.1f to %5.1f)\n",
                    pupils[n].ready_day, alone[n].p50, alone[n].p10, alone[n].p90, taught->p50,
                    taught->p10, taught->p90);
    }
    EXPECT_LT(error_taught, 0.8 * error_alone);
    EXPECT_LT(width_taught, 0.9 * width_alone);
}

TEST_F(OwnLessonsTest, OtherProductsAndOtherFormsHaveNoSay) {
    const auto pieces = slow_pieces(6, 900);
    const auto id = keep(pieces.front(), "NEW", "Coppa", 0.3);
    const auto alone = forecast_of(id);
    for (std::size_t n = 1; n < pieces.size(); ++n) {
        keep(pieces[n], "T" + std::to_string(n), "Loin", 1.0);
        auto other_form = pieces[n];
        other_form.spec.form = tests::support::VirtualForm::cylinder;
        keep(other_form, "F" + std::to_string(n), "Coppa", 1.0);
    }
    const auto still = forecast_of(id);
    EXPECT_EQ(workspace.forecasts().learnt_from(id), 0);
    EXPECT_EQ(dates_of(still)->p50, dates_of(alone)->p50) << "to the last bit";
    EXPECT_EQ(dates_of(still)->p90, dates_of(alone)->p90);
}

TEST_F(OwnLessonsTest, ALessonIsKeptUntilAFinishedPieceChanges) {
    const auto pieces = slow_pieces(4, 700);
    const auto pupil = keep(pieces[0], "NEW", "Coppa", 0.3);
    std::vector<core::model::PieceId> done;
    for (std::size_t n = 1; n < pieces.size(); ++n) {
        done.push_back(keep(pieces[n], "T" + std::to_string(n), "Coppa", 1.0));
    }
    OwnLessons lessons(workspace.book());
    core::services::PieceAir air(workspace.book(), start());
    const auto piece = *workspace.book().piece(pupil);
    const auto first = lessons.of(piece, air);
    ASSERT_NE(first, nullptr);
    EXPECT_EQ(first->pieces(), done.size());
    must(core::actions::AddNote{{.piece = pupil, .at = start(), .text = "nothing to do with it"}});
    EXPECT_EQ(lessons.of(piece, air), first);
    must(core::actions::AddWeighing{saltloft::testing::weighing(done.front(), 400)});
    EXPECT_NE(lessons.of(piece, air), first);
    EXPECT_EQ(lessons.of(*workspace.book().piece(done.front()), air), nullptr)
        << "a finished piece does not teach itself";
}

TEST_F(OwnLessonsTest, OnePieceOrNoProductTeachesNothing) {
    const auto pieces = slow_pieces(3, 700);
    const auto pupil = keep(pieces[0], "NEW", "Coppa", 0.3);
    keep(pieces[1], "T1", "Coppa", 1.0);
    const auto nameless = keep(pieces[0], "NAMELESS", "", 0.3);
    OwnLessons lessons(workspace.book());
    core::services::PieceAir air(workspace.book(), start());
    EXPECT_EQ(lessons.of(*workspace.book().piece(pupil), air), nullptr);
    EXPECT_EQ(lessons.of(*workspace.book().piece(nameless), air), nullptr);
}
