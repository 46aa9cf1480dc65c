#pragma once

#include "core/drying/forecast.h"

#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace app::cli {

/// The three files as requests, in the order of the pieces file.
struct ForecastInput {
    std::vector<std::string> names;
    std::vector<core::drying::ForecastRequest> requests; ///< one a name
    std::vector<std::string> complaints; ///< a sentence for each row left out, with its mending
};

/// `climate` may be empty (no log). Fails with a sentence where a file cannot be read at all.
tl::expected<ForecastInput, std::string> read_forecast_input(const std::string& pieces,
                                                             const std::string& weights,
                                                             const std::string& climate);

} // namespace app::cli
