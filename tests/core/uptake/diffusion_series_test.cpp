#include "core/uptake/diffusion_series.h"
#include "tests/core/uptake/support/finite_volume.h"

#include <gtest/gtest.h>

namespace {

using namespace core::uptake;
using finite_volume::Piece;

const Body bodies[] = {Body::sheet, Body::cylinder, Body::sphere};

TEST(DiffusionSeries, LimitedVolumeAgreesWithFiniteVolumes) {
    for (const Body body : bodies) {
        for (const double alpha : {0.05, 0.4, 1.0, 9.0}) {
            const auto series = DiffusionSeries::limited_volume(body, alpha);
            Piece piece(body, 200);
            piece.outside_ratio = alpha;
            piece.outside_level = (1 + alpha) / alpha; // so that the final level is 1
            piece.run(0.02, 800, Piece::Surface::limited);
            for (const double fo : {0.02, 0.1, 0.3}) {
                if (fo > 0.02) {
                    piece.run(fo == 0.1 ? 0.08 : 0.2, 800, Piece::Surface::limited);
                }
                EXPECT_NEAR(series.uptake(fo), piece.mean(), 2e-3) << alpha << " " << fo;
                EXPECT_NEAR(series.centre(fo), piece.centre(), 2e-3) << alpha << " " << fo;
            }
        }
    }
}

// Instantaneous surface source (alpha = 0) in a sheet: 1 + 2 sum (-1)^n exp(-n^2 pi^2 Fo). The
// centre is within a tenth at 2 exp(-pi^2 Fo) = 0.1 but for the next term: Fo = ln 20 / pi^2.
TEST(DiffusionSeries, DryRubOnASheet) {
    const auto rub = DiffusionSeries::limited_volume(Body::sheet, 0);
    EXPECT_NEAR(rub.fourier_at_centre(0.9).value(), std::log(20.0) / (M_PI * M_PI), 2e-5);
    EXPECT_EQ(rub.uptake(0.01), 1);
    EXPECT_FALSE(rub.fourier_at_uptake(0.5).has_value());
}

TEST(DiffusionSeries, LimitsMeetEachOther) {
    for (const Body body : bodies) {
        const auto held = DiffusionSeries::constant_surface(body);
        const auto no_resistance = DiffusionSeries::surface_resistance(body, 1e7);
        const auto endless_brine = DiffusionSeries::limited_volume(body, 1e7);
        const auto all_resistance = DiffusionSeries::surface_resistance(body, 1e-4);
        const double per_volume = body == Body::sheet ? 1 : body == Body::cylinder ? 2 : 3;
        for (const double fo : {0.001, 0.03, 0.2, 0.8}) {
            EXPECT_NEAR(no_resistance.uptake(fo), held.uptake(fo), 1e-6);
            EXPECT_NEAR(endless_brine.uptake(fo), held.uptake(fo), 1e-6);
            EXPECT_NEAR(endless_brine.centre(fo), held.centre(fo), 1e-6);
        }
        // All the hindrance outside: first-order kinetics with rate (surface/volume) x biot.
        EXPECT_NEAR(all_resistance.uptake(5000), 1 - std::exp(-per_volume * 1e-4 * 5000), 1e-4);
    }
}

TEST(DiffusionSeries, LevelIntegratesToUptake) {
    for (const Body body : bodies) {
        const int power = body == Body::sheet ? 0 : body == Body::cylinder ? 1 : 2;
        for (const auto& series :
             {DiffusionSeries::constant_surface(body), DiffusionSeries::surface_resistance(body, 2),
              DiffusionSeries::limited_volume(body, 0.5)}) {
            for (const double fo : {0.02, 0.2}) {
                double sum = 0;
                constexpr int n = 4000; // midpoint rule
                for (int i = 0; i < n; ++i) {
                    const double x = (i + 0.5) / n;
                    sum += (power + 1) * std::pow(x, power) * series.level(fo, x) / n;
                }
                EXPECT_NEAR(sum, series.uptake(fo), 1e-5);
            }
        }
    }
}

TEST(DiffusionSeries, StartsAtZeroAndIsContinuousWhereTheSeriesTakesOver) {
    for (const Body body : bodies) {
        for (const auto& series :
             {DiffusionSeries::constant_surface(body), DiffusionSeries::surface_resistance(body, 2),
              DiffusionSeries::limited_volume(body, 0.5)}) {
            EXPECT_EQ(series.uptake(0), 0);
            EXPECT_EQ(series.uptake(-1), 0);
            const double early = series.uptake(DiffusionSeries::least_fourier * (1 - 1e-9));
            EXPECT_NEAR(early, series.uptake(DiffusionSeries::least_fourier), 1e-9);
            EXPECT_NEAR(series.centre(0), 0, 1e-12);
        }
    }
    // Short times of a sheet: 2 sqrt(Fo/pi) (Crank eq. 4.20's leading term).
    const auto sheet = DiffusionSeries::constant_surface(Body::sheet);
    EXPECT_NEAR(sheet.uptake(1e-6), 2 * std::sqrt(1e-6 / M_PI), 1e-12);
}

TEST(DiffusionSeries, SharesThatAreNeverReachedHaveNoTime) {
    const auto sheet = DiffusionSeries::constant_surface(Body::sheet);
    for (const double share : {0.0, 1.0, -0.5, 2.0}) {
        EXPECT_FALSE(sheet.fourier_at_uptake(share).has_value());
        EXPECT_FALSE(sheet.fourier_at_centre(share).has_value());
    }
}

TEST(RestingSeries, AgreesWithFiniteVolumes) {
    for (const Body body : bodies) {
        const RestingSeries series(body);
        Piece piece(body, 200);
        piece.run(0.03, 800, Piece::Surface::held_at_one);
        EXPECT_NEAR(1 - series.mean_deficit(0.03), piece.mean(), 1e-3);
        piece.run(0.1, 800, Piece::Surface::sealed);
        EXPECT_NEAR(1 - series.centre_deficit(0.03, 0.1), piece.centre(), 1e-3);
        EXPECT_NEAR(1 - series.mean_deficit(0.03), piece.mean(), 1e-3);
        piece.run(0.3, 800, Piece::Surface::sealed);
        EXPECT_NEAR(1 - series.centre_deficit(0.03, 0.4), piece.centre(), 1e-3);
    }
}

TEST(RestingSeries, NoRestIsTheSaltedCentreAndLongRestIsTheMean) {
    for (const Body body : bodies) {
        const RestingSeries series(body);
        const auto salting = DiffusionSeries::constant_surface(body);
        // At no rest the expansion is cut off: the profile has a corner at the surface.
        EXPECT_NEAR(1 - series.centre_deficit(0.1, 1e-3), salting.centre(0.1), 0.03);
        EXPECT_NEAR(series.centre_deficit(0.1, 10), series.mean_deficit(0.1), 1e-12);
    }
}

} // namespace
