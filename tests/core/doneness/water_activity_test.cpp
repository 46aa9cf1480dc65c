#include "core/doneness/salt_solution.h"
#include "core/doneness/water_activity.h"

#include <gtest/gtest.h>

namespace {

using namespace core::doneness;
using core::units::MassShare;

core::base::Interval<core::units::WaterActivity> product(double salt, double water,
                                                         double fat = 0) {
    const auto estimate = activity_of_product(MassShare::percent(salt), MassShare::percent(water),
                                              MassShare::percent(fat));
    EXPECT_TRUE(estimate.has_value());
    return *estimate;
}

bool holds(const core::base::Interval<core::units::WaterActivity>& interval, double value) {
    return interval.low.as_fraction() <= value && value <= interval.high.as_fraction();
}

// Published products inside the p10 to p90 range: raw pork about 0.99 (Handbook of Meat
// Processing p. 221; 74 % water), pastirma 0.88 with 4.5 % salt (FAO text; its moisture of 38 to
// 42 % from memory), country ham 0.85 to 0.91 with 5 to 8 % salt (Hanson et al.; moisture about
// 50 % from memory).
TEST(WaterActivity, PublishedProducts) {
    EXPECT_NEAR(product(0, 74).best.as_fraction(), 0.99, 0.005);
    EXPECT_TRUE(holds(product(4.5, 40), 0.88));
    const auto ham = product(6.5, 50);
    EXPECT_GT(ham.best.as_fraction(), 0.85);
    EXPECT_LT(ham.best.as_fraction(), 0.915);
}

// By hand: 4.5 % salt and 45 % water, no fat: m = 4.5/45/0.0584428 = 1.7111, phi 0.96866 ->
// 0.94202; X = 45/50.5 = 0.89109, exp(-0.035 x 0.89109^-1.575) = 0.95886 -> 0.9033.
TEST(WaterActivity, ByHand) {
    EXPECT_NEAR(salt_solution_activity(1.7111).as_fraction(), 0.94202, 3e-4);
    EXPECT_NEAR(product(4.5, 45).best.as_fraction(), 0.9033, 4e-4);
}

// Unsalted pork, from memory: X 0.42 at 0.90 and 0.22 at 0.75.
TEST(WaterActivity, IsothermOfUnsaltedPork) {
    const auto at = [](double x) { return estimated_activity({x, 0, 1}); };
    EXPECT_NEAR(at(0.42).as_fraction(), 0.90, 0.03);
    EXPECT_NEAR(at(0.22).as_fraction(), 0.75, 0.08);
}

// Fat takes room, not water: the same lean with fat around it has the same activity.
TEST(WaterActivity, FatIsLeftOut) {
    const double lean_alone = product(6, 50).best.as_fraction();
    // 60 % lean of that kind + 40 % fat tissue (15 % water, 0.34 of the lean's salt).
    const double salt = 6 * 0.6 + 0.34 * 6 * 0.4;
    const double water = 50 * 0.6 + 15 * 0.4;
    EXPECT_NEAR(product(salt, water, 40).best.as_fraction(), lean_alone, 1e-9);
}

TEST(WaterActivity, RefusesCompositionsThatCannotBe) {
    EXPECT_FALSE(activity_of_product(MassShare::percent(5), MassShare::percent(0)).has_value());
    EXPECT_FALSE(activity_of_product(MassShare::percent(30), MassShare::percent(80)).has_value());
    EXPECT_FALSE(
        activity_of_product(MassShare::percent(5), MassShare::percent(10), MassShare::percent(80))
            .has_value());
}

} // namespace
