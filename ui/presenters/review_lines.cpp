// The evidence sheet in words, line by line: the same lines are shown, printed and signed.
#include "ui/presenters/review.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace ui::presenters {
namespace {

struct ReviewWords {
    Q_DECLARE_TR_FUNCTIONS(ReviewWords)
};

using core::base::Interval;
using core::doneness::EvidenceSheet;
using core::doneness::HurdleCheck;
using core::units::MassShare;
using text::Style;

QString range(const Interval<MassShare>& share, const Style& style) {
    return ReviewWords::tr("%1 (%2 to %3)")
        .arg(text::words(share.best, style), text::words(share.low, style),
             text::words(share.high, style));
}

QString range(const Interval<core::units::WaterActivity>& activity, const Style& style) {
    return ReviewWords::tr("%1 (%2 to %3)")
        .arg(text::words(activity.best, style), text::words(activity.low, style),
             text::words(activity.high, style));
}

QString hurdle_value(const HurdleCheck& check, const Style& style) {
    if (!check.value) {
        return text::unknown();
    }
    using Quantity = core::facts::Hurdle::Quantity;
    const auto one = [&](double v) {
        return check.quantity == Quantity::water_activity_at_most
                   ? text::number_words(v, style, 2)
                   : text::words(MassShare::fraction(v), style);
    };
    return check.value->low == check.value->high
               ? one(check.value->best)
               : ReviewWords::tr("%1 to %2").arg(one(check.value->low), one(check.value->high));
}

QString hurdle_limit(const HurdleCheck& check, const Style& style) {
    using Quantity = core::facts::Hurdle::Quantity;
    if (check.quantity == Quantity::water_activity_at_most) {
        return ReviewWords::tr("at most %1").arg(text::number_words(check.limit, style, 2));
    }
    return ReviewWords::tr("at least %1").arg(text::words(MassShare::fraction(check.limit), style));
}

/// No verdict words: only where the piece's own figure lies.
QString stands(const HurdleCheck& check) {
    const bool low_wanted = check.quantity == core::facts::Hurdle::Quantity::water_activity_at_most;
    switch (check.stands) {
    case HurdleCheck::Stands::met:
        return low_wanted ? ReviewWords::tr("lies below it") : ReviewWords::tr("lies above it");
    case HurdleCheck::Stands::not_met:
        return low_wanted ? ReviewWords::tr("lies above it") : ReviewWords::tr("lies below it");
    case HurdleCheck::Stands::undecided:
        return ReviewWords::tr("lies on both sides of it");
    case HurdleCheck::Stands::unknown:
        return ReviewWords::tr("not known");
    }
    return {};
}

QString missing_words(const std::string& what) {
    static const std::pair<const char*, const char*> names[] = {
        {"start_weight", QT_TRANSLATE_NOOP("ReviewWords", "start weight")},
        {"salt", QT_TRANSLATE_NOOP("ReviewWords", "salt put on")},
        {"thickness", QT_TRANSLATE_NOOP("ReviewWords", "thickness")},
        {"fat", QT_TRANSLATE_NOOP("ReviewWords", "fat share")},
        {"humidity_log", QT_TRANSLATE_NOOP("ReviewWords", "humidity log")},
        {"temperature_log", QT_TRANSLATE_NOOP("ReviewWords", "temperature log")},
        {"weights", QT_TRANSLATE_NOOP("ReviewWords", "weighings while drying")},
        {"water_activity_measurement", QT_TRANSLATE_NOOP("ReviewWords", "measured water activity")},
    };
    for (const auto& [code, name] : names) {
        if (what == code) {
            return ReviewWords::tr(name);
        }
    }
    return QString::fromStdString(what).replace(QLatin1Char('_'), QLatin1Char(' '));
}

void add_losses(QVector<EvidenceLine>& lines, const EvidenceSheet& sheet, const Style& style) {
    const QString group = ReviewWords::tr("Weight");
    for (const auto& loss : sheet.losses) {
        lines.push_back(
            {group, ReviewWords::tr("lost of the %1").arg(text::words(loss.reference)),
             text::words(loss.loss, style),
             loss.is_target_reference && sheet.target
                 ? ReviewWords::tr("target %1").arg(text::words(sheet.target->loss, style, 0))
                 : QString()});
    }
    if (sheet.rates) {
        const auto rate = [&](const QString& what, const std::optional<MassShare>& share) {
            if (share) {
                lines.push_back({group,
                                 what,
                                 ReviewWords::tr("%1 a day").arg(text::words(*share, style, 2)),
                                 {}});
            }
        };
        rate(ReviewWords::tr("pace in the first week"), sheet.rates->first_week);
        rate(ReviewWords::tr("pace in the last two weeks"), sheet.rates->last_weeks);
    }
    if (sheet.since_hung) {
        lines.push_back(
            {group, ReviewWords::tr("time since hung"), text::words(*sheet.since_hung, style), {}});
    }
}

void add_composition(QVector<EvidenceLine>& lines, const EvidenceSheet& sheet, const Style& style) {
    if (!sheet.composition) {
        return;
    }
    const QString group = ReviewWords::tr("Estimated, 8 in 10 fall in the range");
    const auto& c = *sheet.composition;
    lines.push_back({group, ReviewWords::tr("water of the piece"), range(c.water, style), {}});
    if (c.salt) {
        lines.push_back({group, ReviewWords::tr("salt of the piece"), range(*c.salt, style), {}});
    }
    if (c.water_phase_salt) {
        lines.push_back(
            {group, ReviewWords::tr("salt in its water"), range(*c.water_phase_salt, style), {}});
    }
    if (c.water_activity) {
        lines.push_back({group, ReviewWords::tr("water activity"), range(*c.water_activity, style),
                         ReviewWords::tr("an estimate; only a laboratory measures it")});
    }
}

/// Lowest to highest with the mean first: the sheet is read for the mean.
template <class Q>
QString air_range(const Interval<Q>& air, const Style& style) {
    return ReviewWords::tr("mean %1, %2 to %3")
        .arg(text::words(air.best, style), text::words(air.low, style),
             text::words(air.high, style));
}

/// "12 h too warm" and the like; what a band there is none for cannot be out of it.
QString out_of_band(bool banded, const core::units::Duration& below, const QString& below_words,
                    const core::units::Duration& above, const QString& above_words,
                    const Style& style) {
    if (!banded) {
        return ReviewWords::tr("no band to hold it against");
    }
    QStringList parts;
    if (below > core::units::Duration::seconds(0)) {
        parts << below_words.arg(text::words(below, style));
    }
    if (above > core::units::Duration::seconds(0)) {
        parts << above_words.arg(text::words(above, style));
    }
    return parts.isEmpty() ? ReviewWords::tr("never out of its band in the log")
                           : parts.join(QStringLiteral(", "));
}

void add_air(QVector<EvidenceLine>& lines, const core::doneness::StageRecord& stage,
             const QString& group, const Style& style) {
    const QString name = text::data_name(stage.name);
    if (!stage.air) {
        lines.push_back({group, ReviewWords::tr("%1: air").arg(name), ReviewWords::tr("no log"),
                         ReviewWords::tr("no climate log covers this piece's time there")});
        return;
    }
    const auto& air = *stage.air;
    if (stage.temperature) {
        lines.push_back(
            {group, ReviewWords::tr("%1: temperature").arg(name),
             air_range(*stage.temperature, style),
             out_of_band(air.temperature_band, air.too_cold, ReviewWords::tr("%1 too cold"),
                         air.too_warm, ReviewWords::tr("%1 too warm"), style)});
    }
    lines.push_back(
        {group, ReviewWords::tr("%1: humidity").arg(name),
         stage.humidity ? air_range(*stage.humidity, style) : ReviewWords::tr("no log"),
         stage.humidity ? out_of_band(air.humidity_band, air.too_dry, ReviewWords::tr("%1 too dry"),
                                      air.too_damp, ReviewWords::tr("%1 too damp"), style)
                        : QString()});
    if (air.silent >= core::units::Duration::hours(6)) {
        lines.push_back({group, ReviewWords::tr("%1: not logged").arg(name),
                         text::words(air.silent, style),
                         ReviewWords::tr("of this time nothing is known")});
    }
}

void add_stages(QVector<EvidenceLine>& lines, const EvidenceSheet& sheet, const Style& style) {
    const QString group = ReviewWords::tr("Stages and their air");
    for (const auto& stage : sheet.stages) {
        lines.push_back({group, text::data_name(stage.stage.name), text::words(stage.lasted, style),
                         text::words(stage.stage.kind)});
        add_air(lines, stage.stage, group, style);
    }
}

} // namespace

QVector<EvidenceLine> evidence_lines(const EvidenceSheet& sheet, const Style& style) {
    QVector<EvidenceLine> lines;
    add_losses(lines, sheet, style);
    add_composition(lines, sheet, style);
    for (const auto& check : sheet.hurdles) {
        lines.push_back({ReviewWords::tr("Beside cited figures"), text::data_name(check.name),
                         ReviewWords::tr("%1 %2").arg(hurdle_value(check, style), stands(check)),
                         ReviewWords::tr("%1 · %2").arg(hurdle_limit(check, style),
                                                        text::source_words(check.source))});
    }
    add_stages(lines, sheet, style);
    for (const auto& note : sheet.senses) {
        lines.push_back({ReviewWords::tr("Seen, felt, smelt"),
                         text::words(style.zone.day_of(note.at), style),
                         QString::fromStdString(note.text),
                         {}});
    }
    QStringList missing;
    for (const auto& what : sheet.missing) {
        missing << missing_words(what);
    }
    if (!missing.isEmpty()) {
        lines.push_back({ReviewWords::tr("Not known"),
                         ReviewWords::tr("would add to the picture"),
                         missing.join(QStringLiteral(", ")),
                         {}});
    }
    return lines;
}

std::string evidence_document(const EvidenceSheet& sheet, const Style& style) {
    QJsonArray array;
    for (const auto& line : evidence_lines(sheet, style)) {
        array.push_back(QJsonObject{{QStringLiteral("group"), line.group},
                                    {QStringLiteral("what"), line.what},
                                    {QStringLiteral("value"), line.value},
                                    {QStringLiteral("remark"), line.remark}});
    }
    for (const auto& finding : sheet.findings) {
        array.push_back(
            QJsonObject{{QStringLiteral("group"), QStringLiteral("finding")},
                        {QStringLiteral("what"), QString::fromStdString(finding.code)},
                        {QStringLiteral("value"), text::finding_words(finding, style)}});
    }
    return QJsonDocument(array).toJson(QJsonDocument::Compact).toStdString();
}

} // namespace ui::presenters
