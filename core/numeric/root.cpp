#include "core/numeric/root.h"

#include "core/numeric/gsl_codes.h"

#include <cmath>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_roots.h>
#include <limits>
#include <memory>

namespace core::numeric {

namespace {

struct FreeSolver {
    void operator()(gsl_root_fsolver* s) const { gsl_root_fsolver_free(s); }
};

double call(double x, void* f) noexcept {
    try {
        return (*static_cast<const std::function<double(double)>*>(f))(x);
    } catch (...) {
        return std::numeric_limits<double>::quiet_NaN(); // GSL turns this into GSL_EBADFUNC
    }
}

} // namespace

base::Result<double> find_root(const std::function<double(double)>& f, double low, double high,
                               double relative_tolerance) {
    use_gsl_return_codes();
    if (!f || !std::isfinite(low) || !std::isfinite(high) || !(low < high)) {
        return base::fault(base::ErrorCode::no_solution, "empty bracket");
    }
    auto* shared = const_cast<std::function<double(double)>*>(&f); // GSL's params are void*
    const double at_low = call(low, shared);
    const double at_high = call(high, shared);
    if (at_low == 0.0) {
        return low;
    }
    if (at_high == 0.0) {
        return high;
    }
    if (!std::isfinite(at_low) || !std::isfinite(at_high) || (at_low > 0) == (at_high > 0)) {
        return base::fault(base::ErrorCode::no_solution, "no change of sign");
    }
    gsl_function function{&call, shared};
    const std::unique_ptr<gsl_root_fsolver, FreeSolver> solver(
        gsl_root_fsolver_alloc(gsl_root_fsolver_brent));
    if (!solver || gsl_root_fsolver_set(solver.get(), &function, low, high) != GSL_SUCCESS) {
        return base::fault(base::ErrorCode::no_solution, "solver not set up");
    }
    constexpr int most_iterations = 300; // bisection alone halves any double bracket in < 300
    constexpr double least_width = 1e-300;
    for (int i = 0; i < most_iterations; ++i) {
        if (gsl_root_fsolver_iterate(solver.get()) != GSL_SUCCESS) {
            return base::fault(base::ErrorCode::no_solution, "function has no value inside");
        }
        const double a = gsl_root_fsolver_x_lower(solver.get());
        const double b = gsl_root_fsolver_x_upper(solver.get());
        if (gsl_root_test_interval(a, b, least_width, relative_tolerance) == GSL_SUCCESS ||
            std::nextafter(a, b) >= b) {
            return gsl_root_fsolver_root(solver.get());
        }
    }
    return base::fault(base::ErrorCode::no_convergence);
}

} // namespace core::numeric
