#include "core/drying/expected_air.h"

#include <algorithm>

namespace core::drying {

ExpectedAir expected_air(const ForecastRequest& request) {
    const auto earlier = [](const NetWeight& a, const NetWeight& b) { return a.at < b.at; };
    const auto ends =
        std::minmax_element(request.weighings.begin(), request.weighings.end(), earlier);
    AirPath path;
    if (request.weighings.empty()) {
        const auto none = units::Instant::from_unix_seconds(0);
        path = make_air_path({}, none, none, 1);
    } else {
        const double days = (ends.second->at - ends.first->at).in_days();
        path = make_air_path(request.air, ends.first->at, ends.second->at, days + 1);
    }
    return {units::Temperature::celsius(path.ahead_temperature_c),
            units::RelativeHumidity::fraction(path.ahead_humidity), path.known};
}

} // namespace core::drying
