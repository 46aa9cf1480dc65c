#pragma once

#include "core/model/plan.h"

#include <map>
#include <string>
#include <vector>

namespace core::planning {

/// What a person decides about a template for one batch.
struct PlanChoices {
    std::vector<std::string> skipped;  ///< names of optional stages left out
    std::map<std::string, int> rounds; ///< by name of the repeating stage, within its bounds
    std::map<std::string, model::ChamberId> chambers; ///< where a stage takes place
};

/// One stage of the plan after repeats are written out.
struct ExpandedStage {
    model::StageTemplate what;
    std::size_t template_index = 0;
    int round = 1; ///< 1 to rounds
    int rounds = 1;
};

/// Writes out repeats ("smoke, air" 8 times gives 16 stages) and leaves out skipped ones. A stage
/// that is not optional cannot be skipped; rounds are held within the template's bounds.
std::vector<ExpandedStage> expand(const model::PlanTemplate& plan, const PlanChoices& choices);

} // namespace core::planning
