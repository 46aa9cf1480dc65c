#include "core/drying/history.h"

#include "tests/support/forecast_trial.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace core::drying {
namespace {

using namespace tests::support;

std::vector<ForecastRequest> finished(const PopulationSetting& kind, int count) {
    std::vector<ForecastRequest> out;
    for (const auto& piece : make_pieces(kind, count, 400)) {
        if (auto r = request_for(piece, {.fraction = 1.0, .with_log = true})) {
            out.push_back(std::move(*r));
        }
    }
    return out;
}

TEST(LearnPrior, NothingToLearnFromIsTheGeneralPrior) {
    const LearntPrior none = learn_prior({});
    EXPECT_EQ(none.pieces, 0);
    EXPECT_EQ(none.shift[log_diffusivity], 0);
    EXPECT_EQ(none.scale[log_diffusivity], 1);
}

TEST(LearnPrior, PiecesBarelyBegunTeachNothing) {
    std::vector<ForecastRequest> begun;
    for (const auto& piece : make_pieces(usual_pieces(), 4, 400)) {
        if (auto r = request_for(piece, {.fraction = 0.15})) {
            begun.push_back(std::move(*r));
        }
    }
    EXPECT_EQ(learn_prior(begun).pieces, 0);
}

/// Pieces that all dry faster than the general prior thinks move it that way.
TEST(LearnPrior, FastPiecesShiftTheDiffusivityUp) {
    PopulationSetting fast = usual_pieces();
    fast.d_median = 2e-10;
    fast.d_spread = 0.2;
    const LearntPrior l = learn_prior(finished(fast, 8));
    EXPECT_EQ(l.pieces, 8);
    EXPECT_GT(l.shift[log_diffusivity], 0.3);
    EXPECT_LT(l.scale[log_diffusivity], 1);
}

} // namespace
} // namespace core::drying
