#include "core/planning/redate.h"

#include "core/planning/stage_length.h"

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using model::Stage;
using units::Day;
using units::Duration;

std::optional<Day> fixed_end_day(const Stage& stage) {
    for (const auto& end : stage.what.ends) {
        if (end.kind == model::EndCondition::Kind::on_date) {
            return end.date;
        }
    }
    return std::nullopt;
}

Day running_end(const Stage& stage, const StageProgress& progress, Day start, Day today) {
    if (const auto known = progress.expected_end.find(stage.id);
        known != progress.expected_end.end()) {
        return std::max(known->second, today);
    }
    Day end = start + (stage.planned_end - stage.planned_start);
    if (const auto paused = progress.paused.find(stage.id); paused != progress.paused.end()) {
        end = end + static_cast<int>(std::ceil(paused->second.in_days() - 1e-6));
    }
    if (const auto date = fixed_end_day(stage)) {
        end = std::max(start, *date);
    }
    return std::max(end, today);
}

} // namespace

std::vector<Stage> redate(std::vector<Stage> stages, const StageProgress& progress, Day today,
                          const units::Zone& zone) {
    std::stable_sort(stages.begin(), stages.end(),
                     [](const Stage& a, const Stage& b) { return a.order < b.order; });
    std::optional<Day> previous_end; // where the chain has come to
    std::optional<Day> planned_previous_end;
    for (auto& stage : stages) {
        const Day was_start = stage.planned_start;
        const Day was_end = stage.planned_end;
        if (stage.ended_at) {
            previous_end = std::max(previous_end.value_or(zone.day_of(*stage.ended_at)),
                                    zone.day_of(*stage.ended_at));
        } else if (stage.started_at) {
            const Day start = zone.day_of(*stage.started_at);
            stage.planned_end = running_end(stage, progress, start, today);
            stage.planned_start = std::min(stage.planned_start, stage.planned_end);
            previous_end = std::max(previous_end.value_or(stage.planned_end), stage.planned_end);
        } else {
            // A gap that was planned between two stages stays a gap.
            const int gap =
                planned_previous_end ? std::max(0, was_start - *planned_previous_end) : 0;
            const Day follows = previous_end ? *previous_end + gap : was_start;
            stage.planned_start = std::max(follows, today);
            stage.planned_end = stage.planned_start + (was_end - was_start);
            if (const auto date = fixed_end_day(stage)) {
                stage.planned_end = std::max(stage.planned_start, *date);
            }
            previous_end = stage.planned_end;
        }
        planned_previous_end = was_end;
    }
    return stages;
}

std::vector<StageDeviation> deviations(const std::vector<Stage>& stages, const units::Zone& zone) {
    std::vector<StageDeviation> out;
    for (const auto& stage : stages) {
        if (!stage.started_at || !stage.ended_at || stage.end_reason == "skipped") {
            continue;
        }
        const Day start = zone.day_of(*stage.started_at);
        const int lasted = zone.day_of(*stage.ended_at) - start;
        out.push_back({stage.id, start - stage.planned_start,
                       lasted - (stage.planned_end - stage.planned_start)});
    }
    return out;
}

model::Findings check_cure_lengths(const std::vector<Stage>& stages,
                                   const std::vector<PieceSpec>& pieces, const units::Zone& zone) {
    model::Findings findings;
    for (const auto& stage : stages) {
        const auto kind = stage.what.kind;
        const bool cures = kind == model::StageKind::salt || kind == model::StageKind::equalise ||
                           kind == model::StageKind::marinate || kind == model::StageKind::rest;
        const bool measured = std::all_of(pieces.begin(), pieces.end(), [](const PieceSpec& piece) {
            return piece.thickness.has_value() && piece.raw_weight.has_value();
        });
        if (!cures || pieces.empty() || !measured || stage.end_reason == "skipped") {
            continue;
        }
        const Day start = stage.started_at ? zone.day_of(*stage.started_at) : stage.planned_start;
        const StageLength needed = stage_length(
            {stage.what, pieces, pieces.front(), start, Duration::days(0)}, LengthSources{});
        const bool by_rule = needed.basis == LengthBasis::fixed ||
                             needed.basis == LengthBasis::weight_rule ||
                             needed.basis == LengthBasis::thickness_rule;
        const Duration lasts = stage.started_at && stage.ended_at
                                   ? *stage.ended_at - *stage.started_at
                                   : Duration::days(stage.planned_end - start);
        // Under a day the calendar cannot say; half a day of grace covers the hour of the work.
        if (!by_rule || needed.lasts.best < Duration::days(1) ||
            lasts >= needed.lasts.best - Duration::hours(12)) {
            continue;
        }
        findings.push_back({.code = "cure_too_short",
                            .severity = model::Severity::stop,
                            .place = stage.what.name,
                            .values = {{"days", lasts}, {"needed", needed.lasts.best}}});
    }
    return findings;
}

} // namespace core::planning
