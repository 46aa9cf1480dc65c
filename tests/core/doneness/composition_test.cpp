#include "core/doneness/composition.h"

#include <gtest/gtest.h>

namespace {

using namespace core::doneness;
using core::units::Instant;
using core::units::Mass;
using core::units::MassShare;
using core::units::WaterActivity;

EvidenceRequest loin(double net) {
    EvidenceRequest request{.now = Instant::from_unix_seconds(1000)};
    request.references.trimmed = Mass::grams(1000);
    request.fat = MassShare::percent(0);
    request.salt_dose = MassShare::percent(3);
    request.weights = {{Instant::from_unix_seconds(0), Mass::grams(net)}};
    return request;
}

// By hand: 1000 g lean with 74 % water, 3 % salt of which 95 % stays: solids 260 g, salt 28.5 g.
// At 650 g: water 361.5 g = 55.62 %; lean moisture the same; salt 4.385 %; in the water phase
// 28.5/390 = 7.308 %; m = 1.3490, aw of the solution 0.95464; X 1.3904 -> 0.97937; 0.9350.
TEST(Composition, LeanLoinByHand) {
    const auto c = composition_of(loin(650));
    ASSERT_TRUE(c.has_value());
    EXPECT_NEAR(c->water.best.in_percent(), 55.615, 0.001);
    EXPECT_NEAR(c->lean_moisture.best.in_percent(), 55.615, 0.001);
    EXPECT_NEAR(c->salt->best.in_percent(), 4.3846, 0.0001);
    EXPECT_NEAR(c->water_phase_salt->best.in_percent(), 7.3077, 0.0001);
    EXPECT_NEAR(c->water_activity->best.as_fraction(), 0.9350, 5e-4);
    EXPECT_FALSE(c->start_weight_estimated);
}

TEST(Composition, BoundsHoldTheBestAndAreNotPoints) {
    const auto c = composition_of(loin(650));
    EXPECT_LT(c->water.low, c->water.best);
    EXPECT_GT(c->water.high, c->water.best);
    EXPECT_LT(c->water_activity->low, c->water_activity->best);
    EXPECT_GT(c->water_activity->high, c->water_activity->best);
    // Raw moisture of 72.7 % instead of 74 % alone moves 13 g of 650: 2 points.
    EXPECT_GT((c->water.best - c->water.low).in_percent(), 1.9);
}

// Belly: half fat tissue. 1000 g: fat 500 g keeps its weight, lean solids 130 g, salt 28.5 g.
// At 750 g: lean water 91.5 g; lean moisture 91.5/(91.5 + 130 + salt in lean); salt in lean =
// 28.5 x 0.5/0.67 = 21.27 g, in fat 7.23 g.
TEST(Composition, FatIsSplitOff) {
    auto request = loin(750);
    request.fat = MassShare::percent(50);
    const auto c = composition_of(request);
    ASSERT_TRUE(c.has_value());
    EXPECT_NEAR(c->lean_moisture.best.in_percent(), 100 * 91.5 / (91.5 + 130 + 21.27), 0.01);
    EXPECT_NEAR(c->water.best.in_percent(), (91.5 + 75) / 7.5, 0.01);
    EXPECT_NEAR(c->water_phase_salt->best.in_percent(), 100 * 21.27 / (21.27 + 91.5), 0.02);
}

TEST(Composition, MeasuredValuesTakeThePlaceOfTheBalance) {
    auto request = loin(650);
    request.measured.moisture = MassShare::percent(50);
    request.measured.salt = MassShare::percent(6);
    const auto c = composition_of(request);
    EXPECT_NEAR(c->water.best.in_percent(), 50, 1e-9);
    EXPECT_NEAR(c->salt->best.in_percent(), 6, 1e-9);
    EXPECT_NEAR(c->water_phase_salt->best.in_percent(), 100 * 6 / 56.0, 1e-6);
}

TEST(Composition, StartFromHungWeightSaysSo) {
    auto request = loin(650);
    request.references = {};
    request.references.hung = Mass::grams(970);
    const auto c = composition_of(request);
    ASSERT_TRUE(c.has_value());
    EXPECT_TRUE(c->start_weight_estimated);
    EXPECT_NEAR(c->water.best.in_percent(), 55.615, 0.001); // 970 g is 1000 g less 3 %
}

TEST(Composition, WithoutSaltThereIsNoActivity) {
    auto request = loin(650);
    request.salt_dose.reset();
    const auto c = composition_of(request);
    ASSERT_TRUE(c.has_value());
    EXPECT_FALSE(c->water_activity.has_value());
    EXPECT_FALSE(c->salt.has_value());
}

TEST(Composition, NothingWithoutWeightsOrWhenTheyContradict) {
    auto request = loin(650);
    request.weights.clear();
    EXPECT_FALSE(composition_of(request).has_value());
    request = loin(650);
    request.references = {};
    EXPECT_FALSE(composition_of(request).has_value());
    EXPECT_FALSE(composition_of(loin(250)).has_value()); // less than its own solids
}

} // namespace
