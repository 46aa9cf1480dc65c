#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// A mass (what a scale shows, in air). Base unit: gram. Avoirdupois ounce and pound are exact
/// (1 lb = 453.59237 g, International Yard and Pound Agreement 1959). May be negative as a
/// difference; doors that read a person's entry reject negatives.
class Mass : public Quantity<Mass> {
  public:
    static constexpr double grams_per_pound = 453.59237;
    static constexpr double grams_per_ounce = grams_per_pound / 16.0;

    static constexpr Mass grams(double v) { return Mass(v); }
    static constexpr Mass kilograms(double v) { return Mass(v * 1000.0); }
    static constexpr Mass milligrams(double v) { return Mass(v / 1000.0); }
    static constexpr Mass ounces(double v) { return Mass(v * grams_per_ounce); }
    static constexpr Mass pounds(double v) { return Mass(v * grams_per_pound); }

    [[nodiscard]] constexpr double in_grams() const { return base_; }
    [[nodiscard]] constexpr double in_kilograms() const { return base_ / 1000.0; }
    [[nodiscard]] constexpr double in_milligrams() const { return base_ * 1000.0; }
    [[nodiscard]] constexpr double in_ounces() const { return base_ / grams_per_ounce; }
    [[nodiscard]] constexpr double in_pounds() const { return base_ / grams_per_pound; }

  private:
    friend class Quantity<Mass>;
    explicit constexpr Mass(double grams) : Quantity(grams) {}
};

} // namespace core::units
