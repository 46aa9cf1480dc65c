#include "core/doneness/conflicts.h"

#include "core/doneness/composition.h"
#include "core/doneness/rates.h"

namespace core::doneness {

namespace {

using model::Finding;
using model::Findings;
using model::Severity;
using units::MassShare;

constexpr MassShare fast_per_day = MassShare::percent(1.2);
constexpr MassShare flat_per_day = MassShare::percent(0.1);
constexpr units::Length thin = units::Length::millimetres(30); // evens out within days
constexpr MassShare fatty = MassShare::percent(30);
constexpr MassShare usual_least_loss = MassShare::percent(30); // of lean whole muscle

const LossOnReference* target_loss(const EvidenceSheet& sheet) {
    for (const auto& loss : sheet.losses) {
        if (loss.is_target_reference) {
            return &loss;
        }
    }
    return nullptr;
}

bool at_target(const EvidenceSheet& sheet) {
    return sheet.short_of_target && *sheet.short_of_target <= MassShare::fraction(0);
}

/// Target reached, but the way there or the centre speaks against it.
void look_at_reached(const EvidenceRequest& request, const EvidenceSheet& sheet,
                     Findings& findings) {
    const auto* loss = target_loss(sheet);
    if (loss == nullptr || !at_target(sheet)) {
        return;
    }
    const auto way = way_to_loss(request.weights, loss->start, request.target->loss);
    const bool thick = !request.thickness || *request.thickness >= thin;
    if (way && thick && way->per_day > fast_per_day) {
        findings.push_back({"target_reached_fast",
                            Severity::caution,
                            "rates",
                            {{"loss", loss->loss},
                             {"per_day", way->per_day},
                             {"usual_most", fast_per_day},
                             {"took", way->took}},
                            {},
                            base::common_practice()});
    }
    if (request.centre == CentreFeel::soft) {
        findings.push_back({"target_reached_soft_centre",
                            Severity::caution,
                            "senses",
                            {{"loss", loss->loss}},
                            {},
                            base::common_practice()});
    }
}

/// Not at the target, and hardly losing any more.
void look_at_flat(const EvidenceRequest& request, const EvidenceSheet& sheet, Findings& findings) {
    if (!sheet.rates || !sheet.rates->last_weeks || at_target(sheet) || sheet.losses.empty() ||
        *sheet.rates->last_weeks >= flat_per_day) {
        return;
    }
    const auto* own = target_loss(sheet);
    const auto loss = own != nullptr ? own->loss : sheet.losses.back().loss;
    Finding finding{"",      Severity::caution,
                    "rates", {{"loss", loss}, {"per_day", *sheet.rates->last_weeks}},
                    {},      base::common_practice()};
    if (request.target) {
        finding.values["target"] = request.target->loss;
    }
    if (request.centre == CentreFeel::soft) {
        finding.code = "flat_soft_centre"; // a dry rim may hold the water in
    } else if (request.fat && *request.fat >= fatty) {
        finding.code = "flat_fatty"; // fat holds little water: there may be no more to lose
        finding.severity = Severity::note;
        finding.values["fat"] = *request.fat;
        if (sheet.composition) {
            finding.values["lean_moisture"] = sheet.composition->lean_moisture.best;
        }
    } else if (request.target || loss < usual_least_loss) {
        finding.code = "flat_lean_ask_humidity"; // lean meat stops where the air stops it
        if (request.chamber_humidity) {
            finding.values["humidity"] = *request.chamber_humidity;
        }
    } else {
        return;
    }
    findings.push_back(std::move(finding));
}

void look_at_estimates(const EvidenceRequest& request, const EvidenceSheet& sheet,
                       Findings& findings) {
    const auto start = start_weight_of(request.references);
    if (start && !request.weights.empty() && !sheet.composition) {
        findings.push_back({"weights_contradict",
                            Severity::caution,
                            "weights",
                            {{"start", start->mass}, {"net", request.weights.back().net}},
                            {},
                            {}});
    }
    if (!sheet.composition) {
        return;
    }
    if (sheet.composition->start_weight_estimated) {
        findings.push_back({"start_weight_estimated",
                            Severity::note,
                            "weights",
                            {{"start", start->mass}},
                            {},
                            {}});
    }
    if (request.excess_salt && !request.measured.salt) {
        findings.push_back({"salt_dose_of_excess_cure",
                            Severity::caution,
                            "salt",
                            {},
                            {},
                            base::common_practice()});
    }
    const auto& estimate = sheet.composition->water_activity;
    const auto& measured = request.measured.water_activity;
    if (estimate && !measured) {
        findings.push_back(
            {"estimate_is_no_measurement",
             Severity::note,
             "water_activity",
             {{"low", estimate->low.as_fraction()}, {"high", estimate->high.as_fraction()}},
             {},
             {}});
    }
    if (estimate && measured && (*measured < estimate->low || *measured > estimate->high)) {
        findings.push_back({"measured_activity_off_estimate",
                            Severity::caution,
                            "water_activity",
                            {{"measured", measured->as_fraction()},
                             {"low", estimate->low.as_fraction()},
                             {"high", estimate->high.as_fraction()}},
                            {},
                            {}});
    }
}

} // namespace

Findings conflicts_in(const EvidenceRequest& request, const EvidenceSheet& sheet) {
    Findings findings;
    look_at_reached(request, sheet, findings);
    look_at_flat(request, sheet, findings);
    look_at_estimates(request, sheet, findings);
    if (request.forecast && request.forecast->state == model::ForecastState::not_reachable) {
        Finding finding{"target_not_reachable", Severity::caution, "forecast", {}, {}, {}};
        if (request.forecast->levels_off) {
            finding.values["levels_off"] = request.forecast->levels_off->best;
        }
        if (request.target) {
            finding.values["target"] = request.target->loss;
        }
        findings.push_back(std::move(finding));
    }
    const auto* loss = target_loss(sheet);
    if (loss != nullptr && loss->loss < MassShare::fraction(0)) {
        findings.push_back({"heavier_than_start",
                            Severity::caution,
                            "weights",
                            {{"start", loss->start}, {"net", request.weights.back().net}},
                            {},
                            {}});
    }
    return findings;
}

Findings impossible_input(const EvidenceRequest& request) {
    Findings findings;
    const auto check = [&findings](bool fine, const char* place) {
        if (!fine) {
            findings.push_back({"evidence_out_of_range", Severity::stop, place, {}, {}, {}});
        }
    };
    const auto within = [](const std::optional<MassShare>& share, double low, double high) {
        return !share || (share->as_fraction() >= low && share->as_fraction() <= high);
    };
    check(within(request.fat, 0, 0.95), "fat");
    check(within(request.salt_dose, 0, 0.5), "salt_dose");
    check(within(request.measured.moisture, 0.01, 0.9), "measured.moisture");
    check(within(request.measured.salt, 0, 0.5), "measured.salt");
    const auto& activity = request.measured.water_activity;
    check(!activity || (activity->as_fraction() > 0 && activity->as_fraction() <= 1),
          "measured.water_activity");
    check(!request.measured.ph || (*request.measured.ph > 0 && *request.measured.ph < 14),
          "measured.ph");
    check(!request.target ||
              (request.target->loss.as_fraction() > 0 && request.target->loss.as_fraction() < 0.9),
          "target");
    for (const auto& weight : request.weights) {
        check(weight.net > units::Mass::grams(0) && weight.net.is_finite(), "weights");
    }
    return findings;
}

} // namespace core::doneness
