#pragma once

#include "core/base/cited.h"
#include "core/facts/composition.h"
#include "core/units/density.h"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace core::facts {

enum class IngredientKind {
    salt,
    curing_salt, ///< salt mixed with nitrite or nitrate: chosen by its labelled strength
    pure_cure,   ///< an undiluted nitrite or nitrate
    sugar,
    sauce,
    wine,
    spirit,
    vinegar,
    water,
    spice,
    accelerator,
    other,
};

/// What the person must read off the label before the ingredient can be dosed.
enum class LabelQuestion {
    none,
    nitrite_strength, ///< nitrite (and nitrate) as a share of the curing salt
    alcohol,          ///< strength by volume
    sodium,           ///< sodium or salt of a sauce; the catalogue's bounds serve until then
};

/// One entry of the ingredient catalogue: what is in it, between which bounds, says who.
struct CatalogueEntry {
    std::string id;
    std::string name; ///< plain English trade name; ui/text may translate by id
    IngredientKind kind = IngredientKind::other;
    LabelQuestion asks = LabelQuestion::none;
    Composition composition;
    std::map<Component, base::Source> sources; ///< of each component that is there
    /// Liquids: density at 20 C. Powders: bulk density in a level measure, with its spread. A
    /// spirit's comes from its strength instead (ethanol.h).
    std::optional<base::Cited<base::Interval<units::Density>>> density;
    std::string note;
};

/// The entries in the file's order.
class Catalogue {
  public:
    explicit Catalogue(std::vector<CatalogueEntry> entries = {});
    /// Nothing where there is no such id.
    [[nodiscard]] const CatalogueEntry* find(std::string_view id) const;
    [[nodiscard]] const std::vector<CatalogueEntry>& entries() const { return entries_; }

  private:
    std::vector<CatalogueEntry> entries_;
};

} // namespace core::facts
