// The record's heads and what went in. Its other parts: record_process.cpp, record_trace.cpp.
#include "ui/print/record_sections.h"

#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

namespace ui::print {

using core::facts::Component;
using core::model::PieceId;

namespace {

QString interval(const core::facts::ShareInterval& share, const text::Style& style, bool ppm) {
    const auto one = [&](core::units::MassShare s) {
        return ppm ? text::ppm_words(s, style) : text::words(s, style, 2);
    };
    const QString low = one(share.low);
    const QString high = one(share.high);
    return low == high ? one(share.best)
                       : RecordText::tr("%1 (%2 to %3)").arg(one(share.best), low, high);
}

/// Share of a curing component; the sign for "not known" where it has none or nobody said.
QString strength(const core::mix::ResolvedIngredient& what, Component component,
                 const text::Style& style) {
    const auto share = what.composition.of(component);
    return share && share->high > core::units::MassShare::fraction(0)
               ? interval(*share, style, false)
               : text::unknown();
}

} // namespace

QString RecordSections::person(std::optional<core::model::PersonId> id) const {
    const auto* found = id ? find(record_.entries.people, *id) : nullptr;
    return found == nullptr ? text::unknown() : text_of(found->name);
}

QString RecordSections::entered(const std::optional<core::exchange::Stamp>& stamp) const {
    if (!stamp) {
        return text::unknown();
    }
    const auto* who = stamp->by ? find(record_.entries.people, *stamp->by) : nullptr;
    const QString by = who == nullptr
                           ? text::unknown()
                           : or_unknown(who->initials.empty() ? who->name : who->initials);
    return by + QStringLiteral(", ") + moment(stamp->at);
}

QString RecordSections::piece_code(PieceId id) const {
    const auto* found = find(record_.entries.pieces, id);
    return found == nullptr ? text::unknown() : text_of(found->code);
}

QString RecordSections::chamber_name(std::optional<core::model::ChamberId> id) const {
    const auto* found = id ? find(record_.entries.chambers, *id) : nullptr;
    return found == nullptr ? text::unknown() : text_of(found->name);
}

QString RecordSections::stage_name(core::model::StageId id) const {
    const auto* found = find(record_.entries.stages, id);
    if (found == nullptr) {
        return text::unknown();
    }
    return found->what.name.empty() ? words(found->what.kind) : text::data_name(found->what.name);
}

QString RecordSections::moment(core::units::Instant at) const {
    return moment_words(at, style_);
}

QString RecordSections::mass(const std::optional<core::units::Mass>& mass,
                             std::optional<core::units::Mass> step) const {
    return mass ? text::words(*mass, style_, step) : text::unknown();
}

QString RecordSections::title_line() const {
    const core::model::Batch& batch = record_.batch();
    return RecordText::tr("Batch %1 · %2 · started %3")
        .arg(text_of(batch.code),
             batch.product.empty() ? text_of(batch.name) : text_of(batch.product),
             text::words(batch.started, style_));
}

std::vector<Block> RecordSections::identification() const {
    const core::model::Batch& b = record_.batch();
    Fields fields;
    fields.rows = {
        {RecordText::tr("Batch code"), text_of(b.code)},
        {RecordText::tr("Product"), or_unknown(b.product)},
        {RecordText::tr("Name"), or_unknown(b.name)},
        {RecordText::tr("Species"), or_unknown(text::data_name(b.species).toStdString())},
        {RecordText::tr("Supplier of the meat"), or_unknown(b.supplier)},
        {RecordText::tr("Supplier's lot"), or_unknown(b.supplier_lot)},
        {RecordText::tr("Frozen before curing"), yes_no(b.was_frozen)},
        {RecordText::tr("Bought weight"), mass(b.bought_weight)},
        {RecordText::tr("Trimmed off"), mass(b.trim_weight)},
        {RecordText::tr("Green weight of all pieces"), mass(record_.balance.green)},
        {RecordText::tr("Started"), text::words(b.started, style_)},
        {RecordText::tr("State"), words(b.state)},
    };
    std::vector<Block> blocks{Heading{RecordText::tr("Identification")}, std::move(fields)};
    if (!b.notes.empty()) {
        blocks.emplace_back(Paragraph{text_of(b.notes)});
    }
    return blocks;
}

std::vector<Block> RecordSections::pieces() const {
    Table table;
    table.columns = {{RecordText::tr("Piece"), Align::left, 2},
                     {RecordText::tr("Cut"), Align::left, 4},
                     {RecordText::tr("Skin"), Align::left, 4},
                     {RecordText::tr("Thickness"), Align::right, 3},
                     {RecordText::tr("Green weight"), Align::right, 3},
                     {RecordText::tr("Hung weight"), Align::right, 3},
                     {RecordText::tr("Last weight"), Align::right, 3},
                     {RecordText::tr("Loss of green"), Align::right, 3},
                     {RecordText::tr("Loss of hung"), Align::right, 3},
                     {RecordText::tr("Target"), Align::left, 5},
                     {RecordText::tr("State"), Align::left, 3}};
    table.size = 0.85;
    for (std::size_t i = 0; i < record_.losses.size(); ++i) {
        const core::model::Piece& piece = record_.entries.pieces[i].value;
        const core::services::PieceLoss& loss = record_.losses[i];
        QString target = text::unknown();
        if (piece.target) {
            target = RecordText::tr("%1 of %2")
                         .arg(text::words(piece.target->loss, style_, 0),
                              words(piece.target->reference));
        }
        QString code = text_of(piece.code);
        if (piece.parent) {
            code += RecordText::tr(" (from %1)").arg(piece_code(*piece.parent));
        }
        table.rows.push_back(
            {code, or_unknown(piece.name), words(piece.skin),
             text::words_or_unknown(piece.thickness, style_), mass(loss.green()), mass(loss.hung),
             mass(loss.latest), text::words_or_unknown(loss.loss_from_green(), style_),
             text::words_or_unknown(loss.loss_from_hung(), style_), target, words(piece.state)});
    }
    table.empty = RecordText::tr("No pieces.");
    return {Heading{RecordText::tr("Pieces")}, std::move(table),
            Paragraph{RecordText::tr(
                          "Weights are net. A loss is left out where something was cut off or put "
                          "on in between: see the events."),
                      true}};
}

std::vector<Block> RecordSections::inputs() const {
    Table table;
    table.columns = {{RecordText::tr("Ingredient"), Align::left, 4},
                     {RecordText::tr("Lot"), Align::left, 3},
                     {RecordText::tr("Supplier"), Align::left, 4},
                     {RecordText::tr("Bought"), Align::left, 3},
                     {RecordText::tr("Planned"), Align::right, 2},
                     {RecordText::tr("Weighed"), Align::right, 2},
                     {RecordText::tr("For"), Align::left, 2},
                     {RecordText::tr("Entered"), Align::left, 4}};
    for (const auto& entry : record_.entries.ingredient_uses) {
        const core::model::IngredientUse& use = entry.value;
        const auto* lot = use.lot ? find(record_.entries.lots, *use.lot) : nullptr;
        const auto dose = [&](const std::optional<core::units::Mass>& m) {
            return m ? text::dose_words(*m, style_, 2) : text::unknown();
        };
        table.rows.push_back(
            {text::data_name(use.name), lot ? or_unknown(lot->code) : text::unknown(),
             lot ? or_unknown(lot->supplier) : text::unknown(),
             lot ? or_unknown(lot->bought_on) : text::unknown(), dose(use.planned),
             dose(use.weighed), use.piece ? piece_code(*use.piece) : RecordText::tr("all"),
             entered(entry.entered)});
    }
    table.empty = RecordText::tr("No ingredient lots were recorded.");
    return {Heading{RecordText::tr("Inputs with lots")}, std::move(table)};
}

std::vector<Block> RecordSections::doses() const {
    std::vector<Block> blocks{Heading{RecordText::tr("Computed doses")}};
    if (!record_.mix) {
        blocks.emplace_back(Paragraph{
            record_.recipe
                ? RecordText::tr("Not computed: no piece has a green weight.")
                : RecordText::tr("Not computed: the batch keeps no recipe that can be read.")});
        return blocks;
    }
    const core::mix::MixSheet& mix = *record_.mix;
    Fields doses;
    doses.rows = {
        {RecordText::tr("Recipe"), or_unknown(record_.recipe->name)},
        {RecordText::tr("On green meat"), mass(mix.meat)},
        {RecordText::tr("Salt"), interval(mix.dose.salt, style_, false)},
        {RecordText::tr("Sugar"), interval(mix.dose.sugar, style_, false)},
        {RecordText::tr("Nitrite, as sodium nitrite"), interval(mix.dose.nitrite, style_, true)},
        {RecordText::tr("Nitrate, as sodium nitrate"), interval(mix.dose.nitrate, style_, true)}};
    blocks.emplace_back(std::move(doses));

    // What the bag holds decides the dose, so its strength is part of the record.
    Table lines;
    lines.columns = {{RecordText::tr("Line of the recipe"), Align::left, 4},
                     {RecordText::tr("Amount"), Align::right, 2},
                     {RecordText::tr("Nitrite strength"), Align::right, 3},
                     {RecordText::tr("Nitrate strength"), Align::right, 3},
                     {RecordText::tr("Strength from"), Align::left, 3}};
    for (const core::mix::SheetLine& line : mix.lines) {
        const core::mix::ResolvedIngredient& what = record_.ingredients[line.line];
        const QString nitrite = strength(what, Component::sodium_nitrite, style_);
        const QString nitrate = strength(what, Component::sodium_nitrate, style_);
        const bool cures = nitrite != text::unknown() || nitrate != text::unknown();
        lines.rows.push_back({text::data_name(line.name),
                              text::dose_words(line.amount.best, style_, 2), nitrite, nitrate,
                              !cures                     ? QString()
                              : what.strength_from_label ? RecordText::tr("the label")
                                                         : RecordText::tr("the catalogue")});
    }
    blocks.emplace_back(std::move(lines));

    Table limits;
    limits.columns = {{RecordText::tr("Limit"), Align::left, 5},
                      {RecordText::tr("Allowed"), Align::right, 3},
                      {RecordText::tr("Computed"), Align::right, 3},
                      {RecordText::tr("Outcome"), Align::left, 3},
                      {RecordText::tr("Source and edition"), Align::left, 6}};
    for (const core::mix::LimitCheck& check : mix.limits) {
        const auto& limit = check.limit;
        QString allowed = limit.not_permitted ? RecordText::tr("none")
                                              : text::words_or_unknown(limit.maximum, style_);
        if (limit.maximum) {
            allowed = RecordText::tr("at most %1").arg(text::ppm_words(*limit.maximum, style_));
        } else if (limit.minimum) {
            allowed = RecordText::tr("at least %1").arg(text::ppm_words(*limit.minimum, style_));
        }
        const bool computed = check.outcome != core::mix::LimitCheck::Outcome::not_computable;
        limits.rows.push_back({words(limit.substance) + QStringLiteral(", ") + words(limit.basis),
                               allowed,
                               computed ? interval(check.value, style_, true) : text::unknown(),
                               {words(check.outcome), true},
                               text::source_words(limit.source)});
    }
    limits.empty =
        RecordText::tr("No limit set was chosen for this recipe: the doses were not compared.");
    if (!record_.limit_set_name.empty()) {
        blocks.emplace_back(Paragraph{RecordText::tr("Compared with the limit set: %1")
                                          .arg(text::data_name(record_.limit_set_name))});
    }
    blocks.emplace_back(std::move(limits));
    return blocks;
}

std::vector<Block> RecordSections::signatures() const {
    return {
        Heading{RecordText::tr("Signatures")},
        Signatures{{RecordText::tr("Record made by"), RecordText::tr("Checked by"),
                    RecordText::tr("Released by"), RecordText::tr("Officer, seen")}},
        Paragraph{RecordText::tr(
                      "Figures are records and computations. Whether a product may be sold or "
                      "eaten is for local codes, licensed practice and laboratory measurement."),
                  true}};
}

} // namespace ui::print
