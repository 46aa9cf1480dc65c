#include "core/uptake/cure_checks.h"
#include "core/uptake/cure_time.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

namespace {

using namespace core::uptake;
using core::model::Form;
using core::model::Severity;
using core::model::SkinSide;
using core::units::Duration;
using core::units::Length;
using core::units::Mass;
using core::units::MassShare;
using core::units::Temperature;

CureRequest belly() {
    CureRequest request{.thickness = Length::millimetres(50)};
    request.temperature = Temperature::celsius(5);
    return request;
}

bool has(const CureEstimate& estimate, const std::string& code) {
    return std::any_of(estimate.findings.begin(), estimate.findings.end(),
                       [&](const auto& finding) { return finding.code == code; });
}

// By hand: a dry rub without juice on a 5 cm slab at 5 C: Fo = ln 20 / pi^2 = 0.30353;
// l^2/D = 0.000625/2.5e-10 s = 28.935 d -> 8.783 d. p10 and p90 by 2.5/4.231 and back.
TEST(EstimateCure, DryRubByHand) {
    auto request = belly();
    request.outside_water = MassShare::percent(0);
    const auto estimate = estimate_cure(request);
    ASSERT_TRUE(estimate.even.has_value());
    EXPECT_NEAR(estimate.even->best.in_days(), 8.783, 0.005);
    EXPECT_NEAR(estimate.even->low.in_days(), 8.783 * 2.5 / 4.231, 0.01);
    EXPECT_NEAR(estimate.even->high.in_days(), 8.783 * 4.231 / 2.5, 0.02);
    EXPECT_EQ(estimate.salt_in->best.in_days(), 0);
    EXPECT_DOUBLE_EQ(estimate.final_mean.in_percent(), 2.75);
}

TEST(EstimateCure, SkinOnOneSideTakesFourTimesAsLong) {
    auto request = belly();
    const double open = estimate_cure(request).even->best.in_days();
    request.skin = SkinSide::one_side;
    EXPECT_NEAR(estimate_cure(request).even->best.in_days() / open, 4, 1e-6);
}

// Juice in the bag keeps its share: 3 % water outside against 74 % inside -> 1/(1 + 0.0405).
TEST(EstimateCure, JuiceKeepsItsShare) {
    const auto estimate = estimate_cure(belly());
    EXPECT_NEAR(estimate.final_mean.in_percent(), 2.75 / (1 + 0.03 / 0.74), 1e-9);
    EXPECT_GT(estimate.salt_in->best.in_days(), 0.5);
    EXPECT_LT(estimate.salt_in->best, estimate.even->best);
}

// A 10 kg leg, open on the lean side only, about 15 cm deep, ten days in salt: about 2.9 % by the
// square root of time (hand: Fo = 2.5e-10 x 864000 / 0.0225 = 0.0096, 2 sqrt(Fo/pi) = 0.1106,
// saturated water 0.74 x 0.263/0.737 = 26.41 % -> 2.92 %).
TEST(EstimateCure, ExcessSaltOnALeg) {
    auto request = belly();
    request.thickness = Length::millimetres(150);
    request.skin = SkinSide::one_side;
    request.method = CureMethod::excess_salt;
    request.salt = MassShare::percent(2.92);
    const auto estimate = estimate_cure(request);
    ASSERT_TRUE(estimate.salt_in.has_value());
    EXPECT_NEAR(estimate.salt_in->best.in_days(), 10, 0.05);
    ASSERT_TRUE(estimate.even.has_value());
    EXPECT_GT(estimate.even->best, 10 * estimate.salt_in->best);
}

TEST(EstimateCure, CurveRisesToTheEndAndHoldsItsOrder) {
    for (const auto method :
         {CureMethod::weighed, CureMethod::excess_salt, CureMethod::immersion}) {
        auto request = belly();
        request.method = method;
        const auto estimate = estimate_cure(request);
        ASSERT_GT(estimate.curve.size(), 50U);
        const auto& first = estimate.curve.front();
        const auto& last = estimate.curve.back();
        EXPECT_EQ(first.mean.best.in_percent(), 0);
        EXPECT_NEAR(last.mean.best / estimate.final_mean, 1, 0.06);
        EXPECT_GE(last.centre.best / last.mean.best, 0.9);
        for (const auto& point : estimate.curve) {
            EXPECT_LE(point.centre.low, point.centre.best + MassShare::ppm(1));
            EXPECT_LE(point.centre.best, point.centre.high + MassShare::ppm(1));
            EXPECT_LE(point.centre.best, point.mean.best * 1.001 + MassShare::ppm(1));
        }
    }
}

TEST(EstimateCure, FrozenTimeIsAdded) {
    auto request = belly();
    const double plain = estimate_cure(request).even->best.in_days();
    request.spells = {{Duration::days(3), Temperature::celsius(5)},
                      {Duration::days(10), Temperature::celsius(5), true}};
    const auto paused = estimate_cure(request);
    EXPECT_NEAR(paused.even->best.in_days(), plain + 10, 1e-6);
    EXPECT_TRUE(has(paused, "cure_paused_frozen"));
    request.temperature = Temperature::celsius(-18);
    const auto frozen = estimate_cure(request);
    EXPECT_FALSE(frozen.even.has_value());
    EXPECT_TRUE(has(frozen, "still_frozen"));
}

TEST(EstimateCure, RulesDisagreeAndAreSetBesideDiffusion) {
    auto request = belly();
    request.weight = Mass::kilograms(2);
    const auto estimate = estimate_cure(request);
    EXPECT_TRUE(has(estimate, "cure_rules_disagree")); // 6 to 14 days
    EXPECT_FALSE(has(estimate, "rule_far_from_diffusion"));
    EXPECT_GE(estimate.rules.size(), 10U);
    request.thickness = Length::millimetres(160);
    EXPECT_TRUE(has(estimate_cure(request), "rule_far_from_diffusion"));
}

TEST(EstimateCure, CatchesARuleOfTheWrongMethod) {
    auto request = belly();
    request.planned = Duration::days(2);
    request.planned_rule = "one_day_a_kilogram";
    const auto estimate = estimate_cure(request);
    EXPECT_TRUE(has(estimate, "rule_of_other_method"));
    EXPECT_TRUE(has(estimate, "planned_shorter_than_even"));
    ASSERT_TRUE(estimate.centre_after_planned.has_value());
    EXPECT_LT(estimate.centre_after_planned->best, 0.5);
    request.planned_rule = "half_inch_plus_two";
    EXPECT_FALSE(has(estimate_cure(request), "rule_of_other_method"));
}

TEST(EstimateCure, TooLongExistsOnlyInExcessSalt) {
    auto request = belly();
    request.planned = Duration::days(60);
    EXPECT_FALSE(has(estimate_cure(request), "planned_longer_than_wanted"));
    request.method = CureMethod::excess_salt;
    EXPECT_TRUE(has(estimate_cure(request), "planned_longer_than_wanted"));
}

TEST(EstimateCure, TemperatureIsCheckedAgainstTheFarmBulletin) {
    auto request = belly();
    EXPECT_FALSE(has(estimate_cure(request), "cure_too_warm"));
    request.temperature = Temperature::celsius(6);
    EXPECT_TRUE(has(estimate_cure(request), "cure_too_warm"));
    request.temperature = Temperature::celsius(1);
    EXPECT_TRUE(has(estimate_cure(request), "cure_too_cold"));
}

TEST(EstimateCure, FatThinsWhatTheLeanHolds) {
    auto request = belly();
    request.fat = MassShare::percent(50);
    request.outside_water = MassShare::percent(0);
    const auto estimate = estimate_cure(request);
    // 2.75 % of the whole = x (0.5 + 0.34 x 0.5) -> 4.10 % of the lean.
    EXPECT_NEAR(estimate.final_in_lean->best.in_percent(), 2.75 / 0.67, 1e-9);
    EXPECT_TRUE(has(estimate, "fat_slows_and_thins"));
}

TEST(EstimateCure, AllBadPartsAreNamedAtOnce) {
    CureRequest request{.thickness = Length::millimetres(0)};
    request.salt = MassShare::percent(40);
    request.temperature = Temperature::celsius(80);
    request.skin = SkinSide::all_round;
    request.evenness = 1.2;
    request.fat = MassShare::percent(120);
    request.planned_rule = "nonsense";
    request.outside_water = MassShare::percent(-3);
    request.width = Length::millimetres(-5);
    const auto estimate = estimate_cure(request);
    for (const char* code :
         {"thickness_out_of_range", "salt_out_of_range", "temperature_out_of_range", "no_open_face",
          "evenness_out_of_range", "fat_out_of_range", "unknown_rule", "outside_water_out_of_range",
          "side_out_of_range"}) {
        EXPECT_TRUE(has(estimate, code)) << code;
    }
    EXPECT_FALSE(estimate.even.has_value());
    EXPECT_TRUE(std::all_of(estimate.findings.begin(), estimate.findings.end(),
                            [](const auto& f) { return f.severity == Severity::stop; }));
}

TEST(EstimateCure, NotANumberIsStopped) {
    auto request = belly();
    request.thickness = Length::millimetres(std::numeric_limits<double>::quiet_NaN());
    EXPECT_TRUE(has(estimate_cure(request), "thickness_out_of_range"));
}

TEST(EstimateCure, WantedSaltAboveSaturationIsStopped) {
    auto request = belly();
    request.method = CureMethod::excess_salt;
    request.fat = MassShare::percent(60);
    request.salt = MassShare::percent(18);
    EXPECT_TRUE(has(estimate_cure(request), "salt_beyond_saturation"));
}

TEST(EstimateCure, BlockWithoutSidesSaysSo) {
    auto request = belly();
    request.form = Form::block;
    EXPECT_TRUE(has(estimate_cure(request), "sides_taken_endless"));
    request.width = Length::millimetres(2000);
    request.length = Length::millimetres(2000);
    const auto sided = estimate_cure(request);
    EXPECT_FALSE(has(sided, "sides_taken_endless"));
    EXPECT_NEAR(sided.even->best / estimate_cure(belly()).even->best, 1, 0.1); // a wide slab
}

} // namespace
