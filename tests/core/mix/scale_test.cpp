#include "core/mix/scale.h"

#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace core::mix;
using core::units::Mass;

// Dose error from the scale's step alone at 0.25 % of curing salt: the table of the practice
// notes, section 4a (derived there from half a step over the dose; common practice, no source).
// Columns: a 1 g, 0.1 g and 0.01 g scale, and rounding up to the whole gram, in percent.
TEST(Scale, ToleranceTableOfPractice) {
    const struct {
        Mass piece;
        double dose, gram, tenth, hundredth, rounding_up;
    } rows[] = {
        {Mass::grams(250), 0.63, 80, 8, 1, 60}, {Mass::grams(500), 1.25, 40, 4, 0, 60},
        {Mass::grams(907), 2.27, 22, 2, 0, 32}, {Mass::grams(1000), 2.5, 20, 2, 0, 20},
        {Mass::grams(2000), 5.0, 10, 1, 0, 0},
    };
    for (const auto& row : rows) {
        const Mass dose = row.piece * 0.0025;
        EXPECT_NEAR(dose.in_grams(), row.dose, 0.0051);
        const auto percent = [&](double step) {
            return 100 * half_step_error(dose, Mass::grams(step));
        };
        // The table is rounded to whole percent.
        EXPECT_NEAR(percent(1), row.gram, 0.5) << row.dose;
        EXPECT_NEAR(percent(0.1), row.tenth, 0.5) << row.dose;
        EXPECT_NEAR(percent(0.01), row.hundredth, 0.5) << row.dose;
        EXPECT_NEAR(100 * (std::ceil(dose.in_grams()) / dose.in_grams() - 1), row.rounding_up, 0.5)
            << row.dose;
    }
    // A pre-blended 2.75 % of 500 g is 13.75 g, +-3.6 % on the 1 g scale.
    EXPECT_NEAR(100 * half_step_error(Mass::grams(500) * 0.0275, Mass::grams(1)), 3.6, 0.05);
}

TEST(Scale, RoundsToTheStep) {
    EXPECT_DOUBLE_EQ(round_to_step(Mass::grams(3.75), Mass::grams(1)).in_grams(), 4);
    EXPECT_DOUBLE_EQ(round_to_step(Mass::grams(2.5), Mass::grams(1)).in_grams(), 3);
    EXPECT_NEAR(round_to_step(Mass::grams(3.74), Mass::grams(0.1)).in_grams(), 3.7, 1e-12);
    EXPECT_DOUBLE_EQ(round_down_to_step(Mass::grams(3.99), Mass::grams(1)).in_grams(), 3);
    EXPECT_NEAR(round_down_to_step(Mass::grams(5), Mass::grams(0.1)).in_grams(), 5, 1e-12)
        << "a whole count of steps stays whole";
    EXPECT_DOUBLE_EQ(round_to_step(Mass::grams(0.3), Mass::grams(1)).in_grams(), 0);
}

std::vector<ScaleLine> salt_and_cure(double meat_grams) {
    ScaleLine salt;
    salt.line = 0;
    salt.amount = Mass::grams(meat_grams * 0.025);
    salt.can_blend = true;
    ScaleLine cure = salt;
    cure.line = 1;
    cure.amount = Mass::grams(meat_grams * 0.0025);
    cure.is_cure = true;
    return {salt, cure};
}

TEST(Scale, ProposesAFinerScaleAndABlend) {
    const auto advice = advise_scale(salt_and_cure(500), Mass::grams(1));
    ASSERT_EQ(advice.size(), 1U);
    EXPECT_EQ(advice[0].line, 1U);
    EXPECT_NEAR(advice[0].error, 0.4, 1e-12);
    ASSERT_TRUE(advice[0].finer_step.has_value());
    EXPECT_DOUBLE_EQ(advice[0].finer_step->in_grams(), 0.1) << "+-4 % is within 5 %";
    ASSERT_TRUE(advice[0].blend.has_value());
    const auto& blend = *advice[0].blend;
    EXPECT_LE(blend.error, wanted_dose_error);
    EXPECT_DOUBLE_EQ(blend.portion.in_grams(), 14);
    // Every part lies on the 1 g scale, and the batch is no smaller than the portion.
    Mass sum = Mass::grams(0);
    for (const auto& part : blend.parts) {
        EXPECT_NEAR(part.mass.in_grams(), std::round(part.mass.in_grams()), 1e-12);
        sum += part.mass;
    }
    EXPECT_DOUBLE_EQ(sum.in_grams(), blend.batch.in_grams());
    EXPECT_GE(blend.batch, blend.portion);
}

TEST(Scale, BlendPortionGoesDownWhereUpWouldPassTheLimit) {
    auto lines = salt_and_cure(500);
    lines[1].at_most = lines[1].amount; // at the limit as written
    const auto advice = advise_scale(lines, Mass::grams(1));
    ASSERT_EQ(advice.size(), 1U);
    if (advice[0].blend) {
        const auto& blend = *advice[0].blend;
        const double cure = blend.parts[1].mass / blend.batch * blend.portion.in_grams();
        EXPECT_LE(cure, lines[1].at_most->in_grams() * (1 + 1e-12));
    }
}

TEST(Scale, NoAdviceWhereTheScaleIsGoodEnough) {
    EXPECT_TRUE(advise_scale(salt_and_cure(500), Mass::grams(0.1)).empty());
    EXPECT_TRUE(advise_scale(salt_and_cure(5000), Mass::grams(1)).empty());
}

TEST(Scale, NoBlendOfWhatTheScaleCannotPortion) {
    // 2.75 % of 100 g is 2.75 g: the portion itself is +-18 % on a 1 g scale.
    const auto advice = advise_scale(salt_and_cure(100), Mass::grams(1));
    ASSERT_EQ(advice.size(), 1U);
    EXPECT_FALSE(advice[0].blend.has_value());
    EXPECT_DOUBLE_EQ(advice[0].finer_step->in_grams(), 0.01);
}

} // namespace
