#include "core/mix/amounts.h"

#include "core/mix/finding_maker.h"

#include <algorithm>
#include <set>

namespace core::mix {
namespace {

using facts::IngredientKind;
using model::Severity;
using units::Mass;
using units::MassShare;

MassInterval scaled(const MassInterval& mass, double factor) {
    return {mass.low * factor, mass.best * factor, mass.high * factor};
}

MassInterval sum(const MassInterval& a, const MassInterval& b) {
    return {a.low + b.low, a.best + b.best, a.high + b.high};
}

/// A catalogue entry of what the person described, with nothing known but its kind.
facts::CatalogueEntry entry_of(const OwnIngredient& own) {
    facts::CatalogueEntry entry;
    entry.id = own.id;
    entry.name = own.name;
    entry.kind = own.kind;
    using facts::Component;
    const auto whole = MassShare::fraction(1);
    switch (own.kind) {
    case IngredientKind::salt:
        entry.composition.set(Component::salt, whole);
        break;
    case IngredientKind::sugar:
        entry.composition.set(Component::sugar, whole);
        break;
    case IngredientKind::water:
        entry.composition.set(Component::water, whole);
        break;
    case IngredientKind::curing_salt:
    case IngredientKind::pure_cure:
        entry.composition.set_unknown(Component::sodium_nitrite);
        entry.composition.set_unknown(Component::sodium_nitrate);
        break;
    case IngredientKind::wine:
    case IngredientKind::spirit:
        entry.composition.set_unknown(Component::ethanol);
        entry.composition.set_unknown(Component::water);
        break;
    case IngredientKind::sauce:
        entry.composition.set_unknown(Component::salt);
        break;
    default:
        break;
    }
    if (own.kind == IngredientKind::water) {
        entry.density = {base::Interval<units::Density>::exactly(
                             units::Density::kilograms_per_cubic_metre(998.2)),
                         {}};
    }
    return entry;
}

/// The line's own label over the ingredient's.
Label merged(const Label& under, const Label& over) {
    Label label = under;
    const auto take = [](auto& to, const auto& from) {
        if (from) {
            to = from;
        }
    };
    take(label.nitrite, over.nitrite);
    take(label.nitrate, over.nitrate);
    take(label.alcohol, over.alcohol);
    take(label.salt, over.salt);
    take(label.sodium, over.sodium);
    take(label.sodium_per_volume, over.sodium_per_volume);
    take(label.salt_per_100ml, over.salt_per_100ml);
    take(label.sugar, over.sugar);
    take(label.water, over.water);
    take(label.acid, over.acid);
    take(label.density, over.density);
    return label;
}

class MassFinder {
  public:
    MassFinder(const RecipeDocument& recipe, const ResolvedRecipe& resolved, Mass meat,
               const facts::Facts& facts, model::Findings& findings)
        : recipe_(recipe), resolved_(resolved), meat_(meat), facts_(facts), findings_(findings) {}

    std::vector<MassInterval> run() {
        masses_.assign(recipe_.lines.size(), no_mass);
        for (std::size_t i = 0; i < masses_.size(); ++i) {
            if (!needs_water(i)) {
                masses_[i] = mass_of(i);
                if (resolved_.ingredients[i].kind == IngredientKind::water) {
                    water_ = sum(water_, masses_[i]);
                }
            }
        }
        for (std::size_t i = 0; i < masses_.size(); ++i) {
            if (needs_water(i)) {
                masses_[i] = mass_on_water(i);
            }
        }
        return std::move(masses_);
    }

  private:
    [[nodiscard]] bool needs_water(std::size_t i) const {
        const auto* share = std::get_if<ShareAmount>(&recipe_.lines[i].amount);
        return share != nullptr && share->basis != Basis::meat;
    }

    MassInterval mass_on_water(std::size_t i) {
        const auto& amount = std::get<ShareAmount>(recipe_.lines[i].amount);
        if (resolved_.ingredients[i].kind == IngredientKind::water) {
            findings_.push_back(
                make_finding("basis_circular", Severity::stop, place_of_line(i) + ".of"));
            return no_mass;
        }
        MassInterval whole = water_;
        if (amount.basis == Basis::water && water_.best <= Mass::grams(0)) {
            findings_.push_back(
                make_finding("water_missing", Severity::stop, place_of_line(i) + ".of"));
        } else if (amount.basis == Basis::meat_and_water) {
            whole = sum(water_, MassInterval::exactly(meat_));
        } else if (amount.basis == Basis::total_water) {
            const auto moisture = meat_moisture(recipe_.meat, facts_.constants);
            whole = sum(water_, {moisture.low.part_of(meat_), moisture.best.part_of(meat_),
                                 moisture.high.part_of(meat_)});
        }
        return scaled(whole, amount.share.as_fraction());
    }

    MassInterval mass_of(std::size_t i) {
        return std::visit(
            [&](const auto& amount) {
                using T = std::decay_t<decltype(amount)>;
                if constexpr (std::is_same_v<T, ShareAmount>) {
                    return MassInterval::exactly(amount.share.part_of(meat_));
                } else if constexpr (std::is_same_v<T, PerMeatAmount>) {
                    return scaled(portion_mass(i, amount.portion), meat_ / amount.meat);
                } else {
                    const double factor = recipe_.for_meat ? meat_ / *recipe_.for_meat : 1;
                    return scaled(portion_mass(i, amount.portion), factor);
                }
            },
            recipe_.lines[i].amount);
    }

    MassInterval portion_mass(std::size_t i, const Portion& portion) {
        if (const auto* mass = std::get_if<Mass>(&portion)) {
            return MassInterval::exactly(*mass);
        }
        base::Interval<units::Volume> volume = {units::Volume::millilitres(0),
                                                units::Volume::millilitres(0),
                                                units::Volume::millilitres(0)};
        if (const auto* exact = std::get_if<units::Volume>(&portion)) {
            volume = base::Interval<units::Volume>::exactly(*exact);
        } else {
            const auto& spoons = std::get<Spoons>(portion);
            const auto* measure = facts_.measures.find(spoons.measure);
            if (measure == nullptr) {
                findings_.push_back(make_finding("measure_unknown", Severity::stop,
                                                 place_of_line(i) + ".amount",
                                                 {{"found", spoons.measure}}));
                return no_mass;
            }
            const auto& size = measure->volume;
            volume = {size.low * spoons.count, size.best * spoons.count, size.high * spoons.count};
        }
        const auto& density = resolved_.ingredients[i].density;
        if (!density) {
            findings_.push_back(make_finding("density_missing", Severity::stop,
                                             place_of_line(i) + ".amount",
                                             {{"ingredient", resolved_.ingredients[i].name}}));
            return no_mass;
        }
        return {density->low.mass_of(volume.low), density->best.mass_of(volume.best),
                density->high.mass_of(volume.high)};
    }

    const RecipeDocument& recipe_;
    const ResolvedRecipe& resolved_;
    Mass meat_;
    const facts::Facts& facts_;
    model::Findings& findings_;
    std::vector<MassInterval> masses_;
    MassInterval water_ = no_mass;
};

} // namespace

ResolvedRecipe resolve_recipe(const RecipeDocument& recipe, const facts::Facts& facts) {
    ResolvedRecipe resolved;
    std::set<std::string> own_ids;
    for (std::size_t i = 0; i < recipe.ingredients.size(); ++i) {
        if (!own_ids.insert(recipe.ingredients[i].id).second) {
            resolved.findings.push_back(make_finding("own_ingredient_twice", Severity::stop,
                                                     "ingredients[" + std::to_string(i) + "].id",
                                                     {{"found", recipe.ingredients[i].id}}));
        }
    }
    std::set<std::string> seen;
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        const Line& line = recipe.lines[i];
        const std::string place = place_of_line(i);
        if (!line.rub && !seen.insert(line.ingredient).second) {
            resolved.findings.push_back(make_finding("ingredient_twice", Severity::caution,
                                                     place + ".ingredient",
                                                     {{"ingredient", line.ingredient}}));
        }
        const auto own = std::find_if(recipe.ingredients.begin(), recipe.ingredients.end(),
                                      [&](const auto& o) { return o.id == line.ingredient; });
        if (own != recipe.ingredients.end()) {
            resolved.ingredients.push_back(resolve(entry_of(*own), merged(own->label, line.label),
                                                   place + ".label", resolved.findings));
            continue;
        }
        const auto* entry = facts.catalogue.find(line.ingredient);
        if (entry == nullptr) {
            resolved.findings.push_back(make_finding("ingredient_unknown", Severity::stop,
                                                     place + ".ingredient",
                                                     {{"found", line.ingredient}}));
            ResolvedIngredient nobody;
            nobody.id = line.ingredient;
            nobody.name = line.ingredient;
            resolved.ingredients.push_back(nobody);
            continue;
        }
        resolved.ingredients.push_back(
            resolve(*entry, line.label, place + ".label", resolved.findings));
    }
    return resolved;
}

ShareInterval meat_moisture(const Meat& meat, const facts::Constants& constants) {
    if (meat.moisture) {
        return ShareInterval::exactly(*meat.moisture);
    }
    return meat.fatty ? constants.fatty_moisture.value : constants.lean_moisture.value;
}

std::vector<MassInterval> line_masses(const RecipeDocument& recipe, const ResolvedRecipe& resolved,
                                      Mass meat, const facts::Facts& facts,
                                      model::Findings& findings) {
    return MassFinder(recipe, resolved, meat, facts, findings).run();
}

} // namespace core::mix
