#include "core/numeric/cholesky.h"

#include "core/numeric/gsl_codes.h"

#include <cmath>
#include <gsl/gsl_blas.h>
#include <gsl/gsl_errno.h>
#include <gsl/gsl_linalg.h>

namespace core::numeric {

namespace {

gsl_matrix_view view(SquareMatrix& m) {
    return gsl_matrix_view_array(m.values().data(), m.size(), m.size());
}

} // namespace

std::optional<Cholesky> Cholesky::of(SquareMatrix a) {
    use_gsl_return_codes();
    Cholesky out;
    out.lower_ = std::move(a);
    if (out.size() == 0) {
        return out;
    }
    auto m = view(out.lower_);
    if (gsl_linalg_cholesky_decomp1(&m.matrix) != GSL_SUCCESS) {
        return std::nullopt;
    }
    for (std::size_t i = 0; i < out.size(); ++i) {
        const double d = out.lower_(i, i);
        if (!std::isfinite(d) || d <= 0) { // GSL lets NaN through
            return std::nullopt;
        }
    }
    return out;
}

// The systems are a dozen numbers and solved a few hundred times a forecast: plain loops beat
// the call overhead of the library here.
void Cholesky::forward(std::span<double> b) const {
    for (std::size_t i = 0; i < size(); ++i) {
        double v = b[i];
        for (std::size_t j = 0; j < i; ++j) {
            v -= lower_(i, j) * b[j];
        }
        b[i] = v / lower_(i, i);
    }
}

void Cholesky::backward(std::span<double> b) const {
    for (std::size_t i = size(); i-- > 0;) {
        double v = b[i];
        for (std::size_t j = i + 1; j < size(); ++j) {
            v -= lower_(j, i) * b[j];
        }
        b[i] = v / lower_(i, i);
    }
}

void Cholesky::solve(std::span<double> b) const {
    forward(b);
    backward(b);
}

SquareMatrix Cholesky::inverse() const {
    SquareMatrix out = lower_;
    if (out.size() > 0) {
        auto m = view(out);
        gsl_linalg_cholesky_invert(&m.matrix);
    }
    return out;
}

double Cholesky::log_determinant() const {
    double sum = 0;
    for (std::size_t i = 0; i < size(); ++i) {
        sum += std::log(lower_(i, i));
    }
    return 2 * sum;
}

} // namespace core::numeric
