#include "core/mix/limit_checks.h"

#include "core/mix/finding_maker.h"

#include <algorithm>

namespace core::mix {
namespace {

using facts::Component;
using facts::ExpressedAs;
using facts::LimitBasis;
using facts::Substance;
using model::Severity;
using units::MassShare;

// Decimal doses meet decimal limits exactly only up to the last bits: 0.25 % x 6.25 % is
// 156.25 ppm and keeps a limit of 156.25.
constexpr double rounding_slack = 1 + 1e-9;

ShareInterval scaled(const ShareInterval& a, double factor) {
    return {a.low * factor, a.best * factor, a.high * factor};
}

ShareInterval sum(const ShareInterval& a, const ShareInterval& b) {
    return {a.low + b.low, a.best + b.best, a.high + b.high};
}

ShareInterval nitrite_of(const Dose& dose, ExpressedAs expressed_as) {
    switch (expressed_as) {
    case ExpressedAs::salt_as_weighed:
        return dose.nitrite_as_weighed;
    case ExpressedAs::sodium_salt:
        return dose.nitrite;
    case ExpressedAs::ion:
        return dose.nitrite_ion;
    }
    return dose.nitrite;
}

ShareInterval nitrate_of(const Dose& dose, ExpressedAs expressed_as) {
    switch (expressed_as) {
    case ExpressedAs::salt_as_weighed:
        return dose.nitrate_as_weighed;
    case ExpressedAs::sodium_salt:
        return dose.nitrate;
    case ExpressedAs::ion:
        return dose.nitrate_ion;
    }
    return dose.nitrate;
}

ShareInterval ingoing_of(const facts::Limit& limit, const Dose& dose) {
    switch (limit.substance) {
    case Substance::nitrite:
        return nitrite_of(dose, limit.expressed_as);
    case Substance::nitrate:
        return nitrate_of(dose, limit.expressed_as);
    case Substance::nitrite_and_nitrate:
        return sum(nitrite_of(dose, limit.expressed_as), nitrate_of(dose, limit.expressed_as));
    case Substance::ascorbate:
        return dose.ascorbate;
    case Substance::ascorbic_acid:
        return dose.ascorbic_acid;
    case Substance::phosphate:
        return dose.phosphate;
    }
    return no_share;
}

std::vector<Component> components_of(Substance substance) {
    switch (substance) {
    case Substance::nitrite:
        return {Component::sodium_nitrite, Component::potassium_nitrite};
    case Substance::nitrate:
        return {Component::sodium_nitrate, Component::potassium_nitrate};
    case Substance::nitrite_and_nitrate:
        return {Component::sodium_nitrite, Component::potassium_nitrite, Component::sodium_nitrate,
                Component::potassium_nitrate};
    case Substance::ascorbate:
        return {Component::ascorbate};
    case Substance::ascorbic_acid:
        return {Component::ascorbic_acid};
    case Substance::phosphate:
        return {Component::phosphate};
    }
    return {};
}

std::string word_of(Substance substance) {
    switch (substance) {
    case Substance::nitrite:
        return "nitrite";
    case Substance::nitrate:
        return "nitrate";
    case Substance::nitrite_and_nitrate:
        return "nitrite_and_nitrate";
    case Substance::ascorbate:
        return "ascorbate";
    case Substance::ascorbic_acid:
        return "ascorbic_acid";
    case Substance::phosphate:
        return "phosphate";
    }
    return {};
}

facts::CureRoute route_of(Method method) {
    switch (method) {
    case Method::dry:
    case Method::box:
    case Method::wash:
        return facts::CureRoute::dry;
    case Method::injected:
        return facts::CureRoute::injected;
    default:
        return facts::CureRoute::immersion;
    }
}

class LimitChecker {
  public:
    LimitChecker(const facts::LimitSet& set, const RecipeDocument& recipe, const Dose& dose,
                 double share, model::Findings& findings)
        : set_(set), recipe_(recipe), dose_(dose), share_(share), findings_(findings) {}

    LimitCheck check(const facts::Limit& limit) {
        LimitCheck result;
        result.limit = limit;
        result.verified = facts::is_verified(limit.source);
        result.value = value_for(limit, dose_, share_, recipe_.expected_loss);
        result.outcome = outcome_of(limit, result.value);
        report(limit, result);
        return result;
    }

  private:
    LimitCheck::Outcome outcome_of(const facts::Limit& limit, const ShareInterval& value) {
        using Outcome = LimitCheck::Outcome;
        const bool used = value.high > MassShare::fraction(0);
        if (limit.not_permitted) {
            return used ? Outcome::not_permitted_used : Outcome::within;
        }
        const auto unknown = components_of(limit.substance);
        const bool unstated = std::any_of(unknown.begin(), unknown.end(), [&](Component c) {
            return std::find(dose_.unknown.begin(), dose_.unknown.end(), c) != dose_.unknown.end();
        });
        if (limit.basis == LimitBasis::residual || unstated) {
            return Outcome::not_computable;
        }
        if (limit.maximum && value.best > *limit.maximum * rounding_slack) {
            return Outcome::above;
        }
        if (limit.minimum && value.best * rounding_slack < *limit.minimum) {
            return Outcome::below;
        }
        return Outcome::within;
    }

    void add(const char* code, Severity severity, const facts::Limit& limit,
             std::map<std::string, model::FindingValue> values) {
        values.emplace("substance", word_of(limit.substance));
        values.emplace("set", set_.name);
        auto finding = make_finding(code, severity, "limits", std::move(values));
        finding.source = limit.source;
        findings_.push_back(std::move(finding));
    }

    void report(const facts::Limit& limit, const LimitCheck& result) {
        using Outcome = LimitCheck::Outcome;
        const auto& value = result.value;
        switch (result.outcome) {
        case Outcome::above:
            add("limit_exceeded", Severity::stop, limit,
                {{"found", value.best}, {"limit", *limit.maximum}});
            break;
        case Outcome::not_permitted_used:
            add("limit_not_permitted", Severity::stop, limit, {{"found", value.best}});
            break;
        case Outcome::below:
            add("limit_minimum", Severity::caution, limit,
                {{"found", value.best}, {"limit", *limit.minimum}});
            break;
        case Outcome::within:
            if (limit.maximum && value.high > *limit.maximum * rounding_slack) {
                add("limit_within_spread", Severity::caution, limit,
                    {{"found", value.high}, {"limit", *limit.maximum}});
            }
            break;
        case Outcome::not_computable:
            if (limit.basis == LimitBasis::residual && limit.maximum) {
                add("limit_residual", Severity::note, limit,
                    {{"found", value.best}, {"limit", *limit.maximum}});
            }
            break;
        }
        if (limit.basis == LimitBasis::finished && !recipe_.expected_loss &&
            value.high > MassShare::fraction(0)) {
            add("limit_needs_loss", Severity::caution, limit, {});
        }
    }

    const facts::LimitSet& set_;
    const RecipeDocument& recipe_;
    const Dose& dose_;
    double share_;
    model::Findings& findings_;
};

void check_the_set_itself(const facts::LimitSet& set, const RecipeDocument& recipe,
                          std::optional<units::Day> today, model::Findings& findings) {
    const auto add = [&](const char* code, Severity severity) {
        findings.push_back(make_finding(code, severity, "limits", {{"set", set.name}}));
    };
    if (today && ((set.in_force_from && *today < *set.in_force_from) ||
                  (set.in_force_until && *today > *set.in_force_until))) {
        add("limit_not_in_force", Severity::caution);
    }
    if (!set.routes.empty() && std::find(set.routes.begin(), set.routes.end(),
                                         route_of(recipe.method)) == set.routes.end()) {
        add("limit_other_route", Severity::caution);
    }
    const auto unread = std::find_if(set.limits.begin(), set.limits.end(), [](const auto& limit) {
        return !facts::is_verified(limit.source);
    });
    if (unread != set.limits.end()) {
        add("limit_unverified", Severity::caution);
        findings.back().source = unread->source;
    }
}

} // namespace

double basis_share(const facts::LimitSet& set, const Meat& meat,
                   const facts::Constants& constants) {
    if (!set.subtract_skin || meat.skin == model::SkinSide::none) {
        return 1;
    }
    return 1 - meat.skin_share.value_or(constants.skin_share.value).as_fraction();
}

ShareInterval value_for(const facts::Limit& limit, const Dose& dose, double share,
                        std::optional<units::MassShare> expected_loss) {
    const auto ingoing = scaled(ingoing_of(limit, dose), 1 / share);
    if (limit.basis != LimitBasis::finished || !expected_loss ||
        *expected_loss >= MassShare::fraction(1)) {
        return ingoing;
    }
    // What went in is still there while the weight is not: an upper bound, since nitrite is used
    // up as meat cures.
    return scaled(ingoing, 1 / (1 - expected_loss->as_fraction()));
}

std::vector<LimitCheck> check_limits(const facts::LimitSet& set, const RecipeDocument& recipe,
                                     const Dose& dose, const facts::Constants& constants,
                                     std::optional<units::Day> today, model::Findings& findings) {
    check_the_set_itself(set, recipe, today, findings);
    const double share = basis_share(set, recipe.meat, constants);
    if (share < 1) {
        findings.push_back(make_finding("skin_taken_off", Severity::note, "meat.skin",
                                        {{"share", MassShare::fraction(1 - share)}}));
        findings.back().source = constants.skin_share.source;
    }
    LimitChecker checker(set, recipe, dose, share, findings);
    std::vector<LimitCheck> checks;
    for (const auto& limit : set.limits) {
        checks.push_back(checker.check(limit));
    }
    return checks;
}

} // namespace core::mix
