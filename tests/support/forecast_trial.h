#pragma once

#include "core/drying/forecast.h"
#include "tests/support/virtual_population.h"

#include <optional>
#include <string>
#include <vector>

/// Puts virtual pieces, weighed up to some part of their way, before the forecast and compares
/// its dates with the truth.
namespace tests::support {

struct TrialOptions {
    double fraction = 0.5; ///< of the time to the target
    bool with_log = false; ///< the climate log up to the last weighing is given
    bool with_fat = true;
    /// Adds this to one weighing (neither the first nor the last), chosen by the piece's number.
    double mistake_g = 0;
};

/// The request for the weighings up to `fraction`; absent with fewer than two of them.
/// `mistaken` receives the index of the weighing that was falsified.
std::optional<core::drying::ForecastRequest> request_for(const VirtualPiece& piece,
                                                         const TrialOptions& options,
                                                         std::size_t* mistaken = nullptr);

/// Errors in percent of the total time from hanging to the target.
struct TrialResult {
    int pieces = 0;
    double median_error = 0;
    /// Lower end of the distribution-free 95 % interval of the median (order statistics): what the
    /// luck of the draw allows the population's median to be.
    double median_error_at_least = 0;
    double p90_error = 0;
    double coverage = 0;   ///< percent of truths within P10 to P90
    double too_early = 0;  ///< percent of truths before P10
    double too_late = 0;   ///< percent of truths after P90
    double bias = 0;       ///< median signed error, forecast minus truth
    double width = 0;      ///< median P90 - P10
    double line_error = 0; ///< median error of a line through the last two weighings
    int without_date = 0;  ///< P50 absent: counted as the worst error
    int off_curve = 0;     ///< pieces with a weighing_off_curve finding
};

TrialResult run_trial(const std::vector<VirtualPiece>& pieces, const TrialOptions& options);

/// One line of the table, and its heading.
std::string trial_heading();
std::string trial_line(const std::string& name, const TrialOptions& options,
                       const TrialResult& result);

/// Days since hanging of a forecast's date.
std::optional<double> day_of(const std::optional<core::units::Instant>& at);
/// The instant all virtual pieces are hung.
core::units::Instant hung_at();

} // namespace tests::support
