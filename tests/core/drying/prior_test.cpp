#include "core/drying/prior.h"

#include <cmath>
#include <gtest/gtest.h>

namespace core::drying {
namespace {

using units::Length;
using units::MassShare;

PieceTraits traits() {
    return {.form = model::Form::slab,
            .thickness = Length::millimetres(60),
            .fat = MassShare::percent(10)};
}

TEST(Prior, DepthIsHalfTheThicknessOrAllOfItUnderSkin) {
    PieceTraits t = traits();
    EXPECT_DOUBLE_EQ(make_prior(t, 1000, false).body.depth_m, 0.03);
    t.skin = model::SkinSide::one_side;
    EXPECT_DOUBLE_EQ(make_prior(t, 1000, false).body.depth_m, 0.06);
}

TEST(Prior, FatLowersTheWaterAndUnknownFatWidensIt) {
    PieceTraits t = traits();
    const Prior lean = make_prior(t, 1000, false);
    t.fat = MassShare::percent(45);
    const Prior fatty = make_prior(t, 1000, false);
    t.fat.reset();
    const Prior unknown = make_prior(t, 1000, false);
    EXPECT_LT(fatty.mean[water], lean.mean[water] - 0.15);
    EXPECT_GT(unknown.sd[water], 3 * lean.sd[water]);
}

/// Published ranges (reference notes, section 9): the prior's own 95 % must hold their medians,
/// 5e-11 m2/s for lean meat at 13 C and a bare film of 6 W/(m2 K), 5.3e-3 m/s.
TEST(Prior, HoldsThePublishedMedians) {
    PieceTraits t = traits();
    t.fat = MassShare::percent(0);
    const Prior p = make_prior(t, 1000, false);
    EXPECT_LT(std::abs(std::log(5e-11) - p.mean[log_diffusivity]), 1.96 * p.sd[log_diffusivity]);
    EXPECT_LT(std::abs(std::log(5.3e-3) - p.mean[log_film]), 1.96 * p.sd[log_film]);
}

TEST(Prior, UnknownThicknessIsLessCertain) {
    PieceTraits t = traits();
    t.thickness.reset();
    EXPECT_GT(make_prior(t, 1000, false).sd[log_diffusivity],
              make_prior(traits(), 1000, false).sd[log_diffusivity]);
}

TEST(Prior, AKnownLogIsTrustedMoreThanTheUsualAir) {
    EXPECT_LT(make_prior(traits(), 1000, true).sd[humidity_offset],
              make_prior(traits(), 1000, false).sd[humidity_offset]);
}

TEST(Prior, LearntShiftsAndNarrowsButLeavesTheOwnFatAlone) {
    LearntPrior learnt;
    learnt.shift[log_diffusivity] = 1;
    learnt.scale[log_diffusivity] = 0.5;
    learnt.shift[water] = -2;
    const Prior plain = make_prior(traits(), 1000, false);
    const Prior p = make_prior(traits(), 1000, false, &learnt);
    EXPECT_DOUBLE_EQ(p.mean[log_diffusivity],
                     plain.mean[log_diffusivity] + plain.sd[log_diffusivity]);
    EXPECT_DOUBLE_EQ(p.sd[log_diffusivity], plain.sd[log_diffusivity] / 2);
    EXPECT_DOUBLE_EQ(p.mean[water], plain.mean[water]);
}

} // namespace
} // namespace core::drying
