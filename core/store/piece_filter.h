#pragma once

// Internal to core/store: a PieceFilter as a WHERE clause over the table `piece`, with parameters
// ?1 to ?5 bound in the order piece, batch, chamber, product, text. The states are words of ours
// (core/store/codes.h), never a person's text, and so may stand in the statement.

#include "core/store/filters.h"

#include <string>

namespace core::store {

/// "WHERE ..." for statements on `piece` itself.
std::string piece_where(const PieceFilter& filter);
/// "piece_id IN (SELECT ...)", or "1" for a filter that lets everything through.
std::string of_pieces(const PieceFilter& filter);

} // namespace core::store
