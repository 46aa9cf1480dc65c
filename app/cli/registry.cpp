#include "app/cli/command.h"

#include <cstdio>

namespace app::cli {

// One line a verb, in alphabetical order.
// clang-format off
#define SALTLOFT_VERBS(VERB) \
    VERB(register_air) \
    VERB(register_backup) \
    VERB(register_check) \
    VERB(register_cure_time) \
    VERB(register_export) \
    VERB(register_forecast) \
    VERB(register_import) \
    VERB(register_import_climate) \
    VERB(register_import_weighings) \
    VERB(register_mix) \
    VERB(register_record) \
    VERB(register_restore) \
    VERB(register_salvage) \
    VERB(register_water_activity)
// clang-format on

#define SALTLOFT_DECLARE(verb) void verb(CLI::App& root, ExitCode& exit_code);
SALTLOFT_VERBS(SALTLOFT_DECLARE)

ExitCode fail(ExitCode code, const std::string& sentence) {
    std::fprintf(stderr, "saltloft: %s\n", sentence.c_str());
    return code;
}

void register_all(CLI::App& root, ExitCode& exit_code) {
#define SALTLOFT_LIST(verb) verb,
    const Register verbs[] = {SALTLOFT_VERBS(SALTLOFT_LIST)};
    for (const Register verb : verbs) {
        verb(root, exit_code);
    }
}

} // namespace app::cli
