#include "core/chamber/climate_series.h"

#include "core/air/moist_air.h"
#include "core/numeric/summary.h"

#include <algorithm>
#include <cmath>

namespace core::chamber {
namespace {

using numeric::Summary;
using units::Instant;

/// A column while buckets are added to it.
struct Column {
    std::int64_t index = -1;
    Instant from = Instant::from_unix_seconds(0);
    Instant to = Instant::from_unix_seconds(0);
    Summary kelvins;
    Summary humidity; ///< fractions
};

void add(Column& column, const model::ClimateBucket& bucket) {
    if (bucket.temperature) {
        const auto& t = *bucket.temperature;
        const auto n = static_cast<double>(t.count);
        column.kelvins.merge(
            {t.low.in_kelvins(), t.high.in_kelvins(), t.mean.in_kelvins() * n, t.count});
    }
    if (bucket.humidity) {
        const auto& h = *bucket.humidity;
        const auto n = static_cast<double>(h.count);
        column.humidity.merge(
            {h.low.as_fraction(), h.high.as_fraction(), h.mean.as_fraction() * n, h.count});
    }
}

/// Dew point and drying force where the air is one that has them.
void add_air(SeriesPoint& point) {
    if (!point.temperature || !point.humidity) {
        return;
    }
    const auto rh = std::clamp(point.humidity->mean, units::RelativeHumidity::fraction(0),
                               units::RelativeHumidity::fraction(1));
    const auto t = point.temperature->mean;
    const auto vapour = air::vapour_pressure(t, rh);
    point.drying_force = air::saturation_pressure(t) - vapour;
    if (const auto dew = air::dew_point(vapour)) {
        point.dew_point = *dew;
    }
}

SeriesPoint finished(const Column& column, const SensorOffsets& offsets) {
    SeriesPoint point{column.from, column.to, {}, {}, {}, {}};
    if (column.kelvins.count > 0) {
        const auto shift = offsets.temperature.value_or(units::TemperatureStep::kelvins(0));
        const auto at = [&](double k) { return units::Temperature::kelvins(k) + shift; };
        point.temperature = {at(column.kelvins.low), at(column.kelvins.mean()),
                             at(column.kelvins.high), column.kelvins.count};
    }
    if (column.humidity.count > 0) {
        const auto shift = offsets.humidity.value_or(units::RelativeHumidity::fraction(0));
        const auto at = [&](double f) { return units::RelativeHumidity::fraction(f) + shift; };
        point.humidity = {at(column.humidity.low), at(column.humidity.mean()),
                          at(column.humidity.high), column.humidity.count};
    }
    add_air(point);
    return point;
}

} // namespace

SensorOffsets offsets_of(const model::Sensor& sensor) {
    return {sensor.temperature_offset, sensor.humidity_offset};
}

units::Duration usual_step(std::span<const model::ClimateBucket> buckets,
                           model::ClimateLevel level) {
    const auto width = units::Duration::seconds(static_cast<double>(model::width_seconds(level)));
    if (buckets.size() < 3) {
        return width;
    }
    // The median of a thousand distances spread over the series: a ten-year window must not sort
    // forty thousand of them for each repaint.
    constexpr std::size_t looked_at = 1000;
    const std::size_t stride = std::max<std::size_t>(1, (buckets.size() - 1) / looked_at);
    std::vector<std::int64_t> steps;
    for (std::size_t i = 1; i < buckets.size(); i += stride) {
        steps.push_back(buckets[i].start.unix_seconds() - buckets[i - 1].start.unix_seconds());
    }
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::nth_element(steps.begin(), middle, steps.end());
    return std::max(width, units::Duration::seconds(static_cast<double>(*middle)));
}

ClimateSeries climate_series(std::span<const model::ClimateBucket> buckets,
                             model::ClimateLevel level, const SensorOffsets& offsets, Instant from,
                             Instant to, int pixels) {
    ClimateSeries series;
    const std::int64_t span = std::max<std::int64_t>(1, to.unix_seconds() - from.unix_seconds());
    const std::int64_t columns = std::clamp<std::int64_t>(pixels, 1, span);
    const auto step = usual_step(buckets, level);
    const auto pause = std::max(step * 3, units::Duration::minutes(10)).in_seconds();
    const auto bucket_length = static_cast<std::int64_t>(step.in_seconds());
    series.points.reserve(static_cast<std::size_t>(columns));
    Column column;
    std::optional<Instant> previous;
    for (const auto& bucket : buckets) {
        if (bucket.start < from || bucket.start >= to) {
            continue;
        }
        const std::int64_t since = bucket.start.unix_seconds() - from.unix_seconds();
        // 128 bits are not needed: spans are below 2^34 s and columns below 2^16.
        const std::int64_t index = since * columns / span;
        const bool paused = previous && static_cast<double>(bucket.start.unix_seconds() -
                                                            previous->unix_seconds()) > pause;
        if (paused) {
            series.gaps.push_back(
                {Instant::from_unix_seconds(previous->unix_seconds() + bucket_length),
                 bucket.start});
        }
        if (column.index != index || paused) {
            if (column.index >= 0) {
                series.points.push_back(finished(column, offsets));
            }
            column = Column{index, bucket.start, bucket.start, {}, {}};
        }
        add(column, bucket);
        column.to = Instant::from_unix_seconds(bucket.start.unix_seconds() + bucket_length);
        previous = bucket.start;
    }
    if (column.index >= 0) {
        series.points.push_back(finished(column, offsets));
    }
    return series;
}

} // namespace core::chamber
