#include "core/store/pieces.h"

#include "core/store/batches.h"
#include "core/store/piece_filter.h"
#include "core/store/row_table.h"

#include <utility>

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

// GCC 12 takes the optionals of `visit` for uninitialised where they are empty (GCC bug 80635).
#if defined(__GNUC__) && !defined(__clang__)
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif
template <>
struct Table<Piece> {
    static constexpr std::string_view name = "piece";
    static Piece blank() { return {}; }
    template <class V>
    static void visit(V& v, Piece& p) {
        v("batch_id", p.batch);
        v("code", p.code);
        v("name", p.name);
        v("form", p.form);
        v("thickness_um", p.thickness);
        v("fat_ppm", p.fat);
        v("skin", p.skin);
        std::optional<MassShare> loss;
        std::optional<ReferenceWeight> reference;
        if (p.target) {
            loss = p.target->loss;
            reference = p.target->reference;
        }
        v("target_loss_ppm", loss);
        v("target_reference", reference);
        if constexpr (V::reads) {
            if (loss && reference) {
                p.target = Target{*loss, *reference};
            }
        }
        v("parent_id", p.parent);
        v("chamber_id", p.chamber);
        v("position", p.position);
        v("hanging_order", p.hanging_order);
        v("piece_count", p.count);
        v("state", p.state);
    }
};

SALTLOFT_STORE_ENTRY(Piece)

std::string piece_where(const PieceFilter& filter) {
    std::string where = "WHERE (?1 IS NULL OR piece.id = ?1) AND (?2 IS NULL OR batch_id = ?2)"
                        " AND (?3 IS NULL OR chamber_id = ?3)"
                        " AND (?4 = '' OR batch_id IN (SELECT id FROM batch WHERE product = ?4))"
                        " AND (?5 = '%%' OR code LIKE ?5 ESCAPE '\\' OR name LIKE ?5 ESCAPE '\\')";
    // One value is looked up by its index; the general form above would read the whole table.
    if (filter.piece) {
        where += " AND piece.id = ?1";
    }
    if (filter.batch) {
        where += " AND batch_id = ?2";
    }
    if (!filter.states.empty()) {
        std::string words;
        for (const PieceState state : filter.states) {
            words += (words.empty() ? "'" : ", '") + std::string(code_of(state)) + "'";
        }
        where += " AND state IN (" + words + ")";
    }
    return where;
}

std::string of_pieces(const PieceFilter& filter) {
    if (!filter.piece && !filter.batch && !filter.chamber && filter.states.empty() &&
        filter.product.empty() && filter.text.empty()) {
        // Keeps the parameters' number the same.
        return "(?1 IS NULL AND ?2 IS NULL AND ?3 IS NULL AND ?4 = '' AND ?5 = '%%')";
    }
    return "piece_id IN (SELECT id FROM piece " + piece_where(filter) + ")";
}

namespace {
template <class T>
std::vector<T> select_for(Connection& book, const std::string& tail, const PieceFilter& filter) {
    return select<T>(book, tail, filter.piece, filter.batch, filter.chamber, filter.product,
                     contains_pattern(filter.text));
}
} // namespace

std::vector<Piece> pieces(Connection& book, const PieceFilter& filter) {
    return select_for<Piece>(
        book, piece_where(filter) + " ORDER BY hanging_order, position, batch_id, id", filter);
}

std::vector<Piece> family(Connection& book, PieceId piece) {
    return select<Piece>(book,
                         "WHERE id IN (WITH RECURSIVE up (id) AS (VALUES (?1) UNION SELECT"
                         " parent_id FROM piece JOIN up USING (id) WHERE parent_id IS NOT NULL),"
                         " all_of (id) AS (SELECT id FROM up UNION SELECT piece.id FROM piece JOIN"
                         " all_of ON piece.parent_id = all_of.id) SELECT id FROM all_of)"
                         " ORDER BY id",
                         piece);
}

std::optional<Piece> open_piece_by_code(Connection& book, const std::string& code) {
    auto found = select<Piece>(
        book,
        "WHERE code = ? AND state NOT IN ('split_up', 'merged_away', 'discarded', 'finished')",
        code);
    return found.empty() ? std::nullopt : std::optional<Piece>(std::move(found.front()));
}

std::vector<std::string> piece_codes(Connection& book, bool only_open) {
    const auto statement = book.prepared(
        only_open ? "SELECT code FROM piece WHERE state NOT IN ('split_up', 'merged_away',"
                    " 'discarded', 'finished')"
                  : "SELECT DISTINCT code FROM piece");
    std::vector<std::string> codes;
    while (statement->executeStep()) {
        codes.push_back(statement->getColumn(0).getString());
    }
    return codes;
}

std::vector<std::pair<PieceId, std::int64_t>> piece_revisions(Connection& book,
                                                              const PieceFilter& filter) {
    const std::string sql =
        "SELECT piece_id, revision FROM piece_revision WHERE " + of_pieces(filter);
    const auto statement = book.prepared(sql);
    bind_value(*statement, 1, filter.piece);
    bind_value(*statement, 2, filter.batch);
    bind_value(*statement, 3, filter.chamber);
    bind_value(*statement, 4, filter.product);
    bind_value(*statement, 5, contains_pattern(filter.text));
    std::vector<std::pair<PieceId, std::int64_t>> rows;
    while (statement->executeStep()) {
        rows.emplace_back(PieceId::from_row(statement->getColumn(0).getInt64()),
                          statement->getColumn(1).getInt64());
    }
    return rows;
}

} // namespace core::store
