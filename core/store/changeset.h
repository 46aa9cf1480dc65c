#pragma once

#include "core/model/log.h"
#include "core/store/connection.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace core::store {

/// The rows a change inserted, updated and deleted, with their values before and after, as
/// SQLite's session extension writes it. It both makes and unmakes the change, and it is what an
/// entry's history is read from.
using Changeset = std::vector<unsigned char>;

/// Records what is done to the entries' tables while it lives. The log's own tables, photos and
/// climate readings are left out: they are not part of undo.
class ChangeRecorder {
  public:
    explicit ChangeRecorder(Connection& book); ///< throws
    ~ChangeRecorder();
    ChangeRecorder(const ChangeRecorder&) = delete;
    ChangeRecorder& operator=(const ChangeRecorder&) = delete;
    Changeset taken(); ///< everything since the beginning; throws

  private:
    struct Session;
    std::unique_ptr<Session> session_;
};

enum class Direction { forward, backward };

/// Makes (forward) or unmakes (backward) a recorded change. All of it or none: a row that is not
/// as the changeset left it is a Fault conflict.
void apply(Connection& book, const Changeset& changes, Direction direction);

/// One row of a changeset.
struct RowChange {
    std::string table;
    model::EntryFate fate{};
    /// The row's key: `id`, or the first column for tables keyed otherwise.
    std::int64_t key = 0;
    /// All columns of a row added or removed; only the changed ones otherwise.
    std::vector<model::FieldChange> fields;
    /// Value of a column, after the change where there is one; absent when NULL or not in the
    /// changeset. Integers only.
    [[nodiscard]] std::optional<std::int64_t> integer(const std::string& column) const;
};

std::vector<RowChange> rows_of(Connection& book, const Changeset& changes);

} // namespace core::store
