#include "app/cli/finding_text.h"

#include "core/units/parse.h"

#include <cmath>
#include <fmt/format.h>
#include <map>

namespace app::cli {

namespace {

using core::model::Finding;
using core::model::FindingValue;
using Json = nlohmann::ordered_json;

/// Blanks in braces are the finding's values.
const std::map<std::string, std::string>& sentences() {
    static const std::map<std::string, std::string> table = {
        {"cure_rules_disagree", "The day rules of this method disagree: {shortest} to {longest}."},
        {"rule_of_other_method", "This day rule belongs to another way of curing."},
        {"rule_far_from_diffusion",
         "The day rules ({shortest} to {longest}) lie outside what diffusion suggests ({p10} to "
         "{p90})."},
        {"planned_shorter_than_even",
         "The planned {planned} is shorter than the {p50} that diffusion suggests."},
        {"planned_longer_than_wanted",
         "The planned {planned} in excess salt is longer than the {p90} after which the salt "
         "passes {wanted}."},
        {"cure_too_warm",
         "At {temperature} the cure is warmer than the {limit} that the bulletin allows while "
         "curing."},
        {"cure_too_cold",
         "At {temperature} the cure is colder than {limit}: salt moves slowly there."},
        {"cure_paused_frozen", "Frozen for {paused}: the cure stood still then."},
        {"still_frozen", "At {temperature} the piece is frozen: the cure stands still."},
        {"sides_taken_endless",
         "Only the shortest side is known: salt coming in through the ends is not counted."},
        {"fat_slows_and_thins",
         "With {fat} fat the salt goes into the lean, more slowly than the figures say."},
        {"no_open_face", "With skin all round no salt can get in: take skin off one side."},
        {"salt_beyond_saturation", "{salt} is more than the meat's own water can hold ({most})."},
        {"thickness_out_of_range", "The thickness must be between 1 mm and 500 mm."},
        {"side_out_of_range",
         "Width and length must be at least the thickness and at most 2 m: the thickness is the "
         "shortest side."},
        {"salt_out_of_range", "The salt must be above 0 and at most 20 % of the meat."},
        {"temperature_out_of_range", "The temperature must be between -40 C and 45 C."},
        {"fat_out_of_range", "The fat must be between 0 and 95 %."},
        {"estimate_is_no_measurement",
         "This is an estimate for sorting pieces; a rule that asks for a water activity asks for "
         "a measurement."},
        {"brine_saturated",
         "This is more salt than the water can dissolve ({most} of the water phase): the rest "
         "would be crystals."},
        {"above_growth_limit",
         "The wet end of the estimate is above {limit}, the lowest water activity at which {name} "
         "grows."},
    };
    return table;
}

struct ValueText {
    std::string operator()(double v) const { return number(v); }
    std::string operator()(const std::string& v) const { return v; }
    std::string operator()(core::units::Mass v) const { return number(v.in_grams()) + " g"; }
    std::string operator()(core::units::MassShare v) const { return number(v.in_percent()) + " %"; }
    std::string operator()(core::units::Volume v) const {
        return number(v.in_millilitres()) + " mL";
    }
    std::string operator()(core::units::Temperature v) const {
        return number(v.in_celsius()) + " C";
    }
    std::string operator()(core::units::RelativeHumidity v) const {
        return number(v.in_percent()) + " % RH";
    }
    std::string operator()(core::units::Duration v) const {
        return v.in_days() < 2 ? number(v.in_hours(), 2) + " hours"
                               : number(v.in_days(), 2) + " days";
    }
    std::string operator()(core::units::Instant v) const { return core::units::to_iso(v); }
};

struct Values {
    Json operator()(double v) const { return v; }
    Json operator()(const std::string& v) const { return v; }
    Json operator()(core::units::Mass v) const { return v.in_grams(); }
    Json operator()(core::units::MassShare v) const { return v.in_percent(); }
    Json operator()(core::units::Volume v) const { return v.in_millilitres(); }
    Json operator()(core::units::Temperature v) const { return v.in_celsius(); }
    Json operator()(core::units::RelativeHumidity v) const { return v.in_percent(); }
    Json operator()(core::units::Duration v) const { return v.in_days(); }
    Json operator()(core::units::Instant v) const { return core::units::to_iso(v); }
};

std::string filled(const std::string& pattern, const Finding& finding) {
    std::string text;
    for (std::size_t i = 0; i < pattern.size(); ++i) {
        const auto close = pattern[i] == '{' ? pattern.find('}', i) : std::string::npos;
        if (close == std::string::npos) {
            text.push_back(pattern[i]);
            continue;
        }
        const auto value = finding.values.find(pattern.substr(i + 1, close - i - 1));
        text += value == finding.values.end() ? "?" : std::visit(ValueText{}, value->second);
        i = close;
    }
    return text;
}

} // namespace

std::string number(double value, int digits) {
    if (!std::isfinite(value)) {
        return "?";
    }
    // Fixed notation also for large values: 1e+02 is no number for a kitchen.
    const double size = std::abs(value);
    const int before = size < 1 ? 0 : static_cast<int>(std::floor(std::log10(size))) + 1;
    std::string text = fmt::format("{:.{}f}", value, std::max(digits - std::max(before, 1), 0));
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.') {
            text.pop_back();
        }
    }
    return text == "-0" ? "0" : text;
}

bool is_verified(const core::base::Source& source) {
    return source.sureness == core::base::Sureness::verified ||
           source.sureness == core::base::Sureness::computed;
}

std::string source_words(const core::base::Source& source) {
    std::string text = source.title;
    if (!source.edition.empty()) {
        text += " (" + source.edition + ")";
    }
    const bool lore = source.sureness == core::base::Sureness::common_practice;
    return is_verified(source) || lore ? text : text + ", unverified";
}

std::string words_for(const Finding& finding) {
    const auto known = sentences().find(finding.code);
    std::string text;
    if (known != sentences().end()) {
        text = filled(known->second, finding);
    } else {
        text = finding.code;
        for (const auto& [name, value] : finding.values) {
            text += ", " + name + " " + std::visit(ValueText{}, value);
        }
        text += ".";
    }
    if (finding.source) {
        text += " [" + source_words(*finding.source) + "]";
    }
    return text;
}

const char* severity_name(core::model::Severity severity) {
    switch (severity) {
    case core::model::Severity::note:
        return "note";
    case core::model::Severity::caution:
        return "caution";
    case core::model::Severity::stop:
        break;
    }
    return "stop";
}

Json json_of(const Finding& finding) {
    Json values = Json::object();
    for (const auto& [name, value] : finding.values) {
        values[name] = std::visit(Values{}, value);
    }
    Json out{{"code", finding.code},
             {"severity", severity_name(finding.severity)},
             {"place", finding.place},
             {"values", values},
             {"source", nullptr}};
    if (finding.source) {
        out["source"] = {{"title", finding.source->title},
                         {"verified", is_verified(*finding.source)}};
    }
    return out;
}

Json json_of(const core::model::Findings& findings) {
    Json out = Json::array();
    for (const auto& finding : findings) {
        out.push_back(json_of(finding));
    }
    return out;
}

} // namespace app::cli
