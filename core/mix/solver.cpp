#include "core/mix/solver.h"

#include "core/facts/chemistry.h"
#include "core/mix/amounts.h"
#include "core/mix/dose.h"
#include "core/mix/finding_maker.h"
#include "core/mix/limit_checks.h"
#include "core/mix/linear_programme.h"

#include <algorithm>
#include <cmath>

namespace core::mix {
namespace {

using facts::Component;
using units::Mass;
using units::MassShare;

// A wish counts as met within this share of what was asked: the simplex works to 1e-10.
constexpr double met_within = 1e-7;
// "At most nothing" has no scale of its own; a tenth of a per mille of the meat stands in.
constexpr double scale_of_nothing = 1e-4;
// One ppm over a limit weighs more than any wish missed entirely.
constexpr double limit_weight = 1000;

/// Best share of what `aim` counts in an ingredient.
double content(const facts::Composition& composition, Aim aim) {
    const auto best = [&](Component component) {
        const auto share = composition.of(component);
        return share ? share->best.as_fraction() : 0;
    };
    switch (aim) {
    case Aim::salt:
        return best(Component::salt);
    case Aim::sugar:
        return best(Component::sugar);
    case Aim::added_water:
        return best(Component::water);
    case Aim::alcohol:
        return best(Component::ethanol);
    case Aim::nitrite:
        return best(Component::sodium_nitrite) + best(Component::potassium_nitrite) *
                                                     facts::no2_in_potassium_nitrite /
                                                     facts::no2_in_sodium_nitrite;
    case Aim::nitrite_and_nitrate:
        return content(composition, Aim::nitrite) + content(composition, Aim::nitrate);
    case Aim::nitrate:
        return best(Component::sodium_nitrate) + best(Component::potassium_nitrate) *
                                                     facts::no3_in_potassium_nitrate /
                                                     facts::no3_in_sodium_nitrate;
    }
    return 0;
}

MassShare dose_for(const Dose& dose, Aim aim) {
    switch (aim) {
    case Aim::salt:
        return dose.salt.best;
    case Aim::sugar:
        return dose.sugar.best;
    case Aim::added_water:
        return dose.added_water.best;
    case Aim::alcohol:
        return dose.alcohol.best;
    case Aim::nitrite:
        return dose.nitrite.best;
    case Aim::nitrate:
        return dose.nitrate.best;
    case Aim::nitrite_and_nitrate:
        return dose.nitrite.best + dose.nitrate.best;
    }
    return MassShare::fraction(0);
}

/// dose >= share reads: sum of x (uptake * content - share * dilution) >= share * meat, with x
/// and meat as multiples of the meat's weight.
struct DoseForm {
    double uptake = 1;
    double dilution = 0;
    double meat = 1;
};

DoseForm form_of(const RecipeDocument& recipe, Aim aim) {
    DoseForm form;
    switch (recipe.method) {
    case Method::immersion_equilibrium:
    case Method::equilibrium_brine:
        form = {1, 1, 1};
        break;
    case Method::injected:
    case Method::immersion_pickup: {
        const auto& share = recipe.method == Method::injected ? recipe.pump : recipe.pickup;
        const double uptake = share.value_or(MassShare::fraction(0)).as_fraction();
        form = {aim == Aim::alcohol ? uptake / (1 + uptake) : uptake, 1, 0};
        break;
    }
    default:
        form = {1, aim == Aim::alcohol ? 1.0 : 0.0, 1};
        break;
    }
    return form;
}

/// What a limit is about, in the solver's words; absent for what no dose is solved for.
std::optional<Aim> aim_of(facts::Substance substance) {
    switch (substance) {
    case facts::Substance::nitrite:
        return Aim::nitrite;
    case facts::Substance::nitrate:
        return Aim::nitrate;
    case facts::Substance::nitrite_and_nitrate:
        return Aim::nitrite_and_nitrate;
    default:
        return std::nullopt;
    }
}

/// A limit on ions as one on the sodium salt. A sum takes the nitrate's factor (1.371), which is
/// smaller than the nitrite's (1.500): never more than the law allows.
MassShare as_sodium_salt(Aim aim, MassShare ions) {
    return aim == Aim::nitrite ? facts::sodium_nitrite_from_ion(ions)
                               : facts::sodium_nitrate_from_ion(ions);
}

/// One side of a wish, or a limit's maximum.
struct Goal {
    Aim what{};
    bool at_least = true;
    MassShare share = MassShare::fraction(0);
    std::size_t wish = 0;
    bool of_limit = false;
};

class Solver {
  public:
    Solver(const RecipeDocument& recipe, Mass meat, const facts::Facts& facts,
           const facts::LimitSet* limits)
        : recipe_(recipe), meat_(meat), facts_(facts), limits_(limits) {}

    base::Result<Solution> run() {
        if (recipe_.wishes.empty()) {
            return base::fault(base::ErrorCode::no_such_entry, "wishes", "wishes");
        }
        resolved_ = resolve_recipe(recipe_, facts_);
        model::Findings faults = resolved_.findings;
        if (!(meat_ > Mass::grams(0))) {
            return base::fault(base::ErrorCode::not_allowed, "meat", "meat");
        }
        written_ = line_masses(recipe_, resolved_, meat_, facts_, faults);
        const auto stop = std::find_if(faults.begin(), faults.end(), [](const auto& finding) {
            return finding.severity == model::Severity::stop;
        });
        if (stop != faults.end()) {
            return base::fault(base::ErrorCode::not_allowed, stop->code, stop->place);
        }
        collect_goals();
        build();
        auto optimum = programme_.minimise();
        if (!optimum) {
            return tl::unexpected(optimum.error());
        }
        stay_near_what_is_written(optimum->cost);
        // Where the second pass stumbles over rounding, the first answer is right but less near.
        if (auto nearer = programme_.minimise()) {
            optimum = std::move(nearer);
        }
        return finish(optimum->columns);
    }

  private:
    void collect_goals() {
        for (std::size_t i = 0; i < recipe_.wishes.size(); ++i) {
            const auto& wish = recipe_.wishes[i];
            if (wish.at_least) {
                goals_.push_back({wish.what, true, *wish.at_least, i, false});
            }
            if (wish.at_most) {
                goals_.push_back({wish.what, false, *wish.at_most, i, false});
            }
        }
        if (limits_ == nullptr) {
            return;
        }
        const double skin = basis_share(*limits_, recipe_.meat, facts_.constants);
        for (const auto& limit : limits_->limits) {
            const auto aim = aim_of(limit.substance);
            if (!aim || limit.basis == facts::LimitBasis::residual) {
                continue;
            }
            auto share =
                limit.not_permitted ? std::optional(MassShare::fraction(0)) : limit.maximum;
            if (!share) {
                continue;
            }
            if (limit.expressed_as == facts::ExpressedAs::ion) {
                share = as_sodium_salt(*aim, *share);
            }
            if (limit.basis == facts::LimitBasis::finished && recipe_.expected_loss) {
                share = *share * (1 - recipe_.expected_loss->as_fraction());
            }
            goals_.push_back({*aim, false, *share * skin, 0, true});
        }
    }

    [[nodiscard]] bool is_wash(std::size_t i) const {
        return recipe_.lines[i].as_wash || recipe_.method == Method::wash;
    }

    /// A film of wash hardly depends on how much is poured: its share is a constant here.
    [[nodiscard]] double wash_share(Aim aim) const {
        std::vector<WeighedLine> wash;
        for (std::size_t i = 0; i < written_.size(); ++i) {
            if (is_wash(i)) {
                wash.push_back({resolved_.ingredients[i], written_[i], true});
            }
        }
        if (wash.empty()) {
            return 0;
        }
        DoseContext context = dose_context();
        context.method = Method::dry;
        return dose_for(compute_dose(wash, context), aim).as_fraction();
    }

    [[nodiscard]] DoseContext dose_context() const {
        DoseContext context;
        context.method = recipe_.method;
        context.meat = meat_;
        context.moisture = meat_moisture(recipe_.meat, facts_.constants);
        context.pump = recipe_.pump;
        context.pickup = recipe_.pickup;
        context.wash_pickup = facts_.constants.wash_pickup.value;
        return context;
    }

    void build() {
        for (std::size_t i = 0; i < written_.size(); ++i) {
            const double written = written_[i].best / meat_;
            const bool fixed = (recipe_.lines[i].held && !hangs_on_water(i)) || is_wash(i);
            columns_.push_back(programme_.add_column(
                fixed ? written : 0, fixed ? written : LinearProgramme::unbounded, 0));
        }
        for (std::size_t i = 0; i < written_.size(); ++i) {
            if (recipe_.lines[i].held && hangs_on_water(i) && !is_wash(i)) {
                hold_to_water(i);
            }
        }
        for (const auto& goal : goals_) {
            add_goal(goal);
        }
    }

    [[nodiscard]] bool hangs_on_water(std::size_t i) const {
        const auto* share = std::get_if<ShareAmount>(&recipe_.lines[i].amount);
        return share != nullptr && share->basis != Basis::meat;
    }

    /// x = share * (water lines + what the meat adds to the basis).
    void hold_to_water(std::size_t i) {
        const auto& amount = std::get<ShareAmount>(recipe_.lines[i].amount);
        const double share = amount.share.as_fraction();
        double of_meat = 0;
        if (amount.basis == Basis::meat_and_water) {
            of_meat = 1;
        } else if (amount.basis == Basis::total_water) {
            of_meat = meat_moisture(recipe_.meat, facts_.constants).best.as_fraction();
        }
        std::vector<LinearProgramme::Term> terms{{columns_[i], 1}};
        for (std::size_t j = 0; j < written_.size(); ++j) {
            if (resolved_.ingredients[j].kind == facts::IngredientKind::water && j != i &&
                !is_wash(j)) {
                terms.push_back({columns_[j], -share});
            }
        }
        programme_.add_row(share * of_meat, share * of_meat, std::move(terms));
    }

    /// The goal's row with a slack that costs its share of what was asked.
    void add_goal(const Goal& goal) {
        const DoseForm form = form_of(recipe_, goal.what);
        const double share = std::max(0.0, goal.share.as_fraction() - wash_share(goal.what));
        const double scale = std::max(goal.share.as_fraction(), scale_of_nothing);
        std::vector<LinearProgramme::Term> terms;
        for (std::size_t i = 0; i < written_.size(); ++i) {
            if (is_wash(i)) {
                continue;
            }
            const double holds = content(resolved_.ingredients[i].composition, goal.what);
            const double coefficient = (form.uptake * holds - share * form.dilution) / scale;
            if (coefficient != 0) {
                terms.push_back({columns_[i], coefficient});
            }
        }
        const int slack =
            programme_.add_column(0, LinearProgramme::unbounded, goal.of_limit ? limit_weight : 1);
        slacks_.push_back(slack);
        terms.push_back({slack, goal.at_least ? 1.0 : -1.0});
        const double bound = share * form.meat / scale;
        constexpr double none = LinearProgramme::unbounded;
        programme_.add_row(goal.at_least ? bound : -none, goal.at_least ? none : bound,
                           std::move(terms));
    }

    /// Second pass: the same shortfall, least change.
    void stay_near_what_is_written(double shortfall) {
        std::vector<LinearProgramme::Term> total;
        for (std::size_t k = 0; k < slacks_.size(); ++k) {
            programme_.set_cost(slacks_[k], 0);
            total.push_back({slacks_[k], goals_[k].of_limit ? limit_weight : 1});
        }
        if (!total.empty()) {
            programme_.add_row(-LinearProgramme::unbounded, shortfall * (1 + 1e-9) + 1e-9,
                               std::move(total));
        }
        for (std::size_t i = 0; i < written_.size(); ++i) {
            if (recipe_.lines[i].held || is_wash(i)) {
                continue;
            }
            const double written = written_[i].best / meat_;
            const double cost = 1 / std::max(written, scale_of_nothing);
            const int more = programme_.add_column(0, LinearProgramme::unbounded, cost);
            const int less = programme_.add_column(0, LinearProgramme::unbounded, cost);
            programme_.add_row(written, written, {{columns_[i], 1}, {more, -1}, {less, 1}});
        }
    }

    [[nodiscard]] Solution finish(const std::vector<double>& columns) const {
        Solution solution;
        solution.recipe = recipe_;
        std::vector<WeighedLine> lines;
        for (std::size_t i = 0; i < written_.size(); ++i) {
            const double share = std::max(0.0, columns[static_cast<std::size_t>(columns_[i])]);
            const Mass mass = meat_ * share;
            solution.masses.push_back(mass);
            lines.push_back(
                {resolved_.ingredients[i], MassInterval::exactly(mass), recipe_.lines[i].as_wash});
            const bool changed = std::abs(mass / meat_ - written_[i].best / meat_) >
                                 met_within * std::max(share, scale_of_nothing);
            if (!recipe_.lines[i].held && !is_wash(i) && changed) {
                solution.recipe.lines[i].amount =
                    ShareAmount{MassShare::fraction(share), Basis::meat};
            }
        }
        const Dose dose = compute_dose(lines, dose_context());
        for (const auto& goal : goals_) {
            const MassShare got = dose_for(dose, goal.what);
            const double slack = met_within * std::max(goal.share.as_fraction(), scale_of_nothing);
            const double over = (goal.at_least ? goal.share - got : got - goal.share).as_fraction();
            if (over > slack) {
                solution.unmet.push_back(
                    {goal.wish, goal.of_limit, goal.what, goal.at_least, goal.share, got});
            }
        }
        return solution;
    }

    const RecipeDocument& recipe_;
    Mass meat_;
    const facts::Facts& facts_;
    const facts::LimitSet* limits_;
    ResolvedRecipe resolved_;
    std::vector<MassInterval> written_;
    std::vector<Goal> goals_;
    LinearProgramme programme_;
    std::vector<int> columns_;
    std::vector<int> slacks_;
};

} // namespace

base::Result<Solution> solve_mix(const RecipeDocument& recipe, Mass meat, const facts::Facts& facts,
                                 const facts::LimitSet* limit_set) {
    return Solver(recipe, meat, facts, limit_set).run();
}

model::Findings findings_of(const Solution& solution) {
    model::Findings findings;
    for (const auto& unmet : solution.unmet) {
        findings.push_back(
            make_finding(unmet.of_limit ? "limit_unmet" : "wish_unmet",
                         unmet.of_limit ? model::Severity::stop : model::Severity::caution,
                         unmet.of_limit ? "limits" : "wishes[" + std::to_string(unmet.wish) + "]",
                         {{"what", std::string(name_of(unmet.what))},
                          {"bound", std::string(unmet.at_least ? "at_least" : "at_most")},
                          {"asked", unmet.asked},
                          {"found", unmet.got},
                          {"by", unmet.by()}}));
    }
    return findings;
}

} // namespace core::mix
