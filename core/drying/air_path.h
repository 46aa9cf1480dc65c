#pragma once

#include "core/units/relative_humidity.h"
#include "core/units/temperature.h"
#include "core/units/time.h"

#include <span>
#include <vector>

namespace core::drying {

/// A reading of the air around a piece.
struct AirReading {
    units::Instant at;
    units::Temperature temperature;
    units::RelativeHumidity humidity;
};

/// The air over one time step of the drying model.
struct AirStep {
    double days;
    double saturated_vapour;   ///< kg of vapour in a m3 of saturated air at the air's temperature
    double humidity;           ///< share, 0 to 1
    double diffusivity_factor; ///< Arrhenius, 1 at 13 C
};

/// The air a piece has hung in and is expected to hang in, cut into the model's time steps.
struct AirPath {
    std::vector<AirStep> steps;   ///< the first begins at the first weighing
    double now_day = 0;           ///< end of the part for which there are weighings
    double log_end_day = 0;       ///< end of the climate log; 0 without one
    bool known = false;           ///< made from a climate log
    double ahead_humidity = 0;    ///< share expected beyond the log, for the levelling-off loss
    double ahead_humidity_sd = 0; ///< how far the mean humidity ahead may lie from that
    double ahead_temperature_c = 0;
};

/// What is assumed where nothing is known of the air: common practice for drying whole muscle,
/// no source (10-15 C, most settle on 70-75 %).
struct UsualAir {
    double temperature_c = 13;
    double humidity_percent = 75;
    double mean_sd_percent = 3.5;  ///< how far a chamber's own mean may lie from it
    double ahead_sd_percent = 2.0; ///< how far the mean ahead may lie from the mean so far
};

/// A change to the air from now on (what-if).
struct AirAhead {
    double temperature_c;
    double humidity_percent;
};

/// Builds the path from `start` (first weighing) over `now` (last weighing) to `end_day` days
/// after the start. Readings are averaged by day; gaps hold the last day's value; readings before
/// `start` by more than half a day are left out. Beyond the log's end the mean of its last steady
/// stretch is expected to go on (a clear step in the log ends the earlier stretch), reached from
/// the last day's value at the pace at which the log's own swings die away. Readings whose
/// temperature or humidity is not finite are left out.
AirPath make_air_path(std::span<const AirReading> log, units::Instant start, units::Instant now,
                      double end_day, const AirAhead* ahead = nullptr, const UsualAir& usual = {});

} // namespace core::drying
