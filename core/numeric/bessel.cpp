#include "core/numeric/bessel.h"

#include "core/numeric/gsl_codes.h"

#include <gsl/gsl_errno.h>
#include <gsl/gsl_sf_bessel.h>
#include <limits>

namespace core::numeric {

namespace {

double value_or_nan(int code, const gsl_sf_result& result) {
    return code == GSL_SUCCESS ? result.val : std::numeric_limits<double>::quiet_NaN();
}

} // namespace

double bessel_j0(double x) {
    use_gsl_return_codes();
    gsl_sf_result result{};
    return value_or_nan(gsl_sf_bessel_J0_e(x, &result), result);
}

double bessel_j1(double x) {
    use_gsl_return_codes();
    gsl_sf_result result{};
    const int code = gsl_sf_bessel_J1_e(x, &result);
    return code == GSL_EUNDRFLW ? 0.0 : value_or_nan(code, result);
}

double bessel_j0_zero(unsigned n) {
    use_gsl_return_codes();
    gsl_sf_result result{};
    return n == 0 ? std::numeric_limits<double>::quiet_NaN()
                  : value_or_nan(gsl_sf_bessel_zero_J0_e(n, &result), result);
}

double bessel_j1_zero(unsigned n) {
    use_gsl_return_codes();
    gsl_sf_result result{};
    return n == 0 ? std::numeric_limits<double>::quiet_NaN()
                  : value_or_nan(gsl_sf_bessel_zero_J1_e(n, &result), result);
}

} // namespace core::numeric
