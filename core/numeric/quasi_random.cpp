#include "core/numeric/quasi_random.h"

#include "core/numeric/gsl_codes.h"

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_qrng.h>
#include <limits>
#include <memory>

namespace core::numeric {

namespace {
struct FreeGenerator {
    void operator()(gsl_qrng* q) const { gsl_qrng_free(q); }
};
} // namespace

QuasiRandom::QuasiRandom(std::size_t count, std::size_t normals, double chi_degrees)
    : count_(count), width_(normals + (chi_degrees > 0 ? 1 : 0)), values_(count * width_) {
    use_gsl_return_codes();
    const std::unique_ptr<gsl_qrng, FreeGenerator> generator(
        gsl_qrng_alloc(gsl_qrng_sobol, static_cast<unsigned>(width_)));
    std::vector<double> unit(width_);
    for (std::size_t i = 0; i < count_; ++i) {
        gsl_qrng_get(generator.get(), unit.data());
        double* out = values_.data() + i * width_;
        for (std::size_t k = 0; k < normals; ++k) {
            out[k] = gsl_cdf_ugaussian_Pinv(unit[k]);
        }
        if (chi_degrees > 0) {
            out[normals] = gsl_cdf_chisq_Pinv(unit[normals], chi_degrees);
        }
    }
}

double normal_quantile(double probability) {
    return gsl_cdf_ugaussian_Pinv(probability);
}

double weighted_quantile(std::span<const Weighted> sorted, double probability, double total) {
    const double wanted = probability * total;
    double sum = 0;
    for (const Weighted& w : sorted) {
        sum += w.weight;
        if (sum >= wanted) {
            return w.value;
        }
    }
    return std::numeric_limits<double>::quiet_NaN();
}

} // namespace core::numeric
