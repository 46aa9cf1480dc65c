#include "core/store/action_log.h"

#include "core/store/codec.h"

#include <set>

namespace core::store {

using namespace model; // NOLINT(google-build-using-namespace): every type here is a model's

namespace {

StepId add_step(Connection& book, std::optional<ActionId> action, StepKind kind,
                const StepNote& note) {
    const auto statement = book.prepared(
        "INSERT INTO step (action_id, kind, at_s, who_person_id, why) VALUES (?, ?, ?, ?, ?)");
    if (action) {
        bind_value(*statement, 1, *action);
    } else {
        // An action's id is its first step's: the next one of the sequence.
        statement->bind(1,
                        book.integer("SELECT seq + 1 FROM sqlite_sequence WHERE name = 'step'", 1));
    }
    bind_value(*statement, 2, kind);
    bind_value(*statement, 3, note.at);
    bind_value(*statement, 4, note.who);
    bind_value(*statement, 5, note.why);
    statement->exec();
    return StepId::from_row(book.integer("SELECT last_insert_rowid()"));
}

/// The pieces whose history or shown state a change touches.
std::set<std::int64_t> touched_pieces(Connection& book, const std::vector<RowChange>& rows) {
    std::set<std::int64_t> pieces;
    const auto add_batch = [&](std::int64_t batch) {
        const auto statement = book.prepared("SELECT id FROM piece WHERE batch_id = ?");
        statement->bind(1, batch);
        while (statement->executeStep()) {
            pieces.insert(statement->getColumn(0).getInt64());
        }
    };
    for (const RowChange& row : rows) {
        if (row.table == "piece") {
            pieces.insert(row.key);
        } else if (row.table == "batch") {
            add_batch(row.key);
        } else if (row.table == "stage" || row.table == "weighing" || row.table == "event") {
            const std::string column = row.table == "stage" ? "batch_id" : "piece_id";
            auto owner = row.integer(column);
            if (!owner) { // an update names changed columns only
                const auto statement =
                    book.prepared("SELECT " + column + " FROM " + row.table + " WHERE id = ?");
                statement->bind(1, row.key);
                owner = statement->executeStep() ? std::optional(statement->getColumn(0).getInt64())
                                                 : std::nullopt;
            }
            if (owner && row.table == "stage") {
                add_batch(*owner);
            } else if (owner) {
                pieces.insert(*owner);
            }
        }
    }
    return pieces;
}

void mark_pieces(Connection& book, const std::set<std::int64_t>& pieces, StepId step) {
    for (const std::int64_t piece : pieces) {
        const auto statement =
            book.prepared("INSERT INTO piece_revision (piece_id, revision) VALUES (?1, ?2)"
                          " ON CONFLICT (piece_id) DO UPDATE SET revision = ?2");
        statement->bind(1, piece);
        bind_value(*statement, 2, step);
        statement->exec();
    }
}

void mark_entries(Connection& book, const std::vector<RowChange>& rows, ActionId action) {
    for (const RowChange& row : rows) {
        if (index_of_code<EntryKind>(row.table) == Codes<EntryKind>::list.size()) {
            continue; // preference, event_piece: part of the action, no entries of their own
        }
        const auto statement =
            book.prepared("INSERT OR IGNORE INTO action_entry (entry_kind, entry_row, action_id)"
                          " VALUES (?, ?, ?)");
        bind_value(*statement, 1, row.table);
        statement->bind(2, row.key);
        bind_value(*statement, 3, action);
        statement->exec();
    }
}

Changeset changes_of(Connection& book, ActionId action) {
    const auto statement = book.prepared("SELECT changeset FROM action WHERE id = ?");
    bind_value(*statement, 1, action);
    if (!statement->executeStep()) {
        refuse(base::ErrorCode::no_such_entry, "action");
    }
    const SQLite::Column column = statement->getColumn(0);
    const auto* first = static_cast<const unsigned char*>(column.getBlob());
    return {first, first + column.getBytes()};
}

std::optional<LoggedAction> next(Connection& book, const std::string& where) {
    const auto statement = book.prepared(
        "SELECT action.id, verb, subject, step.at_s, step.who_person_id FROM action JOIN step"
        " ON step.id = coalesce((SELECT max(again.id) FROM step AS again WHERE again.action_id ="
        " action.id AND again.kind <> 'performed'), action.id) " +
        where);
    if (!statement->executeStep()) {
        return std::nullopt;
    }
    LoggedAction action{.at = Instant::from_unix_seconds(0)};
    read_value(statement->getColumn(0), action.id);
    read_value(statement->getColumn(1), action.verb);
    read_value(statement->getColumn(2), action.subject);
    read_value(statement->getColumn(3), action.at);
    read_value(statement->getColumn(4), action.who);
    return action;
}

void set_state(Connection& book, ActionId action, const char* state) {
    const auto statement = book.prepared("UPDATE action SET state = ? WHERE id = ?");
    statement->bind(1, state);
    bind_value(*statement, 2, action);
    statement->exec();
}

void step(Connection& book, ActionId action, Direction direction, const StepNote& note) {
    const Changeset changes = changes_of(book, action);
    const auto rows = rows_of(book, changes);
    const bool back = direction == Direction::backward;
    // Pieces are looked up on both sides of the change: an owner may only exist on one.
    std::set<std::int64_t> pieces = touched_pieces(book, rows);
    apply(book, changes, direction);
    pieces.merge(touched_pieces(book, rows));
    set_state(book, action, back ? "undone" : "done");
    const StepId id = add_step(book, action, back ? StepKind::undone : StepKind::redone, note);
    mark_pieces(book, pieces, id);
}

} // namespace

ActionId log_action(Connection& book, const NewAction& action, const StepNote& note) {
    if (action.undoable) {
        book.prepared("UPDATE action SET state = 'dropped' WHERE state = 'undone'")->exec();
    }
    const StepId step = add_step(book, std::nullopt, StepKind::performed, note);
    const ActionId id = ActionId::from_row(step.row());
    {
        const auto statement =
            book.prepared("INSERT INTO action (id, verb, subject, state, undoable, changeset)"
                          " VALUES (?, ?, ?, 'done', ?, ?)");
        bind_value(*statement, 1, id);
        bind_value(*statement, 2, action.verb);
        bind_value(*statement, 3, action.subject);
        bind_value(*statement, 4, action.undoable);
        // A null pointer would bind NULL: an import's action has no changes of its own.
        const void* bytes =
            action.changes.empty() ? "" : static_cast<const void*>(action.changes.data());
        statement->bind(5, bytes, static_cast<int>(action.changes.size()));
        statement->exec();
    }
    const auto rows = rows_of(book, action.changes);
    mark_entries(book, rows, id);
    mark_pieces(book, touched_pieces(book, rows), step);
    return id;
}

std::optional<LoggedAction> next_to_undo(Connection& book) {
    return next(book, "WHERE state = 'done' AND undoable = 1 ORDER BY action.id DESC LIMIT 1");
}
std::optional<LoggedAction> next_to_redo(Connection& book) {
    return next(book, "WHERE state = 'undone' ORDER BY action.id LIMIT 1");
}

void step_back(Connection& book, ActionId action, const StepNote& note) {
    step(book, action, Direction::backward, note);
}
void step_again(Connection& book, ActionId action, const StepNote& note) {
    step(book, action, Direction::forward, note);
}

std::int64_t revision(Connection& book) {
    return book.integer("SELECT max(id) FROM step");
}

std::int64_t piece_revision(Connection& book, PieceId piece) {
    const auto statement = book.prepared("SELECT revision FROM piece_revision WHERE piece_id = ?");
    bind_value(*statement, 1, piece);
    return statement->executeStep() ? statement->getColumn(0).getInt64() : 0;
}

std::vector<LoggedStep> logged_steps(Connection& book, int limit, std::optional<StepId> before) {
    const auto statement = book.prepared(
        "SELECT step.id, action_id, kind, verb, subject, at_s, who_person_id, why FROM step"
        " JOIN action ON action.id = step.action_id WHERE ?1 IS NULL OR step.id < ?1"
        " ORDER BY step.id DESC LIMIT ?2");
    bind_value(*statement, 1, before);
    bind_value(*statement, 2, limit);
    std::vector<LoggedStep> steps;
    while (statement->executeStep()) {
        LoggedStep& row = steps.emplace_back(LoggedStep{.at = Instant::from_unix_seconds(0)});
        read_value(statement->getColumn(0), row.step);
        read_value(statement->getColumn(1), row.action);
        read_value(statement->getColumn(2), row.kind);
        read_value(statement->getColumn(3), row.verb);
        read_value(statement->getColumn(4), row.subject);
        read_value(statement->getColumn(5), row.at);
        read_value(statement->getColumn(6), row.who);
        read_value(statement->getColumn(7), row.why);
    }
    return steps;
}

namespace {

HistoryLine line_of(SQLite::Statement& statement) {
    HistoryLine line{.at = Instant::from_unix_seconds(0)};
    read_value(statement.getColumn(0), line.step);
    read_value(statement.getColumn(1), line.action);
    read_value(statement.getColumn(2), line.step_kind);
    read_value(statement.getColumn(3), line.verb);
    read_value(statement.getColumn(4), line.at);
    read_value(statement.getColumn(5), line.who);
    read_value(statement.getColumn(6), line.why);
    return line;
}

/// The fate and fields of a change seen from the other side.
void turn_round(HistoryLine& line) {
    if (line.fate == EntryFate::added) {
        line.fate = EntryFate::removed;
    } else if (line.fate == EntryFate::removed) {
        line.fate = EntryFate::added;
    }
    for (FieldChange& field : line.fields) {
        std::swap(field.before, field.after);
    }
}

} // namespace

std::vector<HistoryLine> entry_history(Connection& book, EntryRef entry) {
    const std::string table(code_of(entry.kind));
    const auto statement = book.prepared(
        "SELECT step.id, step.action_id, step.kind, verb, step.at_s, step.who_person_id, step.why"
        " FROM action_entry JOIN action ON action.id = action_entry.action_id"
        " JOIN step ON step.id = action.id OR step.id IN (SELECT again.id FROM step AS again"
        " WHERE again.action_id = action.id AND again.kind <> 'performed')"
        " WHERE entry_kind = ? AND entry_row = ? ORDER BY step.id");
    bind_value(*statement, 1, table);
    statement->bind(2, entry.row);
    std::vector<HistoryLine> lines;
    while (statement->executeStep()) {
        HistoryLine line = line_of(*statement);
        for (RowChange& row : rows_of(book, changes_of(book, line.action))) {
            if (row.table == table && row.key == entry.row) {
                line.fate = row.fate;
                line.fields = std::move(row.fields);
                break;
            }
        }
        if (line.step_kind == StepKind::undone) {
            turn_round(line);
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace core::store
