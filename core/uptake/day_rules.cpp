#include "core/uptake/day_rules.h"

#include <algorithm>

namespace core::uptake {

namespace {

using base::Source;
using base::Sureness;
using Per = DayRule::Per;

std::vector<DayRule> all_rules() {
    const Source farm{"USDA, Pork Slaughtering, Cutting, Preserving, and Cooking on the Farm", "",
                      Sureness::verified};
    const Source purdue{"Purdue Extension, newspaper column", "1919",
                        Sureness::verified_second_hand};
    const Source kentucky{"Rentfrow, University of Kentucky, country ham slides", "",
                          Sureness::verified};
    const Source eu{"Annex II to Regulation (EC) 1333/2008, product definitions", "",
                    Sureness::verified_second_hand};
    using enum CureMethod;
    return {
        {"half_inch_plus_two", weighed, Per::inch, 2, 2, 2, 2, base::common_practice()},
        {"three_per_inch_plus_four", weighed, Per::inch, 3, 3, 4, 4, base::common_practice()},
        {"three_plus_one_per_cm", weighed, Per::centimetre, 1, 1, 3, 3, base::common_practice()},
        {"one_per_cm_in_vacuum", weighed, Per::centimetre, 1, 1, 1, 2, base::common_practice()},
        {"thin_sides_fixed", weighed, Per::nothing, 0, 0, 12, 14, purdue},
        {"inch_a_week_in_box", excess_salt, Per::inch, 7, 7, 0, 0, kentucky},
        {"two_days_a_pound_in_bag", excess_salt, Per::pound, 2, 2, 0, 0, kentucky},
        {"one_day_a_kilogram", excess_salt, Per::kilogram, 1, 1, -1, 1, base::common_practice()},
        {"two_to_three_days_a_kilogram", excess_salt, Per::kilogram, 2, 3, 0, 0,
         base::common_practice()},
        {"seven_days_a_kilogram", excess_salt, Per::kilogram, 7, 7, 0, 0, base::common_practice()},
        {"three_days_a_pound", excess_salt, Per::pound, 3, 3, 0, 0, base::common_practice()},
        {"three_plus_one_a_kilogram", excess_salt, Per::kilogram, 1, 1, 3, 3, eu},
        {"sweet_pickle", immersion, Per::pound, 3.5, 4, 0, 0, farm},
        {"two_days_a_kilogram_in_brine", immersion, Per::kilogram, 2, 2, 0, 0, eu},
    };
}

std::optional<double> units_of(Per per, std::optional<units::Length> thickness,
                               std::optional<units::Mass> weight) {
    switch (per) {
    case Per::nothing:
        return 0.0;
    case Per::inch:
        return thickness ? std::optional(thickness->in_inches()) : std::nullopt;
    case Per::centimetre:
        return thickness ? std::optional(thickness->in_centimetres()) : std::nullopt;
    case Per::kilogram:
        return weight ? std::optional(weight->in_kilograms()) : std::nullopt;
    case Per::pound:
        break;
    }
    return weight ? std::optional(weight->in_pounds()) : std::nullopt;
}

} // namespace

const std::vector<DayRule>& day_rules() {
    static const std::vector<DayRule> rules = all_rules();
    return rules;
}

std::vector<RuleDays> rules_side_by_side(CureMethod method, std::optional<units::Length> thickness,
                                         std::optional<units::Mass> weight) {
    std::vector<RuleDays> days;
    for (const auto& rule : day_rules()) {
        const auto size = units_of(rule.per, thickness, weight);
        if (size) {
            const double low = std::max(rule.low * *size + rule.constant_low, 0.0);
            const double high = std::max(rule.high * *size + rule.constant_high, 0.0);
            days.push_back({&rule, units::Duration::days(low), units::Duration::days(high),
                            rule.method == method});
        }
    }
    return days;
}

const DayRule* find_rule(const std::string& id) {
    const auto& rules = day_rules();
    const auto found = std::find_if(rules.begin(), rules.end(),
                                    [&id](const DayRule& rule) { return rule.id == id; });
    return found == rules.end() ? nullptr : &*found;
}

} // namespace core::uptake
