#pragma once

#include "core/planning/day_sheet.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace core::planning {

/// What the makers of tasks share. Made once a sheet.
struct DayContext {
    DayContext(const DaySheetInput& input, units::Day day);

    const DaySheetInput& in;
    units::Day today;
    units::Day horizon;
    std::vector<const model::Piece*> open;        ///< not finished or gone, in hanging order
    std::map<model::PieceId, units::Day> weighed; ///< the day of the last weighing
    std::set<std::string> ticked;                 ///< keys
};

/// Each appends what is or will be due by the horizon, ticked ones included, unsorted.
/// Routine work of running stages, and their changes. Occurrences of one routine that were all
/// missed are collapsed into the latest, with the first missed day as its due day.
void add_stage_tasks(const DayContext& context, std::vector<DayTask>& out);
/// Reviews and weighings that single pieces ask for.
void add_piece_tasks(const DayContext& context, std::vector<DayTask>& out);
/// Instruments, sensors and stock.
void add_upkeep_tasks(const DayContext& context, std::vector<DayTask>& out);

/// "2026-03-01", as it stands in keys.
std::string key_day(units::Day day);

} // namespace core::planning
