#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/forecast.h"
#include "core/model/pack.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "core/units/zone.h"

#include <map>
#include <string>
#include <vector>

namespace core::planning {

/// What the day sheet is made from: the open part of the book. Nothing is kept of the sheet itself
/// but the ticks, so a corrected entry cannot leave a stale task.
struct DaySheetInput {
    units::Instant now;
    const units::Zone& zone;
    int horizon_days = 7; ///< how far ahead "coming" looks
    std::vector<model::Batch> batches;
    std::vector<model::Piece> pieces;
    std::vector<model::Stage> stages;            ///< of open batches; redated
    std::vector<model::Weighing> last_weighings; ///< the last standing one of each piece
    std::map<model::PieceId, model::Forecast> forecasts;
    std::vector<model::Decision> decisions;
    std::vector<model::Sensor> sensors;
    std::vector<model::Instrument> instruments;
    std::vector<model::CalibrationCheck> checks;
    std::vector<model::Pack> packs;
    std::vector<model::TaskTick> ticks; ///< withdrawn ones do not count
};

/// A line of the sheet. Which ids are set depends on the verb.
struct DayTask {
    /// Names the task for ticking. The same however often the sheet is made; another occurrence of
    /// the same routine has another key.
    std::string key;
    /// turn, rub_again, massage, weigh, wipe, rotate, check and whatever else a template names;
    /// start_stage, end_stage, review, weigh_again, calibrate, check_sensor, eat_first.
    std::string verb;
    units::Day due;
    int days_overdue = 0;
    int missed = 0; ///< earlier occurrences that were not ticked and are replaced by this one
    std::optional<model::BatchId> batch;
    std::optional<model::StageId> stage;
    std::string stage_name;
    std::optional<model::ChamberId> chamber;
    std::vector<model::PieceId> pieces; ///< in hanging order
    std::optional<model::InstrumentId> instrument;
    std::optional<model::SensorId> sensor;
    std::vector<model::PackId> packs;  ///< the nearest keep-by day first
    std::optional<model::TaskId> tick; ///< of a done task: for taking the tick back
};

/// Each list in the order the work is walked: by chamber and hanging order, weighing first;
/// overdue and coming ones by day before that.
struct DaySheet {
    units::Day today;
    std::vector<DayTask> overdue;
    std::vector<DayTask> due; ///< today
    std::vector<DayTask> coming;
    std::vector<DayTask> done; ///< ticked today
    [[nodiscard]] bool nothing_to_do() const { return overdue.empty() && due.empty(); }
};

DaySheet make_day_sheet(const DaySheetInput& input);

} // namespace core::planning
