#pragma once

namespace core::numeric {

/// Bessel functions of the first kind, for diffusion in cylinders (GSL; relative error a few
/// 1e-16 away from the zeros). Any finite x; NaN for x beyond about 1e8, where GSL gives up.
double bessel_j0(double x);
double bessel_j1(double x);

/// The n-th positive zero of J0 and J1, n >= 1 (n = 0 gives NaN).
double bessel_j0_zero(unsigned n);
double bessel_j1_zero(unsigned n);

} // namespace core::numeric
