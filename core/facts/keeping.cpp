#include "core/facts/keeping.h"

#include "core/facts/embedded.h"
#include "core/facts/fact_reader.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <set>

namespace core::facts {

namespace {

using base::ErrorCode;
using detail::FactObject;
using detail::SourceTable;

constexpr std::array<std::pair<std::string_view, PackForm>, 4> forms = {{
    {"whole", PackForm::whole},
    {"cut", PackForm::cut},
    {"vacuum", PackForm::vacuum},
    {"frozen", PackForm::frozen},
}};
constexpr std::array<std::pair<std::string_view, KeepRule::From>, 2> beginnings = {{
    {"packing", KeepRule::From::packing},
    {"opening", KeepRule::From::opening},
}};

std::vector<PackForm> read_forms(const FactObject& object) {
    std::vector<PackForm> packs;
    for (const auto& word : object.array("packs")) {
        const auto found = std::find_if(forms.begin(), forms.end(), [&](const auto& form) {
            return word.is_string() && word.get_ref<const std::string&>() == form.first;
        });
        if (found == forms.end()) {
            object.fail(ErrorCode::bad_format, "packs", word.dump());
        }
        packs.push_back(found->second);
    }
    if (packs.empty()) {
        object.fail(ErrorCode::missing_column, "packs", "empty");
    }
    return packs;
}

KeepRule read_rule(const FactObject& object, const SourceTable& sources) {
    object.only({"id", "name", "packs", "counts_from", "days", "source", "note"});
    KeepRule rule;
    rule.id = object.text("id");
    rule.name = object.text("name");
    rule.packs = read_forms(object);
    rule.counts_from = object.word("counts_from", beginnings);
    const double days = object.number("days", 1, 3650);
    if (days != std::floor(days)) {
        object.fail(ErrorCode::out_of_range, "days", "not a whole number");
    }
    rule.days = static_cast<int>(days);
    rule.source = sources.of(object);
    rule.note = object.text_or_empty("note");
    return rule;
}

} // namespace

bool KeepRule::is_for(PackForm form) const {
    return std::find(packs.begin(), packs.end(), form) != packs.end();
}

const KeepRule* KeepRules::find(std::string_view id) const {
    const auto found = std::find_if(rules.begin(), rules.end(),
                                    [id](const KeepRule& rule) { return rule.id == id; });
    return found == rules.end() ? nullptr : &*found;
}

std::vector<KeepRule> KeepRules::rules_for(PackForm form, KeepRule::From from) const {
    std::vector<KeepRule> found;
    std::copy_if(rules.begin(), rules.end(), std::back_inserter(found), [&](const KeepRule& rule) {
        return rule.counts_from == from && rule.is_for(form);
    });
    return found;
}

base::Result<KeepRules> load_keep_rules(std::string_view text) {
    try {
        const detail::Json json = detail::parse_fact_file(text, "keeping.json");
        const FactObject top(json, "keeping.json");
        top.only({"about", "sources", "rules"});
        const SourceTable sources(top);
        std::set<std::string> ids;
        KeepRules rules;
        for (const auto& item : top.array("rules")) {
            const FactObject object(item, "keeping.json.rules[" +
                                              std::to_string(rules.rules.size()) + "]");
            if (!ids.insert(object.text("id")).second) {
                object.fail(ErrorCode::conflict, "id", "used twice");
            }
            rules.rules.push_back(read_rule(object, sources));
        }
        return rules;
    } catch (const detail::FactFault& fault) {
        return tl::unexpected(fault.error);
    }
}

KeepRules built_in_keep_rules() {
    auto rules = load_keep_rules(embedded("keeping.json"));
    assert(rules.has_value() && "our own fact files are held good by a test");
    return std::move(*rules);
}

} // namespace core::facts
