#include "core/exchange/calendar.h"

#include <libical/ical.h>

#include <cctype>
#include <memory>
#include <set>

namespace core::exchange {
namespace {

struct FreeComponent {
    void operator()(icalcomponent* component) const { icalcomponent_free(component); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

icaltimetype date_of(units::Day day) {
    const auto date = day.date();
    icaltimetype time = icaltime_null_date();
    time.year = static_cast<int>(date.year());
    time.month = static_cast<int>(static_cast<unsigned>(date.month()));
    time.day = static_cast<int>(static_cast<unsigned>(date.day()));
    return time;
}

icaltimetype utc_of(units::Instant at) {
    return icaltime_from_timet_with_zone(static_cast<time_t>(at.unix_seconds()), /*is_date=*/0,
                                         icaltimezone_get_utc_timezone());
}

void add(icalcomponent* component, icalproperty* property) {
    icalcomponent_add_property(component, property); // which owns it from now on
}

/// Control characters other than line breaks and tabs have no place in RFC 5545 text, and a lone
/// CR would be written as it stands.
std::string clean(const std::string& text) {
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (c == '\r') {
            if (i + 1 == text.size() || text[i + 1] != '\n') {
                out += '\n';
            }
        } else if (static_cast<unsigned char>(c) >= 0x20 || c == '\n' || c == '\t') {
            out += c;
        }
    }
    return out;
}

base::Status check(const CalendarEntry& entry, std::set<std::string>& seen) {
    using base::ErrorCode;
    const bool all_day = entry.first.has_value();
    const bool timed = entry.starts.has_value();
    if (entry.uid.empty() || entry.title.empty() || all_day == timed) {
        return base::fault(ErrorCode::bad_format, entry.title, entry.uid);
    }
    if ((all_day && entry.last && *entry.last < *entry.first) ||
        (timed && entry.ends && *entry.ends < *entry.starts)) {
        return base::fault(ErrorCode::bad_format, entry.title, entry.uid);
    }
    if (!seen.insert(entry.uid).second) {
        return base::fault(ErrorCode::conflict, entry.title, entry.uid);
    }
    return {};
}

void add_times(icalcomponent* event, const CalendarEntry& entry) {
    if (entry.first) {
        add(event, icalproperty_new_dtstart(date_of(*entry.first)));
        // DTEND is the first day that is not part of it (RFC 5545, 3.6.1).
        add(event, icalproperty_new_dtend(date_of(entry.last.value_or(*entry.first) + 1)));
        return;
    }
    add(event, icalproperty_new_dtstart(utc_of(*entry.starts)));
    if (entry.ends) {
        add(event, icalproperty_new_dtend(utc_of(*entry.ends)));
    }
}

Component event_of(const CalendarEntry& entry, units::Instant now) {
    Component event(icalcomponent_new_vevent());
    add(event.get(), icalproperty_new_uid(clean(entry.uid).c_str()));
    add(event.get(), icalproperty_new_dtstamp(utc_of(now)));
    add_times(event.get(), entry);
    add(event.get(), icalproperty_new_summary(clean(entry.title).c_str()));
    if (!entry.text.empty()) {
        add(event.get(), icalproperty_new_description(clean(entry.text).c_str()));
    }
    if (!entry.category.empty()) {
        add(event.get(), icalproperty_new_categories(clean(entry.category).c_str()));
    }
    add(event.get(),
        icalproperty_new_transp(entry.busy ? ICAL_TRANSP_OPAQUE : ICAL_TRANSP_TRANSPARENT));
    return event;
}

icalproperty* own_property(const char* name, const std::string& value) {
    icalproperty* property = icalproperty_new_x(clean(value).c_str());
    icalproperty_set_x_name(property, name);
    return property;
}

} // namespace

base::Result<std::string> write_calendar(const std::vector<CalendarEntry>& entries,
                                         const std::string& calendar_name, const std::string& zone,
                                         units::Instant now) {
    Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
    add(calendar.get(), icalproperty_new_version("2.0"));
    add(calendar.get(), icalproperty_new_prodid("-//Saltloft//Plan//EN"));
    add(calendar.get(), icalproperty_new_calscale("GREGORIAN"));
    if (!calendar_name.empty()) {
        add(calendar.get(), own_property("X-WR-CALNAME", calendar_name));
    }
    if (!zone.empty()) {
        add(calendar.get(), own_property("X-WR-TIMEZONE", zone));
    }
    std::set<std::string> seen;
    for (const auto& entry : entries) {
        if (auto checked = check(entry, seen); !checked) {
            return tl::unexpected(checked.error());
        }
        icalcomponent_add_component(calendar.get(), event_of(entry, now).release());
    }
    const std::unique_ptr<char, decltype(&free)> text(
        icalcomponent_as_ical_string_r(calendar.get()), &free);
    return text ? base::Result<std::string>(text.get())
                : base::fault(base::ErrorCode::no_solution, "calendar text");
}

std::string calendar_uid(const std::string& kind, const std::string& key, const std::string& book) {
    // Letters, digits and a few marks only: some calendars cut a uid at anything else.
    const auto plain = [](const std::string& text) {
        std::string out;
        for (const char c : text) {
            out +=
                std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '.' || c == '_' ? c : '-';
        }
        return out;
    };
    return plain(kind) + "-" + plain(key) + "@" + plain(book);
}

} // namespace core::exchange
