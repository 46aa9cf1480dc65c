#pragma once

#include "core/model/chamber.h"
#include "core/model/climate.h"
#include "core/store/connection.h"

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// Climate readings in bulk: imports, readings and their roll-ups. All throw; what writes expects
/// a Transaction around it. A roll-up is always written in the transaction of its readings.
namespace core::store {

/// A new import in state "running". `log` needs sensor, made_at and file_name. no_such_entry when
/// the sensor is not in the book.
model::ClimateImportId begin_climate_import(Connection& book, const model::ClimateImport& log,
                                            const std::string& dialect_json);

/// Adds readings, in any order, and brings the four roll-up levels and the import's numbers up to
/// date. A reading of a moment the sensor has already is not added: it counts as known, and as a
/// conflict when it says something else. Returns what was added.
std::int64_t append_climate(Connection& book, model::ClimateImportId import_id,
                            std::span<const model::ClimateReading> readings);

/// How a running import ends.
struct ImportEnd {
    bool complete = true; ///< false: given up; its whole chunks stay until it is taken back
    std::int64_t rejected = 0;
    units::Instant at;
    std::optional<model::PersonId> who;
};
/// Ends a running import and logs it as one action ("import_climate", about the file), which one
/// undo takes back. One that added nothing is forgotten instead: there is nothing to take back.
void end_climate_import(Connection& book, model::ClimateImportId import_id, const ImportEnd& end);

/// Removes what the import added and makes the roll-ups it touched anew. Readings that other logs
/// brought too stay with the log that brought them first. not_allowed when it was undone before.
/// Returns the number of readings removed.
std::int64_t take_back_climate_import(Connection& book, model::ClimateImportId import_id);

/// Takes back the import that an action logged, if it logged one; then true. An undo calls this:
/// the readings are not in the action's changeset, which would hold millions of rows, so the
/// action cannot be redone (its file can be imported again).
bool take_back_climate_of(Connection& book, model::ActionId action);

/// Newest first; of one sensor, or of all.
std::vector<model::ClimateImport> climate_imports(Connection& book,
                                                  std::optional<model::SensorId> sensor = {});

/// What a sensor's readings span; absent when it has none.
struct ClimateExtent {
    units::Instant first;
    units::Instant last;
    std::int64_t readings = 0;
};
std::optional<ClimateExtent> climate_extent(Connection& book, model::SensorId sensor);

/// Readings in [from, to), by time.
std::vector<model::ClimateReading> climate_readings(Connection& book, model::SensorId sensor,
                                                    units::Instant from, units::Instant to);

/// Buckets whose start is in [from, to), by time; for `reading`, each reading as its own bucket.
std::vector<model::ClimateBucket> climate_buckets(Connection& book, model::SensorId sensor,
                                                  model::ClimateLevel level, units::Instant from,
                                                  units::Instant to);

/// How many readings a sensor has in [from, to), from the quarter-hour roll-up: right to a
/// quarter of an hour at either end.
std::int64_t climate_count(Connection& book, model::SensorId sensor, units::Instant from,
                           units::Instant to);

/// Every roll-up against its readings, and every reading's sensor and import; empty when all
/// agree. Reads the whole table once. At most 100 problems are told.
std::vector<std::string> climate_problems(Connection& book);

/// Makes every roll-up of every sensor anew from its readings: the repair for what
/// climate_problems finds in roll-ups. Expects a Transaction.
void rebuild_climate_roll_ups(Connection& book);

} // namespace core::store
