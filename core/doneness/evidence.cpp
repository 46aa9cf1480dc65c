#include "core/doneness/evidence.h"

#include "core/doneness/composition.h"
#include "core/doneness/conflicts.h"
#include "core/doneness/hurdle_checks.h"
#include "core/doneness/rates.h"

#include <algorithm>

namespace core::doneness {

namespace {

constexpr Sense all_senses[] = {Sense::feel_outside, Sense::feel_centre, Sense::smell,
                                Sense::cut_face, Sense::mould};

std::vector<StageTime> stage_times(const EvidenceRequest& request) {
    std::vector<StageTime> times;
    for (const auto& stage : request.stages) {
        times.push_back({stage, stage.to.value_or(request.now) - stage.from});
    }
    return times;
}

std::optional<units::Duration> since_hung(const EvidenceRequest& request) {
    for (const auto& stage : request.stages) {
        if (stage.kind == model::StageKind::dry) {
            return request.now - stage.from;
        }
    }
    if (request.references.hung && !request.weights.empty()) {
        return request.now - request.weights.front().at;
    }
    return std::nullopt;
}

/// Stages with a temperature log, as exposure. Raw meat was wet; how dry it was on the way is not
/// known, so only the stage that still runs is given today's water activity.
std::vector<WarmSpell> spells_of(const EvidenceSheet& sheet) {
    std::vector<WarmSpell> spells;
    for (const auto& time : sheet.stages) {
        if (!time.stage.temperature) {
            continue;
        }
        WarmSpell spell{time.lasted, time.stage.temperature->best, {}};
        if (!time.stage.to && sheet.measured.water_activity) {
            spell.activity =
                base::Interval<units::WaterActivity>::exactly(*sheet.measured.water_activity);
        }
        spells.push_back(spell);
    }
    return spells;
}

std::vector<std::string> missing_from(const EvidenceRequest& request) {
    std::vector<std::string> missing;
    const auto note = [&missing](bool known, const char* what) {
        if (!known) {
            missing.emplace_back(what);
        }
    };
    note(request.weights.size() >= 2, "weights");
    note(request.references.raw || request.references.trimmed, "start_weight");
    note(request.salt_dose || request.measured.salt, "salt");
    note(request.thickness.has_value(), "thickness");
    note(request.fat.has_value(), "fat");
    const auto logged = [&](auto member) {
        return std::any_of(request.stages.begin(), request.stages.end(),
                           [&](const StageRecord& s) { return (s.*member).has_value(); });
    };
    note(logged(&StageRecord::temperature), "temperature_log");
    note(logged(&StageRecord::humidity), "humidity_log");
    note(request.measured.water_activity.has_value(), "water_activity_measurement");
    return missing;
}

bool in_order(const std::vector<NetWeight>& weights) {
    return std::is_sorted(weights.begin(), weights.end(),
                          [](const auto& a, const auto& b) { return a.at < b.at; });
}

void fill_figures(const EvidenceRequest& request, const facts::Hurdles& hurdles,
                  EvidenceSheet& sheet) {
    sheet.losses = losses_of(request);
    for (const auto& loss : sheet.losses) {
        if (loss.is_target_reference) {
            sheet.short_of_target = request.target->loss - loss.loss;
        }
    }
    sheet.rates = rates_of(request);
    sheet.composition = composition_of(request);
    sheet.hurdles = hurdle_checks(sheet, hurdles);
    sheet.exposure = exposure_of(spells_of(sheet), hurdles);
    auto conflicts = conflicts_in(request, sheet);
    sheet.findings.insert(sheet.findings.end(), conflicts.begin(), conflicts.end());
}

} // namespace

EvidenceSheet evidence_of(const EvidenceRequest& given, const facts::Hurdles& hurdles) {
    EvidenceRequest request = given;
    EvidenceSheet sheet;
    sheet.target = request.target;
    sheet.measured = request.measured;
    sheet.senses = request.senses;
    sheet.stages = stage_times(request);
    sheet.since_hung = since_hung(request);
    sheet.missing = missing_from(request);
    for (const auto sense : all_senses) {
        if (std::none_of(request.senses.begin(), request.senses.end(),
                         [sense](const auto& note) { return note.sense == sense; })) {
            sheet.not_looked_at.push_back(sense);
        }
    }
    sheet.findings = impossible_input(request);
    if (!sheet.findings.empty()) {
        return sheet;
    }
    if (!in_order(request.weights)) {
        std::stable_sort(request.weights.begin(), request.weights.end(),
                         [](const auto& a, const auto& b) { return a.at < b.at; });
        sheet.findings.push_back(
            {"weights_out_of_order", model::Severity::note, "weights", {}, {}, {}});
    }
    fill_figures(request, hurdles, sheet);
    return sheet;
}

} // namespace core::doneness
