#include "core/planning/expand.h"

#include <algorithm>

namespace core::planning {
namespace {

bool is_skipped(const model::StageTemplate& stage, const PlanChoices& choices) {
    return stage.optional && std::find(choices.skipped.begin(), choices.skipped.end(),
                                       stage.name) != choices.skipped.end();
}

int rounds_of(const model::StageTemplate& stage, const PlanChoices& choices) {
    const auto chosen = choices.rounds.find(stage.name);
    if (chosen == choices.rounds.end()) {
        return std::max(1, stage.repeats);
    }
    const int least = std::max(1, std::min(stage.repeats_at_least, stage.repeats));
    const int most = std::max(stage.repeats_at_most, stage.repeats);
    return std::clamp(chosen->second, least, std::max(least, most));
}

} // namespace

std::vector<ExpandedStage> expand(const model::PlanTemplate& plan, const PlanChoices& choices) {
    std::vector<ExpandedStage> out;
    for (std::size_t i = 0; i < plan.stages.size();) {
        const auto& first = plan.stages[i];
        const std::size_t last =
            std::min(plan.stages.size() - 1,
                     i + static_cast<std::size_t>(std::max(0, first.repeat_with_next)));
        const int rounds = rounds_of(first, choices);
        for (int round = 1; round <= rounds; ++round) {
            for (std::size_t j = i; j <= last; ++j) {
                if (!is_skipped(plan.stages[j], choices)) {
                    out.push_back({plan.stages[j], j, round, rounds});
                }
            }
        }
        i = last + 1;
    }
    return out;
}

} // namespace core::planning
