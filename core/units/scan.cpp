#include "core/units/scan.h"

#include "core/base/ascii.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <utility>

namespace core::units::detail {
namespace {

using base::ErrorCode;

// Blanks that people's keyboards and spreadsheets produce, as UTF-8.
constexpr std::array<std::string_view, 7> blanks = {" ",
                                                    "\t",
                                                    "\n",
                                                    "\r",
                                                    "\xC2\xA0",      // no-break
                                                    "\xE2\x80\xAF",  // narrow no-break
                                                    "\xE2\x80\x89"}; // thin

constexpr std::string_view minus_sign = "\xE2\x88\x92"; // U+2212
constexpr std::string_view fraction_slash = "\xE2\x81\x84";
constexpr std::string_view right_quote = "\xE2\x80\x99"; // a typographic apostrophe

constexpr std::array<std::pair<std::string_view, double>, 15> vulgar = {{
    {"\xC2\xBC", 1.0 / 4},
    {"\xC2\xBD", 1.0 / 2},
    {"\xC2\xBE", 3.0 / 4},
    {"\xE2\x85\x93", 1.0 / 3},
    {"\xE2\x85\x94", 2.0 / 3},
    {"\xE2\x85\x95", 1.0 / 5},
    {"\xE2\x85\x96", 2.0 / 5},
    {"\xE2\x85\x97", 3.0 / 5},
    {"\xE2\x85\x98", 4.0 / 5},
    {"\xE2\x85\x99", 1.0 / 6},
    {"\xE2\x85\x9A", 5.0 / 6},
    {"\xE2\x85\x9B", 1.0 / 8},
    {"\xE2\x85\x9C", 3.0 / 8},
    {"\xE2\x85\x9D", 5.0 / 8},
    {"\xE2\x85\x9E", 7.0 / 8},
}};

std::size_t digits_at(std::string_view text) {
    return static_cast<std::size_t>(
        std::distance(text.begin(), std::find_if_not(text.begin(), text.end(), base::is_digit)));
}

base::Result<double> to_double(std::string_view digits, std::string_view shown) {
    double value = 0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (error == std::errc::result_out_of_range) {
        return base::fault(ErrorCode::out_of_range, std::string(shown));
    }
    if (error != std::errc{} || end != digits.data() + digits.size() || !std::isfinite(value)) {
        return base::fault(ErrorCode::not_a_number, std::string(shown));
    }
    return value;
}

} // namespace

std::size_t Scanner::blank_here() const {
    for (const auto blank : blanks) {
        if (rest_.substr(0, blank.size()) == blank) {
            return blank.size();
        }
    }
    return 0;
}

void Scanner::skip_blanks() {
    while (const std::size_t n = blank_here()) {
        rest_.remove_prefix(n);
    }
}

bool Scanner::at_end() {
    skip_blanks();
    return rest_.empty();
}

bool Scanner::at_number() {
    auto ahead = rest_;
    if (!ahead.empty() && (ahead.front() == '-' || ahead.front() == '+')) {
        ahead.remove_prefix(1);
    } else if (ahead.substr(0, minus_sign.size()) == minus_sign) {
        ahead.remove_prefix(minus_sign.size());
    }
    if (ahead.empty()) {
        return false;
    }
    if (base::is_digit(ahead.front())) {
        return true;
    }
    if ((ahead.front() == '.' || ahead.front() == ',') && ahead.size() > 1 &&
        base::is_digit(ahead[1])) {
        return true;
    }
    return std::any_of(vulgar.begin(), vulgar.end(), [&](const auto& entry) {
        return ahead.substr(0, entry.first.size()) == entry.first;
    });
}

std::optional<double> Scanner::vulgar_fraction() {
    for (const auto& [sign, value] : vulgar) {
        if (rest_.substr(0, sign.size()) == sign) {
            rest_.remove_prefix(sign.size());
            return value;
        }
    }
    return std::nullopt;
}

/// "1/2" at this place: digits, a slash, digits. Leaves the place alone where there is none.
std::optional<double> Scanner::common_fraction() {
    const std::size_t top = digits_at(rest_);
    if (top == 0) {
        return std::nullopt;
    }
    auto after = rest_.substr(top);
    if (!after.empty() && after.front() == '/') {
        after.remove_prefix(1);
    } else if (after.substr(0, fraction_slash.size()) == fraction_slash) {
        after.remove_prefix(fraction_slash.size());
    } else {
        return std::nullopt;
    }
    const std::size_t bottom = digits_at(after);
    double numerator = 0;
    double denominator = 0;
    const auto upper = std::from_chars(rest_.data(), rest_.data() + top, numerator);
    const auto lower = std::from_chars(after.data(), after.data() + bottom, denominator);
    // More digits than a double holds leave the value as it was, which is not what was written.
    const bool read = upper.ec == std::errc{} && lower.ec == std::errc{};
    if (!read || denominator == 0) {
        return std::nullopt;
    }
    rest_ = after.substr(bottom);
    return numerator / denominator;
}

base::Result<double> Scanner::decimal(ParseStyle style) {
    const auto start = rest_;
    std::string run;
    for (;;) {
        if (rest_.empty()) {
            break;
        }
        const char c = rest_.front();
        const bool digit_next = rest_.size() > 1 && base::is_digit(rest_[1]);
        if (base::is_digit(c) || ((c == '.' || c == ',') && (digit_next || !run.empty()))) {
            if (!base::is_digit(c) && !digit_next) { // "5." is 5; a comma there belongs to a list
                if (c == '.') {
                    rest_.remove_prefix(1);
                }
                break;
            }
            run += c;
            rest_.remove_prefix(1);
        } else if (!run.empty() && c == '\'' && digits_at(rest_.substr(1)) == 3) {
            run += '\'';
            rest_.remove_prefix(1);
        } else if (!run.empty() && rest_.substr(0, right_quote.size()) == right_quote &&
                   digits_at(rest_.substr(right_quote.size())) == 3) {
            run += '\'';
            rest_.remove_prefix(right_quote.size());
        } else if (const std::size_t n = blank_here();
                   n > 0 && !run.empty() && run.find_first_of(".,") == std::string::npos &&
                   digits_at(rest_.substr(n)) == 3 &&
                   (rest_.size() == n + 3 || rest_[n + 3] != '/') && run.size() <= 11) {
            run += '\''; // a blank between thousands
            rest_.remove_prefix(n);
        } else {
            break;
        }
    }
    auto plain = plain_decimal(run, style);
    if (!plain) {
        return tl::unexpected(plain.error());
    }
    // An exponent, as loggers write one.
    if (rest_.size() > 1 && (rest_.front() == 'e' || rest_.front() == 'E')) {
        const std::size_t sign = rest_[1] == '-' || rest_[1] == '+' ? 1U : 0U;
        const std::size_t digits = digits_at(rest_.substr(1 + sign));
        if (digits > 0) {
            *plain += "e";
            *plain += rest_[1] == '+' ? rest_.substr(2, digits) : rest_.substr(1, sign + digits);
            rest_.remove_prefix(1 + sign + digits);
        }
    }
    return to_double(*plain, start.substr(0, start.size() - rest_.size()));
}

base::Result<double> Scanner::number(ParseStyle style) {
    skip_blanks();
    if (!at_number()) {
        return base::fault(rest_.empty() ? ErrorCode::empty_input : ErrorCode::not_a_number,
                           std::string(rest_));
    }
    double sign = 1;
    if (rest_.front() == '-' || rest_.front() == '+') {
        sign = rest_.front() == '-' ? -1 : 1;
        rest_.remove_prefix(1);
    } else if (rest_.substr(0, minus_sign.size()) == minus_sign) {
        sign = -1;
        rest_.remove_prefix(minus_sign.size());
    }
    if (const auto part = vulgar_fraction()) {
        return sign * *part;
    }
    if (const auto part = common_fraction()) {
        return sign * *part;
    }
    const auto whole_start = rest_;
    auto value = decimal(style);
    if (!value) {
        return value;
    }
    const auto written = whole_start.substr(0, whole_start.size() - rest_.size());
    const bool whole = written.find_first_of(".,eE") == std::string_view::npos;
    if (whole) { // "3 1/2", "3½"
        const auto before = rest_;
        skip_blanks();
        auto part = vulgar_fraction();
        if (!part && rest_.size() != before.size()) {
            part = common_fraction();
        }
        if (part) {
            if (*part >= 1) { // "3 5/2" is a slip, not a number
                return base::fault(ErrorCode::not_a_number, std::string(text_));
            }
            return sign * (*value + *part);
        }
        rest_ = before;
    }
    // "1/0" and "3/" reach this place with the slash unread.
    if (whole && !rest_.empty() && rest_.front() == '/') {
        return base::fault(ErrorCode::not_a_number, std::string(text_));
    }
    return sign * *value;
}

std::string Scanner::unit_text() {
    skip_blanks();
    const auto start = rest_;
    std::string unit;
    while (!rest_.empty()) {
        const bool in_quotient =
            !unit.empty() && (unit.back() == '/' || base::is_digit(unit.back()));
        // A minus inside a word is no sign of a number ("k-g" is a word, "kg -3" is not).
        if (at_number() && !(base::is_digit(rest_.front()) && in_quotient)) {
            break;
        }
        if (const std::size_t n = blank_here()) {
            if (unit.empty() || unit.back() != ' ') {
                unit += ' ';
            }
            rest_.remove_prefix(n);
            continue;
        }
        const char c = rest_.front();
        unit += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        rest_.remove_prefix(1);
    }
    while (!unit.empty() && unit.back() == ' ') {
        unit.pop_back();
    }
    unit_written_ = start.substr(0, start.size() - rest_.size());
    return unit;
}

} // namespace core::units::detail
