#include "core/services/batch_record.h"

#include "core/facts/facts.h"
#include "core/mix/amounts.h"
#include "core/services/document_exchange.h"
#include "core/store/climate.h"
#include "core/store/store.h"

#include <algorithm>
#include <map>

namespace core::services {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

std::optional<units::MassShare> loss(const std::optional<Mass>& from,
                                     const std::optional<Mass>& to) {
    if (!from || !to || *from <= Mass::grams(0)) {
        return {};
    }
    return units::MassShare::fraction(1.0 - *to / *from);
}

bool changes_mass(model::EventKind kind) {
    using Kind = model::EventKind;
    return kind == Kind::coated || kind == Kind::trimmed || kind == Kind::sampled ||
           kind == Kind::split || kind == Kind::merged;
}

/// Adds buckets up, weighted by their counts; means of integers in double are exact enough here.
template <class Q, class Shift>
std::optional<model::Spread<Q>> total(const std::vector<std::optional<model::Spread<Q>>>& parts,
                                      double (*number)(Q), Q (*make)(double), Shift shift) {
    double low = 0;
    double high = 0;
    double sum = 0;
    std::int64_t count = 0;
    for (const auto& part : parts) {
        if (!part) {
            continue;
        }
        low = count == 0 ? number(part->low) : std::min(low, number(part->low));
        high = count == 0 ? number(part->high) : std::max(high, number(part->high));
        sum += number(part->mean) * static_cast<double>(part->count);
        count += part->count;
    }
    if (count == 0) {
        return {};
    }
    return model::Spread<Q>{shift(make(low)), shift(make(sum / static_cast<double>(count))),
                            shift(make(high)), count};
}

chamber::ClimateBand band_for(const model::Stage& stage, const model::Chamber& chamber) {
    chamber::ClimateBand band = chamber::band_of(chamber);
    // A ramp is watched by its outermost bounds: a reading inside them may still be off the ramp,
    // but none outside them is on it.
    if (const auto& t = stage.what.temperature) {
        band.low_temperature = std::min(t->low_at_start, t->low_at_end);
        band.high_temperature = std::max(t->high_at_start, t->high_at_end);
    }
    if (const auto& h = stage.what.humidity) {
        band.low_humidity = std::min(h->low_at_start, h->low_at_end);
        band.high_humidity = std::max(h->high_at_start, h->high_at_end);
    }
    return band;
}

StageClimate climate_of(store::Connection& book, const model::Stage& stage,
                        const model::Chamber& chamber, const model::Sensor& sensor, Instant now) {
    const Instant from = *stage.started_at;
    const Instant to = stage.ended_at.value_or(now);
    StageClimate out{stage.id, sensor.id, {}, {}, {}};
    std::vector<std::optional<model::Spread<units::Temperature>>> temperatures;
    std::vector<std::optional<model::Spread<units::RelativeHumidity>>> humidities;
    for (const model::ClimateBucket& bucket :
         store::climate_buckets(book, sensor.id, model::ClimateLevel::hour, from, to)) {
        temperatures.push_back(bucket.temperature);
        humidities.push_back(bucket.humidity);
    }
    const auto warmer = sensor.temperature_offset.value_or(units::TemperatureStep::kelvins(0));
    const auto damper = sensor.humidity_offset.value_or(units::RelativeHumidity::percent(0));
    out.temperature = total<units::Temperature>(
        temperatures, [](units::Temperature t) { return t.in_kelvins(); },
        &units::Temperature::kelvins, [&](units::Temperature t) { return t + warmer; });
    out.humidity = total<units::RelativeHumidity>(
        humidities, [](units::RelativeHumidity h) { return h.as_fraction(); },
        &units::RelativeHumidity::fraction, [&](units::RelativeHumidity h) { return h + damper; });
    std::vector<model::ClimateReading> readings =
        store::climate_readings(book, sensor.id, from, to);
    for (model::ClimateReading& reading : readings) {
        if (reading.temperature) {
            reading.temperature = *reading.temperature + warmer;
        }
        if (reading.humidity) {
            reading.humidity = *reading.humidity + damper;
        }
    }
    out.out_of_band = chamber::time_out_of_band(readings, band_for(stage, chamber),
                                                Duration::hours(2), Duration::hours(1));
    return out;
}

std::vector<StageClimate> stage_climate(store::Connection& book,
                                        const exchange::BookDocument& entries, Instant now) {
    std::vector<StageClimate> out;
    for (const auto& stage : entries.stages) {
        if (!stage.value.started_at || !stage.value.chamber) {
            continue;
        }
        const auto chamber =
            std::find_if(entries.chambers.begin(), entries.chambers.end(),
                         [&](const auto& c) { return c.value.id == *stage.value.chamber; });
        for (const auto& sensor : entries.sensors) {
            if (chamber != entries.chambers.end() && sensor.value.chamber == chamber->value.id) {
                StageClimate climate =
                    climate_of(book, stage.value, chamber->value, sensor.value, now);
                if (climate.temperature || climate.humidity) {
                    out.push_back(std::move(climate));
                }
            }
        }
    }
    return out;
}

std::vector<PieceLoss> losses_of(const exchange::BookDocument& entries) {
    std::map<model::PieceId, std::vector<model::Weighing>> weighings;
    for (const auto& weighing : entries.weighings) {
        weighings[weighing.value.piece].push_back(weighing.value);
    }
    std::map<model::PieceId, std::vector<model::PieceEvent>> events;
    for (const auto& event : entries.events) {
        events[event.value.piece].push_back(event.value);
    }
    std::vector<PieceLoss> out;
    for (const auto& piece : entries.pieces) {
        out.push_back(piece_loss(piece.value, weighings[piece.value.id], events[piece.value.id]));
    }
    return out;
}

/// The recipe as used on the raw weights of the pieces as they were cured (before any cutting).
void add_mix(BatchRecord& record) {
    const auto& versions = record.entries.recipe_versions;
    const auto version = std::find_if(versions.begin(), versions.end(), [&](const auto& v) {
        return record.batch().recipe == v.value.id;
    });
    if (version == versions.end()) {
        return;
    }
    auto recipe = mix::read_recipe(version->value.document);
    if (!recipe) {
        return; // kept as it was used; the record says that it cannot be computed
    }
    const facts::Facts facts = facts::built_in_facts();
    if (const auto* set = facts.limit_sets.find(recipe->limits)) {
        record.limit_set_name = set->name;
    }
    mix::MixRequest request{.recipe = *recipe, .pieces = {}, .scale_step = {}, .limits = {}};
    request.today = record.batch().started;
    for (std::size_t i = 0; i < record.losses.size(); ++i) {
        const model::Piece& piece = record.entries.pieces[i].value;
        if (!piece.parent && record.losses[i].green()) {
            request.pieces.push_back({piece.code, *record.losses[i].green()});
        }
    }
    // The finest scale of the house: the one a cure is weighed on.
    for (const auto& instrument : record.entries.instruments) {
        const auto& step = instrument.value.scale_step;
        if (instrument.value.active && step &&
            (!request.scale_step || *step < *request.scale_step)) {
            request.scale_step = step;
        }
    }
    record.ingredients = mix::resolve_recipe(*recipe, facts).ingredients;
    record.recipe = std::move(*recipe);
    if (!request.pieces.empty()) {
        record.mix = mix::make_mix_sheet(request, facts);
    }
}

} // namespace

std::optional<units::MassShare> PieceLoss::loss_from_green() const {
    return green_changed ? std::nullopt : loss(green(), latest);
}
std::optional<units::MassShare> PieceLoss::loss_from_hung() const {
    return hung_changed ? std::nullopt : loss(hung, latest);
}

PieceLoss piece_loss(const model::Piece& piece, const std::vector<model::Weighing>& weighings,
                     const std::vector<model::PieceEvent>& events) {
    PieceLoss out{piece.id, {}, {}, {}, {}, {}};
    std::vector<model::Weighing> standing;
    std::copy_if(weighings.begin(), weighings.end(), std::back_inserter(standing),
                 [](const model::Weighing& w) { return w.stands(); });
    std::stable_sort(standing.begin(), standing.end(),
                     [](const auto& a, const auto& b) { return a.taken_at < b.taken_at; });
    std::optional<Instant> green_at;
    for (const model::Weighing& w : standing) {
        if (!out.raw && w.state == model::WeighedState::raw) {
            out.raw = w.net();
            green_at = w.taken_at;
        }
        if (!out.trimmed && w.state == model::WeighedState::trimmed) {
            out.trimmed = w.net();
            green_at = w.taken_at;
        }
        if (!w.wet_surface) {
            out.latest = w.net();
            out.latest_at = w.taken_at;
        }
    }
    std::optional<Instant> hung_at;
    for (const model::PieceEvent& e : events) {
        if (!e.withdrawn && e.kind == model::EventKind::hung && !hung_at) {
            hung_at = e.at;
            out.hung = e.net_after;
        }
    }
    for (const model::Weighing& w : standing) {
        if (hung_at && !out.hung && w.taken_at >= *hung_at && !w.wet_surface) {
            out.hung = w.net();
        }
    }
    for (const model::PieceEvent& e : events) {
        if (e.withdrawn || !changes_mass(e.kind)) {
            continue;
        }
        out.green_changed = out.green_changed || (green_at && e.at >= *green_at);
        out.hung_changed = out.hung_changed || (hung_at && e.at >= *hung_at);
    }
    return out;
}

MassBalance mass_balance(const exchange::BookDocument& entries,
                         const std::vector<PieceLoss>& losses) {
    MassBalance out;
    const model::Batch& batch = entries.batches.front().value;
    out.bought = batch.bought_weight;
    out.trimmed_off = batch.trim_weight;
    const auto add = [](std::optional<Mass>& sum, const std::optional<Mass>& mass) {
        if (mass) {
            sum = sum.value_or(Mass::grams(0)) + *mass;
        }
    };
    for (std::size_t i = 0; i < losses.size(); ++i) {
        const model::Piece& piece = entries.pieces[i].value;
        if (!piece.parent) {
            add(out.green, losses[i].green());
        }
        using State = model::PieceState;
        if (piece.state != State::split_up && piece.state != State::merged_away &&
            piece.state != State::discarded) {
            add(out.dried, losses[i].latest);
        }
    }
    for (const auto& pack : entries.packs) {
        out.packed += pack.value.packed_weight;
        out.left += pack.value.weight_left;
    }
    for (const auto& move : entries.pack_moves) {
        const Mass amount = move.value.amount;
        switch (move.value.kind) {
        case model::MoveKind::used:
            out.used += amount;
            break;
        case model::MoveKind::given:
            out.given += amount;
            break;
        case model::MoveKind::sold:
            out.sold += amount;
            break;
        case model::MoveKind::wasted:
            out.wasted += amount;
            break;
        case model::MoveKind::re_hung:
            out.re_hung += amount;
            break;
        case model::MoveKind::counted:
            break; // a count moves nothing
        }
    }
    return out;
}

base::Result<BatchRecord> batch_record(const Book& book, model::BatchId batch, Instant now) {
    ExportRequest request{batch, now, {}, false};
    auto entries = export_document(book, request);
    if (!entries) {
        return tl::unexpected(entries.error());
    }
    BatchRecord record{.entries = std::move(*entries), .made_at = now};
    record.losses = losses_of(record.entries);
    record.balance = mass_balance(record.entries, record.losses);
    add_mix(record);
    auto climate = book.store().read([&](store::Connection& connection) {
        return stage_climate(connection, record.entries, now);
    });
    if (!climate) {
        return tl::unexpected(climate.error());
    }
    record.climate = std::move(*climate);
    return record;
}

} // namespace core::services
