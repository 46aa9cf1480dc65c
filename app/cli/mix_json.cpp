#include "app/cli/mix_report.h"

#include <charconv>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace app::cli {
namespace {

using core::mix::Dose;
using core::mix::LimitCheck;
using core::mix::MixSheet;
using core::mix::ShareInterval;
using core::units::MassShare;
using Json = nlohmann::ordered_json;

// Doubles are printed with their shortest exact digits; a dose of 156.25 ppm that came out as
// 156.24999999999997 is rounded to twelve digits first.
double tidy(double value) {
    const std::string digits = fmt::format("{:.12g}", value);
    double rounded = value;
    std::from_chars(digits.data(), digits.data() + digits.size(), rounded);
    return rounded;
}

Json percent_range(const ShareInterval& share) {
    return {{"low", tidy(share.low.in_percent())},
            {"best", tidy(share.best.in_percent())},
            {"high", tidy(share.high.in_percent())}};
}

Json ppm(const ShareInterval& share) {
    return {{"low", tidy(share.low.in_ppm())},
            {"best", tidy(share.best.in_ppm())},
            {"high", tidy(share.high.in_ppm())}};
}

Json dose_json(const Dose& dose) {
    Json json;
    json["salt_percent"] = percent_range(dose.salt);
    json["water_phase_salt_percent"] = percent_range(dose.water_phase_salt);
    json["sugar_percent"] = percent_range(dose.sugar);
    json["nitrite_ppm"] = ppm(dose.nitrite);
    json["nitrite_ion_mg_per_kg"] = ppm(dose.nitrite_ion);
    json["nitrate_ppm"] = ppm(dose.nitrate);
    json["nitrate_ion_mg_per_kg"] = ppm(dose.nitrate_ion);
    json["ascorbate_ppm"] = ppm(dose.ascorbate);
    json["ascorbic_acid_ppm"] = ppm(dose.ascorbic_acid);
    json["added_water_percent"] = percent_range(dose.added_water);
    json["alcohol_percent"] = percent_range(dose.alcohol);
    if (dose.alcohol_of_liquid) {
        json["alcohol_of_liquid_abv_percent"] = {
            {"low", tidy(dose.alcohol_of_liquid->low.in_percent())},
            {"best", tidy(dose.alcohol_of_liquid->best.in_percent())},
            {"high", tidy(dose.alcohol_of_liquid->high.in_percent())}};
    } else {
        json["alcohol_of_liquid_abv_percent"] = nullptr;
    }
    Json unknown = Json::array();
    for (const auto component : dose.unknown) {
        unknown.push_back(core::facts::name_of(component));
    }
    json["unknown"] = unknown;
    return json;
}

Json line_json(const core::mix::SheetLine& line) {
    Json json;
    json["ingredient"] = line.ingredient;
    json["name"] = line.name;
    json["grams"] = tidy(line.amount.best.in_grams());
    json["grams_low"] = tidy(line.amount.low.in_grams());
    json["grams_high"] = tidy(line.amount.high.in_grams());
    json["weigh_out_g"] = tidy(line.weigh_out.in_grams());
    json["volume_ml"] = line.volume ? Json(tidy(line.volume->in_millilitres())) : Json();
    json["step_error_percent"] = line.step_error ? Json(tidy(*line.step_error * 100)) : Json();
    Json rubs = Json::array();
    for (const auto& rub : line.rubs) {
        rubs.push_back(tidy(rub.in_grams()));
    }
    json["rubs_g"] = rubs;
    return json;
}

template <class Items, class Make>
Json list(const Items& items, Make make) {
    Json json = Json::array();
    for (const auto& item : items) {
        json.push_back(make(item));
    }
    return json;
}

const char* word_of(core::facts::Substance substance) {
    switch (substance) {
    case core::facts::Substance::nitrite:
        return "nitrite";
    case core::facts::Substance::nitrate:
        return "nitrate";
    case core::facts::Substance::nitrite_and_nitrate:
        return "nitrite_and_nitrate";
    case core::facts::Substance::ascorbate:
        return "ascorbate";
    case core::facts::Substance::ascorbic_acid:
        return "ascorbic_acid";
    case core::facts::Substance::phosphate:
        return "phosphate";
    }
    return "";
}

const char* word_of(core::facts::LimitBasis basis) {
    switch (basis) {
    case core::facts::LimitBasis::ingoing:
        return "ingoing";
    case core::facts::LimitBasis::finished:
        return "finished";
    case core::facts::LimitBasis::residual:
        return "residual";
    }
    return "";
}

const char* word_of(core::facts::ExpressedAs expressed) {
    switch (expressed) {
    case core::facts::ExpressedAs::salt_as_weighed:
        return "salt_as_weighed";
    case core::facts::ExpressedAs::sodium_salt:
        return "sodium_salt";
    case core::facts::ExpressedAs::ion:
        return "ion";
    }
    return "";
}

const char* word_of(LimitCheck::Outcome outcome) {
    switch (outcome) {
    case LimitCheck::Outcome::within:
        return "within";
    case LimitCheck::Outcome::above:
        return "above";
    case LimitCheck::Outcome::below:
        return "below";
    case LimitCheck::Outcome::not_permitted_used:
        return "not_permitted_used";
    case LimitCheck::Outcome::not_computable:
        return "not_computable";
    }
    return "";
}

Json limit_json(const LimitCheck& check) {
    const auto share = [](const std::optional<MassShare>& value) {
        return value ? Json(tidy(value->in_ppm())) : Json();
    };
    Json json;
    json["substance"] = word_of(check.limit.substance);
    json["expressed_as"] = word_of(check.limit.expressed_as);
    json["basis"] = word_of(check.limit.basis);
    json["maximum_ppm"] = share(check.limit.maximum);
    json["minimum_ppm"] = share(check.limit.minimum);
    json["not_permitted"] = check.limit.not_permitted;
    json["value_ppm"] = ppm(check.value);
    json["outcome"] = word_of(check.outcome);
    json["verified"] = check.verified;
    json["source"] = check.limit.source.title;
    json["edition"] = check.limit.source.edition;
    return json;
}

Json advice_json(const core::mix::ScaleAdvice& advice, const MixSheet& sheet) {
    Json json;
    json["ingredient"] = sheet.lines[advice.line].ingredient;
    json["grams"] = tidy(advice.amount.in_grams());
    json["error_percent"] = tidy(advice.error * 100);
    json["finer_step_g"] = advice.finer_step ? Json(tidy(advice.finer_step->in_grams())) : Json();
    if (advice.blend) {
        json["blend"] = {{"batch_g", tidy(advice.blend->batch.in_grams())},
                         {"portion_g", tidy(advice.blend->portion.in_grams())},
                         {"error_percent", tidy(advice.blend->error * 100)},
                         {"parts", list(advice.blend->parts, [&](const auto& part) {
                              return Json{{"ingredient", sheet.lines[part.line].ingredient},
                                          {"grams", tidy(part.mass.in_grams())}};
                          })}};
    } else {
        json["blend"] = nullptr;
    }
    return json;
}

Json finding_json(const core::model::Finding& finding) {
    Json json;
    json["code"] = finding.code;
    json["severity"] = finding.severity == core::model::Severity::stop      ? "stop"
                       : finding.severity == core::model::Severity::caution ? "caution"
                                                                            : "note";
    json["place"] = finding.place;
    json["sentence"] = mix_finding_words(finding);
    json["source"] = finding.source ? Json(finding.source->title) : Json();
    return json;
}

} // namespace

std::string mix_sheet_json(const MixSheet& sheet, const core::mix::RecipeDocument& recipe,
                           const std::string& limits) {
    Json json;
    json["recipe"] = recipe.name;
    json["method"] = core::mix::name_of(recipe.method);
    json["meat_g"] = tidy(sheet.meat.in_grams());
    json["lines"] = list(sheet.lines, line_json);
    json["dose"] = dose_json(sheet.dose);
    json["dose_half_absorbed"] = sheet.half_absorbed ? dose_json(*sheet.half_absorbed) : Json();
    json["limit_set"] = limits.empty() ? Json() : Json(limits);
    json["limits"] = list(sheet.limits, limit_json);
    json["scale"] =
        list(sheet.scale, [&](const auto& advice) { return advice_json(advice, sheet); });
    json["pieces"] = list(sheet.pieces, [](const core::mix::PieceSheet& piece) {
        Json one;
        one["piece"] = piece.code;
        one["meat_g"] = tidy(piece.meat.in_grams());
        one["lines"] = list(piece.lines, line_json);
        one["as_weighed"] = dose_json(piece.as_weighed);
        return one;
    });
    json["findings"] = list(sheet.findings, finding_json);
    return json.dump();
}

} // namespace app::cli
