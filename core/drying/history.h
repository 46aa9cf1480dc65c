#pragma once

#include "core/drying/forecast.h"

#include <span>

namespace core::drying {

/// Learns from the user's own finished pieces: how their fitted numbers lie about the general
/// prior (a normal hierarchy, expectation-maximisation on each piece's posterior mean and
/// covariance). The result goes into ForecastRequest::learnt of pieces of the same kind in the
/// same place. Requests with fewer than five weighings or less than half of their target lost
/// teach little and are left out; with fewer than two usable pieces the result is the general
/// prior. The general prior keeps the weight of ten pieces, so a few odd ones cannot take over.
LearntPrior learn_prior(std::span<const ForecastRequest> finished);

} // namespace core::drying
