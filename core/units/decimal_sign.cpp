#include "core/units/scan.h"

#include "core/base/ascii.h"

#include <algorithm>
#include <string>

namespace core::units::detail {
namespace {

using base::ErrorCode;

/// Digits before the first sign and between signs are proper thousands: 1 to 3, then 3 each.
bool grouped_in_thousands(std::string_view run, char sign) {
    std::size_t group = 0;
    bool first = true;
    for (const char c : run) {
        if (c != sign) {
            ++group;
            continue;
        }
        if (first ? (group < 1 || group > 3) : group != 3) {
            return false;
        }
        first = false;
        group = 0;
    }
    return first || group == 3;
}

std::string without(std::string_view run, char sign) {
    std::string kept;
    std::copy_if(run.begin(), run.end(), std::back_inserter(kept),
                 [sign](char c) { return c != sign; });
    return kept;
}

} // namespace

base::Result<std::string> plain_decimal(std::string_view run, ParseStyle style) {
    const auto bad = [&] { return base::fault(ErrorCode::not_a_number, std::string(run)); };
    if (run.find('\'') != std::string_view::npos) { // apostrophes only ever group
        const auto whole = run.substr(0, run.find_first_of(".,"));
        if (!grouped_in_thousands(whole, '\'')) {
            return bad();
        }
        const std::string tail(run.substr(whole.size()));
        if (std::count_if(tail.begin(), tail.end(), [](char c) { return !base::is_digit(c); }) >
            1) {
            return bad();
        }
        std::string plain = without(whole, '\'') + tail;
        std::replace(plain.begin(), plain.end(), ',', '.');
        return plain;
    }
    const auto points = std::count(run.begin(), run.end(), '.');
    const auto commas = std::count(run.begin(), run.end(), ',');
    if (points > 0 && commas > 0) { // the last kind is the decimal sign, the other one groups
        const char decimal = run.find_last_of(".,") == run.rfind('.') ? '.' : ',';
        const char group = decimal == '.' ? ',' : '.';
        const auto at = run.rfind(decimal);
        if (std::count(run.begin(), run.end(), decimal) != 1 ||
            !grouped_in_thousands(run.substr(0, at), group) ||
            run.substr(at).find(group) != std::string_view::npos) {
            return bad();
        }
        return without(run.substr(0, at), group) + "." + std::string(run.substr(at + 1));
    }
    const auto count = points + commas;
    if (count == 0) {
        return std::string(run);
    }
    const char sign = points > 0 ? '.' : ',';
    const bool may_group = grouped_in_thousands(run, sign);
    if (count > 1) {
        return may_group ? base::Result<std::string>(without(run, sign)) : bad();
    }
    // A leading zero never heads a thousands group: "0,250" is a quarter.
    const bool could_be_thousand = may_group && run.front() != '0';
    const DecimalSign own = sign == '.' ? DecimalSign::point : DecimalSign::comma;
    // A person who writes decimals with a comma may still copy "1.234 kg" off a scale's display, so
    // the sign of the language settles only its own meaning.
    const bool is_own = style.decimal == DecimalSign::either ? sign == '.' : style.decimal == own;
    if (could_be_thousand && !is_own) {
        return base::fault(ErrorCode::ambiguous_number, std::string(run));
    }
    std::string plain(run);
    plain[run.find(sign)] = '.';
    return plain;
}

} // namespace core::units::detail
