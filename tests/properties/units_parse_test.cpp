// What is written in any form that the doors accept is read back as the same quantity, and no
// text whatever makes them do anything but answer.
#include "core/units/parse.h"

#include <cmath>
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <limits>
#include <rapidcheck/gtest.h>

namespace {

using namespace core::units;

/// Reading back is to within a few roundings: a sum of two units rounds twice.
void near(double actual, double expected) {
    RC_ASSERT(std::abs(actual - expected) <= 1e-12 * std::max(1.0, std::abs(expected)));
}

RC_GTEST_PROP(ParseProperty, MassReadsBackWithEitherDecimalSign, ()) {
    const auto milligrams = *rc::gen::inRange<long>(0, 1'000'000'000);
    const auto comma = *rc::gen::arbitrary<bool>();
    // Four digits after the sign, so that it cannot be taken for a thousand.
    std::string text = fmt::format("{}.{:04}", milligrams / 1000, (milligrams % 1000) * 10);
    if (comma) {
        text[text.find('.')] = ',';
    }
    const auto mass = parse_mass(text + *rc::gen::element<std::string>(" g", "g", " grams", " G"));
    RC_ASSERT(mass.has_value());
    near(mass->in_milligrams(), static_cast<double>(milligrams));
}

RC_GTEST_PROP(ParseProperty, PoundsAndOuncesAddUp, ()) {
    const auto pounds = *rc::gen::inRange(0, 500);
    const auto eighths = *rc::gen::inRange(0, 128);
    const std::string text = eighths % 8 == 0
                                 ? fmt::format("{} lb {} oz", pounds, eighths / 8)
                                 : fmt::format("{}lb {} {}/8 oz", pounds, eighths / 8, eighths % 8);
    const auto mass = parse_mass(text);
    RC_ASSERT(mass.has_value());
    near(mass->in_ounces(), pounds * 16 + eighths / 8.0);
}

RC_GTEST_PROP(ParseProperty, GroupedThousandsReadBack, ()) {
    const auto value = *rc::gen::inRange<long>(1'000, 2'000'000'000);
    const auto sign = *rc::gen::element<std::string>(" ", "'", "\xC2\xA0", "\xE2\x80\xAF");
    std::string digits = std::to_string(value);
    for (int at = static_cast<int>(digits.size()) - 3; at > 0; at -= 3) {
        digits.insert(static_cast<std::size_t>(at), sign);
    }
    const auto read = parse_number(digits);
    RC_ASSERT(read.has_value());
    RC_ASSERT(*read == static_cast<double>(value));
}

RC_GTEST_PROP(ParseProperty, ShortestFormOfAnyDoubleReadsBack, ()) {
    const double value = *rc::gen::arbitrary<double>();
    const auto read = parse_number(fmt::format("{}", value), {DecimalSign::point});
    RC_ASSERT(read.has_value());
    near(*read, value);
}

RC_GTEST_PROP(ParseProperty, InstantReadsBackInAnyZone, ()) {
    // Years 0001 to 9999.
    const auto at =
        Instant::from_unix_seconds(*rc::gen::inRange<std::int64_t>(-62135596800, 253402300799));
    RC_ASSERT(parse_instant(to_iso(at)) == at);
    const auto quarter_hours = *rc::gen::inRange(-56, 57);
    const Instant shifted = at + Duration::minutes(15.0 * quarter_hours);
    std::string local = to_iso(shifted);
    if (local.size() != 20 || local.front() == '-') {
        RC_DISCARD("shifted out of four-digit years");
    }
    local.pop_back();
    const int minutes = std::abs(quarter_hours) * 15;
    local +=
        fmt::format("{}{:02}:{:02}", quarter_hours < 0 ? '-' : '+', minutes / 60, minutes % 60);
    RC_ASSERT(parse_instant(local) == at);
}

RC_GTEST_PROP(ParseProperty, DayReadsBack, ()) {
    const Day day = Day::from_days_since_epoch(*rc::gen::inRange(-719162, 2932897));
    RC_ASSERT(parse_day(to_iso(day)) == day);
}

RC_GTEST_PROP(ParseProperty, AnyTextGetsAnAnswer, (const std::string& text)) {
    const auto mass = parse_mass(text, MassUnit::gram);
    RC_ASSERT(!mass || (mass->is_finite() && mass->in_grams() >= 0));
    const auto share = parse_mass_share(text, true);
    RC_ASSERT(!share || share->is_finite());
    RC_ASSERT(!parse_alcohol(text) || parse_alcohol(text)->as_fraction() <= 1);
    (void)parse_temperature(text);
    (void)parse_duration(text);
    (void)parse_instant(text);
    (void)parse_day(text);
}

RC_GTEST_PROP(ParseProperty, TextMadeOfTheFormsPiecesGetsAnAnswer, ()) {
    const auto pieces = *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
        "1", "234", ".", ",", "'", "/", " ", "kg", "lb", "oz", "g/", "%", "-", "e", "½", "\xC2\xA0",
        "proof", "US", "1e5", "9999999999999999"));
    std::string text;
    for (const auto& piece : pieces) {
        text += piece;
    }
    const auto mass = parse_mass(text, MassUnit::gram);
    RC_ASSERT(!mass || (mass->is_finite() && mass->in_grams() >= 0));
    const auto share = parse_mass_share(text);
    RC_ASSERT(!share || share->is_finite());
}

} // namespace
