#include "ui/print/calibration_sheet.h"

#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"
#include "ui/text/unit_words.h"

#include <QCoreApplication>

namespace ui::print {
namespace {

using core::model::CalibrationCheck;
using core::model::Instrument;
using core::model::InstrumentKind;

constexpr int empty_lines = 4; ///< an instrument: once a week

/// The translators' context of this file's sheet.
struct CalibrationText {
    Q_DECLARE_TR_FUNCTIONS(CalibrationText)
};

/// How each kind is usually checked and how far off it may be: common practice, no source.
QString how_to(InstrumentKind kind, const text::Style& style) {
    const auto step = [&](double kelvins) {
        return text::words(core::units::TemperatureStep::kelvins(kelvins), style);
    };
    switch (kind) {
    case InstrumentKind::scale:
        return CalibrationText::tr(
            "A test weight near what is weighed; within 0.1 % of it. Monthly.");
    case InstrumentKind::thermometer:
        return CalibrationText::tr("Crushed ice in water, stirred: %1; within %2. Monthly.")
            .arg(text::words(core::units::Temperature::celsius(0), style), step(1));
    case InstrumentKind::hygrometer:
        return CalibrationText::tr(
            "Salt slurry in a closed bag for 12 hours: 75 % RH; within 3 to 5 points. Every "
            "six months.");
    case InstrumentKind::ph_meter:
        return CalibrationText::tr("Two fresh buffers that bracket what is measured. Before use.");
    case InstrumentKind::aw_meter:
        return CalibrationText::tr("A salt standard near what is measured. Before use.");
    case InstrumentKind::other:
        return CalibrationText::tr("As its maker says.");
    }
    return {};
}

QString unit_of(InstrumentKind kind) {
    switch (kind) {
    case InstrumentKind::scale:
        return QStringLiteral("g");
    case InstrumentKind::thermometer:
        return QStringLiteral("°C");
    case InstrumentKind::hygrometer:
        return text::humidity_unit_name();
    case InstrumentKind::ph_meter:
        return QStringLiteral("pH");
    case InstrumentKind::aw_meter:
        return QStringLiteral("aw");
    case InstrumentKind::other:
        break;
    }
    return {};
}

bool same_month(core::units::Day a, core::units::Day b) {
    return a.date().year() == b.date().year() && a.date().month() == b.date().month();
}

QString initials(const CalibrationMonth& of, core::model::PersonId id) {
    for (const core::model::Person& person : of.people) {
        if (person.id == id) {
            return text_of(person.initials.empty() ? person.name : person.initials);
        }
    }
    return text::unknown();
}

Table check_table(const CalibrationMonth& of, const Instrument& instrument,
                  const text::Style& style) {
    const QString unit = unit_of(instrument.kind);
    Table table;
    table.columns = {{CalibrationText::tr("Date and time"), Align::left, 4},
                     {CalibrationText::tr("Against"), Align::left, 4},
                     {CalibrationText::tr("Expected, %1").arg(unit), Align::right, 3},
                     {CalibrationText::tr("Found, %1").arg(unit), Align::right, 3},
                     {CalibrationText::tr("Off by"), Align::right, 2},
                     {CalibrationText::tr("Action taken"), Align::left, 5},
                     {CalibrationText::tr("Initials"), Align::left, 2}};
    for (const CalibrationCheck& check : of.checks) {
        if (check.instrument != instrument.id ||
            !same_month(style.zone.day_of(check.at), of.month)) {
            continue;
        }
        const auto number = [&](double v) { return text::number_words(v, style, 1); };
        table.rows.push_back({moment_words(check.at, style),
                              or_unknown(check.against),
                              number(check.expected),
                              number(check.found),
                              {number(check.found - check.expected), true},
                              or_unknown(check.action),
                              initials(of, check.by)});
    }
    for (int i = 0; i < empty_lines; ++i) {
        table.rows.emplace_back(table.columns.size(), QStringLiteral(" "));
    }
    return table;
}

QString last_before(const CalibrationMonth& of, const Instrument& instrument,
                    const text::Style& style) {
    std::optional<core::units::Day> last;
    for (const CalibrationCheck& check : of.checks) {
        const core::units::Day day = style.zone.day_of(check.at);
        if (check.instrument == instrument.id && day < of.month && !same_month(day, of.month) &&
            (!last || day > *last)) {
            last = day;
        }
    }
    return last ? CalibrationText::tr("Last checked before: %1.").arg(text::words(*last, style))
                : CalibrationText::tr("Never checked before.");
}

} // namespace

Sheet calibration_sheet(const CalibrationMonth& of, const text::Style& style) {
    Sheet sheet;
    sheet.title = CalibrationText::tr("Calibration sheet");
    sheet.subtitle = text::month_words(of.month, style);
    sheet.foot = sheet.title + QStringLiteral(" · ") + sheet.subtitle;
    sheet.point_size = 10;
    bool any = false;
    for (const Instrument& instrument : of.instruments) {
        if (!instrument.active) {
            continue;
        }
        any = true;
        sheet.blocks.emplace_back(
            Heading{text_of(instrument.name) + QStringLiteral(" · ") + words(instrument.kind)});
        QString how = how_to(instrument.kind, style);
        if (instrument.check_every_days) {
            how += QLatin1Char(' ') + CalibrationText::tr("Set to every %n day(s) here.", nullptr,
                                                          *instrument.check_every_days);
        }
        sheet.blocks.emplace_back(
            Paragraph{how + QLatin1Char(' ') + last_before(of, instrument, style)});
        sheet.blocks.emplace_back(check_table(of, instrument, style));
    }
    if (!any) {
        sheet.blocks.emplace_back(Paragraph{CalibrationText::tr("No instruments are registered.")});
    }
    sheet.blocks.emplace_back(Paragraph{
        CalibrationText::tr("How to check and how far off an instrument may be is common "
                            "practice without a source: what your plan says goes before."),
        true});
    sheet.blocks.emplace_back(
        Signatures{{CalibrationText::tr("Checked by"), CalibrationText::tr("Responsible person")}});
    return sheet;
}

} // namespace ui::print
