#pragma once

#include "core/store/connection.h"

/// Internal to core/store: making a salvaged book whole. All throw; expect a Transaction with
/// foreign keys off.
namespace core::store {

/// Gives rows whose owner was lost a stand-in owner named "recovered", or lets go of a link that
/// may be empty, or, for a mere tie between two rows, of the tie.
void mend_links(Connection& book);
/// The same for climate readings, whose links are no foreign keys; makes all roll-ups anew.
void mend_climate(Connection& book);

} // namespace core::store
