#pragma once

#include "core/base/interval.h"
#include "core/units/mass_share.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string_view>

namespace core::facts {

/// What a dose is made of. The two salts of nitrite and of nitrate are kept apart because laws
/// count them differently (weight of either salt, the sodium salt, or the ion).
enum class Component {
    salt, ///< sodium chloride
    sugar,
    sodium_nitrite,
    potassium_nitrite,
    sodium_nitrate,
    potassium_nitrate,
    ascorbate,     ///< sodium ascorbate or erythorbate
    ascorbic_acid, ///< ascorbic or erythorbic acid
    phosphate,
    ethanol,
    acetic_acid,
    water,
};

inline constexpr std::size_t component_count = 12;

inline constexpr std::array<std::string_view, component_count> component_names = {
    "salt",           "sugar",
    "sodium_nitrite", "potassium_nitrite",
    "sodium_nitrate", "potassium_nitrate",
    "ascorbate",      "ascorbic_acid",
    "phosphate",      "ethanol",
    "acetic_acid",    "water"};

[[nodiscard]] constexpr std::string_view name_of(Component component) {
    return component_names[static_cast<std::size_t>(component)];
}
std::optional<Component> component_named(std::string_view name);

using ShareInterval = base::Interval<units::MassShare>;

/// The shares of an ingredient's weight, each within the bounds its source states. A component
/// that was never set is absent (exactly zero); one that is there in an amount nobody stated is
/// unknown, which no arithmetic may take for zero.
class Composition {
  public:
    /// The bounds of `component`; nothing where it is unknown.
    [[nodiscard]] std::optional<ShareInterval> of(Component component) const {
        return shares_[index(component)];
    }
    [[nodiscard]] bool knows(Component component) const {
        return shares_[index(component)].has_value();
    }
    /// True where some of `component` may be in it.
    [[nodiscard]] bool may_hold(Component component) const {
        const auto& share = shares_[index(component)];
        return !share || share->high > units::MassShare::fraction(0);
    }
    void set(Component component, ShareInterval share) { shares_[index(component)] = share; }
    void set(Component component, units::MassShare share) {
        set(component, ShareInterval::exactly(share));
    }
    void set_unknown(Component component) { shares_[index(component)].reset(); }
    /// The sum of the best values of what is known; above 1 is an impossible label.
    [[nodiscard]] units::MassShare total_best() const;

    friend bool operator==(const Composition&, const Composition&) = default;

  private:
    static constexpr std::size_t index(Component component) {
        return static_cast<std::size_t>(component);
    }
    static constexpr std::array<std::optional<ShareInterval>, component_count> nothing() {
        std::array<std::optional<ShareInterval>, component_count> shares{};
        shares.fill(ShareInterval::exactly(units::MassShare::fraction(0)));
        return shares;
    }
    std::array<std::optional<ShareInterval>, component_count> shares_ = nothing();
};

} // namespace core::facts
