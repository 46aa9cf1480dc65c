#include "core/doneness/rates.h"

#include <cmath>
#include <limits>

namespace core::doneness {

namespace {

using units::Duration;
using units::MassShare;

constexpr model::ReferenceWeight all_references[] = {
    model::ReferenceWeight::raw, model::ReferenceWeight::trimmed, model::ReferenceWeight::cured,
    model::ReferenceWeight::hung};

MassShare per_day(const NetWeight& from, const NetWeight& to, units::Mass start) {
    return MassShare::of(from.net - to.net, start) / (to.at - from.at).in_days();
}

std::vector<RateSpell> spells_of(const std::vector<NetWeight>& weights, units::Mass start) {
    constexpr double half_a_day = 0.5; // closer pairs show the scale's step more than the loss
    std::vector<RateSpell> spells;
    std::size_t from = 0;
    for (std::size_t to = 1; to < weights.size(); ++to) {
        if ((weights[to].at - weights[from].at).in_days() >= half_a_day) {
            spells.push_back(
                {weights[from].at, weights[to].at, per_day(weights[from], weights[to], start)});
            from = to;
        }
    }
    return spells;
}

/// The mean rate between `anchor` and the weighing whose distance in days comes closest to
/// `days`, among those within `least` and `most`.
std::optional<MassShare> mean_over(const std::vector<NetWeight>& weights, const NetWeight& anchor,
                                   double days, double least, double most, units::Mass start) {
    const NetWeight* closest = nullptr;
    double gap = std::numeric_limits<double>::max();
    for (const auto& weight : weights) {
        const double distance = std::abs((weight.at - anchor.at).in_days());
        if (distance >= least && distance <= most && std::abs(distance - days) < gap) {
            closest = &weight;
            gap = std::abs(distance - days);
        }
    }
    if (closest == nullptr) {
        return std::nullopt;
    }
    return closest->at < anchor.at ? per_day(*closest, anchor, start)
                                   : per_day(anchor, *closest, start);
}

} // namespace

std::optional<units::Mass> ReferenceWeights::of(model::ReferenceWeight which) const {
    switch (which) {
    case model::ReferenceWeight::raw:
        return raw;
    case model::ReferenceWeight::trimmed:
        return trimmed;
    case model::ReferenceWeight::cured:
        return cured;
    case model::ReferenceWeight::hung:
        break;
    }
    return hung;
}

std::vector<LossOnReference> losses_of(const EvidenceRequest& request) {
    std::vector<LossOnReference> losses;
    if (request.weights.empty()) {
        return losses;
    }
    const auto now = request.weights.back().net;
    for (const auto which : all_references) {
        const auto start = request.references.of(which);
        if (start && *start > units::Mass::grams(0)) {
            losses.push_back({which, *start, MassShare::of(*start - now, *start),
                              request.target && request.target->reference == which});
        }
    }
    return losses;
}

std::optional<RateHistory> rates_of(const EvidenceRequest& request) {
    const auto& weights = request.weights;
    if (weights.size() < 2) {
        return std::nullopt;
    }
    RateHistory history;
    history.reference = request.target ? request.target->reference : model::ReferenceWeight::hung;
    const auto start = request.references.of(history.reference).value_or(weights.front().net);
    if (!(start > units::Mass::grams(0))) {
        return std::nullopt;
    }
    history.spells = spells_of(weights, start);
    history.first_week = mean_over(weights, weights.front(), 7, 3, 10, start);
    history.last_weeks = mean_over(weights, weights.back(), 14, 6, 28, start);
    if ((weights.back().at - weights.front().at).in_days() >= 1) {
        history.overall = per_day(weights.front(), weights.back(), start);
    }
    return history;
}

std::optional<WayToLoss> way_to_loss(const std::vector<NetWeight>& weights, units::Mass start,
                                     MassShare loss) {
    for (const auto& weight : weights) {
        if (MassShare::of(start - weight.net, start) >= loss) {
            const Duration took = weight.at - weights.front().at;
            if (took.in_days() < 1) {
                return std::nullopt;
            }
            return WayToLoss{per_day(weights.front(), weight, start), took};
        }
    }
    return std::nullopt;
}

} // namespace core::doneness
