#pragma once

#include "core/base/interval.h"
#include "core/facts/facts.h"
#include "core/mix/dose.h"
#include "core/mix/limit_checks.h"
#include "core/mix/recipe_document.h"
#include "core/mix/scale.h"
#include "core/model/finding.h"
#include "core/units/mass.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

/// From a recipe and the meat on the table to what goes on the scale, what that really is, and
/// what is wrong with it.
namespace core::mix {

/// A piece of meat to be cured: its green weight as weighed, skin included.
struct MeatPiece {
    std::string code;
    units::Mass mass;
};

struct MixRequest {
    RecipeDocument recipe;
    std::vector<MeatPiece> pieces;         ///< one or more
    std::optional<units::Mass> scale_step; ///< resolution of the scale the cure is weighed on
    std::optional<std::string> limits;     ///< overrides the recipe's own limit set
    std::optional<units::Day> today;       ///< to tell whether a limit set is in force
};

/// One ingredient on the sheet, for one piece or for all of the meat.
struct SheetLine {
    std::size_t line = 0; ///< index into the recipe's lines
    std::string ingredient;
    std::string name;
    /// What the recipe asks for: low and high from spoon and density spread.
    MassInterval amount = no_mass;
    /// What to put on the scale: `amount.best` on the scale's step. Never rounded up where that
    /// would carry nitrite or nitrate past the chosen limit. Equals `amount.best` without a step.
    units::Mass weigh_out = units::Mass::grams(0);
    /// Half a step as a share of `weigh_out`; nothing without a scale step.
    std::optional<double> step_error;
    /// The volume of liquids, for a measuring jug.
    std::optional<units::Volume> volume;
    /// `weigh_out` split over the rubs in time; empty with one rub.
    std::vector<units::Mass> rubs;
};

struct PieceSheet {
    std::string code;
    units::Mass meat = units::Mass::grams(0);
    std::vector<SheetLine> lines; ///< in recipe order
    Dose as_weighed;              ///< of the rounded amounts, half a step either way
};

struct MixSheet {
    units::Mass meat = units::Mass::grams(0); ///< all pieces
    std::vector<SheetLine> lines;             ///< for all of the meat, weighed at once
    std::vector<PieceSheet> pieces;
    Dose dose;                         ///< as written, liquids fully taken up
    std::optional<Dose> half_absorbed; ///< with half of the liquids; only where there are any
    std::vector<LimitCheck> limits;    ///< empty without a limit set
    std::vector<ScaleAdvice> scale;    ///< lines the scale is too coarse for
    model::Findings findings;          ///< all of them; codes in checks.h

    [[nodiscard]] bool has_stop() const;
};

/// The sheet of a request. Never fails: what cannot be computed is a stop finding, and the lines
/// that can be are still there. Doses of the whole are those of every piece where the recipe is
/// proportional; fixed amounts are shared out by weight.
MixSheet make_mix_sheet(const MixRequest& request, const facts::Facts& facts);

} // namespace core::mix
