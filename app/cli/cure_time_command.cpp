#include "app/cli/arguments.h"
#include "app/cli/cure_time_output.h"
#include "core/units/parse.h"

#include <fmt/format.h>
#include <memory>
#include <string_view>
#include <utility>

namespace app::cli {

namespace {

using core::model::Form;
using core::model::SkinSide;
using core::uptake::CureMethod;

struct CureTimeOptions {
    std::string thickness;
    std::string form;
    std::string skin = "none";
    std::string temperature = "4C";
    std::string salt;
    std::string weight;
    std::string fat;
    std::string width;
    std::string length;
    bool thawed = false;
    bool json = false;
};

template <class Value>
using Spelling = std::pair<std::string_view, Value>;

constexpr Spelling<Form> forms[] = {{"block", Form::block},
                                    {"cylinder", Form::cylinder},
                                    {"round", Form::round},
                                    {"slab", Form::slab}};
constexpr Spelling<SkinSide> skins[] = {
    {"all-round", SkinSide::all_round}, {"none", SkinSide::none}, {"one-side", SkinSide::one_side}};

template <class Value, std::size_t count>
std::optional<Value> word(const Spelling<Value> (&words)[count], const std::string& flag,
                          const std::string& given) {
    for (const auto& [name, value] : words) {
        if (name == given) {
            return value;
        }
    }
    std::string known;
    for (const auto& [name, value] : words) {
        known += known.empty() ? "" : ", ";
        known += name;
    }
    fail(ExitCode::wrong_use, flag + " '" + given + "' is not known; use one of " + known + ".");
    return std::nullopt;
}

/// Reads an optional argument into `out`; false when it was given and cannot be read.
template <class T, class Parse>
bool read_if_given(const std::string& text, Parse parse, const char* flag, const char* example,
                   std::optional<T>& out) {
    if (text.empty()) {
        return true;
    }
    out = read_argument(parse(text), flag, text, example);
    return out.has_value();
}

std::optional<core::uptake::CureRequest> request_of(const CureTimeOptions& options) {
    namespace units = core::units;
    const auto length = [](const std::string& text) { return units::parse_length(text); };
    const auto share = [](const std::string& text) { return units::parse_mass_share(text); };
    const auto mass = [](const std::string& text) { return units::parse_mass(text); };
    const auto thickness =
        read_argument(length(options.thickness), "--thickness", options.thickness, "50mm");
    const auto temperature = read_argument(units::parse_temperature(options.temperature), "--temp",
                                           options.temperature, "4C");
    std::optional<units::MassShare> salt;
    const auto form = word(forms, "--form", options.form);
    const auto skin = word(skins, "--skin", options.skin);
    core::uptake::CureRequest request{.form = form.value_or(Form::slab),
                                      .thickness = thickness.value_or(units::Length::metres(0))};
    bool fine = thickness && temperature && form && skin;
    fine = read_if_given(options.salt, share, "--salt", "2.5%", salt) && fine;
    fine = read_if_given(options.weight, mass, "--weight", "1.2kg", request.weight) && fine;
    fine = read_if_given(options.fat, share, "--fat", "30%", request.fat) && fine;
    fine = read_if_given(options.width, length, "--width", "80mm", request.width) && fine;
    fine = read_if_given(options.length, length, "--length", "200mm", request.length) && fine;
    if (!fine) {
        return std::nullopt;
    }
    request.skin = *skin;
    request.temperature = *temperature;
    request.salt = salt.value_or(request.salt);
    request.thawed_meat = options.thawed;
    return request;
}

/// Input that no method can use is wrong use, told in full; what only speaks about the piece
/// (no open face, more salt than its water holds) is an answer.
bool refuse(const core::model::Findings& findings) {
    bool refused = false;
    for (const auto& finding : findings) {
        if (finding.severity == core::model::Severity::stop && finding.code != "no_open_face" &&
            finding.code != "salt_beyond_saturation") {
            fail(ExitCode::wrong_use, words_for(finding));
            refused = true;
        }
    }
    return refused;
}

ExitCode run(const CureTimeOptions& options) {
    auto request = request_of(options);
    if (!request) {
        return ExitCode::wrong_use;
    }
    CureAnswer answer{*request, {}, {}, !options.salt.empty()};
    request->method = CureMethod::weighed;
    answer.weighed = core::uptake::estimate_cure(*request);
    if (refuse(answer.weighed.findings)) {
        return ExitCode::wrong_use;
    }
    request->method = CureMethod::excess_salt;
    answer.excess_salt = core::uptake::estimate_cure(*request);
    fmt::print("{}\n", options.json ? cure_time_json(answer) : cure_time_words(answer));
    const bool stopped =
        !answer.weighed.even && request->temperature >= core::uptake::freezing_meat;
    return stopped ? ExitCode::found_something : ExitCode::done;
}

} // namespace

void register_cure_time(CLI::App& root, ExitCode& exit_code) {
    auto options = std::make_shared<CureTimeOptions>();
    auto* verb =
        root.add_subcommand("cure-time", "Days in cure by diffusion, beside the trade's day rules");
    verb->add_option("--thickness", options->thickness,
                     "At the thickest point, like 50mm or 2in; the diameter of round pieces")
        ->required();
    verb->add_option("--form", options->form, "slab, cylinder, round or block")->required();
    verb->add_option("--skin", options->skin, "none, one-side or all-round");
    verb->add_option("--temp", options->temperature, "While curing (default 4C)");
    verb->add_option("--salt", options->salt,
                     "Share of the meat: put on (weighed), or wanted (buried in salt); default "
                     "2.75%");
    verb->add_option("--weight", options->weight, "Of the piece, for the rules by weight");
    verb->add_option("--fat", options->fat, "Fat tissue, share of the piece");
    verb->add_option("--width", options->width, "Second side of a block or slab");
    verb->add_option("--length", options->length, "Third side");
    verb->add_flag("--thawed", options->thawed, "The meat was frozen before");
    verb->add_flag("--json", options->json, "One JSON object");
    verb->callback([options, &exit_code] { exit_code = run(*options); });
}

} // namespace app::cli
