#pragma once

#include "core/base/result.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::exchange {

/// A calendar entry. Words come from the caller: the core makes no sentences.
struct CalendarEntry {
    /// Stable over every export, so that a calendar updates the entry instead of doubling it; e.g.
    /// "stage-12@book-3f2a". See `calendar_uid`.
    std::string uid;
    std::string title;
    std::string text;     ///< may hold line breaks
    std::string category; ///< may be empty
    /// An entry is all-day (`first`, `last`, both included)...
    std::optional<units::Day> first;
    std::optional<units::Day> last; ///< absent: one day
    /// ...or timed (`starts`, `ends`).
    std::optional<units::Instant> starts;
    std::optional<units::Instant> ends;
    bool busy = false; ///< whether it blocks the time for invitations
};

/// An iCalendar file (RFC 5545) with one VEVENT an entry, in the order given: CRLF line ends, lines
/// folded at 75 octets, text escaped. All-day entries are DATE values, which belong to no time
/// zone, so that a day stays that day on a journey; timed ones are in UTC, which needs no zone
/// table. `zone` names the user's zone for calendars that show it; `now` is DTSTAMP. Fails with
/// bad_format (where: uid) for an entry without uid, title or time, or that ends before it starts,
/// and with conflict for a uid given twice.
base::Result<std::string> write_calendar(const std::vector<CalendarEntry>& entries,
                                         const std::string& calendar_name, const std::string& zone,
                                         units::Instant now);

/// "kind-row@book": `book` tells two books apart and should not change while the book lives.
std::string calendar_uid(const std::string& kind, const std::string& key, const std::string& book);

} // namespace core::exchange
