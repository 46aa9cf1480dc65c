#pragma once

#include "core/store/connection.h"

#include <string>
#include <string_view>
#include <vector>

/// The book's schema as numbered steps. A migration is a file resources/migrations/NNNN_name.sql,
/// frozen once released (tests/core/store/migrations_test.cpp holds each hash).
namespace core::store {

/// "SLTF" in the file's header marks a book of ours.
inline constexpr std::int64_t application_id = 1397511238;

struct Migration {
    int number = 0;
    std::string name;
    std::string_view sql;
};

/// All known migrations, 1, 2, 3 ... without gaps.
const std::vector<Migration>& migrations();
/// The number a book of this program version has.
int newest_schema();

int schema_of(Connection& book); ///< 0 for an empty file

/// Brings the book from its number to `steps`' last, each step in one transaction that also sets
/// the number; a step that fails leaves the book at the number before it. Writes `program_version`
/// into the book. `at_s` is only used for a new book. Throws.
void migrate(Connection& book, const std::vector<Migration>& steps,
             const std::string& program_version, std::int64_t at_s);

/// What differs between the book's schema and what its number says it must be; empty when nothing.
/// A book from anywhere may carry traps in its schema; one that differs is not opened for writing.
std::string schema_difference(Connection& book);

} // namespace core::store
