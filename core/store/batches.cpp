#include "core/store/batches.h"

#include "core/model/plan_document.h"
#include "core/store/row_table.h"

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

template <>
struct Table<Batch> {
    static constexpr std::string_view name = "batch";
    static Batch blank() { return {.started = Day::from_days_since_epoch(0)}; }
    template <class V>
    static void visit(V& v, Batch& b) {
        v("code", b.code);
        v("name", b.name);
        v("product", b.product);
        v("species", b.species);
        v("supplier", b.supplier);
        v("supplier_lot", b.supplier_lot);
        v("recipe_version_id", b.recipe);
        v("started_day", b.started);
        v("state", b.state);
        v("bought_mg", b.bought_weight);
        v("trim_mg", b.trim_weight);
        v("price_per_kg", b.price_per_kilogram);
        v("was_frozen", b.was_frozen);
        v("notes", b.notes);
    }
};

template <>
struct Table<Acceptance> {
    static constexpr std::string_view name = "acceptance";
    static Acceptance blank() { return {.at = Instant::from_unix_seconds(0)}; }
    template <class V>
    static void visit(V& v, Acceptance& a) {
        v("batch_id", a.batch);
        v("piece_id", a.piece);
        v("code", a.code);
        v("place", a.place);
        v("detail_json", a.detail);
        v("at_s", a.at);
        v("by_person_id", a.by);
        v("why", a.why);
    }
};

/// A stage keeps a copy of the template it was made from as that template's own document.
template <>
struct Codec<StageTemplate> {
    static std::string to_column(const StageTemplate& what) { return write_stage_template(what); }
    static StageTemplate from_column(const SQLite::Column& c) {
        auto what = read_stage_template(c.getString());
        if (!what) {
            refuse(base::ErrorCode::damaged, what.error().front().detail, c.getName());
        }
        return std::move(*what);
    }
};

template <>
struct Table<Stage> {
    static constexpr std::string_view name = "stage";
    static Stage blank() {
        return {.planned_start = Day::from_days_since_epoch(0),
                .planned_end = Day::from_days_since_epoch(0)};
    }
    template <class V>
    static void visit(V& v, Stage& s) {
        v("batch_id", s.batch);
        v("ordinal", s.order);
        v("what_json", s.what);
        v("planned_start_day", s.planned_start);
        v("planned_end_day", s.planned_end);
        v("started_at_s", s.started_at);
        v("ended_at_s", s.ended_at);
        v("chamber_id", s.chamber);
        v("end_reason", s.end_reason);
    }
};

SALTLOFT_STORE_ENTRY(Batch)
SALTLOFT_STORE_ENTRY(Acceptance)
SALTLOFT_STORE_ENTRY(Stage)

std::string contains_pattern(const std::string& text) {
    std::string pattern = "%";
    for (const char c : text) {
        if (c == '%' || c == '_' || c == '\\') {
            pattern += '\\';
        }
        pattern += c;
    }
    return pattern + "%";
}

std::vector<Batch> batches(Connection& book, const BatchFilter& filter) {
    return select<Batch>(
        book,
        "WHERE (?1 IS NULL OR state = ?1) AND (?2 = '' OR product = ?2)"
        " AND (code LIKE ?3 ESCAPE '\\' OR name LIKE ?3 ESCAPE '\\' OR product LIKE ?3 ESCAPE '\\'"
        " OR supplier LIKE ?3 ESCAPE '\\') ORDER BY started_day DESC, id DESC",
        filter.state, filter.product, contains_pattern(filter.text));
}

std::optional<Batch> batch_by_code(Connection& book, const std::string& code) {
    auto found = select<Batch>(book, "WHERE code = ?", code);
    return found.empty() ? std::nullopt : std::optional<Batch>(std::move(found.front()));
}

std::vector<std::string> products(Connection& book) {
    const auto statement =
        book.prepared("SELECT DISTINCT product FROM batch WHERE product <> '' ORDER BY product");
    std::vector<std::string> names;
    while (statement->executeStep()) {
        names.push_back(statement->getColumn(0).getString());
    }
    return names;
}

std::vector<BatchCounts> batch_counts(Connection& book) {
    const auto statement =
        book.prepared("SELECT batch_id, sum(state NOT IN ('split_up', 'merged_away', 'discarded')),"
                      " sum(state = 'drying'), sum(state = 'finished'),"
                      " max((SELECT max(taken_at_s) FROM weighing WHERE piece_id = piece.id"
                      " AND withdrawn = 0)) FROM piece GROUP BY batch_id");
    std::vector<BatchCounts> counts;
    while (statement->executeStep()) {
        BatchCounts& row = counts.emplace_back();
        read_value(statement->getColumn(0), row.batch);
        read_value(statement->getColumn(1), row.pieces);
        read_value(statement->getColumn(2), row.drying);
        read_value(statement->getColumn(3), row.finished);
        read_value(statement->getColumn(4), row.last_weighed);
    }
    return counts;
}

void put_outcome(Connection& book, const Outcome& outcome) {
    const auto statement = book.prepared(
        "INSERT INTO outcome (batch_id, salt, texture, change_next_time) VALUES (?1, ?2, ?3, ?4)"
        " ON CONFLICT (batch_id) DO UPDATE SET salt = ?2, texture = ?3, change_next_time = ?4");
    bind_value(*statement, 1, outcome.batch);
    bind_value(*statement, 2, outcome.salt);
    bind_value(*statement, 3, outcome.texture);
    bind_value(*statement, 4, outcome.change_next_time);
    statement->exec();
}

namespace {
std::vector<Outcome> read_outcomes(Connection& book, std::optional<BatchId> batch) {
    const auto statement =
        book.prepared("SELECT batch_id, salt, texture, change_next_time FROM outcome"
                      " WHERE ?1 IS NULL OR batch_id = ?1 ORDER BY batch_id");
    bind_value(*statement, 1, batch);
    std::vector<Outcome> rows;
    while (statement->executeStep()) {
        Outcome& row = rows.emplace_back();
        read_value(statement->getColumn(0), row.batch);
        read_value(statement->getColumn(1), row.salt);
        read_value(statement->getColumn(2), row.texture);
        read_value(statement->getColumn(3), row.change_next_time);
    }
    return rows;
}
} // namespace

std::optional<Outcome> outcome(Connection& book, BatchId batch) {
    auto rows = read_outcomes(book, batch);
    return rows.empty() ? std::nullopt : std::optional<Outcome>(std::move(rows.front()));
}
std::vector<Outcome> outcomes(Connection& book) {
    return read_outcomes(book, std::nullopt);
}

std::vector<Acceptance> acceptances(Connection& book, std::optional<BatchId> batch) {
    return select<Acceptance>(
        book,
        "WHERE ?1 IS NULL OR batch_id = ?1 OR piece_id IN (SELECT id FROM piece WHERE batch_id = "
        "?1) ORDER BY at_s, id",
        batch);
}

std::vector<Stage> stages(Connection& book, BatchId batch) {
    return select<Stage>(book, "WHERE batch_id = ? ORDER BY ordinal, id", batch);
}

std::vector<Stage> stages_in(Connection& book, model::ChamberId chamber, units::Instant from,
                             units::Instant to) {
    return select<Stage>(book,
                         "WHERE chamber_id = ? AND started_at_s < ?"
                         " AND (ended_at_s IS NULL OR ended_at_s > ?) ORDER BY started_at_s, id",
                         chamber, to, from);
}

std::vector<Stage> open_stages(Connection& book) {
    return select<Stage>(book,
                         "WHERE ended_at_s IS NULL AND batch_id IN (SELECT id FROM batch WHERE"
                         " state IN ('planned', 'in_progress'))"
                         " ORDER BY planned_start_day, batch_id, ordinal, id");
}

} // namespace core::store
