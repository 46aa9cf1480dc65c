#pragma once

#include "core/mix/amounts.h"
#include "core/mix/dose.h"
#include "core/mix/recipe_document.h"
#include "core/model/finding.h"
#include "core/units/mass.h"

#include <vector>

/// Slips that arithmetic alone does not see: they are recognised by a dose that no practice
/// asks for, and by the ordinary dose that one familiar mistake away would give.
namespace core::mix {

struct CheckInput {
    const RecipeDocument& recipe;
    const ResolvedRecipe& resolved;
    const std::vector<MassInterval>& masses; ///< a line each
    const Dose& dose;
    units::Mass meat;
};

/// Of the recipe's form. Stops: no_lines, pump_missing, pickup_missing, uptake_as_proportion,
/// pump_implausible, rubs_not_whole, rubs_out_of_order, rub_unknown, loss_implausible,
/// water_missing (a pickle without water), amount_zero. Cautions: moisture_implausible,
/// skin_share_implausible, fixed_amount_does_not_scale (note), uptake_unknown (box).
void check_form(const CheckInput& input, model::Findings& findings);

/// Of the dose. Stops: cure_taken_for_salt, tenfold_high, tenfold_low, share_as_proportion,
/// spoon_swap, nitrite_above_any_limit, nitrate_above_any_limit. Cautions: cure_by_spoon,
/// undiluted_cure, weak_cure_taken_for_strong, salt_low, salt_high, sugar_high,
/// accelerator_high, nitrite_high (no limit set chosen). Notes: no_nitrite.
void check_dose(const CheckInput& input, bool limit_set_chosen, model::Findings& findings);

/// Of the weights of the pieces. Stops: no_meat, meat_weight_missing. Cautions:
/// meat_weight_small, meat_weight_large.
struct MeatPiece;
void check_meat(const std::vector<MeatPiece>& pieces, model::Findings& findings);

} // namespace core::mix
