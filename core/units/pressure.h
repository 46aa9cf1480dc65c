#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// A pressure: of the air as a whole or of the vapour in it. Base unit: pascal
/// (1 standard atmosphere = 101,325 Pa exactly, CGPM 1954; 1 mbar = 1 hPa).
class Pressure : public Quantity<Pressure> {
  public:
    static constexpr Pressure pascals(double v) { return Pressure(v); }
    static constexpr Pressure hectopascals(double v) { return Pressure(v * 100.0); }
    static constexpr Pressure kilopascals(double v) { return Pressure(v * 1000.0); }
    static constexpr Pressure standard_atmosphere() { return Pressure(101325.0); }

    [[nodiscard]] constexpr double in_pascals() const { return base_; }
    [[nodiscard]] constexpr double in_hectopascals() const { return base_ / 100.0; }
    [[nodiscard]] constexpr double in_kilopascals() const { return base_ / 1000.0; }

  private:
    friend class Quantity<Pressure>;
    explicit constexpr Pressure(double pascals) : Quantity(pascals) {}
};

} // namespace core::units
