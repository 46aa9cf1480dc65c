#pragma once

#include "core/facts/facts.h"
#include "core/model/batch.h"
#include "core/units/mass_share.h"

#include <map>
#include <optional>
#include <string>

namespace core::services {

class Book;

/// The salt (NaCl, that in curing salt and sauces included) a kept recipe puts into the raw meat,
/// as a share of its weight. Absent where it cannot be told: the document cannot be read or has
/// stops, the method leaves open how much goes in (box), counts the pickle with the meat
/// (equilibrium) or puts nothing in to speak of (wash), the amounts are fixed without the meat they
/// are for, or the bounds are more than one point apart.
std::optional<units::MassShare> salt_dose_of(const std::string& document,
                                             const facts::Facts& facts);

/// The salt of batches by the recipe version they used; each version is worked out once.
class SaltDoses {
  public:
    /// `book` outlives it.
    explicit SaltDoses(const Book& book) : book_(book) {}
    std::optional<units::MassShare> of(const model::Batch& batch);

  private:
    const Book& book_;
    std::optional<facts::Facts> facts_; ///< read when first needed
    std::map<model::RecipeVersionId, std::optional<units::MassShare>> doses_;
};

} // namespace core::services
