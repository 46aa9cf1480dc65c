#include "app/cli/arguments.h"
#include "app/cli/finding_text.h"
#include "core/doneness/salt_solution.h"
#include "core/doneness/water_activity.h"
#include "core/facts/hurdles.h"
#include "core/units/parse.h"

#include <fmt/format.h>
#include <memory>
#include <nlohmann/json.hpp>

namespace app::cli {

namespace {

using core::base::Interval;
using core::units::MassShare;
using core::units::WaterActivity;
using Json = nlohmann::ordered_json;

struct WaterActivityOptions {
    std::string salt;
    std::string moisture;
    std::string fat;
    bool json = false;
};

struct Answer {
    MassShare salt;
    MassShare moisture;
    MassShare phase_salt;
    double molality;
    WaterActivity solution;
    Interval<WaterActivity> product;
    core::model::Findings findings;
};

core::model::Findings findings_of(const Answer& answer) {
    core::model::Findings findings;
    findings.push_back({"estimate_is_no_measurement", core::model::Severity::note, "", {}, {}, {}});
    if (answer.molality > core::doneness::saturated_molality) {
        findings.push_back({"brine_saturated",
                            core::model::Severity::caution,
                            "salt",
                            {{"most", MassShare::percent(26.4)}},
                            {},
                            {}});
    }
    for (const auto& organism : core::facts::built_in_hurdles().organisms) {
        if (organism.lowest_activity && answer.product.high > *organism.lowest_activity) {
            findings.push_back(
                {"above_growth_limit",
                 core::model::Severity::caution,
                 organism.id,
                 {{"limit", organism.lowest_activity->as_fraction()}, {"name", organism.name}},
                 {},
                 organism.source});
        }
    }
    return findings;
}

std::string as_json(const Answer& answer) {
    Json out;
    out["salt_percent"] = answer.salt.in_percent();
    out["moisture_percent"] = answer.moisture.in_percent();
    out["water_phase_salt_percent"] = answer.phase_salt.in_percent();
    out["molality_mol_per_kg"] = answer.molality;
    out["salt_solution_activity"] = answer.solution.as_fraction();
    out["water_activity"] = {{"p10", answer.product.low.as_fraction()},
                             {"p50", answer.product.best.as_fraction()},
                             {"p90", answer.product.high.as_fraction()}};
    out["findings"] = json_of(answer.findings);
    return out.dump();
}

std::string as_words(const Answer& answer) {
    std::string text =
        fmt::format("Meat with {} % salt and {} % moisture\n"
                    "  salt in its water phase        {:.2f} %\n"
                    "  the brine alone                water activity {:.3f}\n"
                    "  estimate for the meat          water activity {:.3f} ({:.3f} to {:.3f})",
                    number(answer.salt.in_percent()), number(answer.moisture.in_percent()),
                    answer.phase_salt.in_percent(), answer.solution.as_fraction(),
                    answer.product.best.as_fraction(), answer.product.low.as_fraction(),
                    answer.product.high.as_fraction());
    for (const auto& finding : answer.findings) {
        text += fmt::format("\n{}: {}", severity_name(finding.severity), words_for(finding));
    }
    return text;
}

ExitCode run(const WaterActivityOptions& options) {
    const auto salt =
        read_argument(core::units::parse_mass_share(options.salt), "--salt", options.salt, "4.5%");
    const auto moisture = read_argument(core::units::parse_mass_share(options.moisture),
                                        "--moisture", options.moisture, "45%");
    std::optional<MassShare> fat = MassShare::percent(0);
    if (!options.fat.empty()) {
        fat =
            read_argument(core::units::parse_mass_share(options.fat), "--fat", options.fat, "30%");
    }
    if (!salt || !moisture || !fat) {
        return ExitCode::wrong_use;
    }
    const auto product = core::doneness::activity_of_product(*salt, *moisture, *fat);
    const auto phase = core::doneness::water_phase_salt(*salt, *moisture);
    if (!product || !phase || *salt < MassShare::percent(0)) {
        return fail(ExitCode::wrong_use,
                    "--salt " + options.salt + " and --moisture " + options.moisture +
                        " leave no water or no meat; give shares of the whole piece that add up "
                        "to less than 100 % with its fat.");
    }
    Answer answer{*salt,
                  *moisture,
                  *phase,
                  core::doneness::molality_of(*salt / *moisture),
                  WaterActivity::fraction(1),
                  *product,
                  {}};
    answer.solution = core::doneness::salt_solution_activity(answer.molality);
    answer.findings = findings_of(answer);
    fmt::print("{}\n", options.json ? as_json(answer) : as_words(answer));
    return ExitCode::done;
}

} // namespace

void register_water_activity(CLI::App& root, ExitCode& exit_code) {
    auto options = std::make_shared<WaterActivityOptions>();
    auto* verb =
        root.add_subcommand("water-activity", "Estimate of water activity from salt and moisture");
    verb->add_option("--salt", options->salt, "Salt, share of the piece, like 4.5%")->required();
    verb->add_option("--moisture", options->moisture, "Water, share of the piece, like 45%")
        ->required();
    verb->add_option("--fat", options->fat, "Fat tissue, share of the piece (default 0%)");
    verb->add_flag("--json", options->json, "One JSON object");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
