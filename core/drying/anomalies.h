#pragma once

#include "core/drying/piece_fit.h"
#include "core/drying/posterior.h"
#include "core/model/finding.h"

namespace core::drying {

/// What stands out in one piece's weighings. See core/drying/forecast.h for codes and values.
/// `ready` says that the target is reached: then a stall is no news.
model::Findings find_anomalies(const PreparedPiece& piece, const PieceFit& fit,
                               const Posterior& posterior, bool ready);

} // namespace core::drying
