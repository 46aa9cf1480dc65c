#include "core/chamber/log_cell.h"

#include <gtest/gtest.h>

namespace {

using namespace core::chamber;
using core::units::RelativeHumidity;

TEST(CellNumber, ReadsANumberWithItsUnit) {
    EXPECT_DOUBLE_EQ(*cell_number("12.5", '.'), 12.5);
    EXPECT_DOUBLE_EQ(*cell_number(" 12,5 \xC2\xB0\x43 ", ','), 12.5);
    EXPECT_DOUBLE_EQ(*cell_number("75 %RH", '.'), 75);
    EXPECT_DOUBLE_EQ(*cell_number("75\t% rh", '.'), 75);
    EXPECT_DOUBLE_EQ(*cell_number("+4F", '.'), 4);
    EXPECT_DOUBLE_EQ(*cell_number("-0.25", '.'), -0.25);
    EXPECT_DOUBLE_EQ(*cell_number("\xE2\x88\x92"
                                  "18",
                                  '.'),
                     -18)
        << "U+2212";
    EXPECT_DOUBLE_EQ(*cell_number("12.", '.'), 12);
}

TEST(CellNumber, DigitsBelowAnySensorAreCutOff) {
    EXPECT_DOUBLE_EQ(*cell_number("0.1234567891234", '.'), 0.123456789);
}

TEST(CellNumber, RefusesAnythingElse) {
    for (const auto* text : {"", "-", "+", ".5", "nan", "inf", "12.5.5", "12 apples", "1e3", "0x10",
                             "12,5", "1234567890123456", "\xE2\x88\x92"}) {
        EXPECT_FALSE(cell_number(text, '.').has_value()) << text;
    }
}

TEST(BlankCell, SignsForNoValueAreNoFault) {
    for (const auto* text : {"", "  ", "-", "--", "---", "NaN", "N/A", "NULL", "None", "nil"}) {
        EXPECT_TRUE(is_blank_cell(text)) << text;
        const auto t = temperature_cell(text, '.', TemperatureScale::celsius);
        const auto h = humidity_cell(text, '.', HumidityScale::percent);
        EXPECT_FALSE(t.value.has_value() || t.fault.has_value()) << text;
        EXPECT_FALSE(h.value.has_value() || h.fault.has_value()) << text;
    }
    EXPECT_FALSE(is_blank_cell("0"));
    EXPECT_FALSE(is_blank_cell("----"));
}

TEST(TemperatureCell, ScalesAndTheRangeOfAir) {
    EXPECT_NEAR(temperature_cell("50", '.', TemperatureScale::fahrenheit).value->in_celsius(), 10,
                1e-9);
    EXPECT_NEAR(temperature_cell("283,15", ',', TemperatureScale::kelvin).value->in_celsius(), 10,
                1e-9);
    EXPECT_TRUE(temperature_cell("-60", '.', TemperatureScale::celsius).value.has_value());
    EXPECT_TRUE(temperature_cell("100", '.', TemperatureScale::celsius).value.has_value());
    for (const auto* text : {"-60.1", "100.1", "-127", "999"}) { // what broken probes report
        const auto cell = temperature_cell(text, '.', TemperatureScale::celsius);
        EXPECT_FALSE(cell.value.has_value()) << text;
        EXPECT_EQ(cell.fault, CellFault::out_of_range) << text;
    }
    EXPECT_EQ(temperature_cell("ERR", '.', TemperatureScale::celsius).fault,
              CellFault::not_a_number);
}

TEST(HumidityCell, ScalesAndTheRangeOfAHygrometer) {
    EXPECT_EQ(humidity_cell("75", '.', HumidityScale::percent).value,
              RelativeHumidity::percent(75));
    EXPECT_EQ(humidity_cell("0.75", '.', HumidityScale::fraction).value,
              RelativeHumidity::fraction(0.75));
    EXPECT_TRUE(humidity_cell("0", '.', HumidityScale::percent).value.has_value());
    EXPECT_TRUE(humidity_cell("109.9", '.', HumidityScale::percent).value.has_value());
    EXPECT_EQ(humidity_cell("-0.1", '.', HumidityScale::percent).fault, CellFault::out_of_range);
    EXPECT_EQ(humidity_cell("110.1", '.', HumidityScale::percent).fault, CellFault::out_of_range);
    EXPECT_EQ(humidity_cell("open", '.', HumidityScale::percent).fault, CellFault::not_a_number);
}

} // namespace
