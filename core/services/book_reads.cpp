// The reading side of services::Book: each query is one consistent read of the store.
#include "core/services/book.h"
#include "core/store/action_log.h"
#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/people_and_places.h"
#include "core/store/pieces.h"
#include "core/store/recipes.h"
#include "core/store/store.h"

#include <fmt/format.h>
#include <map>
#include <set>

namespace core::services {

using base::Result;
using store::Connection;
template <class T>
using Rows = Book::Rows<T>;

// --- batches and pieces -------------------------------------------------------------------------

Rows<model::Batch> Book::batches(const BatchFilter& filter) const {
    return store_->read([&](Connection& book) { return store::batches(book, filter); });
}

Rows<BatchOverview> Book::batch_overviews(const BatchFilter& filter) const {
    return store_->read([&](Connection& book) {
        std::map<model::BatchId, store::BatchCounts> counts;
        for (const store::BatchCounts& row : store::batch_counts(book)) {
            counts.emplace(row.batch, row);
        }
        std::vector<BatchOverview> overviews;
        for (model::Batch& batch : store::batches(book, filter)) {
            const store::BatchCounts& of = counts[batch.id];
            overviews.push_back(
                {std::move(batch), of.pieces, of.drying, of.finished, of.last_weighed});
        }
        return overviews;
    });
}

Result<model::Batch> Book::batch(model::BatchId id) const {
    return store_->read([&](Connection& book) { return store::get<model::Batch>(book, id); });
}

Result<model::Batch> Book::batch_by_code(const std::string& code) const {
    return store_->read([&](Connection& book) {
        auto batch = store::batch_by_code(book, code);
        if (!batch) {
            store::refuse(base::ErrorCode::no_such_entry, "batch", code);
        }
        return std::move(*batch);
    });
}

Rows<std::string> Book::products() const {
    return store_->read([](Connection& book) { return store::products(book); });
}

Result<std::string> Book::free_batch_code() const {
    return store_->read([](Connection& book) {
        std::set<std::string> taken;
        for (const model::Batch& batch : store::batches(book, {})) {
            taken.insert(batch.code);
        }
        std::size_t number = taken.size() + 1;
        while (taken.count(fmt::format("B{:02}", number)) != 0) {
            ++number;
        }
        return fmt::format("B{:02}", number);
    });
}

Rows<std::string> Book::free_piece_codes(int how_many) const {
    return store_->read([&](Connection& book) {
        // Never used before while there are any, so that a search finds one piece only.
        static constexpr std::size_t short_codes = 1800;
        auto used = store::piece_codes(book, false);
        if (used.size() > short_codes) {
            used = store::piece_codes(book, true);
        }
        const std::set<std::string> taken(used.begin(), used.end());
        // Letters that cannot be taken for a digit on a greasy tag, then two digits.
        static constexpr std::string_view letters = "ACDEFHJKLMNPRTUVWXY";
        std::vector<std::string> codes;
        for (int number = 1; static_cast<int>(codes.size()) < how_many; ++number) {
            const auto letter = static_cast<std::size_t>(number / 100) % letters.size();
            const auto round = static_cast<std::size_t>(number / 100) / letters.size();
            std::string code = fmt::format("{}{:02}", letters[letter], number % 100);
            if (round > 0) {
                code += std::to_string(round); // beyond 1,900 open pieces
            }
            if (number % 100 != 0 && taken.count(code) == 0) {
                codes.push_back(std::move(code));
            }
        }
        return codes;
    });
}

Rows<model::Piece> Book::pieces(const PieceFilter& filter) const {
    return store_->read([&](Connection& book) { return store::pieces(book, filter); });
}
Result<model::Piece> Book::piece(model::PieceId id) const {
    return store_->read([&](Connection& book) { return store::get<model::Piece>(book, id); });
}
Rows<model::Piece> Book::family(model::PieceId id) const {
    return store_->read([&](Connection& book) { return store::family(book, id); });
}

Rows<PieceHistory> Book::piece_histories(const PieceFilter& filter) const {
    return store_->read([&](Connection& book) {
        std::vector<PieceHistory> histories;
        std::map<model::PieceId, std::size_t> place;
        for (model::Piece& piece : store::pieces(book, filter)) {
            place.emplace(piece.id, histories.size());
            histories.push_back({.piece = std::move(piece)});
        }
        for (model::Weighing& weighing : store::standing_weighings(book, filter)) {
            histories[place.at(weighing.piece)].weighings.push_back(std::move(weighing));
        }
        for (model::PieceEvent& event : store::standing_events(book, filter)) {
            histories[place.at(event.piece)].events.push_back(std::move(event));
        }
        for (const auto& [piece, revision] : store::piece_revisions(book, filter)) {
            if (const auto found = place.find(piece); found != place.end()) {
                histories[found->second].revision = revision;
            }
        }
        return histories;
    });
}

Result<PieceHistory> Book::piece_history(model::PieceId id) const {
    auto found = piece_histories({.piece = id});
    if (!found) {
        return tl::unexpected<base::Error>(found.error());
    }
    if (found->empty()) {
        return base::fault(base::ErrorCode::no_such_entry, "piece");
    }
    PieceHistory history = std::move(found->front());
    return history;
}

Result<model::Weighing> Book::weighing(model::WeighingId id) const {
    return store_->read([&](Connection& book) { return store::get<model::Weighing>(book, id); });
}
Rows<model::Weighing> Book::weighings(model::PieceId piece) const {
    return store_->read([&](Connection& book) { return store::weighings(book, piece); });
}

Rows<WeighingVersion> Book::weighing_versions(model::WeighingId id) const {
    return store_->read([&](Connection& book) {
        std::vector<WeighingVersion> versions;
        for (model::Weighing& weighing : store::weighing_chain(book, id)) {
            const auto row = weighing.id.row();
            WeighingVersion version{.weighing = std::move(weighing),
                                    .entered_at = units::Instant::from_unix_seconds(0)};
            for (const auto& line : store::entry_history(book, {model::EntryKind::weighing, row})) {
                if (line.fate == model::EntryFate::added) {
                    version.entered_at = line.at;
                    version.who = line.who;
                    version.why = line.why;
                } else if (version.weighing.withdrawn) {
                    version.withdrawn_at = line.at;
                    version.withdrawn_by = line.who;
                    version.withdrawn_why = line.why;
                }
            }
            versions.push_back(std::move(version));
        }
        return versions;
    });
}

Rows<model::PieceEvent> Book::events(model::PieceId piece) const {
    return store_->read([&](Connection& book) { return store::events(book, piece); });
}
Rows<model::Stage> Book::stages(model::BatchId batch) const {
    return store_->read([&](Connection& book) { return store::stages(book, batch); });
}
Rows<model::Stage> Book::stages_in(model::ChamberId chamber, units::Instant from,
                                   units::Instant to) const {
    return store_->read(
        [&](Connection& book) { return store::stages_in(book, chamber, from, to); });
}
Rows<model::Stage> Book::open_stages() const {
    return store_->read([](Connection& book) { return store::open_stages(book); });
}
Rows<model::IngredientUse> Book::ingredient_uses(model::BatchId batch) const {
    return store_->read([&](Connection& book) { return store::ingredient_uses(book, batch); });
}
Rows<model::Acceptance> Book::acceptances(model::BatchId batch) const {
    return store_->read([&](Connection& book) { return store::acceptances(book, batch); });
}
Result<std::optional<model::Outcome>> Book::outcome(model::BatchId batch) const {
    return store_->read([&](Connection& book) { return store::outcome(book, batch); });
}
Rows<model::Outcome> Book::outcomes() const {
    return store_->read([](Connection& book) { return store::outcomes(book); });
}

// --- recipes, places, people, instruments -------------------------------------------------------

Rows<model::Recipe> Book::recipes(bool with_archived) const {
    return store_->read([&](Connection& book) { return store::recipes(book, with_archived); });
}
Rows<model::RecipeVersion> Book::recipe_versions(model::RecipeId recipe) const {
    return store_->read([&](Connection& book) { return store::recipe_versions(book, recipe); });
}
Result<model::RecipeVersion> Book::recipe_version(model::RecipeVersionId id) const {
    return store_->read(
        [&](Connection& book) { return store::get<model::RecipeVersion>(book, id); });
}
Rows<model::Ingredient> Book::ingredients() const {
    return store_->read([](Connection& book) { return store::ingredients(book); });
}
Rows<model::Lot> Book::lots() const {
    return store_->read([](Connection& book) { return store::lots(book); });
}
Rows<model::Chamber> Book::chambers() const {
    return store_->read([](Connection& book) { return store::chambers(book); });
}
Rows<model::Sensor> Book::sensors() const {
    return store_->read([](Connection& book) { return store::sensors(book); });
}
Rows<model::Person> Book::people() const {
    return store_->read([](Connection& book) { return store::people(book); });
}
Rows<model::Instrument> Book::instruments() const {
    return store_->read([](Connection& book) { return store::instruments(book); });
}
Rows<model::CalibrationCheck> Book::checks(model::InstrumentId instrument) const {
    return store_->read([&](Connection& book) { return store::checks(book, instrument); });
}
Rows<model::CalibrationCheck> Book::all_checks() const {
    return store_->read([](Connection& book) { return store::checks(book, std::nullopt); });
}

// --- notes, decisions, stock, daily work --------------------------------------------------------

Rows<model::Note> Book::notes(const NoteFilter& filter) const {
    return store_->read([&](Connection& book) { return store::notes(book, filter); });
}
Result<std::vector<unsigned char>> Book::photo(model::NoteId note) const {
    return store_->read([&](Connection& book) { return store::photo(book, note); });
}
Rows<model::Decision> Book::decisions(model::PieceId piece) const {
    return store_->read([&](Connection& book) { return store::decisions(book, piece); });
}
Rows<model::Decision> Book::all_decisions() const {
    return store_->read([](Connection& book) { return store::decisions(book, std::nullopt); });
}
Rows<model::Pack> Book::packs(bool with_gone) const {
    return store_->read([&](Connection& book) { return store::packs(book, with_gone, {}); });
}
Rows<model::Pack> Book::packs_of(model::PieceId piece) const {
    return store_->read([&](Connection& book) { return store::packs(book, true, piece); });
}
Rows<model::PackMove> Book::pack_moves(model::PackId pack) const {
    return store_->read([&](Connection& book) { return store::pack_moves(book, pack); });
}
Rows<model::PackMove> Book::all_pack_moves() const {
    return store_->read([](Connection& book) { return store::pack_moves(book, std::nullopt); });
}
Rows<model::TaskTick> Book::task_ticks(units::Instant from, units::Instant until) const {
    return store_->read([&](Connection& book) { return store::task_ticks(book, from, until); });
}
Result<std::optional<std::string>> Book::preference(const std::string& key) const {
    return store_->read([&](Connection& book) { return store::preference(book, key); });
}

} // namespace core::services
