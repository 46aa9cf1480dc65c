// One step back, one step forward, and where the mass went.
#include "ui/print/record_sections.h"
#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

namespace ui::print {

using core::units::Mass;

std::vector<Block> RecordSections::back() const {
    const core::model::Batch& batch = record_.batch();
    Table table;
    table.columns = {{RecordText::tr("What"), Align::left, 4},
                     {RecordText::tr("From"), Align::left, 5},
                     {RecordText::tr("Their lot"), Align::left, 4},
                     {RecordText::tr("When"), Align::left, 3},
                     {RecordText::tr("How much"), Align::right, 3}};
    table.rows.push_back(
        {RecordText::tr("Meat: %1").arg(or_unknown(text::data_name(batch.species).toStdString())),
         or_unknown(batch.supplier), or_unknown(batch.supplier_lot),
         text::words(batch.started, style_),
         mass(batch.bought_weight ? batch.bought_weight : record_.balance.green)});
    for (const auto& entry : record_.entries.ingredient_uses) {
        const core::model::IngredientUse& use = entry.value;
        const auto* lot = use.lot ? find(record_.entries.lots, *use.lot) : nullptr;
        const auto& amount = use.weighed ? use.weighed : use.planned;
        table.rows.push_back({text::data_name(use.name),
                              lot ? or_unknown(lot->supplier) : text::unknown(),
                              lot ? or_unknown(lot->code) : text::unknown(),
                              lot ? or_unknown(lot->bought_on) : text::unknown(),
                              amount ? text::dose_words(*amount, style_, 2) : text::unknown()});
    }
    return {Heading{RecordText::tr("One step back")}, std::move(table)};
}

std::vector<Block> RecordSections::forward() const {
    Table table;
    table.columns = {
        {RecordText::tr("Pack"), Align::left, 3},      {RecordText::tr("Piece"), Align::left, 2},
        {RecordText::tr("Kind"), Align::left, 3},      {RecordText::tr("When"), Align::left, 4},
        {RecordText::tr("How much"), Align::right, 3}, {RecordText::tr("What"), Align::left, 3},
        {RecordText::tr("To whom"), Align::left, 5},   {RecordText::tr("Note"), Align::left, 4}};
    for (const auto& entry : record_.entries.packs) {
        const core::model::Pack& pack = entry.value;
        table.rows.push_back({{text_of(pack.code), true},
                              piece_code(pack.piece),
                              words(pack.kind),
                              text::words(pack.packed_on, style_),
                              mass(pack.packed_weight),
                              RecordText::tr("packed"),
                              or_unknown(pack.place),
                              QString()});
        for (const auto& move : record_.entries.pack_moves) {
            const core::model::PackMove& m = move.value;
            if (m.pack == pack.id) {
                table.rows.push_back({text_of(pack.code), QString(), QString(), moment(m.at),
                                      mass(m.amount), words(m.kind),
                                      m.to_whom.empty() ? QString() : text_of(m.to_whom),
                                      text_of(m.note)});
            }
        }
        table.rows.push_back(
            {text_of(pack.code), QString(), QString(), moment(record_.made_at),
             pack.gone ? QString() : mass(pack.weight_left),
             pack.gone ? RecordText::tr("nothing left") : RecordText::tr("still here"),
             pack.gone ? QString() : or_unknown(pack.place), QString()});
    }
    table.empty = RecordText::tr("Nothing of this batch has been packed.");
    return {Heading{RecordText::tr("One step forward")}, std::move(table)};
}

std::vector<Block> RecordSections::balance() const {
    const core::services::MassBalance& b = record_.balance;
    Table table;
    table.columns = {{RecordText::tr("Step"), Align::left, 6},
                     {RecordText::tr("Mass"), Align::right, 3},
                     {RecordText::tr("Of the green weight"), Align::right, 3}};
    const auto row = [&](const QString& name, const std::optional<Mass>& m, bool bold = false) {
        QString share = text::unknown();
        if (m && b.green && *b.green > Mass::grams(0)) {
            share = text::words(core::units::MassShare::of(*m, *b.green), style_);
        }
        table.rows.push_back({{name, bold}, {mass(m), bold}, {share, bold}});
    };
    row(RecordText::tr("Bought"), b.bought);
    row(RecordText::tr("Trimmed off"), b.trimmed_off);
    row(RecordText::tr("Green weight of the pieces"), b.green, true);
    row(RecordText::tr("Net weight now, of pieces not discarded"), b.dried);
    if (b.green && b.dried) {
        row(RecordText::tr(
                "Green weight less net weight now: water, discarded pieces, ends and samples"),
            *b.green - *b.dried);
    }
    row(RecordText::tr("Packed"), b.packed, true);
    row(RecordText::tr("Used"), b.used);
    row(RecordText::tr("Given"), b.given);
    row(RecordText::tr("Sold"), b.sold);
    row(RecordText::tr("Hung again"), b.re_hung);
    row(RecordText::tr("Waste"), b.wasted);
    row(RecordText::tr("Still in stock"), b.left);
    row(RecordText::tr("Packed, but not accounted for"), b.unaccounted(), true);
    std::vector<Block> blocks{Heading{RecordText::tr("Mass balance")}, std::move(table)};
    // Half a gram a pack move: each was rounded to what the scale shows.
    const double allowance = 0.5 * static_cast<double>(1 + record_.entries.pack_moves.size());
    if (b.unaccounted() > Mass::grams(allowance) || b.unaccounted() < Mass::grams(-allowance)) {
        blocks.emplace_back(
            Notice{RecordText::tr("Caution"),
                   RecordText::tr("The packs do not balance: %1 cannot be accounted for.")
                       .arg(text::words(b.unaccounted(), style_))});
    }
    if (b.bought && b.trimmed_off && b.green) {
        const Mass gap = *b.bought - *b.trimmed_off - *b.green;
        blocks.emplace_back(
            Paragraph{RecordText::tr("Bought less trimmed off less green weight: %1.")
                          .arg(text::words(gap, style_))});
    }
    return blocks;
}

} // namespace ui::print
