#include "core/numeric/least_squares.h"

#include "core/numeric/gsl_codes.h"

#include <algorithm>
#include <cmath>
#include <gsl/gsl_blas.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <memory>

namespace core::numeric {

namespace {

struct FreeWorkspace {
    void operator()(gsl_multifit_nlinear_workspace* w) const { gsl_multifit_nlinear_free(w); }
    void operator()(gsl_matrix* m) const { gsl_matrix_free(m); }
};
using Workspace = std::unique_ptr<gsl_multifit_nlinear_workspace, FreeWorkspace>;
using Matrix = std::unique_ptr<gsl_matrix, FreeWorkspace>;

bool all_finite(std::span<const double> values) {
    return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

/// Stands for "no value here". GSL gives up when a callback reports an error; a finite residual
/// this large makes it reject the step and try a shorter one instead.
constexpr double no_value = 1e100;

/// The problem as GSL's C callbacks see it. Exceptions must not cross C frames, so they turn
/// into "no value here".
struct Callbacks {
    const LeastSquaresProblem& problem;
    std::vector<double> parameters;
    std::vector<double> values;
    std::vector<double> shifted;

    explicit Callbacks(const LeastSquaresProblem& p)
        : problem(p), parameters(p.start.size()), values(p.residual_count),
          shifted(p.residual_count) {}

    bool evaluate(std::span<double> out) const noexcept {
        try {
            return problem.residuals(parameters, out) && all_finite(out);
        } catch (...) {
            return false;
        }
    }

    void read(const gsl_vector* x) {
        for (std::size_t i = 0; i < parameters.size(); ++i) {
            parameters[i] = gsl_vector_get(x, i);
        }
    }

    static int residuals(const gsl_vector* x, void* callbacks, gsl_vector* f) noexcept {
        auto& self = *static_cast<Callbacks*>(callbacks);
        self.read(x);
        const bool known = self.evaluate(self.values);
        for (std::size_t i = 0; i < self.values.size(); ++i) {
            gsl_vector_set(f, i, known ? self.values[i] : no_value);
        }
        return GSL_SUCCESS;
    }

    static int jacobian(const gsl_vector* x, void* callbacks, gsl_matrix* j) noexcept {
        auto& self = *static_cast<Callbacks*>(callbacks);
        self.read(x);
        if (!self.problem.jacobian) {
            return self.differences(j) ? GSL_SUCCESS : GSL_EDOM;
        }
        const std::span<double> out(j->data, j->size1 * j->size2); // tda == size2: GSL's own
        try {
            return self.problem.jacobian(self.parameters, out) && all_finite(out) ? GSL_SUCCESS
                                                                                  : GSL_EDOM;
        } catch (...) {
            return GSL_EDOM;
        }
    }

    /// Central differences; one-sided at the edge of where the model has values (GSL's own
    /// differences would give up there).
    bool differences(gsl_matrix* j) {
        const double relative_step = std::cbrt(2.220446049250313e-16); // best for central ones
        for (std::size_t k = 0; k < parameters.size(); ++k) {
            const double at = parameters[k];
            const double step = relative_step * (at != 0 ? std::abs(at) : 1.0);
            parameters[k] = at + step;
            double above = parameters[k];
            bool known = evaluate(values);
            parameters[k] = at - step;
            double below = parameters[k];
            if (!known) {
                parameters[k] = above = at;
                known = evaluate(values);
                parameters[k] = below;
            }
            if (!evaluate(shifted)) {
                parameters[k] = below = at;
                known = known && evaluate(shifted);
            }
            parameters[k] = at;
            if (!known || !(above > below)) {
                return false;
            }
            for (std::size_t i = 0; i < values.size(); ++i) {
                gsl_matrix_set(j, i, k, (values[i] - shifted[i]) / (above - below));
            }
        }
        return true;
    }
};

std::optional<FitSpread> spread_of(const LeastSquaresProblem& problem, double rss,
                                   gsl_multifit_nlinear_workspace* workspace) {
    const std::size_t count = problem.start.size();
    if (problem.residual_count <= count) {
        return std::nullopt;
    }
    // Columns are brought to length 1 first, so that "dependent" does not depend on the units
    // of a parameter; 1e-8 is above the noise of difference derivatives.
    const Matrix scaled(gsl_matrix_alloc(problem.residual_count, count));
    const Matrix covariance(gsl_matrix_alloc(count, count));
    if (!scaled || !covariance) {
        return std::nullopt;
    }
    gsl_matrix_memcpy(scaled.get(), gsl_multifit_nlinear_jac(workspace));
    std::vector<double> lengths;
    for (std::size_t k = 0; k < count; ++k) {
        auto column = gsl_matrix_column(scaled.get(), k);
        const double length = gsl_blas_dnrm2(&column.vector);
        if (!(length > 0) || !std::isfinite(length)) {
            return std::nullopt; // nothing depends on this parameter here
        }
        gsl_blas_dscal(1 / length, &column.vector);
        lengths.push_back(length);
    }
    constexpr double dependent = 1e-8;
    if (gsl_multifit_nlinear_covar(scaled.get(), dependent, covariance.get()) != GSL_SUCCESS) {
        return std::nullopt;
    }
    const double variance = rss / static_cast<double>(problem.residual_count - count);
    FitSpread spread;
    spread.residual_sd = std::sqrt(variance);
    for (std::size_t i = 0; i < count; ++i) {
        for (std::size_t k = 0; k < count; ++k) {
            spread.covariance.push_back(gsl_matrix_get(covariance.get(), i, k) * variance /
                                        (lengths[i] * lengths[k]));
        }
        const double own = gsl_matrix_get(covariance.get(), i, i);
        if (!(own > 0) || !std::isfinite(own)) {
            return std::nullopt; // this parameter cannot be told from the others
        }
        spread.sd.push_back(std::sqrt(own * variance) / lengths[i]);
    }
    return spread;
}

/// Iterates until GSL's own convergence test passes or no step descends.
LeastSquaresFit descend(const LeastSquaresProblem& problem, const LeastSquaresOptions& options,
                        const gsl_multifit_nlinear_trs* method) {
    LeastSquaresFit fit;
    fit.parameters = problem.start;
    auto parameters = gsl_multifit_nlinear_default_parameters();
    parameters.trs = method;
    const Workspace owner(gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters,
                                                     problem.residual_count, problem.start.size()));
    if (!owner) {
        fit.termination = Termination::out_of_memory;
        return fit;
    }
    Callbacks callbacks(problem);
    gsl_multifit_nlinear_fdf system{};
    system.f = &Callbacks::residuals;
    system.df = &Callbacks::jacobian;
    system.n = problem.residual_count;
    system.p = problem.start.size();
    system.params = &callbacks;

    auto* workspace = owner.get();
    callbacks.parameters = problem.start;
    if (!callbacks.evaluate(callbacks.values)) {
        fit.termination = Termination::bad_start;
        return fit;
    }
    const auto start = gsl_vector_const_view_array(problem.start.data(), problem.start.size());
    if (gsl_multifit_nlinear_init(&start.vector, &system, workspace) != GSL_SUCCESS) {
        fit.termination = Termination::bad_start;
        return fit;
    }
    fit.termination = Termination::iteration_limit;
    while (fit.iterations < options.max_iterations) {
        ++fit.iterations;
        if (gsl_multifit_nlinear_iterate(workspace) != GSL_SUCCESS) {
            fit.termination = Termination::stalled;
            break;
        }
        int reason = 0;
        if (gsl_multifit_nlinear_test(options.step_tolerance, options.gradient_tolerance, 0.0,
                                      &reason, workspace) == GSL_SUCCESS) {
            fit.termination = Termination::converged;
            break;
        }
    }
    const gsl_vector* best = gsl_multifit_nlinear_position(workspace);
    fit.parameters.assign(best->data, best->data + best->size);
    double rss = 0;
    const gsl_vector* residuals = gsl_multifit_nlinear_residual(workspace);
    gsl_blas_ddot(residuals, residuals, &rss);
    fit.rss = rss;
    if (fit.usable()) {
        fit.spread = spread_of(problem, rss, workspace);
    }
    return fit;
}

bool better(const LeastSquaresFit& a, const LeastSquaresFit& b) {
    if (a.rss.has_value() != b.rss.has_value()) {
        return a.rss.has_value();
    }
    return a.rss.has_value() && *a.rss < *b.rss;
}

} // namespace

LeastSquaresFit fit_least_squares(const LeastSquaresProblem& problem,
                                  const LeastSquaresOptions& options) {
    use_gsl_return_codes();
    LeastSquaresFit refused;
    refused.parameters = problem.start;
    if (problem.start.empty() || problem.residual_count < problem.start.size() ||
        !problem.residuals) {
        refused.termination = Termination::too_few_residuals;
        return refused;
    }
    if (!all_finite(problem.start)) {
        refused.termination = Termination::bad_start;
        return refused;
    }
    LeastSquaresFit fit = descend(problem, options, gsl_multifit_nlinear_trs_lmaccel);
    const bool determined = problem.residual_count > problem.start.size();
    if (fit.termination == Termination::iteration_limit ||
        (determined && fit.usable() && !fit.spread)) {
        // A full step from a far start can land on a plain where the sum of squares no longer
        // depends on a parameter (BoxBOD shows it). Powell's dogleg takes other steps; keep
        // whichever got lower.
        LeastSquaresFit other = descend(problem, options, gsl_multifit_nlinear_trs_dogleg);
        if (better(other, fit)) {
            fit = std::move(other);
        }
    }
    return fit;
}

} // namespace core::numeric
