#include "core/services/piece_air.h"

#include "core/chamber/climate_series.h"

#include <algorithm>

namespace core::services {

using drying::AirReading;
using model::EventKind;
using units::Duration;
using units::Instant;

namespace {

/// A time in a freezer: [from, to).
struct Pause {
    Instant from;
    Instant to;
    bool thawed = true; ///< false: frozen still
};

std::vector<Pause> pauses_of(const PieceHistory& history, Instant now) {
    std::vector<Pause> pauses;
    bool frozen = false;
    for (const auto& event : history.events) {
        if (event.kind == EventKind::frozen && !frozen) {
            pauses.push_back({event.at, std::max(event.at, now), false});
            frozen = true;
        } else if (event.kind == EventKind::thawed && frozen) {
            pauses.back().to = event.at;
            pauses.back().thawed = true;
            frozen = false;
        }
    }
    return pauses;
}

void add_unfrozen(std::vector<Stay>& stays, Stay stay, const std::vector<Pause>& pauses) {
    for (const auto& pause : pauses) {
        if (pause.from >= stay.to || pause.to <= stay.from) {
            continue;
        }
        if (pause.from > stay.from) {
            stays.push_back({stay.chamber, stay.from, pause.from});
        }
        stay.from = std::min(pause.to, stay.to);
    }
    if (stay.from < stay.to) {
        stays.push_back(stay);
    }
}

Duration frozen_after(const std::vector<Pause>& pauses, Instant at) {
    Duration sum = Duration::seconds(0);
    for (const auto& pause : pauses) {
        if (pause.thawed && pause.from >= at) {
            sum = sum + (pause.to - pause.from);
        }
    }
    return sum;
}

} // namespace

std::vector<Stay> stays_of(const PieceHistory& history, Instant now) {
    std::optional<Stay> open;
    std::vector<Stay> whole;
    bool moved = false;
    for (const auto& event : history.events) {
        const bool starts = event.kind == EventKind::hung && !open;
        const bool moves = (event.kind == EventKind::moved || event.kind == EventKind::hung) &&
                           open && event.chamber;
        if (starts) {
            open = Stay{event.chamber, event.at, now};
        } else if (moves) {
            moved = true;
            whole.push_back({open->chamber, open->from, event.at});
            open = Stay{event.chamber, event.at, now};
        }
    }
    if (!open) {
        return {};
    }
    // The piece's own entry says where it is now; where it was before a move it cannot say.
    if (!open->chamber && !moved) {
        open->chamber = history.piece.chamber;
    }
    whole.push_back(*open);
    const auto pauses = pauses_of(history, now);
    std::vector<Stay> stays;
    for (const auto& stay : whole) {
        add_unfrozen(stays, stay, pauses);
    }
    return stays;
}

PieceAir::PieceAir(const Book& book, Instant now) : now_(now) {
    if (auto sensors = book.sensors()) {
        sensors_ = *std::move(sensors);
    }
    if (sensors_.empty()) {
        return;
    }
    if (auto reader = ClimateReader::open(book.path())) {
        reader_ = *std::move(reader);
    }
}

std::vector<AirReading> PieceAir::read(const model::Sensor& sensor, Instant from) const {
    const auto level = model::ClimateLevel::six_hours;
    const auto buckets = reader_->buckets(sensor.id, level, from, now_);
    if (!buckets) {
        return {};
    }
    const auto offsets = chamber::offsets_of(sensor);
    const auto half = Duration::seconds(0.5 * static_cast<double>(model::width_seconds(level)));
    std::vector<AirReading> readings;
    for (const auto& bucket : *buckets) {
        if (!bucket.temperature || !bucket.humidity) {
            continue;
        }
        AirReading reading{bucket.start + half, bucket.temperature->mean, bucket.humidity->mean};
        if (offsets.temperature) {
            reading.temperature = reading.temperature + *offsets.temperature;
        }
        if (offsets.humidity) {
            reading.humidity = reading.humidity + *offsets.humidity;
        }
        readings.push_back(reading);
    }
    return readings;
}

const PieceAir::Air& PieceAir::of(model::ChamberId chamber, Instant from) {
    const auto kept = by_chamber_.find(chamber.row());
    if (kept != by_chamber_.end() && kept->second.from <= from) {
        return kept->second;
    }
    Air air{from, {}};
    for (const auto& sensor : sensors_) {
        if (reader_ && sensor.chamber == chamber) {
            auto readings = read(sensor, from);
            if (readings.size() > air.readings.size()) {
                air.readings = std::move(readings);
            }
        }
    }
    return by_chamber_.insert_or_assign(chamber.row(), std::move(air)).first->second;
}

std::vector<AirReading> PieceAir::around(const PieceHistory& history) {
    std::vector<AirReading> around;
    const auto pauses = pauses_of(history, now_);
    for (const auto& stay : stays_of(history, now_)) {
        if (!stay.chamber) {
            continue;
        }
        const auto& readings = of(*stay.chamber, stay.from).readings;
        const auto earlier = [](const AirReading& r, Instant at) { return r.at < at; };
        auto it = std::lower_bound(readings.begin(), readings.end(), stay.from, earlier);
        for (; it != readings.end() && it->at < stay.to; ++it) {
            around.push_back(
                {it->at + frozen_after(pauses, it->at), it->temperature, it->humidity});
        }
    }
    return around;
}

} // namespace core::services
