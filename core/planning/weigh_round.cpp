#include "core/planning/weigh_round.h"

#include <algorithm>
#include <tuple>

namespace core::planning {
namespace {

using model::Severity;
using units::Duration;
using units::Instant;
using units::Mass;
using units::MassShare;

struct LossBand {
    MassShare low;
    MassShare best;
    MassShare high;
};

LossBand of(const model::BandPoint& point) {
    return {point.p10, point.p50, point.p90};
}

std::optional<LossBand> loss_at(const model::Forecast& forecast, Instant at) {
    const auto& curve = forecast.curve;
    if (curve.empty() || at < curve.front().at) {
        return std::nullopt;
    }
    const auto after =
        std::upper_bound(curve.begin(), curve.end(), at,
                         [](Instant t, const model::BandPoint& point) { return t < point.at; });
    if (after == curve.end()) {
        return of(curve.back()); // flat beyond the horizon: drying has all but stopped there
    }
    const auto& b = *after;
    const auto& a = *(after - 1);
    const double share = (at - a.at) / (b.at - a.at);
    const auto mix = [&](MassShare x, MassShare y) { return x + (y - x) * share; };
    return LossBand{mix(a.p10, b.p10), mix(a.p50, b.p50), mix(a.p90, b.p90)};
}

Mass widest(Mass wanted, Mass step) {
    return std::max(wanted, step);
}

std::optional<base::Interval<Mass>> from_forecast(const RoundPiece& piece, Mass tare, Instant now) {
    if (!piece.forecast || !piece.reference) {
        return std::nullopt;
    }
    const auto loss = loss_at(*piece.forecast, now);
    if (!loss) {
        return std::nullopt;
    }
    constexpr double widen = 2.0;
    const Mass reference = *piece.reference;
    const Mass step =
        piece.last && piece.last->scale_step ? *piece.last->scale_step : Mass::grams(1);
    const Mass best = reference - loss->best.part_of(reference);
    const Mass down = widest((loss->high - loss->best).part_of(reference) * widen, step);
    const Mass up = widest((loss->best - loss->low).part_of(reference) * widen, step);
    return base::Interval<Mass>{best - down + tare, best + tare, best + up + tare};
}

/// Whole muscle loses 0.6 to 1.2 % a day over the first weeks (common practice, no source); twice
/// that is worth a question, and so is a gain of more than a step.
std::optional<base::Interval<Mass>> from_last(const RoundPiece& piece, Mass tare, Instant now) {
    if (!piece.last || piece.last->taken_at > now) {
        return std::nullopt;
    }
    constexpr double usual_a_day = 0.009;
    constexpr double most_a_day = 0.025;
    constexpr double most_in_all = 0.4;
    const double days = (now - piece.last->taken_at).in_days();
    const Mass net = piece.last->net();
    const Mass step = piece.last->scale_step.value_or(Mass::grams(1));
    return base::Interval<Mass>{net * (1 - std::min(most_in_all, most_a_day * days)) - step + tare,
                                net * (1 - std::min(most_in_all, usual_a_day * days)) + tare,
                                net * 1.005 + step + tare};
}

} // namespace

std::vector<RoundRow> weigh_round(std::vector<RoundPiece> pieces, Instant now) {
    std::stable_sort(pieces.begin(), pieces.end(), [](const RoundPiece& a, const RoundPiece& b) {
        return std::tie(a.piece.chamber, a.piece.hanging_order, a.piece.position, a.piece.code) <
               std::tie(b.piece.chamber, b.piece.hanging_order, b.piece.position, b.piece.code);
    });
    std::vector<RoundRow> rows;
    for (const auto& piece : pieces) {
        const Mass tare = piece.tare ? *piece.tare : piece.last ? piece.last->tare : Mass::grams(0);
        RoundRow row{piece.piece.id, {}, {}, tare, {}, {}};
        if (piece.last) {
            row.last_on_scale = piece.last->on_scale;
            row.last_at = piece.last->taken_at;
        }
        if ((row.expected = from_forecast(piece, tare, now))) {
            row.expected_from = ExpectedFrom::forecast;
        } else if ((row.expected = from_last(piece, tare, now))) {
            row.expected_from = ExpectedFrom::last_weighing;
        }
        rows.push_back(row);
    }
    return rows;
}

model::Findings judge_entry(const RoundRow& row, Mass on_scale, std::optional<Mass> scale_step) {
    model::Findings findings;
    if (on_scale <= row.tare) {
        findings.push_back({.code = "not_above_tare",
                            .severity = Severity::stop,
                            .values = {{"tare", row.tare}, {"on_scale", on_scale}}});
        return findings;
    }
    if (row.last_on_scale) {
        const double ratio = on_scale / *row.last_on_scale;
        if (ratio > 7 || ratio < 0.14) {
            findings.push_back({.code = "weight_tenfold",
                                .severity = Severity::caution,
                                .values = {{"last", *row.last_on_scale}, {"on_scale", on_scale}}});
            return findings;
        }
    }
    if (row.expected && (on_scale < row.expected->low || on_scale > row.expected->high)) {
        findings.push_back({.code = "weight_outside_expected",
                            .severity = Severity::caution,
                            .values = {{"low", row.expected->low},
                                       {"high", row.expected->high},
                                       {"on_scale", on_scale}}});
        return findings;
    }
    const Mass step = scale_step.value_or(Mass::grams(0));
    if (row.last_on_scale && on_scale == *row.last_on_scale) {
        findings.push_back({.code = "weight_unchanged", .values = {{"step", step}}});
    }
    return findings;
}

} // namespace core::planning
