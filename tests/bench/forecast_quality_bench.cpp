// The long table of forecast quality: every kind of virtual piece, with and without the log.
// Usage: bench_forecast_quality [pieces of a kind] [first number] [kind]. Not a timing benchmark;
// it is here because it takes minutes.
#include "tests/bench/smoke.h"
#include "tests/support/forecast_trial.h"

#include <cstdio>
#include <cstdlib>
#include <string>

int main(int argc, char** argv) {
    using namespace tests::support;
    const int count = argc > 1 ? std::atoi(argv[1]) : smoke() ? 2 : 60;
    const auto first = static_cast<std::uint64_t>(argc > 2 ? std::atoll(argv[2]) : 1);
    const std::string only = argc > 3 ? argv[3] : "";
    std::printf("%s\n", trial_heading().c_str());
    for (const PopulationSetting& setting : all_populations()) {
        if (!only.empty() && setting.name != only) {
            continue;
        }
        const auto pieces = make_pieces(setting, count, first);
        for (const bool with_log : {false, true}) {
            if (!with_log && setting.step_rh > 0) {
                continue; // a step that nobody logged cannot be foreseen
            }
            for (const double fraction : {0.25, 0.5, 0.75}) {
                const TrialOptions options{.fraction = fraction, .with_log = with_log};
                std::printf("%s\n",
                            trial_line(setting.name, options, run_trial(pieces, options)).c_str());
                std::fflush(stdout);
            }
        }
    }
    return 0;
}
