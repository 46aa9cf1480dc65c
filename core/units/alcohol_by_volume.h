#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// Alcoholic strength by volume at 20 C (OIML R 22). Base unit: fraction, 0 to 1. US proof is
/// twice the percentage; UK (Sikes) proof is 100 at 57.15 % ABV (49.28 % by weight), so
/// proof = ABV % x 7/4.
class AlcoholByVolume : public Quantity<AlcoholByVolume> {
  public:
    static constexpr AlcoholByVolume fraction(double v) { return AlcoholByVolume(v); }
    static constexpr AlcoholByVolume percent(double v) { return AlcoholByVolume(v / 100.0); }
    static constexpr AlcoholByVolume us_proof(double v) { return AlcoholByVolume(v / 200.0); }
    static constexpr AlcoholByVolume uk_proof(double v) { return AlcoholByVolume(v / 175.0); }

    [[nodiscard]] constexpr double as_fraction() const { return base_; }
    [[nodiscard]] constexpr double in_percent() const { return base_ * 100.0; }
    [[nodiscard]] constexpr double in_us_proof() const { return base_ * 200.0; }
    [[nodiscard]] constexpr double in_uk_proof() const { return base_ * 175.0; }

  private:
    friend class Quantity<AlcoholByVolume>;
    explicit constexpr AlcoholByVolume(double fraction) : Quantity(fraction) {}
};

} // namespace core::units
