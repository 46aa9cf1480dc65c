#include "core/drying/anomalies.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

namespace core::drying::anomalies_test {
namespace {

using units::Duration;
using units::Instant;
using units::Mass;

const Instant start = Instant::from_unix_seconds(1'767'600'000);

ForecastRequest piece(std::initializer_list<std::pair<double, double>> day_and_grams) {
    ForecastRequest r;
    r.traits = {.form = model::Form::cylinder,
                .thickness = units::Length::millimetres(65),
                .fat = units::MassShare::percent(8)};
    for (const auto& [day, grams] : day_and_grams) {
        r.weighings.push_back({start + Duration::days(day), Mass::grams(grams), {}});
    }
    return r;
}

const model::Finding* find(const model::Forecast& f, const char* code) {
    const auto it = std::find_if(f.findings.begin(), f.findings.end(),
                                 [&](const auto& x) { return x.code == code; });
    return it == f.findings.end() ? nullptr : &*it;
}

std::string cause(const model::Finding& f) {
    return std::get<std::string>(f.values.at("cause"));
}

TEST(Anomalies, ASteadyPieceHasNone) {
    const auto f = forecast(piece({{0, 1500}, {7, 1380}, {14, 1320}, {21, 1274}, {28, 1235}}));
    EXPECT_TRUE(f.findings.empty());
}

TEST(Anomalies, WeightTakenUpAndKeptIsAGain) {
    const auto f = forecast(piece({{0, 1500},
                                   {7, 1380},
                                   {14, 1320},
                                   {21, 1274},
                                   {28, 1345},
                                   {35, 1339},
                                   {42, 1334},
                                   {49, 1328}}));
    const auto* gain = find(f, "weight_gained");
    ASSERT_NE(gain, nullptr);
    EXPECT_EQ(*gain->at, start + Duration::days(28));
    EXPECT_NEAR(std::get<Mass>(gain->values.at("gain")).in_grams(), 71, 1e-9);
}

/// 3.4 % a day over six days (common practice, no source: 3 % a day is called too fast).
TEST(Anomalies, ThreePercentADayIsTooFastForAThickPiece) {
    ForecastRequest r = piece({{0, 1000}, {3, 890}, {6, 795}, {9, 745}});
    EXPECT_NE(find(forecast(r), "surface_drying_too_fast"), nullptr);
    r.traits.thickness = units::Length::millimetres(20);
    EXPECT_EQ(find(forecast(r), "surface_drying_too_fast"), nullptr);
}

TEST(Anomalies, StallCausesAreToldApart) {
    const auto flat = {std::pair{0.0, 1500.0}, {7.0, 1420.0},  {14.0, 1370.0}, {21.0, 1330.0},
                       {28.0, 1328.0},         {35.0, 1329.0}, {42.0, 1327.0}};
    ForecastRequest wet = piece(flat);
    for (int d = 0; d <= 42; ++d) {
        wet.air.push_back({start + Duration::days(d), units::Temperature::celsius(13),
                           units::RelativeHumidity::percent(d < 21 ? 74 : 92)});
    }
    const auto by_air = forecast(wet);
    ASSERT_NE(find(by_air, "rate_stalled"), nullptr);
    EXPECT_EQ(cause(*find(by_air, "rate_stalled")), "wet_air");

    ForecastRequest fatty = piece({{0, 1500},
                                   {7, 1300},
                                   {14, 1225},
                                   {21, 1195},
                                   {28, 1185},
                                   {35, 1183},
                                   {42, 1182},
                                   {49, 1182}});
    fatty.traits.fat = units::MassShare::percent(60);
    fatty.traits.thickness = units::Length::millimetres(35);
    const auto by_fat = forecast(fatty);
    ASSERT_NE(find(by_fat, "rate_stalled"), nullptr);
    EXPECT_EQ(cause(*find(by_fat, "rate_stalled")), "levelling_off");
}

TEST(Anomalies, AReadyPieceMayStall) {
    const auto f = forecast(piece(
        {{0, 1000}, {10, 800}, {20, 700}, {30, 640}, {40, 615}, {50, 610}, {60, 608}, {70, 607}}));
    EXPECT_EQ(f.state, model::ForecastState::ready);
    EXPECT_EQ(find(f, "rate_stalled"), nullptr);
}

} // namespace
} // namespace core::drying::anomalies_test
