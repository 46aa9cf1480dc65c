#pragma once

#include "core/units/mass.h"

namespace core::units {

/// One mass as a share of another (dimensionless). Percent, ppm (mg/kg) and g/kg are doors of
/// the same value, so the factor of 10,000 between them cannot be forgotten. What the share is
/// *of* (green weight, water, finished product) is said by the name of the variable that holds
/// it. Base unit: 1 (0.025 is 2.5 %).
class MassShare : public Quantity<MassShare> {
  public:
    static constexpr MassShare fraction(double v) { return MassShare(v); }
    static constexpr MassShare percent(double v) { return MassShare(v / 100.0); }
    static constexpr MassShare ppm(double v) { return MassShare(v / 1.0e6); }
    static constexpr MassShare grams_per_kilogram(double v) { return MassShare(v / 1000.0); }
    /// part / whole; `whole` must not be zero.
    static constexpr MassShare of(Mass part, Mass whole) { return MassShare(part / whole); }

    [[nodiscard]] constexpr double as_fraction() const { return base_; }
    [[nodiscard]] constexpr double in_percent() const { return base_ * 100.0; }
    [[nodiscard]] constexpr double in_ppm() const { return base_ * 1.0e6; }
    [[nodiscard]] constexpr double in_grams_per_kilogram() const { return base_ * 1000.0; }
    /// The part of `whole` that this share is.
    [[nodiscard]] constexpr Mass part_of(Mass whole) const { return whole * base_; }

  private:
    friend class Quantity<MassShare>;
    explicit constexpr MassShare(double fraction) : Quantity(fraction) {}
};

} // namespace core::units
