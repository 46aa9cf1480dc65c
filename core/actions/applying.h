#pragma once

// Internal to core/actions: what the apply functions share while one action is carried out.

#include "core/actions/command.h"
#include "core/store/codes.h"
#include "core/store/entries.h"
#include "core/store/fault.h"

#include <string>
#include <vector>

namespace core::actions {

/// One action being carried out. The apply functions write through it and throw store::Fault.
struct Applying {
    store::Connection& book;
    const Context& context;
    std::vector<model::EntryRef> created;
    std::string subject; ///< codes of what it is about, for undo's label

    template <class T>
    store::IdOf<T> add(model::EntryKind kind, const T& entry) {
        const auto id = store::insert(book, entry);
        created.push_back({kind, id.row()});
        return id;
    }
    void about(const std::string& code) {
        if (!code.empty()) {
            subject += (subject.empty() ? "" : ", ") + code;
        }
    }
};

// people, places, recipes: apply_registers.cpp
void apply(Applying& a, const AddPerson& c);
void apply(Applying& a, const ChangePerson& c);
void apply(Applying& a, const AddChamber& c);
void apply(Applying& a, const ChangeChamber& c);
void apply(Applying& a, const AddSensor& c);
void apply(Applying& a, const ChangeSensor& c);
void apply(Applying& a, const AddInstrument& c);
void apply(Applying& a, const ChangeInstrument& c);
void apply(Applying& a, const AddCheck& c);
void apply(Applying& a, const AddRecipe& c);
void apply(Applying& a, const AddRecipeVersion& c);
void apply(Applying& a, const RenameRecipe& c);
void apply(Applying& a, const ArchiveRecipe& c);
void apply(Applying& a, const AddIngredient& c);
void apply(Applying& a, const ChangeIngredient& c);
void apply(Applying& a, const AddLot& c);
void apply(Applying& a, const ChangeLot& c);
void apply(Applying& a, const SetPreference& c);

// batches and stages: apply_batches.cpp
void apply(Applying& a, const StartBatch& c);
void apply(Applying& a, const AddBatch& c);
void apply(Applying& a, const ChangeBatch& c);
void apply(Applying& a, const AddIngredientUse& c);
void apply(Applying& a, const ChangeIngredientUse& c);
void apply(Applying& a, const SetStages& c);
void apply(Applying& a, const StartStage& c);
void apply(Applying& a, const EndStage& c);
void apply(Applying& a, const RecordOutcome& c);

// pieces, weighings, events: apply_pieces.cpp
void apply(Applying& a, const AddPiece& c);
void apply(Applying& a, const ChangePiece& c);
void apply(Applying& a, const AddWeighing& c);
void apply(Applying& a, const AddWeighings& c);
void apply(Applying& a, const AmendWeighing& c);
void apply(Applying& a, const WithdrawWeighing& c);
void apply(Applying& a, const RecordEvent& c);
void apply(Applying& a, const WithdrawEvent& c);
void apply(Applying& a, const SplitPiece& c);
void apply(Applying& a, const MergePieces& c);
void apply(Applying& a, const DiscardPiece& c);

// notes, decisions, stock: apply_notes_and_stock.cpp
void apply(Applying& a, const TickTask& c);
void apply(Applying& a, const UntickTask& c);
void apply(Applying& a, const AddNote& c);
void apply(Applying& a, const AcceptFinding& c);
void apply(Applying& a, const SignDecision& c);
void apply(Applying& a, const AddPack& c);
void apply(Applying& a, const ChangePack& c);
void apply(Applying& a, const MovePack& c);

/// Hangs a finished piece again: it dries, its batch is in progress, and where no drying stage of
/// the batch runs the last one is begun anew, so that the day sheet asks for it. `net` is what it
/// weighs now. not_allowed "not_to_hang_again", "piece_is_packed". apply_hang_again.cpp
void hang_again(Applying& a, model::PieceId piece, units::Instant at, const std::string& note);
/// Takes `move.amount` out of a pack and hangs it: the piece itself where that is all of it (see
/// hanging.h), else a new piece of the family under the code in `move.to_whom`. The move must be
/// `re_hung`; "more_than_is_left", "code_missing", "code_taken" besides. Returns the move with the
/// code of what hangs now.
model::PackMove hang_from_pack(Applying& a, const model::PackMove& move);

/// Adds a piece with its weighings to the batch named in it; conflict "code_taken" when an open
/// piece carries its code.
model::PieceId add_piece(Applying& a, const NewPiece& piece);

} // namespace core::actions
