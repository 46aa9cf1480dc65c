#include "core/drying/scale_shift.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <gtest/gtest.h>

namespace core::drying::scale_shift_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

/// Pieces of different size and speed, weighed in the same rounds.
std::vector<ForecastRequest> batch(std::size_t count) {
    std::vector<ForecastRequest> out;
    for (std::size_t p = 0; p < count; ++p) {
        ForecastRequest r;
        r.traits = {.form = model::Form::cylinder,
                    .thickness = units::Length::millimetres(55 + 5.0 * static_cast<double>(p)),
                    .fat = units::MassShare::percent(10)};
        for (int i = 0; i < 9; ++i) {
            const double day = 6.0 * i;
            const double loss = (0.045 - 0.003 * static_cast<double>(p)) * std::sqrt(day);
            const double scatter = std::sin(12.9 * i + 4.1 * static_cast<double>(p));
            r.weighings.push_back(
                {start + Duration::days(day) + Duration::minutes(3.0 * static_cast<double>(p)),
                 Mass::grams(std::round((900 + 350.0 * static_cast<double>(p)) * (1 - loss) +
                                        1.5 * scatter)),
                 {}});
        }
        out.push_back(std::move(r));
    }
    return out;
}

bool has_shift(const model::Forecast& f, Instant near) {
    return std::any_of(f.findings.begin(), f.findings.end(), [&](const auto& x) {
        return x.code == "scale_shift" && std::abs((*x.at - near).in_days()) < 0.2;
    });
}

TEST(ScaleShift, SameStepInAllPiecesIsTheScale) {
    auto pieces = batch(5);
    for (auto& r : pieces) {
        for (std::size_t i = 5; i < 9; ++i) {
            r.weighings[i].net += Mass::grams(40);
        }
    }
    const auto clean = forecast_together(batch(5));
    const auto f = forecast_together(pieces);
    double moved = 0, moved_alone = 0;
    for (std::size_t p = 0; p < f.size(); ++p) {
        EXPECT_TRUE(has_shift(f[p], start + Duration::days(30))) << p;
        const auto days = [](const model::Forecast& x) { return *x.ready->p50 - start; };
        ASSERT_TRUE(f[p].ready && f[p].ready->p50) << p;
        moved += std::abs(days(f[p]) / days(clean[p]) - 1);
        const auto alone = forecast(pieces[p]); // knows no siblings: the step stays in
        moved_alone +=
            alone.ready && alone.ready->p50 ? std::abs(days(alone) / days(clean[p]) - 1) : 1.0;
    }
    std::printf("the step moves P50 by %.1f %% on average; left in, by %.1f %%\n", 20 * moved,
                20 * moved_alone);
    // The step is taken out before the date is made.
    EXPECT_LT(moved / 5, 0.05);
    EXPECT_LT(moved, moved_alone / 3);
}

TEST(ScaleShift, OneRoundOnlyIsFoundToo) {
    auto pieces = batch(5);
    for (auto& r : pieces) {
        r.weighings[4].net -= Mass::grams(50);
    }
    for (const auto& f : forecast_together(pieces)) {
        EXPECT_TRUE(has_shift(f, start + Duration::days(24)));
    }
}

TEST(ScaleShift, CleanRoundsAndLonePiecesHaveNone) {
    for (const auto& f : forecast_together(batch(6))) {
        EXPECT_FALSE(has_shift(f, f.as_of.value()));
        EXPECT_TRUE(f.findings.empty());
    }
    auto two = batch(2);
    for (auto& r : two) {
        r.weighings[4].net -= Mass::grams(50);
    }
    for (const auto& f : forecast_together(two)) {
        EXPECT_FALSE(has_shift(f, start + Duration::days(24)));
    }
}

TEST(ScaleShift, OneBadPieceIsNotTheScale) {
    auto pieces = batch(5);
    pieces[2].weighings[4].net += Mass::grams(60);
    const auto f = forecast_together(pieces);
    for (std::size_t p = 0; p < f.size(); ++p) {
        EXPECT_FALSE(has_shift(f[p], start + Duration::days(24)));
    }
    EXPECT_TRUE(std::any_of(f[2].findings.begin(), f[2].findings.end(),
                            [](const auto& x) { return x.code == "weighing_off_curve"; }));
}

} // namespace
} // namespace core::drying::scale_shift_test
