#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "core/model/ids.h"
#include "core/model/log.h"
#include "core/model/pack.h"
#include "core/model/piece.h"
#include "core/model/plan.h"
#include "core/model/recipe.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// Every change to the book as a plain value. A screen fills one in and hands it to
/// services::Book::perform; one command is one action: one transaction, one line of the log, one
/// step of undo. Ids of new entries are left unassigned and come back in Performed.
namespace core::actions {

/// Who asks for a change, when and why. `now` is the moment of asking, not the moment the entry is
/// about (a weighing may be entered a day late).
struct Context {
    std::optional<model::PersonId> who;
    units::Instant now;
    std::string why; ///< required for amendments and withdrawals; otherwise may be empty
};

// --- people, places and things that measure -------------------------------------------------
struct AddPerson {
    model::Person person;
};
struct ChangePerson {
    model::Person person;
};
struct AddChamber {
    model::Chamber chamber;
};
struct ChangeChamber {
    model::Chamber chamber;
};
struct AddSensor {
    model::Sensor sensor;
};
struct ChangeSensor {
    model::Sensor sensor;
};
struct AddInstrument {
    model::Instrument instrument;
};
struct ChangeInstrument {
    model::Instrument instrument;
};
struct AddCheck {
    model::CalibrationCheck check;
};

// --- recipes and what goes into them ----------------------------------------------------------
/// A new line of recipes with its first version. `number` and `made_at` are set by the book.
struct AddRecipe {
    std::string name;
    std::string document;
};
/// A further version; the ones before it stay as they are.
struct AddRecipeVersion {
    model::RecipeId recipe;
    std::string document;
};
struct RenameRecipe {
    model::RecipeId recipe;
    std::string name;
};
struct ArchiveRecipe {
    model::RecipeId recipe;
    bool archived = true;
};
struct AddIngredient {
    model::Ingredient ingredient;
};
struct ChangeIngredient {
    model::Ingredient ingredient;
};
struct AddLot {
    model::Lot lot;
};
struct ChangeLot {
    model::Lot lot;
};

// --- batches, pieces, weighings ---------------------------------------------------------------
struct NewPiece {
    model::Piece piece;                     ///< `batch` is set by the book
    std::vector<model::Weighing> weighings; ///< raw and trimmed weights, say; `piece` is set
};

/// A whole accepted plan as one action: the batch, its pieces with their first weights, its
/// stages, what went in from which lot, and the cautions a person accepted. `recipe` makes a
/// recipe version "as used" when the batch has none yet.
struct StartBatch {
    model::Batch batch;
    std::vector<NewPiece> pieces;
    std::vector<model::Stage> stages;       ///< `batch` is set; `order` as given
    std::vector<model::IngredientUse> uses; ///< `batch` is set; `piece` must stay absent
    std::vector<model::Acceptance> accepted;
    std::optional<AddRecipe> recipe;
};
struct AddBatch {
    model::Batch batch;
};
struct ChangeBatch {
    model::Batch batch;
};
struct AddPiece {
    NewPiece piece;
}; ///< `piece.piece.batch` names the batch
struct ChangePiece {
    model::Piece piece;
};
struct AddIngredientUse {
    model::IngredientUse use;
};
struct ChangeIngredientUse {
    model::IngredientUse use;
};

struct AddWeighing {
    model::Weighing weighing;
};
/// Many at once: a weigh-in round, an import.
struct AddWeighings {
    std::vector<model::Weighing> weighings;
};
/// The corrected entry is appended; the one it corrects stays readable. `corrected.piece` and
/// `corrected.amends` are set by the book. Needs Context::why.
struct AmendWeighing {
    model::WeighingId weighing;
    model::Weighing corrected;
};
/// Needs Context::why.
struct WithdrawWeighing {
    model::WeighingId weighing;
};

/// Something that happened. `hung` makes the piece dry, `moved` changes its chamber; split and
/// merge have commands of their own.
struct RecordEvent {
    model::PieceEvent event;
};
/// The event no longer counts, and stays readable. Needs Context::why.
struct WithdrawEvent {
    model::EventId event;
};

/// Cuts a piece into children that keep the family. Each child brings its code, form and its own
/// weight (`weighings`); batch, parent and state are set by the book, and target, thickness, fat
/// and chamber are the parent's where not given. A child may take over the parent's code.
struct SplitPiece {
    model::PieceId piece;
    units::Instant at;
    std::optional<units::Mass> net_before;
    std::vector<NewPiece> children; ///< two or more
    std::string note;
};
/// Weighs several pieces as one from now on, under `into`'s code.
struct MergePieces {
    std::vector<model::PieceId> members; ///< two or more, all of `into.piece.batch`
    units::Instant at;
    NewPiece into;
    std::string note;
};
struct DiscardPiece {
    model::PieceId piece;
    units::Instant at;
};

// --- stages and daily work --------------------------------------------------------------------
/// Replaces the stages of a batch that have not started; started ones must be kept, by id.
struct SetStages {
    model::BatchId batch;
    std::vector<model::Stage> stages;
};
struct StartStage {
    model::StageId stage;
    units::Instant at;
    std::optional<model::ChamberId> chamber;
};
struct EndStage {
    model::StageId stage;
    units::Instant at;
    std::string reason;
};
struct TickTask {
    model::TaskTick tick;
};
/// The tick no longer counts, and stays readable.
struct UntickTask {
    model::TaskId task;
};

// --- judging and stock ------------------------------------------------------------------------
struct AddNote {
    model::Note note;
};
struct AcceptFinding {
    model::Acceptance acceptance;
};
/// `done` finishes the piece, `discard` discards it, `not_yet` hangs a finished one again.
struct SignDecision {
    model::Decision decision;
};
struct RecordOutcome {
    model::Outcome outcome;
};
struct AddPack {
    model::Pack pack;
};
struct ChangePack {
    model::Pack pack;
}; ///< code, place, dates; weights change by MovePack only
struct MovePack {
    model::PackMove move; ///< `re_hung`: it dries on, a part of a piece under the code in `to_whom`
};

/// A setting kept with the book ("currency", "limits"). Logged, but not part of undo: undoing a
/// weighing must not switch somebody's units. An absent value clears it.
struct SetPreference {
    std::string key;
    std::optional<std::string> value;
};

using Command =
    std::variant<AddPerson, ChangePerson, AddChamber, ChangeChamber, AddSensor, ChangeSensor,
                 AddInstrument, ChangeInstrument, AddCheck, AddRecipe, AddRecipeVersion,
                 RenameRecipe, ArchiveRecipe, AddIngredient, ChangeIngredient, AddLot, ChangeLot,
                 StartBatch, AddBatch, ChangeBatch, AddPiece, ChangePiece, AddIngredientUse,
                 ChangeIngredientUse, AddWeighing, AddWeighings, AmendWeighing, WithdrawWeighing,
                 RecordEvent, WithdrawEvent, SplitPiece, MergePieces, DiscardPiece, SetStages,
                 StartStage, EndStage, TickTask, UntickTask, AddNote, AcceptFinding, SignDecision,
                 RecordOutcome, AddPack, ChangePack, MovePack, SetPreference>;

/// The command's stable name in the log: "add_weighing". ui/text turns it into words.
[[nodiscard]] const char* verb_of(const Command& command);

/// What an action made, in the order of its making: for StartBatch recipe, recipe version, batch,
/// then each piece followed by its weighings, then stages and uses.
struct Performed {
    model::ActionId action;
    std::vector<model::EntryRef> created;

    /// The n-th created entry of a kind, typed: `performed.id<model::PieceId>(EntryKind::piece)`.
    /// Unassigned when there is none.
    template <class IdType>
    [[nodiscard]] IdType id(model::EntryKind kind, std::size_t nth = 0) const {
        for (const model::EntryRef& entry : created) {
            if (entry.kind == kind && nth-- == 0) {
                return IdType::from_row(entry.row);
            }
        }
        return IdType{};
    }
};

} // namespace core::actions
