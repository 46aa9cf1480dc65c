#pragma once

#include "core/units/mass.h"
#include "core/units/quantity.h"
#include "core/units/volume.h"

namespace core::units {

/// Mass per volume: of a liquid, or of a powder as it lies in a level measure (bulk density).
/// Base unit: kilogram per cubic metre (1 g/mL = 1000 kg/m3).
class Density : public Quantity<Density> {
  public:
    static constexpr Density kilograms_per_cubic_metre(double v) { return Density(v); }
    static constexpr Density grams_per_millilitre(double v) { return Density(v * 1000.0); }
    /// `volume` must not be zero.
    static constexpr Density of(Mass mass, Volume volume) {
        return grams_per_millilitre(mass.in_grams() / volume.in_millilitres());
    }

    [[nodiscard]] constexpr double in_kilograms_per_cubic_metre() const { return base_; }
    [[nodiscard]] constexpr double in_grams_per_millilitre() const { return base_ / 1000.0; }
    [[nodiscard]] constexpr Mass mass_of(Volume volume) const {
        return Mass::grams(volume.in_millilitres() * in_grams_per_millilitre());
    }
    [[nodiscard]] constexpr Volume volume_of(Mass mass) const {
        return Volume::millilitres(mass.in_grams() / in_grams_per_millilitre());
    }

  private:
    friend class Quantity<Density>;
    explicit constexpr Density(double kilograms_per_cubic_metre)
        : Quantity(kilograms_per_cubic_metre) {}
};

} // namespace core::units
