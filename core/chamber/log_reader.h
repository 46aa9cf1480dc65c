#pragma once

#include "core/base/result.h"
#include "core/chamber/local_clock.h"
#include "core/chamber/log_dialect.h"
#include "core/chamber/log_row.h"
#include "core/chamber/text_encoding.h"
#include "core/model/chamber.h"

#include <array>
#include <cstdint>
#include <functional>
#include <memory>
#include <span>
#include <stop_token>
#include <string>
#include <vector>

/// Reads a log of any length in one pass with memory that does not grow.
namespace core::chamber {

enum class RejectReason {
    bad_stamp,       ///< no moment in the dialect's form
    skipped_hour,    ///< a local time the clock skipped in spring
    missing_columns, ///< fewer cells than the dialect needs (a line cut off)
    bad_number,      ///< a cell that is neither a number nor blank
    out_of_range,    ///< no air has that temperature or humidity: a sensor's error code
    no_values,       ///< neither a temperature nor a humidity
    heading_again,   ///< the heading repeated inside the file
    line_too_long,   ///< over 64 KiB
    unclosed_quote,
    binary_data, ///< a zero byte in the text
};
inline constexpr std::size_t reject_reason_count = 10;
std::string_view code_of(RejectReason reason);

struct Reject {
    std::int64_t line; ///< the physical line, the first being 1
    RejectReason reason;
    std::string text; ///< the line's first 120 bytes, for the list shown to a person
};

struct LogTally {
    std::int64_t lines = 0;
    std::int64_t blank_lines = 0;
    std::int64_t readings = 0; ///< handed to the sink, repeats included
    std::array<std::int64_t, reject_reason_count> rejected{}; ///< by reason
    std::int64_t out_of_order = 0; ///< lines that go against the log's direction
    std::int64_t repeated = 0;     ///< lines with the same moment as the line before
    std::uint64_t bytes = 0;
    std::vector<Reject> first_rejects; ///< the first `kept_rejects`
    [[nodiscard]] std::int64_t rejected_lines() const;
};
inline constexpr std::size_t kept_rejects = 1000;

/// Takes a chunk of readings in file order and what has been read so far. A failure ends the
/// reading with that failure.
using ReadingSink =
    std::function<base::Status(std::span<const model::ClimateReading>, const LogTally&)>;

/// Fills the buffer and says how much of it; 0 is the end.
using ByteSource = std::function<base::Result<std::size_t>(std::span<char>)>;

class LogReader {
  public:
    /// Fails with unknown_zone when the dialect names a zone this system does not know.
    static base::Result<LogReader> make(const LogDialect& dialect, ReadingSink sink,
                                        std::size_t readings_per_chunk);
    base::Status feed(std::string_view bytes);
    /// The last line (it may lack its end) and the last, shorter chunk.
    base::Status finish();
    [[nodiscard]] const LogTally& tally() const { return tally_; }

  private:
    LogReader(LogDialect dialect, LocalClock clock, ReadingSink sink, std::size_t chunk);
    base::Status take_text(std::string_view text);
    base::Status take_line(std::string_view line);
    void reject(RejectReason reason, std::string_view line);
    /// The reading of a cut line, or why there is none.
    tl::expected<model::ClimateReading, RejectReason> reading_of();
    [[nodiscard]] bool looks_like_heading() const;
    base::Status hand_over();

    LogDialect dialect_;
    LocalClock clock_;
    ReadingSink sink_;
    std::size_t chunk_size_;
    Transcoder transcoder_;
    std::unique_ptr<LogRow> row_;
    std::string partial_; ///< a line not yet ended
    std::string text_;    ///< transcoded chunk
    std::vector<model::ClimateReading> chunk_;
    std::optional<units::Instant> previous_;
    std::size_t cells_needed_ = 0;
    LogTally tally_;
};

/// Reads all of `source`. `cancel` is looked at between blocks of 256 KiB and before each chunk:
/// then the result is `cancelled` and every chunk handed over so far stands.
base::Result<LogTally> read_log(const ByteSource& source, const LogDialect& dialect,
                                const ReadingSink& sink, const std::stop_token& cancel,
                                std::size_t readings_per_chunk);

} // namespace core::chamber
