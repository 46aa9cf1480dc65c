#include "core/services/stage_air.h"

#include "core/planning/clock.h"
#include "core/store/climate.h"
#include "core/store/store.h"

#include <algorithm>

namespace core::services {
namespace {

using doneness::AirWatch;
using doneness::StageRecord;
using units::Duration;
using units::Instant;
using units::RelativeHumidity;
using units::Temperature;

constexpr auto level = model::ClimateLevel::quarter_hour;
const Duration longest_hold = Duration::hours(2); // a silent logger is not evidence

/// Lowest, highest and mean of spreads, weighted by their counts; in one unit of the caller's.
struct Total {
    double low = 0;
    double high = 0;
    double sum = 0;
    std::int64_t count = 0;
    void add(double l, double mean, double h, std::int64_t n) {
        low = count == 0 ? l : std::min(low, l);
        high = count == 0 ? h : std::max(high, h);
        sum += mean * static_cast<double>(n);
        count += n;
    }
    [[nodiscard]] double mean() const { return sum / static_cast<double>(count); }
};

/// The air of one stage, summed up over its stays.
class StageSum {
  public:
    StageSum(const model::Stage& stage, Instant to, Instant now)
        : stage_(stage), from_(*stage.started_at), to_(to) {
        const int planned = stage.planned_end - stage.planned_start;
        length_ = stage.ended_at ? to - from_
                                 : std::max(Duration::days(std::max(planned, 1)), now - from_);
    }

    void add(const std::vector<model::ClimateBucket>& buckets, const model::Sensor& sensor,
             const std::optional<model::Chamber>& chamber, Instant stay_to) {
        const auto warmer = sensor.temperature_offset.value_or(units::TemperatureStep::kelvins(0));
        const auto damper = sensor.humidity_offset.value_or(RelativeHumidity::percent(0));
        for (std::size_t i = 0; i < buckets.size(); ++i) {
            const auto& b = buckets[i];
            if (b.temperature) {
                temperature_.add((b.temperature->low + warmer).in_kelvins(),
                                 (b.temperature->mean + warmer).in_kelvins(),
                                 (b.temperature->high + warmer).in_kelvins(), b.temperature->count);
            }
            if (b.humidity) {
                humidity_.add((b.humidity->low + damper).as_fraction(),
                              (b.humidity->mean + damper).as_fraction(),
                              (b.humidity->high + damper).as_fraction(), b.humidity->count);
            }
            const Instant begins = std::max(b.start, from_);
            const Instant next = i + 1 < buckets.size() ? buckets[i + 1].start : stay_to;
            const Duration holds = std::min(next - begins, longest_hold);
            if (holds > Duration::seconds(0)) {
                count_time(b, warmer, damper, chamber, begins, holds);
            }
        }
    }

    [[nodiscard]] StageRecord record() const {
        StageRecord out{.kind = stage_.what.kind,
                        .name = stage_.what.name,
                        .from = from_,
                        .to = stage_.ended_at};
        if (temperature_.count > 0) {
            out.temperature = {Temperature::kelvins(temperature_.low),
                               Temperature::kelvins(temperature_.mean()),
                               Temperature::kelvins(temperature_.high)};
        }
        if (humidity_.count > 0) {
            out.humidity = {RelativeHumidity::fraction(humidity_.low),
                            RelativeHumidity::fraction(humidity_.mean()),
                            RelativeHumidity::fraction(humidity_.high)};
        }
        if (out.temperature || out.humidity) {
            out.air = watch_;
            out.air->silent = std::max((to_ - from_) - watch_.watched, Duration::seconds(0));
        }
        return out;
    }

  private:
    void count_time(const model::ClimateBucket& bucket, units::TemperatureStep warmer,
                    RelativeHumidity damper, const std::optional<model::Chamber>& chamber,
                    Instant at, Duration holds) {
        watch_.watched += holds;
        auto band = planning::band_at(stage_.what, at - from_, length_);
        std::optional<Temperature> coldest;
        std::optional<Temperature> warmest;
        std::optional<RelativeHumidity> driest;
        std::optional<RelativeHumidity> dampest;
        if (band.temperature) {
            coldest = band.temperature->low;
            warmest = band.temperature->high;
        } else if (chamber) {
            coldest = chamber->low_temperature;
            warmest = chamber->high_temperature;
        }
        if (band.humidity) {
            driest = band.humidity->low;
            dampest = band.humidity->high;
        } else if (chamber) {
            driest = chamber->low_humidity;
            dampest = chamber->high_humidity;
        }
        watch_.temperature_band = watch_.temperature_band || coldest || warmest;
        watch_.humidity_band = watch_.humidity_band || driest || dampest;
        if (bucket.temperature) {
            const auto t = bucket.temperature->mean + warmer;
            watch_.too_cold += coldest && t < *coldest ? holds : Duration::seconds(0);
            watch_.too_warm += warmest && t > *warmest ? holds : Duration::seconds(0);
        }
        if (bucket.humidity) {
            const auto h = bucket.humidity->mean + damper;
            watch_.too_dry += driest && h < *driest ? holds : Duration::seconds(0);
            watch_.too_damp += dampest && h > *dampest ? holds : Duration::seconds(0);
        }
    }

    const model::Stage& stage_;
    Instant from_ = Instant::from_unix_seconds(0);
    Instant to_ = Instant::from_unix_seconds(0);
    Duration length_ = Duration::seconds(0);
    Total temperature_;
    Total humidity_;
    AirWatch watch_;
};

struct Places {
    std::vector<model::Chamber> chambers;
    std::vector<model::Sensor> sensors;
    [[nodiscard]] std::optional<model::Chamber> find(model::ChamberId id) const {
        const auto at = std::find_if(chambers.begin(), chambers.end(),
                                     [&](const auto& c) { return c.id == id; });
        return at == chambers.end() ? std::nullopt : std::optional(*at);
    }
};

/// The first bucket of a stay may have begun a little before it.
Instant bucket_start(Instant at) {
    const auto width = model::width_seconds(level);
    return Instant::from_unix_seconds(at.unix_seconds() - at.unix_seconds() % width);
}

void add_stay(store::Connection& book, const Places& places, const StageStay& stay, StageSum& sum) {
    for (const auto& sensor : places.sensors) {
        if (sensor.chamber != stay.chamber) {
            continue;
        }
        const auto buckets =
            store::climate_buckets(book, sensor.id, level, bucket_start(stay.from), stay.to);
        if (!buckets.empty()) {
            sum.add(buckets, sensor, places.find(stay.chamber), stay.to);
            return;
        }
    }
}

Places places_of(const Book& book, std::optional<base::Error>& fault) {
    auto chambers = book.chambers();
    auto sensors = book.sensors();
    if (!chambers || !sensors) {
        fault = !chambers ? chambers.error() : sensors.error();
        return {};
    }
    return {std::move(*chambers), std::move(*sensors)};
}

} // namespace

std::vector<StageStay> stage_stays(const PieceHistory& history,
                                   std::optional<model::ChamberId> stage_chamber, Instant from,
                                   Instant to) {
    std::optional<model::ChamberId> where;
    bool moved = false;
    for (const auto& event : history.events) {
        if (event.withdrawn || !event.chamber) {
            continue;
        }
        moved = true;
        where = event.at <= from ? event.chamber : where;
    }
    if (!where) {
        where = stage_chamber || moved ? stage_chamber : history.piece.chamber;
    }
    std::vector<StageStay> stays;
    Instant since = from;
    const auto close = [&](Instant at) {
        if (where && at > since) {
            stays.push_back({*where, since, at});
        }
        since = at;
    };
    for (const auto& event : history.events) {
        if (!event.withdrawn && event.chamber && event.at > from && event.at < to) {
            close(event.at);
            where = event.chamber;
        }
    }
    close(to);
    return stays;
}

base::Result<std::vector<StageRecord>> stage_records(const Book& book, const PieceHistory& history,
                                                     Instant now) {
    const auto stages = book.stages(history.piece.batch);
    std::optional<base::Error> fault;
    const Places places = places_of(book, fault);
    if (!stages || fault) {
        return tl::unexpected(!stages ? stages.error() : *fault);
    }
    return book.store().read([&](store::Connection& connection) {
        std::vector<StageRecord> records;
        for (const auto& stage : *stages) {
            if (!stage.started_at || *stage.started_at > now) {
                continue;
            }
            const Instant to = std::max(stage.ended_at.value_or(now), *stage.started_at);
            StageSum sum(stage, to, now);
            for (const auto& stay : stage_stays(history, stage.chamber, *stage.started_at, to)) {
                add_stay(connection, places, stay, sum);
            }
            records.push_back(sum.record());
        }
        return records;
    });
}

base::Result<std::optional<RelativeHumidity>>
humidity_lately(const Book& book, const model::Piece& piece, Instant now, Duration window) {
    std::optional<base::Error> fault;
    const Places places = places_of(book, fault);
    if (fault) {
        return tl::unexpected(*fault);
    }
    return book.store().read([&](store::Connection& connection) -> std::optional<RelativeHumidity> {
        for (const auto& sensor : places.sensors) {
            if (sensor.chamber != piece.chamber) {
                continue;
            }
            Total total;
            for (const auto& bucket :
                 store::climate_buckets(connection, sensor.id, level, now - window, now)) {
                if (bucket.humidity) {
                    const double mean = bucket.humidity->mean.as_fraction();
                    total.add(mean, mean, mean, bucket.humidity->count);
                }
            }
            if (total.count > 0) {
                return RelativeHumidity::fraction(total.mean()) +
                       sensor.humidity_offset.value_or(RelativeHumidity::percent(0));
            }
        }
        return std::nullopt;
    });
}

} // namespace core::services
