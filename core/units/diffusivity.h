#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// A diffusion coefficient. Base unit: m2/s (salt in lean meat is about 2.5e-10).
class Diffusivity : public Quantity<Diffusivity> {
  public:
    static constexpr Diffusivity m2_per_second(double v) { return Diffusivity(v); }
    [[nodiscard]] constexpr double in_m2_per_second() const { return base_; }

  private:
    friend class Quantity<Diffusivity>;
    explicit constexpr Diffusivity(double m2_per_second) : Quantity(m2_per_second) {}
};

} // namespace core::units
