#pragma once

#include "core/drying/forecast.h"
#include "core/model/forecast.h"
#include "ui/presenters/forecasts.h"

#include <optional>
#include <vector>

namespace ui::presenters {

/// What a piece's forecast is made from, without its lesson. Absent without a target or the weight
/// that it counts from.
std::optional<core::drying::ForecastRequest> request_of(const PieceRecord& record);

/// The same with what own finished pieces teach: what the pages forecast from. The first time a
/// lesson is asked it is slow (see Lesson::learnt).
std::optional<core::drying::ForecastRequest> taught_request_of(const PieceRecord& record);

/// The forecasts of pieces that hang together, in their order. Pure and slow (milliseconds a
/// piece): call it through Forecasts.
std::vector<core::model::Forecast> forecast_pieces(const std::vector<PieceRecord>& records,
                                                   core::units::Instant now);

} // namespace ui::presenters
