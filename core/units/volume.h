#pragma once

#include "core/units/quantity.h"

namespace core::units {

/// A volume of liquid or of a level measure. Base unit: millilitre. US customary doors are exact
/// (1 US gal = 231 in3 = 3785.411784 mL, NIST Handbook 44 App. C). A spoon is a size named by
/// the person, because a tablespoon is 14.2 to 20 mL by country: see core/facts.
class Volume : public Quantity<Volume> {
  public:
    static constexpr double millilitres_per_us_gallon = 3785.411784;

    static constexpr Volume millilitres(double v) { return Volume(v); }
    static constexpr Volume litres(double v) { return Volume(v * 1000.0); }
    static constexpr Volume us_fluid_ounces(double v) {
        return Volume(v * millilitres_per_us_gallon / 128.0);
    }
    static constexpr Volume us_gallons(double v) { return Volume(v * millilitres_per_us_gallon); }

    [[nodiscard]] constexpr double in_millilitres() const { return base_; }
    [[nodiscard]] constexpr double in_litres() const { return base_ / 1000.0; }
    [[nodiscard]] constexpr double in_us_fluid_ounces() const {
        return base_ * 128.0 / millilitres_per_us_gallon;
    }
    [[nodiscard]] constexpr double in_us_gallons() const {
        return base_ / millilitres_per_us_gallon;
    }

  private:
    friend class Quantity<Volume>;
    explicit constexpr Volume(double millilitres) : Quantity(millilitres) {}
};

} // namespace core::units
