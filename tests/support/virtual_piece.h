// Independent drying simulators for tests. They share no code with core/drying.
#pragma once
#include <cstdint>
#include <random>
#include <string>
#include <vector>
namespace tests::support {

enum class VirtualForm { slab, cylinder, round };
enum class DiffusivityLaw { constant, exponential, power, inverse_moisture };
enum class IsothermLaw { gab, henderson, oswin, oswin_salted };

/// Daily air: one value a day, day 0 starts at hanging.
struct VirtualWeather {
    std::vector<double> temp_c, rh_percent;
};

/// All that makes one virtual piece. SI units unless named.
struct VirtualPieceSpec {
    VirtualForm form = VirtualForm::slab;
    double thickness_m = 0.06;
    double hang_weight_g = 1500;
    double fat_share = 0.1;
    double target_loss = 0.35;
    double lean_water = 0.73;        // wet basis, of the lean part when hung
    double diffusivity_m2_s = 5e-11; // at full moisture and 13 C
    DiffusivityLaw law = DiffusivityLaw::exponential;
    double law_strength = 1.5;
    double activation_kj_mol = 30;
    double film_m_s = 4.4e-3;
    IsothermLaw isotherm = IsothermLaw::gab;
    double isotherm_a = 0.09, isotherm_b = 10, isotherm_c = 0.95;
    double wet_activity = 0.975; // ceiling of the surface water activity
    double shrinkage = 0.0;      // share of lost water volume that shrinks the thickness
    double crust_factor = 1.0;   // diffusivity is divided by this where the meat is nearly dry
    double taper = 0.0;          // spread of thickness within the piece (second simulator)
    bool sealed_side = false;    // one face sealed (second simulator; slab only)
    VirtualWeather weather;
    double noise_g = 2, scale_step_g = 1;
    double weigh_interval_d = 5, interval_jitter = 0.2;
};

/// True loss share of the hung weight, one value each `step_d`.
struct VirtualCourse {
    double step_d = 0.25;
    std::vector<double> loss;
    double loss_at(double day) const;
    /// Days to the target; negative if not reached within the course.
    double days_to(double target) const;
};

struct VirtualWeighing {
    double day;
    double grams;
};

VirtualCourse run_explicit(const VirtualPieceSpec& spec, double days); // simulator one
VirtualCourse run_tapered(const VirtualPieceSpec& spec, double days);  // simulator two
std::vector<VirtualWeighing> weigh(const VirtualPieceSpec& spec, const VirtualCourse& course,
                                   double until_day, std::mt19937_64& rng);
} // namespace tests::support
