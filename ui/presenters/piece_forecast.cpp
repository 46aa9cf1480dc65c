#include "ui/presenters/piece_forecast.h"

#include "ui/presenters/own_lessons.h"
#include "ui/presenters/piece_series.h"

namespace ui::presenters {

std::optional<core::drying::ForecastRequest> request_of(const PieceRecord& record) {
    return core::drying::forecast_request(record.history.piece,
                                          series_of(record.history, record.kin), record.air);
}

std::optional<core::drying::ForecastRequest> taught_request_of(const PieceRecord& record) {
    auto request = request_of(record);
    if (request && record.lesson && record.lesson->learnt().pieces > 0) {
        request->learnt = record.lesson->learnt();
    }
    return request;
}

std::vector<core::model::Forecast> forecast_pieces(const std::vector<PieceRecord>& records,
                                                   core::units::Instant now) {
    static_cast<void>(now); // a forecast is as of the last weighing
    std::vector<core::model::Forecast> forecasts(records.size());
    std::vector<core::drying::ForecastRequest> requests;
    std::vector<std::size_t> which;
    for (std::size_t i = 0; i < records.size(); ++i) {
        // Without a target or its reference there is nothing to forecast: the empty forecast
        // says "too few weighings".
        if (auto request = taught_request_of(records[i])) {
            requests.push_back(std::move(*request));
            which.push_back(i);
        }
    }
    auto made = core::drying::forecast_together(requests);
    for (std::size_t k = 0; k < made.size(); ++k) {
        forecasts[which[k]] = std::move(made[k]);
    }
    return forecasts;
}

} // namespace ui::presenters
