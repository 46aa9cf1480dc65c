#include "core/planning/dated_plan.h"

#include <algorithm>
#include <cmath>

namespace core::planning {
namespace {

using model::Finding;
using model::Severity;
using model::StageKind;
using units::Day;
using units::Duration;

/// Work starts in the morning: a 12 h stage begun then ends the same day, the next one tomorrow.
constexpr double morning = 9.0 / 24.0;

int civil_days(double offset) {
    constexpr double slip = 1e-6;
    return static_cast<int>(std::floor(morning + offset + slip));
}

bool dries(const model::StageTemplate& stage) {
    return stage.kind == StageKind::dry || stage.kind == StageKind::age ||
           stage.kind == StageKind::smoke;
}

std::vector<PieceSpec> filled(const PlanRequest& request, model::Findings& findings) {
    std::vector<PieceSpec> pieces;
    for (const auto& piece : request.pieces) {
        if (!piece.raw_weight) {
            findings.push_back({.code = "weight_assumed",
                                .place = piece.code,
                                .values = {{"weight", request.plan.usual_weight}}});
        }
        if (!piece.thickness) {
            findings.push_back(
                {.code = "thickness_assumed",
                 .place = piece.code,
                 .values = {{"thickness_mm", request.plan.usual_thickness.in_millimetres()}}});
        }
        pieces.push_back(with_usual(piece, request.plan));
    }
    if (pieces.empty()) {
        findings.push_back({.code = "no_pieces"});
        pieces.push_back(usual_piece(request.plan));
    }
    return pieces;
}

/// A day rule of one salting method used for another is the error to catch.
void check_rule_fits_method(const model::StageTemplate& stage, model::Findings& findings) {
    if (!stage.salting) {
        return;
    }
    for (const auto& end : stage.ends) {
        const bool per_kilogram = end.kind == model::EndCondition::Kind::days_per_kilogram;
        const bool per_cm = end.kind == model::EndCondition::Kind::days_per_cm;
        const bool weighed = *stage.salting == model::SaltingMethod::weighed;
        if ((per_kilogram && weighed) || (per_cm && !weighed)) {
            findings.push_back({.code = "rule_for_other_method",
                                .place = stage.name,
                                .source = base::common_practice()});
        }
    }
}

struct Position {
    double likely = 0; ///< days since the start of the plan
    double early = 0;  ///< sums of squares of the spreads, in days squared
    double late = 0;
};

class Dating {
  public:
    Dating(const PlanRequest& request, const LengthSources& sources)
        : request_(request), sources_(sources), plan_{.template_id = request.plan.id,
                                                      .start = request.start,
                                                      .stages = {},
                                                      .earliest_end = request.start,
                                                      .end = request.start,
                                                      .latest_end = request.start,
                                                      .findings = {}},
          pieces_(filled(request, plan_.findings)), usual_(usual_piece(request.plan)) {}

    DatedPlan run() {
        measure();
        for (const auto& minimum : request_.plan.minima) {
            lengthen_to(minimum);
        }
        place();
        return std::move(plan_);
    }

  private:
    /// A length needs its own start day only for an end on a date, so lengths come first.
    void measure() {
        Duration dried = Duration::days(0);
        double offset = 0;
        for (auto& stage : expand(request_.plan, request_.choices)) {
            const units::Day start = plan_.start + civil_days(offset);
            const StageLength length =
                stage_length({stage.what, pieces_, usual_, start, dried}, sources_);
            if (length.basis == LengthBasis::unknown) {
                plan_.findings.push_back({.code = "stage_length_unknown",
                                          .severity = Severity::caution,
                                          .place = stage.what.name});
            }
            if (stage.round == 1) {
                check_rule_fits_method(stage.what, plan_.findings);
            }
            dried += dries(stage.what) ? length.lasts.best : Duration::days(0);
            offset += length.lasts.best.in_days();
            const auto chamber = request_.choices.chambers.find(stage.what.name);
            plan_.stages.push_back({std::move(stage), length, start, start, start, start,
                                    chamber == request_.choices.chambers.end()
                                        ? std::nullopt
                                        : std::optional(chamber->second)});
        }
    }

    void lengthen_to(const model::PlanMinimum& minimum) {
        Duration counted = Duration::days(0);
        PlannedStage* last = nullptr;
        for (auto& stage : plan_.stages) {
            const auto& names = minimum.stages;
            if (names.empty() ||
                std::find(names.begin(), names.end(), stage.stage.what.name) != names.end()) {
                counted += stage.length.lasts.best;
                last = &stage;
            }
        }
        if (last == nullptr || counted >= minimum.at_least) {
            return;
        }
        const Duration missing = minimum.at_least - counted;
        auto& lasts = last->length.lasts;
        lasts = {lasts.low + missing, lasts.best + missing, lasts.high + missing};
        plan_.findings.push_back(
            {.code = "lengthened_to_minimum",
             .place = last->stage.what.name,
             .values = {{"minimum", minimum.code}, {"days", counted}, {"needed", minimum.at_least}},
             .source = minimum.source});
    }

    void place() {
        Position at;
        Day earliest = plan_.start;
        for (auto& stage : plan_.stages) {
            const auto& lasts = stage.length.lasts;
            stage.start = plan_.start + civil_days(at.likely);
            at.likely += lasts.best.in_days();
            at.early += std::pow((lasts.best - lasts.low).in_days(), 2);
            at.late += std::pow((lasts.high - lasts.best).in_days(), 2);
            stage.end = plan_.start + civil_days(at.likely);
            // Up for the late end; the early one not before the stage ahead could end.
            stage.latest_end = stage.end + static_cast<int>(std::ceil(std::sqrt(at.late) - 1e-6));
            earliest = std::max(
                earliest, stage.end - static_cast<int>(std::floor(std::sqrt(at.early) + 1e-6)));
            stage.earliest_end = earliest;
        }
        if (!plan_.stages.empty()) {
            plan_.earliest_end = plan_.stages.back().earliest_end;
            plan_.end = plan_.stages.back().end;
            plan_.latest_end = plan_.stages.back().latest_end;
        }
    }

    const PlanRequest& request_;
    const LengthSources& sources_;
    DatedPlan plan_;
    std::vector<PieceSpec> pieces_;
    PieceSpec usual_;
};

} // namespace

DatedPlan date_plan(const PlanRequest& request, const LengthSources& sources) {
    return Dating(request, sources).run();
}

std::vector<model::Stage> to_stages(const DatedPlan& plan) {
    std::vector<model::Stage> stages;
    int order = 0;
    for (const auto& planned : plan.stages) {
        model::StageTemplate what = planned.stage.what;
        what.repeats = 1; // the repeats are written out
        what.repeat_with_next = 0;
        what.repeats_at_least = 1;
        what.repeats_at_most = 1;
        stages.push_back({.id = {},
                          .batch = {},
                          .order = order++,
                          .what = std::move(what),
                          .planned_start = planned.start,
                          .planned_end = planned.end,
                          .started_at = {},
                          .ended_at = {},
                          .chamber = planned.chamber,
                          .end_reason = {}});
    }
    return stages;
}

} // namespace core::planning
