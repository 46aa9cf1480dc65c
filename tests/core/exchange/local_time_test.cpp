#include "core/exchange/local_time.h"

#include "core/units/parse.h"

#include <gtest/gtest.h>

namespace {

using namespace core::exchange;
using core::units::parse_instant;
using core::units::Zone;

std::optional<Zone> rome() {
    return *Zone::named("Europe/Rome");
}

void expect_reads(std::string_view text, std::string_view iso, DayOrder order = DayOrder::unknown) {
    const ReadTime read = read_time(text, rome(), order);
    ASSERT_TRUE(read.at) << text;
    EXPECT_EQ(*read.at, *parse_instant(iso)) << text;
}

TEST(LocalTime, ReadsTheFormsFilesUse) {
    expect_reads("2026-03-01T18:30:00+01:00", "2026-03-01T17:30:00Z");
    expect_reads("2026-03-01 18:30", "2026-03-01T17:30:00Z");
    expect_reads("2026-03-01T18:30:15", "2026-03-01T17:30:15Z");
    expect_reads("2026/07/01 18:30", "2026-07-01T16:30:00Z"); // summer time
    expect_reads("1.3.2026 18:30", "2026-03-01T17:30:00Z");
    expect_reads("14/3/2026 8:05", "2026-03-14T07:05:00Z"); // only one reading is a date
    expect_reads("3/14/2026 6:30 PM", "2026-03-14T17:30:00Z");
    expect_reads("12/31/2026 12:00 am", "2026-12-30T23:00:00Z");
    expect_reads("2026-03-01", "2026-03-01T11:00:00Z"); // noon
    expect_reads("3/4/2026", "2026-04-03T10:00:00Z", DayOrder::day_first);
    expect_reads("3/4/2026", "2026-03-04T11:00:00Z", DayOrder::month_first);
    expect_reads("5/5/2026", "2026-05-05T10:00:00Z"); // both readings agree
}

TEST(LocalTime, NamesWhatIsWrong) {
    const auto fault = [](std::string_view text, const std::optional<Zone>& zone) {
        const ReadTime read = read_time(text, zone);
        EXPECT_FALSE(read.at) << text;
        return read.fault;
    };
    EXPECT_EQ(fault("2026-03-01 18:30", std::nullopt), TimeFault::zone_missing);
    EXPECT_EQ(fault("3/4/2026 10:00", rome()), TimeFault::order_unclear);
    // Italy's clocks skipped from 02:00 to 03:00 on 29 March 2026 (IANA time zone database).
    EXPECT_EQ(fault("2026-03-29 02:30", rome()), TimeFault::no_such_local_time);
    for (const auto* bad : {"", "yesterday", "2026-02-30", "2026-13-01", "2026-03-01 25:00",
                            "2026-03-01 18", "2026-03-01 13:00 PM", "1.3.26", "3-4/2026",
                            "2026-03-01 18:30 x", "99999-01-01", "-1-2-2026"}) {
        EXPECT_EQ(fault(bad, rome()), TimeFault::unreadable) << bad;
    }
}

TEST(LocalTime, LearnsTheOrderFromTheColumn) {
    DayOrderEvidence day_first;
    day_first.see("3/4/2026");
    EXPECT_EQ(day_first.verdict(), DayOrder::unknown);
    day_first.see("13/4/2026 10:00");
    EXPECT_EQ(day_first.verdict(), DayOrder::day_first);
    DayOrderEvidence both = day_first;
    both.see("4/13/2026");
    EXPECT_EQ(both.verdict(), DayOrder::unknown);
    DayOrderEvidence month_first;
    month_first.see("4-13-2026");
    EXPECT_EQ(month_first.verdict(), DayOrder::month_first);
}

} // namespace
