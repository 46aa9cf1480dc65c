#include "core/uptake/cure_checks.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace core::uptake {

namespace {

using model::Finding;
using model::Severity;

// USDA, Pork Slaughtering, Cutting, Preserving, and Cooking on the Farm: "36-42 F" while curing;
// "Bacteria grow rapidly in unsalted meat when the temperature rises above 50 F".
constexpr units::Temperature coolest_cure = units::Temperature::fahrenheit(36);
constexpr units::Temperature warmest_cure = units::Temperature::fahrenheit(42);

base::Source farm_bulletin() {
    return {"USDA, Pork Slaughtering, Cutting, Preserving, and Cooking on the Farm", "",
            base::Sureness::verified};
}

bool within(double value, double low, double high) {
    return value >= low && value <= high;
}

void require(model::Findings& findings, bool fine, const char* code, const char* place) {
    if (!fine) {
        findings.push_back({code, Severity::stop, place, {}, {}, {}});
    }
}

bool side_fits(const std::optional<units::Length>& side, units::Length shortest) {
    return !side || (*side >= shortest && side->in_millimetres() <= 2000);
}

void check_temperatures(const CureRequest& request, model::Findings& findings) {
    bool fine = within(request.temperature.in_celsius(), -40, 45);
    for (const auto& spell : request.spells) {
        fine = fine && within(spell.temperature.in_celsius(), -40, 45) &&
               within(spell.lasts.in_days(), 0, 3650);
    }
    require(findings, fine, "temperature_out_of_range", "temperature");
}

void remark_on_temperature(const CureRequest& request, model::Findings& findings) {
    std::vector<Spell> spells = request.spells;
    spells.push_back({units::Duration::days(0), request.temperature});
    units::Duration paused = units::Duration::seconds(0);
    std::optional<units::Temperature> warmest;
    std::optional<units::Temperature> coolest;
    for (const auto& spell : spells) {
        if (spell.paused()) {
            paused += spell.lasts;
            continue;
        }
        warmest = warmest ? std::max(*warmest, spell.temperature) : spell.temperature;
        coolest = coolest ? std::min(*coolest, spell.temperature) : spell.temperature;
    }
    if (warmest && *warmest > warmest_cure) {
        findings.push_back({"cure_too_warm",
                            Severity::caution,
                            "temperature",
                            {{"temperature", *warmest}, {"limit", warmest_cure}},
                            {},
                            farm_bulletin()});
    }
    if (coolest && *coolest < coolest_cure) {
        findings.push_back({"cure_too_cold",
                            Severity::note,
                            "temperature",
                            {{"temperature", *coolest}, {"limit", coolest_cure}},
                            {},
                            farm_bulletin()});
    }
    if (paused > units::Duration::seconds(0)) {
        findings.push_back(
            {"cure_paused_frozen", Severity::note, "spells", {{"paused", paused}}, {}, {}});
    }
    if (request.temperature < freezing_meat) {
        findings.push_back({"still_frozen",
                            Severity::caution,
                            "temperature",
                            {{"temperature", request.temperature}},
                            {},
                            {}});
    }
}

void remark_on_rules(const CureRequest& request, const CureEstimate& estimate,
                     const std::optional<base::Interval<units::Duration>>& needed,
                     model::Findings& findings) {
    auto shortest = units::Duration::days(std::numeric_limits<double>::max());
    auto longest = units::Duration::days(0);
    double count = 0;
    for (const auto& days : estimate.rules) {
        if (days.same_method) {
            shortest = std::min(shortest, days.low);
            longest = std::max(longest, days.high);
            ++count;
        }
    }
    constexpr double disagreement = 1.5;
    if (count > 1 && longest > disagreement * shortest) {
        findings.push_back({"cure_rules_disagree",
                            Severity::caution,
                            "rules",
                            {{"shortest", shortest}, {"longest", longest}, {"rules", count}},
                            {},
                            {}});
    }
    if (count > 0 && needed && (longest < needed->low || shortest > needed->high)) {
        findings.push_back({"rule_far_from_diffusion",
                            Severity::caution,
                            "rules",
                            {{"shortest", shortest},
                             {"longest", longest},
                             {"p10", needed->low},
                             {"p50", needed->best},
                             {"p90", needed->high}},
                            {},
                            {}});
    }
    if (request.planned_rule) {
        const DayRule* rule = find_rule(*request.planned_rule);
        if (rule != nullptr && rule->method != request.method) {
            findings.push_back(
                {"rule_of_other_method", Severity::caution, rule->id, {}, {}, rule->source});
        }
    }
}

void remark_on_plan(const CureRequest& request, const CureEstimate& estimate,
                    const std::optional<base::Interval<units::Duration>>& needed,
                    model::Findings& findings) {
    if (!request.planned || !needed) {
        return;
    }
    if (*request.planned < needed->best) {
        Finding finding{"planned_shorter_than_even",
                        Severity::caution,
                        "planned",
                        {{"planned", *request.planned},
                         {"p10", needed->low},
                         {"p50", needed->best},
                         {"p90", needed->high}},
                        {},
                        {}};
        if (estimate.centre_after_planned) {
            finding.values["centre_share"] = estimate.centre_after_planned->best;
        }
        findings.push_back(std::move(finding));
    }
    if (request.method == CureMethod::excess_salt && *request.planned > needed->high) {
        findings.push_back(
            {"planned_longer_than_wanted",
             Severity::caution,
             "planned",
             {{"planned", *request.planned}, {"p90", needed->high}, {"wanted", request.salt}},
             {},
             {}});
    }
}

} // namespace

double raw_water_share(const std::optional<units::MassShare>& fat) {
    constexpr double lean_water = 0.74;
    constexpr double fat_water = 0.15;
    const double f = fat ? fat->as_fraction() : 0.0;
    return lean_water * (1 - f) + fat_water * f;
}

units::MassShare saturated_salt(const std::optional<units::MassShare>& fat) {
    constexpr double saturated_brine = 0.263;
    return units::MassShare::fraction(raw_water_share(fat) * saturated_brine /
                                      (1 - saturated_brine));
}

model::Findings invalid_parts(const CureRequest& request) {
    model::Findings findings;
    require(findings, within(request.thickness.in_millimetres(), 1, 500), "thickness_out_of_range",
            "thickness");
    require(findings,
            side_fits(request.width, request.thickness) &&
                side_fits(request.length, request.thickness),
            "side_out_of_range", "sides");
    require(findings, request.salt.in_percent() > 0 && request.salt.in_percent() <= 20,
            "salt_out_of_range", "salt");
    const bool fat_fine = !request.fat || within(request.fat->in_percent(), 0, 95);
    require(findings, fat_fine, "fat_out_of_range", "fat");
    require(findings, !request.outside_water || within(request.outside_water->as_fraction(), 0, 20),
            "outside_water_out_of_range", "outside_water");
    require(findings, within(request.evenness, 0.5, 0.99), "evenness_out_of_range", "evenness");
    require(findings, !request.planned || within(request.planned->in_days(), 0, 3650),
            "planned_out_of_range", "planned");
    check_temperatures(request, findings);
    require(findings, request.skin != model::SkinSide::all_round, "no_open_face", "skin");
    if (request.method == CureMethod::excess_salt && fat_fine &&
        request.salt >= 0.99 * saturated_salt(request.fat)) {
        findings.push_back({"salt_beyond_saturation",
                            Severity::stop,
                            "salt",
                            {{"salt", request.salt}, {"most", saturated_salt(request.fat)}},
                            {},
                            {}});
    }
    if (request.planned_rule && find_rule(*request.planned_rule) == nullptr) {
        findings.push_back({"unknown_rule", Severity::stop, *request.planned_rule, {}, {}, {}});
    }
    return findings;
}

model::Findings remarks_on(const CureRequest& request, const CureEstimate& estimate) {
    model::Findings findings;
    const auto& needed =
        request.method == CureMethod::excess_salt ? estimate.salt_in : estimate.even;
    remark_on_rules(request, estimate, needed, findings);
    remark_on_plan(request, estimate, needed, findings);
    remark_on_temperature(request, findings);
    if (request.form == model::Form::block && !(request.width && request.length)) {
        findings.push_back({"sides_taken_endless", Severity::note, "sides", {}, {}, {}});
    }
    constexpr double fatty = 0.3;
    if (request.fat && request.fat->as_fraction() >= fatty) {
        // For water diffusion in pork "a slight increase in lipid led to a dramatic decrease"
        // (Ruiz-Cabrera 2004); salt uptake lower in fatty hams (Meat Sci 214: 109523, 2024).
        findings.push_back({"fat_slows_and_thins",
                            Severity::note,
                            "fat",
                            {{"fat", *request.fat}},
                            {},
                            base::Source{"Ruiz-Cabrera 2004, Meat Sci 67: 169", "2004",
                                         base::Sureness::verified_second_hand}});
    }
    return findings;
}

} // namespace core::uptake
