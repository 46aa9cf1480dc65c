#pragma once

#include "core/model/plan.h"
#include "core/units/time.h"

#include <string>
#include <vector>

namespace core::planning {

/// One expected piece of routine work.
struct RoutineDay {
    std::string verb;
    std::string series; ///< which routine of the stage: "0", "1", and "0a" for its single times
    int number = 1;     ///< counts within the series from 1
    units::Day day;
};

/// The routine work of a stage from its start day up to, not including, its end day, by day. Times
/// count from the morning of the first day; two turns 12 h apart may fall on one day.
std::vector<RoutineDay> routine_days(const model::StageTemplate& stage, units::Day start,
                                     units::Day end);

} // namespace core::planning
