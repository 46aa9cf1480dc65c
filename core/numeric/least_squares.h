#pragma once

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <vector>

/// Non-linear least squares: minimise the sum of squared residuals r_i(p). A thin adapter over
/// GSL's trust-region solver (gsl_multifit_nlinear, Levenberg-Marquardt with geodesic
/// acceleration, Powell's dogleg where that
/// ends on a plain). Checked on the certified sets of NIST StRD, see
/// tests/reference/nist_strd_test.cpp.
///
/// Parameters are unbounded: a parameter that must stay positive is passed as its logarithm.
/// Thread-safe; keeps no state between calls.
namespace core::numeric {

/// Fills `residuals` for `parameters` and returns true; false where the model has no value
/// there (the solver then shortens its step). An exception counts as false.
using Residuals = std::function<bool(std::span<const double> parameters, std::span<double>)>;

/// Fills the derivatives d r_i / d p_j, row by row (n x p values). Same meaning of false.
using Jacobian = std::function<bool(std::span<const double> parameters, std::span<double>)>;

struct LeastSquaresProblem {
    std::size_t residual_count = 0;
    std::vector<double> start;
    Residuals residuals;
    /// Without it derivatives are central differences (about 1e-10 relative).
    Jacobian jacobian;
};

struct LeastSquaresOptions {
    int max_iterations = 400;
    double step_tolerance = 1e-14;     ///< relative change of every parameter
    double gradient_tolerance = 1e-15; ///< scaled gradient, relative to the sum of squares
};

/// How a fit ended, and what can still be used of it.
enum class Termination {
    converged,         ///< the step or gradient tolerance was met: everything is valid
    stalled,           ///< no further descent in working precision: parameters and rss are valid,
                       ///< usually a minimum reached to rounding; spread is valid if present
    iteration_limit,   ///< parameters and rss are the best found, not a minimum; no spread
    bad_start,         ///< the model has no finite value at the start: parameters are the start
    too_few_residuals, ///< fewer residuals than parameters (or none): parameters are the start
    out_of_memory,     ///< nothing but the start is valid
};

/// The fit's local spread, valid for errors that are independent with one unknown variance.
struct FitSpread {
    double residual_sd = 0;         ///< sqrt(rss / degrees of freedom)
    std::vector<double> sd;         ///< standard deviation of each parameter
    std::vector<double> covariance; ///< p x p, row by row
};

struct LeastSquaresFit {
    Termination termination = Termination::bad_start;
    std::vector<double> parameters;
    std::optional<double> rss; ///< residual sum of squares at `parameters`; absent at a bad start
    int iterations = 0;
    /// Absent when there are no spare residuals or the parameters cannot be told apart
    /// (singular), and where `termination` says so.
    std::optional<FitSpread> spread;
    [[nodiscard]] bool usable() const {
        return termination == Termination::converged || termination == Termination::stalled;
    }
};

LeastSquaresFit fit_least_squares(const LeastSquaresProblem& problem,
                                  const LeastSquaresOptions& options = {});

} // namespace core::numeric
