#pragma once

#include "core/chamber/band_time.h"
#include "core/chamber/load.h"
#include "core/chamber/sensor_trust.h"
#include "core/chamber/upset.h"
#include "core/facts/facts.h"
#include "core/services/book.h"
#include "core/services/climate.h"

#include <optional>
#include <string>
#include <vector>

/// What a chamber's page asks: its air over a time, whether its sensors may be believed, what
/// hangs in it, and what an upset did. Reads only.
namespace core::services {

/// The air of a chamber over a window, by one or two sensors laid over each other.
struct ChamberAirRequest {
    std::vector<model::Sensor> sensors; ///< one or two; the first is judged
    chamber::ClimateBand band;
    units::Instant from;
    units::Instant to;
    int pixels = 1000;
};

struct SensorAir {
    model::Sensor sensor;
    chamber::ClimateSeries series;
    std::optional<ClimateReader::Extent> extent; ///< of everything the sensor ever said
    model::Findings findings;                    ///< flat lines and steps in the window
};

struct ChamberAir {
    units::Instant from; ///< the window that was asked for
    units::Instant to;
    std::vector<SensorAir> sensors = {};
    chamber::BandTime out_of_band = {}; ///< of the first sensor, offsets applied
    /// True when the time out of band was added up from quarter-hour means, as in long windows.
    bool by_quarter_hours = false;
    model::Findings findings = {}; ///< the two sensors against each other
};

/// May run on a worker, with that worker's reader.
base::Result<ChamberAir> chamber_air(const ClimateReader& reader, const ChamberAirRequest& request);

/// The pieces hanging in a chamber as its load sees them. The water a piece gives off a day is
/// its net loss over its last two weighings at least a day apart; without them none is given.
base::Result<std::vector<chamber::LoadPiece>>
load_pieces(const Book& book, model::ChamberId chamber, units::Instant now);

/// The pieces that were in a chamber at a moment, with their stage, loss, salt, nitrite and
/// estimated water activity then, as far as the book knows them. Also those that a signed decision
/// finished or discarded since.
base::Result<std::vector<chamber::PieceThen>> pieces_then(const Book& book,
                                                          model::ChamberId chamber,
                                                          units::Instant at,
                                                          const facts::Facts& facts);

} // namespace core::services
