#pragma once

#include "core/base/id.h"

namespace core::model {

using BatchId = base::Id<struct BatchTag>;
using PieceId = base::Id<struct PieceTag>;
using WeighingId = base::Id<struct WeighingTag>;
using EventId = base::Id<struct EventTag>;
using StageId = base::Id<struct StageTag>;
using RecipeId = base::Id<struct RecipeTag>;
using RecipeVersionId = base::Id<struct RecipeVersionTag>;
using IngredientId = base::Id<struct IngredientTag>;
using LotId = base::Id<struct LotTag>;
using ChamberId = base::Id<struct ChamberTag>;
using SensorId = base::Id<struct SensorTag>;
using NoteId = base::Id<struct NoteTag>;
using DecisionId = base::Id<struct DecisionTag>;
using PackId = base::Id<struct PackTag>;
using PackMoveId = base::Id<struct PackMoveTag>;
using InstrumentId = base::Id<struct InstrumentTag>;
using CheckId = base::Id<struct CheckTag>;
using PersonId = base::Id<struct PersonTag>;
using ActionId = base::Id<struct ActionTag>;
using ClimateImportId = base::Id<struct ClimateImportTag>;
using TaskId = base::Id<struct TaskTag>;
using IngredientUseId = base::Id<struct IngredientUseTag>;
using AcceptanceId = base::Id<struct AcceptanceTag>;
using StepId = base::Id<struct StepTag>;

} // namespace core::model
