#pragma once

#include "app/cli/command.h"

namespace app::cli {

/// `saltloft air`: moist air from a temperature and a humidity.
void register_air(CLI::App& root, ExitCode& exit_code);
/// `saltloft cure-time`: days in cure by diffusion, beside the trade's day rules.
void register_cure_time(CLI::App& root, ExitCode& exit_code);
/// `saltloft water-activity`: an estimate from salt and moisture.
void register_water_activity(CLI::App& root, ExitCode& exit_code);

} // namespace app::cli
