#pragma once

#include <string>
#include <tl/expected.hpp>
#include <utility>

/// Expected faults (a file, a disk, a format) are values, not exceptions. Faults of our own
/// making are assertions. What a person should weigh up is a core::model::Finding instead.
namespace core::base {

/// Stable names of faults; ui/text turns each into a sentence. Add at the end of a group.
enum class ErrorCode {
    // reading what a person typed or a file holds
    empty_input,
    not_a_number,
    unknown_unit,
    unit_missing,
    wrong_kind, ///< a volume where a weight was asked, say
    out_of_range,
    trailing_text,
    ambiguous_number, ///< "1,234" may be a thousand or a decimal
    bad_format,
    missing_column,
    bad_row,
    unknown_zone,
    // files and the book
    not_found,
    no_permission,
    is_a_directory,
    not_a_book,
    newer_book,
    damaged,
    locked,
    disk_full,
    io_failure,
    read_only,
    // the book's own rules
    no_such_entry,
    conflict, ///< the entry changed since it was read
    not_allowed,
    nothing_to_undo,
    nothing_to_redo,
    // computing
    no_solution,
    no_convergence,
    cancelled,
};

struct Error {
    ErrorCode code{};
    std::string detail; ///< for the log and the sentence's blanks: the word, path or value at fault
    std::string where;  ///< place: "line 14, column 'weight_g'", a file, a field; may be empty
    friend bool operator==(const Error&, const Error&) = default;
};

template <class T>
using Result = tl::expected<T, Error>;
using Status = Result<void>;

[[nodiscard]] inline tl::unexpected<Error> fault(ErrorCode code, std::string detail = {},
                                                 std::string where = {}) {
    return tl::unexpected<Error>(Error{code, std::move(detail), std::move(where)});
}

} // namespace core::base
