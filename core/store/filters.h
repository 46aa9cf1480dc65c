#pragma once

#include "core/model/batch.h"
#include "core/model/ids.h"
#include "core/model/piece.h"

#include <optional>
#include <string>
#include <vector>

namespace core::store {

/// Which batches to list. Absent or empty means any.
struct BatchFilter {
    std::optional<model::BatchState> state;
    std::string product;
    std::string text; ///< part of code, name, product or supplier, any case
};

/// Which pieces to list. Absent or empty means any.
struct PieceFilter {
    std::optional<model::PieceId> piece;
    std::optional<model::BatchId> batch;
    std::optional<model::ChamberId> chamber;
    std::vector<model::PieceState> states;
    std::string product; ///< of the batch
    std::string text;    ///< part of code or name, any case
};

/// Which notes to list. Absent means any.
struct NoteFilter {
    std::optional<model::BatchId> batch;
    std::optional<model::PieceId> piece;
    std::optional<units::Instant> since;
};

} // namespace core::store
