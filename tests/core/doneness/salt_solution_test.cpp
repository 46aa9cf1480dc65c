#include "core/doneness/salt_solution.h"

#include <gtest/gtest.h>

namespace {

using namespace core::doneness;
using core::units::MassShare;
using core::units::WaterActivity;

TEST(SaltSolution, PureWaterAndSaturation) {
    EXPECT_EQ(salt_solution_activity(0).as_fraction(), 1);
    EXPECT_EQ(salt_solution_activity(-1).as_fraction(), 1);
    EXPECT_EQ(salt_solution_activity(9), salt_solution_activity(saturated_molality));
    EXPECT_DOUBLE_EQ(osmotic_coefficient(0), 1);
}

// Dilute limit: Raoult with two ions, aw = 1 - 2 m Mw.
TEST(SaltSolution, DiluteLimitIsRaoult) {
    EXPECT_NEAR(1 - salt_solution_activity(1e-6).as_fraction(), 2e-6 * molar_mass_water, 1e-10);
}

TEST(SaltSolution, MolalityIsFoundBack) {
    for (const double m : {0.1, 1.0, 3.3, 6.0}) {
        EXPECT_NEAR(molality_at(salt_solution_activity(m)).value(), m, 1e-9);
    }
    EXPECT_FALSE(molality_at(WaterActivity::fraction(0.7)).has_value());
    EXPECT_FALSE(molality_at(WaterActivity::fraction(1.1)).has_value());
}

// Salt 3.5 %, moisture 40 % -> 8.05 % (FSRE Shelf-Stable training text's formula, by hand).
TEST(WaterPhaseSalt, WorkedExample) {
    EXPECT_NEAR(water_phase_salt(MassShare::percent(3.5), MassShare::percent(40))->in_percent(),
                8.05, 0.005);
    EXPECT_FALSE(water_phase_salt(MassShare::percent(0), MassShare::percent(0)).has_value());
}

} // namespace
