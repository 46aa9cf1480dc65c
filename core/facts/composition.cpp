#include "core/facts/composition.h"

#include <algorithm>

namespace core::facts {

std::optional<Component> component_named(std::string_view name) {
    const auto it = std::find(component_names.begin(), component_names.end(), name);
    if (it == component_names.end()) {
        return std::nullopt;
    }
    return static_cast<Component>(it - component_names.begin());
}

units::MassShare Composition::total_best() const {
    auto total = units::MassShare::fraction(0);
    for (const auto& share : shares_) {
        if (share) {
            total += share->best;
        }
    }
    return total;
}

} // namespace core::facts
