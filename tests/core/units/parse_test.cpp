#include "core/units/parse.h"

#include <gtest/gtest.h>

namespace {

using namespace core::units;
using core::base::ErrorCode;

double grams(std::string_view text, ParseStyle style = {}) {
    const auto mass = parse_mass(text, std::nullopt, style);
    EXPECT_TRUE(mass.has_value()) << text << ": code "
                                  << (mass ? 0 : static_cast<int>(mass.error().code));
    return mass ? mass->in_grams() : -1;
}

ErrorCode mass_fault(std::string_view text, ParseStyle style = {}) {
    const auto mass = parse_mass(text, std::nullopt, style);
    EXPECT_FALSE(mass.has_value()) << text << " read as " << (mass ? mass->in_grams() : 0) << " g";
    return mass ? ErrorCode::cancelled : mass.error().code;
}

TEST(ParseNumber, EitherDecimalSign) {
    EXPECT_DOUBLE_EQ(*parse_number("2.5"), 2.5);
    EXPECT_DOUBLE_EQ(*parse_number("2,5"), 2.5);
    EXPECT_DOUBLE_EQ(*parse_number(" 12 "), 12);
    EXPECT_DOUBLE_EQ(*parse_number("-0,25"), -0.25);
    EXPECT_DOUBLE_EQ(*parse_number("\xE2\x88\x92"
                                   "3"),
                     -3);
    EXPECT_DOUBLE_EQ(*parse_number("0,250"), 0.25) << "a thousands group has no leading zero";
    EXPECT_DOUBLE_EQ(*parse_number("1,2345"), 1.2345);
    EXPECT_DOUBLE_EQ(*parse_number("1.234"), 1.234) << "a reading of a 1 g scale in kg";
    EXPECT_DOUBLE_EQ(*parse_number("6.02e3"), 6020);
    EXPECT_DOUBLE_EQ(*parse_number("5."), 5);
}

TEST(ParseNumber, ThousandOrDecimalIsAskedNotGuessed) {
    EXPECT_EQ(parse_number("1,234").error().code, ErrorCode::ambiguous_number);
    EXPECT_EQ(parse_number("12,500").error().code, ErrorCode::ambiguous_number);
    EXPECT_DOUBLE_EQ(*parse_number("1,234", {DecimalSign::comma}), 1.234);
    EXPECT_DOUBLE_EQ(*parse_number("1.234", {DecimalSign::point}), 1.234);
    EXPECT_EQ(parse_number("1,234", {DecimalSign::point}).error().code,
              ErrorCode::ambiguous_number);
    EXPECT_EQ(parse_number("1.234", {DecimalSign::comma}).error().code, ErrorCode::ambiguous_number)
        << "a thousand, or copied off a scale's display";
    EXPECT_DOUBLE_EQ(*parse_number("0.250", {DecimalSign::comma}), 0.25);
    EXPECT_DOUBLE_EQ(*parse_number("12.5", {DecimalSign::comma}), 12.5);
    EXPECT_DOUBLE_EQ(*parse_number("2.5", {DecimalSign::comma}), 2.5);
    EXPECT_DOUBLE_EQ(*parse_number("1,234.5"), 1234.5);
    EXPECT_DOUBLE_EQ(*parse_number("1.234,5"), 1234.5);
    EXPECT_DOUBLE_EQ(*parse_number("1,234,567"), 1234567);
    EXPECT_DOUBLE_EQ(*parse_number("1 234,5"), 1234.5);
    EXPECT_DOUBLE_EQ(*parse_number("1'234.5"), 1234.5);
    EXPECT_DOUBLE_EQ(*parse_number("1\xE2\x80\xAF"
                                   "234"),
                     1234);
}

TEST(ParseNumber, CommonFractions) {
    EXPECT_DOUBLE_EQ(*parse_number("1/2"), 0.5);
    EXPECT_DOUBLE_EQ(*parse_number("3 1/2"), 3.5);
    EXPECT_DOUBLE_EQ(*parse_number("3\xC2\xBD"), 3.5);
    EXPECT_DOUBLE_EQ(*parse_number("\xC2\xBE"), 0.75);
    EXPECT_DOUBLE_EQ(*parse_number("14 5/8"), 14.625);
    EXPECT_DOUBLE_EQ(*parse_number("-1 1/4"), -1.25);
    EXPECT_EQ(parse_number("3 5/2").error().code, ErrorCode::not_a_number);
    EXPECT_EQ(parse_number("1/0").error().code, ErrorCode::not_a_number);
}

TEST(ParseNumber, AFractionOfMoreDigitsThanADoubleHoldsIsNotNought) {
    const std::string many(400, '9');
    EXPECT_EQ(parse_number(many + "/2").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_number("1/" + many).error().code, ErrorCode::not_a_number);
}

TEST(ParseNumber, RefusesWhatIsNoNumber) {
    EXPECT_EQ(parse_number("").error().code, ErrorCode::empty_input);
    EXPECT_EQ(parse_number("  ").error().code, ErrorCode::empty_input);
    for (const auto* text : {"nan", "NaN", "inf", "-inf", "abc", "-", ".", "1..2", "1,2,3", "--1",
                             "1.23.45", "12'34", "1,23.4"}) {
        const auto value = parse_number(text);
        EXPECT_FALSE(value.has_value()) << text << " read as " << (value ? *value : 0);
    }
    EXPECT_EQ(parse_number("nan").error().code, ErrorCode::not_a_number);
    EXPECT_EQ(parse_number("1e999").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_number("5 apples").error().code, ErrorCode::trailing_text);
    EXPECT_EQ(parse_number("5 apples").error().detail, "apples");
}

TEST(ParseMass, UnitsAndSpacings) {
    EXPECT_DOUBLE_EQ(grams("1500g"), 1500);
    EXPECT_DOUBLE_EQ(grams("1500 G"), 1500);
    EXPECT_DOUBLE_EQ(grams("2,5 kg"), 2500);
    EXPECT_DOUBLE_EQ(grams("2.5\xC2\xA0kg"), 2500);
    EXPECT_DOUBLE_EQ(grams("250 mg"), 0.25);
    EXPECT_DOUBLE_EQ(grams("1 kilo"), 1000);
    EXPECT_DOUBLE_EQ(grams("1 kg 200 g"), 1200);
    EXPECT_DOUBLE_EQ(grams("2 jin"), 1000);
}

// International Yard and Pound Agreement (1959): 1 lb = 453.59237 g, 16 oz to the pound.
TEST(ParseMass, PoundsAndOunces) {
    EXPECT_DOUBLE_EQ(grams("1 lb"), 453.59237);
    EXPECT_DOUBLE_EQ(grams("1 lb 3 1/2 oz"), 453.59237 * (1 + 3.5 / 16));
    EXPECT_DOUBLE_EQ(grams("1lb3½oz"), 453.59237 * (1 + 3.5 / 16));
    EXPECT_DOUBLE_EQ(grams("1 lb, 3 oz."), 453.59237 * (1 + 3.0 / 16));
    EXPECT_DOUBLE_EQ(grams("14 5/8 oz"), 14.625 * 453.59237 / 16);
}

TEST(ParseMass, FaultsSayWhatIsWrong) {
    EXPECT_EQ(mass_fault(""), ErrorCode::empty_input);
    EXPECT_EQ(mass_fault("1500"), ErrorCode::unit_missing);
    EXPECT_EQ(mass_fault("-5 g"), ErrorCode::out_of_range);
    EXPECT_EQ(mass_fault("5 mL"), ErrorCode::wrong_kind);
    EXPECT_EQ(mass_fault("5 stone"), ErrorCode::unknown_unit);
    EXPECT_EQ(mass_fault("5 Mg"), ErrorCode::unknown_unit) << "a megagram, or a slip for mg";
    EXPECT_EQ(mass_fault("5 gr"), ErrorCode::unknown_unit) << "gram or grain";
    EXPECT_EQ(mass_fault("1,500 g"), ErrorCode::ambiguous_number);
    EXPECT_EQ(mass_fault("3 oz 1 lb"), ErrorCode::trailing_text);
    EXPECT_EQ(mass_fault("1 lb 3"), ErrorCode::unit_missing);
    EXPECT_EQ(mass_fault("1 lb -3 oz"), ErrorCode::trailing_text);
    EXPECT_EQ(mass_fault("nan g"), ErrorCode::not_a_number);
    EXPECT_EQ(mass_fault("kg"), ErrorCode::not_a_number);
    EXPECT_EQ(parse_mass("5 kg of meat").error().code, ErrorCode::trailing_text);
    EXPECT_EQ(parse_mass("5 kg of meat").error().detail, "of meat");
    EXPECT_EQ(mass_fault("5 kg 3 kg"), ErrorCode::trailing_text);
}

TEST(ParseMass, ANumberThatFitsOnlyInItsOwnUnitIsRefused) {
    EXPECT_EQ(mass_fault("1e308 kg"), ErrorCode::out_of_range);
    EXPECT_EQ(mass_fault("1e308 kg 1e308 g"), ErrorCode::out_of_range);
    EXPECT_EQ(parse_mass("1e308", MassUnit::kilogram).error().code, ErrorCode::out_of_range);
    EXPECT_DOUBLE_EQ(grams("1e300 kg"), 1e303);
    EXPECT_EQ(parse_duration("1e308 weeks").error().code, ErrorCode::out_of_range);
}

TEST(ParseMass, ABareNumberTakesTheUnitItIsGiven) {
    EXPECT_DOUBLE_EQ(parse_mass("1500", MassUnit::gram)->in_grams(), 1500);
    EXPECT_DOUBLE_EQ(parse_mass("1,5", MassUnit::kilogram)->in_grams(), 1500);
    EXPECT_DOUBLE_EQ(parse_mass("2 lb", MassUnit::gram)->in_pounds(), 2);
}

TEST(ParseLength, UnitsAndInchMarks) {
    EXPECT_DOUBLE_EQ(parse_length("50mm")->in_millimetres(), 50);
    EXPECT_DOUBLE_EQ(parse_length("5 cm")->in_millimetres(), 50);
    EXPECT_DOUBLE_EQ(parse_length("2 in")->in_millimetres(), 50.8);
    EXPECT_DOUBLE_EQ(parse_length("2 1/2\"")->in_millimetres(), 63.5);
    EXPECT_DOUBLE_EQ(parse_length("1' 6\"")->in_millimetres(), 457.2);
    EXPECT_DOUBLE_EQ(parse_length("5", LengthUnit::centimetre)->in_millimetres(), 50);
    EXPECT_EQ(parse_length("5 g").error().code, ErrorCode::wrong_kind);
}

// NIST Handbook 44 Appendix C: 1 US gal = 231 cubic inches = 3785.411784 mL, 128 fl oz.
TEST(ParseVolume, Units) {
    EXPECT_DOUBLE_EQ(parse_volume("100 mL")->in_millilitres(), 100);
    EXPECT_DOUBLE_EQ(parse_volume("1,5 l")->in_millilitres(), 1500);
    EXPECT_DOUBLE_EQ(parse_volume("1 gal")->in_millilitres(), 3785.411784);
    EXPECT_DOUBLE_EQ(parse_volume("1 fl oz")->in_millilitres(), 3785.411784 / 128);
    EXPECT_EQ(parse_volume("8 oz").error().code, ErrorCode::wrong_kind);
    EXPECT_EQ(parse_volume("1 cup").error().code, ErrorCode::unknown_unit);
}

TEST(ParseTemperature, ScalesAndSigns) {
    EXPECT_NEAR(parse_temperature("4C")->in_celsius(), 4, 1e-12);
    EXPECT_NEAR(parse_temperature("4 \xC2\xB0"
                                  "C")
                    ->in_celsius(),
                4, 1e-12);
    EXPECT_NEAR(parse_temperature("-18 C")->in_celsius(), -18, 1e-12);
    EXPECT_NEAR(parse_temperature("40 F")->in_celsius(), 40.0 / 9, 1e-9);
    EXPECT_NEAR(parse_temperature("277,15 K")->in_celsius(), 4, 1e-9);
    EXPECT_NEAR(parse_temperature("4", TemperatureUnit::celsius)->in_celsius(), 4, 1e-12);
    EXPECT_EQ(parse_temperature("4").error().code, ErrorCode::unit_missing);
    EXPECT_EQ(parse_temperature("4\xC2\xB0").error().code, ErrorCode::wrong_kind);
    EXPECT_EQ(parse_temperature("-300 C").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_temperature("4 C 5 C").error().code, ErrorCode::trailing_text);
}

TEST(ParseMassShare, PercentAndPpmAreOneKind) {
    EXPECT_DOUBLE_EQ(parse_mass_share("2.5 %")->in_percent(), 2.5);
    EXPECT_DOUBLE_EQ(parse_mass_share("25 g/kg")->in_percent(), 2.5);
    EXPECT_DOUBLE_EQ(parse_mass_share("156 ppm")->in_ppm(), 156);
    EXPECT_DOUBLE_EQ(parse_mass_share("156 mg/kg")->in_ppm(), 156);
    EXPECT_DOUBLE_EQ(parse_mass_share("3 g/100 g")->in_percent(), 3);
    EXPECT_DOUBLE_EQ(parse_mass_share("1 oz/100 lb")->in_ppm(), 625); // 9 CFR 424.21(c)
    EXPECT_DOUBLE_EQ(parse_mass_share("150 %")->in_percent(), 150) << "brine on meat";
    EXPECT_DOUBLE_EQ(parse_mass_share("2,5", true)->in_percent(), 2.5);
    EXPECT_EQ(parse_mass_share("2.5").error().code, ErrorCode::unit_missing);
    EXPECT_EQ(parse_mass_share("-1 %").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_mass_share("1 g").error().code, ErrorCode::wrong_kind);
}

TEST(ParseRelativeHumidity, PercentWithOrWithoutSign) {
    EXPECT_DOUBLE_EQ(parse_relative_humidity("75")->in_percent(), 75);
    EXPECT_DOUBLE_EQ(parse_relative_humidity("75%")->in_percent(), 75);
    EXPECT_DOUBLE_EQ(parse_relative_humidity("75 % RH")->in_percent(), 75);
    EXPECT_EQ(parse_relative_humidity("101 %").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_relative_humidity("-1").error().code, ErrorCode::out_of_range);
}

// US proof is twice the percentage; UK proof 100 is 57.15 % ABV, so 7/4 of the percentage.
TEST(ParseAlcohol, ProofNeedsItsCountry) {
    EXPECT_DOUBLE_EQ(parse_alcohol("40 %")->in_percent(), 40);
    EXPECT_DOUBLE_EQ(parse_alcohol("40% ABV")->in_percent(), 40);
    EXPECT_DOUBLE_EQ(parse_alcohol("80 proof US")->in_percent(), 40);
    EXPECT_DOUBLE_EQ(parse_alcohol("80 US proof")->in_percent(), 40);
    EXPECT_DOUBLE_EQ(parse_alcohol("70 proof UK")->in_percent(), 40);
    EXPECT_EQ(parse_alcohol("80 proof").error().code, ErrorCode::wrong_kind);
    EXPECT_EQ(parse_alcohol("40\xC2\xB0").error().code, ErrorCode::wrong_kind);
    EXPECT_EQ(parse_alcohol("40").error().code, ErrorCode::unit_missing);
    EXPECT_EQ(parse_alcohol("120 %").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_alcohol("201 proof US").error().code, ErrorCode::out_of_range);
}

TEST(ParseDuration, SumsOfFallingUnits) {
    EXPECT_DOUBLE_EQ(parse_duration("36 h")->in_hours(), 36);
    EXPECT_DOUBLE_EQ(parse_duration("3 d 12 h")->in_hours(), 84);
    EXPECT_DOUBLE_EQ(parse_duration("2 weeks")->in_days(), 14);
    EXPECT_DOUBLE_EQ(parse_duration("90 min")->in_hours(), 1.5);
    EXPECT_EQ(parse_duration("2 months").error().code, ErrorCode::unknown_unit);
    EXPECT_EQ(parse_duration("12 h 3 d").error().code, ErrorCode::trailing_text);
    EXPECT_EQ(parse_duration("3").error().code, ErrorCode::unit_missing);
    EXPECT_DOUBLE_EQ(parse_duration("365250 d")->in_days(), 365250) << "a thousand years";
    EXPECT_EQ(parse_duration("365251 d").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_duration("-1 d").error().code, ErrorCode::out_of_range);
}

TEST(ParseInstant, IsoWithZone) {
    EXPECT_EQ(parse_instant("1970-01-02T00:00:00Z")->unix_seconds(), 86400);
    EXPECT_EQ(parse_instant("2026-03-01T18:30:00+01:00")->unix_seconds(),
              parse_instant("2026-03-01T17:30:00Z")->unix_seconds());
    EXPECT_EQ(parse_instant("2026-03-01 18:30+0100"), parse_instant("2026-03-01T17:30Z"));
    EXPECT_EQ(parse_instant("2026-03-01T12:30:00-05"), parse_instant("2026-03-01T17:30Z"));
    EXPECT_EQ(parse_instant("2026-03-01T17:30:00.750Z"), parse_instant("2026-03-01T17:30Z"));
    EXPECT_EQ(parse_instant("2026-03-01T18:30:00").error().code, ErrorCode::unit_missing);
    EXPECT_EQ(parse_instant("2026-02-29T18:30:00Z").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_instant("2026-03-01T24:30:00Z").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_instant("2026-03-01").error().code, ErrorCode::bad_format);
    EXPECT_EQ(parse_instant("01.03.2026 18:30Z").error().code, ErrorCode::bad_format);
    EXPECT_EQ(parse_instant("2026-03-01T18:30Z tail").error().code, ErrorCode::trailing_text);
}

TEST(ParseDay, RealDatesOnly) {
    EXPECT_EQ(parse_day("1970-01-02")->days_since_epoch(), 1);
    EXPECT_EQ(to_iso(*parse_day("2024-02-29")), "2024-02-29");
    EXPECT_EQ(parse_day("2026-02-29").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_day("2026-13-01").error().code, ErrorCode::out_of_range);
    EXPECT_EQ(parse_day("2026-3-1").error().code, ErrorCode::bad_format);
    EXPECT_EQ(parse_day("").error().code, ErrorCode::empty_input);
    EXPECT_EQ(parse_day("2026-03-01T10:00").error().code, ErrorCode::trailing_text);
}

TEST(ToIso, ReadsBackBefore1970Too) {
    EXPECT_EQ(to_iso(Instant::from_unix_seconds(-1)), "1969-12-31T23:59:59Z");
    EXPECT_EQ(to_iso(*parse_instant("2026-03-01T18:30:00+01:00")), "2026-03-01T17:30:00Z");
}

} // namespace
