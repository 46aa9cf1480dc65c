#include "core/planning/day_sheet_tasks.h"
#include "core/planning/routine_days.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using units::Day;

/// Whole days of a routine's interval; under a day counts as daily on a day sheet.
int interval_days(const model::Routine& routine) {
    return std::max(1, static_cast<int>(std::lround(routine.every->in_days())));
}

class StageTasks {
  public:
    StageTasks(const DayContext& context, std::vector<DayTask>& out)
        : context_(context), out_(out) {}

    void run() {
        for (const auto& stage : context_.in.stages) {
            of_stage(stage);
        }
        changes();
        chamber_checks();
    }

  private:
    DayTask task_of(const model::Stage& stage, std::string key, std::string verb, Day due) const {
        return {.key = std::move(key),
                .verb = std::move(verb),
                .due = due,
                .batch = stage.batch,
                .stage = stage.id,
                .stage_name = stage.what.name,
                .chamber = stage.chamber,
                .pieces = pieces_of(stage.batch)};
    }

    [[nodiscard]] std::vector<model::PieceId> pieces_of(model::BatchId batch) const {
        std::vector<model::PieceId> ids;
        for (const auto* piece : context_.open) {
            if (piece->batch == batch) {
                ids.push_back(piece->id);
            }
        }
        return ids;
    }

    void of_stage(const model::Stage& stage) {
        if (!stage.started_at || stage.ended_at) {
            return;
        }
        const Day start = context_.in.zone.day_of(*stage.started_at);
        for (std::size_t i = 0; i < stage.what.routines.size(); ++i) {
            const auto& routine = stage.what.routines[i];
            if (routine.verb == "weigh" && routine.every) {
                weigh(stage, routine, start);
            } else if (routine.verb == "check" && routine.every) {
                remember_check(stage, routine, start);
            }
        }
        routines(stage, start);
    }

    static std::string weigh_key(const model::Stage& stage, Day due) {
        return fmt::format("weigh:s{}:{}", stage.id.row(), key_day(due));
    }

    /// Due by the piece's own last weighing, so a round done early or late moves the next one.
    void weigh(const model::Stage& stage, const model::Routine& routine, Day start) {
        const int every = interval_days(routine);
        const int first = routine.first_after
                              ? static_cast<int>(std::floor(routine.first_after->in_days() + 1e-6))
                              : every;
        std::map<Day, std::vector<model::PieceId>> by_day;
        for (const auto& id : pieces_of(stage.batch)) {
            const auto last = context_.weighed.find(id);
            const bool in_stage = last != context_.weighed.end() && last->second > start;
            Day due = in_stage ? last->second + every : start + first;
            while (context_.ticked.contains(weigh_key(stage, due))) {
                due = due + every; // ticked without a weighing: left out this time
            }
            by_day[due].push_back(id);
        }
        // What is late and what is due today is one round; later days stay apart.
        std::vector<model::PieceId> now;
        std::optional<Day> earliest;
        for (const auto& [day, ids] : by_day) {
            if (day <= context_.today) {
                earliest = earliest.value_or(day);
                now.insert(now.end(), ids.begin(), ids.end());
                continue;
            }
            add_weigh(stage, day, ids);
        }
        if (earliest) {
            add_weigh(stage, *earliest, now);
        }
    }

    void add_weigh(const model::Stage& stage, Day due, const std::vector<model::PieceId>& ids) {
        DayTask task = task_of(stage, weigh_key(stage, due), "weigh", due);
        task.pieces.clear();
        for (const auto* piece : context_.open) { // back into hanging order
            if (std::find(ids.begin(), ids.end(), piece->id) != ids.end()) {
                task.pieces.push_back(piece->id);
            }
        }
        add(std::move(task));
    }

    void routines(const model::Stage& stage, Day start) {
        std::map<std::string, std::vector<RoutineDay>> series;
        for (auto& day : routine_days(stage.what, start, context_.horizon + 1)) {
            if (day.verb == "weigh" || (day.verb == "check" && day.series.back() != 'a')) {
                continue;
            }
            series[day.series].push_back(std::move(day));
        }
        for (const auto& [name, days] : series) {
            one_series(stage, days);
        }
    }

    static std::string routine_key(const model::Stage& stage, const RoutineDay& day) {
        return fmt::format("{}:s{}:{}:{}", day.verb, stage.id.row(), day.series, day.number);
    }

    /// All that is overdue or due becomes one task on the latest occurrence; ticking it settles
    /// the ones before it. Later occurrences are listed one by one.
    void one_series(const model::Stage& stage, const std::vector<RoutineDay>& days) {
        const RoutineDay* latest = nullptr;
        std::optional<Day> first_missed;
        int missed = 0;
        for (const auto& day : days) {
            if (day.day > context_.today) {
                add(task_of(stage, routine_key(stage, day), day.verb, day.day));
                continue;
            }
            if (context_.ticked.contains(routine_key(stage, day))) {
                latest = nullptr;
                first_missed.reset();
                missed = 0;
                continue;
            }
            missed += latest != nullptr ? 1 : 0;
            first_missed = first_missed.value_or(day.day);
            latest = &day;
        }
        if (latest != nullptr) {
            DayTask task = task_of(stage, routine_key(stage, *latest), latest->verb, *first_missed);
            task.missed = missed;
            add(std::move(task));
        }
    }

    /// Several batches in one chamber need one look at it.
    struct ChamberCheck {
        int every;
        Day since;
        std::vector<model::PieceId> pieces;
    };
    void remember_check(const model::Stage& stage, const model::Routine& routine, Day start) {
        const int every = interval_days(routine);
        const std::string where = stage.chamber ? fmt::format("c{}", stage.chamber->row())
                                                : fmt::format("s{}", stage.id.row());
        auto [at, is_new] = checks_.try_emplace(where, ChamberCheck{every, start, {}});
        at->second.every = std::min(at->second.every, every);
        at->second.since = std::min(at->second.since, start);
        const auto ids = pieces_of(stage.batch);
        at->second.pieces.insert(at->second.pieces.end(), ids.begin(), ids.end());
        if (is_new) {
            check_places_[where] = &stage;
        }
    }

    void chamber_checks() {
        for (const auto& [where, check] : checks_) {
            const model::Stage& stage = *check_places_.at(where);
            const std::string prefix = "check:" + where + ":";
            Day last = check.since;
            for (const auto& tick : context_.in.ticks) {
                if (!tick.withdrawn && tick.key.rfind(prefix, 0) == 0) {
                    const Day done = context_.in.zone.day_of(tick.at);
                    last = std::max({last, tick.due.value_or(done), done});
                }
            }
            const Day due = last + check.every;
            DayTask task = task_of(stage, prefix + key_day(due), "check", due);
            task.missed = due < context_.today ? (context_.today - due) / check.every : 0;
            task.pieces = check.pieces;
            if (stage.chamber) { // the chamber's, not one batch's
                task.batch.reset();
                task.stage.reset();
                task.stage_name.clear();
            }
            add(std::move(task));
        }
    }

    /// Ending the stage that runs, beginning the one that is next.
    void changes() {
        std::map<model::BatchId, std::vector<const model::Stage*>> by_batch;
        for (const auto& stage : context_.in.stages) {
            by_batch[stage.batch].push_back(&stage);
        }
        for (auto& [batch, stages] : by_batch) {
            std::stable_sort(stages.begin(), stages.end(),
                             [](const auto* a, const auto* b) { return a->order < b->order; });
            bool runs = false;
            for (const auto* stage : stages) {
                if (stage->ended_at) {
                    continue;
                }
                if (stage->started_at) {
                    runs = true;
                    add(task_of(*stage, fmt::format("end_stage:s{}", stage->id.row()), "end_stage",
                                stage->planned_end));
                    continue;
                }
                if (!runs) {
                    add(task_of(*stage, fmt::format("start_stage:s{}", stage->id.row()),
                                "start_stage", stage->planned_start));
                }
                break;
            }
        }
    }

    void add(DayTask task) {
        if (task.due <= context_.horizon) {
            out_.push_back(std::move(task));
        }
    }

    const DayContext& context_;
    std::vector<DayTask>& out_;
    std::map<std::string, ChamberCheck> checks_;
    std::map<std::string, const model::Stage*> check_places_;
};

} // namespace

void add_stage_tasks(const DayContext& context, std::vector<DayTask>& out) {
    StageTasks(context, out).run();
}

} // namespace core::planning
