#include "app/cli/arguments.h"
#include "app/cli/finding_text.h"
#include "core/air/moist_air.h"
#include "core/units/parse.h"

#include <cmath>
#include <fmt/format.h>
#include <memory>
#include <nlohmann/json.hpp>

namespace app::cli {

namespace {

using core::air::MoistAir;
using Json = nlohmann::ordered_json;

struct AirOptions {
    std::string temperature;
    std::string humidity;
    std::string height;
    bool json = false;
};

Json celsius_or_null(const std::optional<core::units::Temperature>& t) {
    return t ? Json(t->in_celsius()) : Json(nullptr);
}

std::string celsius_words(const std::optional<core::units::Temperature>& t) {
    return t ? fmt::format("{:.1f} C", t->in_celsius()) : std::string("none (dry air)");
}

std::string as_json(const MoistAir& air) {
    Json out;
    out["temp_c"] = air.condition.temperature.in_celsius();
    out["rh_percent"] = air.condition.humidity.in_percent();
    out["pressure_pa"] = air.condition.pressure.in_pascals();
    out["saturation_pressure_pa"] = air.saturation_pressure.in_pascals();
    out["vapour_pressure_pa"] = air.vapour_pressure.in_pascals();
    out["vapour_pressure_deficit_pa"] = air.deficit.in_pascals();
    out["dew_point_c"] = celsius_or_null(air.dew_point);
    out["wet_bulb_c"] = celsius_or_null(air.wet_bulb);
    out["humidity_ratio_kg_per_kg"] = air.humidity_ratio;
    out["absolute_humidity_g_per_m3"] = air.absolute_humidity;
    out["enthalpy_kj_per_kg"] = air.enthalpy;
    out["specific_volume_m3_per_kg"] = air.specific_volume;
    return out.dump();
}

std::string as_words(const MoistAir& air) {
    const bool frost = air.dew_point && *air.dew_point <= core::air::triple_point;
    return fmt::format("Air of {} C and {} % RH at {} hPa\n"
                       "  drying force (vapour missing)  {:.0f} Pa of {:.0f} Pa\n"
                       "  {}  {}\n"
                       "  wet bulb                       {}\n"
                       "  water in the air               {:.2f} g/m3, {:.2f} g per kg of dry air\n"
                       "  enthalpy                       {:.2f} kJ per kg of dry air\n"
                       "  volume                         {:.4f} m3 per kg of dry air",
                       number(air.condition.temperature.in_celsius(), 4),
                       number(air.condition.humidity.in_percent(), 4),
                       number(air.condition.pressure.in_hectopascals(), 6),
                       air.deficit.in_pascals(), air.saturation_pressure.in_pascals(),
                       frost ? "frost point                  " : "dew point                    ",
                       celsius_words(air.dew_point), celsius_words(air.wet_bulb),
                       air.absolute_humidity, 1000 * air.humidity_ratio, air.enthalpy,
                       air.specific_volume);
}

ExitCode refuse(const core::base::Error& error, const AirOptions& options) {
    if (error.where == "temperature") {
        return fail(ExitCode::wrong_use, "--temp '" + options.temperature +
                                             "' is outside -100 to 200 C; give the temperature "
                                             "of the air around the meat.");
    }
    return fail(ExitCode::wrong_use,
                "air of --temp " + options.temperature + " cannot hold --rh " + options.humidity +
                    " at this pressure; give a lower temperature or humidity.");
}

ExitCode run(const AirOptions& options) {
    const auto t = read_argument(core::units::parse_temperature(options.temperature), "--temp",
                                 options.temperature, "13C");
    const auto rh = read_argument(core::units::parse_relative_humidity(options.humidity), "--rh",
                                  options.humidity, "75");
    std::optional<core::units::Length> height = core::units::Length::metres(0);
    if (!options.height.empty()) {
        const auto metres = read_argument(core::units::parse_number(options.height), "--height",
                                          options.height, "800");
        height = metres ? std::optional(core::units::Length::metres(*metres)) : std::nullopt;
        if (height && std::abs(*metres) > 5000) {
            fail(ExitCode::wrong_use, "--height '" + options.height +
                                          "' is out of range; give metres above the sea, -5000 "
                                          "to 5000.");
            height.reset();
        }
    }
    if (!t || !rh || !height) {
        return ExitCode::wrong_use;
    }
    const auto air = core::air::state_of({*t, *rh, core::air::pressure_at_height(*height)});
    if (!air) {
        return refuse(air.error(), options);
    }
    fmt::print("{}\n", options.json ? as_json(*air) : as_words(*air));
    return ExitCode::done;
}

} // namespace

void register_air(CLI::App& root, ExitCode& exit_code) {
    auto options = std::make_shared<AirOptions>();
    auto* verb = root.add_subcommand("air", "What air of a temperature and humidity can carry");
    verb->add_option("--temp", options->temperature, "Air temperature, like 13C or 55F")
        ->required();
    verb->add_option("--rh", options->humidity, "Relative humidity in percent, like 75")
        ->required();
    verb->add_option("--height", options->height, "Metres above the sea (default 0)");
    verb->add_flag("--json", options->json, "One JSON object");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
