#include "core/mix/dose.h"

#include "core/facts/chemistry.h"
#include "core/facts/ethanol.h"

#include <algorithm>

namespace core::mix {
namespace {

using facts::Component;
using units::Mass;
using units::MassShare;

template <class Q>
base::Interval<Q> sum(const base::Interval<Q>& a, const base::Interval<Q>& b) {
    return {a.low + b.low, a.best + b.best, a.high + b.high};
}

template <class Q>
base::Interval<Q> scaled(const base::Interval<Q>& a, double factor) {
    return {a.low * factor, a.best * factor, a.high * factor};
}

/// part / (part + rest): grows with the part and falls with the rest, so the corners are exact.
ShareInterval share_of_whole(const MassInterval& part, const MassInterval& rest) {
    const auto share = [](Mass p, Mass r) {
        const Mass whole = p + r;
        return whole > Mass::grams(0) ? MassShare::of(p, whole) : MassShare::fraction(0);
    };
    return {share(part.low, rest.high), share(part.best, rest.best), share(part.high, rest.low)};
}

/// What a line holds of a component, and what else it weighs.
struct PartAndRest {
    MassInterval part;
    MassInterval rest;
};

PartAndRest part_and_rest(const MassInterval& mass, const ShareInterval& share) {
    const auto other = [](MassShare s) { return 1 - s.as_fraction(); };
    return {
        {share.low.part_of(mass.low), share.best.part_of(mass.best), share.high.part_of(mass.high)},
        {mass.low * other(share.high), mass.best * other(share.best),
         mass.high * other(share.low)}};
}

bool at_rest_together(Method method) {
    return method == Method::immersion_equilibrium || method == Method::equilibrium_brine;
}

/// The sums over one group of lines (the cure, or the wash) for one component.
PartAndRest total_of(const std::vector<WeighedLine>& lines, Component component, bool wash,
                     const DoseContext& context) {
    PartAndRest total{no_mass, no_mass};
    for (const auto& line : lines) {
        if ((line.as_wash || context.method == Method::wash) != wash) {
            continue;
        }
        double taken_up = 1;
        if (!wash && (context.method == Method::marinade ||
                      (context.method == Method::dry && is_liquid(line.what.kind)))) {
            taken_up = context.absorbed;
        }
        const auto share = line.what.composition.of(component).value_or(no_share);
        const auto both = part_and_rest(scaled(line.mass, taken_up), share);
        total.part = sum(total.part, both.part);
        total.rest = sum(total.rest, both.rest);
    }
    return total;
}

ShareInterval times(const ShareInterval& a, const ShareInterval& b) {
    return {a.low * b.low.as_fraction(), a.best * b.best.as_fraction(),
            a.high * b.high.as_fraction()};
}

/// The film of wash that stays: the catalogue's bounds, but never more than was used.
ShareInterval wash_film(const MassInterval& used, const DoseContext& context) {
    const auto at_most = [&](MassShare film, Mass mass) {
        return std::min(film, MassShare::of(mass, context.meat));
    };
    return {at_most(context.wash_pickup.low, used.low),
            at_most(context.wash_pickup.best, used.best),
            at_most(context.wash_pickup.high, used.high)};
}

ShareInterval share_in_meat(const std::vector<WeighedLine>& lines, Component component,
                            const DoseContext& context) {
    const auto cure = total_of(lines, component, false, context);
    ShareInterval share = no_share;
    if (at_rest_together(context.method)) {
        share = share_of_whole(cure.part, sum(cure.rest, MassInterval::exactly(context.meat)));
    } else if (context.method == Method::injected || context.method == Method::immersion_pickup) {
        const auto& uptake = context.method == Method::injected ? context.pump : context.pickup;
        share = scaled(share_of_whole(cure.part, cure.rest),
                       uptake.value_or(MassShare::fraction(0)).as_fraction());
    } else {
        share = {MassShare::of(cure.part.low, context.meat),
                 MassShare::of(cure.part.best, context.meat),
                 MassShare::of(cure.part.high, context.meat)};
    }
    const auto wash = total_of(lines, component, true, context);
    if (wash.part.high > Mass::grams(0)) {
        const auto film = wash_film(sum(wash.part, wash.rest), context);
        share = sum(share, times(share_of_whole(wash.part, wash.rest), film));
    }
    return share;
}

/// Everything taken up, as a share of the meat; nothing where meat and pickle are one whole.
ShareInterval total_taken_up(const std::vector<WeighedLine>& lines, const DoseContext& context) {
    ShareInterval taken = no_share;
    if (context.method == Method::injected || context.method == Method::immersion_pickup) {
        const auto& uptake = context.method == Method::injected ? context.pump : context.pickup;
        taken = ShareInterval::exactly(uptake.value_or(MassShare::fraction(0)));
    } else if (!at_rest_together(context.method)) {
        const auto cure = total_of(lines, Component::water, false, context);
        const auto mass = sum(cure.part, cure.rest);
        taken = {MassShare::of(mass.low, context.meat), MassShare::of(mass.best, context.meat),
                 MassShare::of(mass.high, context.meat)};
    }
    return taken;
}

ShareInterval over_whole(const ShareInterval& part, const ShareInterval& taken_up) {
    const auto whole = [](MassShare taken) { return 1 + taken.as_fraction(); };
    return {part.low / whole(taken_up.high), part.best / whole(taken_up.best),
            part.high / whole(taken_up.low)};
}

std::optional<base::Interval<units::AlcoholByVolume>>
strength_of_liquids(const std::vector<WeighedLine>& lines) {
    PartAndRest liquid{no_mass, no_mass};
    for (const auto& line : lines) {
        if (is_liquid(line.what.kind)) {
            const auto share = line.what.composition.of(Component::ethanol).value_or(no_share);
            const auto both = part_and_rest(line.mass, share);
            liquid.part = sum(liquid.part, both.part);
            liquid.rest = sum(liquid.rest, both.rest);
        }
    }
    if (liquid.part.best + liquid.rest.best <= Mass::grams(0)) {
        return std::nullopt;
    }
    // What else is dissolved in a sauce is counted as water here: a shade too strong.
    const auto share = share_of_whole(liquid.part, liquid.rest);
    return base::Interval<units::AlcoholByVolume>{facts::alcohol_by_volume(share.low),
                                                  facts::alcohol_by_volume(share.best),
                                                  facts::alcohol_by_volume(share.high)};
}

void fill_cures(Dose& dose) {
    using namespace facts;
    const auto& na2 = dose.of(Component::sodium_nitrite);
    const auto& k2 = dose.of(Component::potassium_nitrite);
    const auto& na3 = dose.of(Component::sodium_nitrate);
    const auto& k3 = dose.of(Component::potassium_nitrate);
    dose.nitrite_as_weighed = sum(na2, k2);
    dose.nitrite_ion =
        sum(scaled(na2, no2_in_sodium_nitrite), scaled(k2, no2_in_potassium_nitrite));
    // Sodium salt first, so that without potassium salt it is the same number to the last bit.
    dose.nitrite = sum(na2, scaled(k2, no2_in_potassium_nitrite / no2_in_sodium_nitrite));
    dose.nitrate_as_weighed = sum(na3, k3);
    dose.nitrate_ion =
        sum(scaled(na3, no3_in_sodium_nitrate), scaled(k3, no3_in_potassium_nitrate));
    dose.nitrate = sum(na3, scaled(k3, no3_in_potassium_nitrate / no3_in_sodium_nitrate));
}

void fill_water_phase(Dose& dose, const std::vector<WeighedLine>& lines,
                      const DoseContext& context) {
    ShareInterval meat_water = context.moisture;
    if (at_rest_together(context.method)) {
        const auto pickle = total_of(lines, Component::water, false, context);
        const auto whole = sum(sum(pickle.part, pickle.rest), MassInterval::exactly(context.meat));
        meat_water = {meat_water.low * (context.meat / whole.high),
                      meat_water.best * (context.meat / whole.best),
                      meat_water.high * (context.meat / whole.low)};
    }
    const auto water = sum(meat_water, dose.added_water);
    const auto wps = [](MassShare salt, MassShare moisture) {
        return salt + moisture > MassShare::fraction(0) ? water_phase_salt(salt, moisture)
                                                        : MassShare::fraction(0);
    };
    dose.water_phase_salt = {wps(dose.salt.low, water.high), wps(dose.salt.best, water.best),
                             wps(dose.salt.high, water.low)};
}

} // namespace

Dose compute_dose(const std::vector<WeighedLine>& lines, const DoseContext& context) {
    Dose dose;
    for (std::size_t i = 0; i < facts::component_count; ++i) {
        const auto component = static_cast<Component>(i);
        dose.shares[i] = share_in_meat(lines, component, context);
        if (std::any_of(lines.begin(), lines.end(), [&](const WeighedLine& line) {
                return !line.what.composition.knows(component);
            })) {
            dose.unknown.push_back(component);
        }
    }
    dose.salt = dose.of(Component::salt);
    dose.sugar = dose.of(Component::sugar);
    dose.ascorbate = dose.of(Component::ascorbate);
    dose.ascorbic_acid = dose.of(Component::ascorbic_acid);
    dose.phosphate = dose.of(Component::phosphate);
    dose.added_water = dose.of(Component::water);
    fill_cures(dose);
    dose.alcohol = over_whole(dose.of(Component::ethanol), total_taken_up(lines, context));
    dose.alcohol_of_liquid = strength_of_liquids(lines);
    fill_water_phase(dose, lines, context);
    return dose;
}

units::MassShare ingoing_by_pickup(Mass substance, MassShare pickup, Mass pickle) {
    return MassShare::of(substance, pickle) * pickup.as_fraction();
}

units::MassShare ingoing_at_equilibrium(Mass substance, Mass meat, Mass pickle) {
    return MassShare::of(substance, meat + pickle);
}

units::MassShare ingoing_on_green_weight(Mass substance, Mass meat) {
    return MassShare::of(substance, meat);
}

units::MassShare water_phase_salt(MassShare salt, MassShare moisture) {
    return MassShare::fraction(salt / (salt + moisture));
}

} // namespace core::mix
