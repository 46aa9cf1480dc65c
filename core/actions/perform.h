#pragma once

#include "core/actions/command.h"
#include "core/base/result.h"
#include "core/model/finding.h"
#include "core/store/action_log.h"
#include "core/store/store.h"

/// Carrying commands out: each as one transaction with its changeset in the log, so that undo and
/// redo need nothing from the command itself and survive a restart.
namespace core::actions {

/// What is wrong with a command by itself, without looking into the book: missing codes, weights
/// that cannot be, ramps the wrong way round. All of it, not the first. `stop` bars the action.
model::Findings check(const Command& command, const Context& context);

base::Result<Performed> perform(store::Store& store, const Command& command,
                                const Context& context);

/// check() and, when nothing stops it, a rehearsal in the book; a fault becomes a stop finding
/// whose code is the fault's detail ("code_taken", "already_amended").
base::Result<model::Findings> check_in_book(store::Store& store, const Command& command,
                                            const Context& context);

base::Result<store::LoggedAction> undo(store::Store& store, const Context& context);
base::Result<store::LoggedAction> redo(store::Store& store, const Context& context);

} // namespace core::actions
