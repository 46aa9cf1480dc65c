#include "core/chamber/detect_dialect.h"
#include "core/chamber/log_reader.h"
#include "core/units/parse.h"

#include <gtest/gtest.h>

#include <fstream>
#include <functional>
#include <ostream>

// Thirty logs as loggers, spreadsheets and accidents leave them, each with the result we state.
// The contents are invented; local times in folds and gaps are checked against the clock changes
// of the IANA time zone database (Europe/Rome 2025-03-30 and 2025-10-26, America/New_York
// 2025-11-02, Australia/Lord_Howe 2025-04-06: a fold of half an hour).

namespace {

using namespace core::chamber;
using core::base::ErrorCode;
using core::units::Instant;

std::string utf16(std::string_view ascii, bool little, bool mark) {
    std::string out;
    const auto put = [&](unsigned unit) {
        const char low = static_cast<char>(unit & 0xFFU);
        const char high = static_cast<char>(unit >> 8U);
        out.push_back(little ? low : high);
        out.push_back(little ? high : low);
    };
    if (mark) {
        put(0xFEFF);
    }
    for (const char c : ascii) {
        put(static_cast<unsigned char>(c));
    }
    return out;
}

struct Seen {
    Detection detection;
    LogTally tally;
    std::vector<core::model::ClimateReading> readings;
};

core::base::Result<Seen> read_text(const std::string& bytes, const DialectHints& hints) {
    const std::string_view piece = bytes;
    auto detection = detect_dialect(std::span(&piece, 1), hints);
    if (!detection) {
        return tl::unexpected(detection.error());
    }
    Seen seen{*detection, {}, {}};
    std::size_t at = 0;
    const ByteSource source = [&](std::span<char> buffer) -> core::base::Result<std::size_t> {
        // Seven bytes at a time: every line and character is split somewhere.
        const std::size_t n = std::min({buffer.size(), std::size_t{7}, bytes.size() - at});
        std::copy_n(bytes.data() + at, n, buffer.data());
        at += n;
        return n;
    };
    const ReadingSink sink = [&](auto chunk, const LogTally&) -> core::base::Status {
        seen.readings.insert(seen.readings.end(), chunk.begin(), chunk.end());
        return {};
    };
    auto tally = read_log(source, detection->dialect, sink, {}, 3);
    if (!tally) {
        return tl::unexpected(tally.error());
    }
    seen.tally = *tally;
    return seen;
}

DialectHints in_zone(const std::string& zone) {
    DialectHints hints;
    hints.zone = zone;
    return hints;
}

struct Stated {
    std::string name;
    std::string bytes;
    DialectHints hints;
    std::optional<ErrorCode> error{};
    // when it is read:
    std::vector<std::string> moments{};                           ///< of all readings, UTC
    std::optional<double> celsius{};                              ///< of the first reading
    std::optional<double> percent{};                              ///< of the first reading
    std::vector<std::pair<std::int64_t, RejectReason>> rejects{}; ///< line and reason
    std::vector<DialectField> guesses{};                          ///< parts a person is asked about
    std::function<void(const Seen&)> also{};
};

void PrintTo(const Stated& stated, std::ostream* out) {
    *out << stated.name;
}

std::vector<Stated> logs() {
    std::vector<Stated> all;
    all.push_back({"01 plain ISO with zone, commas, points",
                   "time,temp_c,rh_percent\n2025-05-01T10:00:00Z,12.5,75.2\n"
                   "2025-05-01T12:01:00+02:00,12.6,75.1\n",
                   {},
                   {},
                   {"2025-05-01T10:00:00Z", "2025-05-01T10:01:00Z"},
                   12.5,
                   75.2});
    all.push_back({"02 semicolons, decimal commas, day first, German headings",
                   "Datum;Uhrzeit;Temperatur (\xC2\xB0\x43);Luftfeuchte (%)\r\n"
                   "31.01.2025;23:59:00;12,50;75,2\r\n01.02.2025;00:00:00;12,4;75,0\r\n",
                   in_zone("Europe/Rome"),
                   {},
                   {"2025-01-31T22:59:00Z", "2025-01-31T23:00:00Z"},
                   12.5,
                   75.2});
    all.push_back({"03 UTF-8 with byte order mark",
                   "\xEF\xBB\xBFzeit,temperatur,feuchte\n2025-05-01 10:00,11.0,70\n"
                   "2025-05-01 10:10,11.1,71\n",
                   {},
                   {},
                   {"2025-05-01T10:00:00Z", "2025-05-01T10:10:00Z"},
                   11.0,
                   70.0});
    const std::string tabbed = "Date\tTime\tTemp C\tRH %\r\n2025-05-01\t10:00:00\t12.5\t75\r\n"
                               "2025-05-01\t10:01:00\t12.6\t76\r\n";
    const std::vector<std::string> ten{"2025-05-01T10:00:00Z", "2025-05-01T10:01:00Z"};
    all.push_back({"04 UTF-16 little end first, marked, tabs",
                   utf16(tabbed, true, true),
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back(
        {"05 UTF-16 big end first, marked", utf16(tabbed, false, true), {}, {}, ten, 12.5, 75.0});
    all.push_back({"06 UTF-16 little end first, no mark",
                   utf16(tabbed, true, false),
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back(
        {"07 Latin-1 degree sign and accents",
         "Horodatage;Temp\xE9rature (\xB0\x43);Humidit\xE9 (%)\n"
         "2025-05-01 10:00;12,5;75\n2025-05-01 10:01;12,6;75\n",
         {},
         {},
         ten,
         12.5,
         75.0,
         {},
         {},
         [](const Seen& s) { EXPECT_EQ(s.detection.dialect.encoding, Encoding::latin1); }});
    all.push_back({"08 AM/PM, month first, Fahrenheit",
                   "Date Time,Temperature (\xC2\xB0\x46),Humidity\n"
                   "01/31/2025 11:59:00 PM,54.5,75\n02/01/2025 12:00:00 AM,54.5,75\n"
                   "02/01/2025 12:00:00 PM,54.5,75\n",
                   {},
                   {},
                   {"2025-01-31T23:59:00Z", "2025-02-01T00:00:00Z", "2025-02-01T12:00:00Z"},
                   12.5,
                   75.0});
    all.push_back({"09 autumn fold, one reading in ten minutes, both passes kept",
                   "time;t;rh\n26.10.2025 02:40;12,0;75\n26.10.2025 02:50;12,1;75\n"
                   "26.10.2025 02:00;12,2;75\n26.10.2025 02:10;12,3;75\n26.10.2025 02:20;12,3;75\n"
                   "26.10.2025 02:50;12,3;75\n26.10.2025 03:00;12,4;75\n",
                   in_zone("Europe/Rome"),
                   {},
                   {"2025-10-26T00:40:00Z", "2025-10-26T00:50:00Z", "2025-10-26T01:00:00Z",
                    "2025-10-26T01:10:00Z", "2025-10-26T01:20:00Z", "2025-10-26T01:50:00Z",
                    "2025-10-26T02:00:00Z"},
                   12.0,
                   75.0});
    all.push_back({"10 autumn fold read hourly: the same stamp twice is two hours",
                   "time,temp,rh\n2025-11-01 23:00,12,75\n2025-11-02 00:00,12,75\n"
                   "2025-11-02 01:00,12,75\n2025-11-02 01:00,12,75\n2025-11-02 02:00,12,75\n",
                   in_zone("America/New_York"),
                   {},
                   {"2025-11-02T03:00:00Z", "2025-11-02T04:00:00Z", "2025-11-02T05:00:00Z",
                    "2025-11-02T06:00:00Z", "2025-11-02T07:00:00Z"},
                   12.0,
                   75.0});
    all.push_back({"11 a line repeated inside a fold stays with its twin",
                   "time;t;rh\n26.10.2025 02:00;12,0;75\n26.10.2025 02:01;12,0;75\n"
                   "26.10.2025 02:02;12,0;75\n26.10.2025 02:02;12,0;75\n26.10.2025 02:03;12,0;75\n",
                   in_zone("Europe/Rome"),
                   {},
                   {"2025-10-26T00:00:00Z", "2025-10-26T00:01:00Z", "2025-10-26T00:02:00Z",
                    "2025-10-26T00:02:00Z", "2025-10-26T00:03:00Z"},
                   12.0,
                   75.0,
                   {},
                   {},
                   [](const Seen& s) { EXPECT_EQ(s.tally.repeated, 1); }});
    all.push_back({"12 newest first through a fold",
                   "time,t,rh\n2025-10-26 03:00,12,75\n2025-10-26 02:30,12,75\n"
                   "2025-10-26 02:00,12,75\n2025-10-26 02:30,12,75\n2025-10-26 02:00,12,75\n"
                   "2025-10-26 01:30,12,75\n",
                   in_zone("Europe/Rome"),
                   {},
                   {"2025-10-26T02:00:00Z", "2025-10-26T01:30:00Z", "2025-10-26T01:00:00Z",
                    "2025-10-26T00:30:00Z", "2025-10-26T00:00:00Z", "2025-10-25T23:30:00Z"},
                   12.0,
                   75.0});
    all.push_back({"13 a fold of half an hour (Lord Howe)",
                   "time,t,rh\n2025-04-06 01:30,12,75\n2025-04-06 01:45,12,75\n"
                   "2025-04-06 01:30,12,75\n2025-04-06 01:45,12,75\n2025-04-06 02:00,12,75\n",
                   in_zone("Australia/Lord_Howe"),
                   {},
                   {"2025-04-05T14:30:00Z", "2025-04-05T14:45:00Z", "2025-04-05T15:00:00Z",
                    "2025-04-05T15:15:00Z", "2025-04-05T15:30:00Z"},
                   12.0,
                   75.0});
    all.push_back({"14 the hour skipped in spring is rejected, not shifted",
                   "time,t,rh\n2025-03-30 01:30,12,75\n2025-03-30 02:30,12,75\n"
                   "2025-03-30 03:30,12,75\n",
                   in_zone("Europe/Rome"),
                   {},
                   {"2025-03-30T00:30:00Z", "2025-03-30T01:30:00Z"},
                   12.0,
                   75.0,
                   {{3, RejectReason::skipped_hour}}});
    {
        Stated winter{"15 the same log, told that the logger keeps winter time all year",
                      "time,t,rh\n2025-03-30 01:30,12,75\n2025-03-30 02:30,12,75\n"
                      "2025-03-30 03:30,12,75\n",
                      in_zone("Europe/Rome"),
                      {},
                      {"2025-03-30T00:30:00Z", "2025-03-30T01:30:00Z", "2025-03-30T02:30:00Z"},
                      12.0,
                      75.0};
        winter.hints.told_offset_seconds = 3600;
        all.push_back(winter);
    }
    all.push_back({"16 repeated and unordered lines are kept and counted",
                   "time,t,rh\n2025-05-01 10:00,12,75\n2025-05-01 10:02,12,75\n"
                   "2025-05-01 10:01,12,75\n2025-05-01 10:01,12,75\n2025-05-01 10:03,12,75\n",
                   {},
                   {},
                   {"2025-05-01T10:00:00Z", "2025-05-01T10:02:00Z", "2025-05-01T10:01:00Z",
                    "2025-05-01T10:01:00Z", "2025-05-01T10:03:00Z"},
                   12.0,
                   75.0,
                   {},
                   {},
                   [](const Seen& s) {
                       EXPECT_EQ(s.tally.repeated, 1);
                       EXPECT_EQ(s.tally.out_of_order, 1);
                   }});
    all.push_back({"17 epoch seconds, no heading but names",
                   "epoch,temperature,humidity\n1746093600,12.5,75\n1746093660,12.6,75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back({"18 epoch milliseconds and humidity as a fraction",
                   "timestamp|temp|humidity\n1746093600000|12.5|0.752\n1746093660000|12.6|0.75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.2});
    all.push_back({"19 spreadsheet day numbers with decimal commas",
                   "Zeit;Temperatur;Feuchte\n45778,4166666667;12,5;75\n45778,4173611111;12,6;75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back(
        {"20 preamble, counter column, dew point, quoted cells, repeated heading",
         "Device,Logger 7\nSerial,000123\nInterval,60 s\n\n"
         "No.,\"Date/Time\",\"Temperature (\xC2\xB0\x43)\",\"Dew Point\",\"Humidity, %RH\"\n"
         "1,\"2025-05-01 10:00:00\",\"12.5\",\"8.2\",\"75.0\"\n"
         "No.,\"Date/Time\",\"Temperature (\xC2\xB0\x43)\",\"Dew Point\",\"Humidity, %RH\"\n"
         "2,\"2025-05-01 10:01:00\",\"12.6\",\"8.3\",\"75.0\"\n",
         {},
         {},
         ten,
         12.5,
         75.0,
         {{7, RejectReason::heading_again}}});
    all.push_back({"21 sensor errors, blanks and words among the values",
                   "time,temp c,rh %\n2025-05-01 10:00,12.5,75\n2025-05-01 10:01,-127.0,75\n"
                   "2025-05-01 10:02,NaN,--\n2025-05-01 10:03,12.5,ERR\n2025-05-01 10:04,,75\n"
                   "2025-05-01 10:05,12.5,\n2025-05-01 10:06\n2025-05-01 10:07,12.5,75\n"
                   "31/31/2025 10:08,12.5,75\n2025-05-01 10:09,12.5,75\n",
                   {},
                   {},
                   {"2025-05-01T10:00:00Z", "2025-05-01T10:04:00Z", "2025-05-01T10:05:00Z",
                    "2025-05-01T10:07:00Z", "2025-05-01T10:09:00Z"},
                   12.5,
                   75.0,
                   {{3, RejectReason::out_of_range},
                    {4, RejectReason::no_values},
                    {5, RejectReason::bad_number},
                    {8, RejectReason::missing_columns},
                    {10, RejectReason::bad_stamp}}});
    all.push_back({"22 day or month: nothing tells, so a person is asked",
                   "time,temp,rh\n03/04/2025 10:00,12,75\n03/04/2025 10:01,12,75\n",
                   {},
                   {},
                   {"2025-04-03T10:00:00Z", "2025-04-03T10:01:00Z"},
                   12.0,
                   75.0,
                   {},
                   {DialectField::stamp_form}});
    all.push_back({"23 day or month: midnight tells",
                   "time,temp,rh\n03/04/2025 23:58,12,75\n03/04/2025 23:59,12,75\n"
                   "03/05/2025 00:00,12,75\n03/05/2025 00:01,12,75\n",
                   {},
                   {},
                   {"2025-03-04T23:58:00Z", "2025-03-04T23:59:00Z", "2025-03-05T00:00:00Z",
                    "2025-03-05T00:01:00Z"},
                   12.0,
                   75.0});
    all.push_back({"24 commas for columns and decimals: refused, with the reason",
                   "time,temp,rh\n2025-05-01 10:00,12,5,75,2\n2025-05-01 10:01,12,6,75,1\n",
                   {},
                   ErrorCode::ambiguous_number});
    all.push_back({"25 a picture by mistake",
                   std::string("\x89PNG\r\n\x1A\n\0\0\0\rIHDR\0\0\1", 19),
                   {},
                   ErrorCode::bad_format});
    all.push_back({"26 nothing", "", {}, ErrorCode::empty_input});
    all.push_back({"27 a text without readings",
                   "Dear curer,\n\nthe log is broken; sorry, again.\n",
                   {},
                   ErrorCode::bad_format});
    all.push_back({"28 a quote left open takes one line, not the rest",
                   "time,temp,rh\n2025-05-01 10:00,12.5,75\n2025-05-01 10:05,\"12.5,75\n"
                   "2025-05-01 10:01,12.5,75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0,
                   {{3, RejectReason::unclosed_quote}}});
    all.push_back({"29 a block of zeros and an endless line from a failing card",
                   "time,temp,rh\n2025-05-01 10:00,12.5,75\n" + std::string(300, 'x') +
                       std::string(70000, 'x') + "\n2025-05-01 10:01,12.5,75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0,
                   {{3, RejectReason::line_too_long}}});
    all.push_back({"30 old line ends (CR alone), month names, units in the cells",
                   "date,temperature,humidity\r1-May-2025 10:00,12.5 \xC2\xB0\x43,75 %\r"
                   "1-May-2025 10:01,12.6 \xC2\xB0\x43,75 %\r",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back({"31 one column only: temperature",
                   "Fecha y hora;Temperatura\n01/05/2025 10:00:00;12,5\n01/05/2025 10:01:00;12,6\n",
                   {},
                   {},
                   ten,
                   12.5,
                   {}});
    all.push_back({"32 no heading at all",
                   "2025-05-01 10:00,12.5,75\n2025-05-01 10:01,12.6,75\n",
                   {},
                   {},
                   ten,
                   12.5,
                   75.0});
    all.push_back({"33 kelvin, and a zone in the heading",
                   "time (UTC+02:00),temperature K,humidity\n2025-05-01 12:00,285.65,75\n"
                   "2025-05-01 12:01,285.65,75\n",
                   in_zone("America/New_York"),
                   {},
                   ten,
                   12.5,
                   75.0});
    return all;
}

class AwkwardLog : public testing::TestWithParam<Stated> {};

TEST_P(AwkwardLog, GivesTheStatedResult) {
    const auto& stated = GetParam();
    const auto seen = read_text(stated.bytes, stated.hints);
    if (stated.error) {
        ASSERT_FALSE(seen.has_value());
        EXPECT_EQ(seen.error().code, *stated.error) << seen.error().detail;
        return;
    }
    ASSERT_TRUE(seen.has_value()) << seen.error().detail;
    std::vector<std::string> moments;
    for (const auto& reading : seen->readings) {
        moments.push_back(core::units::to_iso(reading.at));
    }
    EXPECT_EQ(moments, stated.moments);
    ASSERT_FALSE(seen->readings.empty());
    const auto& first = seen->readings.front();
    ASSERT_EQ(first.temperature.has_value(), stated.celsius.has_value());
    ASSERT_EQ(first.humidity.has_value(), stated.percent.has_value());
    if (stated.celsius) {
        EXPECT_NEAR(first.temperature->in_celsius(), *stated.celsius, 1e-9);
    }
    if (stated.percent) {
        EXPECT_NEAR(first.humidity->in_percent(), *stated.percent, 1e-9);
    }
    std::vector<std::pair<std::int64_t, RejectReason>> rejects;
    for (const auto& reject : seen->tally.first_rejects) {
        rejects.emplace_back(reject.line, reject.reason);
    }
    EXPECT_EQ(rejects, stated.rejects);
    std::vector<DialectField> guesses;
    for (const auto& guess : seen->detection.guesses()) {
        guesses.push_back(guess.field);
    }
    EXPECT_EQ(guesses, stated.guesses);
    if (stated.also) {
        stated.also(*seen);
    }
    // What was detected is what is remembered.
    const auto again = dialect_from_json(to_json(seen->detection.dialect));
    ASSERT_TRUE(again.has_value());
    EXPECT_EQ(*again, seen->detection.dialect);
}

INSTANTIATE_TEST_SUITE_P(All, AwkwardLog, testing::ValuesIn(logs()), [](const auto& named) {
    std::string name;
    for (const char c : named.param.name) {
        name.push_back(std::isalnum(static_cast<unsigned char>(c)) ? c : '_');
    }
    return name;
});

/// Resident memory of this process, in KiB.
long resident_kib() {
    std::ifstream status("/proc/self/status");
    std::string word;
    while (status >> word) {
        if (word == "VmRSS:") {
            long kib = 0;
            status >> kib;
            return kib;
        }
    }
    return -1;
}

// A gigabyte is made on the fly. Memory is compared between the first hundredth and the end, so
// what the test itself holds does not matter.
TEST(AwkwardLogs, AGigabyteIsReadInMemoryThatDoesNotGrow) {
    constexpr std::uint64_t wanted = std::uint64_t{1} << 30U;
    LogDialect dialect;
    dialect.columns = {0, std::nullopt, 1, 2};
    dialect.clock = ClockKind::in_stamp;
    dialect.stamp = StampForm::epoch_seconds;
    dialect.lines_before_data = 1;
    std::string block = "epoch,temp,rh\n";
    std::uint64_t made = 0;
    std::int64_t lines = 0;
    const ByteSource source = [&](std::span<char> buffer) -> core::base::Result<std::size_t> {
        if (made >= wanted) {
            return 0;
        }
        while (block.size() < buffer.size()) {
            block += std::to_string(1'000'000'000 + 60 * lines) + ",12.50,75.20\n";
            ++lines;
        }
        std::copy_n(block.data(), buffer.size(), buffer.data());
        block.erase(0, buffer.size());
        made += buffer.size();
        return buffer.size();
    };
    long early = 0;
    long most = 0;
    std::int64_t got = 0;
    const ReadingSink sink = [&](auto chunk, const LogTally& tally) -> core::base::Status {
        got += static_cast<std::int64_t>(chunk.size());
        if (early == 0 && tally.bytes > wanted / 100) {
            early = resident_kib();
        }
        most = std::max(most, resident_kib());
        return {};
    };
    const auto tally = read_log(source, dialect, sink, {}, 100'000);
    ASSERT_TRUE(tally.has_value()) << tally.error().detail;
    EXPECT_EQ(tally->bytes, wanted);
    EXPECT_GE(got, lines - 20'000);        // the last block's tail was never asked for
    EXPECT_LE(tally->rejected_lines(), 1); // the line the end cuts
#ifdef __SANITIZE_ADDRESS__
    GTEST_SKIP() << "read whole; the sanitizer keeps freed memory, so its growth says nothing";
#endif
    EXPECT_LT(most - early, 2048) << "grew from " << early << " to " << most << " KiB";
}

TEST(AwkwardLogs, CancelKeepsWholeChunksOnly) {
    std::string bytes = "time,temp,rh\n";
    for (int i = 0; i < 1000; ++i) {
        bytes += "2025-05-01 " + std::to_string(i / 60) + ":" + (i % 60 < 10 ? "0" : "") +
                 std::to_string(i % 60) + ",12.5,75\n";
    }
    const std::string_view piece = bytes;
    const auto detection = detect_dialect(std::span(&piece, 1), {});
    ASSERT_TRUE(detection.has_value());
    std::stop_source stop;
    std::size_t kept = 0;
    std::size_t at = 0;
    const auto result = read_log(
        [&](std::span<char> buffer) -> core::base::Result<std::size_t> {
            const auto n =
                std::min<std::size_t>(std::min<std::size_t>(buffer.size(), 500), bytes.size() - at);
            std::copy_n(bytes.data() + at, n, buffer.data());
            at += n;
            return n;
        },
        detection->dialect,
        [&](auto chunk, const LogTally&) -> core::base::Status {
            kept += chunk.size();
            if (kept == 200) {
                stop.request_stop();
            }
            return {};
        },
        stop.get_token(), 100);
    ASSERT_FALSE(result.has_value());
    EXPECT_EQ(result.error().code, ErrorCode::cancelled);
    EXPECT_EQ(kept, 200U);
}

} // namespace
