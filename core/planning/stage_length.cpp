#include "core/planning/stage_length.h"

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using model::EndCondition;
using units::Duration;
using Span = base::Interval<Duration>;

struct Candidate {
    Span lasts;
    LengthBasis basis;
};

Span minus(const Span& span, Duration taken) {
    const auto cut = [&](Duration d) { return std::max(d - taken, Duration::days(0)); };
    return {cut(span.low), cut(span.best), cut(span.high)};
}

/// How much longer a drying to another loss takes: water leaves ever more slowly towards a floor,
/// as exp(-t). The floor of 65 % is our own judgement (lean muscle holds about 74 % water and keeps
/// some; no source read gives a figure for hanging pieces); it only serves until the piece's own
/// weighings speak.
double by_target(const PieceSpec& piece, const PieceSpec& usual) {
    if (!piece.target || !usual.target || piece.target->reference != usual.target->reference) {
        return 1.0;
    }
    static constexpr double floor = 0.65;
    static constexpr double nearest = 0.60;
    const auto progress = [](units::MassShare loss) {
        return -std::log(1.0 - std::clamp(loss.as_fraction(), 0.01, nearest) / floor);
    };
    return progress(piece.target->loss) / progress(usual.target->loss);
}

bool ends_at_own_target(const model::StageTemplate& stage) {
    return std::any_of(stage.ends.begin(), stage.ends.end(), [](const EndCondition& end) {
        return end.kind == EndCondition::Kind::loss && !end.loss;
    });
}

std::optional<Candidate> open_ended(const LengthQuestion& q, const PieceSpec& piece,
                                    const LengthSources& sources) {
    const bool dries =
        q.stage.kind == model::StageKind::dry || q.stage.kind == model::StageKind::age;
    if (dries && sources.own_drying) {
        if (const auto own = sources.own_drying(piece)) {
            return Candidate{minus(*own, q.already_dried), LengthBasis::own_history};
        }
    }
    if (q.stage.typical) {
        // Only water leaving takes longer in a thicker piece by this law; a wash does not.
        const double ratio = dries ? *piece.thickness / *q.usual.thickness : 1.0;
        const Span by_thickness = scaled_to_thickness(*q.stage.typical, ratio);
        const double more = dries && ends_at_own_target(q.stage) ? by_target(piece, q.usual) : 1.0;
        return Candidate{
            {by_thickness.low * more, by_thickness.best * more, by_thickness.high * more},
            LengthBasis::typical};
    }
    if (dries && sources.modelled_drying) {
        if (const auto modelled = sources.modelled_drying(piece, q.stage)) {
            return Candidate{minus(*modelled, q.already_dried), LengthBasis::drying_model};
        }
    }
    return std::nullopt;
}

std::optional<Candidate> by_condition(const EndCondition& end, const LengthQuestion& q,
                                      const PieceSpec& piece, const LengthSources& sources) {
    const Duration constant = end.time.value_or(Duration::days(0));
    using Kind = EndCondition::Kind;
    switch (end.kind) {
    case Kind::after:
        return Candidate{Span::exactly(constant), LengthBasis::fixed};
    case Kind::days_per_kilogram:
        return Candidate{Span::exactly(constant + Duration::days(*end.days_per_unit *
                                                                 piece.raw_weight->in_kilograms())),
                         LengthBasis::weight_rule};
    case Kind::days_per_cm:
        return Candidate{
            Span::exactly(constant +
                          Duration::days(*end.days_per_unit * piece.thickness->in_centimetres())),
            LengthBasis::thickness_rule};
    case Kind::on_date:
        return Candidate{Span::exactly(Duration::days(std::max(0, *end.date - q.start))),
                         LengthBasis::date};
    case Kind::loss:
    case Kind::flat_curve:
    case Kind::feel:
    case Kind::lab_value:
        return open_ended(q, piece, sources);
    }
    return std::nullopt;
}

std::optional<Candidate> for_piece(const LengthQuestion& q, const PieceSpec& piece,
                                   const LengthSources& sources) {
    std::optional<Candidate> chosen;
    for (const auto& end : q.stage.ends) {
        const auto candidate = by_condition(end, q, piece, sources);
        if (!candidate) {
            continue;
        }
        if (!chosen) {
            chosen = candidate;
            continue;
        }
        const bool longer = candidate->lasts.best > chosen->lasts.best;
        const auto pick = [&](Duration a, Duration b) {
            return q.stage.ends_by_all ? std::max(a, b) : std::min(a, b);
        };
        chosen = Candidate{{pick(chosen->lasts.low, candidate->lasts.low),
                            pick(chosen->lasts.best, candidate->lasts.best),
                            pick(chosen->lasts.high, candidate->lasts.high)},
                           longer == q.stage.ends_by_all ? candidate->basis : chosen->basis};
    }
    return chosen ? chosen : q.stage.ends.empty() ? open_ended(q, piece, sources) : std::nullopt;
}

} // namespace

Duration whole_days_up(Duration time) {
    constexpr double slip = 1e-6; // of a day: 6 lb x 4 d/lb must stay 24 d
    if (time.in_days() < 1.0 - slip) {
        return time;
    }
    return Duration::days(std::ceil(time.in_days() - slip));
}

Span scaled_to_thickness(const Span& usual, double ratio) {
    const double square = ratio * ratio;
    return {usual.low * std::min(ratio, square), usual.best * std::pow(ratio, 1.5),
            usual.high * std::max(ratio, square)};
}

StageLength stage_length(const LengthQuestion& q, const LengthSources& sources) {
    StageLength slowest{Span::exactly(Duration::days(0)), LengthBasis::unknown, 0};
    for (std::size_t i = 0; i < q.pieces.size(); ++i) {
        const auto found = for_piece(q, q.pieces[i], sources);
        if (!found) {
            continue;
        }
        const bool first = slowest.basis == LengthBasis::unknown;
        if (first || found->lasts.best > slowest.lasts.best) {
            slowest.basis = found->basis;
            slowest.slowest_piece = i;
        }
        slowest.lasts = {std::max(slowest.lasts.low, found->lasts.low),
                         std::max(slowest.lasts.best, found->lasts.best),
                         std::max(slowest.lasts.high, found->lasts.high)};
    }
    slowest.lasts = {whole_days_up(slowest.lasts.low), whole_days_up(slowest.lasts.best),
                     whole_days_up(slowest.lasts.high)};
    return slowest;
}

} // namespace core::planning
