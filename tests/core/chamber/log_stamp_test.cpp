#include "core/chamber/log_stamp.h"

#include <gtest/gtest.h>

namespace {

using namespace core::chamber;

std::optional<std::int64_t> seconds(std::string_view text, StampForm form) {
    const auto stamp = read_stamp(text, form);
    return stamp ? std::optional(stamp->seconds - stamp->offset_seconds.value_or(0)) : std::nullopt;
}

constexpr auto ymd = StampForm::year_month_day;
constexpr auto dmy = StampForm::day_month_year;
constexpr auto mdy = StampForm::month_day_year;

// ISO 8601:2004, the standard's own example dates: 1985-04-12T23:20:50 (482196050 s after the
// epoch in UTC), basic and extended forms, and the offset form +04:00.
TEST(LogStamp, ReadsTheExamplesOfIso8601) {
    constexpr std::int64_t example = 482196050;
    EXPECT_EQ(seconds("1985-04-12T23:20:50", ymd), example);
    EXPECT_EQ(seconds("19850412T232050Z", ymd), example);
    EXPECT_EQ(seconds("1985-04-12T23:20:50Z", ymd), example);
    EXPECT_EQ(seconds("1985-04-12T23:20:50+04:00", ymd), example - 4 * 3600);
    EXPECT_EQ(seconds("1985-04-12 23:20:50.999 -0530", ymd), example + 5 * 3600 + 1800);
}

TEST(LogStamp, ReadsEveryOrderAndSeparator) {
    constexpr std::int64_t moment = 1746093600; // 2025-05-01T10:00:00Z
    EXPECT_EQ(seconds("1/5/2025 10:00", dmy), moment);
    EXPECT_EQ(seconds("01.05.25 10:00:00", dmy), moment);
    EXPECT_EQ(seconds("1. Mai 2025, 10:00", dmy), moment);
    EXPECT_EQ(seconds("May 1, 2025 10:00 AM", mdy), moment);
    EXPECT_EQ(seconds("5/1/2025 10:00:00 a.m.", mdy), moment);
    EXPECT_EQ(seconds("1 maggio 2025 10.00", dmy), moment);
    EXPECT_EQ(seconds("1 mai 2025 10h00", dmy), moment);
    EXPECT_EQ(seconds("1746093600", StampForm::epoch_seconds), moment);
    EXPECT_EQ(seconds("1746093600000", StampForm::epoch_milliseconds), moment);
    EXPECT_EQ(seconds("45778.41666666667", StampForm::spreadsheet_days), moment);
}

TEST(LogStamp, TellsTheMonthsOfSevenLanguagesApart) {
    const std::pair<const char*, int> months[] = {{"Mrz", 3},
                                                  {"m\xC3\xA4rz", 3},
                                                  {"mars", 3},
                                                  {"marzo", 3},
                                                  {"maart", 3},
                                                  {"mai", 5},
                                                  {"maggio", 5},
                                                  {"maj", 5},
                                                  {"mayo", 5},
                                                  {"juin", 6},
                                                  {"giugno", 6},
                                                  {"juni", 6},
                                                  {"juillet", 7},
                                                  {"luglio", 7},
                                                  {"julio", 7},
                                                  {"ao\xC3\xBBt", 8},
                                                  {"agosto", 8},
                                                  {"Okt", 10},
                                                  {"ottobre", 10},
                                                  {"dic", 12},
                                                  {"d\xC3\xA9\x63", 12},
                                                  {"Dezember", 12},
                                                  {"gennaio", 1},
                                                  {"enero", 1},
                                                  {"f\xC3\xA9vrier", 2},
                                                  {"avril", 4},
                                                  {"abr", 4}};
    for (const auto& [name, month] : months) {
        const auto named = seconds("1 " + std::string(name) + " 2025", dmy);
        const auto counted = seconds("1/" + std::to_string(month) + "/2025", dmy);
        EXPECT_EQ(named, counted) << name;
        EXPECT_TRUE(named.has_value()) << name;
    }
}

TEST(LogStamp, TwelveHourClockTurnsAtNoonAndMidnight) {
    EXPECT_EQ(read_time_of_day("12:00 AM"), 0);
    EXPECT_EQ(read_time_of_day("12:59:59 am"), 59 * 60 + 59);
    EXPECT_EQ(read_time_of_day("12:00 PM"), 12 * 3600);
    EXPECT_EQ(read_time_of_day("1:05 p. m."), 13 * 3600 + 300);
    EXPECT_FALSE(read_time_of_day("13:00 PM").has_value());
    EXPECT_FALSE(read_time_of_day("0:30 AM").has_value());
}

TEST(LogStamp, RefusesWhatIsNoMoment) {
    for (const auto form : {StampForm::epoch_seconds, StampForm::epoch_milliseconds}) {
        for (const char* word : {"nan", "NaN", "inf", "-inf", "1e400"}) {
            EXPECT_FALSE(read_stamp(word, form)) << word;
        }
    }
    for (const char* text :
         {"", "2025-02-29 10:00", "2025-13-01", "2025-05-01 24:00", "2025-05-01 10:60",
          "2025-05-01 10:00 x", "12.5", "2025", "10:00", "2025-05-01 10:00+25:00", "99999999"}) {
        EXPECT_FALSE(read_stamp(text, ymd).has_value()) << text;
    }
    EXPECT_FALSE(read_stamp("31/04/2025", dmy).has_value());
    EXPECT_TRUE(read_stamp("29/02/2024", dmy).has_value());
    EXPECT_FALSE(read_stamp("12345", StampForm::epoch_seconds).has_value());
}

} // namespace
