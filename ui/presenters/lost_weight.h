#pragma once

#include "core/drying/green_weight.h"
#include "core/services/book.h"
#include "ui/presenters/piece_line.h"

#include <optional>

/// A start weight that was never written down.
namespace ui::presenters {

/// What it probably was when it was hung at `hung`: by the pieces of its batch that have theirs,
/// else by the piece's own course, then with a wide range. Absent without a weighing since.
std::optional<core::drying::GreenWeightEstimate>
lost_weight(const core::services::Book& book, const PieceLine& line, core::units::Instant hung);

/// The event that puts it into the book: hung, with a net weight. Where the piece was hung by an
/// event without a weight this comes just before it, so that it is the one that counts.
core::model::PieceEvent lost_weight_event(const PieceLine& line, core::units::Instant hung,
                                          core::units::Mass net);

} // namespace ui::presenters
