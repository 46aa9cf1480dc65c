#include "core/doneness/exposure.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using namespace core::doneness;
using core::base::Interval;
using core::units::Duration;
using core::units::Temperature;
using core::units::WaterActivity;

Interval<WaterActivity> activity(double low, double high) {
    return {WaterActivity::fraction(low), WaterActivity::fraction((low + high) / 2),
            WaterActivity::fraction(high)};
}

const OrganismExposure& of(const std::vector<OrganismExposure>& all, const std::string& id) {
    for (const auto& exposure : all) {
        if (exposure.id == id) {
            return exposure;
        }
    }
    throw std::runtime_error("no exposure of " + id);
}

const auto hurdles = core::facts::built_in_hurdles();

// Cardinal model of Medvedova 2019 (2064): 1 at its optimum, 0 at and outside its bounds.
TEST(Staphylococcus, CardinalPoints) {
    const auto best = WaterActivity::fraction(0.994);
    EXPECT_NEAR(staphylococcus_relative_rate(Temperature::celsius(40.6), best), 1, 1e-12);
    EXPECT_EQ(staphylococcus_relative_rate(Temperature::celsius(7.7), best), 0);
    EXPECT_EQ(staphylococcus_relative_rate(Temperature::celsius(47), best), 0);
    EXPECT_EQ(staphylococcus_relative_rate(Temperature::celsius(30), WaterActivity::fraction(0.80)),
              0);
    // By hand at 25 C: (25-46.7)(17.3)^2 / (32.9 (32.9 x -15.6 - (-6.1)(40.6+7.7-50)))
    // = -6494.6 / (32.9 x (-513.24 - 10.37)) = 0.3770.
    EXPECT_NEAR(staphylococcus_relative_rate(Temperature::celsius(25), best), 0.3770, 0.0005);
}

// Square-root model: 4.5 times as fast at 12 C as at 5 C: (13.18/6.18)^2 = 4.548.
TEST(Listeria, SquareRootModel) {
    EXPECT_NEAR(listeria_rate_relative_to_5c(Temperature::celsius(5)), 1, 1e-12);
    EXPECT_NEAR(listeria_rate_relative_to_5c(Temperature::celsius(12)), 4.548, 0.001);
    EXPECT_EQ(listeria_rate_relative_to_5c(Temperature::celsius(-2)), 0);
}

TEST(Exposure, CountsTimeInRangeByTheWetEnd) {
    const auto exposure =
        exposure_of({{Duration::hours(6), Temperature::celsius(30), {}},
                     {Duration::hours(5), Temperature::celsius(30), activity(0.83, 0.855)},
                     {Duration::hours(4), Temperature::celsius(30), activity(0.83, 0.87)},
                     {Duration::hours(9), Temperature::celsius(5), {}}},
                    hurdles);
    EXPECT_EQ(of(exposure, "staphylococcus_aureus").in_range, Duration::hours(10));
    EXPECT_EQ(of(exposure, "listeria_monocytogenes").in_range, Duration::hours(15));
    EXPECT_EQ(of(exposure, "clostridium_botulinum_ab").in_range, Duration::hours(6));
    EXPECT_FALSE(of(exposure, "salmonella").relative_rate.has_value());
}

// Six hours at 40 C, wet: S. aureus near its best: 1.97/ln 10 x 6 = 5.1 log10 at most.
TEST(Exposure, GrowthPossible) {
    const auto exposure =
        exposure_of({{Duration::hours(6), Temperature::celsius(40.6), {}}}, hurdles);
    const auto& staph = of(exposure, "staphylococcus_aureus");
    EXPECT_NEAR(staph.relative_rate.value(), 1, 1e-9);
    EXPECT_NEAR(staph.log10_possible.value(), 1.97 / std::log(10.0) * 6, 1e-9);
    const auto weeks = exposure_of({{Duration::weeks(6), Temperature::celsius(13), {}}}, hurdles);
    EXPECT_FALSE(of(weeks, "staphylococcus_aureus").log10_possible.has_value());
    EXPECT_TRUE(of(weeks, "staphylococcus_aureus").relative_rate.has_value());
}

} // namespace
