#pragma once

#include "core/units/alcohol_by_volume.h"
#include "core/units/density.h"
#include "core/units/mass_share.h"

/// Mixtures of ethanol and water at 20 C: Council Directive 76/766/EEC, annex (the formula of
/// OIML R 22, 1975). Sugar or extract in a drink is not accounted for: a liqueur is heavier.
namespace core::facts {

/// Density of a mixture with `ethanol` as a share of its mass (0 to 1).
[[nodiscard]] units::Density ethanol_density_by_mass(units::MassShare ethanol);
/// Density of a mixture of strength `abv` (0 to 100 %), to 0.01 kg/m3.
[[nodiscard]] units::Density ethanol_density(units::AlcoholByVolume abv);
/// Ethanol as a share of the mass of a mixture of strength `abv` (0 to 100 %).
[[nodiscard]] units::MassShare ethanol_mass_share(units::AlcoholByVolume abv);
/// The strength of a mixture with `ethanol` as a share of its mass (0 to 1).
[[nodiscard]] units::AlcoholByVolume alcohol_by_volume(units::MassShare ethanol);

} // namespace core::facts
