#include "ui/print/record_tags.h"

#include "ui/print/record_words.h"
#include "ui/print/sheet_words.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

namespace ui::print {
namespace {

using core::units::Mass;

struct Hanging {
    std::optional<core::units::Instant> at;
    std::optional<Mass> tare;
};

/// When the piece was hung and what hangs with it: the tare of its last standing weighing, which
/// knows of every re-dressing since.
Hanging hanging_of(const core::services::BatchRecord& record, core::model::PieceId piece) {
    Hanging out;
    for (const auto& entry : record.entries.events) {
        const core::model::PieceEvent& e = entry.value;
        if (e.piece == piece && !e.withdrawn && e.kind == core::model::EventKind::hung) {
            out.at = e.at;
        }
    }
    std::optional<core::units::Instant> last;
    for (const auto& entry : record.entries.weighings) {
        const core::model::Weighing& w = entry.value;
        if (w.piece == piece && w.stands() && (!last || w.taken_at >= *last)) {
            last = w.taken_at;
            out.tare = w.tare;
        }
    }
    return out;
}

std::optional<Mass> reference_weight(const core::model::Piece& piece,
                                     const core::services::PieceLoss& loss) {
    using Reference = core::model::ReferenceWeight;
    if (!piece.target) {
        return {};
    }
    switch (piece.target->reference) {
    case Reference::raw:
        return loss.green_changed ? std::nullopt : loss.raw;
    case Reference::hung:
        return loss.hung_changed ? std::nullopt : loss.hung;
    case Reference::trimmed:
        return loss.green_changed ? std::nullopt : loss.trimmed;
    case Reference::cured:
        break;
    }
    return {};
}

} // namespace

std::vector<Tag> tags_of(const core::services::BatchRecord& record, const text::Style& style) {
    std::vector<Tag> tags;
    const core::model::Batch& batch = record.batch();
    for (std::size_t i = 0; i < record.losses.size(); ++i) {
        const core::model::Piece& piece = record.entries.pieces[i].value;
        const core::services::PieceLoss& loss = record.losses[i];
        using State = core::model::PieceState;
        if (piece.state == State::split_up || piece.state == State::merged_away ||
            piece.state == State::discarded) {
            continue;
        }
        Tag tag{{piece.code, batch.code, {}},
                QString::fromStdString(batch.product.empty() ? batch.name : batch.product),
                {},
                {},
                {},
                {},
                {}};
        const Hanging hanging = hanging_of(record, piece.id);
        if (hanging.at) {
            tag.hung = text::words(style.zone.day_of(*hanging.at), style);
        }
        if (hanging.tare) {
            tag.tare = text::words(*hanging.tare, style);
        }
        const Mass tare = hanging.tare.value_or(Mass::grams(0));
        if (const auto reference = reference_weight(piece, loss)) {
            tag.start = text::words(*reference + tare, style);
            tag.target =
                text::words(*reference * (1 - piece.target->loss.as_fraction()) + tare, style);
        }
        if (piece.target) {
            tag.loss =
                TagText::tr("%1 of %2")
                    .arg(text::words(piece.target->loss, style, 0), words(piece.target->reference));
        }
        tags.push_back(std::move(tag));
    }
    return tags;
}

} // namespace ui::print
