#include "core/drying/net_series.h"

#include <gtest/gtest.h>

namespace core::drying {
namespace {

using model::EventKind;
using model::PieceEvent;
using model::ReferenceWeight;
using model::WeighedState;
using model::Weighing;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

Instant day(double d) {
    return Instant::from_unix_seconds(1'767'600'000) + Duration::days(d);
}

Weighing weighing(double at, double grams, WeighedState state, double tare = 0) {
    Weighing w{.taken_at = day(at),
               .on_scale = Mass::grams(grams),
               .tare = Mass::grams(tare),
               .state = state};
    return w;
}

PieceEvent event(double at, EventKind kind) {
    PieceEvent e{.kind = kind, .at = day(at)};
    return e;
}

model::Target thirty_five(ReferenceWeight reference = ReferenceWeight::hung) {
    return {.loss = MassShare::percent(35), .reference = reference};
}

/// The worked example of design.md section 3: 1000 g raw, 1040 rinsed, 1140 in casing and net.
PieceHistory example() {
    return {.weighings = {weighing(0, 1000, WeighedState::raw),
                          weighing(14, 1040, WeighedState::rinsed),
                          weighing(14.1, 1140, WeighedState::netted, 100)},
            .target = thirty_five()};
}

TEST(NetSeries, ThirtyFivePercentOfTheHungNetWeightIs676NetAnd776OnTheScale) {
    const NetSeries s = net_series(example());
    ASSERT_TRUE(s.references.hung);
    EXPECT_DOUBLE_EQ(s.references.raw->in_grams(), 1000);
    EXPECT_DOUBLE_EQ(s.references.cured->in_grams(), 1040);
    EXPECT_DOUBLE_EQ(s.references.hung->in_grams(), 1040);
    EXPECT_NEAR(s.target_net->in_grams(), 676, 1e-9);
    EXPECT_NEAR(s.target_on_scale->in_grams(), 776, 1e-9);
    EXPECT_TRUE(s.findings.empty());
}

TEST(NetSeries, TheSameTargetFromTheRawWeightIs650Net) {
    PieceHistory h = example();
    h.target = thirty_five(ReferenceWeight::raw);
    EXPECT_NEAR(net_series(h).target_net->in_grams(), 650, 1e-9);
}

TEST(NetSeries, LossesFromAllReferencesSideBySide) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(40, 880, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.loss_from(ReferenceWeight::raw)->in_percent(), 22, 1e-9);
    EXPECT_NEAR(s.loss_from(ReferenceWeight::hung)->in_percent(), 25, 1e-9);
    EXPECT_FALSE(s.loss_from(ReferenceWeight::trimmed));
    ASSERT_EQ(s.points.size(), 2u); // from hanging on
}

TEST(NetSeries, CutRebasesStartAndTargetInProportion) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(40, 880, WeighedState::netted, 100)); // 780 net
    PieceEvent cut = event(41, EventKind::sampled);
    cut.net_before = Mass::grams(780);
    cut.net_after = Mass::grams(390);
    h.events.push_back(cut);
    h.weighings.push_back(weighing(50, 465, WeighedState::netted, 100)); // 365 net
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.references.hung->in_grams(), 520, 1e-9);
    EXPECT_NEAR(s.target_net->in_grams(), 338, 1e-9);
    EXPECT_NEAR(s.points.front().net.in_grams(), 520, 1e-9); // the curve goes on unbroken
    EXPECT_NEAR(s.points[1].net.in_grams(), 390, 1e-9);
}

TEST(NetSeries, CutWithoutWeightsTakesThemFromTheWeighingsAround) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(40, 880, WeighedState::netted, 100));
    h.events.push_back(event(41, EventKind::trimmed));
    h.weighings.push_back(weighing(41, 802, WeighedState::netted, 100)); // 702 of 780: 0.9
    EXPECT_NEAR(net_series(h).references.hung->in_grams(), 936, 1e-9);
}

TEST(NetSeries, UserMayOverrideTheNewStart) {
    PieceHistory h = example();
    PieceEvent cut = event(30, EventKind::trimmed);
    cut.net_before = Mass::grams(800);
    cut.net_after = Mass::grams(700);
    cut.start_override = Mass::grams(930); // the rim cut off was drier than the rest
    h.events.push_back(cut);
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.references.hung->in_grams(), 930, 1e-9);
    EXPECT_NEAR(s.references.raw->in_grams(), 875, 1e-9);
}

TEST(NetSeries, CutWithNoWeightsAtAllIsAFindingAndChangesNothing) {
    PieceHistory h = example();
    h.events.push_back(event(30, EventKind::sampled));
    const NetSeries s = net_series(h);
    ASSERT_EQ(s.findings.size(), 1u);
    EXPECT_EQ(s.findings[0].code, "event_weight_missing");
    EXPECT_NEAR(s.references.hung->in_grams(), 1040, 1e-9);
}

TEST(NetSeries, CoatIsNotMeat) {
    PieceHistory h = example();
    PieceEvent lard = event(30, EventKind::coated);
    lard.net_before = Mass::grams(800);
    lard.net_after = Mass::grams(880);
    h.events.push_back(lard);
    h.weighings.push_back(weighing(40, 960, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.points.back().net.in_grams(), 780, 1e-9);
    EXPECT_NEAR(s.target_on_scale->in_grams(), 856, 1e-9); // 676 + 80 + 100
}

TEST(NetSeries, ReDressedWithUnknownTareLosesNothing) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(20, 1060, WeighedState::netted, 100)); // 960 net
    h.events.push_back(event(20, EventKind::re_dressed));
    h.weighings.push_back(weighing(20.02, 1005, WeighedState::cased)); // tare 45 by inference
    h.weighings.push_back(weighing(27, 955, WeighedState::cased));
    h.events.front().at = day(20.01);
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.points.back().net.in_grams(), 910, 1e-9);
    EXPECT_NEAR(s.tare.in_grams(), 45, 1e-9);
}

TEST(NetSeries, MissingTareOfADressedPieceIsTold) {
    PieceHistory h{.weighings = {weighing(0, 1000, WeighedState::raw),
                                 weighing(1, 1140, WeighedState::cased)}};
    const NetSeries s = net_series(h);
    ASSERT_EQ(s.findings.size(), 1u);
    EXPECT_EQ(s.findings[0].code, "tare_missing");
}

TEST(NetSeries, WetWeighingsAreNotForTheCurve) {
    PieceHistory h = example();
    h.events.push_back(event(20, EventKind::washed));
    h.weighings.push_back(weighing(20.2, 1100, WeighedState::netted, 100));
    Weighing wet = weighing(25, 1090, WeighedState::netted, 100);
    wet.wet_surface = true;
    h.weighings.push_back(wet);
    h.weighings.push_back(weighing(26, 1050, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    ASSERT_EQ(s.points.size(), 2u);
    EXPECT_NEAR(s.points[1].net.in_grams(), 950, 1e-9);
}

/// An estimated hung weight: losses count from it, the curve does not lean on it.
TEST(NetSeries, ARoughHungWeightIsAReferenceButNoPointOfTheCurve) {
    auto estimate = weighing(0, 1000, WeighedState::rinsed);
    estimate.scale_step = Mass::grams(60);
    PieceHistory h{.weighings = {estimate, weighing(10, 880, WeighedState::rinsed),
                                 weighing(20, 820, WeighedState::rinsed)},
                   .events = {event(0, EventKind::hung)},
                   .target = thirty_five()};
    h.weighings[1].scale_step = h.weighings[2].scale_step = Mass::grams(1);
    const NetSeries s = net_series(h);
    EXPECT_DOUBLE_EQ(s.references.hung->in_grams(), 1000);
    EXPECT_NEAR(s.loss_from(ReferenceWeight::hung)->in_percent(), 18, 1e-9);
    ASSERT_EQ(s.points.size(), 2U);
    EXPECT_TRUE(s.hung_aside);
    const auto request = forecast_request({.target = thirty_five()}, s, {});
    ASSERT_TRUE(request && request->reference);
    EXPECT_DOUBLE_EQ(request->reference->in_grams(), 1000);
    // A coarse scale used throughout is how the piece was weighed, and no estimate.
    for (auto& w : h.weighings) {
        w.scale_step = Mass::grams(20);
    }
    EXPECT_EQ(net_series(h).points.size(), 3U);
    EXPECT_FALSE(net_series(h).hung_aside);
}

TEST(NetSeries, FrozenTimeStandsStill) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(20, 1060, WeighedState::netted, 100));
    h.events.push_back(event(21, EventKind::frozen));
    h.events.push_back(event(31, EventKind::thawed));
    h.weighings.push_back(weighing(36, 1010, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    ASSERT_EQ(s.points.size(), 3u);
    EXPECT_NEAR((s.points[2].at - s.points[1].at).in_days(), 6, 1e-6);
    EXPECT_EQ(s.points[2].at, day(36));
}

TEST(NetSeries, AmendedAndWithdrawnEntriesDoNotCount) {
    PieceHistory h = example();
    Weighing slip = weighing(20, 160, WeighedState::netted, 100);
    slip.amended_by = model::WeighingId::from_row(9);
    h.weighings.push_back(slip);
    Weighing gone = weighing(21, 2000, WeighedState::netted, 100);
    gone.withdrawn = true;
    h.weighings.push_back(gone);
    EXPECT_EQ(net_series(h).points.size(), 1u);
}

TEST(NetSeries, SplitChildKeepsItsShareOfTheParentsHistory) {
    PieceHistory parent = example();
    parent.weighings.push_back(weighing(30, 900, WeighedState::netted, 100)); // 800 net
    const NetSeries before = net_series(parent);
    PieceHistory child{.weighings = {weighing(30.1, 200, WeighedState::cured)},
                       .target = thirty_five(),
                       .parent = &before};
    const NetSeries s = net_series(child);
    EXPECT_NEAR(s.references.hung->in_grams(), 260, 1e-9); // 1040 * 200 / 800
    EXPECT_NEAR(s.target_net->in_grams(), 169, 1e-9);
}

TEST(NetSeries, MergedPiecesAddTheirReferences) {
    const NetSeries other = net_series(example());
    PieceHistory h = example();
    PieceEvent merge = event(20, EventKind::merged);
    merge.net_before = Mass::grams(900);
    merge.net_after = Mass::grams(1790);
    h.events.push_back(merge);
    h.members.push_back(&other);
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.references.hung->in_grams(), 2080, 1e-9);
    EXPECT_NEAR(s.target_net->in_grams(), 1352, 1e-9);
}

TEST(NetSeries, ABundleUnderANewCodeBeginsAsItsMembers) {
    const NetSeries one = net_series(example());
    const NetSeries two = net_series(example());
    PieceHistory bundle{.weighings = {weighing(20, 1990, WeighedState::netted, 200)},
                        .events = {event(20, EventKind::merged)},
                        .target = thirty_five()};
    bundle.members = {&one, &two};
    const NetSeries s = net_series(bundle);
    ASSERT_TRUE(s.references.hung && s.target_net && s.target_on_scale);
    EXPECT_NEAR(s.references.hung->in_grams(), 2080, 1e-9);
    EXPECT_NEAR(s.target_net->in_grams(), 1352, 1e-9);
    EXPECT_NEAR(s.target_on_scale->in_grams(), 1552, 1e-9);
    EXPECT_NEAR(s.loss_from(ReferenceWeight::hung)->in_percent(), 100 * (1 - 1790.0 / 2080), 1e-9);
    EXPECT_TRUE(s.findings.empty());
}

TEST(NetSeries, TimeStandsStillBetweenTakenDownAndHungAgain) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(30, 850, WeighedState::netted, 100));
    h.events.push_back(event(14.05, EventKind::hung));
    h.events.push_back(event(60, EventKind::hung));
    h.weighings.push_back(weighing(60, 848, WeighedState::netted, 100));
    h.weighings.push_back(weighing(67, 840, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    ASSERT_EQ(s.points.size(), 4u);
    EXPECT_NEAR((s.points[1].at - s.points[0].at).in_days(), 15.9, 1e-6);
    EXPECT_EQ(s.points[1].at, day(60)) << "the thirty days in between are no drying";
    EXPECT_EQ(s.points[3].at, day(67));
    EXPECT_NEAR(s.references.hung->in_grams(), 1040, 1e-9) << "the hung weight stays";
}

TEST(NetSeries, PressedWaterCountsAndTheCurveStartsAnew) {
    PieceHistory h = example();
    h.weighings.push_back(weighing(20, 1060, WeighedState::netted, 100));
    h.events.push_back(event(20.5, EventKind::pressed));
    h.weighings.push_back(weighing(21, 990, WeighedState::netted, 100));
    const NetSeries s = net_series(h);
    EXPECT_TRUE(s.pressed);
    ASSERT_EQ(s.points.size(), 1u);
    EXPECT_NEAR(s.loss_from(ReferenceWeight::hung)->in_percent(), 100 * (1 - 890.0 / 1040), 1e-9);
    model::Piece piece;
    piece.target = thirty_five();
    const auto request = forecast_request(piece, s, {});
    ASSERT_TRUE(request && request->reference);
    EXPECT_NEAR(request->reference->in_grams(), 1040, 1e-9);
}

TEST(NetSeries, HungEventNamesTheHungWeight) {
    PieceHistory h{.weighings = {weighing(0, 1500, WeighedState::raw),
                                 weighing(10, 1480, WeighedState::cured),
                                 weighing(12, 1470, WeighedState::cured),
                                 weighing(19, 1390, WeighedState::cured)},
                   .events = {event(12.2, EventKind::hung)},
                   .target = thirty_five()};
    const NetSeries s = net_series(h);
    EXPECT_NEAR(s.references.hung->in_grams(), 1470, 1e-9);
    EXPECT_EQ(s.points.size(), 2u);
}

TEST(NetSeries, TargetWithoutItsReferenceIsTold) {
    PieceHistory h{.weighings = {weighing(0, 1500, WeighedState::cased, 50)},
                   .target = thirty_five(ReferenceWeight::raw)};
    const NetSeries s = net_series(h);
    EXPECT_FALSE(s.target_net);
    ASSERT_EQ(s.findings.size(), 1u);
    EXPECT_EQ(s.findings[0].code, "reference_missing");
    EXPECT_TRUE(net_series({}).points.empty());
}

} // namespace
} // namespace core::drying
