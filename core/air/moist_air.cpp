#include "core/air/moist_air.h"

#include "core/numeric/root.h"

#include <cmath>

namespace core::air {

namespace {

// ASHRAE Fundamentals 2017, ch. 1.
constexpr double vapour_to_air_mass = 0.621945;  // ratio of molar masses, eq. 20
constexpr double dry_air_gas_constant = 287.042; // J/(kg K), eq. 1
constexpr double vapour_gas_constant = 461.5;    // J/(kg K)
constexpr double volume_factor = 1.607858;       // eq. 26
constexpr double air_heat = 1.006;               // kJ/(kg K), eq. 30
constexpr double vapour_heat = 1.86;
constexpr double evaporation_heat = 2501; // kJ/kg at 0 C

double celsius(units::Temperature t) {
    return t.in_celsius();
}

/// The humidity ratio of air at `t` over a wet bulb at `wet` (eq. 33, below 0 C eq. 35).
double ratio_at_wet_bulb(units::Temperature t, units::Temperature wet, units::Pressure total) {
    const double saturated = humidity_ratio(saturation_pressure(wet), total);
    const double step = celsius(t) - celsius(wet);
    if (celsius(wet) >= 0) {
        return ((evaporation_heat - 2.326 * celsius(wet)) * saturated - air_heat * step) /
               (evaporation_heat + vapour_heat * celsius(t) - 4.186 * celsius(wet));
    }
    return ((2830 - 0.24 * celsius(wet)) * saturated - air_heat * step) /
           (2830 + vapour_heat * celsius(t) - 2.1 * celsius(wet));
}

std::optional<units::Temperature> wet_bulb_of(const MoistAir& air) {
    if (air.condition.humidity.as_fraction() >= 1) {
        return air.condition.temperature;
    }
    const auto gap = [&air](double kelvins) {
        return ratio_at_wet_bulb(air.condition.temperature, units::Temperature::kelvins(kelvins),
                                 air.condition.pressure) -
               air.humidity_ratio;
    };
    double low = air.dew_point.value_or(lowest_saturation).in_kelvins();
    double high = air.condition.temperature.in_kelvins();
    // Melting heat makes the curve step down at 0 C, so a narrow range of air has two answers, an
    // ice bulb just below 0 and a water bulb just above (up to 0.6 C apart). The water bulb is
    // taken, so that the answer does not depend on how it is searched for.
    const double zero = units::Temperature::celsius(0).in_kelvins();
    if (low < zero && high > zero) {
        (gap(zero) <= 0 ? low : high) = zero;
    }
    if (high == zero) {
        high = std::nextafter(zero, 0.0); // stay on the ice branch
    }
    const auto root = numeric::find_root(gap, low, high, 1e-14);
    return root ? std::optional(units::Temperature::kelvins(*root)) : std::nullopt;
}

bool in_range(units::Temperature t) {
    return t >= lowest_saturation && t <= highest_saturation;
}

base::Result<AirCondition> from_vapour(units::Temperature t, units::Pressure vapour,
                                       units::Pressure total, const char* field) {
    if (!in_range(t)) {
        return base::fault(base::ErrorCode::out_of_range, "temperature", "temperature");
    }
    const double rh = vapour / saturation_pressure(t);
    // A hair above saturation is rounding of an inverse, not supersaturation.
    constexpr double rounding = 1e-9;
    if (!(rh >= -rounding) || rh > 1 + rounding || !(vapour < total)) {
        return base::fault(base::ErrorCode::out_of_range, field, field);
    }
    return AirCondition{t, units::RelativeHumidity::fraction(std::fmin(std::fmax(rh, 0.0), 1.0)),
                        total};
}

} // namespace

units::Pressure vapour_pressure(units::Temperature t, units::RelativeHumidity rh) {
    return saturation_pressure(t) * rh.as_fraction();
}

double humidity_ratio(units::Pressure vapour, units::Pressure total) {
    return vapour_to_air_mass * (vapour / (total - vapour));
}

base::Result<MoistAir> state_of(const AirCondition& condition) {
    const auto [t, rh, total] = condition;
    if (!t.is_finite() || !in_range(t)) {
        return base::fault(base::ErrorCode::out_of_range, "temperature", "temperature");
    }
    if (!(rh.as_fraction() >= 0 && rh.as_fraction() <= 1)) {
        return base::fault(base::ErrorCode::out_of_range, "humidity", "humidity");
    }
    const auto saturated = saturation_pressure(t);
    const auto vapour = saturated * rh.as_fraction();
    if (!total.is_finite() || !(total > vapour)) {
        return base::fault(base::ErrorCode::out_of_range, "pressure", "pressure");
    }
    MoistAir air{condition, vapour, saturated, saturated - vapour};
    air.humidity_ratio = humidity_ratio(vapour, total);
    air.absolute_humidity = 1000 * vapour.in_pascals() / (vapour_gas_constant * t.in_kelvins());
    air.enthalpy =
        air_heat * celsius(t) + air.humidity_ratio * (evaporation_heat + vapour_heat * celsius(t));
    air.specific_volume = dry_air_gas_constant * t.in_kelvins() *
                          (1 + volume_factor * air.humidity_ratio) / total.in_pascals();
    air.density = (1 + air.humidity_ratio) / air.specific_volume;
    if (const auto dew = dew_point(vapour)) {
        air.dew_point = *dew;
    }
    air.wet_bulb = wet_bulb_of(air);
    return air;
}

base::Result<AirCondition> from_dew_point(units::Temperature t, units::Temperature dew,
                                          units::Pressure pressure) {
    if (!in_range(dew)) {
        return base::fault(base::ErrorCode::out_of_range, "dew point", "dew point");
    }
    return from_vapour(t, saturation_pressure(dew), pressure, "dew point");
}

base::Result<AirCondition> from_humidity_ratio(units::Temperature t, double kg_per_kg,
                                               units::Pressure pressure) {
    if (!std::isfinite(kg_per_kg) || kg_per_kg < 0) {
        return base::fault(base::ErrorCode::out_of_range, "humidity ratio", "humidity ratio");
    }
    return from_vapour(t, pressure * (kg_per_kg / (vapour_to_air_mass + kg_per_kg)), pressure,
                       "humidity ratio");
}

base::Result<AirCondition> from_wet_bulb(units::Temperature t, units::Temperature wet_bulb,
                                         units::Pressure pressure) {
    if (!in_range(t)) {
        return base::fault(base::ErrorCode::out_of_range, "temperature", "temperature");
    }
    if (!in_range(wet_bulb) || wet_bulb > t) {
        return base::fault(base::ErrorCode::out_of_range, "wet bulb", "wet bulb");
    }
    auto air = from_humidity_ratio(t, ratio_at_wet_bulb(t, wet_bulb, pressure), pressure);
    if (!air) {
        return base::fault(base::ErrorCode::out_of_range, "wet bulb", "wet bulb");
    }
    return air;
}

base::Result<AirCondition> at_other_temperature(const AirCondition& air, units::Temperature t) {
    return from_vapour(t, vapour_pressure(air.temperature, air.humidity), air.pressure,
                       "temperature");
}

units::Pressure pressure_at_height(units::Length height) {
    return units::Pressure::standard_atmosphere() *
           std::pow(1 - 2.25577e-5 * height.in_metres(), 5.2559);
}

} // namespace core::air
