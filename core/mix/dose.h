#pragma once

#include "core/base/interval.h"
#include "core/facts/composition.h"
#include "core/facts/facts.h"
#include "core/mix/label.h"
#include "core/mix/recipe_document.h"
#include "core/units/alcohol_by_volume.h"
#include "core/units/mass.h"
#include "core/units/mass_share.h"

#include <array>
#include <optional>
#include <vector>

namespace core::mix {

using ShareInterval = facts::ShareInterval;
using MassInterval = base::Interval<units::Mass>;

inline constexpr ShareInterval no_share = ShareInterval::exactly(units::MassShare::fraction(0));
inline constexpr MassInterval no_mass = MassInterval::exactly(units::Mass::grams(0));

[[nodiscard]] constexpr std::array<ShareInterval, facts::component_count> no_shares() {
    return {no_share, no_share, no_share, no_share, no_share, no_share,
            no_share, no_share, no_share, no_share, no_share, no_share};
}

/// What the meat gets. Shares are of the green weight as weighed, except where meat and pickle
/// come to rest together (immersion_equilibrium, equilibrium_brine): there they are of meat and
/// pickle together, as FSIS Directive 7620.3 method two counts. Bounds are outer: no combination
/// of the ingredients' own bounds leaves them.
struct Dose {
    std::array<ShareInterval, facts::component_count> shares = no_shares();
    [[nodiscard]] const ShareInterval& of(facts::Component component) const {
        return shares[static_cast<std::size_t>(component)];
    }
    std::vector<facts::Component> unknown; ///< components with an unstated part left out

    ShareInterval salt = no_share; ///< all NaCl, that inside curing salt and sauces counted once
    ShareInterval sugar = no_share;
    ShareInterval nitrite_as_weighed =
        no_share;                         ///< sodium and potassium nitrite by their own weight
    ShareInterval nitrite = no_share;     ///< as NaNO2
    ShareInterval nitrite_ion = no_share; ///< as NO2
    ShareInterval nitrate_as_weighed = no_share;
    ShareInterval nitrate = no_share;     ///< as NaNO3
    ShareInterval nitrate_ion = no_share; ///< as NO3
    ShareInterval ascorbate = no_share;
    ShareInterval ascorbic_acid = no_share;
    ShareInterval phosphate = no_share;
    ShareInterval added_water = no_share;
    ShareInterval alcohol = no_share; ///< ethanol, of meat and cure together
    /// salt / (salt + water) in the meat before drying.
    ShareInterval water_phase_salt = no_share;
    /// Strength of the liquid ingredients mixed together; nothing where there are none.
    std::optional<base::Interval<units::AlcoholByVolume>> alcohol_of_liquid;
};

/// A line with its weight: input to the dose arithmetic.
struct WeighedLine {
    ResolvedIngredient what;
    MassInterval mass = no_mass;
    bool as_wash = false;
};

/// The circumstances that turn weights into shares.
struct DoseContext {
    Method method = Method::dry;
    units::Mass meat = units::Mass::grams(1); ///< more than zero
    ShareInterval moisture = ShareInterval::exactly(units::MassShare::fraction(0));
    std::optional<units::MassShare> pump;   ///< needed for injected
    std::optional<units::MassShare> pickup; ///< needed for immersion_pickup
    ShareInterval wash_pickup = ShareInterval::exactly(units::MassShare::fraction(0));
    /// Share of each liquid that is taken up (a marinade: of everything in it). 1 or 0.5.
    double absorbed = 1;
};

Dose compute_dose(const std::vector<WeighedLine>& lines, const DoseContext& context);

/// FSIS Directive 7620.3, immersion method one, and the pumped form with the pump as pick-up:
/// substance x pick-up / pickle. `pickle` is its real weight; a gallon of pickle is not a fixed
/// number of pounds.
[[nodiscard]] units::MassShare ingoing_by_pickup(units::Mass substance, units::MassShare pickup,
                                                 units::Mass pickle);
/// FSIS Directive 7620.3, immersion method two: substance / (meat + pickle).
[[nodiscard]] units::MassShare ingoing_at_equilibrium(units::Mass substance, units::Mass meat,
                                                      units::Mass pickle);
/// Dry cured or chopped: substance / green weight.
[[nodiscard]] units::MassShare ingoing_on_green_weight(units::Mass substance, units::Mass meat);

/// salt / (salt + moisture): "brine strength", water-phase salt.
[[nodiscard]] units::MassShare water_phase_salt(units::MassShare salt, units::MassShare moisture);

} // namespace core::mix
