#pragma once

#include "core/base/cited.h"
#include "core/model/finding.h"
#include "core/units/length.h"
#include "core/units/mass.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::uptake {

enum class CureMethod {
    weighed,     ///< the salt is weighed on the meat and all of it stays with it (rub, bag, vacuum)
    excess_salt, ///< buried in or boxed with more salt than it may take: time is the dose
    immersion,   ///< in a brine
};

/// A rule of thumb for the days in cure. They disagree by a factor of five and belong to
/// different methods, so a rule never travels without its method and its source.
struct DayRule {
    std::string id; ///< stable name, e.g. "half_inch_plus_two"
    CureMethod method;
    enum class Per { nothing, inch, centimetre, kilogram, pound } per;
    double low; ///< days per unit
    double high;
    double constant_low; ///< days added whatever the size
    double constant_high;
    base::Source source;
};

/// Every rule the program knows, weighed ones first.
const std::vector<DayRule>& day_rules();

/// What one rule says for a piece.
struct RuleDays {
    const DayRule* rule; ///< into day_rules(): never null, lives as long as the program
    units::Duration low;
    units::Duration high;
    bool same_method; ///< the rule belongs to the method asked for
};

/// Every rule that can be worked with what is known: thickness rules need the thickness, weight
/// rules the weight of the piece. Rules of other methods are included, marked.
std::vector<RuleDays> rules_side_by_side(CureMethod method, std::optional<units::Length> thickness,
                                         std::optional<units::Mass> weight);

/// nullptr when there is no rule of that id.
const DayRule* find_rule(const std::string& id);

} // namespace core::uptake
