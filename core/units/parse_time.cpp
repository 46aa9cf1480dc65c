#include "core/units/parse.h"

#include <charconv>
#include <chrono>
#include <fmt/format.h>
#include <optional>
#include <string>

namespace core::units {
namespace {

using base::ErrorCode;

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const auto start = text.find_first_not_of(blanks);
    if (start == std::string_view::npos) {
        return {};
    }
    return text.substr(start, text.find_last_not_of(blanks) - start + 1);
}

/// Takes exactly `width` digits off the front.
std::optional<int> take_digits(std::string_view& text, std::size_t width) {
    int value = 0;
    if (text.size() < width) {
        return std::nullopt;
    }
    for (const char c : text.substr(0, width)) {
        if (c < '0' || c > '9') {
            return std::nullopt;
        }
        value = value * 10 + (c - '0');
    }
    text.remove_prefix(width);
    return value;
}

bool take(std::string_view& text, char c) {
    if (text.empty() || text.front() != c) {
        return false;
    }
    text.remove_prefix(1);
    return true;
}

base::Result<Day> take_day(std::string_view& text, std::string_view whole) {
    const auto year = take_digits(text, 4);
    const bool dash = year && take(text, '-');
    const auto month = dash ? take_digits(text, 2) : std::nullopt;
    const bool second_dash = month && take(text, '-');
    const auto day = second_dash ? take_digits(text, 2) : std::nullopt;
    if (!day) {
        return base::fault(ErrorCode::bad_format, std::string(whole));
    }
    const std::chrono::year_month_day date{std::chrono::year(*year),
                                           std::chrono::month(static_cast<unsigned>(*month)),
                                           std::chrono::day(static_cast<unsigned>(*day))};
    if (!date.ok()) {
        return base::fault(ErrorCode::out_of_range, std::string(whole));
    }
    return Day::from_date(date);
}

/// Seconds since midnight of "18:30", "18:30:00" or "18:30:00.123" (fractions are cut off).
base::Result<int> take_time(std::string_view& text, std::string_view whole) {
    const auto hour = take_digits(text, 2);
    const bool colon = hour && take(text, ':');
    const auto minute = colon ? take_digits(text, 2) : std::nullopt;
    if (!minute) {
        return base::fault(ErrorCode::bad_format, std::string(whole));
    }
    std::optional<int> second = 0;
    if (take(text, ':')) {
        second = take_digits(text, 2);
        if (!second) {
            return base::fault(ErrorCode::bad_format, std::string(whole));
        }
        if (take(text, '.') || take(text, ',')) {
            const auto end = text.find_first_not_of("0123456789");
            if (end == 0 || text.empty()) {
                return base::fault(ErrorCode::bad_format, std::string(whole));
            }
            text.remove_prefix(end == std::string_view::npos ? text.size() : end);
        }
    }
    if (*hour > 23 || *minute > 59 || *second > 59) {
        return base::fault(ErrorCode::out_of_range, std::string(whole));
    }
    return *hour * 3600 + *minute * 60 + *second;
}

/// Seconds east of UTC: "Z", "+01:00", "+0100", "-05".
base::Result<int> take_offset(std::string_view& text, std::string_view whole) {
    if (text.empty()) {
        return base::fault(ErrorCode::unit_missing, std::string(whole), "time zone");
    }
    if (take(text, 'Z') || take(text, 'z')) {
        return 0;
    }
    const bool east = text.front() == '+';
    if (!take(text, '+') && !take(text, '-')) {
        return base::fault(ErrorCode::bad_format, std::string(whole));
    }
    const auto hours = take_digits(text, 2);
    std::optional<int> minutes = 0;
    if (hours && !text.empty()) {
        take(text, ':');
        minutes = take_digits(text, 2);
    }
    if (!hours || !minutes) {
        return base::fault(ErrorCode::bad_format, std::string(whole));
    }
    if (*hours > 15 || *minutes > 59) {
        return base::fault(ErrorCode::out_of_range, std::string(whole));
    }
    const int seconds = *hours * 3600 + *minutes * 60;
    return east ? seconds : -seconds;
}

} // namespace

base::Result<Instant> parse_instant(std::string_view text) {
    auto rest = trimmed(text);
    if (rest.empty()) {
        return base::fault(ErrorCode::empty_input);
    }
    const auto day = take_day(rest, text);
    if (!day) {
        return tl::unexpected(day.error());
    }
    if (!take(rest, 'T') && !take(rest, 't') && !take(rest, ' ')) {
        return base::fault(ErrorCode::bad_format, std::string(text));
    }
    const auto time = take_time(rest, text);
    if (!time) {
        return tl::unexpected(time.error());
    }
    rest = trimmed(rest);
    const auto offset = take_offset(rest, text);
    if (!offset) {
        return tl::unexpected(offset.error());
    }
    if (!rest.empty()) {
        return base::fault(ErrorCode::trailing_text, std::string(rest));
    }
    return Instant::from_unix_seconds(static_cast<std::int64_t>(day->days_since_epoch()) * 86400 +
                                      *time - *offset);
}

base::Result<Day> parse_day(std::string_view text) {
    auto rest = trimmed(text);
    if (rest.empty()) {
        return base::fault(ErrorCode::empty_input);
    }
    auto day = take_day(rest, text);
    if (day && !rest.empty()) {
        return base::fault(ErrorCode::trailing_text, std::string(rest));
    }
    return day;
}

std::string to_iso(Day day) {
    const auto date = day.date();
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                       static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
}

std::string to_iso(Instant at) {
    constexpr std::int64_t day_seconds = 86400;
    std::int64_t days = at.unix_seconds() / day_seconds;
    std::int64_t second = at.unix_seconds() % day_seconds;
    if (second < 0) { // before 1970
        second += day_seconds;
        --days;
    }
    return fmt::format("{}T{:02}:{:02}:{:02}Z",
                       to_iso(Day::from_days_since_epoch(static_cast<std::int32_t>(days))),
                       second / 3600, second / 60 % 60, second % 60);
}

} // namespace core::units
