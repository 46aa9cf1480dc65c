#pragma once

#include "core/base/cited.h"
#include "core/base/result.h"

#include <string>
#include <string_view>
#include <vector>

/// How long finished packs are usually kept, as cited data. A day to look at a pack by, never a
/// verdict; what was not read in its issuer's text is shown as unverified.
namespace core::facts {

enum class PackForm { whole, cut, vacuum, frozen };

struct KeepRule {
    enum class From { packing, opening };
    std::string id; ///< "muscle_vacuum_cold"; kept with the pack
    std::string name;
    std::vector<PackForm> packs; ///< one or more
    From counts_from = From::packing;
    int days = 0; ///< 1 to 3650
    base::Source source;
    std::string note;
    [[nodiscard]] bool is_for(PackForm form) const;
};

struct KeepRules {
    std::vector<KeepRule> rules;
    [[nodiscard]] const KeepRule* find(std::string_view id) const;
    /// Those for a pack of this form, by what they count from; in the file's order.
    [[nodiscard]] std::vector<KeepRule> rules_for(PackForm form, KeepRule::From from) const;
};

/// Reads and checks resources/facts/keeping.json. The first fault is returned, `where` naming
/// the entry and the field: bad_format, missing_column, out_of_range, conflict (id used twice).
base::Result<KeepRules> load_keep_rules(std::string_view text);

/// The file as it was when the program was built.
KeepRules built_in_keep_rules();

} // namespace core::facts
