#include "core/planning/back_plan.h"
#include "core/planning/redate.h"
#include "core/planning/routine_days.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace {

using namespace core;
using planning::Catalogue;
using planning::Slack;
using units::Day;
using units::Length;
using units::Mass;

const Catalogue& catalogue() {
    static const Catalogue built_in = Catalogue::built_in();
    return built_in;
}

const model::PlanTemplate& any_template() {
    const auto& all = catalogue().templates();
    return all[static_cast<std::size_t>(*rc::gen::inRange<int>(0, static_cast<int>(all.size())))];
}

std::vector<planning::PieceSpec> any_pieces() {
    std::vector<planning::PieceSpec> pieces;
    const int count = *rc::gen::inRange(1, 4);
    for (int i = 0; i < count; ++i) {
        pieces.push_back({.form = *rc::gen::element(model::Form::slab, model::Form::cylinder,
                                                    model::Form::round),
                          .thickness = Length::millimetres(*rc::gen::inRange(15, 250)),
                          .raw_weight = Mass::grams(*rc::gen::inRange(200, 15000))});
    }
    return pieces;
}

Day any_day() {
    return Day::from_days_since_epoch(*rc::gen::inRange(19000, 22000));
}

RC_GTEST_PROP(Planning, DatesNeverGoBackwards, ()) {
    const Day start = any_day();
    const auto plan = planning::date_plan({any_template(), any_pieces(), start, {}});
    Day reached = start;
    Day earliest = start;
    for (const auto& stage : plan.stages) {
        RC_ASSERT(stage.start == reached);
        RC_ASSERT(stage.start <= stage.end);
        RC_ASSERT(earliest <= stage.earliest_end);
        RC_ASSERT(stage.earliest_end <= stage.end);
        RC_ASSERT(stage.end <= stage.latest_end);
        reached = stage.end;
        earliest = stage.earliest_end;
    }
    RC_ASSERT(plan.end == reached);
}

RC_GTEST_PROP(Planning, NoStageIsShorterThanItsRule, ()) {
    const auto pieces = any_pieces();
    const auto plan = planning::date_plan({any_template(), pieces, any_day(), {}});
    const auto stages = planning::to_stages(plan);
    RC_ASSERT(planning::check_cure_lengths(stages, pieces, units::Zone::utc()).empty());
}

RC_GTEST_PROP(Planning, MinimaAreMet, ()) {
    const auto& chosen = any_template();
    const auto plan = planning::date_plan({chosen, any_pieces(), any_day(), {}});
    for (const auto& minimum : chosen.minima) {
        units::Duration counted = units::Duration::days(0);
        for (const auto& stage : plan.stages) {
            if (minimum.stages.empty() ||
                std::find(minimum.stages.begin(), minimum.stages.end(), stage.stage.what.name) !=
                    minimum.stages.end()) {
                counted += stage.length.lasts.best;
            }
        }
        RC_ASSERT(counted >= minimum.at_least);
    }
}

RC_GTEST_PROP(Planning, BackFromAForwardPlanFindsItsStartOrALaterOne, ()) {
    const auto& chosen = any_template();
    const auto pieces = any_pieces();
    const Day start = any_day();
    const auto forward = planning::date_plan({chosen, pieces, start, {}});
    const auto back = planning::plan_back({.plan = chosen,
                                           .pieces = pieces,
                                           .wanted_on = forward.end,
                                           .today = start,
                                           .slack = Slack::none});
    RC_ASSERT(back.plan.has_value());
    RC_ASSERT(back.plan->start >= start);
    RC_ASSERT(back.plan->end <= forward.end);
}

RC_GTEST_PROP(Planning, SlackStartsNotLaterAndStillMeetsTheDay, ()) {
    const auto& chosen = any_template();
    const auto pieces = any_pieces();
    const Day start = any_day();
    const auto forward = planning::date_plan({chosen, pieces, start, {}});
    const auto back = planning::plan_back(
        {.plan = chosen, .pieces = pieces, .wanted_on = forward.end, .today = start - 3660});
    RC_ASSERT(back.latest_start.has_value());
    RC_ASSERT(*back.latest_start <= start);
    RC_ASSERT(back.plan->latest_end <= forward.end);
    RC_ASSERT(planning::days_of(*back.plan) == planning::days_of(forward)); // nothing was cut
}

RC_GTEST_PROP(Planning, ANoIsTrueAndItsOffersHold, ()) {
    const auto& chosen = any_template();
    const auto pieces = any_pieces();
    const Day today = any_day();
    planning::BackPlanRequest request{.plan = chosen,
                                      .pieces = pieces,
                                      .wanted_on = today + *rc::gen::inRange(0, 200),
                                      .today = today,
                                      .catalogue = &catalogue()};
    const auto back = planning::plan_back(request);
    if (back.plan) {
        RC_ASSERT(back.plan->start >= today);
        RC_ASSERT(back.plan->latest_end <= request.wanted_on);
        return;
    }
    RC_ASSERT(back.shortfall_days > 0);
    RC_ASSERT(*back.ready_if_started_today == request.wanted_on + back.shortfall_days);
    for (const auto& other : back.others) {
        const auto plan =
            planning::date_plan({*catalogue().find(other.template_id), {}, today, {}});
        RC_ASSERT(plan.latest_end <= request.wanted_on);
    }
    if (back.smaller) {
        RC_ASSERT(back.smaller->of_weight < 1.0);
        RC_ASSERT(back.smaller->ready_by <= request.wanted_on);
    }
}

RC_GTEST_PROP(Planning, RepeatsExpandToRoundsTimesThePair, ()) {
    model::PlanTemplate plan;
    const int before = *rc::gen::inRange(0, 4);
    const int with = *rc::gen::inRange(0, 4);
    const int after = *rc::gen::inRange(0, 4);
    const int rounds = *rc::gen::inRange(1, 30);
    plan.stages.resize(static_cast<std::size_t>(before + 1 + with + after));
    for (std::size_t i = 0; i < plan.stages.size(); ++i) {
        plan.stages[i].name = std::to_string(i);
    }
    auto& first = plan.stages[static_cast<std::size_t>(before)];
    first.repeats = rounds;
    first.repeats_at_most = rounds;
    first.repeat_with_next = with;
    const auto out = planning::expand(plan, {});
    RC_ASSERT(out.size() == static_cast<std::size_t>(before + rounds * (1 + with) + after));
    // Each round is the same run of names.
    for (int round = 0; round < rounds; ++round) {
        for (int i = 0; i <= with; ++i) {
            const auto& stage = out[static_cast<std::size_t>(before + round * (1 + with) + i)];
            RC_ASSERT(stage.what.name == std::to_string(before + i));
            RC_ASSERT(stage.round == round + 1);
        }
    }
}

RC_GTEST_PROP(Planning, RoutineDaysLieInsideTheStageInOrder, ()) {
    model::StageTemplate stage;
    stage.routines = {{.verb = "turn",
                       .every = units::Duration::hours(*rc::gen::inRange(6, 400)),
                       .first_after = units::Duration::hours(*rc::gen::inRange(0, 400))}};
    const Day start = any_day();
    const int length = *rc::gen::inRange(0, 200);
    const auto days = planning::routine_days(stage, start, start + length);
    for (std::size_t i = 0; i < days.size(); ++i) {
        RC_ASSERT(days[i].day >= start && days[i].day < start + length);
        RC_ASSERT(days[i].number == static_cast<int>(i) + 1);
        if (i > 0) { // the macro looks at both sides of an "or"
            RC_ASSERT(days[i - 1].day <= days[i].day);
        }
    }
}

RC_GTEST_PROP(Planning, RedatingKeepsOrderAndLengthsAcrossSummerTime, ()) {
    const auto zone = units::Zone::named(
        *rc::gen::element<std::string>("Europe/Rome", "America/New_York", "Australia/Sydney"));
    RC_ASSERT(zone.has_value());
    const Day start = any_day();
    auto stages =
        planning::to_stages(planning::date_plan({any_template(), any_pieces(), start, {}}));
    const auto planned = stages;
    const int done = *rc::gen::inRange<int>(0, static_cast<int>(stages.size()));
    Day day = start;
    for (int i = 0; i < done; ++i) {
        auto& stage = stages[static_cast<std::size_t>(i)];
        stage.started_at = zone->instant_at(day, *rc::gen::inRange(0, 720));
        day = day + *rc::gen::inRange(0, 60);
        stage.ended_at = zone->instant_at(day, *rc::gen::inRange(720, 1440));
    }
    const auto now = planning::redate(stages, {}, day, *zone);
    Day reached = day;
    for (std::size_t i = static_cast<std::size_t>(done); i < now.size(); ++i) {
        RC_ASSERT(now[i].planned_start >= reached);
        RC_ASSERT(now[i].planned_end - now[i].planned_start ==
                  planned[i].planned_end - planned[i].planned_start);
        reached = now[i].planned_end;
    }
}

} // namespace
