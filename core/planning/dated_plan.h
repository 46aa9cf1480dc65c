#pragma once

#include "core/model/finding.h"
#include "core/model/plan.h"
#include "core/planning/expand.h"
#include "core/planning/stage_length.h"
#include "core/units/time.h"

#include <optional>
#include <vector>

namespace core::planning {

/// A stage with its days. `end` of one is `start` of the next: the day the work of changing over
/// is done. Stages under a day may start and end on the same day.
struct PlannedStage {
    ExpandedStage stage;
    StageLength length;
    units::Day start;
    units::Day earliest_end;
    units::Day end;
    units::Day latest_end;
    std::optional<model::ChamberId> chamber;
};

struct DatedPlan {
    std::string template_id;
    units::Day start;
    std::vector<PlannedStage> stages;
    units::Day earliest_end;
    units::Day end;        ///< the likely last day
    units::Day latest_end; ///< with the slack that the stages' spreads ask for
    /// Codes: stage_length_unknown (place: stage), weight_assumed, thickness_assumed (place:
    /// piece), lengthened_to_minimum (values code, days, needed; with source),
    /// rule_for_other_method (place: stage), no_pieces.
    model::Findings findings;
};

struct PlanRequest {
    const model::PlanTemplate& plan;
    std::vector<PieceSpec> pieces; ///< empty: planned for the template's usual piece
    units::Day start;
    PlanChoices choices;
};

/// Dates a template for these pieces. The stages follow each other without gaps; a plan that a
/// published minimum applies to (PlanTemplate::minima) is lengthened until it meets it. Spreads of
/// stages are taken as independent, so they add up as the root of the sum of squares.
DatedPlan date_plan(const PlanRequest& request, const LengthSources& sources = {});

/// The plan as stages of a batch, unassigned, in order.
std::vector<model::Stage> to_stages(const DatedPlan& plan);

/// Whole days from start to the likely end.
inline int days_of(const DatedPlan& plan) {
    return plan.end - plan.start;
}
inline int cautious_days_of(const DatedPlan& plan) {
    return plan.latest_end - plan.start;
}

} // namespace core::planning
