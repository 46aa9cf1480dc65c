#include "ui/presenters/review.h"

#include "core/facts/facts.h"
#include "core/mix/mix_sheet.h"
#include "core/services/stage_air.h"
#include "ui/presenters/hurdle_facts.h"
#include "ui/presenters/piece_series.h"

namespace ui::presenters {
namespace {

using core::doneness::Sense;
using core::model::NoteKind;

/// Salt put on, of the raw weight, by the recipe as used; absent without one.
std::optional<core::units::MassShare> salt_dose_of(const core::services::Book& book,
                                                   const core::model::Batch& batch, bool& excess) {
    if (!batch.recipe) {
        return {};
    }
    const auto version = book.recipe_version(*batch.recipe);
    if (!version) {
        return {};
    }
    const auto recipe = core::mix::read_recipe(version->document);
    if (!recipe) {
        return {};
    }
    excess = recipe->method == core::mix::Method::box;
    core::mix::MixRequest request;
    request.recipe = *recipe;
    // A proportional recipe gives the same share for any weight.
    request.pieces = {{"one", recipe->for_meat.value_or(core::units::Mass::kilograms(1))}};
    static const core::facts::Facts facts = core::facts::built_in_facts();
    const auto salt = core::mix::make_mix_sheet(request, facts).dose.salt.best;
    return salt.as_fraction() > 0 ? std::optional(salt) : std::nullopt;
}

std::optional<Sense> sense_of(NoteKind kind) {
    switch (kind) {
    case NoteKind::touch:
        return Sense::feel_outside;
    case NoteKind::smell:
        return Sense::smell;
    case NoteKind::mould:
        return Sense::mould;
    case NoteKind::look:
    case NoteKind::taste:
    case NoteKind::action:
    case NoteKind::outcome:
    case NoteKind::other:
        break;
    }
    return {};
}

} // namespace

core::doneness::EvidenceSheet evidence_for(const core::services::Book& book, const PieceLine& line,
                                           std::optional<core::doneness::CentreFeel> centre,
                                           core::units::Instant now) {
    const auto& piece = line.piece();
    const auto series = series_of(line.history, line.kin);
    core::doneness::EvidenceRequest request{.now = now};
    request.form = piece.form;
    request.thickness = piece.thickness;
    request.fat = piece.fat;
    request.target = piece.target;
    request.references = {series.references.raw, series.references.trimmed, series.references.cured,
                          series.references.hung};
    for (const auto& point : series.points) {
        request.weights.push_back({point.at, point.net});
    }
    request.forecast = line.forecast;
    request.centre = centre;
    if (const auto batch = book.batch(piece.batch)) {
        request.salt_dose = salt_dose_of(book, *batch, request.excess_salt);
    }
    if (auto stages = core::services::stage_records(book, line.history, now)) {
        request.stages = std::move(*stages);
    }
    if (const auto humidity = core::services::humidity_lately(book, piece, now)) {
        request.chamber_humidity = *humidity;
    }
    core::services::NoteFilter filter;
    filter.piece = piece.id;
    if (const auto notes = book.notes(filter)) {
        for (const auto& note : *notes) {
            if (const auto sense = sense_of(note.kind)) {
                request.senses.push_back({*sense, note.at, note.text});
            }
        }
    }
    return core::doneness::evidence_of(request, hurdle_facts());
}

} // namespace ui::presenters
