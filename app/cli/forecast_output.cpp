#include "app/cli/forecast_output.h"

#include "core/units/parse.h"

#include <cmath>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace app::cli {

namespace {

using core::model::Forecast;
using core::model::ForecastState;
using Json = nlohmann::ordered_json;

const char* state_code(ForecastState state) {
    switch (state) {
    case ForecastState::too_few_weighings:
        return "too_few_weighings";
    case ForecastState::drying:
        return "drying";
    case ForecastState::ready:
        return "ready";
    case ForecastState::not_reachable:
        return "not_reachable";
    case ForecastState::not_drying:
        return "not_drying";
    }
    return "";
}

const char* severity_code(core::model::Severity severity) {
    switch (severity) {
    case core::model::Severity::note:
        return "note";
    case core::model::Severity::caution:
        return "caution";
    case core::model::Severity::stop:
        return "stop";
    }
    return "";
}

Json instant(const std::optional<core::units::Instant>& at) {
    return at ? Json(core::units::to_iso(*at)) : Json(nullptr);
}

/// Percent with two decimals: finer than any scale resolves.
double percent(core::units::MassShare share) {
    return std::round(share.in_percent() * 100) / 100;
}

std::string day(const std::optional<core::units::Instant>& at) {
    return at ? core::units::to_iso(*at).substr(0, 10) : std::string("perhaps never");
}

} // namespace

std::string forecast_json(const std::string& piece, const Forecast& f) {
    Json out;
    out["piece"] = piece;
    out["state"] = state_code(f.state);
    out["loss_percent"] = f.loss ? Json(percent(*f.loss)) : Json(nullptr);
    out["as_of"] = instant(f.as_of);
    out["ready"] = nullptr;
    if (f.ready) {
        out["ready"] = {{"p10", instant(f.ready->p10)},
                        {"p50", instant(f.ready->p50)},
                        {"p90", instant(f.ready->p90)}};
    }
    out["levels_off_percent"] = nullptr;
    if (f.levels_off) {
        out["levels_off_percent"] = {{"p10", percent(f.levels_off->low)},
                                     {"p50", percent(f.levels_off->best)},
                                     {"p90", percent(f.levels_off->high)}};
    }
    out["findings"] = Json::array();
    for (const auto& finding : f.findings) {
        out["findings"].push_back({{"code", finding.code},
                                   {"severity", severity_code(finding.severity)},
                                   {"at", instant(finding.at)}});
    }
    out["curve"] = Json::array();
    for (const auto& point : f.curve) {
        out["curve"].push_back({{"at", core::units::to_iso(point.at)},
                                {"p10", percent(point.p10)},
                                {"p50", percent(point.p50)},
                                {"p90", percent(point.p90)}});
    }
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string forecast_words(const std::string& piece, const Forecast& f) {
    std::string line = piece + ": ";
    const auto with_dates = [&](const char* lead) {
        if (f.ready) {
            line += fmt::format("{} {} ({} to {})", lead, day(f.ready->p50), day(f.ready->p10),
                                day(f.ready->p90));
        }
    };
    if (f.loss && f.as_of) {
        line += fmt::format("{:.1f} % lost on {}; ", f.loss->in_percent(), day(f.as_of));
    }
    switch (f.state) {
    case ForecastState::too_few_weighings:
        line += "too few weighings for a forecast; weigh it again in some days";
        break;
    case ForecastState::drying:
        with_dates("target expected");
        break;
    case ForecastState::ready:
        with_dates("target weight reached about");
        break;
    case ForecastState::not_reachable:
        line += "the target is not expected to be reached in this air";
        break;
    case ForecastState::not_drying:
        line += "not losing weight";
        break;
    }
    if (f.levels_off) {
        line += fmt::format("; levels off near {:.0f} % ({:.0f} to {:.0f})",
                            f.levels_off->best.in_percent(), f.levels_off->low.in_percent(),
                            f.levels_off->high.in_percent());
    }
    for (const auto& finding : f.findings) {
        line += "; " + finding.code + (finding.at ? " on " + day(finding.at) : "");
    }
    return line;
}

} // namespace app::cli
