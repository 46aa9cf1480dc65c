#pragma once

#include "core/model/piece.h"
#include "core/model/plan.h"

#include <optional>
#include <string>

namespace core::planning {

/// What is known of a piece when a plan is made for it. What is not known is taken from the
/// template's usual piece, and a finding says so.
struct PieceSpec {
    std::string code; ///< as it will stand on the tag; may be empty
    model::Form form = model::Form::slab;
    std::optional<units::Length> thickness; ///< at the thickest point
    std::optional<units::Mass> raw_weight;
    std::optional<model::Target> target;
};

/// The piece a template is written for.
PieceSpec usual_piece(const model::PlanTemplate& plan);

/// `piece` with the gaps filled from the template's usual piece.
PieceSpec with_usual(PieceSpec piece, const model::PlanTemplate& plan);

} // namespace core::planning
