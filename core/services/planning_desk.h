#pragma once

#include "core/model/forecast.h"
#include "core/planning/day_sheet.h"
#include "core/planning/own_history.h"
#include "core/planning/stage_length.h"
#include "core/planning/weigh_round.h"
#include "core/services/book.h"
#include "core/units/zone.h"

#include <functional>
#include <map>
#include <optional>
#include <vector>

/// What planning makes of an open book: plain values read, handed to core/planning, and given back.
namespace core::services {

/// How a piece's forecast is come by; empty when there is none. The window hands in its cache.
using ForecastSource = std::function<std::optional<model::Forecast>(const PieceHistory&)>;

struct DeskView {
    units::Instant now;
    units::Zone zone;
    int horizon_days = 7; ///< of the day sheet
    ForecastSource forecast_of;
};

/// The stages of open batches with the days of what is still to come moved to where they now lie:
/// after real ends, frozen time and the pieces' own forecasts (planning::redate).
base::Result<std::vector<model::Stage>> current_stages(const Book& book, const DeskView& view);

base::Result<planning::DaySheet> day_sheet(const Book& book, const DeskView& view);

/// Pieces that were hung and then signed off as done, for learning. `product` is the batch's, as
/// product_key. The loss counts from the net weight at hanging and is absent where the piece was
/// cut in between; the salt is that of the recipe as used (salt_dose_of).
base::Result<std::vector<planning::FinishedPiece>> finished_pieces(const Book& book,
                                                                   const units::Zone& zone);

/// Products are compared without regard to case or outer blanks.
std::string product_key(const std::string& product);

/// Where open-ended stages of a plan for `product` take their length from: the user's own pieces.
planning::LengthSources length_sources(const std::vector<planning::FinishedPiece>& finished,
                                       const std::string& product);

/// The pieces' weigh-in round: those drying, in hanging order, with the last value and what the
/// scale should show.
base::Result<std::vector<planning::RoundRow>>
weigh_round(const Book& book, const DeskView& view, std::optional<model::ChamberId> chamber = {});

} // namespace core::services
