// The stages of a plan, and the day rules beside its cure, in words.
#include "core/uptake/cure_time.h"
#include "core/uptake/day_rules.h"
#include "ui/presenters/plan_draft.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/plan_words.h"
#include "ui/text/quantity_words.h"

#include <algorithm>
#include <cmath>

namespace ui::presenters {
namespace {

using core::model::Band;
using core::planning::PlannedStage;

QString number(double value, const text::Style& style) {
    const double tenths = std::round(value * 10) / 10;
    return text::number_words(tenths, style, std::abs(tenths - std::round(tenths)) < 1e-9 ? 0 : 1);
}

QString span_words(double low, double high, const text::Style& style) {
    const QString from = number(low, style);
    const QString to = number(high, style);
    return from == to ? from : PlanDraft::tr("%1\u2013%2").arg(from, to);
}

QString range_words(core::units::Temperature low, core::units::Temperature high,
                    const text::Style& style) {
    const bool fahrenheit = style.temperature == text::TemperatureStyle::fahrenheit;
    const auto degrees = [&](core::units::Temperature t) {
        return fahrenheit ? t.in_fahrenheit() : t.in_celsius();
    };
    return span_words(degrees(low), degrees(high), style) + QLatin1Char(' ') +
           text::temperature_unit_name(style);
}

QString range_words(core::units::RelativeHumidity low, core::units::RelativeHumidity high,
                    const text::Style& style) {
    return PlanDraft::tr("%1 % RH").arg(span_words(low.in_percent(), high.in_percent(), style));
}

template <class Q>
QString band_words(const Band<Q>& band, const text::Style& style) {
    QString start = range_words(band.low_at_start, band.high_at_start, style);
    if (band.low_at_start == band.low_at_end && band.high_at_start == band.high_at_end) {
        return start;
    }
    //: a band that changes over the stage: from %1, in the end %2
    return PlanDraft::tr("%1, in the end %2")
        .arg(start, range_words(band.low_at_end, band.high_at_end, style));
}

QString air_words(const core::model::StageTemplate& stage, const text::Style& style) {
    QStringList parts;
    if (stage.temperature) {
        parts << band_words(*stage.temperature, style);
    }
    if (stage.humidity) {
        parts << band_words(*stage.humidity, style);
    }
    if (stage.humidity_pulse) {
        const auto& pulse = *stage.humidity_pulse;
        parts << PlanDraft::tr("%1 for %2 in every %3")
                     .arg(range_words(pulse.low, pulse.high, style),
                          text::words(pulse.lasting, style), text::words(pulse.every, style));
    }
    if (stage.temperature_pulse) {
        const auto& pulse = *stage.temperature_pulse;
        parts << PlanDraft::tr("%1 for %2 in every %3")
                     .arg(range_words(pulse.low, pulse.high, style),
                          text::words(pulse.lasting, style), text::words(pulse.every, style));
    }
    return parts.join(QStringLiteral("; "));
}

QString work_words(const core::model::StageTemplate& stage, const text::Style& style) {
    QStringList parts;
    for (const auto& routine : stage.routines) {
        if (routine.every) {
            const double days = routine.every->in_days();
            const bool daily = std::abs(days - 1) < 1e-9;
            parts << (daily      ? PlanDraft::tr("%1 every day").arg(text::task_words(routine.verb))
                      : days < 1 ? PlanDraft::tr("%1 every %2")
                                       .arg(text::task_words(routine.verb),
                                            text::words(*routine.every, style))
                                 : PlanDraft::tr("%1 every %n day(s)", nullptr,
                                                 static_cast<int>(std::lround(days)))
                                       .arg(text::task_words(routine.verb)));
        }
        if (!routine.at.empty()) {
            QStringList days;
            for (const auto& at : routine.at) {
                days << text::number_words(at.in_days(), style, 0);
            }
            parts << PlanDraft::tr("%1 on day %2")
                         .arg(text::task_words(routine.verb), days.join(PlanDraft::tr(" and ")));
        }
    }
    return parts.join(QStringLiteral("; "));
}

core::uptake::CureMethod method_of(core::model::SaltingMethod method) {
    switch (method) {
    case core::model::SaltingMethod::weighed:
        return core::uptake::CureMethod::weighed;
    case core::model::SaltingMethod::excess:
        return core::uptake::CureMethod::excess_salt;
    case core::model::SaltingMethod::brine:
        return core::uptake::CureMethod::immersion;
    }
    return core::uptake::CureMethod::weighed;
}

QString per_words(core::uptake::DayRule::Per per) {
    using Per = core::uptake::DayRule::Per;
    switch (per) {
    case Per::nothing:
        return {};
    case Per::inch:
        return PlanDraft::tr("inch");
    case Per::centimetre:
        return PlanDraft::tr("cm");
    case Per::kilogram:
        return PlanDraft::tr("kg");
    case Per::pound:
        return PlanDraft::tr("lb");
    }
    return {};
}

/// "1 days per cm plus 2: 10 days".
QString rule_words(const core::uptake::RuleDays& days, const text::Style& style) {
    const auto& rule = *days.rule;
    QString result = PlanDraft::tr("%1 days").arg(span_words(
        std::ceil(days.low.in_days() - 1e-6), std::ceil(days.high.in_days() - 1e-6), style));
    if (rule.per == core::uptake::DayRule::Per::nothing) {
        return result;
    }
    const QString each = PlanDraft::tr("%1 days per %2")
                             .arg(span_words(rule.low, rule.high, style), per_words(rule.per));
    return rule.constant_high > 0
               ? PlanDraft::tr("%1 plus %2: %3")
                     .arg(each, span_words(rule.constant_low, rule.constant_high, style), result)
               : PlanDraft::tr("%1: %2").arg(each, result);
}

} // namespace

StepLine PlanDraft::step_of(const PlannedStage& planned) const {
    const auto& style = workspace_.style();
    const auto& what = planned.stage.what;
    StepLine line{.name = QString::fromStdString(what.name),
                  .kind = what.kind,
                  .start = planned.start,
                  .end = planned.end};
    line.length = text::length_words(planned.length.lasts, style);
    line.basis = text::basis_words(planned.length.basis);
    line.air = air_words(what, style);
    line.work = work_words(what, style);
    line.note = text::data_name(what.note);
    line.optional = what.optional;
    line.rounds = planned.stage.rounds;
    line.rounds_least = what.repeats_at_least;
    line.rounds_most = what.repeats_at_most;
    return line;
}

void PlanDraft::write_steps(const core::planning::DatedPlan& plan) {
    const auto& style = workspace_.style();
    std::size_t next = 0; // template index up to which skipped stages were listed
    const auto list_skipped = [&](std::size_t until, core::units::Day day) {
        for (; next < until; ++next) {
            const auto& stage = chosen().stages[next];
            if (skipped_.contains(QString::fromStdString(stage.name))) {
                StepLine line{.name = QString::fromStdString(stage.name),
                              .kind = stage.kind,
                              .start = day,
                              .end = day};
                line.days = tr("left out");
                line.optional = true;
                line.skipped = true;
                steps_.push_back(std::move(line));
            }
        }
    };
    for (const auto& planned : plan.stages) {
        list_skipped(planned.stage.template_index, planned.start);
        next = std::max(next, planned.stage.template_index + 1);
        const QString name = QString::fromStdString(planned.stage.what.name);
        const auto same = std::find_if(steps_.begin(), steps_.end(), [&](const StepLine& line) {
            return line.name == name && planned.stage.round > 1;
        });
        if (same != steps_.end()) { // a further round of a line that is there
            same->end = planned.end;
            continue;
        }
        steps_.push_back(step_of(planned));
    }
    list_skipped(chosen().stages.size(), plan.end);
    for (auto& line : steps_) {
        if (!line.skipped) {
            line.days = text::range_words(line.start, line.end, style);
        }
        if (line.rounds > 1) {
            line.length = tr("%n round(s) of %1", nullptr, line.rounds).arg(line.length);
        }
    }
}

void PlanDraft::write_cure_rules() {
    cure_rules_.clear();
    const auto& style = workspace_.style();
    const auto& stages = chosen().stages;
    const auto salt = std::find_if(stages.begin(), stages.end(),
                                   [](const auto& stage) { return stage.salting.has_value(); });
    if (salt == stages.end()) {
        return;
    }
    const DraftPiece* thickest = nullptr;
    for (const auto& piece : pieces_) {
        if (piece.thickness && (thickest == nullptr || *piece.thickness > *thickest->thickness)) {
            thickest = &piece;
        }
    }
    const auto thickness = thickest != nullptr ? *thickest->thickness : chosen().usual_thickness;
    const auto weight =
        thickest != nullptr && thickest->weight ? *thickest->weight : chosen().usual_weight;
    const auto method = method_of(*salt->salting);
    for (const auto& days : core::uptake::rules_side_by_side(method, thickness, weight)) {
        if (days.same_method) {
            cure_rules_ << tr("%1 (%2)").arg(rule_words(days, style),
                                             text::source_words(days.rule->source));
        }
    }
    const auto estimate = core::uptake::estimate_cure(
        {.form = thickest != nullptr ? thickest->form : chosen().usual_form,
         .thickness = thickness,
         .method = method,
         .weight = weight});
    if (estimate.even) {
        cure_rules_ << tr("By diffusion the centre has come close to the rest after %1.")
                           .arg(text::length_words(*estimate.even, style));
    }
}

} // namespace ui::presenters
