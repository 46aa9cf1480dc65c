#include "core/store/changeset.h"

#include "core/store/changeset_shape.h"
#include "core/store/codes.h"
#include "core/store/fault.h"

#include <SQLiteCpp/Column.h>
#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Exception.h>
#include <SQLiteCpp/Statement.h>

#include <array>
#include <charconv>
#include <map>
#include <sqlite3.h>
#include <string_view>

namespace core::store {

namespace {

void check(int code, Connection& book) {
    if (code != SQLITE_OK) {
        throw SQLite::Exception(book.database().getHandle(), code);
    }
}

/// Tables that are recorded: the entries', the settings and the tie of an event to its pieces.
bool is_recorded(std::string_view table) {
    return table == "event_piece" || table == "preference" ||
           index_of_code<model::EntryKind>(table) < Codes<model::EntryKind>::list.size();
}

/// The log's bytes are looked over before the engine, which trusts them, sees them.
void look_over(const Changeset& changes) {
    if (!is_whole(changes)) {
        refuse(base::ErrorCode::damaged, "a change in the log is cut short or scribbled over");
    }
}

} // namespace

struct ChangeRecorder::Session {
    Connection& book;
    sqlite3_session* handle = nullptr;
    explicit Session(Connection& of) : book(of) {
        check(sqlite3session_create(book.database().getHandle(), "main", &handle), book);
    }
    ~Session() { sqlite3session_delete(handle); }
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;
};

ChangeRecorder::ChangeRecorder(Connection& book) : session_(std::make_unique<Session>(book)) {
    check(sqlite3session_attach(session_->handle, nullptr), book);
    sqlite3session_table_filter(
        session_->handle, [](void*, const char* table) { return is_recorded(table) ? 1 : 0; },
        nullptr);
}

ChangeRecorder::~ChangeRecorder() = default;

Changeset ChangeRecorder::taken() {
    int size = 0;
    void* bytes = nullptr;
    check(sqlite3session_changeset(session_->handle, &size, &bytes), session_->book);
    const std::unique_ptr<void, void (*)(void*)> owner(bytes, sqlite3_free);
    const auto* first = static_cast<const unsigned char*>(bytes);
    return {first, first + size};
}

void apply(Connection& book, const Changeset& changes, Direction direction) {
    look_over(changes);
    // The engine takes a non-const pointer and only reads.
    void* bytes = const_cast<unsigned char*>(changes.data()); // NOLINT(*-const-cast)
    const int flags = direction == Direction::backward ? SQLITE_CHANGESETAPPLY_INVERT : 0;
    const int code = sqlite3changeset_apply_v2(
        book.database().getHandle(), static_cast<int>(changes.size()), bytes, nullptr,
        [](void*, int, sqlite3_changeset_iter*) { return SQLITE_CHANGESET_ABORT; }, nullptr,
        nullptr, nullptr, flags);
    if (code == SQLITE_ABORT) {
        refuse(base::ErrorCode::conflict, "an entry is not as the log left it");
    }
    check(code, book);
}

namespace {

std::optional<std::string> text_of(sqlite3_value* value) {
    switch (value == nullptr ? SQLITE_NULL : sqlite3_value_type(value)) {
    case SQLITE_NULL:
        return std::nullopt;
    case SQLITE_INTEGER:
        return std::to_string(sqlite3_value_int64(value));
    case SQLITE_FLOAT: {
        std::array<char, 40> digits{};
        const auto end = std::to_chars(digits.data(), digits.data() + digits.size(),
                                       sqlite3_value_double(value));
        return std::string(digits.data(), end.ptr);
    }
    default: {
        const void* bytes = sqlite3_value_blob(value);
        const auto size = static_cast<std::size_t>(sqlite3_value_bytes(value));
        return bytes == nullptr ? std::string()
                                : std::string(static_cast<const char*>(bytes), size);
    }
    }
}

using ColumnNames = std::map<std::string, std::vector<std::string>>;

const std::vector<std::string>& columns_of(Connection& book, const std::string& table,
                                           ColumnNames& known) {
    auto [found, is_new] = known.try_emplace(table);
    if (is_new) {
        const auto statement = book.prepared("SELECT name FROM pragma_table_info(?) ORDER BY cid");
        statement->bind(1, table);
        while (statement->executeStep()) {
            found->second.push_back(statement->getColumn(0).getString());
        }
    }
    return found->second;
}

RowChange read_row(sqlite3_changeset_iter* at, Connection& book, ColumnNames& known) {
    const char* table = nullptr;
    int columns = 0;
    int operation = 0;
    check(sqlite3changeset_op(at, &table, &columns, &operation, nullptr), book);
    RowChange row;
    row.table = table;
    row.fate = operation == SQLITE_INSERT   ? model::EntryFate::added
               : operation == SQLITE_DELETE ? model::EntryFate::removed
                                            : model::EntryFate::changed;
    const auto& names = columns_of(book, row.table, known);
    for (int i = 0; i < columns && static_cast<std::size_t>(i) < names.size(); ++i) {
        sqlite3_value* before = nullptr;
        sqlite3_value* after = nullptr;
        if (operation != SQLITE_INSERT) {
            check(sqlite3changeset_old(at, i, &before), book);
        }
        if (operation != SQLITE_DELETE) {
            check(sqlite3changeset_new(at, i, &after), book);
        }
        if (i == 0) {
            sqlite3_value* key = before != nullptr ? before : after;
            if (key == nullptr) { // a changeset of ours always has it; a scribbled one may not
                refuse(base::ErrorCode::damaged, "a change in the log has no key", row.table);
            }
            row.key = sqlite3_value_int64(key);
            if (operation == SQLITE_UPDATE) {
                continue; // the key is in every update, unchanged
            }
        }
        if (before != nullptr || after != nullptr) {
            row.fields.push_back(
                {names[static_cast<std::size_t>(i)], text_of(before), text_of(after)});
        }
    }
    return row;
}

} // namespace

std::optional<std::int64_t> RowChange::integer(const std::string& column) const {
    for (const model::FieldChange& field : fields) {
        const auto& text = field.after ? field.after : field.before;
        std::int64_t value = 0;
        if (field.field == column && text &&
            std::from_chars(text->data(), text->data() + text->size(), value).ec == std::errc()) {
            return value;
        }
    }
    return std::nullopt;
}

std::vector<RowChange> rows_of(Connection& book, const Changeset& changes) {
    look_over(changes);
    void* bytes = const_cast<unsigned char*>(changes.data()); // NOLINT(*-const-cast)
    sqlite3_changeset_iter* at = nullptr;
    check(sqlite3changeset_start(&at, static_cast<int>(changes.size()), bytes), book);
    const std::unique_ptr<sqlite3_changeset_iter, int (*)(sqlite3_changeset_iter*)> owner(
        at, sqlite3changeset_finalize);
    ColumnNames known;
    std::vector<RowChange> rows;
    int code = sqlite3changeset_next(at);
    for (; code == SQLITE_ROW; code = sqlite3changeset_next(at)) {
        rows.push_back(read_row(at, book, known));
    }
    check(code == SQLITE_DONE ? SQLITE_OK : code, book);
    return rows;
}

} // namespace core::store
