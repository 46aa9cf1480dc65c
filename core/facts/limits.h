#pragma once

#include "core/base/cited.h"
#include "core/units/mass_share.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// What the law of a place says about a class of product, as data with its source. A limit whose
/// text nobody read is shown as unverified wherever it is used: see is_verified().
namespace core::facts {

enum class Substance {
    nitrite,
    nitrate,
    nitrite_and_nitrate, ///< the sum of both
    ascorbate,           ///< sodium ascorbate or erythorbate
    ascorbic_acid,       ///< ascorbic or erythorbic acid
    phosphate,
};

/// What is weighed when the limit is compared.
enum class ExpressedAs {
    salt_as_weighed, ///< either salt, sodium or potassium, by its own weight
    sodium_salt,     ///< as NaNO2 or NaNO3 (other salts converted through the ion)
    ion,             ///< as NO2 or NO3
};

enum class LimitBasis {
    ingoing,  ///< what goes in, on the green weight of the meat
    finished, ///< in the finished product, which is lighter than the green meat
    residual, ///< what a laboratory finds in the product; no arithmetic can show it
};

/// The way a cure is put on, as far as product classes tell them apart.
enum class CureRoute { dry, immersion, injected };

struct Limit {
    Substance substance{};
    ExpressedAs expressed_as = ExpressedAs::sodium_salt;
    LimitBasis basis = LimitBasis::ingoing;
    std::optional<units::MassShare> maximum;
    std::optional<units::MassShare> minimum;
    bool not_permitted = false; ///< the substance must not be used at all
    base::Source source;
    std::string note;
};

struct LimitSet {
    std::string id; ///< stable name, e.g. "us-fsis-dry-cured"
    std::string name;
    std::string jurisdiction;
    std::string product_class;
    std::vector<CureRoute> routes; ///< empty: any
    bool subtract_skin = false;    ///< the sum is made on the weight without the skin
    std::optional<units::Day> in_force_from;
    std::optional<units::Day> in_force_until; ///< the last day
    std::vector<Limit> limits;
    std::string note;
};

/// True where the issuer's own words were read or follow from them by arithmetic.
[[nodiscard]] bool is_verified(const base::Source& source);

class LimitSets {
  public:
    explicit LimitSets(std::vector<LimitSet> sets = {}) : sets_(std::move(sets)) {}
    [[nodiscard]] const LimitSet* find(std::string_view id) const;
    [[nodiscard]] const std::vector<LimitSet>& sets() const { return sets_; }

  private:
    std::vector<LimitSet> sets_;
};

} // namespace core::facts
