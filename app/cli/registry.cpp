#include "app/cli/command.h"

#include <cstdio>

namespace app::cli {

// One line a verb, in alphabetical order.

ExitCode fail(ExitCode code, const std::string& sentence) {
    std::fprintf(stderr, "saltloft: %s\n", sentence.c_str());
    return code;
}

void register_all(CLI::App& root, ExitCode& exit_code) {
    const Register verbs[] = {nullptr};
    for (const Register verb : verbs) {
        if (verb != nullptr) {
            verb(root, exit_code);
        }
    }
}

} // namespace app::cli
