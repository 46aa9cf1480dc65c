#pragma once

#include "core/base/result.h"

#include <functional>

namespace core::numeric {

struct Integral {
    double value = 0;
    double error = 0; ///< estimated bound of the absolute error
};

/// The integral of f from low to high (finite, either order) by adaptive 21-point Gauss-Kronrod
/// (GSL qag). Fails with no_convergence when `relative_tolerance` cannot be reached and
/// no_solution when f has no finite value at a point tried. Thread-safe.
base::Result<Integral> integrate(const std::function<double(double)>& f, double low, double high,
                                 double relative_tolerance = 1e-10);

} // namespace core::numeric
