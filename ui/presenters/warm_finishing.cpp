#include "ui/presenters/warm_finishing.h"

#include "ui/presenters/hurdle_facts.h"
#include "ui/presenters/review.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

namespace ui::presenters {
namespace {

struct WarmWords {
    Q_DECLARE_TR_FUNCTIONS(WarmWords)
};

using core::doneness::WarmFinish;
using core::units::Duration;

} // namespace

WarmStart warm_start(const core::services::Book& book, const PieceLine& line,
                     core::units::Instant now) {
    const auto& piece = line.piece();
    WarmStart start{.form = piece.form, .skin = piece.skin, .thickness = piece.thickness};
    const auto sheet = evidence_for(book, line, {}, now);
    auto reference = core::model::ReferenceWeight::hung;
    if (line.towards_target) {
        start.loss_now = line.towards_target->loss;
        start.wanted = piece.target->loss;
        reference = line.towards_target->reference;
    } else if (!line.losses.empty()) {
        start.loss_now = line.losses.back().loss;
        reference = line.losses.back().reference;
    }
    if (sheet.composition) {
        start.water_now = sheet.composition->water.best;
        start.activity = sheet.composition->water_activity;
    }
    if (sheet.rates && sheet.rates->reference == reference) {
        start.rate_per_day = sheet.rates->last_weeks;
    }
    if (line.forecast && line.forecast->levels_off && line.towards_target) {
        start.levels_off = line.forecast->levels_off->best;
    }
    for (const auto& stage : sheet.stages) {
        if (!stage.stage.to && stage.stage.temperature) {
            start.chamber = stage.stage.temperature->best;
        }
    }
    return start;
}

std::optional<WarmFinish> warm_answer(const WarmStart& start, const WarmEntry& entry) {
    if (!start.loss_now) {
        return {};
    }
    core::doneness::WarmFinishRequest request{.form = start.form,
                                              .thickness = entry.thickness,
                                              .skin = start.skin,
                                              .loss_now = *start.loss_now,
                                              .loss_wanted = entry.wanted,
                                              .water_now = entry.water_now,
                                              .air = entry.air,
                                              .humidity = entry.humidity,
                                              .rate_per_day = start.rate_per_day};
    request.levels_off_in_chamber = start.levels_off;
    request.activity = start.activity;
    request.chamber = start.chamber.value_or(request.chamber);
    return core::doneness::warm_finish(request, hurdle_facts());
}

QString warm_hours_words(const WarmFinish& finish, const text::Style& style) {
    if (!finish.time) {
        return WarmWords::tr("No time can be given: see below.");
    }
    if (finish.time->high <= Duration::seconds(0)) {
        return WarmWords::tr("It is there already.");
    }
    return WarmWords::tr("About %1 in the warm air; 8 in 10 pieces take %2 to %3.")
        .arg(text::words(finish.time->best, style), text::words(finish.time->low, style),
             text::words(finish.time->high, style));
}

QVector<WarmExposureLine> warm_exposure(const WarmFinish& finish, const text::Style& style) {
    QVector<WarmExposureLine> lines;
    for (const auto& organism : finish.exposure) {
        QStringList remarks;
        if (organism.log10_possible) {
            remarks << WarmWords::tr("at most %1 tenfold steps in a laboratory medium, without lag")
                           .arg(text::number_words(*organism.log10_possible, style, 1));
        }
        remarks << text::source_words(organism.range_source);
        lines.push_back({QString::fromStdString(organism.name),
                         organism.in_range > Duration::seconds(0)
                             ? text::words(organism.in_range, style)
                             : WarmWords::tr("none"),
                         remarks.join(QStringLiteral(" · "))});
    }
    return lines;
}

QString warm_record(const WarmStart& start, const WarmEntry& entry, const WarmFinish& finish,
                    const QString& how_far, const text::Style& style) {
    QStringList lines;
    lines << WarmWords::tr("Warm finish, %1: air at %2 and %3, from %4 to %5 lost.")
                 .arg(how_far, text::words(entry.air, style), text::words(entry.humidity, style),
                      text::words_or_unknown(start.loss_now, style),
                      text::words(entry.wanted, style));
    lines << warm_hours_words(finish, style);
    for (const auto& organism : warm_exposure(finish, style)) {
        lines << WarmWords::tr("In the growth range of %1: %2 (%3)")
                     .arg(organism.name, organism.hours, organism.remark);
    }
    for (const auto& finding : finish.findings) {
        lines << text::severity_words(finding.severity) + QStringLiteral(": ") +
                     text::finding_words(finding, style);
    }
    return lines.join(QLatin1Char('\n'));
}

} // namespace ui::presenters
