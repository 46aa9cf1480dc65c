#pragma once

#include "core/model/batch.h"
#include "core/model/pack.h"
#include "core/model/plan.h"
#include "core/store/entries.h"
#include "core/store/filters.h"

#include <string>
#include <utility>
#include <vector>

/// Notes with photos, decisions, day-sheet ticks, packs and their moves. All throw (see fault.h).
/// Inserting a note keeps its photo by content; reading one leaves the bytes out.
namespace core::store {

std::vector<model::Note> notes(Connection& book, const NoteFilter& filter); ///< newest first
std::vector<unsigned char> photo(Connection& book, model::NoteId note);     ///< empty without one

/// By time; of all pieces when absent.
std::vector<model::Decision> decisions(Connection& book, std::optional<model::PieceId> piece);
/// Made in [from, until), also withdrawn ones.
std::vector<model::TaskTick> task_ticks(Connection& book, units::Instant from,
                                        units::Instant until);

/// Soonest keep-by first, then oldest; of one piece when given.
std::vector<model::Pack> packs(Connection& book, bool with_gone,
                               std::optional<model::PieceId> piece);
/// By time; of all packs when absent.
std::vector<model::PackMove> pack_moves(Connection& book, std::optional<model::PackId> pack);

/// Settings kept with the book.
std::optional<std::string> preference(Connection& book, const std::string& key);
std::vector<std::pair<std::string, std::string>> preferences(Connection& book); ///< by key
void set_preference(Connection& book, const std::string& key,
                    const std::optional<std::string>& value);

} // namespace core::store
