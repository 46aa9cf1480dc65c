#include "core/mix/checks.h"
#include "core/mix/finding_maker.h"
#include "core/mix/mix_sheet.h"

#include <algorithm>
#include <cmath>

namespace core::mix {
namespace {

using facts::IngredientKind;
using model::Severity;
using units::Mass;
using units::MassShare;

// common practice, no source: pumps run from 5 to 25 %, a brined piece takes up 2 to 15 %.
constexpr MassShare smallest_uptake = MassShare::percent(0.5);
constexpr MassShare large_uptake = MassShare::percent(30);
constexpr MassShare impossible_uptake = MassShare::percent(60);
constexpr MassShare highest_loss = MassShare::percent(75); // raw lean meat holds 74 % water
// common practice, no source: single pieces run from a duck breast to a leg.
constexpr Mass smallest_piece = Mass::grams(50);
constexpr Mass largest_piece = Mass::kilograms(60);
constexpr double share_slack = 0.005; // three rubs of 33.3 % make 99.9 %

void check_uptake(const std::optional<MassShare>& uptake, const char* field, const char* missing,
                  model::Findings& findings) {
    if (!uptake || *uptake <= MassShare::fraction(0)) {
        findings.push_back(make_finding(missing, Severity::stop, field));
    } else if (*uptake < smallest_uptake && *uptake * 100 <= impossible_uptake) {
        findings.push_back(
            make_finding("uptake_as_proportion", Severity::stop, field, {{"found", *uptake}}));
    } else if (*uptake > impossible_uptake) {
        findings.push_back(
            make_finding("uptake_implausible", Severity::stop, field, {{"found", *uptake}}));
    } else if (*uptake > large_uptake) {
        findings.push_back(
            make_finding("uptake_large", Severity::caution, field, {{"found", *uptake}}));
    }
}

bool needs_pickle(Method method) {
    return method == Method::immersion_pickup || method == Method::immersion_equilibrium ||
           method == Method::equilibrium_brine || method == Method::injected;
}

void check_method(const CheckInput& input, model::Findings& findings) {
    const auto& recipe = input.recipe;
    if (recipe.method == Method::injected) {
        check_uptake(recipe.pump, "pump", "pump_missing", findings);
    }
    if (recipe.method == Method::immersion_pickup) {
        check_uptake(recipe.pickup, "pickup", "pickup_missing", findings);
    }
    if (recipe.method == Method::box) {
        findings.push_back(make_finding("uptake_unknown", Severity::caution, "method"));
    }
    if (needs_pickle(recipe.method)) {
        Mass water = Mass::grams(0);
        for (std::size_t i = 0; i < input.masses.size(); ++i) {
            if (is_liquid(input.resolved.ingredients[i].kind)) {
                water += input.masses[i].best;
            }
        }
        if (water <= Mass::grams(0)) {
            findings.push_back(make_finding("water_missing", Severity::stop, "lines"));
        }
    }
}

void check_rubs(const RecipeDocument& recipe, model::Findings& findings) {
    double total = 0;
    for (std::size_t i = 0; i < recipe.rubs.size(); ++i) {
        total += recipe.rubs[i].share.as_fraction();
        if (i > 0 && recipe.rubs[i].after <= recipe.rubs[i - 1].after) {
            findings.push_back(make_finding("rubs_out_of_order", Severity::stop,
                                            "rubs[" + std::to_string(i) + "].after"));
        }
    }
    if (!recipe.rubs.empty() && std::abs(total - 1) > share_slack) {
        findings.push_back(make_finding("rubs_not_whole", Severity::stop, "rubs",
                                        {{"found", MassShare::fraction(total)}}));
    }
    for (std::size_t i = 0; i < recipe.lines.size(); ++i) {
        const auto& rub = recipe.lines[i].rub;
        if (rub && (*rub < 0 || static_cast<std::size_t>(*rub) >= recipe.rubs.size())) {
            findings.push_back(
                make_finding("rub_unknown", Severity::stop, place_of_line(i) + ".rub"));
        }
    }
}

void check_meat_figures(const RecipeDocument& recipe, model::Findings& findings) {
    const auto caution_outside = [&](const std::optional<MassShare>& share, double low, double high,
                                     const char* code, const char* field) {
        if (share && (*share < MassShare::percent(low) || *share > MassShare::percent(high))) {
            findings.push_back(make_finding(code, Severity::caution, field, {{"found", *share}}));
        }
    };
    caution_outside(recipe.meat.moisture, 20, 80, "moisture_implausible", "meat.moisture");
    caution_outside(recipe.meat.skin_share, 2, 25, "skin_share_implausible", "meat.skin_share");
    if (recipe.expected_loss && *recipe.expected_loss > highest_loss) {
        findings.push_back(make_finding("loss_implausible", Severity::stop, "expected_loss",
                                        {{"found", *recipe.expected_loss}}));
    }
}

void check_lines(const CheckInput& input, model::Findings& findings) {
    if (input.recipe.lines.empty()) {
        findings.push_back(make_finding("no_lines", Severity::stop, "lines"));
    }
    bool fixed = false;
    for (std::size_t i = 0; i < input.recipe.lines.size(); ++i) {
        const auto& amount = input.recipe.lines[i].amount;
        fixed = fixed || std::holds_alternative<FixedAmount>(amount);
        const bool zero = std::visit(
            [](const auto& a) {
                using T = std::decay_t<decltype(a)>;
                if constexpr (std::is_same_v<T, ShareAmount>) {
                    return a.share <= MassShare::fraction(0);
                } else {
                    const auto* mass = std::get_if<Mass>(&a.portion);
                    const auto* volume = std::get_if<units::Volume>(&a.portion);
                    const auto* spoons = std::get_if<Spoons>(&a.portion);
                    return (mass != nullptr && *mass <= Mass::grams(0)) ||
                           (volume != nullptr && *volume <= units::Volume::millilitres(0)) ||
                           (spoons != nullptr && spoons->count <= 0);
                }
            },
            amount);
        if (zero) {
            findings.push_back(make_finding("amount_zero", Severity::stop,
                                            place_of_line(i) + ".amount",
                                            {{"ingredient", input.resolved.ingredients[i].name}}));
        }
    }
    if (fixed && !input.recipe.for_meat) {
        findings.push_back(make_finding("fixed_amount_does_not_scale", Severity::note, "for_meat"));
    }
    if (input.recipe.for_meat && *input.recipe.for_meat <= Mass::grams(0)) {
        findings.push_back(make_finding("meat_weight_missing", Severity::stop, "for_meat"));
    }
}

} // namespace

void check_form(const CheckInput& input, model::Findings& findings) {
    check_lines(input, findings);
    check_method(input, findings);
    check_rubs(input.recipe, findings);
    check_meat_figures(input.recipe, findings);
}

void check_meat(const std::vector<MeatPiece>& pieces, model::Findings& findings) {
    if (pieces.empty()) {
        findings.push_back(make_finding("no_meat", Severity::stop, "pieces"));
    }
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const std::string place = "pieces[" + std::to_string(i) + "]";
        const Mass mass = pieces[i].mass;
        if (!mass.is_finite() || mass <= Mass::grams(0)) {
            findings.push_back(make_finding("meat_weight_missing", Severity::stop, place));
        } else if (mass < smallest_piece) {
            findings.push_back(
                make_finding("meat_weight_small", Severity::caution, place, {{"found", mass}}));
        } else if (mass > largest_piece) {
            findings.push_back(
                make_finding("meat_weight_large", Severity::caution, place, {{"found", mass}}));
        }
    }
}

} // namespace core::mix
