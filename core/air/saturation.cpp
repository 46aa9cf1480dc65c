#include "core/air/saturation.h"

#include "core/numeric/root.h"

#include <cmath>

namespace core::air {

namespace {

double ashrae_ice(double t) {
    return std::exp(
        -5674.5359 / t + 6.3925247 +
        t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 + t * -9.484024e-13))) +
        4.1635019 * std::log(t));
}

double ashrae_water(double t) {
    return std::exp(-5800.2206 / t + 1.3914993 +
                    t * (-4.8640239e-2 + t * (4.1764768e-5 + t * -1.4452093e-8)) +
                    6.5459673 * std::log(t));
}

double sonntag_ice(double t) {
    return std::exp(-6024.5282 / t + 29.32707 + t * (1.0613868e-2 + t * -1.3198825e-5) -
                    0.49382577 * std::log(t));
}

double sonntag_water(double t) {
    return std::exp(-6096.9385 / t + 21.2409642 + t * (-2.711193e-2 + t * 1.673952e-5) +
                    2.433502 * std::log(t));
}

} // namespace

units::Pressure saturation_pressure(units::Temperature t, Over over, SaturationFormula formula) {
    const double kelvins = t.in_kelvins();
    if (formula == SaturationFormula::ashrae) {
        return units::Pressure::pascals(over == Over::ice ? ashrae_ice(kelvins)
                                                          : ashrae_water(kelvins));
    }
    return units::Pressure::pascals(over == Over::ice ? sonntag_ice(kelvins)
                                                      : sonntag_water(kelvins));
}

units::Pressure saturation_pressure(units::Temperature t, SaturationFormula formula) {
    return saturation_pressure(t, t <= triple_point ? Over::ice : Over::water, formula);
}

base::Result<units::Temperature> dew_point(units::Pressure vapour, SaturationFormula formula) {
    const double wanted = std::log(vapour.in_pascals());
    // In logarithms the curve is almost straight in 1/T, which Brent's method likes.
    const auto gap = [wanted, formula](double kelvins) {
        return std::log(saturation_pressure(units::Temperature::kelvins(kelvins), formula)
                            .in_pascals()) -
               wanted;
    };
    if (!(vapour.in_pascals() > 0)) {
        return base::fault(base::ErrorCode::out_of_range, "vapour pressure");
    }
    const auto root =
        numeric::find_root(gap, lowest_saturation.in_kelvins(), highest_saturation.in_kelvins());
    if (!root) {
        return base::fault(base::ErrorCode::out_of_range, "vapour pressure");
    }
    return units::Temperature::kelvins(*root);
}

} // namespace core::air
