#pragma once

#include "core/drying/forecast.h"

namespace core::drying {

/// The air that a forecast expects from the last weighing on.
struct ExpectedAir {
    units::Temperature temperature;
    units::RelativeHumidity humidity;
    bool from_log = false; ///< else the usual air of make_air_path is taken
};

/// What `request` expects where it does not say (`air_ahead`): the mean of its log's last steady
/// stretch, else the usual air. Never fails; without a weighing the usual air.
ExpectedAir expected_air(const ForecastRequest& request);

} // namespace core::drying
