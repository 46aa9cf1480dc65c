#include "core/planning/day_sheet_tasks.h"

#include <fmt/format.h>

#include <algorithm>

namespace core::planning {
namespace {

using model::PieceState;
using units::Day;

bool is_open(const model::Piece& piece) {
    switch (piece.state) {
    case PieceState::planned:
    case PieceState::curing:
    case PieceState::resting:
    case PieceState::drying:
        return true;
    case PieceState::finished:
    case PieceState::discarded:
    case PieceState::merged_away:
    case PieceState::split_up:
        return false;
    }
    return false;
}

class PieceTasks {
  public:
    PieceTasks(const DayContext& context, std::vector<DayTask>& out)
        : context_(context), out_(out) {}

    void run() {
        reviews();
        weigh_again();
    }

  private:
    [[nodiscard]] bool decided_since_weighed(model::PieceId piece) const {
        const auto weighed = context_.weighed.find(piece);
        return std::any_of(context_.in.decisions.begin(), context_.in.decisions.end(),
                           [&](const auto& decision) {
                               return decision.piece == piece &&
                                      (weighed == context_.weighed.end() ||
                                       context_.in.zone.day_of(decision.at) >= weighed->second);
                           });
    }

    void reviews() {
        for (const auto* piece : context_.open) {
            const auto forecast = context_.in.forecasts.find(piece->id);
            if (forecast == context_.in.forecasts.end() || decided_since_weighed(piece->id)) {
                continue;
            }
            std::optional<Day> due;
            if (forecast->second.state == model::ForecastState::ready) {
                due = context_.in.zone.day_of(forecast->second.as_of.value_or(context_.in.now));
            } else if (forecast->second.ready && forecast->second.ready->p50) {
                due = std::max(context_.today + 1,
                               context_.in.zone.day_of(*forecast->second.ready->p50));
            }
            if (!due) {
                continue;
            }
            const auto weighed = context_.weighed.find(piece->id);
            add(DayTask{.key = fmt::format(
                            "review:p{}:{}", piece->id.row(),
                            weighed == context_.weighed.end() ? "never" : key_day(weighed->second)),
                        .verb = "review",
                        .due = *due,
                        .batch = piece->batch,
                        .chamber = piece->chamber,
                        .pieces = {piece->id}});
        }
    }

    void weigh_again() {
        for (const auto* piece : context_.open) {
            const model::Decision* last = nullptr;
            for (const auto& decision : context_.in.decisions) {
                if (decision.piece == piece->id && (last == nullptr || decision.at > last->at)) {
                    last = &decision;
                }
            }
            if (last == nullptr || !last->weigh_again) {
                continue;
            }
            const auto weighed = context_.weighed.find(piece->id);
            if (weighed != context_.weighed.end() &&
                weighed->second > context_.in.zone.day_of(last->at)) {
                continue;
            }
            add(DayTask{.key = fmt::format("weigh_again:p{}:{}", piece->id.row(),
                                           key_day(*last->weigh_again)),
                        .verb = "weigh_again",
                        .due = *last->weigh_again,
                        .batch = piece->batch,
                        .chamber = piece->chamber,
                        .pieces = {piece->id}});
        }
    }

    void add(DayTask task) {
        if (task.due <= context_.horizon) {
            out_.push_back(std::move(task));
        }
    }

    const DayContext& context_;
    std::vector<DayTask>& out_;
};

void add_if_near(const DayContext& context, std::vector<DayTask>& out, DayTask task) {
    if (task.due <= context.horizon) {
        out.push_back(std::move(task));
    }
}

void instruments(const DayContext& context, std::vector<DayTask>& out) {
    for (const auto& instrument : context.in.instruments) {
        if (!instrument.active || !instrument.check_every_days) {
            continue;
        }
        Day due = context.today; // never checked: now
        std::optional<Day> last;
        for (const auto& check : context.in.checks) {
            if (check.instrument == instrument.id) {
                const Day day = context.in.zone.day_of(check.at);
                last = std::max(last.value_or(day), day);
            }
        }
        due = last ? *last + *instrument.check_every_days : context.today;
        add_if_near(
            context, out,
            DayTask{.key = fmt::format("calibrate:i{}:{}", instrument.id.row(), key_day(due)),
                    .verb = "calibrate",
                    .due = due,
                    .instrument = instrument.id});
    }
    for (const auto& sensor : context.in.sensors) {
        if (sensor.active && sensor.check_due) {
            add_if_near(context, out,
                        DayTask{.key = fmt::format("check_sensor:n{}:{}", sensor.id.row(),
                                                   key_day(*sensor.check_due)),
                                .verb = "check_sensor",
                                .due = *sensor.check_due,
                                .chamber = sensor.chamber,
                                .sensor = sensor.id});
        }
    }
}

/// Packs at or past their keep-by day are one line, named by the last that came to it: a tick holds
/// until another pack does. Later days stand on their own.
void packs(const DayContext& context, std::vector<DayTask>& out) {
    std::map<Day, std::vector<model::PackId>> by_day;
    for (const auto& pack : context.in.packs) {
        if (!pack.gone && pack.keep_by) {
            by_day[*pack.keep_by].push_back(pack.id);
        }
    }
    std::optional<DayTask> now;
    for (const auto& [day, ids] : by_day) {
        DayTask task{.key = fmt::format("eat_first:k{}:{}", ids.back().row(), key_day(day)),
                     .verb = "eat_first",
                     .due = day,
                     .packs = ids};
        if (day > context.today) {
            add_if_near(context, out, std::move(task));
        } else if (!now) {
            now = std::move(task);
        } else {
            now->key = task.key;
            now->packs.insert(now->packs.end(), ids.begin(), ids.end());
        }
    }
    if (now) {
        add_if_near(context, out, *std::move(now));
    }
}

} // namespace

DayContext::DayContext(const DaySheetInput& input, Day day)
    : in(input), today(day), horizon(day + std::max(0, input.horizon_days)) {
    for (const auto& piece : in.pieces) {
        if (is_open(piece)) {
            open.push_back(&piece);
        }
    }
    std::stable_sort(open.begin(), open.end(), [](const auto* a, const auto* b) {
        return std::pair(a->chamber, a->hanging_order) < std::pair(b->chamber, b->hanging_order);
    });
    for (const auto& weighing : in.last_weighings) {
        const Day weighed_on = in.zone.day_of(weighing.taken_at);
        const auto [at, is_new] = weighed.try_emplace(weighing.piece, weighed_on);
        if (!is_new) {
            at->second = std::max(at->second, weighed_on);
        }
    }
    for (const auto& tick : in.ticks) {
        if (!tick.withdrawn) {
            ticked.insert(tick.key);
        }
    }
}

std::string key_day(Day day) {
    const auto date = day.date();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

void add_piece_tasks(const DayContext& context, std::vector<DayTask>& out) {
    PieceTasks(context, out).run();
}

void add_upkeep_tasks(const DayContext& context, std::vector<DayTask>& out) {
    instruments(context, out);
    packs(context, out);
}

} // namespace core::planning
