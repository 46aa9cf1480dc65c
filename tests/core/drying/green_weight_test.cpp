#include "core/drying/green_weight.h"

#include "tests/support/forecast_trial.h"

#include <gtest/gtest.h>

namespace core::drying {
namespace {

using namespace tests::support;

/// A batch from one chamber: the same meat and air, different thickness.
std::vector<VirtualPiece> batch() {
    PopulationSetting kind = usual_pieces();
    kind.d_spread = 0.1;
    kind.film_spread = 0.1;
    kind.laws = {DiffusivityLaw::exponential};
    kind.isotherms = {IsothermLaw::gab};
    return make_pieces(kind, 6, 900);
}

TEST(GreenWeight, LostStartIsFoundWithinItsInterval) {
    const auto pieces = batch();
    std::vector<ForecastRequest> siblings;
    for (std::size_t i = 1; i < pieces.size(); ++i) {
        siblings.push_back(*request_for(pieces[i], {.fraction = 0.8}));
    }
    ForecastRequest lost = *request_for(pieces[0], {.fraction = 0.6});
    lost.weighings.erase(lost.weighings.begin(), lost.weighings.end() - 1); // the last one only
    const auto with = estimate_green_weight(lost, hung_at(), siblings);
    const auto alone = estimate_green_weight(lost, hung_at(), {});
    ASSERT_TRUE(with && alone);
    const double truth = pieces[0].spec.hang_weight_g;
    EXPECT_LT(with->weight.low.in_grams(), truth);
    EXPECT_GT(with->weight.high.in_grams(), truth);
    EXPECT_LT(with->weight.high - with->weight.low, alone->weight.high - alone->weight.low);
    EXPECT_EQ(alone->siblings, 0);
    EXPECT_GT(with->siblings, 2);
}

TEST(GreenWeight, NoWeighingAfterHangingIsNoEstimate) {
    ForecastRequest r;
    r.weighings = {{hung_at(), units::Mass::grams(1000), {}}};
    EXPECT_FALSE(estimate_green_weight(r, hung_at(), {}));
}

} // namespace
} // namespace core::drying
