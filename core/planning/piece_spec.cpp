#include "core/planning/piece_spec.h"

namespace core::planning {

PieceSpec usual_piece(const model::PlanTemplate& plan) {
    return {.code = {},
            .form = plan.usual_form,
            .thickness = plan.usual_thickness,
            .raw_weight = plan.usual_weight,
            .target = plan.usual_target};
}

PieceSpec with_usual(PieceSpec piece, const model::PlanTemplate& plan) {
    if (!piece.thickness) {
        piece.thickness = plan.usual_thickness;
    }
    if (!piece.raw_weight) {
        piece.raw_weight = plan.usual_weight;
    }
    if (!piece.target) {
        piece.target = plan.usual_target;
    }
    return piece;
}

} // namespace core::planning
