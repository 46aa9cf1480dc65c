// Random virtual pieces, by named setting.
#pragma once
#include "tests/support/virtual_piece.h"
#include <cmath>
namespace test_support {
struct VirtualPiece {
    VirtualPieceSpec spec;
    VirtualCourse course;
    double ready_day = -1;
    std::vector<VirtualWeighing> weighings;
};
struct PopulationSetting {
    std::string name = "plain";
    int simulator = 1;
    double d_median = 5e-11, d_spread = 0.7;
    std::vector<DiffusivityLaw> laws{DiffusivityLaw::constant, DiffusivityLaw::exponential,
                                     DiffusivityLaw::power};
    double strength_lo = 0.5, strength_hi = 3;
    std::vector<IsothermLaw> isotherms{IsothermLaw::gab, IsothermLaw::oswin,
                                       IsothermLaw::henderson};
    double film_median = 4.4e-3, film_spread = 0.5;
    double thick_lo = 0.025, thick_hi = 0.15;
    double fat_lo = 0, fat_hi = 0.4;
    double rh_lo = 65, rh_hi = 82, rh_sd_lo = 1, rh_sd_hi = 5, rho_lo = 0.4, rho_hi = 0.95;
    double noise_lo = 1, noise_hi = 5;
    double target_lo = 0.2, target_hi = 0.45;
    double shrink_hi = 0.9, crust_hi = 1;
    double taper = 0;
    bool sealed = false;
    double step_rh = 0; // size of a climate step placed at 20-45 % of the time
    double max_days = 400;
    double pulse = 0; // slow seasonal swing of RH
};
VirtualPiece make_piece(const PopulationSetting& set, std::uint64_t seed);
} // namespace test_support
