#pragma once

#include "core/model/ids.h"

/// Which array of the document an id points into, by the id's type.
namespace core::exchange::detail {

constexpr const char* kind_of(model::PersonId) {
    return "people";
}
constexpr const char* kind_of(model::ChamberId) {
    return "chambers";
}
constexpr const char* kind_of(model::SensorId) {
    return "sensors";
}
constexpr const char* kind_of(model::InstrumentId) {
    return "instruments";
}
constexpr const char* kind_of(model::CheckId) {
    return "checks";
}
constexpr const char* kind_of(model::RecipeId) {
    return "recipes";
}
constexpr const char* kind_of(model::RecipeVersionId) {
    return "recipe_versions";
}
constexpr const char* kind_of(model::IngredientId) {
    return "ingredients";
}
constexpr const char* kind_of(model::LotId) {
    return "lots";
}
constexpr const char* kind_of(model::BatchId) {
    return "batches";
}
constexpr const char* kind_of(model::PieceId) {
    return "pieces";
}
constexpr const char* kind_of(model::WeighingId) {
    return "weighings";
}
constexpr const char* kind_of(model::EventId) {
    return "events";
}
constexpr const char* kind_of(model::StageId) {
    return "stages";
}
constexpr const char* kind_of(model::IngredientUseId) {
    return "ingredient_uses";
}
constexpr const char* kind_of(model::AcceptanceId) {
    return "acceptances";
}
constexpr const char* kind_of(model::NoteId) {
    return "notes";
}
constexpr const char* kind_of(model::DecisionId) {
    return "decisions";
}
constexpr const char* kind_of(model::PackId) {
    return "packs";
}
constexpr const char* kind_of(model::PackMoveId) {
    return "pack_moves";
}
constexpr const char* kind_of(model::TaskId) {
    return "task_ticks";
}

} // namespace core::exchange::detail
