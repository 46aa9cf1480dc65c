#include "core/doneness/rates.h"

#include <gtest/gtest.h>

namespace rates_test {
namespace {

using namespace core::doneness;
using core::model::ReferenceWeight;
using core::units::Duration;
using core::units::Instant;
using core::units::Mass;
using core::units::MassShare;

Instant day(double d) {
    return Instant::from_unix_seconds(0) + Duration::days(d);
}

EvidenceRequest piece() {
    EvidenceRequest request{.now = day(28)};
    request.references.hung = Mass::grams(1000);
    request.references.raw = Mass::grams(1050);
    request.target = core::model::Target{MassShare::percent(35), ReferenceWeight::hung};
    request.weights = {{day(0), Mass::grams(1000)},
                       {day(7), Mass::grams(930)},
                       {day(14), Mass::grams(880)},
                       {day(28), Mass::grams(810)}};
    return request;
}

TEST(Losses, AgainstEveryKnownReference) {
    const auto losses = losses_of(piece());
    ASSERT_EQ(losses.size(), 2U);
    EXPECT_EQ(losses[0].reference, ReferenceWeight::raw);
    EXPECT_NEAR(losses[0].loss.in_percent(), 100 * 240.0 / 1050, 1e-9);
    EXPECT_FALSE(losses[0].is_target_reference);
    EXPECT_NEAR(losses[1].loss.in_percent(), 19, 1e-9);
    EXPECT_TRUE(losses[1].is_target_reference);
}

// The argument about "35 % of what": 1000 g raw, 1040 rinsed, 1140 in casing and net (tare 100).
// 35 % of the hung net weight is 676 g net.
TEST(Losses, ThirtyFivePercentOfTheHungNetWeight) {
    auto request = piece();
    request.references = {
        .raw = Mass::grams(1000), .cured = Mass::grams(1040), .hung = Mass::grams(1040)};
    request.weights = {{day(0), Mass::grams(676)}};
    const auto losses = losses_of(request);
    EXPECT_NEAR(losses.back().loss.in_percent(), 35, 1e-9);
    EXPECT_NEAR(losses.front().loss.in_percent(), 32.4, 1e-9);
}

TEST(Rates, FirstWeekLastWeeksAndOverall) {
    const auto rates = rates_of(piece());
    ASSERT_TRUE(rates.has_value());
    ASSERT_EQ(rates->spells.size(), 3U);
    EXPECT_NEAR(rates->spells[0].per_day.in_percent(), 1.0, 1e-9);
    EXPECT_NEAR(rates->first_week->in_percent(), 1.0, 1e-9);
    EXPECT_NEAR(rates->last_weeks->in_percent(), 0.5, 1e-9); // 880 -> 810 in 14 days
    EXPECT_NEAR(rates->overall->in_percent(), 19.0 / 28, 1e-9);
}

TEST(Rates, CloseWeighingsAreNotARate) {
    auto request = piece();
    request.weights.insert(request.weights.begin() + 1, {day(0.1), Mass::grams(990)});
    const auto rates = rates_of(request);
    EXPECT_EQ(rates->spells.size(), 3U);
    EXPECT_NEAR(rates->spells[0].per_day.in_percent(), 1.0, 1e-9);
}

TEST(Rates, OneWeighingHasNoRate) {
    auto request = piece();
    request.weights.erase(request.weights.begin() + 1, request.weights.end());
    EXPECT_FALSE(rates_of(request).has_value());
}

TEST(WayToLoss, TimeToTheFirstWeightPastIt) {
    const auto way = way_to_loss(piece().weights, Mass::grams(1000), MassShare::percent(10));
    ASSERT_TRUE(way.has_value());
    EXPECT_EQ(way->took, Duration::days(14));
    EXPECT_NEAR(way->per_day.in_percent(), 12.0 / 14, 1e-9);
    EXPECT_FALSE(
        way_to_loss(piece().weights, Mass::grams(1000), MassShare::percent(50)).has_value());
}

} // namespace

} // namespace rates_test
