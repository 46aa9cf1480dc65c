#include "core/chamber/band_time.h"

#include <algorithm>
#include <array>

namespace core::chamber {
namespace {

using units::Duration;

constexpr std::array sides{OutOfBand::too_cold, OutOfBand::too_warm, OutOfBand::too_dry,
                           OutOfBand::too_damp};

bool is_out(const model::ClimateReading& r, const ClimateBand& band, OutOfBand side) {
    switch (side) {
    case OutOfBand::too_cold:
        return r.temperature && band.low_temperature && *r.temperature < *band.low_temperature;
    case OutOfBand::too_warm:
        return r.temperature && band.high_temperature && *r.temperature > *band.high_temperature;
    case OutOfBand::too_dry:
        return r.humidity && band.low_humidity && *r.humidity < *band.low_humidity;
    case OutOfBand::too_damp:
        return r.humidity && band.high_humidity && *r.humidity > *band.high_humidity;
    }
    return false;
}

Duration& total_of(BandTime& time, OutOfBand side) {
    switch (side) {
    case OutOfBand::too_cold:
        return time.too_cold;
    case OutOfBand::too_warm:
        return time.too_warm;
    case OutOfBand::too_dry:
        return time.too_dry;
    default:
        return time.too_damp;
    }
}

void keep_worst(Excursion& e, const model::ClimateReading& r) {
    switch (e.side) {
    case OutOfBand::too_cold:
        e.worst_temperature =
            std::min(e.worst_temperature.value_or(*r.temperature), *r.temperature);
        break;
    case OutOfBand::too_warm:
        e.worst_temperature =
            std::max(e.worst_temperature.value_or(*r.temperature), *r.temperature);
        break;
    case OutOfBand::too_dry:
        e.worst_humidity = std::min(e.worst_humidity.value_or(*r.humidity), *r.humidity);
        break;
    case OutOfBand::too_damp:
        e.worst_humidity = std::max(e.worst_humidity.value_or(*r.humidity), *r.humidity);
        break;
    }
}

} // namespace

ClimateBand band_of(const model::Chamber& chamber) {
    return {chamber.low_temperature, chamber.high_temperature, chamber.low_humidity,
            chamber.high_humidity};
}

BandTime time_out_of_band(std::span<const model::ClimateReading> readings, const ClimateBand& band,
                          Duration hold, Duration shortest_excursion) {
    BandTime time;
    std::array<std::optional<Excursion>, sides.size()> open;
    const auto close = [&](std::optional<Excursion>& e) {
        if (e && e->time >= shortest_excursion) {
            time.excursions.push_back(*e);
        }
        e.reset();
    };
    for (std::size_t i = 0; i + 1 < readings.size(); ++i) {
        const auto& reading = readings[i];
        const Duration until_next = readings[i + 1].at - reading.at;
        const Duration stands = std::min(until_next, hold);
        time.watched += stands;
        time.unknown += until_next - stands;
        for (std::size_t s = 0; s < sides.size(); ++s) {
            if (!is_out(reading, band, sides[s])) {
                close(open[s]);
                continue;
            }
            total_of(time, sides[s]) += stands;
            if (!open[s]) {
                open[s] = Excursion{sides[s], reading.at, reading.at, Duration::seconds(0), {}, {}};
            }
            open[s]->to = reading.at + stands;
            open[s]->time += stands;
            keep_worst(*open[s], reading);
        }
    }
    for (auto& e : open) {
        close(e);
    }
    std::stable_sort(time.excursions.begin(), time.excursions.end(),
                     [](const Excursion& a, const Excursion& b) { return a.from < b.from; });
    return time;
}

} // namespace core::chamber
