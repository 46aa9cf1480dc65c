#pragma once

#include "core/model/chamber.h"
#include "core/model/climate.h"
#include "core/units/pressure.h"

#include <optional>
#include <span>
#include <vector>

/// Climate buckets made ready to draw: offsets applied, cut to pixels, gaps found.
namespace core::chamber {

/// Everything of one pixel column (or of one bucket, where there are fewer).
struct SeriesPoint {
    units::Instant from;
    units::Instant to;
    std::optional<model::Spread<units::Temperature>> temperature;
    std::optional<model::Spread<units::RelativeHumidity>> humidity;
    /// Of the mean temperature with the mean humidity. Both are curved, so over a wide column
    /// they are near, not equal to, the mean of their own values (0.1 C for a swing of 3 C).
    std::optional<units::Temperature> dew_point;
    std::optional<units::Pressure> drying_force; ///< vapour pressure deficit of the air
};

/// Time without readings, to be drawn as nothing.
struct ClimateGap {
    units::Instant from; ///< the end of the last bucket before
    units::Instant to;   ///< the start of the first one after
};

struct ClimateSeries {
    std::vector<SeriesPoint> points; ///< by time
    std::vector<ClimateGap> gaps;    ///< by time; lie between points
};

struct SensorOffsets {
    std::optional<units::TemperatureStep> temperature;
    std::optional<units::RelativeHumidity> humidity;
};
SensorOffsets offsets_of(const model::Sensor& sensor);

/// The series over [from, to), in at most `pixels` columns of equal time (>= 1). `buckets` are
/// sorted and of `level`. A gap is a pause of more than three times the usual distance between
/// buckets, and never less than 10 minutes: loggers miss a beat.
ClimateSeries climate_series(std::span<const model::ClimateBucket> buckets,
                             model::ClimateLevel level, const SensorOffsets& offsets,
                             units::Instant from, units::Instant to, int pixels);

/// The usual distance between the starts of neighbouring buckets (their median), or the level's
/// width when there are fewer than three.
units::Duration usual_step(std::span<const model::ClimateBucket> buckets,
                           model::ClimateLevel level);

} // namespace core::chamber
