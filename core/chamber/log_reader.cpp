#include "core/chamber/log_reader.h"

#include "core/chamber/log_cell.h"
#include "core/chamber/log_stamp.h"

#include <algorithm>
#include <cstring>
#include <numeric>

namespace core::chamber {
namespace {

constexpr std::size_t longest_line = std::size_t{64} * 1024;
constexpr std::size_t block_size = std::size_t{256} * 1024;
constexpr std::size_t shown_of_a_line = 120;

RejectReason reason_of(CellFault fault) {
    return fault == CellFault::out_of_range ? RejectReason::out_of_range : RejectReason::bad_number;
}

} // namespace

std::string_view code_of(RejectReason reason) {
    constexpr std::array<std::string_view, reject_reason_count> codes{
        "bad_stamp", "skipped_hour",  "missing_columns", "bad_number",     "out_of_range",
        "no_values", "heading_again", "line_too_long",   "unclosed_quote", "binary_data"};
    return codes[static_cast<std::size_t>(reason)];
}

std::int64_t LogTally::rejected_lines() const {
    return std::accumulate(rejected.begin(), rejected.end(), std::int64_t{0});
}

LogReader::LogReader(LogDialect dialect, LocalClock clock, ReadingSink sink, std::size_t chunk)
    : dialect_(std::move(dialect)), clock_(std::move(clock)), sink_(std::move(sink)),
      chunk_size_(std::max<std::size_t>(chunk, 1)), transcoder_(dialect_.encoding),
      row_(std::make_unique<LogRow>(dialect_.separator)) {
    const auto& columns = dialect_.columns;
    cells_needed_ = 1 + std::max({columns.stamp, columns.time_of_day.value_or(0),
                                  columns.temperature.value_or(0), columns.humidity.value_or(0)});
    chunk_.reserve(std::min<std::size_t>(chunk_size_, 1U << 17U));
}

base::Result<LogReader> LogReader::make(const LogDialect& dialect, ReadingSink sink,
                                        std::size_t readings_per_chunk) {
    auto clock = LocalClock::of(dialect);
    if (!clock) {
        return tl::unexpected(clock.error());
    }
    return LogReader(dialect, std::move(*clock), std::move(sink), readings_per_chunk);
}

base::Status LogReader::feed(std::string_view bytes) {
    tally_.bytes += bytes.size();
    text_.clear();
    transcoder_.feed(bytes, text_);
    return take_text(text_);
}

base::Status LogReader::take_text(std::string_view text) {
    const char end_of_line = dialect_.carriage_return_ends_line ? '\r' : '\n';
    while (!text.empty()) {
        const auto end = text.find(end_of_line);
        const auto piece = text.substr(0, end);
        if (end != std::string_view::npos && partial_.empty()) {
            if (auto done = take_line(piece); !done) {
                return done;
            }
        } else {
            // Past the limit the rest of the line is dropped: only its length matters by then.
            const std::size_t room = longest_line + 1 - partial_.size();
            partial_.append(piece.substr(0, room));
            if (end != std::string_view::npos) {
                auto done = take_line(partial_);
                partial_.clear();
                if (!done) {
                    return done;
                }
            }
        }
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
    }
    return {};
}

base::Status LogReader::take_line(std::string_view line) {
    ++tally_.lines;
    if (!line.empty() && line.back() == '\r') {
        line.remove_suffix(1);
    }
    if (tally_.lines <= dialect_.lines_before_data) {
        return {};
    }
    if (line.size() > longest_line) {
        reject(RejectReason::line_too_long, line);
        return {};
    }
    if (std::memchr(line.data(), '\0', line.size()) != nullptr) {
        reject(RejectReason::binary_data, line);
        return {};
    }
    const bool closed = row_->cut(line);
    const auto& cells = row_->cells();
    if (std::all_of(cells.begin(), cells.end(), [](auto cell) { return cell.empty(); })) {
        ++tally_.blank_lines; // separators alone are how spreadsheets write an empty line
        return {};
    }
    if (!closed) {
        reject(RejectReason::unclosed_quote, line);
        return {};
    }
    const auto reading = reading_of();
    if (!reading) {
        reject(reading.error(), line);
        return {};
    }
    chunk_.push_back(*reading);
    ++tally_.readings;
    return chunk_.size() >= chunk_size_ ? hand_over() : base::Status{};
}

tl::expected<model::ClimateReading, RejectReason> LogReader::reading_of() {
    const auto& cells = row_->cells();
    const auto& columns = dialect_.columns;
    if (cells.size() <= columns.stamp ||
        (columns.time_of_day && cells.size() <= *columns.time_of_day)) {
        return tl::unexpected(RejectReason::missing_columns);
    }
    auto stamp = read_stamp(cells[columns.stamp], dialect_.stamp);
    if (!stamp) {
        return tl::unexpected(looks_like_heading() ? RejectReason::heading_again
                                                   : RejectReason::bad_stamp);
    }
    if (columns.time_of_day) {
        const auto time = read_time_of_day(cells[*columns.time_of_day]);
        if (!time) {
            return tl::unexpected(RejectReason::bad_stamp);
        }
        stamp->seconds += *time;
    }
    // A log whose last cells are empty may leave their separators out too, so a cell past the
    // end is a blank one; but a line with a stamp and nothing else was cut off.
    const auto cell = [&](std::size_t i) {
        return i < cells.size() ? cells[i] : std::string_view();
    };
    model::ClimateReading reading{units::Instant::from_unix_seconds(0), {}, {}};
    if (columns.temperature) {
        const auto value = temperature_cell(cell(*columns.temperature), dialect_.decimal_sign,
                                            dialect_.temperature);
        if (value.fault) {
            return tl::unexpected(reason_of(*value.fault));
        }
        reading.temperature = value.value;
    }
    if (columns.humidity) {
        const auto value =
            humidity_cell(cell(*columns.humidity), dialect_.decimal_sign, dialect_.humidity);
        if (value.fault) {
            return tl::unexpected(reason_of(*value.fault));
        }
        reading.humidity = value.value;
    }
    if (!reading.temperature && !reading.humidity) {
        return tl::unexpected(cells.size() < cells_needed_ ? RejectReason::missing_columns
                                                           : RejectReason::no_values);
    }
    const auto at = clock_.moment(stamp->seconds, stamp->offset_seconds);
    if (!at) {
        return tl::unexpected(RejectReason::skipped_hour);
    }
    reading.at = *at;
    if (previous_) {
        tally_.repeated += *at == *previous_ ? 1 : 0;
        tally_.out_of_order +=
            (dialect_.newest_first ? *at > *previous_ : *at < *previous_) ? 1 : 0;
    }
    previous_ = *at;
    return reading;
}

bool LogReader::looks_like_heading() const {
    const auto& cells = row_->cells();
    return cells.size() >= cells_needed_ &&
           std::none_of(cells.begin(), cells.end(), [this](std::string_view cell) {
               return cell_number(cell, dialect_.decimal_sign).has_value();
           });
}

void LogReader::reject(RejectReason reason, std::string_view line) {
    ++tally_.rejected[static_cast<std::size_t>(reason)];
    if (tally_.first_rejects.size() < kept_rejects) {
        tally_.first_rejects.push_back(
            {tally_.lines, reason, std::string(line.substr(0, shown_of_a_line))});
    }
}

base::Status LogReader::hand_over() {
    auto done = sink_(chunk_, tally_);
    chunk_.clear();
    return done;
}

base::Status LogReader::finish() {
    if (!partial_.empty()) {
        auto done = take_line(partial_);
        partial_.clear();
        if (!done) {
            return done;
        }
    }
    return chunk_.empty() ? base::Status{} : hand_over();
}

base::Result<LogTally> read_log(const ByteSource& source, const LogDialect& dialect,
                                const ReadingSink& sink, const std::stop_token& cancel,
                                std::size_t readings_per_chunk) {
    const auto guarded = [&](std::span<const model::ClimateReading> chunk,
                             const LogTally& so_far) -> base::Status {
        if (cancel.stop_requested()) {
            return base::fault(base::ErrorCode::cancelled);
        }
        return sink(chunk, so_far);
    };
    auto reader = LogReader::make(dialect, guarded, readings_per_chunk);
    if (!reader) {
        return tl::unexpected(reader.error());
    }
    std::vector<char> block(block_size);
    for (;;) {
        if (cancel.stop_requested()) {
            return base::fault(base::ErrorCode::cancelled);
        }
        const auto size = source(block);
        if (!size) {
            return tl::unexpected(size.error());
        }
        if (*size == 0) {
            break;
        }
        if (auto done = reader->feed({block.data(), *size}); !done) {
            return tl::unexpected(done.error());
        }
    }
    if (auto done = reader->finish(); !done) {
        return tl::unexpected(done.error());
    }
    return reader->tally();
}

} // namespace core::chamber
