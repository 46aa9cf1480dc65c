#include "core/store/batches.h"
#include "core/store/piece_filter.h"
#include "core/store/pieces.h"
#include "core/store/row_table.h"

#include <algorithm>

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

template <>
struct Table<Weighing> {
    static constexpr std::string_view name = "weighing";
    static Weighing blank() {
        return {.taken_at = Instant::from_unix_seconds(0),
                .on_scale = Mass::grams(0),
                .tare = Mass::grams(0)};
    }
    template <class V>
    static void visit(V& v, Weighing& w) {
        v("piece_id", w.piece);
        v("taken_at_s", w.taken_at);
        v("on_scale_mg", w.on_scale);
        v("tare_mg", w.tare);
        v("state", w.state);
        v("scale_step_mg", w.scale_step);
        v("wet_surface", w.wet_surface);
        v("note", w.note);
        v("amends_id", w.amends);
        v("withdrawn", w.withdrawn);
        if constexpr (V::reads) {
            v("(SELECT later.id FROM weighing AS later WHERE later.amends_id = weighing.id)",
              w.amended_by);
        }
    }
};

template <>
struct Table<PieceEvent> {
    static constexpr std::string_view name = "event";
    static PieceEvent blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, PieceEvent& e) {
        v("piece_id", e.piece);
        v("kind", e.kind);
        v("at_s", e.at);
        v("net_before_mg", e.net_before);
        v("net_after_mg", e.net_after);
        v("tare_after_mg", e.tare_after);
        v("start_override_mg", e.start_override);
        v("chamber_id", e.chamber);
        v("note", e.note);
        v("withdrawn", e.withdrawn);
    }
};

/// An event is kept together with the other pieces it is about.
template <>
EventId insert<PieceEvent>(Connection& book, const PieceEvent& entry) {
    const EventId id = insert_row(book, entry);
    for (const PieceId other : entry.others) {
        const auto statement =
            book.prepared("INSERT INTO event_piece (event_id, piece_id) VALUES (?, ?)");
        bind_value(*statement, 1, id);
        bind_value(*statement, 2, other);
        statement->exec();
    }
    return id;
}

namespace {

/// Fills `others` of events that are already in order, from one statement over all of them.
void add_others(Connection& book, std::vector<PieceEvent>& found) {
    for (PieceEvent& event : found) {
        if (event.kind != EventKind::split && event.kind != EventKind::merged) {
            continue;
        }
        const auto statement =
            book.prepared("SELECT piece_id FROM event_piece WHERE event_id = ? ORDER BY piece_id");
        bind_value(*statement, 1, event.id);
        while (statement->executeStep()) {
            event.others.push_back(PieceId::from_row(statement->getColumn(0).getInt64()));
        }
    }
}

template <class T>
std::vector<T> select_for(Connection& book, const std::string& tail, const PieceFilter& filter) {
    return select<T>(book, tail, filter.piece, filter.batch, filter.chamber, filter.product,
                     contains_pattern(filter.text));
}

} // namespace

template <>
std::optional<PieceEvent> find<PieceEvent>(Connection& book, EventId id) {
    auto rows = select<PieceEvent>(book, "WHERE id = ?", id);
    add_others(book, rows);
    return rows.empty() ? std::nullopt : std::optional<PieceEvent>(std::move(rows.front()));
}

SALTLOFT_STORE_ENTRY(Weighing)
template void update<PieceEvent>(Connection&, const PieceEvent&);
template PieceEvent get<PieceEvent>(Connection&, EventId);

std::vector<Weighing> weighings(Connection& book, PieceId piece) {
    return select<Weighing>(book, "WHERE piece_id = ? ORDER BY taken_at_s, id", piece);
}

std::vector<Weighing> standing_weighings(Connection& book, const PieceFilter& filter) {
    return select_for<Weighing>(book,
                                "WHERE withdrawn = 0 AND NOT EXISTS (SELECT 1 FROM weighing AS"
                                " later WHERE later.amends_id = weighing.id) AND " +
                                    of_pieces(filter) + " ORDER BY piece_id, taken_at_s, id",
                                filter);
}

std::vector<Weighing> weighing_chain(Connection& book, WeighingId weighing) {
    std::vector<Weighing> chain{get<Weighing>(book, weighing)};
    while (chain.back().amends) {
        chain.push_back(get<Weighing>(book, *chain.back().amends));
    }
    std::reverse(chain.begin(), chain.end());
    while (chain.back().amended_by) {
        chain.push_back(get<Weighing>(book, *chain.back().amended_by));
    }
    return chain;
}

void withdraw_weighing(Connection& book, WeighingId weighing) {
    const auto statement = book.prepared("UPDATE weighing SET withdrawn = 1 WHERE id = ?");
    bind_value(*statement, 1, weighing);
    statement->exec();
}

std::vector<PieceEvent> events(Connection& book, PieceId piece) {
    auto found = select<PieceEvent>(book, "WHERE piece_id = ? ORDER BY at_s, id", piece);
    add_others(book, found);
    return found;
}

std::vector<PieceEvent> standing_events(Connection& book, const PieceFilter& filter) {
    auto found = select_for<PieceEvent>(
        book, "WHERE withdrawn = 0 AND " + of_pieces(filter) + " ORDER BY piece_id, at_s, id",
        filter);
    add_others(book, found);
    return found;
}

} // namespace core::store
