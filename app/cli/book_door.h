#pragma once

#include "app/cli/command.h"
#include "core/services/book.h"

#include <optional>
#include <string>

namespace app::cli {

/// Now, by the system's clock: the one place of the command line that reads it for the book.
core::units::Instant now();

/// What went wrong with a book or file, as one English sentence with the way to mend it.
std::string words_for(const core::base::Error& error);

/// Opens the book, or says why not on standard error (exit code unreadable). Findings of opening
/// (read-only, damaged) are said on standard error too.
std::optional<core::services::Book> open_book(const std::string& path, bool read_only,
                                              ExitCode& exit_code);

/// The whole file, or one sentence on standard error (exit code unreadable).
std::optional<std::string> read_whole(const std::string& path, ExitCode& exit_code);
/// Writes the whole file or leaves what was there; "-" is standard output. False with one
/// sentence on standard error.
bool write_whole(const std::string& path, const std::string& bytes, ExitCode& exit_code);

} // namespace app::cli
