#pragma once

#include "core/planning/catalogue.h"
#include "core/planning/dated_plan.h"

#include <optional>
#include <vector>

namespace core::planning {

/// How sure the date must be met.
enum class Slack {
    none,     ///< the likely end falls on the date
    cautious, ///< the late end does: the stages' spreads are kept as slack
};

struct BackPlanRequest {
    const model::PlanTemplate& plan;
    std::vector<PieceSpec> pieces;
    units::Day wanted_on; ///< the day it should be ready
    units::Day today;     ///< nothing can start before it
    Slack slack = Slack::cautious;
    PlanChoices choices;
    /// Where other products are looked for; none without it.
    const Catalogue* catalogue = nullptr;
};

/// A smaller piece that would be ready in time.
struct SmallerPiece {
    units::Length thickness; ///< at most, in whole millimetres
    units::Mass weight;      ///< at most, in steps of 10 g
    double of_weight;        ///< its share of the piece asked for, below 1
    units::Day ready_by;
};

struct OtherProduct {
    std::string template_id;
    std::string name;
    int days;       ///< it needs, with the slack asked for, for its usual piece
    int days_spare; ///< 0 or more
    bool same_meat;
};

struct BackPlan {
    /// The plan with the latest start that meets the date; absent when it cannot be met.
    std::optional<DatedPlan> plan;
    std::optional<units::Day> latest_start; ///< may be in the past; absent when no start would do
    int shortfall_days = 0;                 ///< how many days too late it is; 0 when it fits
    /// Why not: date_passed, too_little_time (values days_needed, days_available, shortfall),
    /// stage_cannot_be_shorter (place: stage; values days; for each stage that a rule, a fixed time
    /// or a published minimum holds, with its source), and what the plan itself found.
    model::Findings reasons;
    std::optional<units::Day> ready_if_started_today;
    std::optional<SmallerPiece> smaller;
    std::vector<OtherProduct> others; ///< best fit first
};

/// Plans backwards from a date. When the date cannot be met the answer is no: the offers are a
/// smaller piece, another product or a later day, never a stronger dose or a shorter cure.
BackPlan plan_back(const BackPlanRequest& request, const LengthSources& sources = {});

} // namespace core::planning
