#include "core/planning/day_sheet.h"

#include "core/planning/day_sheet_tasks.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace core::planning {
namespace {

using units::Day;

/// Weighing comes before anything that wets or moves the piece.
int rank_of(const std::string& verb) {
    static constexpr std::array<std::string_view, 13> order{
        "weigh",  "weigh_again", "review",    "turn",        "rub_again", "massage",  "wipe",
        "rotate", "check",       "end_stage", "start_stage", "eat_first", "calibrate"};
    const auto found = std::find(order.begin(), order.end(), verb);
    return static_cast<int>(found - order.begin());
}

class Walk {
  public:
    explicit Walk(const DaySheetInput& input) {
        for (const auto& piece : input.pieces) {
            hanging_[piece.id] = piece.hanging_order;
        }
    }
    [[nodiscard]] auto key(const DayTask& task) const {
        const auto first =
            task.pieces.empty() ? hanging_.end() : hanging_.find(task.pieces.front());
        // Work without a chamber (calibration, stock) comes last in a day's walk.
        return std::tuple(!task.chamber.has_value(),
                          task.chamber ? task.chamber->row() : std::int64_t{0}, rank_of(task.verb),
                          first == hanging_.end() ? 0 : first->second, task.key);
    }

  private:
    std::map<model::PieceId, int> hanging_;
};

} // namespace

DaySheet make_day_sheet(const DaySheetInput& input) {
    const Day today = input.zone.day_of(input.now);
    DaySheet sheet{today, {}, {}, {}, {}};
    std::vector<DayTask> tasks;
    const DayContext context(input, today);
    add_stage_tasks(context, tasks);
    add_piece_tasks(context, tasks);
    add_upkeep_tasks(context, tasks);
    for (auto& task : tasks) {
        if (context.ticked.contains(task.key)) {
            continue;
        }
        if (task.due < today) {
            task.days_overdue = today - task.due;
            sheet.overdue.push_back(std::move(task));
        } else if (task.due == today) {
            sheet.due.push_back(std::move(task));
        } else if (task.due <= today + input.horizon_days) {
            sheet.coming.push_back(std::move(task));
        }
    }
    for (const auto& tick : input.ticks) {
        if (!tick.withdrawn && input.zone.day_of(tick.at) == today) {
            DayTask done{.key = tick.key,
                         .verb = tick.key.substr(0, tick.key.find(':')),
                         .due = tick.due.value_or(today),
                         .batch = tick.batch,
                         .tick = tick.id};
            if (tick.piece) {
                done.pieces.push_back(*tick.piece);
            }
            sheet.done.push_back(std::move(done));
        }
    }
    const Walk walk(input);
    const auto by_walk = [&](const DayTask& a, const DayTask& b) {
        return walk.key(a) < walk.key(b);
    };
    const auto by_day = [&](const DayTask& a, const DayTask& b) {
        return std::tuple(a.due, walk.key(a)) < std::tuple(b.due, walk.key(b));
    };
    std::sort(sheet.due.begin(), sheet.due.end(), by_walk);
    std::sort(sheet.overdue.begin(), sheet.overdue.end(), by_day);
    std::sort(sheet.coming.begin(), sheet.coming.end(), by_day);
    std::sort(sheet.done.begin(), sheet.done.end(), by_walk);
    return sheet;
}

} // namespace core::planning
