#pragma once

#include "core/model/pack.h"
#include "core/model/piece.h"

#include <cstddef>
#include <optional>
#include <vector>

/// Rules of hanging a piece again that a screen shows before the book applies them. Pure.
namespace core::actions {

/// The last weighing that stands; absent without one. By time.
std::optional<model::Weighing> last_standing(const std::vector<model::Weighing>& weighings);

/// Whether `net` of a pack is the piece itself: its only pack, nothing taken from it, and no
/// lighter than nine tenths of the piece's last weight, as a part would be.
bool hangs_whole(const model::Pack& pack, std::size_t packs_of_piece,
                 const std::vector<model::Weighing>& weighings, units::Mass net);

} // namespace core::actions
