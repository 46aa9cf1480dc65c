#pragma once

#include "core/chamber/log_dialect.h"

#include <cstdint>
#include <optional>
#include <string_view>

namespace core::chamber {

/// A moment as a logger wrote it.
struct LogStamp {
    std::int64_t seconds = 0;          ///< on the logger's clock, since 1970-01-01 00:00 there
    std::optional<int> offset_seconds; ///< local minus UTC, when the stamp says (0 for epochs)
    bool has_time = false;             ///< a time of day was written, not the date alone
};

/// Reads one stamp; nothing when `text` is not wholly a real moment in that form. The calendar
/// forms take - / . or blanks between the parts, month names (English, German, French, Italian,
/// Spanish, Dutch, Swedish), "T", a comma or blanks before the time, "h:mm" with optional seconds
/// and fraction (dropped), AM/PM in the usual spellings, and "Z", "UTC" or an offset at the end.
/// Two-digit years are 2000 to 2099. ISO basic form ("20250131T120000") is read as
/// year_month_day.
std::optional<LogStamp> read_stamp(std::string_view text, StampForm form);

/// Seconds after midnight of a time written alone ("7:05:30 pm"); nothing when it is no time.
std::optional<std::int64_t> read_time_of_day(std::string_view text);

/// "+01:00", "+0100", "+1", "Z", "UTC" as seconds; nothing when it is no offset. The span is
/// -12 h to +14 h, as in use.
std::optional<int> read_offset(std::string_view text);

} // namespace core::chamber
