#include "ui/presenters/hanging.h"

#include <algorithm>
#include <map>

namespace ui::presenters {
namespace {

using core::model::ForecastState;
using core::units::Instant;

constexpr double unlike_factor = 1.6; // wider than thickness differences within one batch

std::optional<double> rate_of(const HangingLine& line) {
    const auto& piece = line.line;
    if (!piece.hung_at || !piece.weighed_at || !piece.towards_target) {
        return {};
    }
    const double days = (*piece.weighed_at - *piece.hung_at).in_days();
    if (days < 2) {
        return {};
    }
    return piece.towards_target->loss.as_fraction() / days;
}

} // namespace

ReadyBy ready_by(const std::optional<core::model::Forecast>& forecast, Instant at) {
    if (!forecast || forecast->state == ForecastState::too_few_weighings) {
        return ReadyBy::unknown;
    }
    if (forecast->state == ForecastState::ready) {
        return ReadyBy::yes;
    }
    if (!forecast->ready) {
        return ReadyBy::no;
    }
    const auto& ready = *forecast->ready;
    if (ready.p90 && *ready.p90 <= at) {
        return ReadyBy::yes;
    }
    if (ready.p50 && *ready.p50 <= at) {
        return ReadyBy::likely;
    }
    if (ready.p10 && *ready.p10 <= at) {
        return ReadyBy::unlikely;
    }
    return ReadyBy::no;
}

std::vector<HangingLine> hanging_lines(const core::services::Book& book) {
    std::vector<HangingLine> lines;
    core::services::PieceFilter filter;
    filter.states = {core::model::PieceState::drying};
    const auto histories = book.piece_histories(filter);
    const auto batches = book.batches();
    const auto chambers = book.chambers();
    if (!histories || !batches || !chambers) {
        return lines;
    }
    std::map<core::model::BatchId, const core::model::Batch*> batch_of;
    for (const auto& batch : *batches) {
        batch_of[batch.id] = &batch;
    }
    for (const auto& history : *histories) {
        HangingLine line;
        line.line = line_in(book, history);
        if (const auto found = batch_of.find(history.piece.batch); found != batch_of.end()) {
            line.batch = QString::fromStdString(found->second->code);
            line.product = QString::fromStdString(found->second->product);
        }
        for (const auto& chamber : *chambers) {
            if (history.piece.chamber == chamber.id) {
                line.chamber = QString::fromStdString(chamber.name);
            }
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

void mark_unlike(std::vector<HangingLine>& lines) {
    std::map<core::model::BatchId, std::vector<double>> rates;
    for (const auto& line : lines) {
        if (const auto rate = rate_of(line)) {
            rates[line.line.piece().batch].push_back(*rate);
        }
    }
    for (auto& line : lines) {
        line.unlike = 0;
        auto& all = rates[line.line.piece().batch];
        const auto rate = rate_of(line);
        if (!rate || all.size() < 3) {
            continue;
        }
        auto sorted = all;
        std::nth_element(sorted.begin(), sorted.begin() + static_cast<long>(sorted.size() / 2),
                         sorted.end());
        const double median = sorted[sorted.size() / 2];
        if (median > 0 && *rate > median * unlike_factor) {
            line.unlike = 1;
        } else if (median > 0 && *rate < median / unlike_factor) {
            line.unlike = -1;
        }
    }
}

} // namespace ui::presenters
