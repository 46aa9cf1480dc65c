#include "tests/support/virtual_population.h"
#include <algorithm>
namespace tests::support {
VirtualPiece make_piece(const PopulationSetting& p, std::uint64_t seed) {
    for (std::uint64_t attempt = 0;; ++attempt) {
        std::mt19937_64 rng(seed * 1000003ULL + attempt * 7919ULL + 17);
        std::uniform_real_distribution<double> u01(0, 1);
        std::normal_distribution<double> n01(0, 1);
        auto u = [&](double a, double b) { return a + (b - a) * u01(rng); };
        VirtualPieceSpec s;
        s.form = static_cast<VirtualForm>(static_cast<int>(u(0, 2.999)));
        s.thickness_m = std::exp(u(std::log(p.thick_lo), std::log(p.thick_hi)));
        s.hang_weight_g = std::clamp(
            1500 * std::pow(s.thickness_m / 0.07, 1.2) * std::exp(0.3 * n01(rng)), 250.0, 9000.0);
        s.fat_share = u(p.fat_lo, p.fat_hi);
        s.target_loss = u(p.target_lo, p.target_hi);
        s.lean_water = std::clamp(0.725 + 0.015 * n01(rng), 0.67, 0.76);
        s.diffusivity_m2_s = p.d_median * std::exp(p.d_spread * std::clamp(n01(rng), -2.0, 2.0)) *
                             (1 - 0.6 * s.fat_share);
        s.law = p.laws[static_cast<std::size_t>(u(0, static_cast<double>(p.laws.size()) - 1e-6))];
        s.law_strength = u(p.strength_lo, p.strength_hi);
        s.activation_kj_mol = u(20, 45);
        s.film_m_s = p.film_median * std::exp(p.film_spread * n01(rng));
        s.isotherm = p.isotherms[static_cast<std::size_t>(
            u(0, static_cast<double>(p.isotherms.size()) - 1e-6))];
        if (s.isotherm == IsothermLaw::gab) {
            s.isotherm_a = u(0.06, 0.12);
            s.isotherm_b = u(5, 15);
            s.isotherm_c = u(0.92, 0.985);
        }
        if (s.isotherm == IsothermLaw::oswin) {
            s.isotherm_a = u(0.15, 0.28);
            s.isotherm_b = u(0.45, 0.65);
        }
        if (s.isotherm == IsothermLaw::henderson) {
            s.isotherm_a = u(2.2, 3.6);
            s.isotherm_b = u(0.7, 1.1);
        }
        s.wet_activity = u(0.955, 0.99);
        s.shrinkage = u01(rng) < 0.5 ? 0 : u(0.3, p.shrink_hi);
        s.crust_factor = u(1, p.crust_hi);
        s.taper = p.taper * u01(rng);
        s.sealed_side = p.sealed && s.form == VirtualForm::slab && u01(rng) < 0.5;
        const double rh = u(p.rh_lo, p.rh_hi), tc = u(8, 18), sd = u(p.rh_sd_lo, p.rh_sd_hi),
                     rho = u(p.rho_lo, p.rho_hi), tsd = u(0.3, 1.5);
        const double swing = p.pulse * u(-1, 1), phase = u(0, 6.28);
        double a = n01(rng), b = n01(rng);
        for (int d = 0; d < static_cast<int>(p.max_days) + 2; ++d) {
            s.weather.rh_percent.push_back(
                std::clamp(rh + sd * a + swing * std::sin(6.2832 * d / 150 + phase), 35.0, 96.0));
            s.weather.temp_c.push_back(std::clamp(tc + tsd * b, 1.0, 28.0));
            a = rho * a + std::sqrt(1 - rho * rho) * n01(rng);
            b = rho * b + std::sqrt(1 - rho * rho) * n01(rng);
        }
        s.noise_g = u(p.noise_lo, p.noise_hi);
        s.scale_step_g = u01(rng) < 0.7 ? 1 : 5;
        auto run = [&] {
            return p.simulator == 1 ? run_explicit(s, p.max_days) : run_tapered(s, p.max_days);
        };
        VirtualPiece v;
        v.course = run();
        v.ready_day = v.course.days_to(s.target_loss);
        if (v.ready_day < 8)
            continue;
        if (p.step_rh > 0) {
            const double at = v.ready_day * u(0.2, 0.45),
                         step = (u01(rng) < 0.5 ? -1 : 1) * p.step_rh * u(0.7, 1.3);
            const double tstep = u(-4, 4);
            for (std::size_t d = static_cast<std::size_t>(at); d < s.weather.rh_percent.size();
                 ++d) {
                s.weather.rh_percent[d] = std::clamp(s.weather.rh_percent[d] + step, 35.0, 92.0);
                s.weather.temp_c[d] += tstep;
            }
            v.course = run();
            v.ready_day = v.course.days_to(s.target_loss);
            if (v.ready_day < 8)
                continue;
        }
        s.weigh_interval_d = std::clamp(v.ready_day / 12 * u(0.6, 1.5), 1.0, 14.0);
        v.spec = s;
        v.weighings = weigh(s, v.course, v.ready_day, rng);
        return v;
    }
}

std::vector<VirtualPiece> make_pieces(const PopulationSetting& setting, int count,
                                      std::uint64_t first_number) {
    std::vector<VirtualPiece> out;
    for (int i = 0; i < count; ++i) {
        out.push_back(make_piece(setting, first_number + static_cast<std::uint64_t>(i)));
    }
    return out;
}

PopulationSetting usual_pieces() {
    PopulationSetting p;
    p.name = "usual";
    p.laws = {DiffusivityLaw::exponential, DiffusivityLaw::power};
    p.d_spread = 0.5;
    p.film_spread = 0.4;
    p.rh_sd_hi = 4;
    p.thick_lo = 0.04;
    p.thick_hi = 0.09;
    p.target_lo = 0.3;
    p.target_hi = 0.4;
    p.fat_hi = 0.25;
    p.noise_hi = 3;
    p.rh_hi = 78;
    return p;
}

PopulationSetting broad_pieces() {
    PopulationSetting p;
    p.crust_hi = 3;
    return p;
}

PopulationSetting exponential_pieces() {
    PopulationSetting p;
    p.name = "exponential law";
    p.laws = {DiffusivityLaw::exponential};
    p.strength_lo = 1;
    p.isotherms = {IsothermLaw::gab};
    p.shrink_hi = 0.31;
    p.fat_hi = 0.3;
    p.target_hi = 0.4;
    return p;
}

PopulationSetting constant_pieces() {
    PopulationSetting p;
    p.name = "constant law";
    p.laws = {DiffusivityLaw::constant};
    p.d_median = 3e-11;
    p.isotherms = {IsothermLaw::oswin};
    p.film_median = 3e-3;
    return p;
}

PopulationSetting sheltered_pieces() {
    PopulationSetting p;
    p.name = "sheltered";
    p.d_median = 1.5e-10;
    p.film_median = 1.5e-3;
    p.crust_hi = 2;
    return p;
}

PopulationSetting weather_pieces() {
    PopulationSetting p;
    p.name = "weather-driven";
    p.rh_sd_lo = 4;
    p.rh_sd_hi = 8;
    p.rho_lo = 0.8;
    p.pulse = 5;
    return p;
}

PopulationSetting tapered_pieces() {
    PopulationSetting p;
    p.name = "tapered (second)";
    p.simulator = 2;
    p.taper = 0.45;
    p.sealed = true;
    p.laws = {DiffusivityLaw::inverse_moisture, DiffusivityLaw::exponential};
    p.isotherms = {IsothermLaw::henderson};
    return p;
}

PopulationSetting stepped_pieces() {
    PopulationSetting p = usual_pieces();
    p.name = "climate step";
    p.step_rh = 9;
    p.rh_lo = 68;
    return p;
}

std::vector<PopulationSetting> all_populations() {
    return {usual_pieces(),     broad_pieces(),   exponential_pieces(), constant_pieces(),
            sheltered_pieces(), weather_pieces(), tapered_pieces(),     stepped_pieces()};
}
} // namespace tests::support
