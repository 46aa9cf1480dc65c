#include "core/mix/label.h"

#include "core/facts/chemistry.h"
#include "core/facts/ethanol.h"
#include "core/mix/finding_maker.h"

#include <algorithm>

namespace core::mix {
namespace {

using facts::Component;
using facts::Composition;
using facts::IngredientKind;
using facts::ShareInterval;
using model::Severity;
using units::MassShare;

// 0.4 to 11 % nitrite are all sold as "curing salt" (common practice, no source).
constexpr MassShare weakest_cure = MassShare::percent(0.4);
constexpr MassShare strongest_cure = MassShare::percent(11);
// Sodium is 39.34 % of salt itself; saturated brine (26.3 % salt) holds 10.3 %.
constexpr MassShare sodium_of_pure_salt = MassShare::fraction(1 / facts::salt_per_sodium);
// Distillation ends at the azeotrope, about 97 % by volume.
constexpr auto strongest_spirit = units::AlcoholByVolume::percent(97);
constexpr auto strongest_wine = units::AlcoholByVolume::percent(24);
constexpr auto likely_proof = units::AlcoholByVolume::percent(76);

class Resolver {
  public:
    Resolver(const facts::CatalogueEntry& entry, const Label& label, const std::string& place,
             model::Findings& findings)
        : entry_(entry), label_(label), place_(place),
          findings_(findings), out_{entry.id,     entry.name,    entry.kind, entry.composition,
                                    std::nullopt, label.alcohol, false} {
        if (entry.density) {
            out_.density = entry.density->value;
        }
    }

    ResolvedIngredient run() {
        apply_density();
        apply_alcohol();
        apply_salt();
        apply_strength();
        apply_plain(label_.sugar, Component::sugar);
        apply_plain(label_.acid, Component::acetic_acid);
        apply_plain(label_.water, Component::water);
        const MassShare total = out_.composition.total_best();
        if (total > MassShare::percent(100.05)) {
            add("composition_over_whole", Severity::stop, {{"found", total}});
        }
        return std::move(out_);
    }

  private:
    void add(const char* code, Severity severity,
             std::map<std::string, model::FindingValue> values = {}) {
        values.emplace("ingredient", out_.name);
        findings_.push_back(make_finding(code, severity, place_, std::move(values)));
    }

    void apply_density() {
        if (!label_.density) {
            return;
        }
        const double d = label_.density->in_grams_per_millilitre();
        if (!(d >= 0.1 && d <= 2.5)) {
            add("density_implausible", Severity::stop, {{"found", d}});
            return;
        }
        out_.density = base::Interval<units::Density>::exactly(*label_.density);
    }

    void apply_alcohol() {
        const bool drink =
            entry_.kind == IngredientKind::spirit || entry_.kind == IngredientKind::wine;
        if (!label_.alcohol) {
            if (drink && !out_.composition.knows(Component::ethanol)) {
                add("alcohol_unknown", Severity::stop);
            }
            return;
        }
        const auto abv = *label_.alcohol;
        if (abv > strongest_spirit) {
            add("alcohol_too_strong", Severity::stop, {{"found", abv.in_percent()}});
        } else if (entry_.kind == IngredientKind::wine && abv > strongest_wine) {
            add("wine_too_strong", Severity::caution, {{"found", abv.in_percent()}});
        } else if (abv > likely_proof) {
            add("alcohol_may_be_proof", Severity::caution, {{"found", abv.in_percent()}});
        }
        const MassShare ethanol = facts::ethanol_mass_share(abv);
        out_.composition.set(Component::ethanol, ethanol);
        if (!drink) {
            return;
        }
        // The rest of a drink is water, less the sugar and salt that the catalogue allows it.
        const auto sugar = out_.composition.of(Component::sugar);
        const auto salt = out_.composition.of(Component::salt);
        const MassShare rest = MassShare::fraction(1) - ethanol;
        const auto less = [&](MassShare a, MassShare b) {
            return std::max(MassShare::fraction(0), rest - a - b);
        };
        out_.composition.set(Component::water,
                             {less(sugar->high, salt->high), less(sugar->best, salt->best),
                              less(sugar->low, salt->low)});
        if (!label_.density) {
            out_.density = base::Interval<units::Density>::exactly(facts::ethanol_density(abv));
        }
    }

    /// The salt share that the label states in one of its four forms.
    std::optional<ShareInterval> salt_of_label() {
        if (label_.salt) {
            return ShareInterval::exactly(*label_.salt);
        }
        if (label_.sodium) {
            if (*label_.sodium > sodium_of_pure_salt) {
                add("sodium_impossible", Severity::stop, {{"found", *label_.sodium}});
                return std::nullopt;
            }
            return ShareInterval::exactly(facts::salt_from_sodium(*label_.sodium));
        }
        if (!label_.salt_per_100ml && !label_.sodium_per_volume) {
            return std::nullopt;
        }
        if (!out_.density) {
            add("label_needs_density", Severity::stop);
            return std::nullopt;
        }
        const units::Volume volume = label_.salt_per_100ml ? units::Volume::millilitres(100)
                                                           : label_.sodium_per_volume->serving;
        const units::Mass salt = label_.salt_per_100ml
                                     ? *label_.salt_per_100ml
                                     : label_.sodium_per_volume->sodium * facts::salt_per_sodium;
        if (volume <= units::Volume::millilitres(0)) {
            add("label_needs_density", Severity::stop);
            return std::nullopt;
        }
        const auto share = [&](units::Density d) { return MassShare::of(salt, d.mass_of(volume)); };
        return ShareInterval{share(out_.density->high), share(out_.density->best),
                             share(out_.density->low)};
    }

    void apply_salt() {
        if (const auto salt = salt_of_label()) {
            if (salt->best > MassShare::fraction(1)) {
                add("sodium_impossible", Severity::stop, {{"found", salt->best}});
            } else {
                out_.composition.set(Component::salt, *salt);
            }
        } else if (!out_.composition.knows(Component::salt) &&
                   entry_.kind != IngredientKind::curing_salt) {
            add("sodium_unknown", Severity::stop);
        } else if (entry_.asks == facts::LabelQuestion::sodium) {
            add("sodium_assumed", Severity::caution,
                {{"low", out_.composition.of(Component::salt)->low},
                 {"high", out_.composition.of(Component::salt)->high}});
        }
    }

    void apply_strength() {
        if (label_.nitrite || label_.nitrate) {
            check_strength();
            const auto zero = MassShare::fraction(0);
            const bool asked = !out_.composition.knows(Component::sodium_nitrite);
            if (label_.nitrite || asked) {
                out_.composition.set(Component::sodium_nitrite, label_.nitrite.value_or(zero));
            }
            if (label_.nitrate || asked) {
                out_.composition.set(Component::sodium_nitrate, label_.nitrate.value_or(zero));
            }
            out_.strength_from_label = true;
            if (entry_.kind == IngredientKind::curing_salt && !label_.salt && !label_.sodium) {
                set_salt_to_rest();
            }
        } else if (!out_.composition.knows(Component::sodium_nitrite)) {
            add("strength_unknown", Severity::stop);
        } else if (entry_.kind == IngredientKind::curing_salt) {
            add("cure_strength_assumed", Severity::caution,
                {{"strength", out_.composition.of(Component::sodium_nitrite)->best}});
        }
    }

    void set_salt_to_rest() {
        const auto nitrite = out_.composition.of(Component::sodium_nitrite);
        const auto nitrate = out_.composition.of(Component::sodium_nitrate);
        const auto rest = [](MassShare a, MassShare b) {
            return std::max(MassShare::fraction(0), MassShare::fraction(1) - a - b);
        };
        out_.composition.set(Component::salt, {rest(nitrite->high, nitrate->high),
                                               rest(nitrite->best, nitrate->best),
                                               rest(nitrite->low, nitrate->low)});
    }

    void check_strength() {
        if (entry_.kind != IngredientKind::curing_salt) {
            return;
        }
        for (const auto& strength : {label_.nitrite, label_.nitrate}) {
            if (!strength || *strength == MassShare::fraction(0)) {
                continue;
            }
            if (*strength < weakest_cure && *strength * 100 >= weakest_cure &&
                *strength * 100 <= strongest_cure) {
                // 6.25 % is the proportion 0.0625: typed with a percent sign it is 100 times less.
                add("strength_as_proportion", Severity::stop, {{"found", *strength}});
            } else if (*strength < weakest_cure || *strength > strongest_cure) {
                add("strength_out_of_range", Severity::stop,
                    {{"found", *strength}, {"low", weakest_cure}, {"high", strongest_cure}});
            }
        }
        if (label_.nitrite && *label_.nitrite == MassShare::fraction(0) &&
            label_.nitrate.value_or(MassShare::fraction(0)) == MassShare::fraction(0)) {
            add("strength_unknown", Severity::stop);
        }
    }

    void apply_plain(const std::optional<MassShare>& share, Component component) {
        if (share) {
            out_.composition.set(component, *share);
        }
    }

    const facts::CatalogueEntry& entry_;
    const Label& label_;
    const std::string& place_;
    model::Findings& findings_;
    ResolvedIngredient out_;
};

} // namespace

ResolvedIngredient resolve(const facts::CatalogueEntry& entry, const Label& label,
                           const std::string& place, model::Findings& findings) {
    return Resolver(entry, label, place, findings).run();
}

bool is_liquid(facts::IngredientKind kind) {
    switch (kind) {
    case IngredientKind::sauce:
    case IngredientKind::wine:
    case IngredientKind::spirit:
    case IngredientKind::vinegar:
    case IngredientKind::water:
        return true;
    default:
        return false;
    }
}

} // namespace core::mix
