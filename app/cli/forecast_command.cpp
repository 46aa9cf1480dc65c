#include "app/cli/forecast_command.h"

#include "app/cli/forecast_input.h"
#include "app/cli/forecast_output.h"
#include "core/drying/forecast.h"

#include <cstdio>
#include <memory>
#include <string>

namespace app::cli {

namespace {

struct ForecastOptions {
    std::string pieces;
    std::string weights;
    std::string climate;
    bool json = false;
};

ExitCode run(const ForecastOptions& options) {
    const auto input = read_forecast_input(options.pieces, options.weights, options.climate);
    if (!input) {
        return fail(ExitCode::unreadable, input.error());
    }
    constexpr std::size_t most_told = 20;
    for (std::size_t i = 0; i < std::min(most_told, input->complaints.size()); ++i) {
        fail(ExitCode::found_something, input->complaints[i]);
    }
    if (input->complaints.size() > most_told) {
        fail(ExitCode::found_something,
             "and " + std::to_string(input->complaints.size() - most_told) +
                 " more faults of this kind; mend the first ones and run again.");
    }
    const auto forecasts = core::drying::forecast_together(input->requests);
    for (std::size_t i = 0; i < forecasts.size(); ++i) {
        const std::string line = options.json ? forecast_json(input->names[i], forecasts[i])
                                              : forecast_words(input->names[i], forecasts[i]);
        std::printf("%s\n", line.c_str());
    }
    return input->complaints.empty() ? ExitCode::done : ExitCode::found_something;
}

} // namespace

void register_forecast(CLI::App& root, ExitCode& exit_code) {
    auto options = std::make_shared<ForecastOptions>();
    auto* verb = root.add_subcommand("forecast",
                                     "When pieces reach their target loss, from their weighings");
    verb->add_option("--pieces", options->pieces,
                     "CSV: piece,thickness_mm,form,target_loss_percent"
                     "[,green_weight_g][,fat_percent]; form is slab, cylinder or round")
        ->required();
    verb->add_option("--weights", options->weights,
                     "CSV: piece,taken_at,weight_g; times in ISO 8601 with a zone")
        ->required();
    verb->add_option("--climate", options->climate,
                     "CSV: [piece,]taken_at,temp_c,rh_percent; the air around the pieces");
    verb->add_flag("--json", options->json, "One JSON object a line, a line a piece");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
