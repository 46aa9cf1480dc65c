// Laws that hold for any air: monotone, bounded, invertible.
#include "core/air/film.h"
#include "core/air/moist_air.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace {

using namespace core::air;
using core::units::RelativeHumidity;
using core::units::Temperature;
using core::units::WaterActivity;

/// A whole number of steps keeps shrunk counterexamples readable.
double between(double low, double high) {
    constexpr int steps = 100000;
    return low + (high - low) * *rc::gen::inRange(0, steps + 1) / steps;
}

AirCondition any_air() {
    return {Temperature::celsius(between(-30, 60)), RelativeHumidity::percent(between(1, 100))};
}

RC_GTEST_PROP(Air, WetBulbLiesBetweenDewPointAndAir, ()) {
    const auto air = state_of(any_air()).value();
    RC_ASSERT(air.dew_point->in_celsius() <= air.wet_bulb->in_celsius() + 1e-9);
    RC_ASSERT(*air.wet_bulb <= air.condition.temperature);
}

RC_GTEST_PROP(Air, SaturationRisesWithTemperature, ()) {
    const double a = between(-90, 190);
    const double step = between(0.01, 10);
    RC_ASSERT(saturation_pressure(Temperature::celsius(a)) <
              saturation_pressure(Temperature::celsius(a + step)));
}

RC_GTEST_PROP(Air, DewPointDependsOnTheVapourOnly, ()) {
    const auto air = any_air();
    const auto warmer = at_other_temperature(
        air, air.temperature + core::units::TemperatureStep::kelvins(between(0, 30)));
    RC_ASSERT(warmer.has_value());
    const double before = state_of(air)->dew_point->in_celsius();
    RC_ASSERT(std::abs(state_of(*warmer)->dew_point->in_celsius() - before) < 1e-6);
    RC_ASSERT(warmer->humidity <= air.humidity + RelativeHumidity::percent(1e-9));
}

RC_GTEST_PROP(Air, HumidityRatioInverts, ()) {
    const auto air = state_of(any_air()).value();
    const auto back = from_humidity_ratio(air.condition.temperature, air.humidity_ratio);
    RC_ASSERT(back.has_value());
    RC_ASSERT(std::abs(back->humidity.as_fraction() - air.condition.humidity.as_fraction()) <
              1e-12);
}

RC_GTEST_PROP(Air, DrierAirDrawsMoreWater, ()) {
    const auto t = Temperature::celsius(between(0, 40));
    const double rh = between(5, 90);
    const auto wet = WaterActivity::fraction(0.97);
    const auto flux = [&](double percent) {
        return evaporation_flux({6}, {t, RelativeHumidity::percent(percent)}, wet);
    };
    RC_ASSERT(flux(rh) > flux(rh + between(0.1, 5)));
}

} // namespace
