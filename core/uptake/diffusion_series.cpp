#include "core/uptake/diffusion_series.h"

#include "core/numeric/bessel.h"
#include "core/numeric/root.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <numbers>

namespace core::uptake {

namespace {

using std::numbers::pi;
constexpr unsigned term_count = 200;

/// The eigenfunction of the body, 1 at the centre: cos, J0 or sin(z)/z.
double shape(Body body, double z) {
    switch (body) {
    case Body::sheet:
        return std::cos(z);
    case Body::cylinder:
        return numeric::bessel_j0(z);
    case Body::sphere:
        break;
    }
    return z == 0 ? 1.0 : std::sin(z) / z;
}

std::vector<double> each_root(const std::function<double(unsigned n)>& nth) {
    std::vector<double> roots;
    roots.reserve(term_count);
    for (unsigned n = 1; n <= term_count; ++n) {
        roots.push_back(nth(n));
    }
    return roots;
}

/// Brackets below are chosen so that a root is always inside; failing is our own bug.
double bracketed(const std::function<double(double)>& f, double low, double high) {
    const auto root = numeric::find_root(f, low, high);
    assert(root.has_value());
    return root.value_or(low);
}

std::vector<double> constant_surface_roots(Body body) {
    switch (body) {
    case Body::sheet:
        return each_root([](unsigned n) { return (n - 0.5) * pi; });
    case Body::cylinder:
        return each_root(numeric::bessel_j0_zero);
    case Body::sphere:
        break;
    }
    return each_root([](unsigned n) { return n * pi; });
}

double resistance_root(Body body, double biot, unsigned n) {
    switch (body) {
    case Body::sheet: // b tan b = L
        return bracketed([biot](double b) { return b * std::sin(b) - biot * std::cos(b); },
                         (n - 1) * pi, (n - 0.5) * pi);
    case Body::cylinder: // b J1(b) = L J0(b)
        return bracketed(
            [biot](double b) { return b * numeric::bessel_j1(b) - biot * numeric::bessel_j0(b); },
            n == 1 ? 0.0 : numeric::bessel_j1_zero(n - 1), numeric::bessel_j0_zero(n));
    case Body::sphere:
        break;
    }
    // b cot b + L - 1 = 0. b = 0 solves the form without quotient but is no root of it; the
    // first true root is near sqrt(3 L) for small L, above the lower bound taken here.
    const double low = n == 1 ? 0.5 * std::sqrt(std::min(biot, 1.0)) : (n - 1) * pi;
    return bracketed([biot](double b) { return b * std::cos(b) + (biot - 1) * std::sin(b); }, low,
                     n * pi);
}

double limited_volume_root(Body body, double alpha, unsigned n) {
    switch (body) {
    case Body::sheet: // tan q = -alpha q
        return alpha == 0
                   ? n * pi
                   : bracketed([alpha](double q) { return std::sin(q) + alpha * q * std::cos(q); },
                               (n - 0.5) * pi, n * pi);
    case Body::cylinder: // alpha q J0(q) + 2 J1(q) = 0
        return alpha == 0
                   ? numeric::bessel_j1_zero(n)
                   : bracketed(
                         [alpha](double q) {
                             return alpha * q * numeric::bessel_j0(q) + 2 * numeric::bessel_j1(q);
                         },
                         numeric::bessel_j0_zero(n), numeric::bessel_j1_zero(n));
    case Body::sphere:
        break;
    }
    // tan q = 3 q / (3 + alpha q^2)
    return bracketed(
        [alpha](double q) { return (3 + alpha * q * q) * std::sin(q) - 3 * q * std::cos(q); },
        n * pi, (n + 0.5) * pi);
}

/// 1 for a sheet, 2 for a cylinder, 3 for a sphere: surface over volume in units of 1/l.
double surface_per_volume(Body body) {
    switch (body) {
    case Body::sheet:
        return 1;
    case Body::cylinder:
        return 2;
    case Body::sphere:
        break;
    }
    return 3;
}

} // namespace

DiffusionSeries DiffusionSeries::constant_surface(Body body) {
    DiffusionSeries series(body, constant_surface_roots(body));
    for (std::size_t i = 0; i < series.roots_.size(); ++i) {
        const double q = series.roots_[i];
        const double sign = i % 2 == 0 ? 1 : -1; // (-1)^(n+1)
        series.uptake_weights_.push_back(2 * surface_per_volume(body) / (q * q));
        switch (body) {
        case Body::sheet:
            series.level_weights_.push_back(2 * sign / q);
            break;
        case Body::cylinder:
            series.level_weights_.push_back(2 / (q * numeric::bessel_j1(q)));
            break;
        case Body::sphere:
            series.level_weights_.push_back(2 * sign);
            break;
        }
    }
    return series;
}

DiffusionSeries DiffusionSeries::surface_resistance(Body body, double biot) {
    assert(biot > 0 && std::isfinite(biot));
    DiffusionSeries series(body,
                           each_root([&](unsigned n) { return resistance_root(body, biot, n); }));
    series.early_power_ = 1.0;
    const double curved = body == Body::sheet ? biot : body == Body::sphere ? -biot : 0.0;
    for (const double b : series.roots_) {
        const double under = b * b + biot * biot + curved;
        series.uptake_weights_.push_back(2 * surface_per_volume(body) * biot * biot /
                                         (b * b * under));
        series.level_weights_.push_back(2 * biot / (under * shape(body, b)));
    }
    return series;
}

DiffusionSeries DiffusionSeries::limited_volume(Body body, double outside_ratio) {
    assert(outside_ratio >= 0 && std::isfinite(outside_ratio));
    const double alpha = outside_ratio;
    const double k = surface_per_volume(body);
    DiffusionSeries series(
        body, each_root([&](unsigned n) { return limited_volume_root(body, alpha, n); }));
    series.early_power_ = alpha == 0 ? 0.0 : 0.5; // a dry rub is in from the start
    for (const double q : series.roots_) {
        // k^2 (1 + alpha) + alpha^2 q^2 is Crank's denominator for each body.
        const double common = 2 * k * (1 + alpha) / (k * k * (1 + alpha) + alpha * alpha * q * q);
        series.uptake_weights_.push_back(alpha * common);
        series.level_weights_.push_back(-common / shape(body, q));
    }
    return series;
}

double DiffusionSeries::uptake(double fo) const {
    if (!(fo > 0)) {
        return 0.0;
    }
    if (fo < least_fourier) {
        return uptake(least_fourier) * std::pow(fo / least_fourier, early_power_);
    }
    double missing = 0;
    for (std::size_t i = 0; i < roots_.size(); ++i) {
        const double term = uptake_weights_[i] * std::exp(-roots_[i] * roots_[i] * fo);
        missing += term;
        if (term < 1e-18) {
            break; // weights are positive and shrink: the rest is smaller still
        }
    }
    return std::clamp(1 - missing, 0.0, 1.0);
}

double DiffusionSeries::level(double fo, double x) const {
    const double time = std::max(fo, least_fourier);
    double missing = 0;
    for (std::size_t i = 0; i < roots_.size(); ++i) {
        const double decay = std::exp(-roots_[i] * roots_[i] * time);
        missing += level_weights_[i] * shape(body_, roots_[i] * x) * decay;
        if (decay < 1e-20) {
            break; // weights grow at most like the root itself
        }
    }
    return std::max(1 - missing, 0.0);
}

std::optional<double> DiffusionSeries::fourier_at_uptake(double share) const {
    constexpr double longest = 1e5;
    if (!(share > 0 && share < 1) || uptake(1e-12) >= share) {
        return std::nullopt;
    }
    const auto root =
        numeric::find_root([&](double fo) { return uptake(fo) - share; }, 0.0, longest, 1e-14);
    return root ? std::optional(*root) : std::nullopt;
}

std::optional<double> DiffusionSeries::fourier_at_centre(double share) const {
    constexpr double longest = 1e5;
    if (!(share > 0 && share < 1)) {
        return std::nullopt;
    }
    const auto root = numeric::find_root([&](double fo) { return centre(fo) - share; },
                                         least_fourier, longest, 1e-14);
    return root ? std::optional(*root) : std::nullopt;
}

RestingSeries::RestingSeries(Body body)
    : salting_(DiffusionSeries::constant_surface(body)),
      roots_(each_root([body](unsigned n) { return limited_volume_root(body, 0.0, n); })) {
    for (const double root : roots_) {
        edge_values_.push_back(shape(body, root));
    }
}

double RestingSeries::mean_deficit(double fo_salting) const {
    return 1 - salting_.uptake(fo_salting);
}

double RestingSeries::centre_deficit(double fo_salting, double fo_rest) const {
    // u(0) = mean + sum_m a_m exp(-mu_m^2 Fo_rest) with
    // a_m = 4 / shape(mu_m) sum_n exp(-lambda_n^2 Fo_salting) / (lambda_n^2 - mu_m^2):
    // the overlap of the salting and the sealed eigenfunctions, the same form for all bodies.
    const double salted = std::max(fo_salting, DiffusionSeries::least_fourier);
    const auto& lambda = salting_.roots();
    double deficit = mean_deficit(fo_salting);
    for (std::size_t m = 0; m < roots_.size(); ++m) {
        const double mu2 = roots_[m] * roots_[m];
        const double decay = std::exp(-mu2 * std::max(fo_rest, 0.0));
        if (decay < 1e-18) {
            break;
        }
        double overlap = 0;
        for (const double root : lambda) {
            const double kept = std::exp(-root * root * salted);
            overlap += kept / (root * root - mu2);
            if (kept < 1e-20) {
                break;
            }
        }
        deficit += 4 / edge_values_[m] * overlap * decay;
    }
    return deficit;
}

} // namespace core::uptake
