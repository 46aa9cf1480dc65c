// saltloft mix: from a recipe and a weight of meat to the weighed sheet.
#include "app/cli/command.h"
#include "app/cli/mix_report.h"
#include "core/facts/facts.h"
#include "core/mix/mix_sheet.h"
#include "core/units/parse.h"

#include <chrono>
#include <cstdio>
#include <fstream>
#include <memory>
#include <optional>
#include <sstream>
#include <string>
#include <vector>

namespace app::cli {
namespace {

struct MixOptions {
    std::string recipe;
    std::vector<std::string> meat;
    std::string scale_step;
    std::string limits;
    bool json = false;
};

std::optional<std::string> recipe_text(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream text;
    if (!file || !(text << file.rdbuf())) {
        return std::nullopt;
    }
    return text.str();
}

std::string reason(const core::base::Error& error) {
    switch (error.code) {
    case core::base::ErrorCode::unit_missing:
        return "it has no unit";
    case core::base::ErrorCode::ambiguous_number:
        return "the comma may mean a thousand or a decimal";
    case core::base::ErrorCode::wrong_kind:
        return "that is no weight";
    case core::base::ErrorCode::unknown_unit:
        return "its unit is not known";
    case core::base::ErrorCode::out_of_range:
        return "it must be more than nothing";
    default:
        return "it is no weight";
    }
}

/// A weight above zero, or the exit code with the sentence said.
std::optional<core::units::Mass> weight(const char* option, const std::string& text) {
    const auto mass = core::units::parse_mass(text);
    if (mass && *mass > core::units::Mass::grams(0)) {
        return *mass;
    }
    const auto error =
        mass ? core::base::Error{core::base::ErrorCode::out_of_range, {}, {}} : mass.error();
    fail(ExitCode::wrong_use, std::string(option) + " \"" + text +
                                  "\" cannot be used: " + reason(error) +
                                  ". Write it like 1500g, 2.5 kg or \"3 lb 4 oz\".");
    return std::nullopt;
}

core::units::Day today() {
    const auto now = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    return core::units::Day::from_date(now);
}

ExitCode run(const MixOptions& options) {
    core::mix::MixRequest request;
    for (const auto& text : options.meat) {
        const auto mass = weight("--meat", text);
        if (!mass) {
            return ExitCode::wrong_use;
        }
        request.pieces.push_back({std::to_string(request.pieces.size() + 1), *mass});
    }
    if (!options.scale_step.empty()) {
        request.scale_step = weight("--scale-step", options.scale_step);
        if (!request.scale_step) {
            return ExitCode::wrong_use;
        }
    }
    const auto facts = core::facts::built_in_facts();
    if (!options.limits.empty()) {
        if (facts.limit_sets.find(options.limits) == nullptr) {
            std::string known;
            for (const auto& set : facts.limit_sets.sets()) {
                known += (known.empty() ? "" : ", ") + set.id;
            }
            return fail(ExitCode::wrong_use, "there are no limits called \"" + options.limits +
                                                 "\"; known are " + known + ".");
        }
        request.limits = options.limits;
    }
    const auto text = recipe_text(options.recipe);
    if (!text) {
        return fail(ExitCode::unreadable, "the recipe file \"" + options.recipe +
                                              "\" could not be read; check its name and place.");
    }
    const auto recipe = core::mix::read_recipe(*text);
    if (!recipe) {
        for (const auto& finding : recipe.error()) {
            fail(ExitCode::unreadable, options.recipe + ": " + mix_finding_words(finding));
        }
        return ExitCode::unreadable;
    }
    request.recipe = *recipe;
    request.today = today();
    const auto sheet = core::mix::make_mix_sheet(request, facts);
    const std::string limits = request.limits.value_or(recipe->limits);
    const std::string out = options.json ? mix_sheet_json(sheet, *recipe, limits) + "\n"
                                         : mix_sheet_words(sheet, *recipe, limits);
    std::fwrite(out.data(), 1, out.size(), stdout);
    return sheet.has_stop() ? ExitCode::found_something : ExitCode::done;
}

} // namespace

void register_mix(CLI::App& root, ExitCode& exit_code) {
    auto* verb = root.add_subcommand("mix", "Weigh out a cure: what goes on the scale for this "
                                            "meat, what dose that is, and what is wrong with it");
    const auto options = std::make_shared<MixOptions>();
    verb->add_option("--recipe", options->recipe, "The recipe file (JSON)")->required();
    verb->add_option("--meat", options->meat, "Weight of the meat, e.g. 1500g; once for each piece")
        ->required()
        ->allow_extra_args(false);
    verb->add_option("--scale-step", options->scale_step,
                     "The smallest step your scale shows, e.g. 1g or 0.1g");
    verb->add_option(
        "--limits", options->limits,
        "Limits to check against, instead of the recipe's own, e.g. us-fsis-dry-cured");
    verb->add_flag("--json", options->json, "Print one JSON object");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
