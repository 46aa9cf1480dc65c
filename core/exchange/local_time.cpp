#include "core/exchange/local_time.h"

#include "core/units/parse.h"

#include <array>
#include <charconv>
#include <chrono>

namespace core::exchange {
namespace {

using units::Day;
using units::Duration;

struct Numbers {
    std::array<int, 3> n{};
    std::array<std::size_t, 3> digits{};
    char separator = 0;
    std::string_view rest;
};

bool take_number(std::string_view& text, int& value, std::size_t& digits) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    digits = static_cast<std::size_t>(end - text.data());
    if (error != std::errc{} || digits > 4 || text.front() == '-') {
        return false;
    }
    text.remove_prefix(digits);
    return true;
}

/// Three numbers between two equal separators of "-./", with what follows.
std::optional<Numbers> split_date(std::string_view text) {
    Numbers date;
    for (std::size_t i = 0; i < 3; ++i) {
        if (text.empty() || !take_number(text, date.n[i], date.digits[i])) {
            return {};
        }
        if (i == 2) {
            break;
        }
        if (text.empty() || std::string_view("-./").find(text.front()) == std::string_view::npos ||
            (i == 1 && text.front() != date.separator)) {
            return {};
        }
        date.separator = text.front();
        text.remove_prefix(1);
    }
    date.rest = text;
    return date;
}

std::optional<Day> real_day(int year, int month, int day) {
    if (year < 1900 || year > 2500 || month < 1 || day < 1) {
        return {};
    }
    const std::chrono::year_month_day date{std::chrono::year(year),
                                           std::chrono::month(static_cast<unsigned>(month)),
                                           std::chrono::day(static_cast<unsigned>(day))};
    return date.ok() ? std::optional(Day::from_date(date)) : std::nullopt;
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && text.front() == ' ') {
        text.remove_prefix(1);
    }
    while (!text.empty() && text.back() == ' ') {
        text.remove_suffix(1);
    }
    return text;
}

/// "18:30", "18:30:15", "6:30 PM" as seconds after midnight; empty text is noon.
std::optional<int> seconds_of_day(std::string_view text) {
    if (!text.empty() && text.front() == 'T') {
        text.remove_prefix(1);
    }
    text = trimmed(text);
    if (text.empty()) {
        return 12 * 3600;
    }
    std::array<int, 3> n{};
    for (std::size_t i = 0, digits = 0; i < 3; ++i) {
        if (text.empty() || !take_number(text, n[i], digits) || digits > 2) {
            return {};
        }
        if (text.empty() || text.front() != ':') {
            if (i == 0) {
                return {}; // an hour alone
            }
            break;
        }
        if (i < 2) {
            text.remove_prefix(1);
        }
    }
    text = trimmed(text);
    const bool has_half = !text.empty();
    if (has_half) {
        const bool am = text == "AM" || text == "am" || text == "a.m.";
        const bool pm = text == "PM" || text == "pm" || text == "p.m.";
        if (!(am || pm) || n[0] < 1 || n[0] > 12) {
            return {};
        }
        n[0] = n[0] % 12 + (pm ? 12 : 0);
    }
    if (n[0] > 23 || n[1] > 59 || n[2] > 59) {
        return {};
    }
    return n[0] * 3600 + n[1] * 60 + n[2];
}

struct DayReading {
    std::optional<Day> day;
    bool unclear = false;
};

DayReading read_day(const Numbers& date, DayOrder order) {
    if (date.digits[0] == 4) {
        return {real_day(date.n[0], date.n[1], date.n[2])};
    }
    if (date.digits[2] != 4) {
        return {}; // two-digit years are not guessed
    }
    const auto day_first = real_day(date.n[2], date.n[1], date.n[0]);
    const auto month_first = real_day(date.n[2], date.n[0], date.n[1]);
    if (date.separator == '.' || order == DayOrder::day_first) {
        return {day_first};
    }
    if (order == DayOrder::month_first) {
        return {month_first};
    }
    if (day_first && month_first && *day_first != *month_first) {
        return {std::nullopt, true};
    }
    return {day_first ? day_first : month_first};
}

} // namespace

ReadTime read_time(std::string_view text, const std::optional<units::Zone>& zone, DayOrder order) {
    text = trimmed(text);
    if (const auto zoned = units::parse_instant(text)) {
        return {*zoned};
    }
    const auto date = split_date(text);
    if (!date) {
        return {std::nullopt, TimeFault::unreadable};
    }
    const auto seconds = seconds_of_day(date->rest);
    const DayReading reading = read_day(*date, order);
    if (!seconds || (!reading.day && !reading.unclear)) {
        return {std::nullopt, TimeFault::unreadable};
    }
    if (reading.unclear) {
        return {std::nullopt, TimeFault::order_unclear};
    }
    if (!zone) {
        return {std::nullopt, TimeFault::zone_missing};
    }
    const int minute = *seconds / 60;
    const units::Instant at = zone->instant_at(*reading.day, minute);
    if (zone->minute_of_day(at) != minute) {
        return {std::nullopt, TimeFault::no_such_local_time};
    }
    return {at + Duration::seconds(*seconds % 60)};
}

void DayOrderEvidence::see(std::string_view text) {
    const auto date = split_date(trimmed(text));
    if (!date || date->separator == '.' || date->digits[2] != 4) {
        return;
    }
    day_first_ = day_first_ || (date->n[0] > 12 && date->n[1] <= 12);
    month_first_ = month_first_ || (date->n[1] > 12 && date->n[0] <= 12);
}

DayOrder DayOrderEvidence::verdict() const {
    if (day_first_ == month_first_) {
        return DayOrder::unknown;
    }
    return day_first_ ? DayOrder::day_first : DayOrder::month_first;
}

} // namespace core::exchange
