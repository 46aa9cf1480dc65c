#include "ui/presenters/upset.h"

#include "core/facts/facts.h"
#include "core/services/chamber_desk.h"
#include "ui/presenters/hurdle_facts.h"
#include "ui/text/climate_words.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

namespace ui::presenters {
namespace {

struct Upset {
    Q_DECLARE_TR_FUNCTIONS(Upset)
};

namespace chamber = core::chamber;

core::base::Result<chamber::UpsetCourse> course_of(const Workspace& workspace,
                                                   const UpsetEntry& entry) {
    if (entry.reached) {
        return chamber::course_of(chamber::TypedUpset{
            entry.from, entry.lasted, entry.usual.value_or(*entry.reached), *entry.reached});
    }
    if (!entry.sensor) {
        return core::base::fault(core::base::ErrorCode::no_such_entry, "sensor");
    }
    const auto reader = core::services::ClimateReader::open(workspace.book().path());
    if (!reader) {
        return tl::unexpected<core::base::Error>(reader.error());
    }
    const auto to = entry.from + entry.lasted;
    auto readings = reader->readings(entry.sensor->id, entry.from, to);
    if (!readings) {
        return tl::unexpected<core::base::Error>(readings.error());
    }
    const auto shift =
        entry.sensor->temperature_offset.value_or(core::units::TemperatureStep::kelvins(0));
    for (auto& reading : *readings) {
        if (reading.temperature) {
            reading.temperature = *reading.temperature + shift;
        }
    }
    return chamber::course_of(*readings, entry.from, to, core::units::Duration::minutes(30));
}

} // namespace

core::base::Result<chamber::UpsetRecord>
upset_record(const Workspace& workspace, core::model::ChamberId place, const UpsetEntry& entry) {
    auto course = course_of(workspace, entry);
    if (!course) {
        return tl::unexpected<core::base::Error>(course.error());
    }
    auto pieces = core::services::pieces_then(workspace.book(), place, entry.from,
                                              core::facts::built_in_facts());
    if (!pieces) {
        return tl::unexpected<core::base::Error>(pieces.error());
    }
    return chamber::upset_record(std::move(*course), std::move(*pieces), hurdle_facts());
}

QString hours_words(const chamber::Exposure& exposure, const text::Style& style) {
    if (exposure.most <= core::units::Duration::seconds(0)) {
        return Upset::tr("none");
    }
    const auto least = text::words(exposure.least, style);
    const auto most = text::words(exposure.most, style);
    return least == most ? most : Upset::tr("%1 to %2").arg(least, most);
}

QString record_words(const chamber::UpsetRecord& record, const QString& place,
                     const text::Style& style) {
    const auto& course = record.course;
    QStringList lines;
    lines << Upset::tr("Upset in %1: %2 to %3, highest air temperature %4.")
                 .arg(place, text::words(course.from, style), text::words(course.to, style),
                      text::words_or_unknown(course.highest, style));
    if (course.unknown > core::units::Duration::seconds(0)) {
        lines << Upset::tr("Without a reading: %1.").arg(text::words(course.unknown, style));
    }
    for (const auto& one : record.pieces) {
        const auto& piece = one.piece;
        lines << Upset::tr("%1 %2: stage %3, hung %4, lost %5, salt at most %6, nitrite put on %7.")
                     .arg(QString::fromStdString(piece.code), QString::fromStdString(piece.name),
                          piece.stage ? text::words(*piece.stage) : text::unknown(),
                          text::words_or_unknown(piece.hung, style),
                          piece.loss ? text::words(*piece.loss, style) : text::unknown(),
                          piece.salt ? text::words(*piece.salt, style) : text::unknown(),
                          piece.nitrite ? text::ppm_words(*piece.nitrite, style) : text::unknown());
        QStringList hours;
        for (const auto& exposure : one.exposures) {
            if (exposure.most > core::units::Duration::seconds(0)) {
                hours << Upset::tr("%1 %2 (water activity %3)")
                             .arg(QString::fromStdString(exposure.range.name),
                                  hours_words(exposure, style), text::words(exposure.activity));
            }
        }
        lines << Upset::tr("  Air in growth range: %1.")
                     .arg(hours.isEmpty() ? Upset::tr("none") : hours.join(QStringLiteral("; ")));
    }
    lines << Upset::tr("A record of the air, not of the meat's core, and no judgement.");
    return lines.join(QLatin1Char('\n'));
}

} // namespace ui::presenters
