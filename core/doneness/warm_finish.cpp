#include "core/doneness/warm_finish.h"

#include <cmath>
#include <numbers>

namespace core::doneness {

namespace {

using model::Severity;
using units::Duration;
using units::MassShare;
using units::Temperature;

constexpr double p90 = 1.2815515655446004;
constexpr double wide = 2 * 1.959964; // standard deviations in a 95 % range
constexpr double water_that_stays = 0.08;

/// ln of the rate constant (1/s) at the warm temperature, median and standard deviation.
struct LogRate {
    double median;
    double sd;
};

double first_term(const WarmFinishRequest& request, double diffusivity) {
    const double reach =
        request.thickness.in_metres() / 2 * (request.skin == model::SkinSide::one_side ? 2 : 1);
    const double scale = diffusivity / (reach * reach);
    switch (request.form) {
    case model::Form::slab:
    case model::Form::block:
        return std::numbers::pi * std::numbers::pi / 4 * scale;
    case model::Form::cylinder:
        return 5.783186 * scale; // square of the first zero of J0
    case model::Form::round:
        break;
    }
    return std::numbers::pi * std::numbers::pi * scale;
}

LogRate warm_rate(const WarmFinishRequest& request) {
    constexpr double gas_constant = 8.314462618;
    const bool own = request.rate_per_day && request.levels_off_in_chamber &&
                     *request.levels_off_in_chamber > request.loss_now &&
                     *request.rate_per_day > MassShare::fraction(0);
    const auto base_temperature = own ? request.chamber : Temperature::celsius(13);
    const double warmth =
        (1 / base_temperature.in_kelvins() - 1 / request.air.in_kelvins()) / gas_constant;
    const double sd_activation = 35000 * std::log(60.0 / 15) / wide * warmth;
    if (own) {
        const double per_second =
            (*request.rate_per_day / (*request.levels_off_in_chamber - request.loss_now)) / 86400;
        constexpr double sd_own = 0.3; // scale step and the guess of the chamber's end
        return {std::log(per_second) + 35000 * warmth, std::hypot(sd_own, sd_activation)};
    }
    const double sd_prior = std::log(3.6e-10 / 7e-12) / wide;
    return {std::log(first_term(request, 5e-11)) + 35000 * warmth,
            std::hypot(sd_prior, sd_activation)};
}

bool check_input(const WarmFinishRequest& r, model::Findings& findings) {
    const auto require = [&findings](bool fine, const char* place) {
        if (!fine) {
            findings.push_back({"warm_value_out_of_range", Severity::stop, place, {}, {}, {}});
        }
    };
    const auto share = [](MassShare s, double low, double high) {
        return s.as_fraction() >= low && s.as_fraction() <= high;
    };
    require(r.thickness.in_millimetres() >= 1 && r.thickness.in_millimetres() <= 500, "thickness");
    require(share(r.loss_now, 0, 0.9), "loss_now");
    require(share(r.loss_wanted, 0, 0.9), "loss_wanted");
    require(share(r.water_now, 0.01, 0.85), "water_now");
    require(r.air.in_celsius() >= 10 && r.air.in_celsius() <= 100, "air");
    require(r.humidity.in_percent() >= 0 && r.humidity.in_percent() <= 100, "humidity");
    require(r.skin != model::SkinSide::all_round, "skin");
    return findings.empty();
}

void caution(const WarmFinishRequest& r, const WarmFinish& finish, model::Findings& findings) {
    const auto hours = finish.time->best;
    if (r.air > Temperature::fahrenheit(40) && r.air < Temperature::fahrenheit(140)) {
        findings.push_back({"warm_in_growth_range",
                            Severity::caution,
                            "air",
                            {{"temperature", r.air},
                             {"low", Temperature::fahrenheit(40)},
                             {"high", Temperature::fahrenheit(140)},
                             {"time", hours}},
                            {},
                            base::Source{"NCHFP, Curing and Smoking Meats for Home Food "
                                         "Preservation",
                                         "", base::Sureness::verified}});
    }
    if (r.air > Temperature::fahrenheit(50) && r.air < Temperature::fahrenheit(135) &&
        hours > Duration::hours(2)) {
        findings.push_back({"warm_longer_than_guide",
                            Severity::caution,
                            "air",
                            {{"guide", Duration::hours(2)}, {"time", hours}},
                            {},
                            base::Source{"FDA, Fish and Fishery Products Hazards and Controls "
                                         "Guidance, Appendix 4 (values for fish)",
                                         "", base::Sureness::verified}});
    }
    const auto wet = units::WaterActivity::fraction(0.92);
    if (!r.activity || r.activity->high > wet) {
        model::Finding finding{"warm_while_wet",
                               Severity::caution,
                               "activity",
                               {{"limit", wet.as_fraction()}},
                               {},
                               base::Source{"FDA, Bad Bug Book, factors table", "1992/1999",
                                            base::Sureness::verified}};
        if (r.activity) {
            finding.values["high"] = r.activity->high.as_fraction();
        }
        findings.push_back(std::move(finding));
    }
    findings.push_back({"heat_leaves_toxin",
                        Severity::note,
                        "air",
                        {},
                        {},
                        base::Source{"from memory", "", base::Sureness::memory}});
}

void remark(const WarmFinishRequest& r, model::Findings& findings) {
    if (r.humidity < units::RelativeHumidity::percent(50) &&
        r.thickness >= units::Length::millimetres(30)) {
        findings.push_back({"warm_rim",
                            Severity::caution,
                            "humidity",
                            {{"humidity", r.humidity}},
                            {},
                            base::common_practice()});
    }
    if (r.air >= Temperature::celsius(55)) {
        findings.push_back({"warm_cooks",
                            Severity::note,
                            "air",
                            {{"temperature", r.air}},
                            {},
                            base::common_practice()});
    }
}

} // namespace

WarmFinish warm_finish(const WarmFinishRequest& request, const facts::Hurdles& hurdles) {
    WarmFinish finish;
    if (!check_input(request, finish.findings)) {
        return finish;
    }
    const auto weight_now = MassShare::fraction(1) - request.loss_now;
    finish.levels_off =
        request.loss_now + weight_now * (request.water_now.as_fraction() * (1 - water_that_stays));
    if (request.loss_wanted <= request.loss_now) {
        finish.findings.push_back(
            {"already_there", Severity::note, "loss_wanted", {{"loss", request.loss_now}}, {}, {}});
        finish.time = base::Interval<Duration>::exactly(Duration::seconds(0));
        return finish;
    }
    if (request.loss_wanted >= finish.levels_off) {
        finish.findings.push_back(
            {"target_not_reachable_warm",
             Severity::caution,
             "loss_wanted",
             {{"target", request.loss_wanted}, {"levels_off", finish.levels_off}},
             {},
             {}});
        return finish;
    }
    const LogRate rate = warm_rate(request);
    const double e_folds = std::log((finish.levels_off - request.loss_now) /
                                    (finish.levels_off - request.loss_wanted));
    const auto time_at = [&](double quantile) {
        return Duration::seconds(e_folds / std::exp(rate.median + quantile * rate.sd));
    };
    finish.time = {time_at(p90), time_at(0), time_at(-p90)};
    finish.exposure = exposure_of({{finish.time->best, request.air, request.activity}}, hurdles);
    caution(request, finish, finish.findings);
    remark(request, finish.findings);
    return finish;
}

} // namespace core::doneness
