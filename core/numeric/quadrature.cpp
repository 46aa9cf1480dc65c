#include "core/numeric/quadrature.h"

#include "core/numeric/gsl_codes.h"

#include <cmath>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_integration.h>
#include <limits>
#include <memory>

namespace core::numeric {

namespace {

struct FreeWorkspace {
    void operator()(gsl_integration_workspace* w) const { gsl_integration_workspace_free(w); }
};

struct Watched {
    const std::function<double(double)>& f;
    bool bad = false;
};

double call(double x, void* watched) noexcept {
    auto& self = *static_cast<Watched*>(watched);
    double value = std::numeric_limits<double>::quiet_NaN();
    try {
        value = self.f(x);
    } catch (...) {
        // falls through as not finite
    }
    if (!std::isfinite(value)) {
        self.bad = true;
        return 0.0;
    }
    return value;
}

} // namespace

base::Result<Integral> integrate(const std::function<double(double)>& f, double low, double high,
                                 double relative_tolerance) {
    use_gsl_return_codes();
    if (!f || !std::isfinite(low) || !std::isfinite(high)) {
        return base::fault(base::ErrorCode::no_solution, "no finite range");
    }
    constexpr std::size_t most_intervals = 200;
    constexpr double least_error = 1e-300; // a zero integral meets no relative tolerance
    const std::unique_ptr<gsl_integration_workspace, FreeWorkspace> workspace(
        gsl_integration_workspace_alloc(most_intervals));
    if (!workspace) {
        return base::fault(base::ErrorCode::no_convergence, "out of memory");
    }
    Watched watched{f};
    gsl_function function{&call, &watched};
    Integral integral;
    const int code =
        gsl_integration_qag(&function, low, high, least_error, relative_tolerance, most_intervals,
                            GSL_INTEG_GAUSS21, workspace.get(), &integral.value, &integral.error);
    if (watched.bad) {
        return base::fault(base::ErrorCode::no_solution, "function has no value inside");
    }
    // Rounding can keep the estimate just above the tolerance (an integral near zero); the
    // error estimate then says how good the value is.
    if (code != GSL_SUCCESS && code != GSL_EROUND) {
        return base::fault(base::ErrorCode::no_convergence, gsl_strerror(code));
    }
    return integral;
}

} // namespace core::numeric
