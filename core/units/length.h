#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// A length: thickness or diameter of a piece. Base unit: millimetre (1 in = 25.4 mm exactly).
class Length : public Quantity<Length> {
  public:
    static constexpr Length millimetres(double v) { return Length(v); }
    static constexpr Length centimetres(double v) { return Length(v * 10.0); }
    static constexpr Length metres(double v) { return Length(v * 1000.0); }
    static constexpr Length inches(double v) { return Length(v * 25.4); }

    [[nodiscard]] constexpr double in_millimetres() const { return base_; }
    [[nodiscard]] constexpr double in_centimetres() const { return base_ / 10.0; }
    [[nodiscard]] constexpr double in_metres() const { return base_ / 1000.0; }
    [[nodiscard]] constexpr double in_inches() const { return base_ / 25.4; }

  private:
    friend class Quantity<Length>;
    explicit constexpr Length(double millimetres) : Quantity(millimetres) {}
};

} // namespace core::units
