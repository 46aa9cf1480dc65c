#pragma once

#include "core/facts/limits.h"
#include "core/mix/dose.h"
#include "core/mix/recipe_document.h"
#include "core/model/finding.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::mix {

/// One limit of the chosen set against the dose.
struct LimitCheck {
    facts::Limit limit;
    ShareInterval value = no_share; ///< on the limit's own terms (salt or ion, basis, skin off)
    enum class Outcome {
        within,
        above,
        below,
        not_permitted_used,
        not_computable, ///< a residual limit, or an unknown composition
    } outcome = Outcome::within;
    bool verified = false; ///< show as unverified where false
};

/// The share of the weighed piece that the ppm sum is made on: 1, or less the skin where the set
/// takes it off and the piece has skin on.
[[nodiscard]] double basis_share(const facts::LimitSet& set, const Meat& meat,
                                 const facts::Constants& constants);

/// The dose as `limit` counts it.
[[nodiscard]] ShareInterval value_for(const facts::Limit& limit, const Dose& dose,
                                      double basis_share,
                                      std::optional<units::MassShare> expected_loss);

/// All limits of `set`. Findings: limit_exceeded (stop), limit_not_permitted (stop),
/// limit_within_spread (caution: the best value keeps it, the upper bound does not),
/// limit_minimum (caution), limit_residual (note: only a laboratory can tell), limit_needs_loss
/// (caution: a limit on the finished weight without an expected loss), limit_unverified
/// (caution, once), limit_not_in_force (caution), limit_other_route (caution), skin_taken_off
/// (note). Each carries the limit's source.
std::vector<LimitCheck> check_limits(const facts::LimitSet& set, const RecipeDocument& recipe,
                                     const Dose& dose, const facts::Constants& constants,
                                     std::optional<units::Day> today, model::Findings& findings);

} // namespace core::mix
