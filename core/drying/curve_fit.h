#pragma once

#include "core/drying/air_path.h"
#include "core/drying/discrepancy.h"
#include "core/drying/physical_model.h"
#include "core/drying/prior.h"
#include "core/numeric/cholesky.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace core::drying {

/// A net weight on the piece's own clock.
struct SeriesPoint {
    double day;   ///< since the first weighing
    double grams; ///< net
};

/// How the reference weight and the first weighing belong together.
enum class StartKind {
    hung,  ///< the first weighing is the reference
    cured, ///< a green weight was given; the loss before the first weighing came off evenly
    dried, ///< a green weight was given; the piece had been drying before the first weighing
};

struct FitInput {
    Prior prior;
    AirPath air;
    Discrepancy discrepancy;
    std::vector<SeriesPoint> points; ///< one or more, by day, the first at day 0
    StartKind start = StartKind::hung;
    std::optional<double> green_grams; ///< set for cured and dried
    double scale_step_g = 1;
};

/// A weighing that the others speak against.
struct OffPoint {
    std::size_t index;
    double expected_grams; ///< from all the other weighings
    double sd;             ///< of that expectation and a weighing's error, grams
};

/// The curve of highest posterior density, with what is needed to sample around it. Gaussian
/// errors; a weighing found off the curve is set aside, not averaged in.
struct CurveFit {
    FitInput input;
    Scores mode{};                     ///< scores of highest posterior density
    numeric::SquareMatrix precision;   ///< of the scores at the mode (Gauss-Newton)
    numeric::Cholesky errors;          ///< factor of the covariance of the weighings' errors, g2
    std::vector<double> grams_per_day; ///< slope of the weight curve at each weighing (negative)
    double noise_g = 0;                ///< estimated scatter of a weighing
    std::vector<OffPoint> off;
    double log_evidence = 0; ///< of the weighings, up to a constant of their number
    /// Precision of the weighings before they are seen (prior, discrepancy and noise together)
    /// and that precision times their departure from the prior's prediction.
    numeric::SquareMatrix marginal_precision;
    std::vector<double> weighted_departure;
    int model_runs = 0;

    [[nodiscard]] StartState start_of(double hung_grams) const;
    /// The weight that losses are counted from, grams.
    [[nodiscard]] double reference_of(double hung_grams) const;
};

/// How a fit is made; the defaults are the ones forecasts use.
struct FitOptions {
    double usual_noise_g = 2.4;
    double noise_spread = 0.5;       ///< of its logarithm
    double discrepancy_spread = 0.5; ///< of its logarithm
    /// A weighing is off when it lies this many standard deviations from what the others say...
    double off_deviations = 5.0;
    double off_share = 0.007; ///< ...and this share of the hung weight...
    double off_grams = 15;    ///< ...and this much.
    std::size_t most_off = 3;
};

/// Never fails: with few or odd weighings the prior carries the fit.
CurveFit fit_curve(FitInput input, const FitOptions& options = {});

/// As a level step of the weights from weighing `first` on (or of that one weighing only):
/// the most likely size in grams and its standard deviation. 0 < first < number of weighings.
struct StepEstimate {
    double grams;
    double sd;
};
StepEstimate estimate_step(const CurveFit& fit, std::size_t first, bool only_that_one);

} // namespace core::drying
