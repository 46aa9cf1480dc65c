#include "core/actions/applying.h"
#include "core/store/pieces.h"

namespace core::actions {

using base::ErrorCode;
using model::EntryKind;
using model::EventKind;
using model::Piece;
using model::PieceId;
using model::PieceState;
using model::Weighing;

namespace {

void require_free_code(Applying& a, const Piece& piece) {
    const auto other = store::open_piece_by_code(a.book, piece.code);
    if (other && other->id != piece.id) {
        store::refuse(ErrorCode::conflict, "code_taken", piece.code);
    }
}

void require_in_use(const Piece& piece) {
    if (piece.state == PieceState::split_up || piece.state == PieceState::merged_away) {
        store::refuse(ErrorCode::not_allowed, "piece_carries_on_elsewhere", piece.code);
    }
}

Weighing standing(Applying& a, model::WeighingId id) {
    Weighing weighing = store::get<Weighing>(a.book, id);
    if (weighing.amended_by) {
        store::refuse(ErrorCode::conflict, "already_amended");
    }
    if (weighing.withdrawn) {
        store::refuse(ErrorCode::conflict, "already_withdrawn");
    }
    return weighing;
}

void set_state(Applying& a, Piece piece, PieceState state) {
    piece.state = state;
    store::update(a.book, piece);
}

} // namespace

PieceId add_piece(Applying& a, const NewPiece& piece) {
    require_free_code(a, piece.piece);
    const PieceId id = a.add(EntryKind::piece, piece.piece);
    for (Weighing weighing : piece.weighings) {
        weighing.piece = id;
        a.add(EntryKind::weighing, weighing);
    }
    return id;
}

void apply(Applying& a, const AddPiece& c) {
    add_piece(a, c.piece);
    a.about(c.piece.piece.code);
}

void apply(Applying& a, const ChangePiece& c) {
    require_free_code(a, c.piece);
    store::update(a.book, c.piece);
    a.about(c.piece.code);
}

void apply(Applying& a, const AddWeighing& c) {
    const Piece piece = store::get<Piece>(a.book, c.weighing.piece);
    require_in_use(piece);
    a.add(EntryKind::weighing, c.weighing);
    a.about(piece.code);
}

void apply(Applying& a, const AddWeighings& c) {
    for (const Weighing& weighing : c.weighings) {
        apply(a, AddWeighing{weighing});
    }
}

void apply(Applying& a, const AmendWeighing& c) {
    const Weighing old = standing(a, c.weighing);
    Weighing corrected = c.corrected;
    corrected.piece = old.piece;
    corrected.amends = old.id;
    corrected.withdrawn = false;
    a.add(EntryKind::weighing, corrected);
    a.about(store::get<Piece>(a.book, old.piece).code);
}

void apply(Applying& a, const WithdrawWeighing& c) {
    const Weighing old = standing(a, c.weighing);
    store::withdraw_weighing(a.book, old.id);
    a.about(store::get<Piece>(a.book, old.piece).code);
}

void apply(Applying& a, const RecordEvent& c) {
    Piece piece = store::get<Piece>(a.book, c.event.piece);
    require_in_use(piece);
    if (c.event.kind == EventKind::split || c.event.kind == EventKind::merged) {
        store::refuse(ErrorCode::not_allowed, "use_split_or_merge", piece.code);
    }
    a.add(EntryKind::event, c.event);
    a.about(piece.code);
    const bool starts_drying = c.event.kind == EventKind::hung;
    if (starts_drying || (c.event.kind == EventKind::moved && c.event.chamber)) {
        piece.state = starts_drying ? PieceState::drying : piece.state;
        piece.chamber = c.event.chamber ? c.event.chamber : piece.chamber;
        store::update(a.book, piece);
    }
}

void apply(Applying& a, const WithdrawEvent& c) {
    auto event = store::get<model::PieceEvent>(a.book, c.event);
    if (event.withdrawn) {
        store::refuse(ErrorCode::conflict, "already_withdrawn");
    }
    if (event.kind == EventKind::split || event.kind == EventKind::merged) {
        store::refuse(ErrorCode::not_allowed, "pieces_made_by_event");
    }
    event.withdrawn = true;
    store::update(a.book, event);
    a.about(store::get<Piece>(a.book, event.piece).code);
}

void apply(Applying& a, const SplitPiece& c) {
    const Piece parent = store::get<Piece>(a.book, c.piece);
    require_in_use(parent);
    a.about(parent.code);
    set_state(a, parent, PieceState::split_up); // first: a child may take over the code
    model::PieceEvent event{.piece = parent.id,
                            .kind = EventKind::split,
                            .at = c.at,
                            .net_before = c.net_before,
                            .note = c.note};
    for (NewPiece child : c.children) {
        child.piece.batch = parent.batch;
        child.piece.parent = parent.id;
        child.piece.state = parent.state;
        child.piece.target = child.piece.target ? child.piece.target : parent.target;
        child.piece.thickness = child.piece.thickness ? child.piece.thickness : parent.thickness;
        child.piece.fat = child.piece.fat ? child.piece.fat : parent.fat;
        child.piece.chamber = child.piece.chamber ? child.piece.chamber : parent.chamber;
        event.others.push_back(add_piece(a, child));
    }
    a.add(EntryKind::event, event);
}

void apply(Applying& a, const MergePieces& c) {
    model::PieceEvent event{.kind = EventKind::merged, .at = c.at, .note = c.note};
    for (const PieceId id : c.members) {
        const Piece member = store::get<Piece>(a.book, id);
        require_in_use(member);
        if (member.batch != c.into.piece.batch) {
            store::refuse(ErrorCode::not_allowed, "not_of_one_batch", member.code);
        }
        set_state(a, member, PieceState::merged_away);
        event.others.push_back(id);
        a.about(member.code);
    }
    event.piece = add_piece(a, c.into);
    a.add(EntryKind::event, event);
}

void apply(Applying& a, const DiscardPiece& c) {
    const Piece piece = store::get<Piece>(a.book, c.piece);
    require_in_use(piece);
    if (piece.state == PieceState::discarded) {
        store::refuse(ErrorCode::conflict, "already_discarded", piece.code);
    }
    set_state(a, piece, PieceState::discarded);
    a.add(EntryKind::note, model::Note{.batch = piece.batch,
                                       .piece = piece.id,
                                       .at = c.at,
                                       .kind = model::NoteKind::action,
                                       .text = a.context.why});
    a.about(piece.code);
}

} // namespace core::actions
