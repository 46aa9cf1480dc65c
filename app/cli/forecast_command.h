#pragma once

#include "app/cli/command.h"

namespace app::cli {

/// `saltloft forecast --pieces P.csv --weights W.csv [--climate C.csv] [--json]`. Exit codes: 0;
/// 1 when rows had to be left out (the others are forecast all the same); 2 wrong use; 3 a file
/// that cannot be read or has no usable header.
void register_forecast(CLI::App& root, ExitCode& exit_code);

} // namespace app::cli
