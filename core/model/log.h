#pragma once

#include "core/model/ids.h"
#include "core/units/time.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace core::model {

/// The tables of the book whose rows a person enters, by what a row is. Used to name an entry when
/// its history is asked for.
enum class EntryKind {
    person,
    batch,
    piece,
    weighing,
    event,
    stage,
    recipe,
    recipe_version,
    ingredient,
    lot,
    ingredient_use,
    chamber,
    sensor,
    instrument,
    check,
    note,
    decision,
    outcome, ///< row: the batch's id
    acceptance,
    pack,
    pack_move,
    task_tick,
};

struct EntryRef {
    EntryKind kind{};
    std::int64_t row = 0;
    friend bool operator==(const EntryRef&, const EntryRef&) = default;
};

/// One field of one entry before and after a change, as kept on disk: integers with the unit in
/// the field's name ("mass_mg"), texts and codes as they are. Absent is "not known".
struct FieldChange {
    std::string field;
    std::optional<std::string> before;
    std::optional<std::string> after;
};

enum class StepKind { performed, undone, redone };
enum class EntryFate { added, changed, removed };

/// One line of an entry's history: which action touched it, when, by whom and why.
struct HistoryLine {
    StepId step;
    ActionId action;
    StepKind step_kind{};
    EntryFate fate{};
    std::string verb; ///< the action's stable name: "add_weighing"
    units::Instant at;
    std::optional<PersonId> who;
    std::string why;
    std::vector<FieldChange> fields;
};

/// One line of the book's log.
struct LoggedStep {
    StepId step;
    ActionId action;
    StepKind kind{};
    std::string verb;
    std::string subject; ///< codes of what it was about: "P07", "B03"; may be empty
    units::Instant at;
    std::optional<PersonId> who;
    std::string why;
};

} // namespace core::model
