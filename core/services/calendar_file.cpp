#include "core/services/calendar_file.h"

#include "core/exchange/calendar.h"

namespace core::services {

base::Result<std::string> calendar_file(const std::vector<CalendarLine>& lines,
                                        const std::string& mark, const std::string& name,
                                        const units::Zone& zone, units::Instant now) {
    std::vector<exchange::CalendarEntry> entries;
    entries.reserve(lines.size());
    for (const auto& line : lines) {
        entries.push_back({.uid = exchange::calendar_uid(line.kind, line.key, mark),
                           .title = line.title,
                           .text = line.text,
                           .category = {},
                           .first = line.first,
                           .last = line.last});
    }
    return exchange::write_calendar(entries, name, zone.name(), now);
}

} // namespace core::services
