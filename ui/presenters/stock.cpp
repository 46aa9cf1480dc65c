#include "ui/presenters/stock.h"

#include <algorithm>
#include <map>

namespace ui::presenters {

using core::units::Mass;

void rank_for_eating(std::vector<StockLine>& lines) {
    std::stable_sort(lines.begin(), lines.end(), [](const StockLine& a, const StockLine& b) {
        if (a.pack.gone != b.pack.gone) {
            return b.pack.gone;
        }
        // An opened pack dries and spoils first whatever its label says.
        if (a.pack.opened_on.has_value() != b.pack.opened_on.has_value()) {
            return a.pack.opened_on.has_value();
        }
        if (a.pack.keep_by.has_value() != b.pack.keep_by.has_value()) {
            return a.pack.keep_by.has_value();
        }
        if (a.pack.keep_by != b.pack.keep_by) {
            return *a.pack.keep_by < *b.pack.keep_by;
        }
        return a.pack.packed_on < b.pack.packed_on;
    });
    int rank = 0;
    for (auto& line : lines) {
        line.eat_order = rank++;
    }
}

std::vector<StockLine> stock_lines(const core::services::Book& book) {
    std::vector<StockLine> lines;
    const auto packs = book.packs();
    const auto pieces = book.pieces();
    const auto batches = book.batches();
    if (!packs || !pieces || !batches) {
        return lines;
    }
    std::map<core::model::PieceId, const core::model::Piece*> piece_of;
    for (const auto& piece : *pieces) {
        piece_of[piece.id] = &piece;
    }
    std::map<core::model::BatchId, const core::model::Batch*> batch_of;
    for (const auto& batch : *batches) {
        batch_of[batch.id] = &batch;
    }
    for (const auto& pack : *packs) {
        StockLine line{pack, {}, {}, {}, 0};
        if (const auto piece = piece_of.find(pack.piece); piece != piece_of.end()) {
            line.piece = QString::fromStdString(piece->second->code);
            const auto batch = batch_of.find(piece->second->batch);
            if (batch != batch_of.end()) {
                line.product = QString::fromStdString(batch->second->product);
                line.batch = QString::fromStdString(batch->second->code);
            }
        }
        lines.push_back(std::move(line));
    }
    rank_for_eating(lines);
    return lines;
}

std::optional<Mass> raw_of_batch(const core::services::Book& book, core::model::BatchId batch) {
    using core::model::WeighedState;
    core::services::PieceFilter filter;
    filter.batch = batch;
    const auto histories = book.piece_histories(filter);
    if (!histories) {
        return {};
    }
    std::optional<Mass> sum;
    for (const auto& history : *histories) {
        if (history.piece.parent) {
            continue; // its weight is in its parent's
        }
        std::optional<Mass> raw;
        for (const auto& weighing : history.weighings) {
            const bool counts = weighing.state == WeighedState::raw ||
                                (!raw && weighing.state == WeighedState::trimmed);
            if (weighing.stands() && counts) {
                raw = weighing.net();
            }
        }
        const bool bundle =
            std::any_of(history.events.begin(), history.events.end(), [](const auto& event) {
                return event.kind == core::model::EventKind::merged;
            });
        if (!raw && !bundle) {
            return {};
        }
        sum = sum.value_or(Mass::grams(0)) + raw.value_or(Mass::grams(0));
    }
    return sum;
}

std::optional<Yield> yield_of(const PieceLine& line, const core::model::Batch& batch,
                              const std::vector<core::model::Pack>& packs,
                              const std::vector<core::model::PackMove>& moves,
                              std::optional<Mass> raw_of_whole_batch) {
    using core::model::ReferenceWeight;
    std::optional<Mass> raw;
    for (const auto& loss : line.losses) {
        if (loss.reference == ReferenceWeight::raw ||
            (!raw && loss.reference == ReferenceWeight::trimmed)) {
            raw = loss.start;
        }
    }
    if (!raw || raw->in_grams() <= 0 || !line.net || line.net->in_grams() <= 0) {
        return {};
    }
    std::optional<Mass> packed;
    for (const auto& pack : packs) {
        packed = packed.value_or(Mass::grams(0)) + pack.packed_weight;
    }
    for (const auto& move : moves) {
        if (move.kind == core::model::MoveKind::re_hung && packed) {
            *packed -= move.amount;
        }
    }
    // Never weighed after the raw weight: what was packed is all that is known of it.
    const bool weighed = *line.net < *raw || !packed || packed->in_grams() <= 0;
    const Mass finished = weighed ? *line.net : *packed;
    const auto share = core::units::MassShare::of(finished, *raw);
    Yield yield{*raw, finished, share, core::units::MassShare::fraction(1) - share, packed, {}};
    if (batch.price_per_kilogram) {
        // Trim is paid for, too: spread over the pieces by their raw weight.
        double paid_kilograms = raw->in_kilograms();
        if (batch.bought_weight && raw_of_whole_batch && raw_of_whole_batch->in_grams() > 0) {
            paid_kilograms = *batch.bought_weight / *raw_of_whole_batch * raw->in_kilograms();
        }
        yield.cost_per_kilogram =
            *batch.price_per_kilogram * paid_kilograms / finished.in_kilograms();
    }
    return yield;
}

} // namespace ui::presenters
