#include "core/mix/recipe_document.h"
#include "core/units/parse.h"

#include <fmt/format.h>
#include <string>

namespace core::mix {
namespace {

using base::ErrorCode;

std::string_view trimmed(std::string_view text) {
    const auto start = text.find_first_not_of(" \t\r\n");
    if (start == std::string_view::npos) {
        return {};
    }
    return text.substr(start, text.find_last_not_of(" \t\r\n") - start + 1);
}

/// "2 us_tablespoon": a count and the id of a measure.
base::Result<Portion> parse_spoons(std::string_view text, const base::Error& otherwise,
                                   units::ParseStyle style) {
    const auto split = text.find_last_of(" \t");
    if (split == std::string_view::npos) {
        return tl::unexpected(otherwise);
    }
    const auto word = text.substr(split + 1);
    // Measure ids are words with an underscore (us_tablespoon), as no unit is. A spoon without a
    // nationality holds 14 to 20 mL: asked, not guessed.
    if (word == "tbsp" || word == "tablespoon" || word == "tablespoons" || word == "tsp" ||
        word == "teaspoon" || word == "teaspoons" || word == "cup" || word == "cups") {
        return base::fault(ErrorCode::wrong_kind, std::string(word));
    }
    if (word.find('_') == std::string_view::npos) {
        return tl::unexpected(otherwise);
    }
    const auto count = units::parse_number(text.substr(0, split), style);
    if (!count) {
        return tl::unexpected(count.error());
    }
    if (*count < 0) {
        return base::fault(ErrorCode::out_of_range, std::string(text));
    }
    return Spoons{*count, std::string(word)};
}

base::Result<Portion> parse_portion(std::string_view text, units::ParseStyle style) {
    const auto mass = units::parse_mass(text, std::nullopt, style);
    if (mass) {
        return Portion(*mass);
    }
    const auto volume = units::parse_volume(text, std::nullopt, style);
    if (volume) {
        return Portion(*volume);
    }
    // Of the two faults the one that understood more of the text is worth showing.
    const bool is_volume =
        mass.error().code == ErrorCode::wrong_kind && volume.error().code != ErrorCode::wrong_kind;
    return parse_spoons(text, is_volume ? volume.error() : mass.error(), style);
}

std::string text_of(const Portion& portion) {
    if (const auto* mass = std::get_if<units::Mass>(&portion)) {
        return fmt::format("{:.15g} g", mass->in_grams());
    }
    if (const auto* volume = std::get_if<units::Volume>(&portion)) {
        return fmt::format("{:.15g} mL", volume->in_millilitres());
    }
    const auto& spoons = std::get<Spoons>(portion);
    return fmt::format("{:.15g} {}", spoons.count, spoons.measure);
}

} // namespace

base::Result<Amount> parse_amount(std::string_view text, Basis basis, units::ParseStyle style) {
    text = trimmed(text);
    const auto per = text.find(" per ");
    if (per != std::string_view::npos && text.substr(per) != " per kg") {
        const auto portion = parse_portion(trimmed(text.substr(0, per)), style);
        if (!portion) {
            return tl::unexpected(portion.error());
        }
        const auto meat = units::parse_mass(text.substr(per + 5), std::nullopt, style);
        if (!meat) {
            return tl::unexpected(meat.error());
        }
        if (*meat <= units::Mass::grams(0)) {
            return base::fault(ErrorCode::out_of_range, std::string(text));
        }
        return PerMeatAmount{*portion, *meat};
    }
    const auto share = units::parse_mass_share(text, false, style);
    if (share) {
        return ShareAmount{*share, basis};
    }
    if (share.error().code != ErrorCode::wrong_kind &&
        share.error().code != ErrorCode::unknown_unit) {
        return tl::unexpected(share.error());
    }
    const auto portion = parse_portion(text, style);
    if (!portion) {
        return tl::unexpected(portion.error());
    }
    return FixedAmount{*portion};
}

std::string to_text(const Amount& amount) {
    if (const auto* share = std::get_if<ShareAmount>(&amount)) {
        return fmt::format("{:.15g} %", share->share.in_percent());
    }
    if (const auto* per = std::get_if<PerMeatAmount>(&amount)) {
        return fmt::format("{} per {:.15g} g", text_of(per->portion), per->meat.in_grams());
    }
    return text_of(std::get<FixedAmount>(amount).portion);
}

} // namespace core::mix
