#pragma once

#include "core/mix/mix_sheet.h"

#include <string>

namespace app::cli {

/// One JSON object (see DEVELOPERS.md, "Command line"): masses in grams, salt, sugar, water and
/// alcohol in percent, nitrite and nitrate in ppm and as ions in mg/kg, each as low, best, high.
std::string mix_sheet_json(const core::mix::MixSheet& sheet,
                           const core::mix::RecipeDocument& recipe, const std::string& limits);

/// The sheet for a person at a terminal, in grams.
std::string mix_sheet_words(const core::mix::MixSheet& sheet,
                            const core::mix::RecipeDocument& recipe, const std::string& limits);

/// A finding of the mix bench as one sentence.
std::string mix_finding_words(const core::model::Finding& finding);

} // namespace app::cli
