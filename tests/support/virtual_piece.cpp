#include "tests/support/virtual_piece.h"
#include <algorithm>
#include <cmath>
namespace tests::support {
namespace {
constexpr double kDay = 86400.0;

double vapour_pa(double c) {
    return 610.94 * std::exp(17.625 * c / (243.04 + c));
}

// Water activity of the meat surface from dry-basis moisture of the lean part.
double activity(const VirtualPieceSpec& s, double x) {
    x = std::max(x, 1e-6);
    double aw = 0;
    switch (s.isotherm) {
    case IsothermLaw::gab: {
        // X = m C K a / ((1-Ka)(1-Ka+CKa)), solved for a: quadratic in y = K a.
        const double m = s.isotherm_a, c = s.isotherm_b, k = s.isotherm_c;
        const double qa = x * (1 - c), qb = x * (c - 2) - m * c, qc = x;
        const double disc = std::sqrt(std::max(0.0, qb * qb - 4 * qa * qc));
        const double y1 = (-qb - disc) / (2 * qa), y2 = (-qb + disc) / (2 * qa);
        const double y = (y1 > 0 && y1 < 1) ? y1 : y2;
        aw = y / k;
        break;
    }
    case IsothermLaw::henderson:
        aw = 1 - std::exp(-s.isotherm_a * std::pow(x, s.isotherm_b));
        break;
    case IsothermLaw::oswin: {
        const double z = std::pow(x / s.isotherm_a, 1 / s.isotherm_b);
        aw = z / (1 + z);
        break;
    }
    case IsothermLaw::oswin_salted: {
        const double z = std::pow(x / s.isotherm_a, 1 / s.isotherm_b);
        return s.wet_activity * z / (1 + z); // the ceiling lowers the whole curve
    }
    }
    return std::min(aw, s.wet_activity);
}

double diffusivity(const VirtualPieceSpec& s, double x, double x0, double temp_c) {
    const double arr =
        std::exp(-s.activation_kj_mol * 1000 / 8.314 * (1 / (temp_c + 273.15) - 1 / 286.15));
    const double u = std::clamp(x / x0, 0.02, 1.0);
    double f = 1;
    switch (s.law) {
    case DiffusivityLaw::constant:
        break;
    case DiffusivityLaw::exponential:
        f = std::exp(-s.law_strength * (1 - u));
        break;
    case DiffusivityLaw::power:
        f = std::pow(u, s.law_strength);
        break;
    case DiffusivityLaw::inverse_moisture:
        f = std::exp(-0.3 * s.law_strength * (1 / u - 1));
        break;
    }
    if (s.crust_factor > 1 && u < 0.3)
        f /= 1 + (s.crust_factor - 1) * (0.3 - u) / 0.3;
    return s.diffusivity_m2_s * arr * f;
}

double weather_at(const std::vector<double>& v, double day) {
    const auto i = static_cast<std::size_t>(std::max(0.0, day));
    return v[std::min(i, v.size() - 1)];
}

// One 1-D body, explicit in time, fine uniform grid.
std::vector<double> body_loss(const VirtualPieceSpec& s, double half_m, double days, double step_d,
                              int cells) {
    const int g = s.form == VirtualForm::slab ? 0 : s.form == VirtualForm::cylinder ? 1 : 2;
    const auto n = static_cast<std::size_t>(cells);
    const double lean = 1 - s.fat_share;
    const double water = lean * s.lean_water + s.fat_share * 0.08;
    const double lean_dry = lean * (1 - s.lean_water) + 1e-9;
    const double x0 = water / lean_dry;       // kg water per kg lean dry matter
    const double solids0 = 1060.0 * lean_dry; // kg lean dry matter per m3
    const double h0 = half_m / cells;
    std::vector<double> x(n, x0), vol(n), area(n + 1), flux(n + 1, 0.0);
    for (std::size_t i = 0; i <= n; ++i)
        area[i] = std::pow(static_cast<double>(i) / cells, g);
    double total = 0;
    for (std::size_t i = 0; i < n; ++i) {
        vol[i] = (std::pow((static_cast<double>(i) + 1) / cells, g + 1) -
                  std::pow(static_cast<double>(i) / cells, g + 1)) /
                 (g + 1);
        total += vol[i];
    }
    std::vector<double> out{0.0};
    double t = 0, lost = 0;
    double next = step_d * kDay;
    double xs = x0;
    while (out.size() <= static_cast<std::size_t>(days / step_d)) {
        const double day = t / kDay;
        const double tc = weather_at(s.weather.temp_c, day);
        const double rh = std::clamp(weather_at(s.weather.rh_percent, day) / 100, 0.2, 0.98);
        const double pv = vapour_pa(tc) / (461.5 * (tc + 273.15)); // saturated vapour density
        // shrink the thickness with the water lost so far
        const double shrink = std::max(0.3, 1 - s.shrinkage * lost * 1.06);
        const double lin = g == 0 ? shrink : std::pow(shrink, 1.0 / (g + 1));
        const double h = h0 * lin;
        const double solids = solids0 / shrink;
        double dmax = 0, dprev = diffusivity(s, x[0], x0, tc);
        dmax = dprev;
        double dlast = dprev;
        for (std::size_t i = 1; i < n; ++i) {
            const double d = diffusivity(s, x[i], x0, tc);
            dmax = std::max(dmax, d);
            flux[i] = 0.5 * (d + dprev) * (x[i - 1] - x[i]) / h;
            dprev = d;
            dlast = d;
        }
        // surface value from film balance, by bisection around the last one
        double lo = 1e-5, hi = x[n - 1];
        auto gap = [&](double v) {
            const double dface = 0.5 * (dlast + diffusivity(s, v, x0, tc));
            return solids * dface * (x[n - 1] - v) / (0.5 * h) -
                   s.film_m_s * pv * (activity(s, v) - rh);
        };
        double f = 0;
        if (gap(hi) > 0) { // air wetter than the meat: takes water up
            f = s.film_m_s * pv * (activity(s, hi) - rh) / solids;
        } else {
            for (int k = 0; k < 30; ++k) {
                const double mid = 0.5 * (lo + hi);
                (gap(mid) > 0 ? lo : hi) = mid;
            }
            xs = 0.5 * (lo + hi);
            f = s.film_m_s * pv * (activity(s, xs) - rh) / solids;
        }
        flux[n] = f;
        const double dt = std::min({0.4 * h * h / dmax / 1.5, next - t, 21600.0});
        double sum = 0;
        for (std::size_t i = 0; i < n; ++i) {
            x[i] += dt * (area[i] * flux[i] - area[i + 1] * flux[i + 1]) / (vol[i] * half_m * lin);
            sum += vol[i] * x[i];
        }
        lost = (x0 - sum / total) * lean_dry;
        t += dt;
        if (t >= next - 1e-6) {
            out.push_back(lost);
            next += step_d * kDay;
        }
    }
    return out;
}
} // namespace

double VirtualCourse::loss_at(double day) const {
    const double p = std::max(0.0, day / step_d);
    const auto i = std::min(static_cast<std::size_t>(p), loss.size() - 2);
    const double f = std::min(1.0, p - static_cast<double>(i));
    return loss[i] + f * (loss[i + 1] - loss[i]);
}
double VirtualCourse::days_to(double target) const {
    for (std::size_t i = 1; i < loss.size(); ++i)
        if (loss[i] >= target)
            return step_d *
                   (static_cast<double>(i) - 1 + (target - loss[i - 1]) / (loss[i] - loss[i - 1]));
    return -1;
}
VirtualCourse run_explicit(const VirtualPieceSpec& s, double days) {
    VirtualCourse c;
    c.loss = body_loss(s, s.thickness_m / 2, days, c.step_d, 30);
    return c;
}
VirtualCourse run_tapered(const VirtualPieceSpec& s, double days) {
    // A tapered piece: three bodies side by side, thin, middle and thick, weighted by volume.
    VirtualCourse c;
    const double f[3] = {1 - s.taper, 1.0, 1 + s.taper};
    double wsum = 0;
    for (double k : f) {
        const double half = (s.sealed_side ? s.thickness_m : s.thickness_m / 2) * k;
        auto part = body_loss(s, half, days, c.step_d, 24);
        if (c.loss.empty())
            c.loss.assign(part.size(), 0.0);
        for (std::size_t i = 0; i < part.size(); ++i)
            c.loss[i] += k * part[i];
        wsum += k;
    }
    for (double& v : c.loss)
        v /= wsum;
    return c;
}
std::vector<VirtualWeighing> weigh(const VirtualPieceSpec& s, const VirtualCourse& course,
                                   double until, std::mt19937_64& rng) {
    std::normal_distribution<double> n(0, 1);
    std::vector<VirtualWeighing> out;
    double day = 0;
    while (day <= until) {
        double g = s.hang_weight_g * (1 - course.loss_at(day)) + s.noise_g * n(rng);
        g = std::round(g / s.scale_step_g) * s.scale_step_g;
        out.push_back({day, g});
        day += s.weigh_interval_d * std::clamp(1 + s.interval_jitter * n(rng), 0.4, 1.8);
    }
    return out;
}
} // namespace tests::support
