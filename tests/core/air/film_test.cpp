#include "core/air/film.h"

#include <gtest/gtest.h>

namespace {

using namespace core::air;
using core::units::RelativeHumidity;
using core::units::Temperature;
using core::units::WaterActivity;

const AirCondition chamber{Temperature::celsius(13), RelativeHumidity::percent(75)};
constexpr double per_day = 86400.0 * 1000.0; // kg/(m2 s) -> g/(m2 d)

// Worked by hand from the definition: rho 101325/(287.042 x 286.15) = 1.2336, cp 1006,
// Le^(2/3) 0.9114 -> 4.42e-3 m/s; force 0.22 x 1497.81 = 329.5 Pa over 461.5 x 286.15
// -> 1.103e-5 kg/m2s = 953 g/m2d. h = 3 and 9.11 scale with h.
TEST(Film, WorkedExample) {
    EXPECT_NEAR(film_mass_transfer({5}, chamber), 4.42e-3, 0.005e-3);
    const auto surface = WaterActivity::fraction(0.97);
    EXPECT_NEAR(evaporation_flux({5}, chamber, surface) * per_day, 953, 1);
    EXPECT_NEAR(evaporation_flux({3}, chamber, surface) * per_day, 572, 1);
    EXPECT_NEAR(evaporation_flux({9.11}, chamber, surface) * per_day, 1737, 1);
}

TEST(Film, NoForceNoFluxAndUptakeFromWetAir) {
    EXPECT_EQ(evaporation_flux({5}, chamber, WaterActivity::fraction(0.75)), 0);
    EXPECT_LT(evaporation_flux({5}, chamber, WaterActivity::fraction(0.70)), 0);
}

} // namespace
