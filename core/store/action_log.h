#pragma once

#include "core/model/log.h"
#include "core/store/changeset.h"
#include "core/store/connection.h"

#include <optional>
#include <string>
#include <vector>

/// The book's log: actions with their changesets, and the steps that did, undid and redid them.
/// Nothing is ever removed from it. All throw; writing expects a Transaction.
namespace core::store {

struct LoggedAction {
    model::ActionId id;
    std::string verb;
    std::string subject;
    units::Instant at; ///< of its last step
    std::optional<model::PersonId> who;
};

/// What a step says of itself.
struct StepNote {
    units::Instant at;
    std::optional<model::PersonId> who;
    std::string why;
};

struct NewAction {
    std::string verb;
    std::string subject;
    bool undoable = true;
    Changeset changes;
};

/// Logs a change just made; what could be redone no longer can (unless the action itself is not
/// undoable). Returns the action's id and marks the pieces it touched with the new revision.
model::ActionId log_action(Connection& book, const NewAction& action, const StepNote& note);

std::optional<LoggedAction> next_to_undo(Connection& book);
std::optional<LoggedAction> next_to_redo(Connection& book);
/// Takes the action's change back or makes it again, and logs that.
void step_back(Connection& book, model::ActionId action, const StepNote& note);
void step_again(Connection& book, model::ActionId action, const StepNote& note);

std::int64_t revision(Connection& book); ///< 0 for a book nothing was ever done in
std::int64_t piece_revision(Connection& book, model::PieceId piece);

/// Newest first, at most `limit`, before the given step when there is one.
std::vector<model::LoggedStep> logged_steps(Connection& book, int limit,
                                            std::optional<model::StepId> before);
/// Oldest first.
std::vector<model::HistoryLine> entry_history(Connection& book, model::EntryRef entry);

} // namespace core::store
