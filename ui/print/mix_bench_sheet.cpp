#include "ui/print/mix_bench_sheet.h"

#include "ui/print/record_sections.h"
#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/data_name.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>
#include <algorithm>

namespace ui::print {
namespace {

using core::units::Mass;

constexpr double bench_points = 13; ///< read at arm's length with wet hands

/// The translators' context of this file's sheet.
struct MixSheetText {
    Q_DECLARE_TR_FUNCTIONS(MixSheetText)
};

QString tick_box() {
    return QString(QChar(0x2610));
}

/// As many decimals as the amount needs to be within one percent, two at most.
QString amount_words(Mass mass, const text::Style& style) {
    const double g = mass.in_grams();
    return text::dose_words(mass, style, g < 10 ? 2 : g < 100 ? 1 : 0);
}

Table line_table(const std::vector<core::mix::SheetLine>& lines, const text::Style& style) {
    Table table;
    table.columns = {{QString(), Align::centre, 1},
                     {MixSheetText::tr("Weigh out"), Align::right, 4},
                     {MixSheetText::tr("Of"), Align::left, 7},
                     {MixSheetText::tr("Scale error"), Align::right, 3},
                     {MixSheetText::tr("Weighed"), Align::left, 4},
                     {MixSheetText::tr("Lot"), Align::left, 4}};
    for (const core::mix::SheetLine& line : lines) {
        QString name = text::data_name(line.name);
        if (line.volume) {
            name += MixSheetText::tr(" (%1)").arg(text::words(*line.volume, style));
        }
        QString error = text::unknown();
        if (line.step_error) {
            error = QStringLiteral("±") +
                    text::words(core::units::MassShare::fraction(*line.step_error), style, 1);
        }
        table.rows.push_back({tick_box(),
                              {amount_words(line.weigh_out, style), true},
                              name,
                              error,
                              QString(),
                              QString()});
        int number = 0;
        for (const Mass rub : line.rubs) {
            table.rows.push_back({tick_box(), amount_words(rub, style),
                                  MixSheetText::tr("   of it for rub %1").arg(++number), QString(),
                                  QString(), QString()});
        }
    }
    table.empty = MixSheetText::tr("Nothing to weigh.");
    return table;
}

std::vector<Block> cautions(const core::model::Findings& findings, const text::Style& style) {
    std::vector<const core::model::Finding*> sorted;
    for (const core::model::Finding& finding : findings) {
        sorted.push_back(&finding);
    }
    std::stable_sort(sorted.begin(), sorted.end(), [](const auto* a, const auto* b) {
        return static_cast<int>(a->severity) > static_cast<int>(b->severity);
    });
    std::vector<Block> blocks;
    blocks.reserve(sorted.size());
    for (const core::model::Finding* finding : sorted) {
        blocks.emplace_back(
            Notice{text::severity_words(finding->severity), text::finding_words(*finding, style)});
    }
    return blocks;
}

Fields dose_fields(const core::mix::MixSheet& mix, const text::Style& style) {
    return {{{MixSheetText::tr("Meat"), text::words(mix.meat, style)},
             {MixSheetText::tr("Salt"), text::words(mix.dose.salt.best, style, 2)},
             {MixSheetText::tr("Nitrite, as sodium nitrite"),
              text::ppm_words(mix.dose.nitrite.best, style)},
             {MixSheetText::tr("Nitrate, as sodium nitrate"),
              text::ppm_words(mix.dose.nitrate.best, style)}}};
}

Table limit_table(const core::mix::MixSheet& mix) {
    Table table;
    table.size = 0.75;
    table.columns = {{MixSheetText::tr("Limit"), Align::left, 4},
                     {MixSheetText::tr("Outcome"), Align::left, 3},
                     {MixSheetText::tr("Source and edition"), Align::left, 7}};
    for (const core::mix::LimitCheck& check : mix.limits) {
        table.rows.push_back(
            {words(check.limit.substance) + QStringLiteral(", ") + words(check.limit.basis),
             {words(check.outcome), true},
             text::source_words(check.limit.source)});
    }
    table.empty = MixSheetText::tr("No limit set was chosen: the dose was not compared with any.");
    return table;
}

} // namespace

Sheet mix_bench_sheet(const core::mix::MixSheet& mix, const QString& title_line,
                      const text::Style& style) {
    Sheet sheet;
    sheet.title = MixSheetText::tr("Mix sheet");
    sheet.subtitle = title_line;
    sheet.foot = title_line;
    sheet.point_size = bench_points;
    const auto add = [&](std::vector<Block> blocks) {
        for (Block& block : blocks) {
            sheet.blocks.push_back(std::move(block));
        }
    };
    add(cautions(mix.findings, style));
    sheet.blocks.emplace_back(dose_fields(mix, style));
    if (mix.pieces.size() > 1) {
        for (const core::mix::PieceSheet& piece : mix.pieces) {
            sheet.blocks.emplace_back(
                Heading{MixSheetText::tr("Piece %1: %2 of meat")
                            .arg(text_of(piece.code), text::words(piece.meat, style))});
            sheet.blocks.emplace_back(line_table(piece.lines, style));
        }
        sheet.blocks.emplace_back(Heading{MixSheetText::tr("All pieces together")});
    } else {
        sheet.blocks.emplace_back(Heading{MixSheetText::tr("Weigh out")});
    }
    sheet.blocks.emplace_back(line_table(mix.lines, style));
    sheet.blocks.emplace_back(limit_table(mix));
    sheet.blocks.emplace_back(Paragraph{
        MixSheetText::tr(
            "Weigh the curing salt on the finest scale, and read its strength off the bag in your "
            "hand. Follow local codes and licensed practice."),
        true});
    sheet.blocks.emplace_back(
        Signatures{{MixSheetText::tr("Weighed by"), MixSheetText::tr("Checked by")}});
    return sheet;
}

Sheet mix_bench_sheet(const core::services::BatchRecord& record, const text::Style& style) {
    const QString title = RecordSections(record, style).title_line();
    if (record.mix) {
        return mix_bench_sheet(*record.mix, title, style);
    }
    Sheet sheet;
    sheet.title = MixSheetText::tr("Mix sheet");
    sheet.subtitle = title;
    sheet.foot = title;
    sheet.point_size = bench_points;
    sheet.blocks.emplace_back(Notice{
        text::severity_words(core::model::Severity::stop),
        record.recipe
            ? MixSheetText::tr("No piece of this batch has a green weight: weigh the meat first.")
            : MixSheetText::tr("This batch keeps no recipe that can be read: choose one first.")});
    return sheet;
}

} // namespace ui::print
