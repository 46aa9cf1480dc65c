#pragma once

#include <cmath>
#include <compare>

namespace core::units {

/// What additive kinds share: sums and differences of one kind, scaling by a plain number, the
/// ratio of two (a plain number) and ordering. Nothing converts in or out; a kind times a kind
/// does not compile. Held as a double in the kind's base unit.
template <class Kind>
class Quantity {
  public:
    friend constexpr Kind operator+(Kind a, Kind b) { return make(a.base_ + b.base_); }
    friend constexpr Kind operator-(Kind a, Kind b) { return make(a.base_ - b.base_); }
    friend constexpr Kind operator-(Kind a) { return make(-a.base_); }
    friend constexpr Kind operator*(Kind a, double factor) { return make(a.base_ * factor); }
    friend constexpr Kind operator*(double factor, Kind a) { return make(a.base_ * factor); }
    friend constexpr Kind operator/(Kind a, double divisor) { return make(a.base_ / divisor); }
    friend constexpr double operator/(Kind a, Kind b) { return a.base_ / b.base_; }
    friend constexpr Kind& operator+=(Kind& a, Kind b) { return a = a + b; }
    friend constexpr Kind& operator-=(Kind& a, Kind b) { return a = a - b; }
    friend constexpr auto operator<=>(const Kind& a, const Kind& b) { return a.base_ <=> b.base_; }
    friend constexpr bool operator==(const Kind& a, const Kind& b) { return a.base_ == b.base_; }
    [[nodiscard]] bool is_finite() const { return std::isfinite(base_); }

  protected:
    explicit constexpr Quantity(double base) : base_(base) {}
    /// The kind's private constructor, reached through its friendship with this base.
    static constexpr Kind make(double base) { return Kind(base); }
    double base_;
};

} // namespace core::units
