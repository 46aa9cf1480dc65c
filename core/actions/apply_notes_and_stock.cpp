#include "core/actions/applying.h"
#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/pieces.h"

namespace core::actions {

using base::ErrorCode;
using model::EntryKind;

namespace {

void about_place(Applying& a, std::optional<model::BatchId> batch,
                 std::optional<model::PieceId> piece) {
    if (piece) {
        a.about(store::get<model::Piece>(a.book, *piece).code);
    } else if (batch) {
        a.about(store::get<model::Batch>(a.book, *batch).code);
    }
}

} // namespace

void apply(Applying& a, const TickTask& c) {
    about_place(a, c.tick.batch, c.tick.piece);
    a.add(EntryKind::task_tick, c.tick);
}

void apply(Applying& a, const UntickTask& c) {
    auto tick = store::get<model::TaskTick>(a.book, c.task);
    if (tick.withdrawn) {
        store::refuse(ErrorCode::conflict, "already_withdrawn");
    }
    tick.withdrawn = true;
    store::update(a.book, tick);
    about_place(a, tick.batch, tick.piece);
}

void apply(Applying& a, const AddNote& c) {
    about_place(a, c.note.batch, c.note.piece);
    a.add(EntryKind::note, c.note);
}

void apply(Applying& a, const AcceptFinding& c) {
    about_place(a, c.acceptance.batch, c.acceptance.piece);
    a.add(EntryKind::acceptance, c.acceptance);
}

void apply(Applying& a, const SignDecision& c) {
    auto piece = store::get<model::Piece>(a.book, c.decision.piece);
    a.add(EntryKind::decision, c.decision);
    a.about(piece.code);
    if (c.decision.verdict == model::Verdict::not_yet &&
        piece.state == model::PieceState::finished) {
        hang_again(a, piece.id, c.decision.at, c.decision.why);
    } else if (c.decision.verdict != model::Verdict::not_yet) {
        piece.state = c.decision.verdict == model::Verdict::done ? model::PieceState::finished
                                                                 : model::PieceState::discarded;
        store::update(a.book, piece);
    }
}

void apply(Applying& a, const AddPack& c) {
    store::get<model::Piece>(a.book, c.pack.piece);
    model::Pack pack = c.pack;
    pack.weight_left = pack.packed_weight;
    pack.gone = false;
    a.add(EntryKind::pack, pack);
    a.about(pack.code);
}

void apply(Applying& a, const ChangePack& c) {
    const auto old = store::get<model::Pack>(a.book, c.pack.id);
    model::Pack pack = c.pack;
    pack.piece = old.piece;
    pack.packed_weight = old.packed_weight;
    pack.weight_left = old.weight_left;
    pack.gone = old.gone;
    store::update(a.book, pack);
    a.about(pack.code);
}

void apply(Applying& a, const MovePack& c) {
    auto pack = store::get<model::Pack>(a.book, c.move.pack);
    a.about(pack.code);
    if (c.move.kind == model::MoveKind::re_hung) {
        a.add(EntryKind::pack_move, hang_from_pack(a, c.move));
        return;
    }
    // Half a milligram: amounts are kept to the milligram.
    constexpr units::Mass rounding = units::Mass::milligrams(0.5);
    if (c.move.kind == model::MoveKind::counted) {
        pack.weight_left = c.move.amount; // what was found there
    } else {
        if (c.move.amount > pack.weight_left + rounding) {
            store::refuse(ErrorCode::not_allowed, "more_than_is_left", pack.code);
        }
        pack.weight_left -= c.move.amount;
    }
    pack.gone = pack.weight_left < rounding;
    store::update(a.book, pack);
    a.add(EntryKind::pack_move, c.move);
}

} // namespace core::actions
