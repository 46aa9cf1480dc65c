#pragma once

#include "core/base/result.h"
#include "core/units/time.h"
#include "core/units/zone.h"

#include <string>
#include <vector>

namespace core::services {

/// One all-day line of a calendar file, its words made by the caller.
struct CalendarLine {
    std::string kind; ///< "stage", "task"
    std::string key;  ///< stable within the kind: a row id, a task's key
    std::string title;
    std::string text;
    units::Day first;
    units::Day last; ///< included
};

/// The lines as an iCalendar file. `mark` tells this book from others and must stay the same over
/// all its exports: a calendar then replaces what it had. Fails as exchange::write_calendar does.
base::Result<std::string> calendar_file(const std::vector<CalendarLine>& lines,
                                        const std::string& mark, const std::string& name,
                                        const units::Zone& zone, units::Instant now);

} // namespace core::services
