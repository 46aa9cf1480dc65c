#pragma once

#include "core/drying/air_path.h"
#include "core/drying/prior.h"
#include "core/model/forecast.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"
#include "core/units/time.h"

#include <optional>
#include <span>
#include <vector>

/// The drying forecast: from a piece's weighings to when its target loss is reached, with
/// probabilities that are meant to come true as stated.
///
/// Model: water moves through a slab, cylinder or ball by a diffusivity that falls as the meat
/// dries, leaves through the air film and stops at the lean's isotherm; air temperature and
/// humidity drive it. Weak priors from form, thickness and fat; a term for what the model does not
/// know that grows with the horizon. Pure, deterministic, keeps nothing between calls, thread-safe.
namespace core::drying {

/// A net weight (tare taken off). core/drying/net_series.h makes them from a piece's weighings
/// and events.
struct NetWeight {
    units::Instant at;
    units::Mass net; ///< > 0
    std::optional<units::Mass> scale_step;
};

struct ForecastRequest {
    PieceTraits traits;
    units::MassShare target = units::MassShare::percent(35); ///< loss from the reference, 0 to 1
    std::vector<NetWeight> weighings; ///< in any order; values that are not above 0 are left out
    /// The reference weight where it is not the first weighing (a green weight).
    std::optional<units::Mass> reference;
    std::vector<AirReading> air; ///< readings around the piece, in any order; may be empty
    std::optional<LearntPrior> learnt;
    std::optional<AirAhead> air_ahead; ///< what-if: the air from the last weighing on
    int band_points = 40;              ///< times in Forecast::curve; 0 for none
};

/// States: `too_few_weighings` with fewer than two weighings at different times (the levelling-off
/// loss is then the prior's; no date, no curve); `ready` when the loss at the last weighing is
/// more likely than not at the target (the dates then say when it was reached); `not_drying` when
/// nothing has been lost over four days or more; `not_reachable` when the target is more likely
/// never reached than reached; else `drying`.
///
/// Findings (values): weighing_off_curve (weight, expected, off_by; at the weighing), weight_gained
/// (gain, from; at the later weighing), rate_stalled (cause: "levelling_off", "wet_air",
/// "dry_rim" or "unclear"; rate_per_day, mean_rate_per_day), surface_drying_too_fast (loss,
/// over), humidity_contradicted (logged, implied: the losses speak for another humidity than the
/// log), target_above_levelling (target, levels_off).
model::Forecast forecast(const ForecastRequest& request);

/// Forecasts of pieces that hang together. Adds scale_shift (shift, pieces; at the weighing of
/// that day) where the weighings of one day step by the same grams in all pieces, and takes the
/// step out before forecasting.
std::vector<model::Forecast> forecast_together(std::span<const ForecastRequest> requests);

} // namespace core::drying
