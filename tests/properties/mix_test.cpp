// What must hold for any recipe: nothing is made or lost, doses follow the weight, bounds hold
// what they claim, the solver keeps its word, and rounding never passes a limit.
#include "core/mix/amounts.h"
#include "core/mix/dose.h"
#include "core/mix/mix_sheet.h"
#include "core/mix/solver.h"
#include "core/units/parse.h"

#include <cmath>
#include <fmt/format.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace mix_test {
namespace {

using namespace core::mix;
using core::facts::Component;
using core::facts::component_count;
using core::facts::Facts;
using core::units::Mass;
using core::units::MassShare;

const Facts& facts() {
    static const Facts all = core::facts::built_in_facts();
    return all;
}

bool close(double a, double b) {
    return std::abs(a - b) <= 1e-9 * std::max({1e-9, std::abs(a), std::abs(b)});
}

/// A number between the two, in a thousand steps: shrinks well and never is a denormal.
double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

Line line_of(const std::string& ingredient, double percent) {
    Line line;
    line.ingredient = ingredient;
    line.amount = ShareAmount{MassShare::percent(percent), Basis::meat};
    return line;
}

/// A plausible cure by any method, of catalogue ingredients.
RecipeDocument any_recipe(Method method) {
    RecipeDocument recipe;
    recipe.method = method;
    recipe.pump = MassShare::percent(between(5, 20));
    recipe.pickup = recipe.pump;
    recipe.lines.push_back(line_of("table_salt", between(0.1, 5)));
    recipe.lines.push_back(line_of("cure_no2", between(0.01, 0.5)));
    recipe.lines.push_back(line_of("white_sugar", between(0.1, 3)));
    recipe.lines.push_back(line_of("soy_sauce", between(0.1, 10)));
    recipe.lines.push_back(line_of("water", between(1, 100)));
    recipe.lines.push_back(line_of("spirit", between(0.1, 4)));
    recipe.lines.back().label.alcohol = core::units::AlcoholByVolume::percent(between(20, 60));
    return recipe;
}

Method any_method() {
    return *rc::gen::element(Method::dry, Method::box, Method::immersion_pickup,
                             Method::immersion_equilibrium, Method::equilibrium_brine,
                             Method::injected, Method::marinade, Method::wash);
}

MixSheet sheet_of(const RecipeDocument& recipe, Mass meat, std::optional<Mass> step = {},
                  std::optional<std::string> limits = {}) {
    MixRequest request;
    request.recipe = recipe;
    request.pieces = {{"A", meat}};
    request.scale_step = step;
    request.limits = std::move(limits);
    return make_mix_sheet(request, facts());
}

RC_GTEST_PROP(MixProperty, DosesConserveMass, ()) {
    const auto recipe = any_recipe(Method::dry);
    const Mass meat = Mass::grams(between(100, 20000));
    const auto sheet = sheet_of(recipe, meat);
    core::model::Findings ignored;
    const auto resolved = resolve_recipe(recipe, facts());
    Mass weighed = Mass::grams(0);
    for (std::size_t c = 0; c < component_count; ++c) {
        // What is in the meat is what was in the lines, summed here on its own.
        Mass in_lines = Mass::grams(0);
        for (const auto& line : sheet.lines) {
            const auto share =
                resolved.ingredients[line.line].composition.of(static_cast<Component>(c));
            in_lines += share->best.part_of(line.weigh_out);
        }
        RC_ASSERT(close(sheet.dose.shares[c].best.part_of(meat).in_grams(), in_lines.in_grams()));
        weighed += in_lines;
    }
    Mass total = Mass::grams(0);
    for (const auto& line : sheet.lines) {
        total += line.weigh_out;
    }
    RC_ASSERT(weighed <= total * (1 + 1e-12));
}

RC_GTEST_PROP(MixProperty, SheetsFollowTheMeatAndDosesStay, ()) {
    const auto recipe = any_recipe(any_method());
    const Mass meat = Mass::grams(between(100, 20000));
    const double factor = between(0.1, 30);
    const auto one = sheet_of(recipe, meat);
    const auto many = sheet_of(recipe, meat * factor);
    for (std::size_t i = 0; i < one.lines.size(); ++i) {
        RC_ASSERT(
            close(many.lines[i].weigh_out.in_grams(), one.lines[i].weigh_out.in_grams() * factor));
    }
    for (std::size_t c = 0; c < component_count; ++c) {
        RC_ASSERT(close(many.dose.shares[c].best.in_ppm(), one.dose.shares[c].best.in_ppm()));
    }
    RC_ASSERT(close(many.dose.water_phase_salt.best.in_percent(),
                    one.dose.water_phase_salt.best.in_percent()));
}

RC_GTEST_PROP(MixProperty, TwiceTheCureIsTwiceTheDose, ()) {
    auto recipe = any_recipe(Method::dry);
    const auto one = sheet_of(recipe, Mass::kilograms(2));
    for (auto& line : recipe.lines) {
        std::get<ShareAmount>(line.amount).share = std::get<ShareAmount>(line.amount).share * 2;
    }
    const auto two = sheet_of(recipe, Mass::kilograms(2));
    for (std::size_t c = 0; c < component_count; ++c) {
        RC_ASSERT(close(two.dose.shares[c].best.in_ppm(), 2 * one.dose.shares[c].best.in_ppm()));
        RC_ASSERT(close(two.dose.shares[c].high.in_ppm(), 2 * one.dose.shares[c].high.in_ppm()));
    }
}

/// An ingredient of four components with bounds, and a weight with bounds.
WeighedLine any_weighed_line() {
    WeighedLine line;
    line.what.kind =
        *rc::gen::element(core::facts::IngredientKind::salt, core::facts::IngredientKind::sauce,
                          core::facts::IngredientKind::spirit);
    for (const auto component :
         {Component::salt, Component::sodium_nitrite, Component::water, Component::ethanol}) {
        const double low = between(0, 12);
        const double best = low + between(0, 6);
        line.what.composition.set(component, {MassShare::percent(low), MassShare::percent(best),
                                              MassShare::percent(best + between(0, 6))});
    }
    const double low = between(0, 100);
    const double best = low + between(0, 30);
    line.mass = {Mass::grams(low), Mass::grams(best), Mass::grams(best + between(0, 30))};
    line.as_wash = *rc::gen::arbitrary<bool>();
    return line;
}

template <class Q>
core::base::Interval<Q> corner(const core::base::Interval<Q>& bounds, bool high) {
    return core::base::Interval<Q>::exactly(high ? bounds.high : bounds.low);
}

bool holds(const ShareInterval& outer, const ShareInterval& point) {
    const double slack = 1e-12 + 1e-9 * std::abs(point.best.as_fraction());
    return outer.low.as_fraction() <= point.best.as_fraction() + slack &&
           point.best.as_fraction() <= outer.high.as_fraction() + slack;
}

RC_GTEST_PROP(MixProperty, BoundsHoldEveryCorner, ()) {
    std::vector<WeighedLine> lines{any_weighed_line(), any_weighed_line()};
    DoseContext context;
    context.method = any_method();
    context.meat = Mass::grams(between(500, 3000));
    context.moisture = {MassShare::percent(60), MassShare::percent(70), MassShare::percent(76)};
    context.pump = MassShare::percent(between(5, 20));
    context.pickup = context.pump;
    context.wash_pickup = {MassShare::percent(0.5), MassShare::percent(1.5), MassShare::percent(4)};
    context.absorbed = *rc::gen::element(0.5, 1.0);
    const Dose dose = compute_dose(lines, context);
    RC_ASSERT(dose.salt.low <= dose.salt.best && dose.salt.best <= dose.salt.high);
    // Twelve quantities, each at its low or high end: 4096 corners, every 7th of them.
    constexpr unsigned corners = 1U << 12U;
    const unsigned start = *rc::gen::inRange(0U, 7U);
    for (unsigned bits = start; bits < corners; bits += 7) {
        auto at = lines;
        unsigned bit = 0;
        const auto pick = [&] { return ((bits >> bit++) & 1U) != 0U; };
        for (auto& line : at) {
            line.mass = corner(line.mass, pick());
            for (const auto component : {Component::salt, Component::sodium_nitrite,
                                         Component::water, Component::ethanol}) {
                line.what.composition.set(component,
                                          corner(*line.what.composition.of(component), pick()));
            }
        }
        auto there = context;
        there.moisture = corner(context.moisture, pick());
        there.wash_pickup = corner(context.wash_pickup, pick());
        const Dose point = compute_dose(at, there);
        RC_ASSERT(holds(dose.salt, point.salt));
        RC_ASSERT(holds(dose.nitrite, point.nitrite));
        RC_ASSERT(holds(dose.nitrite_ion, point.nitrite_ion));
        RC_ASSERT(holds(dose.added_water, point.added_water));
        RC_ASSERT(holds(dose.alcohol, point.alcohol));
        RC_ASSERT(holds(dose.water_phase_salt, point.water_phase_salt));
    }
}

MassShare got(const Dose& dose, Aim aim) {
    switch (aim) {
    case Aim::salt:
        return dose.salt.best;
    case Aim::sugar:
        return dose.sugar.best;
    case Aim::nitrite:
        return dose.nitrite.best;
    case Aim::nitrate:
        return dose.nitrate.best;
    case Aim::nitrite_and_nitrate:
        return dose.nitrite.best + dose.nitrate.best;
    case Aim::added_water:
        return dose.added_water.best;
    case Aim::alcohol:
        return dose.alcohol.best;
    }
    return MassShare::fraction(0);
}

RC_GTEST_PROP(MixProperty, SolverMeetsEachWishOrNamesIt, ()) {
    auto recipe = any_recipe(*rc::gen::element(Method::dry, Method::marinade, Method::injected,
                                               Method::immersion_equilibrium));
    for (auto& line : recipe.lines) {
        line.held = *rc::gen::inRange(0, 3) == 0;
    }
    recipe.lines[4].held = true; // some water, so that a pickle cannot vanish
    const Aim aims[] = {Aim::salt, Aim::sugar, Aim::nitrite, Aim::added_water, Aim::alcohol};
    const double scales[] = {4, 3, 0.02, 60, 3};
    const int count = *rc::gen::inRange(1, 5);
    for (int k = 0; k < count; ++k) {
        const auto which = static_cast<std::size_t>(*rc::gen::inRange(0, 5));
        Wish wish;
        wish.what = aims[which];
        const double percent = between(0, scales[which]);
        if (*rc::gen::arbitrary<bool>()) {
            wish.at_least = MassShare::percent(percent);
        } else {
            wish.at_most = MassShare::percent(percent);
        }
        recipe.wishes.push_back(wish);
    }
    const Mass meat = Mass::grams(between(500, 5000));
    const auto solution = solve_mix(recipe, meat, facts());
    RC_ASSERT(solution.has_value());
    const auto before = sheet_of(recipe, meat);
    // The dose of the amounts found, by the other road: as a sheet of fixed weights.
    auto fixed = recipe;
    for (std::size_t i = 0; i < fixed.lines.size(); ++i) {
        RC_ASSERT(solution->masses[i] >= Mass::grams(0));
        if (fixed.lines[i].held) {
            RC_ASSERT(close(solution->masses[i].in_grams(), before.lines[i].weigh_out.in_grams()));
        }
        fixed.lines[i].amount = FixedAmount{solution->masses[i]};
    }
    const Dose dose = sheet_of(fixed, meat).dose;
    for (std::size_t k = 0; k < recipe.wishes.size(); ++k) {
        const auto& wish = recipe.wishes[k];
        const MassShare asked = wish.at_least ? *wish.at_least : *wish.at_most;
        const double short_by =
            (wish.at_least ? asked - got(dose, wish.what) : got(dose, wish.what) - asked)
                .as_fraction();
        const auto named = std::find_if(solution->unmet.begin(), solution->unmet.end(),
                                        [&](const UnmetWish& unmet) { return unmet.wish == k; });
        if (named == solution->unmet.end()) {
            RC_ASSERT(short_by <= 2e-7 * std::max(asked.as_fraction(), 1e-4));
        } else {
            RC_ASSERT(close(named->by().as_fraction(), short_by));
            RC_ASSERT(short_by > 0);
        }
    }
}

RC_GTEST_PROP(MixProperty, AWishThatCanBeMetIsMet, ()) {
    // One free line of pure salt reaches any salt wish above what the rest brings.
    auto recipe = any_recipe(Method::dry);
    for (auto& line : recipe.lines) {
        line.held = line.ingredient != "table_salt";
    }
    const auto meat = Mass::kilograms(1);
    recipe.lines[0].amount = ShareAmount{MassShare::percent(1), Basis::meat};
    const MassShare rest = sheet_of(recipe, meat).dose.salt.best - MassShare::percent(1);
    const MassShare wish = rest + MassShare::percent(between(0, 5));
    recipe.wishes = {{Aim::salt, wish, wish}};
    const auto solution = solve_mix(recipe, meat, facts());
    RC_ASSERT(solution.has_value());
    RC_ASSERT(solution->unmet.empty());
}

RC_GTEST_PROP(MixProperty, RoundingNeverPassesTheLimit, ()) {
    RecipeDocument recipe;
    recipe.method = *rc::gen::element(Method::dry, Method::injected, Method::equilibrium_brine);
    recipe.pump = MassShare::percent(10);
    recipe.lines = {line_of("table_salt", between(1, 4)), line_of("water", between(5, 60)),
                    line_of("cure_no1", between(0.01, 0.32))};
    const Mass meat = Mass::grams(between(200, 5000));
    const auto step = Mass::grams(*rc::gen::element(0.01, 0.1, 0.5, 1.0, 5.0));
    const auto* set = facts().limit_sets.find("us-fsis-immersion");
    const MassShare limit = *set->limits[0].maximum;
    const auto sheet = sheet_of(recipe, meat, step, "us-fsis-immersion");
    RC_PRE(sheet.dose.nitrite_as_weighed.best <= limit);
    RC_ASSERT(sheet.pieces[0].as_weighed.nitrite_as_weighed.best <= limit * (1 + 1e-9));
}

RC_GTEST_PROP(MixProperty, DocumentsReadBack, ()) {
    auto recipe = any_recipe(any_method());
    // Quantities as people write them: up to six digits.
    const auto neat = [](MassShare share) {
        return *core::units::parse_mass_share(fmt::format("{:.6g} %", share.in_percent()));
    };
    for (auto& line : recipe.lines) {
        auto& amount = std::get<ShareAmount>(line.amount);
        amount.share = neat(amount.share);
        line.held = *rc::gen::arbitrary<bool>();
        line.note = *rc::gen::element<std::string>("", "crushed", "a \"quoted\" word", "\xC3\xA9");
        if (line.label.alcohol) {
            line.label.alcohol = core::units::parse_alcohol("52.5 %").value();
        }
    }
    recipe.pump = neat(*recipe.pump);
    recipe.pickup = neat(*recipe.pickup);
    const auto back = read_recipe(write_recipe(recipe));
    RC_ASSERT(back.has_value());
    RC_ASSERT(*back == recipe);
}

RC_GTEST_PROP(MixProperty, AnyTextIsReadOrRefused, (const std::string& text)) {
    (void)read_recipe(text);
    const auto amount = parse_amount(text);
    if (amount) {
        RC_ASSERT(parse_amount(to_text(*amount)).has_value());
    }
}

} // namespace

} // namespace mix_test
