#include "core/store/climate_rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <cmath>

namespace core::store {
namespace {

CentiSum sum_at(const FastStatement& row, int first_column) {
    CentiSum sum;
    sum.count = row.integer(first_column);
    if (sum.count > 0) {
        sum.sum = row.integer(first_column + 1);
        sum.least = row.integer(first_column + 2);
        sum.greatest = row.integer(first_column + 3);
    }
    return sum;
}

void bind_sum(FastStatement& statement, int first, const CentiSum& sum) {
    statement.bind(first, sum.count);
    statement.bind(first + 1, sum.sum);
    const bool known = sum.count > 0;
    statement.bind(first + 2, known ? std::optional(sum.least) : std::nullopt);
    statement.bind(first + 3, known ? std::optional(sum.greatest) : std::nullopt);
}

void remove_buckets(Connection& book, std::int64_t sensor, std::int64_t width_s,
                    std::int64_t from_s, std::int64_t to_s) {
    const auto removal =
        book.prepared("DELETE FROM climate_bucket WHERE sensor_id = ?1 AND width_s = ?2"
                      " AND start_s >= ?3 AND start_s < ?4");
    removal->bind(1, sensor);
    removal->bind(2, width_s);
    removal->bind(3, from_s);
    removal->bind(4, to_s);
    removal->exec();
}

} // namespace

FastStatement::FastStatement(Connection& book, const char* sql)
    : database_(book.database().getHandle()) {
    if (sqlite3_prepare_v2(database_, sql, -1, &statement_, nullptr) != SQLITE_OK) {
        throw SQLite::Exception(database_);
    }
}
FastStatement::~FastStatement() {
    sqlite3_finalize(statement_);
}
void FastStatement::bind(int index, std::int64_t value) {
    sqlite3_bind_int64(statement_, index, value);
}
void FastStatement::bind(int index, const std::optional<std::int64_t>& value) {
    if (value) {
        sqlite3_bind_int64(statement_, index, *value);
    } else {
        sqlite3_bind_null(statement_, index);
    }
}
bool FastStatement::step() {
    const int code = sqlite3_step(statement_);
    if (code != SQLITE_ROW && code != SQLITE_DONE) {
        throw SQLite::Exception(database_, code);
    }
    return code == SQLITE_ROW;
}
void FastStatement::reset() {
    sqlite3_reset(statement_);
}
std::int64_t FastStatement::integer(int column) const {
    return sqlite3_column_int64(statement_, column);
}
std::optional<std::int64_t> FastStatement::optional(int column) const {
    return sqlite3_column_type(statement_, column) == SQLITE_NULL
               ? std::nullopt
               : std::optional<std::int64_t>(sqlite3_column_int64(statement_, column));
}
int FastStatement::changes() const {
    return sqlite3_changes(database_);
}

std::optional<std::int64_t> centi_of(const std::optional<units::Temperature>& t) {
    return t ? std::optional<std::int64_t>(std::llround(t->in_celsius() * 100.0)) : std::nullopt;
}
std::optional<std::int64_t> centi_of(const std::optional<units::RelativeHumidity>& rh) {
    return rh ? std::optional<std::int64_t>(std::llround(rh->in_percent() * 100.0)) : std::nullopt;
}

std::vector<BucketSums> quarter_hours_of_readings(Connection& book, std::int64_t sensor,
                                                  std::int64_t from_s, std::int64_t to_s) {
    FastStatement rows(book, "SELECT at_s, temp_centic, rh_centipct FROM climate_reading"
                             " WHERE sensor_id = ?1 AND at_s >= ?2 AND at_s < ?3 ORDER BY at_s");
    rows.bind(1, sensor);
    rows.bind(2, from_s);
    rows.bind(3, to_s);
    std::vector<BucketSums> buckets;
    while (rows.step()) {
        auto& bucket = bucket_at(buckets, rows.integer(0), bucket_widths_s[0]);
        bucket.temperature.add(rows.optional(1));
        bucket.humidity.add(rows.optional(2));
    }
    return buckets;
}

std::vector<BucketSums> stored_buckets(Connection& book, std::int64_t sensor, std::int64_t width_s,
                                       std::int64_t from_s, std::int64_t to_s) {
    FastStatement rows(
        book, "SELECT start_s, temp_count, temp_sum_centic, temp_min_centic, temp_max_centic,"
              " rh_count, rh_sum_centipct, rh_min_centipct, rh_max_centipct FROM climate_bucket"
              " WHERE sensor_id = ?1 AND width_s = ?2 AND start_s >= ?3 AND start_s < ?4"
              " ORDER BY start_s");
    rows.bind(1, sensor);
    rows.bind(2, width_s);
    rows.bind(3, from_s);
    rows.bind(4, to_s);
    std::vector<BucketSums> buckets;
    while (rows.step()) {
        buckets.push_back({rows.integer(0), sum_at(rows, 1), sum_at(rows, 5)});
    }
    return buckets;
}

void add_to_buckets(Connection& book, std::int64_t sensor, std::int64_t width_s,
                    const std::vector<BucketSums>& buckets) {
    // SQLite's scalar min and max give NULL when either side is: hence the coalesce both ways.
    FastStatement upsert(
        book,
        "INSERT INTO climate_bucket VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)"
        " ON CONFLICT DO UPDATE SET"
        " temp_count = temp_count + ?4, temp_sum_centic = temp_sum_centic + ?5,"
        " temp_min_centic = min(coalesce(temp_min_centic, ?6), coalesce(?6, temp_min_centic)),"
        " temp_max_centic = max(coalesce(temp_max_centic, ?7), coalesce(?7, temp_max_centic)),"
        " rh_count = rh_count + ?8, rh_sum_centipct = rh_sum_centipct + ?9,"
        " rh_min_centipct = min(coalesce(rh_min_centipct, ?10), coalesce(?10, rh_min_centipct)),"
        " rh_max_centipct = max(coalesce(rh_max_centipct, ?11), coalesce(?11, rh_max_centipct))");
    upsert.bind(1, sensor);
    upsert.bind(2, width_s);
    for (const auto& bucket : buckets) {
        upsert.bind(3, bucket.start_s);
        bind_sum(upsert, 4, bucket.temperature);
        bind_sum(upsert, 8, bucket.humidity);
        upsert.step();
        upsert.reset();
    }
}

void rebuild_buckets(Connection& book, std::int64_t sensor, std::int64_t first_s,
                     std::int64_t last_s) {
    // Whole buckets of the coarsest width, so that each level can be made from the one below.
    const std::int64_t widest = bucket_widths_s.back();
    const std::int64_t from_s = bucket_start(first_s, widest);
    const std::int64_t to_s = bucket_start(last_s, widest) + widest;
    auto buckets = quarter_hours_of_readings(book, sensor, from_s, to_s);
    for (const std::int64_t width_s : bucket_widths_s) {
        if (width_s != bucket_widths_s.front()) {
            buckets = coarser(buckets, width_s);
        }
        remove_buckets(book, sensor, width_s, from_s, to_s);
        add_to_buckets(book, sensor, width_s, buckets);
    }
}

} // namespace core::store
