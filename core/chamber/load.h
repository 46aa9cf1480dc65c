#pragma once

#include "core/model/chamber.h"
#include "core/model/finding.h"
#include "core/model/piece.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

/// How much water the pieces in a chamber give off a day, against what the chamber can carry out.
namespace core::chamber {

/// A piece as the load sees it.
struct LoadPiece {
    model::PieceId piece;
    std::string code;
    std::string position;
    units::Mass net;                             ///< now
    units::Duration hung;                        ///< since hanging; 0 for one about to be hung
    std::optional<units::MassShare> loss;        ///< of the hung net weight
    std::optional<units::MassShare> target_loss; ///< of the hung net weight
    /// From its own weighings (core/drying); absent: the usual pace of its age is taken.
    std::optional<units::Mass> water_per_day;
};

struct PieceLoad {
    LoadPiece piece;
    units::Mass water_per_day; ///< best guess
    bool measured = false;     ///< from its own weighings
};

struct ChamberLoad {
    std::vector<PieceLoad> pieces; ///< the wettest first
    units::Mass water_per_day = units::Mass::grams(0);
    std::optional<double> share_of_capacity; ///< absent when the capacity is not known
    std::optional<int> free_places;          ///< absent when places are not counted; never < 0
    /// Pairs worth swapping: the fastest drying with the slowest of nearly the same age, so that
    /// corners even out. At most three.
    struct Swap {
        model::PieceId fast;
        model::PieceId slow;
    };
    std::vector<Swap> rotation;
    /// `load_over_capacity`, `load_small` (under a tenth of it: air dries the surface too fast),
    /// `places_over` - values in g a day and numbers.
    model::Findings findings;
};

/// The usual loss of whole muscle as a share of its present weight a day, by time since hanging:
/// 2 % in the first week, 0.9 % to the fourth, 0.3 % after (common practice, no source: about
/// 15 % in the first bare week, 0.6-1.2 % a day over the first weeks, about 2 % a week late).
units::MassShare usual_loss_per_day(units::Duration hung);

ChamberLoad load_of(const model::Chamber& chamber, std::span<const LoadPiece> pieces);

/// Before `joining` is hung with `there`: `wet_batch_joins_dry` when pieces that have reached
/// 0.8 of their target or more hang there and the joining ones would more than double the water
/// a day; and what load_of says of them all together.
model::Findings before_hanging(const model::Chamber& chamber, std::span<const LoadPiece> there,
                               std::span<const LoadPiece> joining);

} // namespace core::chamber
