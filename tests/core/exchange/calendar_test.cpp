#include "core/exchange/calendar.h"

#include <gtest/gtest.h>
#include <libical/ical.h>

#include <memory>
#include <sstream>

namespace {

using namespace core;
using exchange::CalendarEntry;
using units::Day;
using units::Duration;
using units::Instant;

constexpr Instant now = Instant::from_unix_seconds(1'767'225'600); // 2026-01-01T00:00:00Z

Day day(int year, unsigned month, unsigned d) {
    return Day::from_date(std::chrono::year(year) / std::chrono::month(month) /
                          std::chrono::day(d));
}

CalendarEntry stage() {
    return {.uid = "stage-12@book",
            .title = "Cure: coppa, B07; turn, rub",
            .text = "First line\nback\\slash, comma; semicolon",
            .category = "Saltloft",
            .first = day(2026, 3, 1),
            .last = day(2026, 3, 11)};
}

std::string written(const std::vector<CalendarEntry>& entries) {
    const auto text = exchange::write_calendar(entries, "Curing", "Europe/Rome", now);
    EXPECT_TRUE(text.has_value());
    return text.value_or("");
}

struct Parsed {
    std::shared_ptr<icalcomponent> root;
    explicit Parsed(const std::string& text)
        : root(icalparser_parse_string(text.c_str()), [](icalcomponent* c) {
              if (c != nullptr) {
                  icalcomponent_free(c);
              }
          }) {}
    [[nodiscard]] icalcomponent* event(int n = 0) const {
        auto* found = icalcomponent_get_first_component(root.get(), ICAL_VEVENT_COMPONENT);
        for (; n > 0; --n) {
            found = icalcomponent_get_next_component(root.get(), ICAL_VEVENT_COMPONENT);
        }
        return found;
    }
};

TEST(Calendar, ReadsBackAsItWasGiven) {
    const Parsed parsed(written({stage()}));
    ASSERT_NE(parsed.root, nullptr);
    EXPECT_EQ(icalcomponent_count_errors(parsed.root.get()), 0);
    EXPECT_NE(icalrestriction_check(parsed.root.get()), 0) << "properties as RFC 5545 allows them";
    auto* event = parsed.event();
    ASSERT_NE(event, nullptr);
    EXPECT_STREQ(icalcomponent_get_uid(event), "stage-12@book");
    EXPECT_STREQ(icalcomponent_get_summary(event), stage().title.c_str());
    EXPECT_STREQ(icalcomponent_get_description(event), stage().text.c_str());
    const auto start = icalcomponent_get_dtstart(event);
    EXPECT_TRUE(start.is_date);
    EXPECT_EQ(start.month * 100 + start.day, 301);
    const auto end = icalcomponent_get_dtend(event);
    EXPECT_EQ(end.month * 100 + end.day, 312) << "the end of a DATE event is not part of it";
}

// RFC 5545, 3.1: lines end in CRLF and are folded at 75 octets; 3.3.11: text is escaped.
TEST(Calendar, LinesAreFoldedAndEndInCrLf) {
    auto entry = stage();
    entry.title = std::string(60, 'x') + " \xC3\xBC\xC3\xA4\xC3\xB6 " + std::string(200, 'y');
    const std::string text = written({entry});
    std::size_t lines = 0;
    for (std::size_t from = 0; from < text.size(); ++lines) {
        const std::size_t end = text.find("\r\n", from);
        ASSERT_NE(end, std::string::npos);
        EXPECT_LE(end - from, 75U) << text.substr(from, end - from);
        EXPECT_EQ(text.substr(from, end - from).find('\n'), std::string::npos);
        from = end + 2;
    }
    EXPECT_GT(lines, 12U);
    EXPECT_NE(text.find("semicolon"), std::string::npos);
    EXPECT_NE(written({stage()}).find("First line\\nback\\\\slash\\, comma\\; semicolon"),
              std::string::npos);
    EXPECT_STREQ(icalcomponent_get_summary(Parsed(text).event()), entry.title.c_str());
}

TEST(Calendar, AnAllDayEntryHasNoZoneAndATimedOneIsUtc) {
    CalendarEntry timed{.uid = "task-1@book",
                        .title = "Weigh",
                        .starts = now + Duration::hours(30),
                        .ends = now + Duration::hours(31)};
    const std::string text = written({stage(), timed});
    EXPECT_NE(text.find("DTSTART;VALUE=DATE:20260301\r\n"), std::string::npos) << text;
    EXPECT_NE(text.find("DTSTART:20260102T060000Z\r\n"), std::string::npos) << text;
    EXPECT_NE(text.find("DTEND:20260102T070000Z\r\n"), std::string::npos);
    EXPECT_NE(text.find("DTSTAMP:20260101T000000Z\r\n"), std::string::npos);
    EXPECT_NE(text.find("X-WR-TIMEZONE:Europe/Rome\r\n"), std::string::npos);
}

TEST(Calendar, OneDayAndALeapDay) {
    auto entry = stage();
    entry.first = day(2028, 2, 29);
    entry.last.reset();
    const std::string text = written({entry});
    EXPECT_NE(text.find("DTSTART;VALUE=DATE:20280229\r\n"), std::string::npos);
    EXPECT_NE(text.find("DTEND;VALUE=DATE:20280301\r\n"), std::string::npos);
}

TEST(Calendar, NothingIsStillACalendar) {
    const Parsed parsed(written({}));
    ASSERT_NE(parsed.root, nullptr);
    EXPECT_EQ(parsed.event(), nullptr);
}

TEST(Calendar, ControlCharactersCannotBreakTheFile) {
    auto entry = stage();
    entry.title = "a\rEND:VEVENT\r\nb\x01\x07";
    const Parsed parsed(written({entry}));
    EXPECT_STREQ(icalcomponent_get_summary(parsed.event()), "a\nEND:VEVENT\nb");
    EXPECT_EQ(parsed.event(1), nullptr);
}

TEST(Calendar, RefusesWhatACalendarWouldMisread) {
    const auto code = [](std::vector<CalendarEntry> entries) {
        const auto text = exchange::write_calendar(entries, "", "", now);
        EXPECT_FALSE(text.has_value());
        return text ? base::ErrorCode::cancelled : text.error().code;
    };
    EXPECT_EQ(code({stage(), stage()}), base::ErrorCode::conflict);
    auto bad = stage();
    bad.last = day(2026, 2, 1);
    EXPECT_EQ(code({bad}), base::ErrorCode::bad_format);
    bad = stage();
    bad.uid.clear();
    EXPECT_EQ(code({bad}), base::ErrorCode::bad_format);
    bad = stage();
    bad.first.reset();
    EXPECT_EQ(code({bad}), base::ErrorCode::bad_format);
}

TEST(Calendar, UidsAreStableAndPlain) {
    EXPECT_EQ(exchange::calendar_uid("task", "turn:s12:0:3", "3f2a b"), "task-turn-s12-0-3@3f2a-b");
}

} // namespace
