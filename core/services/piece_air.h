#pragma once

#include "core/drying/air_path.h"
#include "core/services/book.h"
#include "core/services/climate.h"

#include <map>
#include <optional>
#include <vector>

namespace core::services {

/// A time a piece hung in one place. `chamber` is absent where nobody wrote down which.
struct Stay {
    std::optional<model::ChamberId> chamber;
    units::Instant from;
    units::Instant to;
    friend bool operator==(const Stay&, const Stay&) = default;
};

/// Where a piece hung from its (first) hanging until `now`, by its events; by its own entry where
/// no event names a chamber. Frozen times are left out. Empty for a piece that was never hung.
std::vector<Stay> stays_of(const PieceHistory& history, units::Instant now);

/// The air around pieces of a book, read once a chamber: six-hour means, as fine as the drying
/// model steps. Where a chamber has several sensors, the one with most to say speaks for it.
/// One thread uses one of these; cheap to make anew after each change of the book.
class PieceAir {
  public:
    /// Reads through a connection of its own. A book without a file (or that cannot be read) has
    /// no air: a forecast then assumes the usual one and is wider.
    PieceAir(const Book& book, units::Instant now);

    /// By time, sensor offsets applied; only readings that have both temperature and humidity.
    /// Readings before a frozen time are moved later by its length, as core/drying/net_series
    /// moves the weighings.
    std::vector<drying::AirReading> around(const PieceHistory& history);

  private:
    struct Air {
        units::Instant from; ///< how far back `readings` reach
        std::vector<drying::AirReading> readings;
    };
    const Air& of(model::ChamberId chamber, units::Instant from);
    [[nodiscard]] std::vector<drying::AirReading> read(const model::Sensor& sensor,
                                                       units::Instant from) const;

    std::vector<model::Sensor> sensors_;
    std::optional<ClimateReader> reader_;
    units::Instant now_;
    std::map<std::int64_t, Air> by_chamber_;
};

} // namespace core::services
