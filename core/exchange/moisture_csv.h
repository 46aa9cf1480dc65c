#pragma once

#include "core/exchange/weighings_csv.h"

namespace core::exchange {

/// How a series of moisture contents becomes weighings.
struct MoistureImport {
    /// Mass of the piece at its first dated stage. Required because a moisture series has no
    /// mass of its own; losses do not depend on it.
    units::Mass start_mass = units::Mass::kilograms(1);
    units::Instant day_zero = units::Instant::from_unix_seconds(0); ///< the moment of day 0
    model::WeighedState state = model::WeighedState::cured;
    CsvLimits limits{};
};

/// Reads a published or own series of moisture contents (% of the wet mass) and derives the mass
/// the piece must have had, given that only water leaves it:
///     dry = W0 (1 - m0),  W = dry / (1 - m)
/// with m0 and W0 = start_mass at the first dated row of each piece in time order. The standard
/// deviation of a moisture, where told, becomes that of the mass: sW = W sm / (1 - m).
/// Columns: piece (or: formulation, series, sample), day (or: ripening_day, days),
/// moisture_percent (or: moisture_pct_wb, moisture), and optional sd (percentage points), stage
/// (kept as the weighing's note). Rows with an empty day (raw, packed stages) are set aside:
/// they have no place in time. Fails as read_weighings_csv does.
base::Result<ImportedWeighings> read_moisture_csv(std::string_view bytes,
                                                  const MoistureImport& import = {});

/// Water per dry mass (kg/kg) at moisture share `m` of the wet mass: X = m / (1 - m).
/// `m` must be below 1.
double moisture_dry_basis(units::MassShare m);

} // namespace core::exchange
