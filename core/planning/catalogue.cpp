#include "core/planning/catalogue.h"

#include "core/model/plan_document.h"

#include <algorithm>
#include <cassert>

namespace core::planning {
namespace {

using model::EndCondition;
using model::Severity;
using model::StageTemplate;

bool says_how_long(const StageTemplate& stage) {
    if (stage.typical) {
        return true;
    }
    using Kind = EndCondition::Kind;
    return std::any_of(stage.ends.begin(), stage.ends.end(), [](const EndCondition& end) {
        return end.kind == Kind::after || end.kind == Kind::days_per_kilogram ||
               end.kind == Kind::days_per_cm || end.kind == Kind::on_date;
    });
}

bool has_stage(const model::PlanTemplate& plan, const std::string& name) {
    return std::any_of(plan.stages.begin(), plan.stages.end(),
                       [&](const StageTemplate& stage) { return stage.name == name; });
}

void check_repeats(const model::PlanTemplate& plan, std::size_t i, model::Findings& findings) {
    const auto& stage = plan.stages[i];
    const auto with = static_cast<std::size_t>(std::max(0, stage.repeat_with_next));
    if (i + with >= plan.stages.size()) {
        findings.push_back(
            {.code = "repeat_past_end", .severity = Severity::stop, .place = stage.name});
        return;
    }
    if (stage.repeats < 1 || stage.repeats_at_least > stage.repeats ||
        stage.repeats_at_most < stage.repeats) {
        findings.push_back(
            {.code = "repeats_out_of_bounds", .severity = Severity::stop, .place = stage.name});
    }
    for (std::size_t j = i + 1; j <= i + with; ++j) {
        if (plan.stages[j].repeats != 1 || plan.stages[j].repeat_with_next != 0) {
            findings.push_back({.code = "repeats_overlap",
                                .severity = Severity::stop,
                                .place = plan.stages[j].name});
        }
    }
}

} // namespace

tl::expected<Catalogue, std::vector<base::Error>>
Catalogue::read(std::span<const base::EmbeddedFile> files) {
    Catalogue catalogue;
    std::vector<base::Error> faults;
    for (const auto& file : files) {
        auto plan = model::read_plan_template(file.text);
        if (!plan) {
            for (auto& fault : plan.error()) {
                fault.where =
                    std::string(file.name) + (fault.where.empty() ? "" : ": ") + fault.where;
                faults.push_back(std::move(fault));
            }
            continue;
        }
        if (catalogue.find(plan->id) != nullptr) {
            faults.push_back({base::ErrorCode::conflict, plan->id, std::string(file.name)});
            continue;
        }
        catalogue.templates_.push_back(std::move(*plan));
    }
    if (!faults.empty()) {
        return tl::unexpected(std::move(faults));
    }
    return catalogue;
}

Catalogue Catalogue::built_in() {
    auto catalogue = read(built_in_plan_files());
    assert(catalogue.has_value());
    return catalogue.has_value() ? *std::move(catalogue) : Catalogue{};
}

const model::PlanTemplate* Catalogue::find(std::string_view id) const& {
    const auto found = std::find_if(templates_.begin(), templates_.end(),
                                    [&](const model::PlanTemplate& plan) { return plan.id == id; });
    return found == templates_.end() ? nullptr : &*found;
}

std::vector<std::string> Catalogue::families() const {
    std::vector<std::string> families;
    for (const auto& plan : templates_) {
        if (std::find(families.begin(), families.end(), plan.family) == families.end()) {
            families.push_back(plan.family);
        }
    }
    return families;
}

model::Findings check_template(const model::PlanTemplate& plan) {
    model::Findings findings;
    bool salts = false;
    for (std::size_t i = 0; i < plan.stages.size(); ++i) {
        const auto& stage = plan.stages[i];
        salts = salts || stage.kind == model::StageKind::salt ||
                stage.kind == model::StageKind::marinate;
        if (!says_how_long(stage)) {
            findings.push_back(
                {.code = "stage_without_length", .severity = Severity::stop, .place = stage.name});
        }
        check_repeats(plan, i, findings);
        if (!stage.same_room_as.empty() && !has_stage(plan, stage.same_room_as)) {
            findings.push_back(
                {.code = "same_room_unknown", .severity = Severity::caution, .place = stage.name});
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (plan.stages[j].name == stage.name) {
                findings.push_back({.code = "duplicate_stage_name",
                                    .severity = Severity::caution,
                                    .place = stage.name});
                break;
            }
        }
    }
    for (const auto& minimum : plan.minima) {
        for (const auto& name : minimum.stages) {
            if (!has_stage(plan, name)) {
                findings.push_back(
                    {.code = "minimum_names_no_stage", .severity = Severity::stop, .place = name});
            }
        }
    }
    if (!salts) {
        findings.push_back({.code = "no_salt_stage"});
    }
    return findings;
}

} // namespace core::planning
