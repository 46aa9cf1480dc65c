#include "ui/print/batch_record_sheet.h"

#include "ui/print/record_sections.h"
#include "ui/print/sheet_words.h"

namespace ui::print {
namespace {

void append(Sheet& sheet, std::vector<Block> blocks) {
    for (Block& block : blocks) {
        sheet.blocks.push_back(std::move(block));
    }
}

Sheet start(const QString& title, const RecordSections& sections) {
    Sheet sheet;
    sheet.title = title;
    sheet.subtitle = sections.title_line();
    sheet.foot = sections.title_line();
    return sheet;
}

} // namespace

Sheet batch_record_sheet(const core::services::BatchRecord& record, const text::Style& style) {
    const RecordSections sections(record, style);
    Sheet sheet = start(RecordText::tr("Batch record"), sections);
    sheet.landscape = true; // the weighing tables are wide
    append(sheet, sections.identification());
    append(sheet, sections.pieces());
    append(sheet, sections.inputs());
    append(sheet, sections.doses());
    append(sheet, sections.stages());
    append(sheet, sections.climate());
    append(sheet, sections.weighings());
    append(sheet, sections.events());
    append(sheet, sections.deviations());
    append(sheet, sections.calibration());
    append(sheet, sections.laboratory());
    append(sheet, sections.decisions());
    append(sheet, sections.back());
    append(sheet, sections.forward());
    append(sheet, sections.balance());
    append(sheet, sections.signatures());
    return sheet;
}

Sheet trace_sheet(const core::services::BatchRecord& record, const text::Style& style) {
    const RecordSections sections(record, style);
    Sheet sheet = start(RecordText::tr("Trace: one step back, one step forward"), sections);
    sheet.landscape = true;
    append(sheet, sections.back());
    append(sheet, sections.forward());
    append(sheet, sections.signatures());
    return sheet;
}

Sheet mass_balance_sheet(const core::services::BatchRecord& record, const text::Style& style) {
    const RecordSections sections(record, style);
    Sheet sheet = start(RecordText::tr("Mass balance"), sections);
    append(sheet, sections.balance());
    append(sheet, sections.forward());
    append(sheet, sections.signatures());
    return sheet;
}

} // namespace ui::print
