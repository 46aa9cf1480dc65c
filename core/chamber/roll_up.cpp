#include "core/chamber/roll_up.h"

#include "core/numeric/summary.h"

#include <cmath>
#include <map>

namespace core::chamber {
namespace {

using numeric::Summary;

std::int64_t floor_to(std::int64_t seconds, std::int64_t width) {
    const std::int64_t rest = seconds % width;
    return seconds - (rest < 0 ? rest + width : rest);
}

std::optional<model::Spread<units::Temperature>> temperatures(const Summary& s) {
    if (s.count == 0) {
        return std::nullopt;
    }
    const auto at = [](double centi) { return units::Temperature::celsius(centi / 100.0); };
    return model::Spread<units::Temperature>{at(s.low), at(s.mean()), at(s.high), s.count};
}

std::optional<model::Spread<units::RelativeHumidity>> humidities(const Summary& s) {
    if (s.count == 0) {
        return std::nullopt;
    }
    const auto at = [](double centi) { return units::RelativeHumidity::percent(centi / 100.0); };
    return model::Spread<units::RelativeHumidity>{at(s.low), at(s.mean()), at(s.high), s.count};
}

} // namespace

std::int64_t centi_celsius(units::Temperature t) {
    return std::llround(t.in_celsius() * 100.0);
}
std::int64_t centi_percent(units::RelativeHumidity rh) {
    return std::llround(rh.in_percent() * 100.0);
}

std::vector<model::ClimateBucket> roll_up(std::span<const model::ClimateReading> readings,
                                          model::ClimateLevel level) {
    struct Sums {
        Summary temperature;
        Summary humidity;
    };
    std::map<std::int64_t, Sums> buckets;
    const std::int64_t width = model::width_seconds(level);
    for (const auto& reading : readings) {
        auto& sums = buckets[floor_to(reading.at.unix_seconds(), width)];
        if (reading.temperature) {
            sums.temperature.add(static_cast<double>(centi_celsius(*reading.temperature)));
        }
        if (reading.humidity) {
            sums.humidity.add(static_cast<double>(centi_percent(*reading.humidity)));
        }
    }
    std::vector<model::ClimateBucket> out;
    out.reserve(buckets.size());
    for (const auto& [start, sums] : buckets) {
        out.push_back({units::Instant::from_unix_seconds(start), temperatures(sums.temperature),
                       humidities(sums.humidity)});
    }
    return out;
}

model::ClimateLevel level_for(units::Duration span, int buckets) {
    auto best = model::ClimateLevel::reading;
    for (const auto level : model::rolled_up_levels) {
        const auto width =
            units::Duration::seconds(static_cast<double>(model::width_seconds(level)));
        if (span / width >= buckets) {
            best = level;
        }
    }
    return best;
}

} // namespace core::chamber
