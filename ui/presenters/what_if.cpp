#include "ui/presenters/what_if.h"

#include "core/drying/net_series.h"
#include "core/services/piece_air.h"
#include "ui/presenters/piece_forecast.h"
#include "ui/presenters/piece_series.h"
#include "ui/presenters/workspace.h"

#include <algorithm>

namespace ui::presenters {
namespace {

using core::drying::ForecastRequest;

/// A piece without a target is asked about as if it had the usual one of its hung weight.
void give_target(core::services::PieceHistory& history) {
    if (!history.piece.target) {
        history.piece.target = core::model::Target{core::units::MassShare::percent(35),
                                                   core::model::ReferenceWeight::hung};
    }
}

/// A step of the scale was taken out of the page's forecast: it can only be found again in the
/// company of the pieces that were weighed with it.
bool leans_on_company(const PieceLine& line) {
    return line.forecast &&
           std::any_of(line.forecast->findings.begin(), line.forecast->findings.end(),
                       [](const auto& finding) { return finding.code == "scale_shift"; });
}

std::vector<PieceRecord> company_of(const Workspace& workspace, const PieceLine& line,
                                    core::services::PieceAir& air) {
    std::vector<PieceRecord> company;
    core::services::PieceFilter drying;
    drying.states = {core::model::PieceState::drying};
    for (auto& history : workspace.rows(workspace.book().piece_histories(drying))) {
        auto other = line_in(workspace.book(), std::move(history));
        const bool together = other.weighed_at && line.weighed_at &&
                              in_one_round(*other.weighed_at, *line.weighed_at);
        if (together && other.piece().id != line.piece().id && company.size() < most_company) {
            auto around = air.around(other.history);
            auto lesson = workspace.lesson_of(other.piece(), air);
            company.push_back({std::move(other.history), std::move(other.kin), std::move(around),
                               std::move(lesson)});
        }
    }
    return company;
}

} // namespace

core::model::Forecast changed_forecast(const std::vector<PieceRecord>& records,
                                       const WhatIfChange& change) {
    std::vector<ForecastRequest> requests;
    for (std::size_t i = 0; i < records.size(); ++i) {
        PieceRecord record = records[i];
        if (i == 0 && change.target && record.history.piece.target) {
            record.history.piece.target->loss = *change.target;
        }
        auto request = taught_request_of(record); // as on the page
        if (!request && i == 0) {
            return {};
        }
        if (request) {
            requests.push_back(std::move(*request));
        }
    }
    if (requests.empty()) {
        return {};
    }
    if (change.temperature || change.humidity) {
        const auto air = core::drying::expected_air(requests.front());
        requests.front().air_ahead =
            core::drying::AirAhead{change.temperature.value_or(air.temperature).in_celsius(),
                                   change.humidity.value_or(air.humidity).in_percent()};
    }
    return core::drying::forecast_together(requests).front();
}

WhatIf::WhatIf(const Workspace& workspace, const PieceLine& line, QObject* parent)
    : QObject(parent), as_of_(workspace.now()), air_(core::drying::expected_air({})),
      of_page_(line.forecast), latest_([this](WhatIfAnswer answer) {
          answer_ = std::move(answer);
          Q_EMIT arrived();
      }) {
    core::services::PieceAir air(workspace.book(), as_of_);
    records_.push_back(
        {line.history, line.kin, air.around(line.history), workspace.lesson_of(line.piece(), air)});
    if (!line.piece().target) {
        give_target(records_.front().history);
        of_page_.reset(); // the page has none
    }
    if (leans_on_company(line)) {
        for (auto& other : company_of(workspace, line, air)) {
            records_.push_back(std::move(other));
        }
    }
    if (const auto request = request_of(records_.front()); request && !request->weighings.empty()) {
        can_answer_ = true;
        air_ = core::drying::expected_air(*request);
    }
}

WhatIf::~WhatIf() = default;

std::optional<core::units::MassShare> WhatIf::target() const {
    const auto& target = records_.front().history.piece.target;
    return target ? std::optional(target->loss) : std::nullopt;
}

void WhatIf::ask(const WhatIfChange& change) {
    latest_.ask([records = records_, change, known = of_page_, as_of = as_of_] {
        WhatIfAnswer answer;
        answer.now = known ? *known : forecast_pieces(records, as_of).front();
        answer.changed = change == WhatIfChange{} ? answer.now : changed_forecast(records, change);
        return answer;
    });
}

} // namespace ui::presenters
