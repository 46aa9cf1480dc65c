#pragma once

#include "core/units/quantity.h"

#include <cmath>
#include <compare>

namespace core::units {

/// A difference of temperatures. Base unit: kelvin. 1 K = 1.8 F degrees of difference.
class TemperatureStep : public Quantity<TemperatureStep> {
  public:
    static constexpr TemperatureStep kelvins(double v) { return TemperatureStep(v); }
    static constexpr TemperatureStep fahrenheit_degrees(double v) {
        return TemperatureStep(v / 1.8);
    }
    [[nodiscard]] constexpr double in_kelvins() const { return base_; }
    [[nodiscard]] constexpr double in_fahrenheit_degrees() const { return base_ * 1.8; }

  private:
    friend class Quantity<TemperatureStep>;
    explicit constexpr TemperatureStep(double kelvins) : Quantity(kelvins) {}
};

/// A point on the temperature scale, not a difference: two points cannot be added, and their
/// difference is a TemperatureStep. Base unit: kelvin.
class Temperature {
  public:
    static constexpr Temperature kelvins(double v) { return Temperature(v); }
    static constexpr Temperature celsius(double v) { return Temperature(v + 273.15); }
    static constexpr Temperature fahrenheit(double v) {
        return Temperature((v - 32.0) / 1.8 + 273.15);
    }
    [[nodiscard]] constexpr double in_kelvins() const { return kelvins_; }
    [[nodiscard]] constexpr double in_celsius() const { return kelvins_ - 273.15; }
    [[nodiscard]] constexpr double in_fahrenheit() const {
        return (kelvins_ - 273.15) * 1.8 + 32.0;
    }
    [[nodiscard]] bool is_finite() const { return std::isfinite(kelvins_); }
    friend constexpr Temperature operator+(Temperature t, TemperatureStep s) {
        return Temperature(t.kelvins_ + s.in_kelvins());
    }
    friend constexpr Temperature operator-(Temperature t, TemperatureStep s) {
        return Temperature(t.kelvins_ - s.in_kelvins());
    }
    friend constexpr TemperatureStep operator-(Temperature a, Temperature b) {
        return TemperatureStep::kelvins(a.kelvins_ - b.kelvins_);
    }
    // clang-tidy 14 takes what this compares with for a null pointer.
    friend constexpr auto operator<=>(Temperature,
                                      Temperature) = default; // NOLINT(modernize-use-nullptr)

  private:
    explicit constexpr Temperature(double kelvins) : kelvins_(kelvins) {}
    double kelvins_;
};

} // namespace core::units
