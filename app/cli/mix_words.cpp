#include "app/cli/mix_report.h"
#include "core/units/parse.h"
#include "ui/text/finding_tables.h"

#include <algorithm>
#include <fmt/format.h>

namespace app::cli {
namespace {

using core::mix::ShareInterval;
using core::units::Mass;
using core::units::MassShare;

/// Percent, or ppm below a tenth of a percent.
std::string words(MassShare share) {
    if (share.in_percent() < 0.1 && share > MassShare::fraction(0)) {
        return fmt::format("{:.4g} ppm", share.in_ppm());
    }
    return fmt::format("{:.4g} %", share.in_percent());
}

struct ValueWords {
    std::string operator()(double value) const { return fmt::format("{:.4g}", value); }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Mass mass) const { return fmt::format("{:.6g} g", mass.in_grams()); }
    std::string operator()(MassShare share) const { return words(share); }
    std::string operator()(core::units::Volume volume) const {
        return fmt::format("{:.6g} mL", volume.in_millilitres());
    }
    std::string operator()(core::units::Temperature temperature) const {
        return fmt::format("{:.1f} C", temperature.in_celsius());
    }
    std::string operator()(core::units::RelativeHumidity humidity) const {
        return fmt::format("{:.0f} % RH", humidity.in_percent());
    }
    std::string operator()(core::units::Duration duration) const {
        return fmt::format("{:.1f} d", duration.in_days());
    }
    std::string operator()(core::units::Instant at) const { return core::units::to_iso(at); }
};

/// "2.72 % (2.66 to 2.72)", or the one value where nothing is spread.
std::string percent_words(const ShareInterval& share) {
    if (share.low == share.high) {
        return fmt::format("{:.3g} %", share.best.in_percent());
    }
    return fmt::format("{:.3g} % ({:.3g} to {:.3g})", share.best.in_percent(),
                       share.low.in_percent(), share.high.in_percent());
}

std::string ppm_words(const ShareInterval& salt, const ShareInterval& ion, const char* ion_name) {
    const std::string spread =
        salt.low == salt.high
            ? std::string()
            : fmt::format(" ({:.4g} to {:.4g})", salt.low.in_ppm(), salt.high.in_ppm());
    return fmt::format("{:.4g} ppm{}; as {} {:.4g} mg/kg", salt.best.in_ppm(), spread, ion_name,
                       ion.best.in_ppm());
}

/// A cell counted in characters, not bytes: names may hold letters outside ASCII.
std::string padded(const std::string& text, std::size_t width) {
    const auto letters =
        static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
            return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
        }));
    return text + std::string(width > letters ? width - letters : 1, ' ');
}

std::string dose_words(const core::mix::Dose& dose, const core::mix::Dose* half) {
    std::string out;
    const auto row = [&](const char* name, const std::string& full, const std::string& other) {
        out += "  " + padded(name, 20) + (half != nullptr ? padded(full, 34) + other : full) + "\n";
    };
    const auto percent = [&](const char* name, ShareInterval core::mix::Dose::*member) {
        if ((dose.*member).high > MassShare::fraction(0)) {
            row(name, percent_words(dose.*member),
                half != nullptr ? percent_words(half->*member) : std::string());
        }
    };
    if (half != nullptr) {
        row("", "liquids fully taken up", "half taken up");
    }
    percent("salt", &core::mix::Dose::salt);
    percent("water-phase salt", &core::mix::Dose::water_phase_salt);
    percent("sugar", &core::mix::Dose::sugar);
    percent("added water", &core::mix::Dose::added_water);
    percent("alcohol, whole", &core::mix::Dose::alcohol);
    if (dose.nitrite.high > MassShare::fraction(0)) {
        out += "  " + padded("nitrite as NaNO2", 20) +
               ppm_words(dose.nitrite, dose.nitrite_ion, "NO2") + "\n";
    }
    if (dose.nitrate.high > MassShare::fraction(0)) {
        out += "  " + padded("nitrate as NaNO3", 20) +
               ppm_words(dose.nitrate, dose.nitrate_ion, "NO3") + "\n";
    }
    if (dose.ascorbate.high + dose.ascorbic_acid.high > MassShare::fraction(0)) {
        out +=
            "  " + padded("accelerator", 20) +
            fmt::format("{:.4g} ppm\n", (dose.ascorbate.best + dose.ascorbic_acid.best).in_ppm());
    }
    if (dose.alcohol_of_liquid && dose.alcohol_of_liquid->best.in_percent() > 0) {
        out += "  " + padded("alcohol of liquids", 20) +
               fmt::format("{:.3g} % by volume ({:.3g} US proof, {:.3g} UK proof)\n",
                           dose.alcohol_of_liquid->best.in_percent(),
                           dose.alcohol_of_liquid->best.in_us_proof(),
                           dose.alcohol_of_liquid->best.in_uk_proof());
    }
    return out;
}

std::string line_words(const core::mix::SheetLine& line) {
    std::string out =
        "  " + padded(line.name, 44) + fmt::format("{:>10.6g} g", line.weigh_out.in_grams());
    if (line.amount.low != line.amount.high) {
        out += fmt::format("  ({:.4g} to {:.4g} g)", line.amount.low.in_grams(),
                           line.amount.high.in_grams());
    }
    if (line.volume) {
        out += fmt::format("  = {:.4g} mL", line.volume->in_millilitres());
    }
    if (line.step_error && *line.step_error > core::mix::wanted_dose_error) {
        out += fmt::format("  +-{:.0f} % by the scale", *line.step_error * 100);
    }
    if (!line.rubs.empty()) {
        out += "  rubs:";
        for (const auto& rub : line.rubs) {
            out += fmt::format(" {:.5g}", rub.in_grams());
        }
    }
    return out + "\n";
}

std::string advice_words(const core::mix::MixSheet& sheet) {
    std::string out;
    for (const auto& advice : sheet.scale) {
        if (advice.finer_step) {
            out += fmt::format("  {}: a {:.3g} g scale would do.\n", sheet.lines[advice.line].name,
                               advice.finer_step->in_grams());
        }
        if (advice.blend) {
            out += fmt::format("  Or blend {:.6g} g first (", advice.blend->batch.in_grams());
            for (const auto& part : advice.blend->parts) {
                out +=
                    fmt::format("{}{:.6g} g {}", &part == &advice.blend->parts.front() ? "" : ", ",
                                part.mass.in_grams(), sheet.lines[part.line].name);
            }
            out += fmt::format("), mix it evenly and weigh {:.6g} g of it: +-{:.1f} %.\n",
                               advice.blend->portion.in_grams(), advice.blend->error * 100);
        }
    }
    return out;
}

std::string findings_words(const core::model::Findings& findings) {
    std::string out;
    for (const auto severity : {core::model::Severity::stop, core::model::Severity::caution,
                                core::model::Severity::note}) {
        for (const auto& finding : findings) {
            if (finding.severity == severity) {
                out += severity == core::model::Severity::stop      ? "  STOP     "
                       : severity == core::model::Severity::caution ? "  Caution  "
                                                                    : "  Note     ";
                out += mix_finding_words(finding) + "\n";
            }
        }
    }
    return out;
}

} // namespace

std::string mix_finding_words(const core::model::Finding& finding) {
    const auto rows = ui::text::mix_sentences();
    const auto row = std::find_if(rows.begin(), rows.end(),
                                  [&](const auto& r) { return finding.code == r.code; });
    std::string text = row == rows.end() ? finding.code + " ({place})" : row->sentence;
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const auto open = text.find('{', at);
        const auto close = open == std::string::npos ? open : text.find('}', open);
        out += text.substr(at, open == std::string::npos ? open : open - at);
        if (close == std::string::npos) {
            break;
        }
        const std::string name = text.substr(open + 1, close - open - 1);
        const auto value = finding.values.find(name);
        out += name == "place"                 ? finding.place
               : value == finding.values.end() ? std::string("?")
                                               : std::visit(ValueWords{}, value->second);
        at = close + 1;
    }
    return out;
}

std::string mix_sheet_words(const core::mix::MixSheet& sheet,
                            const core::mix::RecipeDocument& recipe, const std::string& limits) {
    std::string out = fmt::format("{}: {:.6g} g of meat\n\nWeigh out\n",
                                  recipe.name.empty() ? "Mix" : recipe.name, sheet.meat.in_grams());
    for (const auto& line : sheet.lines) {
        out += line_words(line);
    }
    if (sheet.pieces.size() > 1) {
        for (const auto& piece : sheet.pieces) {
            out += fmt::format("\nPiece {}, {:.6g} g\n", piece.code, piece.meat.in_grams());
            for (const auto& line : piece.lines) {
                out += line_words(line);
            }
        }
    }
    out += "\nWhat that is, of the meat\n" +
           dose_words(sheet.dose, sheet.half_absorbed ? &*sheet.half_absorbed : nullptr);
    const std::string advice = advice_words(sheet);
    if (!advice.empty()) {
        out += "\nThe scale\n" + advice;
    }
    if (!limits.empty()) {
        out += "\nLimits: " + limits + "\n";
        for (const auto& check : sheet.limits) {
            const bool bounded = check.limit.maximum.has_value();
            out += fmt::format("  {}{}{}\n", check.limit.source.title,
                               bounded ? fmt::format(": at most {:.6g} ppm, here {:.6g} ppm",
                                                     check.limit.maximum->in_ppm(),
                                                     check.value.best.in_ppm())
                                       : std::string(),
                               check.verified ? "" : " (unverified)");
        }
    }
    const std::string findings = findings_words(sheet.findings);
    if (!findings.empty()) {
        out += "\nFindings\n" + findings;
    }
    return out + "\nThese sums are no verdict on the food. Local codes, licensed practice and "
                 "laboratory measurement come first.\n";
}

} // namespace app::cli
