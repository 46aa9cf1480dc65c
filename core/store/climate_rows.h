#pragma once

// Internal to core/store: reading and writing single rows of the climate tables.

#include "core/model/chamber.h"
#include "core/store/climate_sums.h"
#include "core/store/connection.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Statement.h>

#include <array>
#include <optional>
#include <sqlite3.h>
#include <vector>

namespace core::store {

/// A prepared statement of the engine itself. SQLiteCpp's columns share ownership of the statement
/// and cost three times the row where a chart reads a hundred thousand of them.
class FastStatement {
  public:
    FastStatement(Connection& book, const char* sql);
    ~FastStatement();
    FastStatement(const FastStatement&) = delete;
    FastStatement& operator=(const FastStatement&) = delete;
    void bind(int index, std::int64_t value);
    void bind(int index, const std::optional<std::int64_t>& value);
    /// True when there is a row; throws like SQLiteCpp on anything but a row or the end.
    bool step();
    void reset();
    [[nodiscard]] std::int64_t integer(int column) const;
    [[nodiscard]] std::optional<std::int64_t> optional(int column) const;
    /// Rows changed by the last step.
    [[nodiscard]] int changes() const;

  private:
    sqlite3* database_;
    sqlite3_stmt* statement_ = nullptr;
};

inline constexpr std::array<std::int64_t, 4> bucket_widths_s{900, 3600, 21600, 86400};

std::optional<std::int64_t> centi_of(const std::optional<units::Temperature>& t);
std::optional<std::int64_t> centi_of(const std::optional<units::RelativeHumidity>& rh);

inline std::optional<std::int64_t> optional_integer(const SQLite::Column& column) {
    return column.isNull() ? std::nullopt : std::optional<std::int64_t>(column.getInt64());
}
inline void bind_optional(SQLite::Statement& statement, int index,
                          const std::optional<std::int64_t>& value) {
    if (value) {
        statement.bind(index, *value);
    } else {
        statement.bind(index);
    }
}

/// Buckets of one width with start in [from_s, to_s).
std::vector<BucketSums> stored_buckets(Connection& book, std::int64_t sensor, std::int64_t width_s,
                                       std::int64_t from_s, std::int64_t to_s);
/// The quarter-hour buckets of the readings in [from_s, to_s), added up anew.
std::vector<BucketSums> quarter_hours_of_readings(Connection& book, std::int64_t sensor,
                                                  std::int64_t from_s, std::int64_t to_s);
/// Adds sums to the stored buckets, making those that are not there.
void add_to_buckets(Connection& book, std::int64_t sensor, std::int64_t width_s,
                    const std::vector<BucketSums>& buckets);
/// Makes the buckets of all widths that touch [first_s, last_s] anew from the readings.
void rebuild_buckets(Connection& book, std::int64_t sensor, std::int64_t first_s,
                     std::int64_t last_s);

} // namespace core::store
