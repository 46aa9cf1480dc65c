#pragma once

#include "core/chamber/climate_series.h"
#include "core/chamber/detect_dialect.h"
#include "core/chamber/log_reader.h"
#include "core/model/climate.h"

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

namespace core::store {
class Connection;
} // namespace core::store

/// Climate logs into the book and charts out of it. Both may run on a worker thread: they open
/// connections of their own and touch nothing of services::Book.
namespace core::services {

/// What a log looks like before anything is stored.
struct LogPreview {
    chamber::Detection detection;
    std::vector<model::ClimateReading> first; ///< its first readings, at most 20
    chamber::LogTally tally;                  ///< of the file's first 64 KiB
    std::uint64_t bytes = 0;                  ///< of the whole file
};

/// Looks at the start, middle and end of the file. Fails as detect_dialect, or with not_found,
/// no_permission, is_a_directory, io_failure.
base::Result<LogPreview> preview_climate_log(const std::string& log_path,
                                             const chamber::DialectHints& hints);

struct ClimateImportRequest {
    std::string log_path;
    model::SensorId sensor;
    chamber::LogDialect dialect; ///< as previewed and confirmed
    units::Instant now;
    std::optional<model::PersonId> who;
    /// One transaction each. Smaller ones let another connection's change in sooner.
    std::size_t readings_per_chunk = 50'000;
    /// After each transaction, so that whoever waits for the book gets it. Zero where nobody does.
    std::chrono::milliseconds pause_between_chunks{0};
};

struct ClimateImportProgress {
    std::uint64_t bytes_read = 0;
    std::uint64_t bytes = 0;
    std::int64_t readings = 0;
};

struct ClimateImportReport {
    model::ClimateImport import; ///< unassigned id when the log brought nothing new
    chamber::LogTally tally;
};

/// Reads the log into the book at `book_path`, which the caller holds open for writing. Ends as
/// one action in the book's log, which one undo takes back; a log that brings nothing new leaves
/// no trace. When cancelled, the chunks stored so far stay, `import.complete` is false, and one
/// undo takes them back too. After any other failure likewise, if the book can still be written.
base::Result<ClimateImportReport>
import_climate_log(const std::string& book_path, const ClimateImportRequest& request,
                   const std::function<void(const ClimateImportProgress&)>& progress,
                   const std::stop_token& cancel);

/// Reads climate for charts and checks. One thread uses one of these.
class ClimateReader {
  public:
    /// Its own read-only connection to the book.
    static base::Result<ClimateReader> open(const std::string& book_path);
    ClimateReader(ClimateReader&&) noexcept;
    ClimateReader& operator=(ClimateReader&&) noexcept;
    ~ClimateReader();

    /// The series over [from, to) for a chart `pixels` wide, from the coarsest level with two or
    /// more buckets a pixel.
    [[nodiscard]] base::Result<chamber::ClimateSeries>
    series(const model::Sensor& sensor, units::Instant from, units::Instant to, int pixels) const;
    [[nodiscard]] base::Result<std::vector<model::ClimateReading>>
    readings(model::SensorId sensor, units::Instant from, units::Instant to) const;
    [[nodiscard]] base::Result<std::vector<model::ClimateBucket>> buckets(model::SensorId sensor,
                                                                          model::ClimateLevel level,
                                                                          units::Instant from,
                                                                          units::Instant to) const;
    [[nodiscard]] base::Result<std::vector<model::ClimateImport>>
    imports(std::optional<model::SensorId> sensor = {}) const;

    struct Extent {
        units::Instant first;
        units::Instant last;
        std::int64_t readings = 0;
    };
    /// Absent when the sensor has no readings.
    [[nodiscard]] base::Result<std::optional<Extent>> extent(model::SensorId sensor) const;

  private:
    explicit ClimateReader(std::unique_ptr<store::Connection> book);
    std::unique_ptr<store::Connection> book_;
};

/// The level `ClimateReader::series` reads for a window with so many readings.
model::ClimateLevel chart_level(units::Duration window, int pixels, std::int64_t readings);

} // namespace core::services
