#pragma once

#include "core/doneness/evidence.h"
#include "core/services/book.h"

#include <optional>
#include <vector>

/// What air one piece had, by the logs of the chambers it hung in. Reads only.
namespace core::services {

/// A time in one chamber. A piece whose chamber was not known then has no stay for it.
struct StageStay {
    model::ChamberId chamber;
    units::Instant from;
    units::Instant to;
};

/// Where the piece was over [from, to), by its own events that name a chamber; before the first
/// of them in `stage_chamber`, else, where it never moved, in the piece's present chamber. Pure.
std::vector<StageStay> stage_stays(const PieceHistory& history,
                                   std::optional<model::ChamberId> stage_chamber,
                                   units::Instant from, units::Instant to);

/// The started stages as the evidence sheet takes them, in order, each with lowest, mean and
/// highest of its logs and the time out of its band. Ramps and pulses of the band are followed;
/// where the stage has no band the chamber's counts. By quarter-hour means with the sensors'
/// offsets applied; a quarter of an hour stands for at most two hours, what is beyond is silent.
/// The first sensor of a chamber that has readings in a stay speaks for it. Fails as reads fail.
base::Result<std::vector<doneness::StageRecord>>
stage_records(const Book& book, const PieceHistory& history, units::Instant now);

/// Mean humidity where the piece hangs, over the last `window` before `now`; absent without a
/// chamber or readings. Fails as reads fail.
base::Result<std::optional<units::RelativeHumidity>>
humidity_lately(const Book& book, const model::Piece& piece, units::Instant now,
                units::Duration window = units::Duration::days(7));

} // namespace core::services
