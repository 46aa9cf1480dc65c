#include "ui/presenters/lost_weight.h"

#include "core/drying/net_series.h"
#include "ui/presenters/piece_series.h"

namespace ui::presenters {
namespace {

using core::model::EventKind;
using core::units::Duration;

/// Pieces of the batch hung with this one, each with its start.
std::vector<core::drying::ForecastRequest> siblings_of(const core::services::Book& book,
                                                       const PieceLine& line) {
    std::vector<core::drying::ForecastRequest> siblings;
    core::services::PieceFilter filter;
    filter.batch = line.piece().batch;
    const auto histories = book.piece_histories(filter);
    if (!histories) {
        return siblings;
    }
    for (const auto& history : *histories) {
        if (history.piece.id == line.piece().id) {
            continue;
        }
        const auto series = series_of(history, kin_of(book, history));
        if (!series.references.hung || series.points.size() < 2) {
            continue;
        }
        auto piece = history.piece;
        const auto loss = piece.target ? piece.target->loss : core::units::MassShare::percent(35);
        piece.target = core::model::Target{loss, core::model::ReferenceWeight::hung};
        if (auto request = core::drying::forecast_request(piece, series, {})) {
            siblings.push_back(std::move(*request));
        }
    }
    return siblings;
}

} // namespace

std::optional<core::drying::GreenWeightEstimate>
lost_weight(const core::services::Book& book, const PieceLine& line, core::units::Instant hung) {
    const auto& piece = line.piece();
    core::drying::ForecastRequest request;
    request.traits = {
        .form = piece.form, .thickness = piece.thickness, .fat = piece.fat, .skin = piece.skin};
    request.target = piece.target ? piece.target->loss : core::units::MassShare::percent(35);
    for (const auto& weighing : line.history.weighings) {
        if (weighing.stands() && !weighing.wet_surface && weighing.taken_at > hung) {
            request.weighings.push_back({weighing.taken_at, weighing.net(), weighing.scale_step});
        }
    }
    if (request.weighings.empty()) {
        return {};
    }
    return core::drying::estimate_green_weight(request, hung, siblings_of(book, line));
}

core::model::PieceEvent lost_weight_event(const PieceLine& line, core::units::Instant hung,
                                          core::units::Mass net) {
    core::model::PieceEvent event{
        .piece = line.piece().id, .kind = EventKind::hung, .at = hung, .net_after = net};
    event.chamber = line.piece().chamber;
    for (const auto& before : line.history.events) {
        if (!before.withdrawn && before.kind == EventKind::hung && before.at <= event.at) {
            event.at = before.at - Duration::seconds(1);
            event.chamber = before.chamber;
        }
    }
    return event;
}

} // namespace ui::presenters
