#pragma once

#include "core/drying/piece_fit.h"

#include <span>
#include <vector>

namespace core::drying {

/// A step of the weights, the same in grams for the pieces weighed that day: the scale's zero or
/// a hook, not the meat.
struct ScaleShift {
    units::Instant day; ///< the earliest weighing it shows in
    double grams;       ///< shown minus true, from then on
    double sd;
    bool only_that_day;                 ///< the weighings after it are as before
    std::vector<std::size_t> pieces;    ///< indices of the pieces it shows in
    std::vector<std::size_t> weighings; ///< for each of them, the index of its weighing
};

/// `fits` must have no weighing set aside (FitOptions::most_off = 0). Looks at every round of
/// weighings (within 12 h of each other) that at least three pieces took part in, not their first.
/// A shift is believed when the pieces agree on its size, most of them speak for it one by one, and
/// together at six standard deviations or more. At most one for the span looked at: the clearest.
std::vector<ScaleShift> find_scale_shifts(std::span<const PreparedPiece> pieces,
                                          std::span<const PieceFit> fits);

/// The piece's weighings with the shift taken out.
void take_out(const ScaleShift& shift, std::size_t weighing, PreparedPiece& piece);

} // namespace core::drying
