#pragma once

#include "core/model/forecast.h"
#include "ui/presenters/forecasts.h"

#include <vector>

namespace ui::presenters {

/// The forecasts of pieces that hang together, in their order. Pure and slow (milliseconds a
/// piece): call it through Forecasts.
std::vector<core::model::Forecast> forecast_pieces(const std::vector<PieceRecord>& records,
                                                   core::units::Instant now);

} // namespace ui::presenters
