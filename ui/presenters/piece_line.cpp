#include "ui/presenters/piece_line.h"

#include "core/drying/net_series.h"
#include "ui/presenters/piece_series.h"

#include <algorithm>
#include <set>

namespace ui::presenters {
namespace {

using core::model::EventKind;
using core::model::ReferenceWeight;
using core::units::MassShare;

/// Weighings that the series leaves out, shown aside: wet ones and those before hanging.
std::vector<NetPoint> shown_points(const core::drying::NetSeries& series,
                                   const core::services::PieceHistory& history) {
    std::vector<NetPoint> points;
    std::set<core::model::WeighingId> fitted;
    for (const auto& point : series.points) {
        points.push_back({point.weighing, point.at, point.net, false});
        fitted.insert(point.weighing);
    }
    if (points.empty()) {
        return points;
    }
    for (const auto& weighing : history.weighings) {
        if (weighing.stands() && weighing.wet_surface && fitted.count(weighing.id) == 0 &&
            weighing.taken_at > points.front().at) {
            points.push_back({weighing.id, weighing.taken_at, weighing.net(), true});
        }
    }
    std::stable_sort(points.begin(), points.end(),
                     [](const auto& a, const auto& b) { return a.at < b.at; });
    return points;
}

std::optional<core::units::Instant> hung_at(const core::services::PieceHistory& history) {
    for (const auto& event : history.events) {
        if (event.kind == EventKind::hung && !event.withdrawn) {
            return event.at;
        }
    }
    return {};
}

} // namespace

core::drying::NetSeries series_of(const core::services::PieceHistory& history, const Kin& kin) {
    // From the eldest down: each hands its references on to its child.
    std::optional<core::drying::NetSeries> parent;
    for (auto it = kin.ancestors.rbegin(); it != kin.ancestors.rend(); ++it) {
        core::drying::PieceHistory input{it->weighings, it->events, it->piece.target, nullptr, {}};
        input.parent = parent ? &*parent : nullptr;
        auto series = core::drying::net_series(input);
        parent = std::move(series);
    }
    std::vector<core::drying::NetSeries> members;
    for (const auto& member : kin.members) {
        members.push_back(core::drying::net_series(
            {member.weighings, member.events, member.piece.target, nullptr, {}}));
    }
    core::drying::PieceHistory input{
        history.weighings, history.events, history.piece.target, parent ? &*parent : nullptr, {}};
    for (const auto& member : members) {
        input.members.push_back(&member);
    }
    return core::drying::net_series(input);
}

Kin kin_of(const core::services::Book& book, const core::services::PieceHistory& history) {
    Kin kin;
    auto parent = history.piece.parent;
    while (parent) {
        auto read = book.piece_history(*parent);
        if (!read) {
            break;
        }
        parent = read->piece.parent;
        kin.ancestors.push_back(std::move(*read));
    }
    for (const auto& event : history.events) {
        if (event.kind != EventKind::merged || event.withdrawn) {
            continue;
        }
        for (const auto& member : event.others) {
            if (member == history.piece.id) {
                continue;
            }
            if (auto read = book.piece_history(member)) {
                kin.members.push_back(std::move(*read));
            }
        }
    }
    return kin;
}

PieceLine line_of(core::services::PieceHistory history, Kin kin) {
    const auto series = series_of(history, kin);
    PieceLine line;
    line.points = shown_points(series, history);
    line.net = series.last_net;
    line.tare = series.tare;
    line.coat = series.coat;
    line.target_net = series.target_net;
    line.target_scale = series.target_on_scale;
    line.findings = series.findings;
    line.hung_at = hung_at(history);
    for (const auto& weighing : history.weighings) {
        if (weighing.stands()) {
            line.weighed_at = weighing.taken_at;
        }
    }
    for (const auto reference : {ReferenceWeight::raw, ReferenceWeight::trimmed,
                                 ReferenceWeight::cured, ReferenceWeight::hung}) {
        const auto start = series.references.of(reference);
        const auto loss = series.loss_from(reference);
        if (start && loss) {
            line.losses.push_back({reference, *start, *loss});
            if (history.piece.target && history.piece.target->reference == reference) {
                line.towards_target = line.losses.back();
            }
        }
    }
    line.history = std::move(history);
    line.kin = std::move(kin);
    return line;
}

core::model::WeighedState state_now(const core::services::PieceHistory& history) {
    using core::model::WeighedState;
    auto state = WeighedState::raw;
    std::optional<core::units::Instant> since;
    for (const auto& weighing : history.weighings) {
        if (weighing.stands()) {
            state = weighing.state;
            since = weighing.taken_at;
        }
    }
    for (const auto& event : history.events) {
        if (event.withdrawn || (since && event.at < *since)) {
            continue;
        }
        switch (event.kind) {
        case EventKind::dressed:
        case EventKind::re_dressed:
            state = WeighedState::cased;
            break;
        case EventKind::coated:
            state = WeighedState::coated;
            break;
        case EventKind::washed:
            state = WeighedState::rinsed;
            break;
        case EventKind::hung:
            if (event.tare_after && event.tare_after->in_grams() > 0) {
                state = state == WeighedState::cased ? state : WeighedState::netted;
            } else if (state == WeighedState::raw || state == WeighedState::trimmed) {
                state = WeighedState::rinsed;
            }
            break;
        default: // the rest do not change what hangs there
            break;
        }
    }
    return state;
}

PieceLine line_in(const core::services::Book& book, core::services::PieceHistory history) {
    Kin kin = kin_of(book, history);
    return line_of(std::move(history), std::move(kin));
}

} // namespace ui::presenters
