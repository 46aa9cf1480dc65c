#pragma once

#include "core/store/changeset.h"

namespace core::store {

/// True when `changes` is whole: every table head, record and value lies inside the bytes and has
/// a kind that the format knows, inserts and deletes have all their values, and updates have their
/// key. The engine trusts its input here: handed a truncated changeset, its reader can run past
/// the end or never come back, so bytes from a book are looked over first.
/// Format: SQLite session extension, "changeset format" (comment in sqlite3session.c, 3.40).
[[nodiscard]] bool is_whole(const Changeset& changes);

} // namespace core::store
