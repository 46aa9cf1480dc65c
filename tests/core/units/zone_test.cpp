// Clock changes of the European Union: Directive 2000/84/EC, Articles 2 and 3 (01:00 UTC on the
// last Sunday of March and of October). Offsets of other zones: IANA time zone database.
#include "core/units/parse.h"
#include "core/units/zone.h"

#include <gtest/gtest.h>

namespace {

using namespace core::units;

Instant at(std::string_view iso) {
    return *parse_instant(iso);
}

Zone rome() {
    return *Zone::named("Europe/Rome");
}

/// Seconds that the local clock has counted since 1970 when it shows this.
std::int64_t on_clock(std::string_view day, int minute) {
    return static_cast<std::int64_t>(parse_day(day)->days_since_epoch()) * 86400 + minute * 60;
}

TEST(Zone, UnknownNamesAreRefused) {
    for (const auto* name : {"", "Europe/Nowhere", "GMT+25", "../etc/passwd"}) {
        const auto zone = Zone::named(name);
        ASSERT_FALSE(zone.has_value()) << name;
        EXPECT_EQ(zone.error().code, core::base::ErrorCode::unknown_zone);
        EXPECT_EQ(zone.error().detail, name);
    }
    EXPECT_EQ(rome().name(), "Europe/Rome");
    EXPECT_EQ(Zone::utc().name(), "UTC");
}

TEST(Zone, DayAndMinuteAreThoseOfTheLocalClock) {
    const auto late = at("2026-07-01T22:30:00Z");
    EXPECT_EQ(to_iso(rome().day_of(late)), "2026-07-02");
    EXPECT_EQ(rome().minute_of_day(late), 30);
    EXPECT_EQ(to_iso(Zone::utc().day_of(late)), "2026-07-01");
    EXPECT_EQ(Zone::utc().minute_of_day(late), 22 * 60 + 30);
    // Nepal is 5 h 45 min ahead; a second before 1970 is a day of 1969.
    EXPECT_EQ(Zone::named("Asia/Kathmandu")->offset_seconds(late), 5 * 3600 + 45 * 60);
    EXPECT_EQ(to_iso(Zone::utc().day_of(Instant::from_unix_seconds(-1))), "1969-12-31");
    EXPECT_EQ(Zone::utc().minute_of_day(Instant::from_unix_seconds(-1)), 1439);
}

TEST(Zone, OffsetLastsFromOneChangeToTheNext) {
    const auto summer = rome().offset_span(at("2026-07-01T00:00:00Z"));
    EXPECT_EQ(summer.offset_seconds, 7200);
    EXPECT_EQ(summer.begin, at("2026-03-29T01:00:00Z"));
    EXPECT_EQ(summer.end, at("2026-10-25T01:00:00Z"));
    EXPECT_EQ(rome().offset_seconds(at("2026-03-29T00:59:59Z")), 3600);
    EXPECT_EQ(rome().offset_seconds(at("2026-03-29T01:00:00Z")), 7200);
    EXPECT_EQ(rome().offset_seconds(at("2026-10-25T00:59:59Z")), 7200);
    EXPECT_EQ(rome().offset_seconds(at("2026-10-25T01:00:00Z")), 3600);
}

TEST(Zone, AClockTimeComesOnceTwiceOrNever) {
    const auto usual = rome().moments_at(on_clock("2026-07-01", 600));
    EXPECT_EQ(usual.kind, LocalMoments::Kind::once);
    EXPECT_EQ(usual.first, at("2026-07-01T08:00:00Z"));
    EXPECT_EQ(usual.second, usual.first);

    const auto skipped = rome().moments_at(on_clock("2026-03-29", 150)); // 02:30
    EXPECT_EQ(skipped.kind, LocalMoments::Kind::never);
    EXPECT_EQ(skipped.first, at("2026-03-29T01:00:00Z"));
    EXPECT_EQ(skipped.second, skipped.first);

    const auto repeated = rome().moments_at(on_clock("2026-10-25", 150)); // 02:30
    EXPECT_EQ(repeated.kind, LocalMoments::Kind::twice);
    EXPECT_EQ(repeated.first, at("2026-10-25T00:30:00Z"));
    EXPECT_EQ(repeated.second, at("2026-10-25T01:30:00Z"));
}

TEST(Zone, ADayAndMinuteAreTheFirstMomentThatFits) {
    const auto march = *parse_day("2026-03-29");
    const auto october = *parse_day("2026-10-25");
    EXPECT_EQ(rome().instant_at(march), at("2026-03-28T23:00:00Z"));
    EXPECT_EQ(rome().instant_at(march, 150), at("2026-03-29T01:00:00Z")) << "the gap's end";
    EXPECT_EQ(rome().instant_at(march, 180), at("2026-03-29T01:00:00Z"));
    EXPECT_EQ(rome().instant_at(october, 150), at("2026-10-25T00:30:00Z")) << "the earlier one";
    EXPECT_EQ(rome().instant_at(october, 1439), at("2026-10-25T22:59:00Z"));
}

} // namespace
