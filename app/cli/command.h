#pragma once

#include <CLI/CLI.hpp>

namespace app::cli {

/// What the program tells the shell. Shared by every verb.
enum class ExitCode : int {
    done = 0,            ///< the verb did what was asked
    found_something = 1, ///< it ran and found something wrong (a stop finding, a failed check)
    wrong_use = 2,       ///< the command line itself was wrong
    unreadable = 3,      ///< the book or a file could not be read
};

/// Registers one verb on `root`. The verb stores its exit code in `exit_code` when it ran.
/// Each verb lives in its own file, app/cli/NAME_command.cpp, and is listed once in
/// app/cli/registry.cpp. Verbs write results to standard output and errors, as one plain
/// sentence with the way to mend it, to standard error.
using Register = void (*)(CLI::App& root, ExitCode& exit_code);

/// One plain error sentence on standard error; returns `code` for use in a return statement.
ExitCode fail(ExitCode code, const std::string& sentence);

/// Registers all verbs.
void register_all(CLI::App& root, ExitCode& exit_code);

} // namespace app::cli
