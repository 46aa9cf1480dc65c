// Fick's second law against roots and uptakes computed with 40 digits (mpmath) after Crank, The
// Mathematics of Diffusion (2nd ed., 1975); tables printed to 12 digits. The numbers below that
// are not in a table come from the same calculation unless another source is named.
#include "core/uptake/diffusion_series.h"
#include "tests/support/csv_table.h"

#include <gtest/gtest.h>

#include <cmath>

namespace {

using core::uptake::Body;
using core::uptake::DiffusionSeries;
using tests::support::CsvTable;

constexpr double table_tolerance = 1e-10; // relative; 1e-9 is the aim, 12 digits are printed

void expect_close(double found, double wanted, const std::string& what) {
    EXPECT_NEAR(found, wanted, table_tolerance * std::abs(wanted)) << what;
}

TEST(DiffusionReference, RootsOfSurfaceEvaporationSheet) {
    const auto table = CsvTable::reference("roots_surface_evaporation_sheet.csv");
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const double biot = table.number(row, "L");
        const auto series = DiffusionSeries::surface_resistance(Body::sheet, biot);
        for (std::size_t n = 1; n <= 6; ++n) {
            expect_close(series.roots()[n - 1], table.number(row, "b" + std::to_string(n)),
                         "L " + std::to_string(biot) + " n " + std::to_string(n));
        }
    }
}

TEST(DiffusionReference, RootsOfLimitedVolumeSheet) {
    const auto table = CsvTable::reference("roots_limited_volume_sheet.csv");
    for (std::size_t row = 0; row < table.rows(); ++row) {
        const double share = table.number(row, "final_uptake_pct") / 100;
        // The printed alpha is rounded; it follows from the share exactly. 0 % uptake is the
        // limit of a constant surface.
        const auto series = share == 0
                                ? DiffusionSeries::constant_surface(Body::sheet)
                                : DiffusionSeries::limited_volume(Body::sheet, (1 - share) / share);
        for (std::size_t n = 1; n <= 6; ++n) {
            expect_close(series.roots()[n - 1], table.number(row, "q" + std::to_string(n)),
                         "uptake " + std::to_string(share) + " n " + std::to_string(n));
        }
    }
}

TEST(DiffusionReference, UptakeOfAllBodiesAndSurfaces) {
    const auto table = CsvTable::reference("uptake_fraction_vs_Fo.csv");
    const std::pair<const char*, Body> bodies[] = {
        {"sheet", Body::sheet}, {"cyl", Body::cylinder}, {"sphere", Body::sphere}};
    for (const auto& [name, body] : bodies) {
        for (const char* surface : {"inf", "L0.1", "L1", "L10", "L100"}) {
            const std::string column = std::string(name) + "_" + surface;
            const auto series =
                std::string(surface) == "inf"
                    ? DiffusionSeries::constant_surface(body)
                    : DiffusionSeries::surface_resistance(body, std::stod(surface + 1));
            for (std::size_t row = 0; row < table.rows(); ++row) {
                expect_close(series.uptake(table.number(row, "Fo")), table.number(row, column),
                             column + " at Fo " + table.text(row, "Fo"));
            }
        }
    }
}

TEST(DiffusionReference, HalfAndMostTimes) {
    const auto sheet = DiffusionSeries::constant_surface(Body::sheet);
    expect_close(sheet.fourier_at_uptake(0.50).value(), 0.196730739524, "sheet 50 %");
    expect_close(sheet.fourier_at_uptake(0.90).value(), 0.848085408046, "sheet 90 %");
    expect_close(sheet.fourier_at_uptake(0.95).value(), 1.12900737673, "sheet 95 %");
    const auto cylinder = DiffusionSeries::constant_surface(Body::cylinder);
    expect_close(cylinder.fourier_at_uptake(0.50).value(), 0.0630581941915, "cylinder 50 %");
    expect_close(cylinder.fourier_at_uptake(0.90).value(), 0.334413248487, "cylinder 90 %");
    const auto sphere = DiffusionSeries::constant_surface(Body::sphere);
    expect_close(sphere.fourier_at_uptake(0.50).value(), 0.0305465242980, "sphere 50 %");
    expect_close(sphere.fourier_at_uptake(0.90).value(), 0.182985374738, "sphere 90 %");
}

// Values printed in the documentation of the open-source library polykin (read there): centre of
// a sheet at Fo 0.25 and of a sphere (the same page), and the sheet with Bi 20 at Fo 0.125, where
// the page's four terms give ...0625614 and the converged value is 0.352886178061.
TEST(DiffusionReference, ValuesOfAnotherLibrary) {
    const auto sheet = DiffusionSeries::constant_surface(Body::sheet);
    EXPECT_NEAR(sheet.uptake(0.125), 0.39892798988456807, 1e-13);
    EXPECT_NEAR(sheet.uptake(0.25), 0.562233541762138, 1e-13);
    EXPECT_NEAR(sheet.centre(0.25), 0.3145542331096478, 1e-12);
    EXPECT_NEAR(DiffusionSeries::constant_surface(Body::sphere).centre(0.25), 0.8304935009764246,
                1e-12);
    expect_close(DiffusionSeries::surface_resistance(Body::sheet, 20).uptake(0.125), 0.352886178061,
                 "Bi 20");
}

// Slabs of lean pork salted on both faces with D = 1.9e-10 m2/s: days to 50 and 90 %.
TEST(DiffusionReference, SlabDays) {
    const auto sheet = DiffusionSeries::constant_surface(Body::sheet);
    const double d = 1.9e-10;
    const auto days = [&](double share, double thickness) {
        const double l = thickness / 2;
        return sheet.fourier_at_uptake(share).value() * l * l / d / 86400;
    };
    EXPECT_NEAR(days(0.5, 0.03), 2.70, 0.005);
    EXPECT_NEAR(days(0.9, 0.03), 11.62, 0.005);
    EXPECT_NEAR(days(0.5, 0.05), 7.49, 0.005);
    EXPECT_NEAR(days(0.9, 0.05), 32.29, 0.005);
    EXPECT_NEAR(days(0.5, 0.08), 19.17, 0.005);
    EXPECT_NEAR(days(0.9, 0.08), 82.66, 0.005);
}

} // namespace
