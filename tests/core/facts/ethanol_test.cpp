#include "core/facts/ethanol.h"

#include <gtest/gtest.h>

namespace {

using namespace core::facts;
using core::units::AlcoholByVolume;
using core::units::MassShare;

// Council Directive 76/766/EEC annex (OIML R 22) at 20 C; the table of densities and mass shares
// computed from it, limits.md section 4.
TEST(Ethanol, DensityToAHundredthOfAKilogram) {
    const struct {
        double abv, density, mass_percent;
    } rows[] = {{15, 978.97, 12.09}, {20, 973.56, 16.21},    {40, 948.05, 33.30},
                {50, 930.14, 42.43}, {57.15, 915.38, 49.28}, {96, 807.42, 93.84},
                {100, 789.24, 100}};
    for (const auto& row : rows) {
        const auto abv = AlcoholByVolume::percent(row.abv);
        // Half of the table's last digit, and the slack of comparing doubles with it.
        EXPECT_NEAR(ethanol_density(abv).in_kilograms_per_cubic_metre(), row.density, 0.005001)
            << row.abv;
        // The 57.15 row was rounded from rounded figures: 49.2749 is given as 49.28.
        EXPECT_NEAR(ethanol_mass_share(abv).in_percent(), row.mass_percent, 0.0052) << row.abv;
    }
}

// OIML R 22: water at 20 C is 998.201 kg/m3, pure ethanol 789.24 kg/m3.
TEST(Ethanol, EndsAreWaterAndPureEthanol) {
    EXPECT_NEAR(ethanol_density(AlcoholByVolume::percent(0)).in_kilograms_per_cubic_metre(),
                998.20123, 1e-9);
    EXPECT_NEAR(ethanol_density(AlcoholByVolume::percent(100)).in_kilograms_per_cubic_metre(),
                789.24, 0.005);
    EXPECT_NEAR(ethanol_mass_share(AlcoholByVolume::percent(0)).as_fraction(), 0, 1e-15);
}

TEST(Ethanol, OutOfRangeStrengthsStayAtTheEnds) {
    EXPECT_NEAR(ethanol_mass_share(AlcoholByVolume::percent(120)).as_fraction(), 1, 1e-12);
    EXPECT_NEAR(ethanol_mass_share(AlcoholByVolume::percent(-5)).as_fraction(), 0, 1e-12);
}

TEST(Ethanol, StrengthAndMassShareUndoEachOther) {
    for (double percent = 0; percent <= 100; percent += 2.5) {
        const auto abv = AlcoholByVolume::percent(percent);
        EXPECT_NEAR(alcohol_by_volume(ethanol_mass_share(abv)).in_percent(), percent, 1e-9);
    }
}

// limits.md section 9, vectors 17 and 18: 40 % is US proof 80 and UK proof 70; 57.15 % is UK
// proof 100.01. British proof spirit is 49.28 % by weight.
TEST(Ethanol, ProofOfBothCountries) {
    EXPECT_DOUBLE_EQ(AlcoholByVolume::percent(40).in_us_proof(), 80);
    EXPECT_DOUBLE_EQ(AlcoholByVolume::percent(40).in_uk_proof(), 70);
    EXPECT_NEAR(AlcoholByVolume::percent(57.15).in_uk_proof(), 100.01, 0.005);
}

} // namespace
