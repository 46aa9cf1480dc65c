#include "core/model/plan_document.h"
#include "core/model/plan_document_names.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace core::model {
namespace {

using json = nlohmann::ordered_json;

/// Unit doors multiply and divide: 2 d / 86400 s * 86400 may miss 2 by one bit. Nine digits keep
/// a document's numbers as they were typed.
double tidy(double value) {
    constexpr double grain = 1e9;
    return std::round(value * grain) / grain;
}

double number_of(units::Temperature t) {
    return tidy(t.in_celsius());
}
double number_of(units::RelativeHumidity h) {
    return tidy(h.in_percent());
}

template <class Q>
json write_band(const Band<Q>& band) {
    json out{{"low", number_of(band.low_at_start)}, {"high", number_of(band.high_at_start)}};
    if (band.low_at_end != band.low_at_start || band.high_at_end != band.high_at_start) {
        out["low_at_end"] = number_of(band.low_at_end);
        out["high_at_end"] = number_of(band.high_at_end);
    }
    return out;
}

template <class Q>
json write_pulse(const Pulse<Q>& pulse) {
    return {{"low", number_of(pulse.low)},
            {"high", number_of(pulse.high)},
            {"every_hours", tidy(pulse.every.in_hours())},
            {"lasting_hours", tidy(pulse.lasting.in_hours())}};
}

json write_end(const EndCondition& end) {
    json out{{"kind", name_of(end.kind)}};
    if (end.days_per_unit) {
        out["days_per_unit"] = *end.days_per_unit;
    }
    if (end.time) {
        out["days"] = tidy(end.time->in_days());
    }
    if (end.loss) {
        out["loss_percent"] = tidy(end.loss->in_percent());
    }
    if (end.reference) {
        out["reference"] = names::name_in(names::references, *end.reference);
    }
    if (end.date) {
        const auto date = end.date->date();
        out["date"] =
            fmt::format("{:04}-{:02}-{:02}", static_cast<int>(date.year()),
                        static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
    }
    if (!end.text.empty()) {
        out["text"] = end.text;
    }
    return out;
}

json write_routine(const Routine& routine) {
    json out{{"verb", routine.verb}};
    if (routine.every) {
        out["every_days"] = tidy(routine.every->in_days());
    }
    if (routine.first_after) {
        out["first_after_days"] = tidy(routine.first_after->in_days());
    }
    for (const auto& at : routine.at) {
        out["at_days"].push_back(tidy(at.in_days()));
    }
    return out;
}

void write_bands(json& out, const StageTemplate& stage) {
    if (stage.temperature) {
        out["temperature_c"] = write_band(*stage.temperature);
    }
    if (stage.humidity) {
        out["humidity_percent"] = write_band(*stage.humidity);
    }
    if (stage.temperature_pulse) {
        out["temperature_pulse"] = write_pulse(*stage.temperature_pulse);
    }
    if (stage.humidity_pulse) {
        out["humidity_pulse"] = write_pulse(*stage.humidity_pulse);
    }
}

void write_repeats(json& out, const StageTemplate& stage) {
    if (stage.repeats != 1) {
        out["repeats"] = stage.repeats;
    }
    if (stage.repeat_with_next != 0) {
        out["repeat_with_next"] = stage.repeat_with_next;
    }
    if (stage.repeats_at_least != stage.repeats) {
        out["repeats_at_least"] = stage.repeats_at_least;
    }
    if (stage.repeats_at_most != stage.repeats) {
        out["repeats_at_most"] = stage.repeats_at_most;
    }
}

json write_stage(const StageTemplate& stage) {
    json out{{"name", stage.name}, {"kind", name_of(stage.kind)}};
    if (stage.salting) {
        out["salting"] = name_of(*stage.salting);
    }
    write_bands(out, stage);
    for (const auto& end : stage.ends) {
        out["ends"].push_back(write_end(end));
    }
    if (stage.ends_by_all) {
        out["ends_by_all"] = true;
    }
    if (stage.typical) {
        out["typical_days"] = {tidy(stage.typical->low.in_days()),
                               tidy(stage.typical->best.in_days()),
                               tidy(stage.typical->high.in_days())};
    }
    for (const auto& routine : stage.routines) {
        out["routines"].push_back(write_routine(routine));
    }
    if (stage.weight != WeightEffect::keeps) {
        out["weight"] = name_of(stage.weight);
    }
    write_repeats(out, stage);
    if (stage.optional) {
        out["optional"] = true;
    }
    if (!stage.pauses_when_frozen) {
        out["pauses_when_frozen"] = false;
    }
    if (stage.pauses_out_of_band) {
        out["pauses_out_of_band"] = true;
    }
    if (!stage.same_room_as.empty()) {
        out["same_room_as"] = stage.same_room_as;
    }
    if (!stage.note.empty()) {
        out["note"] = stage.note;
    }
    return out;
}

json write_minimum(const PlanMinimum& minimum) {
    json out{{"code", minimum.code}};
    for (const auto& stage : minimum.stages) {
        out["stages"].push_back(stage);
    }
    out["days"] = tidy(minimum.at_least.in_days());
    out["source"] = minimum.source.title;
    if (!minimum.source.edition.empty()) {
        out["edition"] = minimum.source.edition;
    }
    out["sureness"] = names::name_in(names::surenesses, minimum.source.sureness);
    return out;
}

} // namespace

std::string_view name_of(StageKind kind) {
    return names::name_in(names::stage_kinds, kind);
}
std::string_view name_of(EndCondition::Kind kind) {
    return names::name_in(names::end_kinds, kind);
}
std::string_view name_of(SaltingMethod method) {
    return names::name_in(names::salting_methods, method);
}
std::string_view name_of(WeightEffect effect) {
    return names::name_in(names::weight_effects, effect);
}

std::string write_stage_template(const StageTemplate& stage) {
    return write_stage(stage).dump();
}

std::string write_plan_template(const PlanTemplate& plan) {
    json out{{"id", plan.id}, {"name", plan.name}, {"family", plan.family}};
    if (!plan.species.empty()) {
        out["species"] = plan.species;
    }
    out["usual_weight_kg"] = tidy(plan.usual_weight.in_kilograms());
    out["usual_thickness_mm"] = tidy(plan.usual_thickness.in_millimetres());
    out["usual_form"] = names::name_in(names::forms, plan.usual_form);
    if (plan.usual_target) {
        out["usual_loss_percent"] = tidy(plan.usual_target->loss.in_percent());
        out["usual_loss_from"] = names::name_in(names::references, plan.usual_target->reference);
    }
    out["source"] = plan.source;
    out["sureness"] = names::name_in(names::surenesses, plan.sureness);
    for (const auto& stage : plan.stages) {
        out["stages"].push_back(write_stage(stage));
    }
    for (const auto& minimum : plan.minima) {
        out["minima"].push_back(write_minimum(minimum));
    }
    return out.dump();
}

} // namespace core::model
