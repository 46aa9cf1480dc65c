#include "core/doneness/hurdle_checks.h"

namespace core::doneness {

namespace {

using Quantity = facts::Hurdle::Quantity;

struct Figure {
    std::optional<base::Interval<double>> value;
    bool measured = false;
};

template <class Q>
std::optional<base::Interval<double>> plain(const std::optional<base::Interval<Q>>& interval) {
    if (!interval) {
        return std::nullopt;
    }
    return base::Interval<double>{interval->low.as_fraction(), interval->best.as_fraction(),
                                  interval->high.as_fraction()};
}

template <class Q>
Figure measured_or_estimated(const std::optional<Q>& measured,
                             const std::optional<base::Interval<Q>>& estimate) {
    if (measured) {
        return {base::Interval<double>::exactly(measured->as_fraction()), true};
    }
    return {plain(estimate), false};
}

/// Loss of the fresh, uncured weight: of the raw weight, else of the trimmed one.
Figure loss_of_fresh(const EvidenceSheet& sheet) {
    for (const auto which : {model::ReferenceWeight::raw, model::ReferenceWeight::trimmed}) {
        for (const auto& loss : sheet.losses) {
            if (loss.reference == which) {
                return {base::Interval<double>::exactly(loss.loss.as_fraction()), true};
            }
        }
    }
    return {};
}

Figure figure_of(const EvidenceSheet& sheet, Quantity quantity) {
    const auto& c = sheet.composition;
    switch (quantity) {
    case Quantity::water_activity_at_most:
        return measured_or_estimated(sheet.measured.water_activity,
                                     c ? c->water_activity : std::nullopt);
    case Quantity::water_phase_salt_at_least:
        return {plain(c ? c->water_phase_salt : std::nullopt), false};
    case Quantity::salt_at_least:
        return measured_or_estimated(sheet.measured.salt, c ? c->salt : std::nullopt);
    case Quantity::loss_at_least:
        break;
    }
    return loss_of_fresh(sheet);
}

HurdleCheck check(const EvidenceSheet& sheet, const std::string& id, const std::string& name,
                  Quantity quantity, double limit, const base::Source& source) {
    HurdleCheck result{.id = id, .name = name, .quantity = quantity, .limit = limit};
    const Figure figure = figure_of(sheet, quantity);
    result.value = figure.value;
    result.measured = figure.measured;
    result.source = source;
    if (figure.value) {
        result.stands = stands(*figure.value, limit, quantity != Quantity::water_activity_at_most);
    }
    return result;
}

} // namespace

HurdleCheck::Stands stands(const base::Interval<double>& value, double limit, bool at_least) {
    const double worst = at_least ? value.low : value.high;
    const double best = at_least ? value.high : value.low;
    const auto keeps = [&](double v) { return at_least ? v >= limit : v <= limit; };
    if (keeps(worst)) {
        return HurdleCheck::Stands::met;
    }
    return keeps(best) ? HurdleCheck::Stands::undecided : HurdleCheck::Stands::not_met;
}

std::vector<HurdleCheck> hurdle_checks(const EvidenceSheet& sheet, const facts::Hurdles& hurdles) {
    std::vector<HurdleCheck> checks;
    for (const auto& hurdle : hurdles.hurdles) {
        checks.push_back(
            check(sheet, hurdle.id, hurdle.name, hurdle.quantity, hurdle.value, hurdle.source));
    }
    for (const auto& organism : hurdles.organisms) {
        if (organism.lowest_activity) {
            checks.push_back(check(sheet, organism.id, organism.name,
                                   Quantity::water_activity_at_most,
                                   organism.lowest_activity->as_fraction(), organism.source));
        }
    }
    return checks;
}

} // namespace core::doneness
