#pragma once

#include "core/mix/recipe_document.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"

#include <optional>

namespace ui::presenters {

/// A dry recipe with its plain salt changed until all salt of the dose (that inside curing salts
/// included) is `total` of the raw weight; every other line stays as it is, curing salts above all.
/// The plain salt comes out in percent, to a hundredth. Absent for other methods, without a plain
/// salt that is free to change, and where the rest brings more than `total` by itself.
std::optional<core::mix::RecipeDocument>
with_salt(core::mix::RecipeDocument recipe, core::units::MassShare total, core::units::Mass meat);

} // namespace ui::presenters
