#include "core/store/notes_and_stock.h"

#include "core/store/row_table.h"

#include <cstring>

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

template <>
struct Table<Note> {
    static constexpr std::string_view name = "note";
    static Note blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, Note& n) {
        v("batch_id", n.batch);
        v("piece_id", n.piece);
        v("at_s", n.at);
        v("kind", n.kind);
        v("body", n.text);
        v("photo_name", n.photo_name);
    }
};

template <>
struct Table<Decision> {
    static constexpr std::string_view name = "decision";
    static Decision blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, Decision& d) {
        v("piece_id", d.piece);
        v("at_s", d.at);
        v("verdict", d.verdict);
        v("signed_by_person_id", d.signed_by);
        v("evidence_json", d.evidence);
        v("why", d.why);
        v("weigh_again_day", d.weigh_again);
    }
};

template <>
struct Table<TaskTick> {
    static constexpr std::string_view name = "task_tick";
    static TaskTick blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, TaskTick& t) {
        v("task_key", t.key);
        v("at_s", t.at);
        v("by_person_id", t.by);
        v("withdrawn", t.withdrawn);
        v("due_day", t.due);
        v("batch_id", t.batch);
        v("piece_id", t.piece);
        v("note", t.note);
    }
};

template <>
struct Table<Pack> {
    static constexpr std::string_view name = "pack";
    static Pack blank() {
        return {.packed_weight = Mass::grams(0),
                .weight_left = Mass::grams(0),
                .packed_on = Day::from_days_since_epoch(0)};
    }
    template <class V>
    static void visit(V& v, Pack& p) {
        v("piece_id", p.piece);
        v("code", p.code);
        v("kind", p.kind);
        v("packed_mg", p.packed_weight);
        v("left_mg", p.weight_left);
        v("packed_on_day", p.packed_on);
        v("opened_on_day", p.opened_on);
        v("keep_by_day", p.keep_by);
        v("keep_by_rule", p.keep_by_rule);
        v("place", p.place);
        v("gone", p.gone);
    }
};

template <>
struct Table<PackMove> {
    static constexpr std::string_view name = "pack_move";
    static PackMove blank() {
        return {.amount = Mass::grams(0), .at = Instant::from_unix_seconds(0)};
    }
    template <class V>
    static void visit(V& v, PackMove& m) {
        v("pack_id", m.pack);
        v("kind", m.kind);
        v("amount_mg", m.amount);
        v("at_s", m.at);
        v("to_whom", m.to_whom);
        v("note", m.note);
    }
};

namespace {

/// FNV-1a, 64 bit: finds equal photos quickly. Equality is then decided by the bytes.
std::int64_t fingerprint_of(const std::vector<unsigned char>& bytes) {
    std::uint64_t hash = 14695981039346656037ULL;
    for (const unsigned char byte : bytes) {
        hash = (hash ^ byte) * 1099511628211ULL;
    }
    std::int64_t result = 0;
    std::memcpy(&result, &hash, sizeof result);
    return result;
}

std::int64_t keep_photo(Connection& book, const std::vector<unsigned char>& bytes) {
    const std::int64_t fingerprint = fingerprint_of(bytes);
    const int size = static_cast<int>(bytes.size());
    {
        const auto same = book.prepared("SELECT id FROM photo WHERE fingerprint = ? AND bytes = ?");
        same->bind(1, fingerprint);
        same->bind(2, bytes.data(), size);
        if (same->executeStep()) {
            return same->getColumn(0).getInt64();
        }
    }
    const auto insert = book.prepared("INSERT INTO photo (fingerprint, bytes) VALUES (?, ?)");
    insert->bind(1, fingerprint);
    insert->bind(2, bytes.data(), size);
    insert->exec();
    return book.integer("SELECT last_insert_rowid()");
}

} // namespace

template <>
NoteId insert<Note>(Connection& book, const Note& entry) {
    // The photo first: a note's row is then written once.
    const std::optional<std::int64_t> photo_row =
        entry.photo.empty() ? std::nullopt : std::optional(keep_photo(book, entry.photo));
    const NoteId id = insert_row(book, entry);
    if (photo_row) {
        const auto statement = book.prepared("UPDATE note SET photo_id = ? WHERE id = ?");
        bind_value(*statement, 1, *photo_row);
        bind_value(*statement, 2, id);
        statement->exec();
    }
    return id;
}

template std::optional<Note> find<Note>(Connection&, NoteId);
template Note get<Note>(Connection&, NoteId);
SALTLOFT_STORE_ENTRY(Decision)
SALTLOFT_STORE_ENTRY(TaskTick)
SALTLOFT_STORE_ENTRY(Pack)
SALTLOFT_STORE_ENTRY(PackMove)

std::vector<Note> notes(Connection& book, const NoteFilter& filter) {
    return select<Note>(book,
                        "WHERE (?1 IS NULL OR batch_id = ?1 OR piece_id IN (SELECT id FROM piece"
                        " WHERE batch_id = ?1)) AND (?2 IS NULL OR piece_id = ?2)"
                        " AND (?3 IS NULL OR at_s >= ?3) ORDER BY at_s DESC, id DESC",
                        filter.batch, filter.piece, filter.since);
}

std::vector<unsigned char> photo(Connection& book, NoteId note) {
    const auto statement = book.prepared(
        "SELECT bytes FROM photo WHERE id = (SELECT photo_id FROM note WHERE id = ?)");
    bind_value(*statement, 1, note);
    if (!statement->executeStep()) {
        return {};
    }
    const SQLite::Column column = statement->getColumn(0);
    const auto* first = static_cast<const unsigned char*>(column.getBlob());
    return {first, first + column.getBytes()};
}

std::vector<Decision> decisions(Connection& book, std::optional<PieceId> piece) {
    return piece ? select<Decision>(book, "WHERE piece_id = ? ORDER BY at_s, id", *piece)
                 : select<Decision>(book, "ORDER BY at_s, id");
}

std::vector<TaskTick> task_ticks(Connection& book, Instant from, Instant until) {
    return select<TaskTick>(book, "WHERE at_s >= ? AND at_s < ? ORDER BY at_s, id", from, until);
}

std::vector<Pack> packs(Connection& book, bool with_gone, std::optional<PieceId> piece) {
    return select<Pack>(book,
                        "WHERE (?1 OR gone = 0) AND (?2 IS NULL OR piece_id = ?2)"
                        " ORDER BY gone, keep_by_day IS NULL, keep_by_day, packed_on_day, id",
                        with_gone, piece);
}

std::vector<PackMove> pack_moves(Connection& book, std::optional<PackId> pack) {
    return pack ? select<PackMove>(book, "WHERE pack_id = ? ORDER BY at_s, id", *pack)
                : select<PackMove>(book, "ORDER BY at_s, id");
}

std::optional<std::string> preference(Connection& book, const std::string& key) {
    const auto statement = book.prepared("SELECT value FROM preference WHERE key = ?");
    bind_value(*statement, 1, key);
    return statement->executeStep() ? std::optional(statement->getColumn(0).getString())
                                    : std::nullopt;
}

std::vector<std::pair<std::string, std::string>> preferences(Connection& book) {
    const auto statement = book.prepared("SELECT key, value FROM preference ORDER BY key");
    std::vector<std::pair<std::string, std::string>> all;
    while (statement->executeStep()) {
        all.emplace_back(statement->getColumn(0).getString(), statement->getColumn(1).getString());
    }
    return all;
}

void set_preference(Connection& book, const std::string& key,
                    const std::optional<std::string>& value) {
    const auto statement =
        book.prepared(value ? "INSERT INTO preference (key, value) VALUES (?1, ?2)"
                              " ON CONFLICT (key) DO UPDATE SET value = ?2"
                            : "DELETE FROM preference WHERE key = ?1");
    bind_value(*statement, 1, key);
    if (value) {
        bind_value(*statement, 2, *value);
    }
    statement->exec();
}

} // namespace core::store
