#pragma once

#include "core/model/forecast.h"

#include <string>

namespace app::cli {

/// One JSON object without line breaks: piece, state, loss_percent, as_of, ready {p10, p50, p90}
/// or null, levels_off_percent {p10, p50, p90} or null, findings [{code, severity, at}], curve
/// [{at, p10, p50, p90}] in percent. Times are UTC; unknown is null.
std::string forecast_json(const std::string& piece, const core::model::Forecast& forecast);

/// The same in one line of words, days only.
std::string forecast_words(const std::string& piece, const core::model::Forecast& forecast);

} // namespace app::cli
