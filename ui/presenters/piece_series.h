#pragma once

#include "core/drying/net_series.h"
#include "ui/presenters/piece_line.h"

namespace ui::presenters {

/// The net series of a piece with its kin's: what its numbers, its forecast and its evidence are
/// all made from.
core::drying::NetSeries series_of(const core::services::PieceHistory& history, const Kin& kin);

} // namespace ui::presenters
