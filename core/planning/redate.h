#pragma once

#include "core/model/finding.h"
#include "core/model/plan.h"
#include "core/units/zone.h"

#include <map>
#include <vector>

namespace core::planning {

/// What is known of the stages beyond their dates.
struct StageProgress {
    /// Time that did not count (read_clock), for a stage that runs; moves its end.
    std::map<model::StageId, units::Duration> paused;
    /// Where the pieces' own forecast says the running stage ends.
    std::map<model::StageId, units::Day> expected_end;
};

/// The stages of one batch, by order, with the planned days of what has not started moved to where
/// they now lie: after the real end of what is done and the expected end of what runs, never
/// before `today`. Each keeps its planned length; planned days of done stages stay, so that plan
/// and reality can be compared. A running stage that is overdue is expected to end today.
std::vector<model::Stage> redate(std::vector<model::Stage> stages, const StageProgress& progress,
                                 units::Day today, const units::Zone& zone);

/// How a done stage differed from its plan.
struct StageDeviation {
    model::StageId stage;
    int started_late_days = 0; ///< negative: early
    int lasted_longer_days = 0;
};
std::vector<StageDeviation> deviations(const std::vector<model::Stage>& stages,
                                       const units::Zone& zone);

/// Stages planned or ended shorter than a fixed time or rule asks for: the shorter cure that must
/// not be made for a date. `pieces` decide weight and thickness rules. Code cure_too_short (stop;
/// place: stage; values days, needed) for salting, equalising and resting stages.
struct PieceSpec;
model::Findings check_cure_lengths(const std::vector<model::Stage>& stages,
                                   const std::vector<PieceSpec>& pieces, const units::Zone& zone);

} // namespace core::planning
