// Moist air against (1) state points computed at 40 digits from the same ASHRAE relations,
// (2) the npm package psychrolib, an independent implementation of ASHRAE Fundamentals 2017,
// (3) values of the ASHRAE and Sonntag formulas themselves.
#include "core/air/moist_air.h"
#include "tests/support/csv_table.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::air::AirCondition;
using core::air::state_of;
using core::units::Length;
using core::units::Pressure;
using core::units::RelativeHumidity;
using core::units::Temperature;
using tests::support::CsvTable;

core::air::MoistAir state_at(const CsvTable& table, std::size_t row) {
    const auto air = state_of({Temperature::celsius(table.number(row, "t_C")),
                               RelativeHumidity::fraction(table.number(row, "RH")),
                               Pressure::pascals(table.number(row, "P_Pa"))});
    EXPECT_TRUE(air.has_value()) << "row " << row;
    return air.value();
}

void expect_relative(double found, double wanted, double tolerance, const std::string& what) {
    EXPECT_NEAR(found, wanted, tolerance * std::abs(wanted)) << what;
}

TEST(Psychrometrics, StatePointsOfTheSameRelations) {
    const auto table = CsvTable::reference("psychro_state_points.csv");
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto air = state_at(table, row);
        const std::string at = "row " + std::to_string(row) + " ";
        expect_relative(air.vapour_pressure.in_pascals(), table.number(row, "pw_Pa"), 1e-6,
                        at + "vapour pressure");
        expect_relative(air.humidity_ratio, table.number(row, "W"), 1e-6, at + "ratio");
        expect_relative(air.enthalpy, table.number(row, "h_kJ_kg"), 1e-6, at + "enthalpy");
        expect_relative(air.specific_volume, table.number(row, "v_m3_kg"), 1e-6, at + "volume");
        expect_relative(air.absolute_humidity, table.number(row, "abs_hum_g_m3"), 1e-6,
                        at + "absolute humidity");
        expect_relative(air.deficit.in_pascals(), table.number(row, "VPD_Pa"), 1e-6,
                        at + "deficit");
        // Printed to 1e-6 C.
        EXPECT_NEAR(air.dew_point.value().in_celsius(), table.number(row, "t_dew_C"), 1.1e-6) << at;
        EXPECT_NEAR(air.wet_bulb.value().in_celsius(), table.number(row, "t_wet_C"), 1.1e-6) << at;
    }
}

TEST(Psychrometrics, IndependentImplementation) {
    const auto table = CsvTable::reference("psychrolib_states.csv");
    ASSERT_GT(table.rows(), 400U);
    constexpr double aim = 1e-4;
    // The package stops its dew and wet-bulb iterations at steps of 0.001 C.
    constexpr double iteration = 0.0015;
    int two_bulbs = 0;
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto air = state_at(table, row);
        const std::string at = "row " + std::to_string(row) + " ";
        expect_relative(air.saturation_pressure.in_pascals(), table.number(row, "psat_Pa"), aim,
                        at + "saturation");
        expect_relative(air.vapour_pressure.in_pascals(), table.number(row, "pw_Pa"), aim, at);
        expect_relative(air.humidity_ratio, table.number(row, "W"), aim, at + "ratio");
        expect_relative(air.enthalpy, table.number(row, "h_kJ_kg"), aim, at + "enthalpy");
        expect_relative(air.specific_volume, table.number(row, "v_m3_kg"), aim, at + "volume");
        expect_relative(air.density, table.number(row, "rho_kg_m3"), aim, at + "density");
        expect_relative(air.deficit.in_pascals(), table.number(row, "VPD_Pa"), aim, at + "VPD");
        EXPECT_NEAR(air.dew_point.value().in_celsius(), table.number(row, "t_dew_C"), iteration)
            << at;
        const double wet = table.number(row, "t_wet_C");
        if (std::abs(air.wet_bulb.value().in_celsius() - wet) > iteration) {
            // Around 0 C air can have an ice bulb and a water bulb; the package returns whichever
            // its bisection meets. Its answer must then be a wet bulb of the same air for us too.
            ++two_bulbs;
            EXPECT_LT(std::abs(wet), 0.7) << at;
            const auto same = core::air::from_wet_bulb(
                air.condition.temperature, Temperature::celsius(wet), air.condition.pressure);
            ASSERT_TRUE(same.has_value()) << at;
            EXPECT_NEAR(same->humidity.as_fraction(), air.condition.humidity.as_fraction(), 1e-3)
                << at;
        }
    }
    EXPECT_LE(two_bulbs, 3);
}

TEST(Psychrometrics, InversesReturnTheCondition) {
    const auto table = CsvTable::reference("psychrolib_states.csv");
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const auto air = state_at(table, row);
        const double rh = air.condition.humidity.as_fraction();
        const auto t = air.condition.temperature;
        const auto total = air.condition.pressure;
        const auto by_dew = core::air::from_dew_point(t, *air.dew_point, total);
        const auto by_wet = core::air::from_wet_bulb(t, *air.wet_bulb, total);
        const auto by_ratio = core::air::from_humidity_ratio(t, air.humidity_ratio, total);
        ASSERT_TRUE(by_dew && by_wet && by_ratio) << "row " << row;
        // The ASHRAE ice and water curves part by 0.02 % at the triple point, so a dew point
        // exactly there can only be inverted that well.
        EXPECT_NEAR(by_dew->humidity.as_fraction(), rh, 3e-4 * rh) << "row " << row;
        EXPECT_NEAR(by_wet->humidity.as_fraction(), rh, 1e-3) << "row " << row;
        EXPECT_NEAR(by_ratio->humidity.as_fraction(), rh, 1e-12) << "row " << row;
    }
}

// Saturation pressures printed in ASHRAE Fundamentals 2017, ch. 1 table 3 (from memory):
// 0 C 611.2 Pa over ice, 20 C 2338.8 Pa, 100 C 101,419 Pa; and over ice at -20 C 103.24 Pa.
TEST(Psychrometrics, SaturationTable) {
    const auto at = [](double c) {
        return core::air::saturation_pressure(Temperature::celsius(c)).in_pascals();
    };
    EXPECT_NEAR(at(0), 611.2, 0.1);
    EXPECT_NEAR(at(20), 2338.8, 0.5);
    EXPECT_NEAR(at(100), 101419, 40);
    EXPECT_NEAR(at(-20), 103.24, 0.05);
}

// Two formulas fitted to different data agree within 0.1 % where meat is dried.
TEST(Psychrometrics, SonntagAgrees) {
    for (int c = -40; c <= 60; ++c) {
        const auto t = Temperature::celsius(c);
        const double ashrae = core::air::saturation_pressure(t).in_pascals();
        const double sonntag =
            core::air::saturation_pressure(t, core::air::SaturationFormula::sonntag).in_pascals();
        EXPECT_NEAR(sonntag / ashrae, 1, 1e-3) << c;
    }
}

// Standard atmosphere: 89,874.6 Pa at 1000 m (ICAO table 89,876 Pa).
TEST(Psychrometrics, PressureAtHeight) {
    EXPECT_DOUBLE_EQ(core::air::pressure_at_height(Length::metres(0)).in_pascals(), 101325);
    EXPECT_NEAR(core::air::pressure_at_height(Length::metres(1000)).in_pascals(), 89876, 5);
}

} // namespace
