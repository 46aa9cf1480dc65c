#pragma once

#include "core/model/piece.h"
#include "core/store/entries.h"
#include "core/store/filters.h"

#include <cstdint>
#include <string>
#include <vector>

/// Pieces, what happened to them and what they weighed. All throw (see fault.h). Inserting an
/// event also keeps its `others`.
namespace core::store {

std::vector<model::Piece> pieces(Connection& book, const PieceFilter& filter); ///< hanging order
/// Ancestors and descendants by split, and the piece itself; by id (parents before children).
std::vector<model::Piece> family(Connection& book, model::PieceId piece);
/// A piece that is not split up, merged away or discarded and carries `code`.
std::optional<model::Piece> open_piece_by_code(Connection& book, const std::string& code);
std::vector<std::string> piece_codes(Connection& book, bool only_open);

/// By time, also those amended and withdrawn.
std::vector<model::Weighing> weighings(Connection& book, model::PieceId piece);
/// Standing ones of all pieces of the filter, by piece and time.
std::vector<model::Weighing> standing_weighings(Connection& book, const PieceFilter& filter);
/// The corrections `weighing` belongs to, the first entry first.
std::vector<model::Weighing> weighing_chain(Connection& book, model::WeighingId weighing);
void withdraw_weighing(Connection& book, model::WeighingId weighing);

/// By time, also withdrawn ones.
std::vector<model::PieceEvent> events(Connection& book, model::PieceId piece);
/// Not withdrawn ones of all pieces of the filter, by piece and time.
std::vector<model::PieceEvent> standing_events(Connection& book, const PieceFilter& filter);

/// Revision of each piece of the filter that has one: (piece, revision).
std::vector<std::pair<model::PieceId, std::int64_t>> piece_revisions(Connection& book,
                                                                     const PieceFilter& filter);

} // namespace core::store
