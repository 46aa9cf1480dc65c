#include "core/services/chamber_desk.h"

#include "core/chamber/roll_up.h"

#include <algorithm>

namespace core::services {

using base::Result;
using units::Duration;
using units::Instant;

namespace {

/// Windows longer than this are judged by quarter-hour means: five million single readings would
/// take seconds and change the hours by less than one in a hundred.
constexpr double longest_by_reading_days = 62;

std::vector<model::ClimateReading> means_of(const std::vector<model::ClimateBucket>& buckets) {
    std::vector<model::ClimateReading> readings;
    readings.reserve(buckets.size());
    for (const auto& bucket : buckets) {
        readings.push_back(
            {bucket.start,
             bucket.temperature ? std::optional(bucket.temperature->mean) : std::nullopt,
             bucket.humidity ? std::optional(bucket.humidity->mean) : std::nullopt});
    }
    return readings;
}

void apply_offsets(std::vector<model::ClimateReading>& readings,
                   const chamber::SensorOffsets& offsets) {
    for (auto& reading : readings) {
        if (reading.temperature && offsets.temperature) {
            reading.temperature = *reading.temperature + *offsets.temperature;
        }
        if (reading.humidity && offsets.humidity) {
            reading.humidity = *reading.humidity + *offsets.humidity;
        }
    }
}

Result<chamber::BandTime> out_of_band(const ClimateReader& reader, const ChamberAirRequest& request,
                                      bool by_quarter_hours) {
    const auto& sensor = request.sensors.front();
    const auto level =
        by_quarter_hours ? model::ClimateLevel::quarter_hour : model::ClimateLevel::reading;
    const auto buckets = reader.buckets(sensor.id, level, request.from, request.to);
    if (!buckets) {
        return tl::unexpected<base::Error>(buckets.error());
    }
    auto readings = means_of(*buckets);
    apply_offsets(readings, chamber::offsets_of(sensor));
    const auto hold = std::max(chamber::usual_step(*buckets, level) * 3, Duration::minutes(10));
    return chamber::time_out_of_band(readings, request.band, hold, Duration::minutes(30));
}

void append(model::Findings& all, model::Findings more) {
    all.insert(all.end(), std::make_move_iterator(more.begin()),
               std::make_move_iterator(more.end()));
}

} // namespace

Result<ChamberAir> chamber_air(const ClimateReader& reader, const ChamberAirRequest& request) {
    ChamberAir air{request.from, request.to};
    std::vector<std::vector<model::ClimateBucket>> hours;
    for (const auto& sensor : request.sensors) {
        auto series = reader.series(sensor, request.from, request.to, request.pixels);
        auto by_hour =
            reader.buckets(sensor.id, model::ClimateLevel::hour, request.from, request.to);
        auto extent = reader.extent(sensor.id);
        if (!series || !by_hour || !extent) {
            return tl::unexpected<base::Error>(!series    ? series.error()
                                               : !by_hour ? by_hour.error()
                                                          : extent.error());
        }
        SensorAir one{sensor, std::move(*series), *extent, chamber::flat_lines(*by_hour)};
        append(one.findings, chamber::steps(*by_hour));
        for (auto& finding : one.findings) {
            finding.place = sensor.name;
        }
        air.sensors.push_back(std::move(one));
        hours.push_back(std::move(*by_hour));
    }
    if (request.sensors.empty()) {
        return air;
    }
    air.by_quarter_hours = (request.to - request.from).in_days() > longest_by_reading_days;
    auto band = out_of_band(reader, request, air.by_quarter_hours);
    if (!band) {
        return tl::unexpected<base::Error>(band.error());
    }
    air.out_of_band = std::move(*band);
    if (request.sensors.size() > 1) {
        air.findings =
            chamber::disagreement(hours[0], request.sensors[0], hours[1], request.sensors[1]);
    }
    return air;
}

} // namespace core::services
