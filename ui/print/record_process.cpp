// The record's account of what was done: stages, air, weighings, events, deviations, instruments,
// decisions.
#include "ui/presenters/acceptances.h"
#include "ui/print/record_sections.h"
#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <algorithm>

namespace ui::print {
namespace {

template <class Q>
QString band_words(const std::optional<core::model::Band<Q>>& band, const text::Style& style) {
    if (!band) {
        return text::unknown();
    }
    const auto pair = [&](Q low, Q high) {
        return RecordText::tr("%1 to %2").arg(text::words(low, style), text::words(high, style));
    };
    const QString start = pair(band->low_at_start, band->high_at_start);
    const QString end = pair(band->low_at_end, band->high_at_end);
    return start == end ? start : RecordText::tr("%1, then %2").arg(start, end);
}

template <class Q>
std::vector<Cell> spread_cells(const std::optional<core::model::Spread<Q>>& spread,
                               const text::Style& style) {
    if (!spread) {
        return {text::unknown(), text::unknown(), text::unknown()};
    }
    return {text::words(spread->low, style), text::words(spread->mean, style),
            text::words(spread->high, style)};
}

} // namespace

std::vector<Block> RecordSections::stages() const {
    Table table;
    table.columns = {{RecordText::tr("Stage"), Align::left, 4},
                     {RecordText::tr("Planned"), Align::left, 5},
                     {RecordText::tr("Begun"), Align::left, 4},
                     {RecordText::tr("Ended"), Align::left, 4},
                     {RecordText::tr("Why it ended"), Align::left, 4},
                     {RecordText::tr("Chamber"), Align::left, 3},
                     {RecordText::tr("Temperature band"), Align::left, 4},
                     {RecordText::tr("Humidity band"), Align::left, 4}};
    table.size = 0.9;
    for (const auto& entry : record_.entries.stages) {
        const core::model::Stage& stage = entry.value;
        table.rows.push_back({stage_name(stage.id),
                              text::range_words(stage.planned_start, stage.planned_end, style_),
                              stage.started_at ? moment(*stage.started_at) : text::unknown(),
                              stage.ended_at ? moment(*stage.ended_at) : text::unknown(),
                              or_unknown(stage.end_reason), chamber_name(stage.chamber),
                              band_words(stage.what.temperature, style_),
                              band_words(stage.what.humidity, style_)});
    }
    table.empty = RecordText::tr("No stages were planned.");
    return {Heading{RecordText::tr("Stages")}, std::move(table)};
}

std::vector<Block> RecordSections::climate() const {
    Table table;
    table.columns = {{RecordText::tr("Stage"), Align::left, 4},
                     {RecordText::tr("Sensor"), Align::left, 3},
                     {RecordText::tr("Lowest"), Align::right, 2},
                     {RecordText::tr("Mean"), Align::right, 2},
                     {RecordText::tr("Highest"), Align::right, 2},
                     {RecordText::tr("Driest"), Align::right, 2},
                     {RecordText::tr("Mean RH"), Align::right, 2},
                     {RecordText::tr("Dampest"), Align::right, 2},
                     {RecordText::tr("Out of band"), Align::left, 6}};
    table.size = 0.9;
    for (const auto& climate : record_.climate) {
        const auto* sensor = find(record_.entries.sensors, climate.sensor);
        std::vector<Cell> row{stage_name(climate.stage),
                              sensor ? text_of(sensor->name) : text::unknown()};
        const auto append = [&](std::vector<Cell> cells) {
            row.insert(row.end(), cells.begin(), cells.end());
        };
        append(spread_cells(climate.temperature, style_));
        append(spread_cells(climate.humidity, style_));
        const auto& out = climate.out_of_band;
        QStringList sides;
        const auto side = [&](core::chamber::OutOfBand which, core::units::Duration time) {
            if (time > core::units::Duration::minutes(1)) {
                sides.append(words(which) + QStringLiteral(" ") + text::words(time, style_));
            }
        };
        side(core::chamber::OutOfBand::too_cold, out.too_cold);
        side(core::chamber::OutOfBand::too_warm, out.too_warm);
        side(core::chamber::OutOfBand::too_dry, out.too_dry);
        side(core::chamber::OutOfBand::too_damp, out.too_damp);
        if (out.unknown > core::units::Duration::hours(1)) {
            sides.append(RecordText::tr("no readings %1").arg(text::words(out.unknown, style_)));
        }
        row.emplace_back(sides.isEmpty() ? RecordText::tr("never")
                                         : sides.join(QStringLiteral("; ")));
        table.rows.push_back(std::move(row));
    }
    table.empty = RecordText::tr("No readings were recorded while this batch was in a chamber.");
    return {Heading{RecordText::tr("Temperature and humidity")}, std::move(table)};
}

Table RecordSections::weighing_table(core::model::PieceId piece) const {
    Table table;
    table.columns = {{RecordText::tr("Taken"), Align::left, 5},
                     {RecordText::tr("On the scale"), Align::right, 3},
                     {RecordText::tr("Tare"), Align::right, 2},
                     {RecordText::tr("Net"), Align::right, 3},
                     {RecordText::tr("What is weighed"), Align::left, 3},
                     {RecordText::tr("Entered"), Align::left, 6},
                     {RecordText::tr("Note, correction and why"), Align::left, 8}};
    table.size = 0.9;
    for (const auto& entry : record_.entries.weighings) {
        const core::model::Weighing& w = entry.value;
        if (w.piece != piece) {
            continue;
        }
        QStringList remarks;
        if (w.wet_surface) {
            remarks.append(RecordText::tr("wet surface"));
        }
        if (!w.note.empty()) {
            remarks.append(text_of(w.note));
        }
        if (w.amends) {
            const auto* first = find(record_.entries.weighings, *w.amends);
            remarks.append(
                RecordText::tr("corrects %1: %2")
                    .arg(first ? mass(first->on_scale, first->scale_step) : text::unknown(),
                         entry.entered ? or_unknown(entry.entered->why) : text::unknown()));
        }
        if (w.amended_by) {
            remarks.append(RecordText::tr("corrected by a later entry"));
        }
        if (w.withdrawn) {
            remarks.append(RecordText::tr("taken back by %1: %2")
                               .arg(entered(entry.withdrawn), entry.withdrawn
                                                                  ? or_unknown(entry.withdrawn->why)
                                                                  : text::unknown()));
        }
        const bool struck = !w.stands();
        table.rows.push_back({{moment(w.taken_at), false, struck},
                              {mass(w.on_scale, w.scale_step), false, struck},
                              {mass(w.tare, w.scale_step), false, struck},
                              {mass(w.net(), w.scale_step), !struck, struck},
                              {words(w.state), false, struck},
                              entered(entry.entered),
                              remarks.join(QStringLiteral("; "))});
    }
    table.empty = RecordText::tr("Never weighed.");
    return table;
}

std::vector<Block> RecordSections::weighings() const {
    std::vector<Block> blocks{Heading{RecordText::tr("Weighings with corrections")}};
    for (const auto& piece : record_.entries.pieces) {
        blocks.emplace_back(Heading{RecordText::tr("Piece %1").arg(text_of(piece.value.code)), 2});
        blocks.emplace_back(weighing_table(piece.value.id));
    }
    blocks.emplace_back(Paragraph{
        RecordText::tr(
            "Struck figures were corrected or taken back and no longer count; they stay readable."),
        true});
    return blocks;
}

std::vector<Block> RecordSections::events() const {
    Table table;
    table.columns = {{RecordText::tr("When"), Align::left, 4},
                     {RecordText::tr("Piece"), Align::left, 2},
                     {RecordText::tr("What happened"), Align::left, 4},
                     {RecordText::tr("Net before"), Align::right, 2},
                     {RecordText::tr("Net after"), Align::right, 2},
                     {RecordText::tr("Note"), Align::left, 5},
                     {RecordText::tr("Entered"), Align::left, 4}};
    table.size = 0.9;
    for (const auto& entry : record_.entries.events) {
        const core::model::PieceEvent& e = entry.value;
        QStringList others;
        for (const core::model::PieceId other : e.others) {
            others.append(piece_code(other));
        }
        QString what = words(e.kind);
        if (!others.isEmpty()) {
            what += QStringLiteral(": ") + others.join(QStringLiteral(", "));
        }
        table.rows.push_back({{moment(e.at), false, e.withdrawn},
                              {piece_code(e.piece), false, e.withdrawn},
                              {what, false, e.withdrawn},
                              mass(e.net_before),
                              mass(e.net_after),
                              text_of(e.note),
                              entered(entry.entered)});
    }
    table.empty = RecordText::tr("No events were recorded.");
    return {Heading{RecordText::tr("Events")}, std::move(table)};
}

std::vector<Block> RecordSections::deviations() const {
    Table air;
    air.columns = {{RecordText::tr("Stage"), Align::left, 3},
                   {RecordText::tr("Sensor"), Align::left, 2},
                   {RecordText::tr("From"), Align::left, 4},
                   {RecordText::tr("To"), Align::left, 4},
                   {RecordText::tr("Deviation"), Align::left, 2},
                   {RecordText::tr("Worst"), Align::right, 2},
                   {RecordText::tr("Action taken, initials"), Align::left, 5}};
    air.size = 0.9;
    for (const auto& climate : record_.climate) {
        const auto* sensor = find(record_.entries.sensors, climate.sensor);
        for (const core::chamber::Excursion& e : climate.out_of_band.excursions) {
            const QString worst = e.worst_temperature
                                      ? text::words(*e.worst_temperature, style_)
                                      : text::words_or_unknown(e.worst_humidity, style_);
            air.rows.push_back({stage_name(climate.stage),
                                sensor ? text_of(sensor->name) : text::unknown(),
                                moment(e.from),
                                moment(e.to),
                                {words(e.side), true},
                                worst,
                                QString()});
        }
    }
    air.empty = RecordText::tr("No excursion of an hour or longer is in the readings.");

    Table accepted;
    accepted.columns = {{RecordText::tr("When"), Align::left, 4},
                        {RecordText::tr("Caution, as it was shown"), Align::left, 9},
                        {RecordText::tr("Accepted by"), Align::left, 3},
                        {RecordText::tr("Why"), Align::left, 4}};
    for (const auto& entry : record_.entries.acceptances) {
        const core::model::Acceptance& a = entry.value;
        accepted.rows.push_back(
            {moment(a.at), presenters::acceptance_words(a), person(a.by), or_unknown(a.why)});
    }
    accepted.empty = RecordText::tr("No caution was accepted.");

    Table notes;
    notes.columns = {{RecordText::tr("When"), Align::left, 4},
                     {RecordText::tr("Piece"), Align::left, 2},
                     {RecordText::tr("Kind"), Align::left, 2},
                     {RecordText::tr("What was seen or done"), Align::left, 8},
                     {RecordText::tr("Entered"), Align::left, 4}};
    for (const auto& entry : record_.entries.notes) {
        const core::model::Note& n = entry.value;
        QString said = text_of(n.text);
        if (!n.photo_name.empty()) {
            said += RecordText::tr(" (photo: %1)").arg(text_of(n.photo_name));
        }
        const bool action = n.kind == core::model::NoteKind::action;
        notes.rows.push_back({moment(n.at),
                              n.piece ? piece_code(*n.piece) : RecordText::tr("batch"),
                              {words(n.kind), action},
                              {said, action},
                              entered(entry.entered)});
    }
    notes.empty = RecordText::tr("No notes were recorded.");
    return {Heading{RecordText::tr("Deviations and corrective action")},
            Heading{RecordText::tr("Air out of its band"), 2},
            std::move(air),
            Heading{RecordText::tr("Cautions accepted"), 2},
            std::move(accepted),
            Heading{RecordText::tr("Notes and actions"), 2},
            std::move(notes),
            WritingLines{RecordText::tr(
                             "Further deviation · limit · action taken · date and time · initials"),
                         2}};
}

std::vector<Block> RecordSections::calibration() const {
    Table table;
    table.columns = {
        {RecordText::tr("Instrument"), Align::left, 4}, {RecordText::tr("Kind"), Align::left, 3},
        {RecordText::tr("Checked"), Align::left, 4},    {RecordText::tr("Against"), Align::left, 4},
        {RecordText::tr("Expected"), Align::right, 2},  {RecordText::tr("Found"), Align::right, 2},
        {RecordText::tr("Action"), Align::left, 4},     {RecordText::tr("By"), Align::left, 2}};
    table.size = 0.9;
    for (const auto& instrument : record_.entries.instruments) {
        const core::model::Instrument& i = instrument.value;
        bool checked = false;
        for (const auto& entry : record_.entries.checks) {
            const core::model::CalibrationCheck& c = entry.value;
            if (c.instrument != i.id) {
                continue;
            }
            checked = true;
            table.rows.push_back({text_of(i.name), words(i.kind), moment(c.at),
                                  or_unknown(c.against), text::number_words(c.expected, style_, 1),
                                  text::number_words(c.found, style_, 1), or_unknown(c.action),
                                  person(c.by.is_assigned() ? std::optional(c.by) : std::nullopt)});
        }
        if (!checked && i.active) {
            table.rows.push_back({text_of(i.name),
                                  words(i.kind),
                                  {RecordText::tr("never checked"), true},
                                  QString(),
                                  QString(),
                                  QString(),
                                  QString(),
                                  QString()});
        }
    }
    table.empty = RecordText::tr("No instruments are registered.");
    return {Heading{RecordText::tr("Instruments and calibration")}, std::move(table)};
}

std::vector<Block> RecordSections::laboratory() const {
    return {
        Heading{RecordText::tr("Laboratory measurements")},
        Paragraph{RecordText::tr(
            "Water activity and pH are measured, not computed. Enter what a laboratory "
            "or an instrument found, with the instrument, its calibration and the date.")},
        WritingLines{
            RecordText::tr("Sample of piece · water activity · pH · instrument · date · initials"),
            3}};
}

std::vector<Block> RecordSections::decisions() const {
    Table table;
    table.columns = {{RecordText::tr("Piece"), Align::left, 2},
                     {RecordText::tr("When"), Align::left, 4},
                     {RecordText::tr("Decision"), Align::left, 2},
                     {RecordText::tr("Signed by"), Align::left, 4},
                     {RecordText::tr("Why"), Align::left, 8}};
    for (const auto& entry : record_.entries.decisions) {
        const core::model::Decision& d = entry.value;
        table.rows.push_back({piece_code(d.piece),
                              moment(d.at),
                              {words(d.verdict), true},
                              person(d.signed_by),
                              or_unknown(d.why)});
    }
    table.empty = RecordText::tr("No decision has been signed.");
    return {Heading{RecordText::tr("Decisions")}, std::move(table)};
}

} // namespace ui::print
