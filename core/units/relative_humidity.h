#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// Relative humidity of air: vapour pressure over saturation pressure at the same temperature.
/// Base unit: fraction, 0 to 1 (a little above 1 is kept: sensors overshoot).
class RelativeHumidity : public Quantity<RelativeHumidity> {
  public:
    static constexpr RelativeHumidity fraction(double v) { return RelativeHumidity(v); }
    static constexpr RelativeHumidity percent(double v) { return RelativeHumidity(v / 100.0); }
    [[nodiscard]] constexpr double as_fraction() const { return base_; }
    [[nodiscard]] constexpr double in_percent() const { return base_ * 100.0; }

  private:
    friend class Quantity<RelativeHumidity>;
    explicit constexpr RelativeHumidity(double fraction) : Quantity(fraction) {}
};

/// Water activity of a food: the relative humidity it would come to rest with, 0 to 1.
class WaterActivity : public Quantity<WaterActivity> {
  public:
    static constexpr WaterActivity fraction(double v) { return WaterActivity(v); }
    [[nodiscard]] constexpr double as_fraction() const { return base_; }
    /// The air a food of this activity neither gains from nor loses to.
    [[nodiscard]] constexpr RelativeHumidity equilibrium_humidity() const {
        return RelativeHumidity::fraction(base_);
    }

  private:
    friend class Quantity<WaterActivity>;
    explicit constexpr WaterActivity(double fraction) : Quantity(fraction) {}
};

} // namespace core::units
