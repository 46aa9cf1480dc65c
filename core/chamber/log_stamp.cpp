#include "core/chamber/log_stamp.h"

#include "core/base/ascii.h"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>
#include <utility>

// Written by hand and not with a date library: a ten-year log holds tens of millions of stamps
// in a dozen spellings, and stream-based parsing costs ten times the insertion of the row.
namespace core::chamber {
namespace {

constexpr std::int64_t seconds_a_day = 86400;

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}
/// Letters of month names, accented ones (UTF-8 bytes above 0x7F) included.
bool is_letter(char c) {
    const char l = lower(c);
    return (l >= 'a' && l <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

/// What is left to read of a stamp.
class Cursor {
  public:
    explicit Cursor(std::string_view text) : text_(text) { skip_blanks(); }
    [[nodiscard]] bool at_end() const { return text_.empty(); }
    [[nodiscard]] char peek() const { return text_.empty() ? '\0' : text_.front(); }
    [[nodiscard]] std::string_view rest() const { return text_; }
    void drop(std::size_t n) { text_.remove_prefix(n); }
    void skip_blanks() {
        while (!text_.empty() && (text_.front() == ' ' || text_.front() == '\t')) {
            text_.remove_prefix(1);
        }
    }
    bool take(char c) {
        if (peek() != c) {
            return false;
        }
        drop(1);
        return true;
    }
    /// A run of 1 to `most` digits; `length` says how many there were.
    std::optional<int> number(std::size_t most, std::size_t* length = nullptr) {
        std::size_t n = 0;
        int value = 0;
        while (n < text_.size() && n < most && base::is_digit(text_[n])) {
            value = value * 10 + (text_[n] - '0');
            ++n;
        }
        if (n == 0 || (n < text_.size() && n == most && base::is_digit(text_[n]))) {
            return std::nullopt;
        }
        drop(n);
        if (length != nullptr) {
            *length = n;
        }
        return value;
    }
    std::string_view word() {
        std::size_t n = 0;
        while (n < text_.size() && is_letter(text_[n])) {
            ++n;
        }
        const auto taken = text_.substr(0, n);
        drop(n);
        return taken;
    }

  private:
    std::string_view text_;
};

bool starts_with_fold(std::string_view text, std::string_view lower_prefix) {
    if (text.size() < lower_prefix.size()) {
        return false;
    }
    for (std::size_t i = 0; i < lower_prefix.size(); ++i) {
        if (lower(text[i]) != lower_prefix[i]) {
            return false;
        }
    }
    return true;
}

/// The shortest beginnings that tell the months apart in the seven languages; longer ones first
/// where one begins another ("juin" / "jui").
constexpr std::array<std::pair<std::string_view, int>, 31> month_beginnings{
    {{"jan", 1},   {"gen", 1},  {"ene", 1}, {"feb", 2}, {"fev", 2},        {"f\xC3\xA9v", 2},
     {"maart", 3}, {"mar", 3},  {"mrt", 3}, {"mrz", 3}, {"m\xC3\xA4r", 3}, {"apr", 4},
     {"avr", 4},   {"abr", 4},  {"mai", 5}, {"may", 5}, {"mei", 5},        {"maj", 5},
     {"mag", 5},   {"juin", 6}, {"jun", 6}, {"giu", 6}, {"jui", 7},        {"jul", 7},
     {"lug", 7},   {"aug", 8},  {"sep", 9}, {"set", 9}, {"oct", 10},       {"nov", 11},
     {"dic", 12}}};
constexpr std::array<std::pair<std::string_view, int>, 8> more_month_beginnings{
    {{"ao\xC3\xBB", 8},
     {"aou", 8},
     {"ago", 8},
     {"okt", 10},
     {"ott", 10},
     {"dec", 12},
     {"dez", 12},
     {"d\xC3\xA9\x63", 12}}};

std::optional<int> month_named(std::string_view word) {
    for (const auto& [beginning, month] : month_beginnings) {
        if (starts_with_fold(word, beginning)) {
            return month;
        }
    }
    for (const auto& [beginning, month] : more_month_beginnings) {
        if (starts_with_fold(word, beginning)) {
            return month;
        }
    }
    return std::nullopt;
}

/// One part of a date: a number or, where `may_be_name`, a month's name.
struct DatePart {
    int value = 0;
    std::size_t digits = 0; ///< 0 for a name
};

std::optional<DatePart> date_part(Cursor& in) {
    if (base::is_digit(in.peek())) {
        DatePart part;
        const auto value = in.number(4, &part.digits);
        if (!value) {
            return std::nullopt;
        }
        part.value = *value;
        return part;
    }
    const auto month = month_named(in.word());
    in.take('.'); // "Feb." abbreviated with a stop
    return month ? std::optional(DatePart{*month, 0}) : std::nullopt;
}

/// One separator: - / . , or blanks, alone or a stop or comma followed by blanks ("3. Jan 2025").
bool date_separator(Cursor& in) {
    const char c = in.peek();
    if (c == '-' || c == '/' || c == '.' || c == ',' || c == ' ' || c == '\t') {
        in.drop(1);
        in.skip_blanks();
        return true;
    }
    return false;
}

std::optional<std::int64_t> day_number(int year, int month, int day) {
    const auto date = std::chrono::year(year) / month / day;
    if (!date.ok()) {
        return std::nullopt;
    }
    return std::chrono::sys_days(date).time_since_epoch().count();
}

bool is_year(const DatePart& part) {
    return part.digits == 4 || part.digits == 2;
}
int full_year(const DatePart& part) {
    return part.digits == 2 ? 2000 + part.value : part.value;
}

/// "20250131", as in ISO 8601 basic form.
std::optional<std::int64_t> compact_date(Cursor& in) {
    const auto text = in.rest();
    if (text.size() < 8) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < 8; ++i) {
        if (!base::is_digit(text[i])) {
            return std::nullopt;
        }
    }
    if (text.size() > 8 && base::is_digit(text[8])) {
        return std::nullopt;
    }
    int year = 0;
    int month = 0;
    int day = 0;
    std::from_chars(text.data(), text.data() + 4, year);
    std::from_chars(text.data() + 4, text.data() + 6, month);
    std::from_chars(text.data() + 6, text.data() + 8, day);
    const auto days = day_number(year, month, day);
    if (days) {
        in.drop(8);
    }
    return days;
}

std::optional<std::int64_t> date(Cursor& in, StampForm form) {
    if (form == StampForm::year_month_day) {
        if (const auto days = compact_date(in)) {
            return days;
        }
    }
    std::array<DatePart, 3> parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const auto part = date_part(in);
        if (!part || (i < 2 && !date_separator(in))) {
            return std::nullopt;
        }
        parts[i] = *part;
    }
    const bool year_first = form == StampForm::year_month_day;
    const DatePart year = year_first ? parts[0] : parts[2];
    const DatePart month = year_first ? parts[1] : parts[form == StampForm::day_month_year ? 1 : 0];
    const DatePart day = year_first ? parts[2] : parts[form == StampForm::day_month_year ? 0 : 1];
    // A year first in two digits would read "05-04-25" three ways; loggers that put the year
    // first write all of it.
    if (!is_year(year) || (year_first && year.digits != 4) || month.digits > 2 || day.digits == 0 ||
        day.digits > 2) {
        return std::nullopt;
    }
    return day_number(full_year(year), month.value, day.value);
}

/// AM or PM at the cursor, in the spellings "am", "a.m.", "a. m.", "AM".
enum class Half { none, am, pm };

Half half_of_day(Cursor& in) {
    const char letter = lower(in.peek());
    if (letter != 'a' && letter != 'p') {
        return Half::none;
    }
    Cursor ahead = in;
    ahead.drop(1);
    ahead.take('.');
    ahead.skip_blanks();
    if (lower(ahead.peek()) != 'm') {
        return Half::none;
    }
    ahead.drop(1);
    ahead.take('.');
    in = ahead;
    return letter == 'a' ? Half::am : Half::pm;
}

std::optional<int> clock_hour(int hour, Half half) {
    if (half == Half::none) {
        return hour <= 23 ? std::optional(hour) : std::nullopt;
    }
    if (hour < 1 || hour > 12) {
        return std::nullopt;
    }
    return hour % 12 + (half == Half::pm ? 12 : 0);
}

/// Seconds and their fraction after "h:mm".
std::optional<int> seconds_part(Cursor& in, char colon) {
    if (!in.take(colon)) {
        return 0;
    }
    const auto seconds = in.number(2);
    if (seconds && (in.peek() == '.' || in.peek() == ',')) {
        in.drop(1);
        if (!in.number(9)) {
            return std::nullopt;
        }
    }
    return seconds;
}

std::optional<std::int64_t> compact_time(Cursor& in) {
    const auto text = in.rest();
    if (text.size() < 6) {
        return std::nullopt;
    }
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + 6, value);
    if (error != std::errc() || end != text.data() + 6) {
        return std::nullopt;
    }
    const int hour = value / 10000;
    const int minute = value / 100 % 100;
    const int second = value % 100;
    if (hour > 23 || minute > 59 || second > 59) {
        return std::nullopt;
    }
    in.drop(6);
    return hour * 3600 + minute * 60 + second;
}

std::optional<std::int64_t> time_of_day(Cursor& in) {
    Half half = half_of_day(in); // "PM 3:05", as some East Asian settings write
    in.skip_blanks();
    const auto before_compact = in;
    const auto hour = in.number(2);
    if (!hour) {
        in = before_compact;
        return compact_time(in);
    }
    const char colon = in.peek();
    if (colon != ':' && colon != '.' && lower(colon) != 'h') {
        return std::nullopt;
    }
    in.drop(1);
    const auto minute = in.number(2);
    if (!minute || *minute > 59) {
        return std::nullopt;
    }
    const auto second = seconds_part(in, colon == '.' ? '.' : ':');
    if (!second || *second > 59) {
        return std::nullopt;
    }
    in.skip_blanks();
    if (half == Half::none) {
        half = half_of_day(in);
    }
    const auto hour24 = clock_hour(*hour, half);
    if (!hour24) {
        return std::nullopt;
    }
    return *hour24 * 3600 + *minute * 60 + *second;
}

std::optional<double> plain_number(std::string_view text) {
    Cursor in(text);
    double value = 0;
    const auto rest = in.rest();
    const char* const end = rest.data() + rest.size();
    auto [stop, error] = std::from_chars(rest.data(), end, value);
    if (error != std::errc()) {
        return std::nullopt;
    }
    // A decimal comma in a day count ("45658,5").
    if (stop != end && *stop == ',') {
        double fraction = 0;
        const char* const digits = stop + 1;
        const auto tail = std::from_chars(digits, end, fraction, std::chars_format::fixed);
        if (tail.ec != std::errc() || digits == end || !base::is_digit(*digits)) {
            return std::nullopt;
        }
        value += fraction * std::pow(10.0, -static_cast<double>(tail.ptr - digits));
        stop = tail.ptr;
    }
    while (stop != end && *stop == ' ') {
        ++stop;
    }
    return stop == end ? std::optional(value) : std::nullopt;
}

/// Epoch counts outside 2001 to 2096 are some other number (a serial, a pressure in Pa).
std::optional<LogStamp> counted(std::string_view text, double unit, double least, double most,
                                std::int64_t zero, std::optional<int> offset) {
    const auto value = plain_number(text);
    // Not "< least || > most": a sensor's "nan" is neither.
    if (!value || !(*value >= least && *value <= most)) {
        return std::nullopt;
    }
    return LogStamp{static_cast<std::int64_t>(std::llround(*value * unit)) + zero, offset, true};
}

} // namespace

std::optional<int> read_offset(std::string_view text) {
    Cursor in(text);
    if (starts_with_fold(in.rest(), "utc") || starts_with_fold(in.rest(), "gmt")) {
        in.drop(3);
    } else if (in.take('Z') || in.take('z')) {
        return in.at_end() ? std::optional(0) : std::nullopt;
    }
    in.skip_blanks();
    if (in.at_end()) {
        return text.empty() ? std::nullopt : std::optional(0);
    }
    const bool negative = in.peek() == '-';
    if (!in.take('+') && !in.take('-')) {
        return std::nullopt;
    }
    std::size_t digits = 0;
    const auto first = in.number(4, &digits);
    if (!first || digits == 3) {
        return std::nullopt;
    }
    int minutes = digits == 4 ? *first / 100 * 60 + *first % 100 : *first * 60;
    if (digits <= 2 && in.take(':')) {
        const auto more = in.number(2);
        if (!more || *more > 59) {
            return std::nullopt;
        }
        minutes += *more;
    }
    in.skip_blanks();
    const int seconds = (negative ? -minutes : minutes) * 60;
    if (!in.at_end() || seconds < -12 * 3600 || seconds > 14 * 3600) {
        return std::nullopt;
    }
    return seconds;
}

std::optional<std::int64_t> read_time_of_day(std::string_view text) {
    Cursor in(text);
    const auto seconds = time_of_day(in);
    in.skip_blanks();
    return in.at_end() ? seconds : std::nullopt;
}

std::optional<LogStamp> read_stamp(std::string_view text, StampForm form) {
    switch (form) {
    case StampForm::epoch_seconds:
        return counted(text, 1.0, 1.0e9, 4.0e9, 0, 0);
    case StampForm::epoch_milliseconds:
        return counted(text, 1.0e-3, 1.0e12, 4.0e12, 0, 0);
    case StampForm::spreadsheet_days: {
        // 25569 is 1970-01-01 counted from 1899-12-30.
        constexpr std::int64_t epoch_day = 25569;
        return counted(text, static_cast<double>(seconds_a_day), 36000, 72000,
                       -epoch_day * seconds_a_day, std::nullopt);
    }
    default:
        break;
    }
    Cursor in(text);
    const auto days = date(in, form);
    if (!days) {
        return std::nullopt;
    }
    LogStamp stamp{*days * seconds_a_day, std::nullopt, false};
    in.take(',');
    in.skip_blanks();
    if (!in.take('T')) {
        in.take('t');
    }
    in.skip_blanks();
    if (in.at_end()) {
        return stamp;
    }
    const auto time = time_of_day(in);
    if (!time) {
        return std::nullopt;
    }
    stamp.seconds += *time;
    stamp.has_time = true;
    in.skip_blanks();
    if (!in.at_end()) {
        stamp.offset_seconds = read_offset(in.rest());
        if (!stamp.offset_seconds) {
            return std::nullopt;
        }
    }
    return stamp;
}

} // namespace core::chamber
