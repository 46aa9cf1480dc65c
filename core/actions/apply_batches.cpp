#include "core/actions/applying.h"
#include "core/store/batches.h"
#include "core/store/pieces.h"

#include <algorithm>

namespace core::actions {

using base::ErrorCode;
using model::EntryKind;
using model::PieceState;
using model::StageKind;

namespace {

void require_free_code(Applying& a, const model::Batch& batch) {
    const auto other = store::batch_by_code(a.book, batch.code);
    if (other && other->id != batch.id) {
        store::refuse(ErrorCode::conflict, "code_taken", batch.code);
    }
}

/// What pieces do while a stage of this kind runs; absent where it says nothing about them.
std::optional<PieceState> state_in(StageKind kind) {
    switch (kind) {
    case StageKind::salt:
    case StageKind::marinate:
        return PieceState::curing;
    case StageKind::rest:
    case StageKind::equalise:
        return PieceState::resting;
    case StageKind::smoke:
    case StageKind::dry:
    case StageKind::age:
        return PieceState::drying;
    case StageKind::wash:
    case StageKind::soak:
    case StageKind::press:
    case StageKind::coat:
    case StageKind::freeze:
    case StageKind::store:
        return std::nullopt;
    }
    return std::nullopt;
}

bool is_open(PieceState state) {
    return state == PieceState::planned || state == PieceState::curing ||
           state == PieceState::resting || state == PieceState::drying;
}

} // namespace

void apply(Applying& a, const AddBatch& c) {
    require_free_code(a, c.batch);
    a.add(EntryKind::batch, c.batch);
    a.about(c.batch.code);
}

void apply(Applying& a, const ChangeBatch& c) {
    require_free_code(a, c.batch);
    store::update(a.book, c.batch);
    a.about(c.batch.code);
}

void apply(Applying& a, const StartBatch& c) {
    model::Batch batch = c.batch;
    require_free_code(a, batch);
    if (c.recipe && !batch.recipe) {
        apply(a, *c.recipe);
        a.subject.clear(); // the action is about the batch
        batch.recipe = model::RecipeVersionId::from_row(a.created.back().row);
    }
    const model::BatchId id = a.add(EntryKind::batch, batch);
    a.about(batch.code);
    for (NewPiece piece : c.pieces) {
        piece.piece.batch = id;
        add_piece(a, piece);
    }
    for (model::Stage stage : c.stages) {
        stage.batch = id;
        a.add(EntryKind::stage, stage);
    }
    for (model::IngredientUse use : c.uses) {
        use.batch = id;
        a.add(EntryKind::ingredient_use, use);
    }
    for (model::Acceptance acceptance : c.accepted) {
        acceptance.batch = id;
        a.add(EntryKind::acceptance, acceptance);
    }
}

void apply(Applying& a, const AddIngredientUse& c) {
    a.about(store::get<model::Batch>(a.book, c.use.batch).code);
    a.add(EntryKind::ingredient_use, c.use);
}
void apply(Applying& a, const ChangeIngredientUse& c) {
    a.about(store::get<model::Batch>(a.book, c.use.batch).code);
    store::update(a.book, c.use);
}

void apply(Applying& a, const SetStages& c) {
    a.about(store::get<model::Batch>(a.book, c.batch).code);
    const auto is_kept = [&](model::StageId id) {
        return std::any_of(c.stages.begin(), c.stages.end(),
                           [&](const model::Stage& stage) { return stage.id == id; });
    };
    for (const model::Stage& old : store::stages(a.book, c.batch)) {
        if (is_kept(old.id)) {
            continue;
        }
        if (old.started_at) {
            store::refuse(ErrorCode::not_allowed, "stage_has_started", old.what.name);
        }
        store::remove<model::Stage>(a.book, old.id);
    }
    for (model::Stage stage : c.stages) {
        stage.batch = c.batch;
        if (stage.id.is_assigned()) {
            if (store::get<model::Stage>(a.book, stage.id).batch != c.batch) {
                store::refuse(ErrorCode::not_allowed, "stage_of_another_batch", stage.what.name);
            }
            store::update(a.book, stage);
        } else {
            a.add(EntryKind::stage, stage);
        }
    }
}

void apply(Applying& a, const StartStage& c) {
    auto stage = store::get<model::Stage>(a.book, c.stage);
    if (stage.started_at) {
        store::refuse(ErrorCode::conflict, "stage_has_started", stage.what.name);
    }
    stage.started_at = c.at;
    stage.chamber = c.chamber ? c.chamber : stage.chamber;
    store::update(a.book, stage);
    auto batch = store::get<model::Batch>(a.book, stage.batch);
    a.about(batch.code);
    if (batch.state == model::BatchState::planned) {
        batch.state = model::BatchState::in_progress;
        store::update(a.book, batch);
    }
    const auto state = state_in(stage.what.kind);
    for (model::Piece& piece : store::pieces(a.book, {.batch = stage.batch})) {
        if (is_open(piece.state) && (state || c.chamber)) {
            piece.state = state.value_or(piece.state);
            piece.chamber = c.chamber ? c.chamber : piece.chamber;
            store::update(a.book, piece);
        }
    }
}

void apply(Applying& a, const EndStage& c) {
    auto stage = store::get<model::Stage>(a.book, c.stage);
    if (stage.ended_at) {
        store::refuse(ErrorCode::conflict, "stage_has_ended", stage.what.name);
    }
    if (stage.started_at && c.at < *stage.started_at) {
        store::refuse(ErrorCode::not_allowed, "ends_before_start", stage.what.name);
    }
    stage.ended_at = c.at;
    stage.end_reason = c.reason;
    store::update(a.book, stage);
    a.about(store::get<model::Batch>(a.book, stage.batch).code);
}

void apply(Applying& a, const RecordOutcome& c) {
    a.about(store::get<model::Batch>(a.book, c.outcome.batch).code);
    store::put_outcome(a.book, c.outcome);
    a.created.push_back({EntryKind::outcome, c.outcome.batch.row()});
}

} // namespace core::actions
