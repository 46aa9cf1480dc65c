#pragma once

#include "core/base/result.h"
#include "core/model/plan.h"

#include <string>
#include <string_view>
#include <vector>

/// Stage and plan templates as JSON text: the files of resources/plans, and how the book keeps
/// the template a stage was made from. Keys carry their unit ("every_days"), an unknown key is a
/// fault, and reading reports every fault of a document at once. Writing then reading gives the
/// same value back.
///
/// A stage: {"name", "kind", "salting"?, "temperature_c"?, "humidity_percent"?,
/// "temperature_pulse"?, "humidity_pulse"?, "ends"?, "ends_by_all"?, "typical_days"?,
/// "routines"?, "weight"?, "repeats"?, "repeat_with_next"?, "repeats_at_least"?,
/// "repeats_at_most"?, "optional"?, "pauses_when_frozen"?, "pauses_out_of_band"?,
/// "same_room_as"?, "note"?}. A band is {"low", "high"} or, for a ramp, {"low", "high",
/// "low_at_end", "high_at_end"}; a pulse {"low", "high", "every_hours", "lasting_hours"}.
namespace core::model {

/// The value, or every fault found; `where` of a fault is a path such as "stages[2].ends[0]".
template <class T>
using ReadResult = tl::expected<T, std::vector<base::Error>>;

ReadResult<StageTemplate> read_stage_template(std::string_view json);
ReadResult<PlanTemplate> read_plan_template(std::string_view json);

/// One line, keys in a fixed order; what has its default value is left out.
std::string write_stage_template(const StageTemplate& stage);
std::string write_plan_template(const PlanTemplate& plan);

/// Stable names, as in the documents ("salt", "days_per_cm").
std::string_view name_of(StageKind kind);
std::string_view name_of(EndCondition::Kind kind);
std::string_view name_of(SaltingMethod method);
std::string_view name_of(WeightEffect effect);

} // namespace core::model
