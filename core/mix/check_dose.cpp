#include "core/mix/checks.h"
#include "core/mix/finding_maker.h"

#include <algorithm>

namespace core::mix {
namespace {

using facts::Component;
using facts::IngredientKind;
using model::Severity;
using units::Mass;
using units::MassShare;

// The highest ingoing limits on file for any product: 1 oz and 3 1/2 oz to 100 lb, dry cured
// (9 CFR 424.21(c)).
constexpr MassShare nitrite_of_any_limit = MassShare::ppm(625);
constexpr MassShare nitrate_of_any_limit = MassShare::ppm(2187.5);
// Immersed and pumped products (FSIS Directive 7620.3): what a cautious reader expects.
constexpr MassShare ordinary_nitrite = MassShare::ppm(200);
constexpr MassShare least_useful_nitrite = MassShare::ppm(40);

// common practice, no source: whole muscle is salted with 1.5 to 6 % of its weight, usually 2
// to 3.5 %; strong curing salt goes in at 0.25 %, up to 1 %.
constexpr MassShare least_salt = MassShare::percent(1.5);
constexpr MassShare most_salt = MassShare::percent(6);
constexpr MassShare impossible_salt = MassShare::percent(12);
constexpr MassShare salt_too_low_to_be_meant = MassShare::percent(1);
constexpr MassShare most_sugar = MassShare::percent(8);
constexpr MassShare strong_cure = MassShare::percent(2);
constexpr MassShare weak_cure = MassShare::percent(1.2);
constexpr MassShare salt_like_amount = MassShare::percent(1.5);
constexpr MassShare cure_like_amount = MassShare::percent(0.6);
constexpr MassShare most_accelerator = MassShare::ppm(1000);
constexpr double teaspoons_in_a_tablespoon = 3;

/// All of a cure taken up, so that a line's share of the meat can be judged on its own.
bool is_weighed_on_meat(Method method) {
    return method == Method::dry || method == Method::marinade;
}

class DoseChecker {
  public:
    DoseChecker(const CheckInput& input, bool limit_set_chosen, model::Findings& findings)
        : input_(input), limit_set_chosen_(limit_set_chosen), findings_(findings) {}

    void run() {
        for (std::size_t i = 0; i < input_.masses.size(); ++i) {
            check_line(i);
        }
        check_nitrite();
        check_salt();
        check_rest();
    }

  private:
    [[nodiscard]] const ResolvedIngredient& what(std::size_t i) const {
        return input_.resolved.ingredients[i];
    }
    [[nodiscard]] MassShare on_meat(std::size_t i) const {
        return MassShare::of(input_.masses[i].best, input_.meat);
    }
    /// Nitrite and nitrate of the ingredient itself.
    [[nodiscard]] MassShare strength(std::size_t i) const {
        auto total = MassShare::fraction(0);
        for (const auto c : {Component::sodium_nitrite, Component::potassium_nitrite}) {
            if (const auto share = what(i).composition.of(c)) {
                total += share->best;
            }
        }
        return total;
    }
    [[nodiscard]] bool is_curing(std::size_t i) const {
        return what(i).kind == IngredientKind::curing_salt ||
               what(i).kind == IngredientKind::pure_cure;
    }
    [[nodiscard]] const Spoons* spoons_of(std::size_t i) const {
        const auto& amount = input_.recipe.lines[i].amount;
        const Portion* portion = nullptr;
        if (const auto* fixed = std::get_if<FixedAmount>(&amount)) {
            portion = &fixed->portion;
        } else if (const auto* per = std::get_if<PerMeatAmount>(&amount)) {
            portion = &per->portion;
        }
        return portion == nullptr ? nullptr : std::get_if<Spoons>(portion);
    }
    /// What the line's nitrite (salt) would be in the meat, were it `factor` times as much.
    [[nodiscard]] MassShare with_line_times(std::size_t i, Component component,
                                            const ShareInterval& dose, double factor) const {
        const auto share = what(i).composition.of(component);
        const MassShare own =
            share ? MassShare::of(share->best.part_of(input_.masses[i].best), input_.meat)
                  : MassShare::fraction(0);
        return dose.best + own * (factor - 1);
    }

    void add(const char* code, Severity severity, const std::string& place,
             std::map<std::string, model::FindingValue> values = {}) {
        findings_.push_back(make_finding(code, severity, place, std::move(values)));
    }
    void add_line(const char* code, Severity severity, std::size_t i,
                  std::map<std::string, model::FindingValue> values = {}) {
        values.emplace("ingredient", what(i).name);
        slip_found_ = slip_found_ || severity == Severity::stop;
        add(code, severity, place_of_line(i) + ".amount", std::move(values));
    }

    void check_line(std::size_t i) {
        if (is_curing(i)) {
            check_curing_line(i);
        } else if (what(i).kind == IngredientKind::salt) {
            check_salt_line(i);
        }
    }

    void check_curing_line(std::size_t i) {
        if (what(i).kind == IngredientKind::pure_cure) {
            add_line("undiluted_cure", Severity::caution, i);
        }
        if (spoons_of(i) != nullptr) {
            add_line("cure_by_spoon", Severity::caution, i);
        }
        if (!is_weighed_on_meat(input_.recipe.method)) {
            return;
        }
        const auto& nitrite = input_.dose.nitrite;
        const bool strong = strength(i) >= strong_cure;
        const auto* spoons = spoons_of(i);
        if (spoons != nullptr && spoons->measure.find("tablespoon") != std::string::npos &&
            nitrite.best > ordinary_nitrite &&
            with_line_times(i, Component::sodium_nitrite, nitrite, 1 / teaspoons_in_a_tablespoon) <=
                ordinary_nitrite) {
            add_line("spoon_swap", Severity::stop, i, {{"found", nitrite.best}});
            return;
        }
        if (strong && on_meat(i) >= salt_like_amount) {
            add_line("cure_taken_for_salt", Severity::stop, i,
                     {{"found", on_meat(i)}, {"nitrite", nitrite.best}});
            return;
        }
        if (strong && nitrite.best > nitrite_of_any_limit) {
            add_line("tenfold_high", Severity::stop, i, {{"found", on_meat(i)}});
            return;
        }
        if (strong && nitrite.best < least_useful_nitrite / 2 &&
            with_line_times(i, Component::sodium_nitrite, nitrite, 10) >= MassShare::ppm(80) &&
            with_line_times(i, Component::sodium_nitrite, nitrite, 10) <= ordinary_nitrite) {
            add_line("tenfold_low", Severity::stop, i, {{"found", on_meat(i)}});
            return;
        }
        if (!strong && strength(i) < weak_cure && strength(i) > MassShare::fraction(0) &&
            nitrite.best < least_useful_nitrite && on_meat(i) <= cure_like_amount) {
            add_line("weak_cure_taken_for_strong", Severity::caution, i,
                     {{"found", nitrite.best}, {"strength", strength(i)}});
        }
    }

    void check_salt_line(std::size_t i) {
        if (!is_weighed_on_meat(input_.recipe.method)) {
            return;
        }
        const auto& salt = input_.dose.salt;
        const MassShare share = on_meat(i);
        const auto* spoons = spoons_of(i);
        if (spoons != nullptr && spoons->measure.find("tablespoon") != std::string::npos &&
            salt.best > most_salt &&
            with_line_times(i, Component::salt, salt, 1 / teaspoons_in_a_tablespoon) <= most_salt) {
            add_line("spoon_swap", Severity::stop, i, {{"found", salt.best}});
        } else if (salt.best > impossible_salt && share / 10 >= least_salt &&
                   share / 10 <= most_salt) {
            add_line("tenfold_high", Severity::stop, i, {{"found", share}});
        } else if (salt.best < salt_too_low_to_be_meant && share * 100 >= least_salt &&
                   share * 100 <= most_salt) {
            add_line("share_as_proportion", Severity::stop, i, {{"found", share}});
        } else if (salt.best < salt_too_low_to_be_meant && share * 10 >= least_salt &&
                   share * 10 <= most_salt) {
            add_line("tenfold_low", Severity::stop, i, {{"found", share}});
        }
    }

    void check_nitrite() {
        const auto& dose = input_.dose;
        if (dose.nitrite_as_weighed.best > nitrite_of_any_limit * (1 + 1e-9)) {
            add("nitrite_above_any_limit", Severity::stop, "dose.nitrite",
                {{"found", dose.nitrite_as_weighed.best}, {"limit", nitrite_of_any_limit}});
        } else if (!limit_set_chosen_ && dose.nitrite.best > ordinary_nitrite) {
            add("nitrite_high", Severity::caution, "dose.nitrite",
                {{"found", dose.nitrite.best}, {"limit", ordinary_nitrite}});
        }
        if (dose.nitrate_as_weighed.best > nitrate_of_any_limit * (1 + 1e-9)) {
            add("nitrate_above_any_limit", Severity::stop, "dose.nitrate",
                {{"found", dose.nitrate_as_weighed.best}, {"limit", nitrate_of_any_limit}});
        }
        const bool none = dose.nitrite_as_weighed.high <= MassShare::fraction(0) &&
                          dose.nitrate_as_weighed.high <= MassShare::fraction(0);
        if (none && !input_.recipe.lines.empty()) {
            add("no_nitrite", Severity::note, "dose.nitrite");
        }
        if (!limit_set_chosen_ && !none) {
            add("no_limit_set", Severity::caution, "limits");
        }
    }

    void check_salt() {
        const auto& salt = input_.dose.salt;
        if (input_.recipe.method == Method::box || input_.recipe.method == Method::wash ||
            slip_found_ || input_.recipe.lines.empty()) {
            return;
        }
        if (salt.best < least_salt) {
            add("salt_low", Severity::caution, "dose.salt",
                {{"found", salt.best}, {"limit", least_salt}});
        } else if (salt.best > impossible_salt) {
            add("salt_impossible", Severity::stop, "dose.salt",
                {{"found", salt.best}, {"limit", impossible_salt}});
        } else if (salt.best > most_salt) {
            add("salt_high", Severity::caution, "dose.salt",
                {{"found", salt.best}, {"limit", most_salt}});
        }
    }

    void check_rest() {
        const auto& dose = input_.dose;
        if (dose.sugar.best > most_sugar) {
            add("sugar_high", Severity::caution, "dose.sugar",
                {{"found", dose.sugar.best}, {"limit", most_sugar}});
        }
        const MassShare accelerator = dose.ascorbate.best + dose.ascorbic_acid.best;
        if (accelerator > most_accelerator) {
            add("accelerator_high", Severity::caution, "dose.ascorbate",
                {{"found", accelerator}, {"limit", most_accelerator}});
        }
    }

    const CheckInput& input_;
    bool limit_set_chosen_;
    model::Findings& findings_;
    bool slip_found_ = false;
};

} // namespace

void check_dose(const CheckInput& input, bool limit_set_chosen, model::Findings& findings) {
    DoseChecker(input, limit_set_chosen, findings).run();
}

} // namespace core::mix
