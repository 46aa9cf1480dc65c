// Does the forecast come true? Virtual pieces from simulators that share no code with the model
// are weighed up to a part of their way; the forecast is compared with the true date. The limits
// are the project's own (issue "Knowing when"): median |error| of the ready date at 25/50/75 % of
// the way no more than 8/4/2 % of the total time, 75 to 88 % of truths between P10 and P90, error
// no more than a third of a straight line's. The table is printed, also where it falls short; a
// test goes red when a shortfall is larger than the luck of the draw.
// tests/bench/forecast_quality_bench prints the long table over all kinds of pieces.
#include "tests/support/forecast_trial.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

namespace {

using namespace tests::support;

constexpr int count = 400;
constexpr int few = 80; // for what does not hang on a median

TrialResult tried(const std::string& name, const std::vector<VirtualPiece>& pieces,
                  const TrialOptions& options) {
    const TrialResult r = run_trial(pieces, options);
    std::printf("%s\n", trial_line(name, options, r).c_str());
    std::fflush(stdout);
    return r;
}

/// What 400 pieces can tell: the count's own scatter of a coverage of 80 %, twice its standard
/// deviation. Medians are judged by the lower end of their own interval, printed beside them. The
/// long table (600 pieces and more, tests/bench/forecast_quality_bench) is what the closing
/// figures are read from.
constexpr double coverage_scatter = 4.0;

TEST(ForecastQuality, UsualPiecesComeTrue) {
    const auto pieces = make_pieces(usual_pieces(), count, 1);
    std::printf("%s\n", trial_heading().c_str());
    const double fractions[] = {0.25, 0.5, 0.75};
    const double limits[] = {8, 4, 2};
    for (int i = 0; i < 3; ++i) {
        for (const bool with_log : {false, true}) {
            const auto r = tried("usual", pieces, {.fraction = fractions[i], .with_log = with_log});
            EXPECT_LE(r.median_error_at_least, limits[i]) << fractions[i];
            EXPECT_GE(r.coverage, 75 - coverage_scatter) << fractions[i];
            EXPECT_LE(r.coverage, 88 + coverage_scatter) << fractions[i];
            EXPECT_LE(r.median_error_at_least, r.line_error / 3) << fractions[i];
        }
    }
}

TEST(ForecastQuality, ClimateStepWithTheLogGiven) {
    const auto pieces = make_pieces(stepped_pieces(), 160, 1);
    const auto r = tried("climate step", pieces, {.fraction = 0.5, .with_log = true});
    EXPECT_LE(r.median_error_at_least, 5);
    EXPECT_LE(r.p90_error, 20);
}

/// The second simulator: bodies the model cannot take the shape of. Wider limits: what must hold
/// is that the interval does not lie.
TEST(ForecastQuality, TaperedPiecesOfTheSecondSimulator) {
    const auto pieces = make_pieces(tapered_pieces(), 40, 1);
    for (const double fraction : {0.5, 0.75}) {
        const auto r = tried("tapered (second)", pieces, {.fraction = fraction});
        EXPECT_GE(r.coverage, 65);
        EXPECT_LE(r.median_error, r.line_error / 2);
    }
}

/// One weighing 60 g off: named, and the date hardly moves. Clean series: no false alarm.
TEST(ForecastQuality, OneBadWeighingIsNamedAndForgiven) {
    const auto pieces = make_pieces(usual_pieces(), few, 1);
    int tested = 0, named = 0, moved = 0, false_alarms = 0;
    std::vector<double> moves;
    const auto off = [](const core::model::Finding& f) { return f.code == "weighing_off_curve"; };
    for (const VirtualPiece& piece : pieces) {
        TrialOptions options{.fraction = 0.75};
        const auto clean = request_for(piece, options);
        options.mistake_g = 60;
        std::size_t mistaken = 0;
        const auto bad = request_for(piece, options, &mistaken);
        if (!clean || clean->weighings.size() < 6) {
            continue;
        }
        ++tested;
        const auto a = core::drying::forecast(*clean);
        const auto b = core::drying::forecast(*bad);
        false_alarms += std::any_of(a.findings.begin(), a.findings.end(), off);
        named += std::any_of(b.findings.begin(), b.findings.end(), [&](const auto& f) {
            return off(f) && f.at == bad->weighings[mistaken].at;
        });
        ASSERT_TRUE(a.ready && b.ready && a.ready->p50 && b.ready->p50);
        const double move = std::abs((*a.ready->p50 - *b.ready->p50).in_days()) / piece.ready_day;
        moves.push_back(100 * move);
        moved += move > 0.03;
    }
    std::sort(moves.begin(), moves.end());
    std::printf("60 g off: %d of %d named; P50 moves by median %.2f %%, P95 %.2f %% of the total "
                "time; false alarms %d\n",
                named, tested, moves[moves.size() / 2], moves[moves.size() * 95 / 100],
                false_alarms);
    EXPECT_GE(named, 0.97 * tested);
    EXPECT_LE(moved, 0.05 * tested);
    EXPECT_LE(false_alarms, 0.02 * tested);
}

} // namespace
