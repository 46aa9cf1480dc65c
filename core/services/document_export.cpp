#include "core/services/document_exchange.h"
#include "core/store/action_log.h"
#include "core/store/batches.h"
#include "core/store/notes_and_stock.h"
#include "core/store/people_and_places.h"
#include "core/store/pieces.h"
#include "core/store/recipes.h"
#include "core/store/store.h"

#include <algorithm>
#include <climits>
#include <limits>
#include <set>
#include <utility>

namespace core::services {
namespace {

using exchange::BookDocument;
using exchange::Entries;
using exchange::Stamp;
using model::EntryKind;
using store::Connection;

constexpr auto ever = std::pair(units::Instant::from_unix_seconds(std::numeric_limits<int>::min()),
                                units::Instant::from_unix_seconds(1LL << 40));

class Collector {
  public:
    Collector(Connection& book, const ExportRequest& request) : book_(book), request_(request) {}

    BookDocument whole() {
        start(exchange::DocumentScope::book);
        put(out_.batches, EntryKind::batch, store::batches(book_, {}));
        for (const auto& batch : out_.batches) {
            add_batch_contents(batch.value.id);
        }
        put(out_.notes, EntryKind::note, with_photos(store::notes(book_, {})));
        put(out_.decisions, EntryKind::decision, store::decisions(book_, {}));
        put(out_.packs, EntryKind::pack, store::packs(book_, true, {}));
        put(out_.pack_moves, EntryKind::pack_move, store::pack_moves(book_, {}));
        put(out_.acceptances, EntryKind::acceptance, store::acceptances(book_, {}));
        put(out_.task_ticks, EntryKind::task_tick,
            store::task_ticks(book_, ever.first, ever.second));
        for (const model::Outcome& outcome : store::outcomes(book_)) {
            out_.outcomes.push_back({outcome, stamp(EntryKind::outcome, outcome.batch.row()), {}});
        }
        add_registers([](auto) { return true; });
        out_.preferences = store::preferences(book_);
        out_.log = store::logged_steps(book_, INT_MAX, {});
        return finish();
    }

    BookDocument batch(model::BatchId id) {
        start(exchange::DocumentScope::batch);
        put(out_.batches, EntryKind::batch, {store::get<model::Batch>(book_, id)});
        add_batch_contents(id);
        std::set<model::PieceId> pieces;
        for (const auto& piece : out_.pieces) {
            pieces.insert(piece.value.id);
        }
        const auto about = [&](const auto& entry) {
            return entry.batch == id || (entry.piece && pieces.count(*entry.piece) != 0);
        };
        put(out_.notes, EntryKind::note, with_photos(only(store::notes(book_, {}), about)));
        put(out_.acceptances, EntryKind::acceptance, store::acceptances(book_, id));
        put(out_.task_ticks, EntryKind::task_tick,
            only(store::task_ticks(book_, ever.first, ever.second), about));
        for (const model::PieceId piece : pieces) {
            put(out_.decisions, EntryKind::decision, store::decisions(book_, piece));
            put(out_.packs, EntryKind::pack, store::packs(book_, true, piece));
        }
        for (const auto& pack : out_.packs) {
            put(out_.pack_moves, EntryKind::pack_move, store::pack_moves(book_, pack.value.id));
        }
        if (const auto outcome = store::outcome(book_, id)) {
            out_.outcomes.push_back({*outcome, stamp(EntryKind::outcome, id.row()), {}});
        }
        gather_used();
        add_registers([&](auto entry_id) { return used(entry_id); });
        return finish();
    }

  private:
    void start(exchange::DocumentScope scope) {
        out_.scope = scope;
        out_.written_by = request_.written_by;
        out_.written_at = request_.now;
    }

    /// A piece is listed after the piece it was cut from, an amendment after what it amends: the
    /// order of their ids.
    BookDocument finish() {
        const auto by_id = [](const auto& a, const auto& b) { return a.value.id < b.value.id; };
        std::sort(out_.pieces.begin(), out_.pieces.end(), by_id);
        std::sort(out_.weighings.begin(), out_.weighings.end(), by_id);
        return std::move(out_);
    }

    std::optional<Stamp> stamp(EntryKind kind, std::int64_t row,
                               std::optional<Stamp>* withdrawn = nullptr) {
        std::optional<Stamp> entered;
        for (const model::HistoryLine& line : store::entry_history(book_, {kind, row})) {
            if (line.fate == model::EntryFate::added && !entered) {
                entered = Stamp{line.at, line.who, line.why};
            }
            for (const model::FieldChange& field : line.fields) {
                if (withdrawn != nullptr && line.fate == model::EntryFate::changed &&
                    field.field == "withdrawn" && field.after == "1") {
                    *withdrawn = Stamp{line.at, line.who, line.why};
                }
            }
        }
        return entered;
    }

    template <class T>
    void put(Entries<T>& into, EntryKind kind, std::vector<T> rows) {
        for (T& row : rows) {
            exchange::Entry<T> entry{std::move(row), {}, {}};
            std::optional<Stamp> withdrawn;
            entry.entered = stamp(kind, entry.value.id.row(), &withdrawn);
            if constexpr (requires { entry.value.withdrawn; }) {
                if (entry.value.withdrawn) {
                    entry.withdrawn = std::move(withdrawn);
                }
            }
            into.push_back(std::move(entry));
        }
    }

    template <class T, class Keep>
    static std::vector<T> only(std::vector<T> rows, Keep keep) {
        rows.erase(std::remove_if(rows.begin(), rows.end(), [&](const T& r) { return !keep(r); }),
                   rows.end());
        return rows;
    }

    std::vector<model::Note> with_photos(std::vector<model::Note> notes) {
        for (model::Note& note : notes) {
            if (request_.with_photos) {
                note.photo = store::photo(book_, note.id);
            }
        }
        return notes;
    }

    void add_batch_contents(model::BatchId id) {
        put(out_.stages, EntryKind::stage, store::stages(book_, id));
        put(out_.ingredient_uses, EntryKind::ingredient_use, store::ingredient_uses(book_, id));
        store::PieceFilter filter;
        filter.batch = id;
        std::vector<model::Piece> pieces = store::pieces(book_, filter);
        for (const model::Piece& piece : pieces) {
            put(out_.weighings, EntryKind::weighing, store::weighings(book_, piece.id));
            put(out_.events, EntryKind::event, store::events(book_, piece.id));
        }
        put(out_.pieces, EntryKind::piece, std::move(pieces));
    }

    template <class Id>
    void use(const std::optional<Id>& id) {
        if (id && id->is_assigned()) {
            ids_of<Id>().insert(*id);
        }
    }
    template <class Id>
    [[nodiscard]] bool used(Id id) {
        return ids_of<Id>().count(id) != 0;
    }
    template <class Id>
    std::set<Id>& ids_of() {
        return std::get<std::set<Id>>(used_);
    }

    template <class T>
    void use_stamps(const Entries<T>& entries) {
        for (const auto& entry : entries) {
            use(entry.entered ? entry.entered->by : std::nullopt);
            use(entry.withdrawn ? entry.withdrawn->by : std::nullopt);
        }
    }

    /// What the batch's entries refer to, and what those refer to in turn.
    void gather_used() {
        for (const auto& batch : out_.batches) {
            if (batch.value.recipe) {
                use(batch.value.recipe);
                use(std::optional(
                    store::get<model::RecipeVersion>(book_, *batch.value.recipe).recipe));
            }
        }
        for (const auto& piece : out_.pieces) {
            use(piece.value.chamber);
        }
        for (const auto& event : out_.events) {
            use(event.value.chamber);
        }
        for (const auto& stage : out_.stages) {
            use(stage.value.chamber);
        }
        for (const auto& line : out_.ingredient_uses) {
            if (line.value.lot) {
                use(line.value.lot);
                use(std::optional(store::get<model::Lot>(book_, *line.value.lot).ingredient));
            }
        }
        for (const auto& acceptance : out_.acceptances) {
            use(acceptance.value.by);
        }
        for (const auto& decision : out_.decisions) {
            use(std::optional(decision.value.signed_by));
        }
        for (const auto& tick : out_.task_ticks) {
            use(tick.value.by);
        }
        // The instruments of the chambers the batch was in, and every scale: a weighing does not
        // say which scale it came from.
        for (const model::Sensor& sensor : store::sensors(book_)) {
            if (used(sensor.chamber)) {
                use(std::optional(sensor.id));
            }
        }
        for (const model::Instrument& instrument : store::instruments(book_)) {
            if (!instrument.sensor || used(*instrument.sensor)) {
                use(std::optional(instrument.id));
            }
        }
        for (const model::CalibrationCheck& check : store::checks(book_, {})) {
            if (used(check.instrument)) {
                use(std::optional(check.id));
                use(std::optional(check.by));
            }
        }
        use_stamps(out_.batches);
        use_stamps(out_.pieces);
        use_stamps(out_.weighings);
        use_stamps(out_.events);
        use_stamps(out_.stages);
        use_stamps(out_.ingredient_uses);
        use_stamps(out_.acceptances);
        use_stamps(out_.notes);
        use_stamps(out_.decisions);
        use_stamps(out_.packs);
        use_stamps(out_.pack_moves);
        use_stamps(out_.task_ticks);
    }

    template <class T, class Wanted>
    void put_wanted(Entries<T>& into, EntryKind kind, std::vector<T> rows, Wanted wanted) {
        put(into, kind, only(std::move(rows), [&](const T& row) { return wanted(row.id); }));
    }

    template <class Wanted>
    void add_registers(Wanted wanted) {
        put_wanted(out_.chambers, EntryKind::chamber, store::chambers(book_), wanted);
        put_wanted(out_.sensors, EntryKind::sensor, store::sensors(book_), wanted);
        put_wanted(out_.instruments, EntryKind::instrument, store::instruments(book_), wanted);
        put_wanted(out_.checks, EntryKind::check, store::checks(book_, {}), wanted);
        put_wanted(out_.recipes, EntryKind::recipe, store::recipes(book_, true), wanted);
        for (const auto& recipe : out_.recipes) {
            put_wanted(out_.recipe_versions, EntryKind::recipe_version,
                       store::recipe_versions(book_, recipe.value.id), wanted);
        }
        put_wanted(out_.ingredients, EntryKind::ingredient, store::ingredients(book_), wanted);
        put_wanted(out_.lots, EntryKind::lot, store::lots(book_), wanted);
        put_wanted(out_.people, EntryKind::person, store::people(book_), wanted);
    }

    Connection& book_;
    const ExportRequest& request_;
    BookDocument out_;
    std::tuple<std::set<model::PersonId>, std::set<model::ChamberId>, std::set<model::SensorId>,
               std::set<model::InstrumentId>, std::set<model::CheckId>, std::set<model::RecipeId>,
               std::set<model::RecipeVersionId>, std::set<model::IngredientId>,
               std::set<model::LotId>>
        used_;
};

} // namespace

base::Result<BookDocument> export_document(const Book& book, const ExportRequest& request) {
    return book.store().read([&](Connection& connection) {
        Collector collector(connection, request);
        return request.batch ? collector.batch(*request.batch) : collector.whole();
    });
}

} // namespace core::services
