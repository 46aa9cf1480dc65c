#include "ui/presenters/lost_weight.h"

#include <gtest/gtest.h>

using namespace ui::presenters;
using core::model::ReferenceWeight;
using core::model::WeighedState;
using core::units::Duration;
using core::units::Instant;
using core::units::Mass;

namespace {

const Instant hung = Instant::from_unix_seconds(1'767'600'000);

core::model::Weighing weighed(int row, double day, double grams, WeighedState state) {
    core::model::Weighing w{.taken_at = hung + Duration::days(day),
                            .on_scale = Mass::grams(grams),
                            .tare = Mass::grams(0),
                            .state = state};
    w.id = core::model::WeighingId::from_row(row);
    return w;
}

PieceRecord piece(std::optional<double> raw, double hung_grams) {
    PieceRecord record;
    if (raw) {
        record.history.weighings.push_back(weighed(1, -14, *raw, WeighedState::raw));
    }
    record.history.weighings.push_back(weighed(2, 0, hung_grams, WeighedState::rinsed));
    record.history.weighings.push_back(weighed(3, 7, hung_grams * 0.92, WeighedState::rinsed));
    return record;
}

} // namespace

TEST(LostWeight, ARawWeightFollowsFromHowMuchHeavierTheSiblingsWere) {
    const LostWeightQuestion question{piece({}, 1000),
                                      {piece(1030, 1000), piece(2080, 2000), piece(525, 500)},
                                      ReferenceWeight::raw,
                                      hung,
                                      true};
    const auto answer = estimate_lost_weight(question);
    ASSERT_TRUE(answer.weight);
    EXPECT_EQ(answer.siblings, 3);
    EXPECT_NEAR(answer.weight->best.in_grams(), 1040, 1); // 3, 4 and 5 % heavier
    EXPECT_LT(answer.weight->low.in_grams(), 1030);
    EXPECT_GT(answer.weight->high.in_grams(), 1050);
}

TEST(LostWeight, OneSiblingIsNoSibling) {
    const LostWeightQuestion question{
        piece({}, 1000), {piece(1030, 1000), piece({}, 500)}, ReferenceWeight::raw, hung, true};
    const auto answer = estimate_lost_weight(question);
    EXPECT_FALSE(answer.weight);
    EXPECT_EQ(answer.siblings, 0);
}

TEST(LostWeight, AHungWeightWithoutSiblingsIsWideAndSaysSo) {
    auto lost = piece({}, 1000);
    lost.history.weighings.erase(lost.history.weighings.begin());
    const auto answer = estimate_lost_weight({lost, {}, ReferenceWeight::hung, hung, false});
    ASSERT_TRUE(answer.weight);
    EXPECT_EQ(answer.siblings, 0);
    EXPECT_GT(answer.weight->low.in_grams(), 920) << "it weighed that much a week later";
    EXPECT_GT(answer.weight->high, answer.weight->low);
}
