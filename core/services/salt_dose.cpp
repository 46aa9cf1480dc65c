#include "core/services/salt_dose.h"

#include "core/mix/mix_sheet.h"
#include "core/services/book.h"

#include <cmath>

namespace core::services {
namespace {

using units::Mass;
using units::MassShare;

bool is_of_the_meat(mix::Method method) {
    return method == mix::Method::dry || method == mix::Method::injected ||
           method == mix::Method::immersion_pickup || method == mix::Method::marinade;
}

std::optional<MassShare> salt_for(const mix::RecipeDocument& recipe, Mass meat,
                                  const facts::Facts& facts) {
    const auto sheet =
        mix::make_mix_sheet({.recipe = recipe, .pieces = {{.code = {}, .mass = meat}}}, facts);
    const auto& salt = sheet.dose.salt;
    if (sheet.has_stop() || salt.best.as_fraction() <= 0 ||
        (salt.high - salt.low).in_percent() > 1) {
        return std::nullopt;
    }
    return salt.best;
}

} // namespace

std::optional<MassShare> salt_dose_of(const std::string& document, const facts::Facts& facts) {
    const auto recipe = mix::read_recipe(document);
    if (!recipe || !is_of_the_meat(recipe->method)) {
        return std::nullopt;
    }
    if (recipe->for_meat) {
        return salt_for(*recipe, *recipe->for_meat, facts);
    }
    // Without the meat it was written for, only a recipe that grows with the meat says a share.
    const auto one = salt_for(*recipe, Mass::kilograms(1), facts);
    const auto two = salt_for(*recipe, Mass::kilograms(2), facts);
    const bool proportional =
        one && two && std::abs(one->as_fraction() - two->as_fraction()) < 1e-9;
    return proportional ? one : std::nullopt;
}

std::optional<MassShare> SaltDoses::of(const model::Batch& batch) {
    if (!batch.recipe) {
        return std::nullopt;
    }
    const auto known = doses_.find(*batch.recipe);
    if (known != doses_.end()) {
        return known->second;
    }
    if (!facts_) {
        facts_ = facts::built_in_facts();
    }
    const auto version = book_.recipe_version(*batch.recipe);
    const auto dose = version ? salt_dose_of(version->document, *facts_) : std::nullopt;
    return doses_.emplace(*batch.recipe, dose).first->second;
}

} // namespace core::services
