#pragma once

// Internal to the demo book: the invented producer's batches as data.

#include "core/model/piece.h"

#include <string>
#include <vector>

namespace core::services::demo {

/// Net weight of a hanging piece as a share of its hung weight after `days`: a fast and a slow
/// part, levelling off. Written for the story, to look like weighings people publish.
struct Curve {
    double levels_off; ///< loss at rest, fraction of the hung weight
    double fast_share; ///< of that loss, lost in the fast part
    double fast_days;  ///< time constant of the fast part
    double slow_days;  ///< time constant of the slow part
    [[nodiscard]] double remaining(double days) const;
};

struct PieceStory {
    double raw_grams;
    double thickness_mm;
    double fat; ///< fraction
    const char* name;
};

enum class Rhythm { weekly, every_other_day };

struct BatchStory {
    const char* code;
    const char* name;
    const char* product;
    const char* species;
    int recipe; ///< index into recipes()
    int started_days_ago;
    int cure_days;
    int rest_days;
    double target_loss;
    model::Form form;
    model::SkinSide skin;
    int chamber; ///< 0 cellar, 1 cabinet
    double tare_grams;
    bool coated;
    Rhythm rhythm;
    Curve curve;
    std::vector<PieceStory> pieces;
};

struct RecipeStory {
    const char* name;
    const char* document; ///< see core/mix/recipe_document.h
};

const std::vector<BatchStory>& batches();
const std::vector<RecipeStory>& recipes();

} // namespace core::services::demo
