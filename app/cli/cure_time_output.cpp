#include "app/cli/cure_time_output.h"

#include <cmath>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <set>

namespace app::cli {

namespace {

using core::base::Interval;
using core::model::Form;
using core::model::SkinSide;
using core::units::Duration;
using core::uptake::CureEstimate;
using core::uptake::CureMethod;
using core::uptake::RuleDays;
using Json = nlohmann::ordered_json;

const char* form_name(Form form) {
    switch (form) {
    case Form::slab:
        return "slab";
    case Form::cylinder:
        return "cylinder";
    case Form::round:
        return "round";
    case Form::block:
        break;
    }
    return "block";
}

const char* skin_name(SkinSide skin) {
    switch (skin) {
    case SkinSide::none:
        return "none";
    case SkinSide::one_side:
        return "one-side";
    case SkinSide::all_round:
        break;
    }
    return "all-round";
}

const char* method_name(CureMethod method) {
    switch (method) {
    case CureMethod::weighed:
        return "weighed";
    case CureMethod::excess_salt:
        return "excess_salt";
    case CureMethod::immersion:
        break;
    }
    return "immersion";
}

const char* method_words(CureMethod method) {
    switch (method) {
    case CureMethod::weighed:
        return "weighed or bagged";
    case CureMethod::excess_salt:
        return "in excess salt";
    case CureMethod::immersion:
        break;
    }
    return "in brine";
}

std::string rule_words(const std::string& id) {
    static const std::map<std::string, std::string> words = {
        {"half_inch_plus_two", "1 day per half inch, plus 2"},
        {"three_per_inch_plus_four", "3 days per inch, plus 4"},
        {"three_plus_one_per_cm", "1 day per cm, plus 3"},
        {"one_per_cm_in_vacuum", "1 day per cm, plus 1 to 2, in vacuum"},
        {"thin_sides_fixed", "12 to 14 days for thin sides"},
        {"inch_a_week_in_box", "1 week per inch, in a box"},
        {"two_days_a_pound_in_bag", "2 days per pound, in a bag"},
        {"one_day_a_kilogram", "1 day per kg, give or take 1"},
        {"two_to_three_days_a_kilogram", "2 to 3 days per kg"},
        {"seven_days_a_kilogram", "7 days per kg"},
        {"three_days_a_pound", "3 days per pound"},
        {"three_plus_one_a_kilogram", "1 day per kg, plus 3"},
        {"sweet_pickle", "3 1/2 to 4 days per pound, sweet pickle"},
        {"two_days_a_kilogram_in_brine", "2 days per kg"},
    };
    const auto found = words.find(id);
    return found == words.end() ? id : found->second;
}

Json days(const std::optional<Interval<Duration>>& interval) {
    if (!interval) {
        return nullptr;
    }
    return {{"p10", interval->low.in_days()},
            {"p50", interval->best.in_days()},
            {"p90", interval->high.in_days()}};
}

Json percent(const Interval<core::units::MassShare>& share) {
    return {{"p10", share.low.in_percent()},
            {"p50", share.best.in_percent()},
            {"p90", share.high.in_percent()}};
}

Json method_json(const CureEstimate& estimate) {
    Json out;
    out["salt_in_days"] = days(estimate.salt_in);
    out["even_days"] = days(estimate.even);
    out["final_salt_percent"] =
        estimate.salt_in ? Json(estimate.final_mean.in_percent()) : Json(nullptr);
    out["findings"] = json_of(estimate.findings);
    return out;
}

std::string day_words(const std::optional<Interval<Duration>>& interval) {
    if (!interval) {
        return "never like this";
    }
    const bool short_time = interval->best < Duration::days(2);
    const auto in_unit = [short_time](Duration d) {
        return number(short_time ? d.in_hours() : d.in_days(), 2);
    };
    return fmt::format("{} {} ({} to {})", in_unit(interval->best), short_time ? "hours" : "days",
                       in_unit(interval->low), in_unit(interval->high));
}

std::string rule_line(const RuleDays& rule) {
    const std::string range = rule.low == rule.high ? number(rule.high.in_days(), 2)
                                                    : number(rule.low.in_days(), 2) + " to " +
                                                          number(rule.high.in_days(), 2);
    return fmt::format("  {:<42} {:>9} days  {} [{}]\n", rule_words(rule.rule->id), range,
                       method_words(rule.rule->method), source_words(rule.rule->source));
}

/// Each finding once, though both methods may have it.
std::string remark_lines(const CureAnswer& answer) {
    std::string text;
    std::set<std::string> seen;
    for (const auto* estimate : {&answer.weighed, &answer.excess_salt}) {
        for (const auto& finding : estimate->findings) {
            const bool of_method = finding.code.find("rule") != std::string::npos;
            const std::string sentence =
                (of_method ? (estimate == &answer.weighed ? "Weighed cure: " : "Excess salt: ")
                           : "") +
                words_for(finding);
            if (seen.insert(sentence).second) {
                text += fmt::format("{}: {}\n", severity_name(finding.severity), sentence);
            }
        }
    }
    return text;
}

} // namespace

std::string cure_time_json(const CureAnswer& answer) {
    const auto& request = answer.request;
    Json out;
    out["thickness_mm"] = request.thickness.in_millimetres();
    out["form"] = form_name(request.form);
    out["skin"] = skin_name(request.skin);
    out["temp_c"] = request.temperature.in_celsius();
    out["salt_percent"] = request.salt.in_percent();
    out["salt_assumed"] = !answer.salt_given;
    out["weighed"] = method_json(answer.weighed);
    out["excess_salt"] = method_json(answer.excess_salt);
    out["rules"] = Json::array();
    for (const auto& rule : answer.weighed.rules) {
        out["rules"].push_back({{"id", rule.rule->id},
                                {"method", method_name(rule.rule->method)},
                                {"low_days", rule.low.in_days()},
                                {"high_days", rule.high.in_days()},
                                {"source", rule.rule->source.title},
                                {"verified", is_verified(rule.rule->source)}});
    }
    out["curve"] = Json::array();
    for (const auto& point : answer.weighed.curve) {
        out["curve"].push_back({{"day", point.since_start.in_days()},
                                {"mean_percent", percent(point.mean)},
                                {"centre_percent", percent(point.centre)}});
    }
    return out.dump();
}

std::string cure_time_words(const CureAnswer& answer) {
    const auto& request = answer.request;
    const std::string salt = number(request.salt.in_percent()) + " %";
    std::string text = fmt::format("A {} {} mm thick at {} C{}\n", form_name(request.form),
                                   number(request.thickness.in_millimetres(), 4),
                                   number(request.temperature.in_celsius()),
                                   request.skin == SkinSide::one_side ? ", skin on one side" : "");
    text += fmt::format("Weighed cure, {} salt{}; all of it stays with the meat\n"
                        "  salt in (95 %)                             {}\n"
                        "  even (centre at 90 % of the mean)          {}\n",
                        salt, answer.salt_given ? "" : " (taken, none was given)",
                        day_words(answer.weighed.salt_in), day_words(answer.weighed.even));
    text += fmt::format("Buried in salt, until the piece holds {}\n"
                        "  take out after                             {}\n"
                        "  even, with the rest after it               {}\n",
                        salt, day_words(answer.excess_salt.salt_in),
                        day_words(answer.excess_salt.even));
    text += "Day rules, each with the way of curing it belongs to\n";
    for (const auto& rule : answer.weighed.rules) {
        text += rule_line(rule);
    }
    text += remark_lines(answer);
    text += "In brackets: from p10 to p90 of what is known about how fast salt spreads. Figures "
            "for planning; local code, licensed practice and laboratory measurement come first.";
    return text;
}

} // namespace app::cli
