#include "core/planning/weigh_round.h"

#include <gtest/gtest.h>

namespace weigh_round_test {
namespace {

using namespace core;
using planning::ExpectedFrom;
using planning::RoundPiece;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

constexpr Instant t0 = Instant::from_unix_seconds(1'760'000'000);

Instant d(double days) {
    return t0 + Duration::days(days);
}

RoundPiece hung(int row, int order, double net, double tare) {
    RoundPiece piece{.piece = {.id = model::PieceId::from_row(row), .hanging_order = order}};
    piece.last = model::Weighing{.taken_at = d(20),
                                 .on_scale = Mass::grams(net + tare),
                                 .tare = Mass::grams(tare),
                                 .scale_step = Mass::grams(1)};
    return piece;
}

RoundPiece forecast() {
    RoundPiece piece = hung(1, 1, 800, 100);
    piece.reference = Mass::grams(1000);
    model::Forecast f{.state = model::ForecastState::drying};
    const auto point = [](double day, double low, double best, double high) {
        return model::BandPoint{d(day), MassShare::percent(low), MassShare::percent(best),
                                MassShare::percent(high)};
    };
    f.curve = {point(20, 19.9, 20, 20.1), point(30, 23, 24, 25.5)};
    piece.forecast = f;
    return piece;
}

TEST(WeighRound, ExpectsWhatTheForecastSaysOnTheScale) {
    const auto rows = planning::weigh_round({forecast()}, d(25));
    ASSERT_EQ(rows.size(), 1U);
    ASSERT_TRUE(rows[0].expected);
    EXPECT_EQ(rows[0].expected_from, ExpectedFrom::forecast);
    // Half way: 22 % with 21.45 to 22.8 %; net 780, on the scale 880; bounds twice as far.
    EXPECT_NEAR(rows[0].expected->best.in_grams(), 880, 1e-6);
    EXPECT_NEAR(rows[0].expected->low.in_grams(), 880 - 2 * 8, 1e-6);
    EXPECT_NEAR(rows[0].expected->high.in_grams(), 880 + 2 * 5.5, 1e-6);
    EXPECT_EQ(rows[0].tare, Mass::grams(100));
}

TEST(WeighRound, BeyondTheForecastTheLastPointHolds) {
    const auto rows = planning::weigh_round({forecast()}, d(60));
    EXPECT_NEAR(rows[0].expected->best.in_grams(), 860, 1e-6);
}

TEST(WeighRound, WithoutAForecastTheLastWeighingSetsTheBounds) {
    const auto rows = planning::weigh_round({hung(1, 1, 800, 100)}, d(27));
    ASSERT_TRUE(rows[0].expected);
    EXPECT_EQ(rows[0].expected_from, ExpectedFrom::last_weighing);
    EXPECT_NEAR(rows[0].expected->low.in_grams(), 800 * (1 - 0.025 * 7) - 1 + 100, 1e-6);
    EXPECT_GT(rows[0].expected->high.in_grams(), 900);
}

TEST(WeighRound, NeverWeighedExpectsNothing) {
    const auto rows = planning::weigh_round({RoundPiece{}}, d(1));
    EXPECT_FALSE(rows[0].expected);
    EXPECT_FALSE(rows[0].last_on_scale);
    EXPECT_TRUE(planning::judge_entry(rows[0], Mass::grams(500), {}).empty());
}

TEST(WeighRound, GoesInHangingOrderChamberByChamber) {
    auto a = hung(1, 2, 800, 0);
    auto b = hung(2, 1, 800, 0);
    auto c = hung(3, 1, 800, 0);
    a.piece.chamber = b.piece.chamber = model::ChamberId::from_row(1);
    c.piece.chamber = model::ChamberId::from_row(2);
    const auto rows = planning::weigh_round({c, a, b}, d(27));
    EXPECT_EQ(rows[0].piece.row(), 2);
    EXPECT_EQ(rows[1].piece.row(), 1);
    EXPECT_EQ(rows[2].piece.row(), 3);
}

TEST(WeighRound, ANewTareIsUsedBeforeTheLastWeighings) {
    auto piece = forecast();
    piece.tare = Mass::grams(130);
    const auto rows = planning::weigh_round({piece}, d(25));
    EXPECT_NEAR(rows[0].expected->best.in_grams(), 910, 1e-6);
}

TEST(JudgeEntry, AsksOnceForTheRightReason) {
    const auto row = planning::weigh_round({forecast()}, d(25)).front();
    const auto code = [&](double grams) {
        const auto findings = planning::judge_entry(row, Mass::grams(grams), Mass::grams(1));
        EXPECT_LE(findings.size(), 1U);
        return findings.empty() ? std::string() : findings.front().code;
    };
    EXPECT_EQ(code(880), "");
    EXPECT_EQ(code(870), "");
    EXPECT_EQ(code(840), "weight_outside_expected");
    EXPECT_EQ(code(900), "weight_outside_expected");
    EXPECT_EQ(code(88), "not_above_tare");
    EXPECT_EQ(code(101), "weight_tenfold");
    EXPECT_EQ(code(8800), "weight_tenfold");
}

TEST(JudgeEntry, TheSameNumberAgainIsWorthANote) {
    auto piece = hung(1, 1, 832, 0);
    const auto row = planning::weigh_round({piece}, d(27)).front();
    const auto findings = planning::judge_entry(row, Mass::grams(832), Mass::grams(1));
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings[0].code, "weight_unchanged");
    EXPECT_EQ(findings[0].severity, model::Severity::note);
}

} // namespace

} // namespace weigh_round_test
