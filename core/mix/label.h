#pragma once

#include "core/base/interval.h"
#include "core/facts/facts.h"
#include "core/model/finding.h"
#include "core/units/alcohol_by_volume.h"
#include "core/units/density.h"
#include "core/units/mass_share.h"
#include "core/units/volume.h"

#include <optional>
#include <string>

namespace core::mix {

/// "879 mg sodium per 15 mL", as US labels state it.
struct SodiumPerVolume {
    units::Mass sodium;
    units::Volume serving;
    friend bool operator==(const SodiumPerVolume&, const SodiumPerVolume&) = default;
};

/// What a person reads off a bag or bottle. Every field is a share of the ingredient's weight
/// unless it says otherwise; nothing where the label is silent.
struct Label {
    std::optional<units::MassShare> nitrite; ///< as sodium nitrite
    std::optional<units::MassShare> nitrate; ///< as sodium nitrate
    std::optional<units::AlcoholByVolume> alcohol;
    std::optional<units::MassShare> salt;
    std::optional<units::MassShare> sodium; ///< of a sauce: salt is 2.5421 times this
    std::optional<SodiumPerVolume> sodium_per_volume;
    std::optional<units::Mass> salt_per_100ml; ///< as EU labels of liquids state it
    std::optional<units::MassShare> sugar;
    std::optional<units::MassShare> water;
    std::optional<units::MassShare> acid; ///< of a vinegar
    std::optional<units::Density> density;
    friend bool operator==(const Label&, const Label&) = default;
};

/// An ingredient with everything known about it: catalogue overridden by label.
struct ResolvedIngredient {
    std::string id;
    std::string name;
    facts::IngredientKind kind = facts::IngredientKind::other;
    facts::Composition composition;
    std::optional<base::Interval<units::Density>> density;
    std::optional<units::AlcoholByVolume> alcohol;
    bool strength_from_label = false; ///< the curing strength was read off this bag
};

/// Applies `label` to `entry`. Appends a finding for each impossible or missing figure, with
/// `place` as its place: strength_unknown, strength_out_of_range (not within 0.4 to 11 % for a
/// curing salt), strength_as_proportion (0.0625 typed for 6.25 %), alcohol_unknown,
/// alcohol_too_strong, sodium_impossible (more than salt itself holds), composition_over_whole,
/// density_implausible, label_needs_density.
ResolvedIngredient resolve(const facts::CatalogueEntry& entry, const Label& label,
                           const std::string& place, model::Findings& findings);

/// True for wine, spirit, sauce, vinegar and water.
[[nodiscard]] bool is_liquid(facts::IngredientKind kind);

} // namespace core::mix
