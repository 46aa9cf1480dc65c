#include "core/store/climate.h"

#include "core/store/action_log.h"
#include "core/store/climate_rows.h"
#include "core/store/fault.h"

#include <algorithm>

namespace core::store {
namespace {

using base::ErrorCode;
using model::ClimateReading;
using units::Instant;

struct ImportRow {
    std::int64_t sensor = 0;
    std::string state;
    std::optional<std::int64_t> first_s;
    std::optional<std::int64_t> last_s;
    std::string file_name;
};

ImportRow import_row(Connection& book, model::ClimateImportId id) {
    const auto row = book.prepared(
        "SELECT sensor_id, state, first_s, last_s, file_name FROM climate_import WHERE id = ?1");
    row->bind(1, id.row());
    if (!row->executeStep()) {
        refuse(ErrorCode::no_such_entry, "climate import " + std::to_string(id.row()));
    }
    return {row->getColumn(0).getInt64(), row->getColumn(1).getString(),
            optional_integer(row->getColumn(2)), optional_integer(row->getColumn(3)),
            row->getColumn(4).getString()};
}

/// A reading as its row, ready for sorting: appending in key order is several times faster than
/// the other way round, and logs come newest first too.
struct Row {
    std::int64_t at_s;
    std::optional<std::int64_t> temperature;
    std::optional<std::int64_t> humidity;
};

std::vector<Row> sorted_rows(std::span<const ClimateReading> readings) {
    std::vector<Row> rows;
    rows.reserve(readings.size());
    for (const auto& reading : readings) {
        rows.push_back(
            {reading.at.unix_seconds(), centi_of(reading.temperature), centi_of(reading.humidity)});
    }
    const auto earlier = [](const Row& a, const Row& b) { return a.at_s < b.at_s; };
    if (!std::is_sorted(rows.begin(), rows.end(), earlier)) {
        std::stable_sort(rows.begin(), rows.end(), earlier); // of repeats the first line wins
    }
    return rows;
}

struct Appended {
    std::int64_t added = 0;
    std::int64_t known = 0;
    std::int64_t conflicts = 0;
    std::optional<std::int64_t> first_s;
    std::optional<std::int64_t> last_s;
    std::vector<BucketSums> quarter_hours;
};

bool says_the_same(Connection& book, std::int64_t sensor, const Row& row) {
    const auto stored = book.prepared("SELECT temp_centic IS ?3 AND rh_centipct IS ?4"
                                      " FROM climate_reading WHERE sensor_id = ?1 AND at_s = ?2");
    stored->bind(1, sensor);
    stored->bind(2, row.at_s);
    bind_optional(*stored, 3, row.temperature);
    bind_optional(*stored, 4, row.humidity);
    return stored->executeStep() && stored->getColumn(0).getInt64() != 0;
}

Appended insert_rows(Connection& book, std::int64_t sensor, std::int64_t import_id,
                     const std::vector<Row>& rows) {
    Appended done;
    FastStatement insert(book, "INSERT INTO climate_reading VALUES (?1, ?2, ?3, ?4, ?5)"
                               " ON CONFLICT DO NOTHING");
    insert.bind(1, sensor);
    insert.bind(5, import_id);
    for (const auto& row : rows) {
        insert.bind(2, row.at_s);
        insert.bind(3, row.temperature);
        insert.bind(4, row.humidity);
        insert.step();
        const bool added = insert.changes() == 1;
        insert.reset();
        if (!added) {
            ++done.known;
            done.conflicts += says_the_same(book, sensor, row) ? 0 : 1;
            continue;
        }
        ++done.added;
        done.first_s = done.first_s.value_or(row.at_s);
        done.last_s = row.at_s;
        auto& bucket = bucket_at(done.quarter_hours, row.at_s, bucket_widths_s[0]);
        bucket.temperature.add(row.temperature);
        bucket.humidity.add(row.humidity);
    }
    return done;
}

void count_in(Connection& book, std::int64_t import_id, const Appended& done) {
    const auto update =
        book.prepared("UPDATE climate_import SET added = added + ?2, known = known + ?3,"
                      " conflicts = conflicts + ?4,"
                      " first_s = min(coalesce(first_s, ?5), coalesce(?5, first_s)),"
                      " last_s = max(coalesce(last_s, ?6), coalesce(?6, last_s)) WHERE id = ?1");
    update->bind(1, import_id);
    update->bind(2, done.added);
    update->bind(3, done.known);
    update->bind(4, done.conflicts);
    bind_optional(*update, 5, done.first_s);
    bind_optional(*update, 6, done.last_s);
    update->exec();
}

void set_state(Connection& book, model::ClimateImportId id, const std::string& state) {
    const auto update = book.prepared("UPDATE climate_import SET state = ?2 WHERE id = ?1");
    update->bind(1, id.row());
    update->bind(2, state);
    update->exec();
}

std::optional<Instant> instant_of(const std::optional<std::int64_t>& at_s) {
    return at_s ? std::optional(Instant::from_unix_seconds(*at_s)) : std::nullopt;
}

template <class Q, Q (*Make)(double)>
std::optional<model::Spread<Q>> spread_of(const CentiSum& sum) {
    if (sum.count == 0) {
        return std::nullopt;
    }
    const auto at = [](double centi) { return Make(centi / 100.0); };
    return model::Spread<Q>{at(static_cast<double>(sum.least)),
                            at(static_cast<double>(sum.sum) / static_cast<double>(sum.count)),
                            at(static_cast<double>(sum.greatest)), sum.count};
}

model::ClimateBucket bucket_of(const BucketSums& sums) {
    return {Instant::from_unix_seconds(sums.start_s),
            spread_of<units::Temperature, &units::Temperature::celsius>(sums.temperature),
            spread_of<units::RelativeHumidity, &units::RelativeHumidity::percent>(sums.humidity)};
}

/// Calls `each(at_s, temperature, humidity)` for the readings in [from, to), by time.
template <class Each>
void for_each_reading(Connection& book, model::SensorId sensor, Instant from, Instant to,
                      const Each& each) {
    FastStatement rows(book, "SELECT at_s, temp_centic, rh_centipct FROM climate_reading"
                             " WHERE sensor_id = ?1 AND at_s >= ?2 AND at_s < ?3 ORDER BY at_s");
    rows.bind(1, sensor.row());
    rows.bind(2, from.unix_seconds());
    rows.bind(3, to.unix_seconds());
    while (rows.step()) {
        each(rows.integer(0), rows.optional(1), rows.optional(2));
    }
}

std::optional<units::Temperature> temperature_of(const std::optional<std::int64_t>& centi) {
    return centi ? std::optional(units::Temperature::celsius(static_cast<double>(*centi) / 100.0))
                 : std::nullopt;
}
std::optional<units::RelativeHumidity> humidity_of(const std::optional<std::int64_t>& centi) {
    return centi ? std::optional(
                       units::RelativeHumidity::percent(static_cast<double>(*centi) / 100.0))
                 : std::nullopt;
}

} // namespace

model::ClimateImportId begin_climate_import(Connection& book, const model::ClimateImport& log,
                                            const std::string& dialect_json) {
    const auto sensor = book.prepared("SELECT 1 FROM sensor WHERE id = ?1");
    sensor->bind(1, log.sensor.row());
    if (!sensor->executeStep()) {
        refuse(ErrorCode::no_such_entry, "sensor " + std::to_string(log.sensor.row()));
    }
    const auto insert = book.prepared(
        "INSERT INTO climate_import (sensor_id, made_at_s, file_name, dialect_json, added, known,"
        " conflicts, rejected, state) VALUES (?1, ?2, ?3, ?4, 0, 0, 0, 0, 'running')"
        " RETURNING id");
    insert->bind(1, log.sensor.row());
    insert->bind(2, log.made_at.unix_seconds());
    insert->bind(3, log.file_name);
    insert->bind(4, dialect_json);
    insert->executeStep();
    return model::ClimateImportId::from_row(insert->getColumn(0).getInt64());
}

std::int64_t append_climate(Connection& book, model::ClimateImportId import_id,
                            std::span<const ClimateReading> readings) {
    const auto log = import_row(book, import_id);
    if (log.state != "running") {
        refuse(ErrorCode::not_allowed, "the import has ended");
    }
    const auto done = insert_rows(book, log.sensor, import_id.row(), sorted_rows(readings));
    auto buckets = done.quarter_hours;
    for (const std::int64_t width_s : bucket_widths_s) {
        if (width_s != bucket_widths_s.front()) {
            buckets = coarser(buckets, width_s);
        }
        add_to_buckets(book, log.sensor, width_s, buckets);
    }
    count_in(book, import_id.row(), done);
    return done.added;
}

void end_climate_import(Connection& book, model::ClimateImportId import_id, const ImportEnd& end) {
    const auto log = import_row(book, import_id);
    if (log.state != "running") {
        refuse(ErrorCode::not_allowed, "the import has ended");
    }
    if (!log.first_s) {
        const auto forget = book.prepared("DELETE FROM climate_import WHERE id = ?1");
        forget->bind(1, import_id.row());
        forget->exec();
        return;
    }
    const auto action =
        log_action(book, {"import_climate", log.file_name, true, {}}, {end.at, end.who, {}});
    const auto update =
        book.prepared("UPDATE climate_import SET rejected = ?2, action_id = ?3 WHERE id = ?1");
    update->bind(1, import_id.row());
    update->bind(2, end.rejected);
    update->bind(3, action.row());
    update->exec();
    set_state(book, import_id, end.complete ? "complete" : "cancelled");
}

std::int64_t take_back_climate_import(Connection& book, model::ClimateImportId import_id) {
    const auto log = import_row(book, import_id);
    if (log.state == "undone") {
        refuse(ErrorCode::not_allowed, "the import was taken back before");
    }
    std::int64_t removed = 0;
    if (log.first_s) {
        const auto removal =
            book.prepared("DELETE FROM climate_reading WHERE sensor_id = ?1 AND at_s >= ?2"
                          " AND at_s <= ?3 AND import_id = ?4");
        removal->bind(1, log.sensor);
        removal->bind(2, *log.first_s);
        removal->bind(3, *log.last_s);
        removal->bind(4, import_id.row());
        removed = removal->exec();
        rebuild_buckets(book, log.sensor, *log.first_s, *log.last_s);
    }
    set_state(book, import_id, "undone");
    return removed;
}

bool take_back_climate_of(Connection& book, model::ActionId action) {
    std::optional<model::ClimateImportId> import_id;
    {
        const auto row = book.prepared("SELECT id FROM climate_import WHERE action_id = ?1");
        row->bind(1, action.row());
        if (row->executeStep()) {
            import_id = model::ClimateImportId::from_row(row->getColumn(0).getInt64());
        }
    }
    if (!import_id) {
        return false;
    }
    take_back_climate_import(book, *import_id);
    const auto drop = book.prepared("UPDATE action SET state = 'dropped' WHERE id = ?1");
    drop->bind(1, action.row());
    drop->exec();
    return true;
}

std::vector<model::ClimateImport> climate_imports(Connection& book,
                                                  std::optional<model::SensorId> sensor) {
    const auto rows = book.prepared(
        "SELECT id, sensor_id, made_at_s, file_name, added, known, conflicts, rejected, first_s,"
        " last_s, state FROM climate_import WHERE ?1 IS NULL OR sensor_id = ?1"
        " ORDER BY made_at_s DESC, id DESC");
    bind_optional(*rows, 1, sensor ? std::optional(sensor->row()) : std::nullopt);
    std::vector<model::ClimateImport> logs;
    while (rows->executeStep()) {
        model::ClimateImport log{.made_at =
                                     Instant::from_unix_seconds(rows->getColumn(2).getInt64())};
        log.id = model::ClimateImportId::from_row(rows->getColumn(0).getInt64());
        log.sensor = model::SensorId::from_row(rows->getColumn(1).getInt64());
        log.file_name = rows->getColumn(3).getString();
        log.added = rows->getColumn(4).getInt64();
        log.known = rows->getColumn(5).getInt64();
        log.conflicts = rows->getColumn(6).getInt64();
        log.rejected = rows->getColumn(7).getInt64();
        log.first = instant_of(optional_integer(rows->getColumn(8)));
        log.last = instant_of(optional_integer(rows->getColumn(9)));
        const std::string state = rows->getColumn(10).getString();
        log.complete = state == "complete";
        log.undone = state == "undone";
        logs.push_back(std::move(log));
    }
    return logs;
}

std::optional<ClimateExtent> climate_extent(Connection& book, model::SensorId sensor) {
    // Two searches of the key and a sum over days: never a scan of the readings.
    const auto ends =
        book.prepared("SELECT (SELECT min(at_s) FROM climate_reading WHERE sensor_id = ?1),"
                      " (SELECT max(at_s) FROM climate_reading WHERE sensor_id = ?1),"
                      " (SELECT sum(max(temp_count, rh_count)) FROM climate_bucket"
                      "   WHERE sensor_id = ?1 AND width_s = 86400)");
    ends->bind(1, sensor.row());
    ends->executeStep();
    const auto first = optional_integer(ends->getColumn(0));
    const auto last = optional_integer(ends->getColumn(1));
    if (!first || !last) {
        return std::nullopt;
    }
    return ClimateExtent{Instant::from_unix_seconds(*first), Instant::from_unix_seconds(*last),
                         ends->getColumn(2).getInt64()};
}

std::vector<ClimateReading> climate_readings(Connection& book, model::SensorId sensor, Instant from,
                                             Instant to) {
    std::vector<ClimateReading> readings;
    for_each_reading(book, sensor, from, to,
                     [&](std::int64_t at_s, const auto& temperature, const auto& humidity) {
                         readings.push_back({Instant::from_unix_seconds(at_s),
                                             temperature_of(temperature), humidity_of(humidity)});
                     });
    return readings;
}

std::vector<model::ClimateBucket> climate_buckets(Connection& book, model::SensorId sensor,
                                                  model::ClimateLevel level, Instant from,
                                                  Instant to) {
    std::vector<model::ClimateBucket> buckets;
    if (level == model::ClimateLevel::reading) {
        for_each_reading(book, sensor, from, to,
                         [&](std::int64_t at_s, const auto& temperature, const auto& humidity) {
                             BucketSums sums{at_s, {}, {}};
                             sums.temperature.add(temperature);
                             sums.humidity.add(humidity);
                             buckets.push_back(bucket_of(sums));
                         });
        return buckets;
    }
    const auto sums = stored_buckets(book, sensor.row(), model::width_seconds(level),
                                     from.unix_seconds(), to.unix_seconds());
    buckets.reserve(sums.size());
    std::transform(sums.begin(), sums.end(), std::back_inserter(buckets), bucket_of);
    return buckets;
}

std::int64_t climate_count(Connection& book, model::SensorId sensor, Instant from, Instant to) {
    const auto sum = book.prepared("SELECT total(max(temp_count, rh_count)) FROM climate_bucket"
                                   " WHERE sensor_id = ?1 AND width_s = ?2 AND start_s >= ?3"
                                   " AND start_s < ?4");
    sum->bind(1, sensor.row());
    sum->bind(2, bucket_widths_s[0]);
    sum->bind(3, bucket_start(from.unix_seconds(), bucket_widths_s[0]));
    sum->bind(4, to.unix_seconds());
    sum->executeStep();
    return static_cast<std::int64_t>(sum->getColumn(0).getDouble());
}

} // namespace core::store
