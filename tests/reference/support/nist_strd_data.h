#pragma once

#include <functional>
#include <span>
#include <string>
#include <vector>

/// Certified non-linear regression sets of NIST, Statistical Reference Datasets (StRD),
/// "Nonlinear Regression" (public domain): data, two starting points, certified parameters,
/// standard deviations and residual sum of squares.
///
/// How each was read: Misra1a, BoxBOD, Rat42 and Chwirut2 from a copy of the NIST files; Misra1b,
/// Thurber and MGH09 from memory of them. The refit proves the numbers from memory: a wrong
/// datum or certified value could not agree to 6 digits in every parameter, standard deviation
/// and sum of squares at once.
namespace nist_strd {

struct Set {
    std::string name;
    std::vector<double> y;
    std::vector<double> x;
    std::vector<std::vector<double>> starts;
    std::vector<double> certified;
    std::vector<double> certified_sd;
    double certified_rss;
    /// The model's value at x, with its derivatives by each parameter.
    std::function<double(double x, std::span<const double> b, std::span<double> derivatives)> model;
};

std::vector<Set> sets();

} // namespace nist_strd
