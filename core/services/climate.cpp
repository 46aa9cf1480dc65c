#include "core/services/climate.h"

#include "core/chamber/roll_up.h"
#include "core/store/climate.h"
#include "core/store/connection.h"
#include "core/store/fault.h"

namespace core::services {

using base::Result;
using store::Connection;
using store::Transaction;

ClimateReader::ClimateReader(std::unique_ptr<Connection> book) : book_(std::move(book)) {}
ClimateReader::ClimateReader(ClimateReader&&) noexcept = default;
ClimateReader& ClimateReader::operator=(ClimateReader&&) noexcept = default;
ClimateReader::~ClimateReader() = default;

Result<ClimateReader> ClimateReader::open(const std::string& book_path) {
    return store::guarded([&] {
        return ClimateReader(std::make_unique<Connection>(book_path, store::Access::read));
    });
}

model::ClimateLevel chart_level(units::Duration window, int pixels, std::int64_t readings) {
    const auto level = chamber::level_for(window, 2 * pixels);
    // A logger of one reading a second has more of them in a day than a chart can take in time:
    // then a quarter hour is the grain, with its least and greatest value.
    constexpr std::int64_t most_readings = 100'000;
    // Ten readings a pixel show nothing that a quarter hour's extremes two pixels wide do not,
    // and take many times as long: a minute's logger between a week and 25 days.
    const bool quarters_do =
        window.in_minutes() / 15 >= pixels / 2.0 && readings > std::int64_t{10} * pixels;
    return level == model::ClimateLevel::reading && (readings > most_readings || quarters_do)
               ? model::ClimateLevel::quarter_hour
               : level;
}

Result<chamber::ClimateSeries> ClimateReader::series(const model::Sensor& sensor,
                                                     units::Instant from, units::Instant to,
                                                     int pixels) const {
    return store::guarded([&] {
        const Transaction transaction(*book_, Transaction::Kind::read);
        auto level = chamber::level_for(to - from, 2 * pixels);
        if (level == model::ClimateLevel::reading) {
            level =
                chart_level(to - from, pixels, store::climate_count(*book_, sensor.id, from, to));
        }
        const auto found = store::climate_buckets(*book_, sensor.id, level, from, to);
        return chamber::climate_series(found, level, chamber::offsets_of(sensor), from, to, pixels);
    });
}

Result<std::vector<model::ClimateReading>>
ClimateReader::readings(model::SensorId sensor, units::Instant from, units::Instant to) const {
    return store::guarded([&] { return store::climate_readings(*book_, sensor, from, to); });
}

Result<std::vector<model::ClimateBucket>> ClimateReader::buckets(model::SensorId sensor,
                                                                 model::ClimateLevel level,
                                                                 units::Instant from,
                                                                 units::Instant to) const {
    return store::guarded([&] { return store::climate_buckets(*book_, sensor, level, from, to); });
}

Result<std::vector<model::ClimateImport>>
ClimateReader::imports(std::optional<model::SensorId> sensor) const {
    return store::guarded([&] { return store::climate_imports(*book_, sensor); });
}

Result<std::optional<ClimateReader::Extent>> ClimateReader::extent(model::SensorId sensor) const {
    return store::guarded([&]() -> std::optional<Extent> {
        const auto found = store::climate_extent(*book_, sensor);
        return found ? std::optional(Extent{found->first, found->last, found->readings})
                     : std::nullopt;
    });
}

} // namespace core::services
