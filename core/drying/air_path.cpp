#include "core/drying/air_path.h"

#include "core/air/saturation.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace core::drying {

namespace {

constexpr double vapour_gas_constant = 461.5; // J/(kg K)
constexpr double gas_constant = 8.314;        // J/(mol K)
/// Middle of eight studies on drying meat, 15 to 59 kJ/mol (reference notes, section 9).
constexpr double activation_j_mol = 32000;

struct DayAir {
    double temperature_c = 0;
    double humidity_percent = 0;
};

AirStep step_of(double days, const DayAir& air) {
    const auto t = units::Temperature::celsius(air.temperature_c);
    const double kelvin = t.in_kelvins();
    return {days, air::saturation_pressure(t).in_pascals() / (vapour_gas_constant * kelvin),
            air.humidity_percent / 100,
            std::exp(-activation_j_mol / gas_constant * (1 / kelvin - 1 / 286.15))};
}

/// Daily means from the first day on; days without a reading hold the day before.
std::vector<DayAir> daily_means(std::span<const AirReading> log, units::Instant start) {
    struct Sum {
        double t = 0, h = 0;
        int n = 0;
    };
    std::vector<Sum> sums;
    for (const AirReading& r : log) {
        const double day = (r.at - start).in_days();
        const double h = r.humidity.as_fraction();
        if (!r.temperature.is_finite() || !std::isfinite(h) || day < -0.5 || day > 4000) {
            continue;
        }
        const auto i = static_cast<std::size_t>(std::max(0.0, day));
        if (sums.size() <= i) {
            sums.resize(i + 1);
        }
        sums[i].t += r.temperature.in_celsius();
        sums[i].h += std::clamp(h, 0.0, 1.0) * 100;
        ++sums[i].n;
    }
    std::vector<DayAir> days;
    const auto first = std::find_if(sums.begin(), sums.end(), [](const Sum& s) { return s.n > 0; });
    if (first == sums.end()) {
        return days;
    }
    DayAir held{first->t / first->n, first->h / first->n};
    for (const Sum& s : sums) {
        if (s.n > 0) {
            held = {s.t / s.n, s.h / s.n};
        }
        days.push_back(held);
    }
    return days;
}

double mean_humidity(const std::vector<DayAir>& d, std::size_t from, std::size_t to) {
    double sum = 0;
    for (std::size_t i = from; i < to; ++i) {
        sum += d[i].humidity_percent;
    }
    return sum / static_cast<double>(to - from);
}

/// The first day of the log's last steady stretch: after the clearest step of the humidity or
/// temperature mean, if one stands out against the day-to-day changes, else the last month.
std::size_t steady_from(const std::vector<DayAir>& d) {
    const std::size_t n = d.size();
    if (n < 6) {
        return 0;
    }
    double swing = 0;
    for (std::size_t i = 1; i < n; ++i) {
        swing += std::pow(d[i].humidity_percent - d[i - 1].humidity_percent, 2);
    }
    swing = swing / static_cast<double>(n - 1) + 0.5;
    std::size_t cut = 0;
    double best = 0;
    for (std::size_t i = 3; i + 3 <= n; ++i) {
        const double gap = mean_humidity(d, 0, i) - mean_humidity(d, i, n);
        const double gain = gap * gap * static_cast<double>(i) * static_cast<double>(n - i) /
                            static_cast<double>(n);
        if (gain > best) {
            best = gain;
            cut = i;
        }
    }
    // 30 times the variance of daily changes: a level step, not a run of similar days.
    if (best > 30 * swing) {
        return cut;
    }
    constexpr std::size_t month = 30;
    return n > month ? n - month : 0;
}

/// What to expect beyond the log's end.
struct Outlook {
    DayAir mean;
    DayAir last_departure; ///< of the last day from the mean
    double memory = 0;     ///< share of a departure that is left a day later
    double sd_percent = 0; ///< of the mean humidity ahead
};

Outlook outlook_of(const std::vector<DayAir>& d, double elapsed_days) {
    Outlook o;
    const std::size_t from = steady_from(d);
    const std::size_t n = d.size();
    const double m = static_cast<double>(n - from);
    o.mean.humidity_percent = mean_humidity(d, from, n);
    for (std::size_t i = from; i < n; ++i) {
        o.mean.temperature_c += d[i].temperature_c / m;
    }
    double v0 = 0;
    double v1 = 0;
    for (std::size_t i = from; i < n; ++i) {
        const double a = d[i].humidity_percent - o.mean.humidity_percent;
        v0 += a * a;
        v1 += i > from ? a * (d[i - 1].humidity_percent - o.mean.humidity_percent) : 0;
    }
    // Short logs lean on a usual chamber: a 3 % swing that keeps 0.6 of itself from day to day.
    o.memory = std::clamp((v1 + 0.6 * 30) / (v0 + 30), 0.0, 0.95);
    const double variance = (v0 + 6 * 9) / (m + 6);
    const double stretch = (1 + o.memory) / (1 - o.memory);
    const double horizon = std::max(10.0, 0.7 * elapsed_days);
    constexpr double change_sd_percent = 1.6; // chambers drift, doors are left open
    o.sd_percent = std::sqrt(change_sd_percent * change_sd_percent +
                             variance * std::min(1.0, stretch / horizon) +
                             variance * std::min(1.0, stretch / m));
    o.last_departure = {d[n - 1].temperature_c - o.mean.temperature_c,
                        d[n - 1].humidity_percent - o.mean.humidity_percent};
    return o;
}

/// The mean air of [from, to), days; fine enough as each day is one value.
DayAir mean_air(const std::vector<DayAir>& d, const Outlook& o, double from, double to) {
    DayAir sum;
    double at = from;
    while (at < to - 1e-9) {
        const auto i = static_cast<std::size_t>(at + 1e-9);
        const double next = std::min(to, static_cast<double>(i) + 1);
        DayAir air = o.mean;
        if (i < d.size()) {
            air = d[i];
        } else {
            const double left = std::pow(o.memory, at - static_cast<double>(d.size()) + 1);
            air.temperature_c += left * o.last_departure.temperature_c;
            air.humidity_percent += left * o.last_departure.humidity_percent;
        }
        const double share = (next - at) / (to - from);
        sum.temperature_c += share * air.temperature_c;
        sum.humidity_percent += share * air.humidity_percent;
        at = next;
    }
    return sum;
}

} // namespace

AirPath make_air_path(std::span<const AirReading> log, units::Instant start, units::Instant now,
                      double end_day, const AirAhead* ahead, const UsualAir& usual) {
    AirPath path;
    path.now_day = std::max(0.0, (now - start).in_days());
    const std::vector<DayAir> days = daily_means(log, start);
    path.known = !days.empty();
    Outlook outlook;
    outlook.mean = {usual.temperature_c, usual.humidity_percent};
    outlook.sd_percent = usual.ahead_sd_percent;
    if (path.known) {
        outlook = outlook_of(days, path.now_day);
        path.log_end_day = static_cast<double>(days.size());
    }
    const double longest = std::max(std::clamp(path.now_day / 40, 0.25, 1.0), path.now_day / 60);
    double t = 0;
    double step = 0.2;
    while (t < end_day) {
        // Short first steps follow the drying surface; later ones the day, then the distance.
        step = std::min(step * 1.2, t < path.now_day ? longest : std::max(longest, 0.035 * t));
        DayAir air = mean_air(days, outlook, t, t + step);
        if (ahead != nullptr && t + step > path.now_day) {
            air = {ahead->temperature_c, ahead->humidity_percent};
        }
        path.steps.push_back(step_of(step, air));
        t += step;
    }
    path.ahead_humidity =
        (ahead != nullptr ? ahead->humidity_percent : outlook.mean.humidity_percent) / 100;
    path.ahead_temperature_c = ahead != nullptr ? ahead->temperature_c : outlook.mean.temperature_c;
    path.ahead_humidity_sd = (ahead != nullptr ? 0.0 : outlook.sd_percent) / 100;
    return path;
}

} // namespace core::drying
