#pragma once

#include "tests/support/virtual_piece.h"

#include <cstdint>
#include <string>
#include <vector>

/// Random virtual pieces of one kind. The same kind and number always give the same piece.
namespace tests::support {

/// A virtual piece with its true course and its weighings up to the target.
struct VirtualPiece {
    VirtualPieceSpec spec;
    VirtualCourse course;
    double ready_day = 0; ///< true days from hanging to the target
    std::vector<VirtualWeighing> weighings;
};

/// Ranges that pieces are drawn from, evenly, or log-normally where a median is given.
struct PopulationSetting {
    std::string name = "broad";
    int simulator = 1; ///< 1: run_explicit, 2: run_tapered
    double d_median = 5e-11, d_spread = 0.7;
    std::vector<DiffusivityLaw> laws{DiffusivityLaw::constant, DiffusivityLaw::exponential,
                                     DiffusivityLaw::power};
    double strength_lo = 0.5, strength_hi = 3;
    std::vector<IsothermLaw> isotherms{IsothermLaw::gab, IsothermLaw::oswin,
                                       IsothermLaw::henderson};
    double film_median = 4.4e-3, film_spread = 0.5;
    double thick_lo = 0.025, thick_hi = 0.15; ///< m
    double fat_lo = 0, fat_hi = 0.4;
    double rh_lo = 65, rh_hi = 82, rh_sd_lo = 1, rh_sd_hi = 5; ///< percent
    double rho_lo = 0.4, rho_hi = 0.95;                        ///< memory of the weather, per day
    double noise_lo = 1, noise_hi = 5;                         ///< g
    double target_lo = 0.2, target_hi = 0.45;
    double shrink_hi = 0.9, crust_hi = 1;
    double taper = 0;
    bool sealed = false;
    double step_rh = 0; ///< size of a climate step placed at 20 to 45 % of the time, percent
    double max_days = 400;
    double pulse = 0; ///< slow swing of the humidity, percent
};

VirtualPiece make_piece(const PopulationSetting& setting, std::uint64_t number);
std::vector<VirtualPiece> make_pieces(const PopulationSetting& setting, int count,
                                      std::uint64_t first_number);

/// Whole muscle as most makers hang it: 40 to 90 mm, up to a quarter fat, 30 to 40 % to lose, a
/// diffusivity that falls with moisture by an exponential or a power law.
PopulationSetting usual_pieces();
/// Everything at once: 25 to 150 mm, up to 40 % fat, 20 to 45 % to lose, mild crusts.
PopulationSetting broad_pieces();
/// An exponential law and a GAB isotherm only.
PopulationSetting exponential_pieces();
/// A diffusivity that does not slacken at all.
PopulationSetting constant_pieces();
/// Fast inside, sheltered outside: the film rules for long.
PopulationSetting sheltered_pieces();
/// Weather-driven: strong, lasting swings of the humidity and a season.
PopulationSetting weather_pieces();
/// The second simulator: tapered pieces, some with skin on one face, another isotherm and law.
PopulationSetting tapered_pieces();
/// Usual pieces whose climate steps in mid-course.
PopulationSetting stepped_pieces();
std::vector<PopulationSetting> all_populations();

} // namespace tests::support
