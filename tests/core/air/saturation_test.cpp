#include "core/air/saturation.h"

#include <gtest/gtest.h>

namespace {

using core::air::dew_point;
using core::air::Over;
using core::air::saturation_pressure;
using core::air::SaturationFormula;
using core::base::ErrorCode;
using core::units::Pressure;
using core::units::Temperature;

TEST(Saturation, IceBelowTheTriplePointWaterAbove) {
    const auto cold = Temperature::celsius(-10);
    EXPECT_EQ(saturation_pressure(cold),
              saturation_pressure(cold, Over::ice, SaturationFormula::ashrae));
    // Supercooled water holds more vapour than ice: 286.5 against 259.9 Pa at -10 C (WMO tables,
    // from memory).
    EXPECT_NEAR(saturation_pressure(cold, Over::water, SaturationFormula::sonntag).in_pascals(),
                286.5, 0.3);
    EXPECT_NEAR(saturation_pressure(cold).in_pascals(), 259.9, 0.3);
}

// 13 C, 75 %: the worked point of tests/reference/data/psychro_state_points.csv.
TEST(DewPoint, WorkedPoint) {
    EXPECT_NEAR(dew_point(Pressure::pascals(1123.3581)).value().in_celsius(), 8.677716, 1e-6);
}

TEST(DewPoint, FrostPointBelowZero) {
    const auto frost = dew_point(Pressure::pascals(564.7636));
    EXPECT_NEAR(frost.value().in_celsius(), -0.955258, 2e-6);
}

TEST(DewPoint, InvertsBothFormulas) {
    for (const auto formula : {SaturationFormula::ashrae, SaturationFormula::sonntag}) {
        for (double c = -60; c <= 80; c += 3.7) {
            const auto t = Temperature::celsius(c);
            EXPECT_NEAR(dew_point(saturation_pressure(t, formula), formula).value().in_celsius(), c,
                        1e-9);
        }
    }
}

TEST(DewPoint, DryAirHasNone) {
    EXPECT_EQ(dew_point(Pressure::pascals(0)).error().code, ErrorCode::out_of_range);
    EXPECT_EQ(dew_point(Pressure::pascals(-1)).error().code, ErrorCode::out_of_range);
    EXPECT_EQ(dew_point(Pressure::pascals(1e9)).error().code, ErrorCode::out_of_range);
}

} // namespace
