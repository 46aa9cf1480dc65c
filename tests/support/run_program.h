#pragma once

#include <string>
#include <vector>

namespace tests::support {

struct ProgramRun {
    int exit_code = -1;
    std::string out;
    std::string err;
};

/// Runs the program under test (environment SALTLOFT_BIN) with `arguments`, no display and no
/// standard input, and waits for it.
ProgramRun run_program(const std::vector<std::string>& arguments);

} // namespace tests::support
