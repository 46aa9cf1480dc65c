#pragma once

#include "core/model/ids.h"
#include "core/units/mass.h"
#include "core/units/time.h"

#include <optional>
#include <string>
#include <vector>

namespace core::model {

enum class BatchState { planned, in_progress, finished, abandoned };

/// One lot of meat cured together from one recipe version.
struct Batch {
    BatchId id;
    std::string code; ///< unique, e.g. "B07"
    std::string name;
    std::string product; ///< family in the user's words ("coppa"), groups history for learning
    std::string species; ///< "pork", "beef"...
    std::string supplier;
    std::string supplier_lot;              ///< one back
    std::optional<RecipeVersionId> recipe; ///< as used
    units::Day started;
    BatchState state = BatchState::planned;
    std::optional<units::Mass> bought_weight;
    std::optional<units::Mass> trim_weight;
    std::optional<double> price_per_kilogram; ///< in the user's currency
    bool was_frozen = false;
    std::string notes;
};

struct Person {
    PersonId id;
    std::string name;
    std::string initials;
    bool active = true;
};

enum class NoteKind { look, touch, smell, taste, mould, action, outcome, other };

/// What a person saw or did, on a piece or a batch. Photos are kept by file content.
struct Note {
    NoteId id;
    std::optional<BatchId> batch;
    std::optional<PieceId> piece;
    units::Instant at;
    NoteKind kind = NoteKind::other;
    std::string text;
    std::string photo_name;           ///< original file name; empty without photo
    std::vector<unsigned char> photo; ///< the picture file's bytes; loaded on request only
};

enum class Verdict { done, not_yet, discard };

/// A signed decision. The evidence shown at that time is kept with it as text, because a
/// forecast is recomputed and would change.
struct Decision {
    DecisionId id;
    PieceId piece;
    units::Instant at;
    Verdict verdict{};
    PersonId signed_by;
    std::string evidence; ///< the evidence sheet as JSON, as it was shown
    std::string why;
    std::optional<units::Day> weigh_again; ///< for not_yet
};

/// Outcome of a finished batch, in the user's words and scores, for the next plan.
struct Outcome {
    BatchId batch;
    std::optional<int> salt;    ///< -2 too little .. +2 too much
    std::optional<int> texture; ///< -2 too soft .. +2 too dry
    std::string change_next_time;
};

/// A caution a person took on themselves, kept with what it said at that time.
struct Acceptance {
    AcceptanceId id;
    std::optional<BatchId> batch;
    std::optional<PieceId> piece;
    std::string code;   ///< the finding's code
    std::string place;  ///< the finding's place
    std::string detail; ///< the finding's values as JSON, as they were shown
    units::Instant at;
    std::optional<PersonId> by;
    std::string why;
};

} // namespace core::model
