#include "ui/presenters/lost_weight.h"

#include "core/drying/earlier_weight.h"
#include "core/drying/green_weight.h"
#include "core/services/piece_air.h"
#include "ui/presenters/piece_series.h"
#include "ui/presenters/workspace.h"
#include "ui/text/quantity_words.h"

#include <algorithm>
#include <cmath>

namespace ui::presenters {
namespace {

using core::base::Interval;
using core::model::ReferenceWeight;
using core::model::WeighedState;
using core::units::Instant;
using core::units::Mass;

constexpr double near_hanging_hours = 12; // as core/drying/net_series.h has it

/// The request of a piece as if its loss counted from the hung weight.
std::optional<core::drying::ForecastRequest> drying_of(const PieceRecord& record) {
    auto history = record.history;
    const auto loss =
        history.piece.target ? history.piece.target->loss : core::units::MassShare::percent(35);
    history.piece.target = core::model::Target{loss, ReferenceWeight::hung};
    return core::drying::forecast_request(history.piece, series_of(history, record.kin),
                                          record.air);
}

std::vector<double> raw_over_hung(const std::vector<PieceRecord>& siblings) {
    std::vector<double> ratios;
    for (const auto& sibling : siblings) {
        const auto series = series_of(sibling.history, sibling.kin);
        const auto& start = series.references;
        if (start.raw && start.hung && start.hung->in_grams() > 0 && !series.hung_aside) {
            ratios.push_back(*start.raw / *start.hung);
        }
    }
    return ratios;
}

bool weighed_near(const core::services::PieceHistory& history, Instant at) {
    return std::any_of(history.weighings.begin(), history.weighings.end(), [&](const auto& w) {
        return w.stands() && std::abs((w.taken_at - at).in_hours()) <= near_hanging_hours;
    });
}

/// Somebody weighed it when it was hung.
bool is_hung_weight_known(const core::services::PieceHistory& history, Instant hung) {
    return weighed_near(history, hung) ||
           std::any_of(history.events.begin(), history.events.end(), [](const auto& e) {
               return !e.withdrawn && e.kind == core::model::EventKind::hung && e.net_after;
           });
}

LostWeightAnswer hung_weight(const LostWeightQuestion& question) {
    const auto piece = drying_of(question.piece);
    if (!piece) {
        return {};
    }
    if (question.hung_is_known) {
        const auto series = series_of(question.piece.history, question.piece.kin);
        return {Interval<Mass>::exactly(*series.references.hung), 0};
    }
    std::vector<core::drying::ForecastRequest> siblings;
    for (const auto& sibling : question.siblings) {
        if (auto request = drying_of(sibling)) {
            siblings.push_back(std::move(*request));
        }
    }
    const auto estimate = core::drying::estimate_green_weight(*piece, question.hung, siblings);
    return estimate ? LostWeightAnswer{estimate->weight, estimate->siblings} : LostWeightAnswer{};
}

} // namespace

LostWeightAnswer estimate_lost_weight(const LostWeightQuestion& question) {
    auto hung = hung_weight(question);
    if (question.which == ReferenceWeight::hung || !hung.weight) {
        return hung;
    }
    const auto ratios = raw_over_hung(question.siblings);
    const auto raw = core::drying::earlier_weight(*hung.weight, ratios);
    return {raw, raw ? static_cast<int>(ratios.size()) : 0};
}

LostWeight::LostWeight(const Workspace& workspace, const PieceLine& line, QObject* parent)
    : QObject(parent), record_{line.history, line.kin, {}}, hung_at_(line.hung_at),
      latest_([this](LostWeightAnswer answer) {
          answer_ = answer;
          Q_EMIT arrived();
      }) {
    core::services::PieceAir air(workspace.book(), workspace.now());
    record_.air = air.around(record_.history);
    core::services::PieceFilter filter;
    filter.batch = line.piece().batch;
    for (auto& history : workspace.rows(workspace.book().piece_histories(filter))) {
        if (history.piece.id == line.piece().id) {
            continue;
        }
        auto other = line_in(workspace.book(), std::move(history));
        if (other.hung_at && !is_hung_weight_known(other.history, *other.hung_at)) {
            continue; // knows its own start no better
        }
        auto around = air.around(other.history);
        siblings_.push_back({std::move(other.history), std::move(other.kin), std::move(around)});
    }
    if (const auto batch = workspace.one(workspace.book().batch(line.piece().batch))) {
        salted_at_ = workspace.style().zone.instant_at(batch->started, 12 * 60);
    }
    if (const auto* first = first_since(Instant::from_unix_seconds(0)); first && salted_at_) {
        salted_at_ = std::min(*salted_at_, first->taken_at - core::units::Duration::hours(1));
    }
    find_missing(line);
}

LostWeight::~LostWeight() = default;

void LostWeight::find_missing(const PieceLine& line) {
    const auto references = series_of(record_.history, record_.kin).references;
    const auto& history = line.history;
    const bool weighed = std::any_of(history.weighings.begin(), history.weighings.end(),
                                     [](const auto& w) { return w.stands(); });
    hung_is_known_ = hung_at_ && references.hung && is_hung_weight_known(history, *hung_at_);
    if (weighed && !hung_is_known_) {
        missing_.push_back(ReferenceWeight::hung);
    }
    if (weighed && !references.raw) {
        missing_.push_back(ReferenceWeight::raw);
    }
    if (line.piece().target && line.piece().target->reference == ReferenceWeight::raw) {
        std::reverse(missing_.begin(), missing_.end());
    }
}

const core::model::Weighing* LostWeight::first_since(Instant at) const {
    const core::model::Weighing* first = nullptr;
    for (const auto& w : record_.history.weighings) {
        if (w.stands() && w.taken_at > at && (first == nullptr || w.taken_at < first->taken_at)) {
            first = &w;
        }
    }
    return first;
}

std::optional<Instant> LostWeight::usual_time(ReferenceWeight which) const {
    return which == ReferenceWeight::raw ? salted_at_ : hung_at_;
}

void LostWeight::ask(ReferenceWeight which, Instant at) {
    LostWeightQuestion question{record_, siblings_, which, at, hung_is_known_};
    if (which == ReferenceWeight::raw) {
        // Without a day of hanging the first weighing is taken for the start of the drying.
        const auto* first = first_since(Instant::from_unix_seconds(0));
        question.hung_is_known = hung_is_known_ || !hung_at_;
        question.hung = hung_at_.value_or(first != nullptr ? first->taken_at : at);
    }
    latest_.ask([question = std::move(question)] { return estimate_lost_weight(question); });
}

core::model::Weighing LostWeight::weighing(ReferenceWeight which, Instant at, Mass net,
                                           const Interval<Mass>& between,
                                           const text::Style& style) const {
    core::model::Weighing weighing{.piece = record_.history.piece.id,
                                   .taken_at = at,
                                   .on_scale = net,
                                   .tare = Mass::grams(0),
                                   .state = WeighedState::raw};
    if (which == ReferenceWeight::hung) {
        weighing.state = WeighedState::rinsed;
        const auto* next = first_since(at);
        if (next != nullptr &&
            (next->state == WeighedState::cased || next->state == WeighedState::netted)) {
            weighing.state = next->state;
            weighing.tare = next->tare;
            weighing.on_scale = net + next->tare;
        }
    }
    // Coarser than any scale it was weighed on, so that it is told from a weighing.
    Mass step = std::max(between.high - between.low, net * 0.011);
    for (const auto& w : record_.history.weighings) {
        if (w.stands() && w.scale_step) {
            step = std::max(step, *w.scale_step * 4);
        }
    }
    weighing.scale_step = step;
    weighing.note = tr("estimated, %1 to %2")
                        .arg(text::words(between.low, style), text::words(between.high, style))
                        .toStdString();
    return weighing;
}

} // namespace ui::presenters
