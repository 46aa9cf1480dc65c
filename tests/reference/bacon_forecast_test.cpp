// Real input end to end: published moistures of drying cured muscle -> importer -> weighings ->
// forecast. Source: J Food Sci Technol 2016;53(10):3795-3805, doi:10.1007/s13197-016-2366-x,
// Table 1 (the table was read). The forecast sees the end of salting and day 6 only; the paper's
// day 12 must lie inside its band. The paper's pages that were read give neither the thickness of
// the pieces nor the air, so both are left to the priors.
#include "core/drying/forecast.h"
#include "core/exchange/moisture_csv.h"

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <gtest/gtest.h>
#include <iterator>
#include <map>
#include <string>
#include <vector>

namespace {

using namespace core;
using exchange::ImportedWeighing;
using units::Instant;
using units::Mass;
using units::MassShare;

struct Band {
    double p10 = 0;
    double p50 = 0;
    double p90 = 0;
};

/// The band at a moment, straight between the curve's points.
Band band_at(const std::vector<model::BandPoint>& curve, Instant at) {
    const auto after = std::find_if(curve.begin(), curve.end(),
                                    [&](const model::BandPoint& p) { return p.at >= at; });
    if (after == curve.end() || after == curve.begin()) {
        ADD_FAILURE() << "the curve does not reach the moment";
        return {};
    }
    const model::BandPoint& before = *(after - 1);
    const double part = (at - before.at) / (after->at - before.at);
    const auto between = [&](MassShare a, MassShare b) {
        return a.in_percent() + part * (b.in_percent() - a.in_percent());
    };
    return {between(before.p10, after->p10), between(before.p50, after->p50),
            between(before.p90, after->p90)};
}

std::map<std::string, std::vector<ImportedWeighing>> published_series() {
    std::ifstream file(SALTLOFT_TEST_DATA_DIR "/bacon_drycured_moisture_PMC5147706.csv",
                       std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto imported = exchange::read_moisture_csv(text);
    EXPECT_TRUE(imported.has_value());
    std::map<std::string, std::vector<ImportedWeighing>> series;
    for (const ImportedWeighing& row : imported->weighings) {
        series[row.piece].push_back(row);
    }
    return series;
}

TEST(BaconForecast, TheTwelveDayPointLiesInTheBandMadeFromEarlierOnes) {
    const auto series = published_series();
    ASSERT_EQ(series.size(), 4U);
    for (const auto& [name, rows] : series) {
        ASSERT_EQ(rows.size(), 3U) << name;
        drying::ForecastRequest request;
        request.target = MassShare::percent(60); // beyond the series: the curve must pass day 12
        request.band_points = 200;
        for (std::size_t i = 0; i < 2; ++i) {
            request.weighings.push_back(
                {rows[i].weighing.taken_at, rows[i].weighing.net(), Mass::grams(1)});
        }
        const model::Forecast forecast = drying::forecast(request);
        const Mass start = rows[0].weighing.net();
        const double seen = 100 * (1 - rows[2].weighing.net() / start);
        const double six_days = 100 * (1 - rows[1].weighing.net() / start);
        const Band band = band_at(forecast.curve, rows[2].weighing.taken_at);
        std::printf(
            "formulation %-3s loss %.1f %% at 6 d; forecast for 12 d: %.1f (%.1f to %.1f) %%; "
            "published: %.1f %%\n",
            name.c_str(), six_days, band.p50, band.p10, band.p90, seen);
        EXPECT_GE(seen, band.p10) << name;
        EXPECT_LE(seen, band.p90) << name;
        EXPECT_LT(band.p10, band.p50);
        EXPECT_LT(band.p50, band.p90);
    }
}

// The same from the end of salting alone: two points are needed for a forecast, and it says so.
TEST(BaconForecast, OnePointIsNotEnough) {
    for (const auto& [name, rows] : published_series()) {
        drying::ForecastRequest request;
        request.weighings = {{rows[0].weighing.taken_at, rows[0].weighing.net(), {}}};
        EXPECT_EQ(drying::forecast(request).state, model::ForecastState::too_few_weighings);
    }
}

} // namespace
