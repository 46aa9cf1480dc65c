#include "core/chamber/sensor_trust.h"

#include "core/chamber/climate_series.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace core::chamber {
namespace {

using model::ClimateBucket;
using model::Finding;
using model::Severity;
using units::Duration;
using units::RelativeHumidity;

constexpr std::int64_t hour_seconds = 3600;

Finding finding(std::string code, std::string place, std::optional<units::Instant> at) {
    Finding f;
    f.code = std::move(code);
    f.severity = Severity::caution;
    f.place = std::move(place);
    f.at = at;
    f.source = base::common_practice();
    return f;
}

double median(std::vector<double> values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

/// Runs of hours whose least and greatest value are the same one number.
template <class Q, class Member>
void find_flat(std::span<const ClimateBucket> hours, Member member, const std::string& quantity,
               const TrustRules& rules, model::Findings& found) {
    std::size_t i = 0;
    while (i < hours.size()) {
        const auto& first = hours[i].*member;
        std::size_t end = i + 1;
        if (first && first->low == first->high) {
            std::int64_t readings = first->count;
            const Q value = first->low;
            while (end < hours.size() && hours[end].*member && (hours[end].*member)->low == value &&
                   (hours[end].*member)->high == value) {
                readings += (hours[end].*member)->count;
                ++end;
            }
            const Duration lasted = hours[end - 1].start - hours[i].start + Duration::hours(1);
            if (lasted >= rules.flat_after && readings >= rules.flat_readings) {
                auto f = finding("sensor_flat", quantity, hours[i].start);
                f.values = {{"quantity", quantity}, {"value", value}, {"lasted", lasted}};
                found.push_back(std::move(f));
            }
        }
        i = end;
    }
}

/// Hours on either side of a suspected step.
constexpr std::size_t window = 12;
/// A step's windows must each be calmer than this share of it.
constexpr double calm_share = 0.5;

struct Side {
    double humidity = 0;
    double humidity_range = 0; ///< between the 2nd lowest and 2nd highest hour
    std::optional<double> kelvins;
};

std::optional<Side> side_of(std::span<const ClimateBucket> hours) {
    std::vector<double> humidity;
    std::vector<double> kelvins;
    for (const auto& hour : hours) {
        if (hour.humidity) {
            humidity.push_back(hour.humidity->mean.as_fraction());
        }
        if (hour.temperature) {
            kelvins.push_back(hour.temperature->mean.in_kelvins());
        }
    }
    if (humidity.size() < window / 2) {
        return std::nullopt;
    }
    Side side{median(humidity), 0, {}};
    std::sort(humidity.begin(), humidity.end());
    side.humidity_range = humidity[humidity.size() - 2] - humidity[1];
    if (!kelvins.empty()) {
        side.kelvins = median(kelvins);
    }
    return side;
}

/// The jump between the windows before and after hour `i`; nothing when it is no step.
std::optional<double> step_at(std::span<const ClimateBucket> hours, std::size_t i,
                              const TrustRules& rules) {
    const auto before = side_of(hours.subspan(i - window, window));
    const auto after = side_of(hours.subspan(i, window));
    if (!before || !after) {
        return std::nullopt;
    }
    const double jump = after->humidity - before->humidity;
    const double size = std::fabs(jump);
    const bool calm =
        before->humidity_range < size * calm_share && after->humidity_range < size * calm_share;
    // 10 C of warming changes humidity by tens of points: a step with one is the room's.
    const bool warmed =
        before->kelvins && after->kelvins && std::fabs(*after->kelvins - *before->kelvins) > 1.0;
    return size >= rules.step.as_fraction() && calm && !warmed ? std::optional(jump) : std::nullopt;
}

std::optional<double> mean_humidity(std::span<const ClimateBucket> hours, units::Instant from,
                                    units::Instant to) {
    double sum = 0;
    std::int64_t count = 0;
    for (const auto& hour : hours) {
        if (hour.start >= from && hour.start < to && hour.humidity) {
            sum += hour.humidity->mean.as_fraction();
            ++count;
        }
    }
    return count == 0 ? std::nullopt : std::optional(sum / static_cast<double>(count));
}

units::Day utc_day(units::Instant at) {
    const std::int64_t s = at.unix_seconds();
    return units::Day::from_days_since_epoch(
        static_cast<std::int32_t>(s / 86400 - (s % 86400 < 0 ? 1 : 0)));
}

} // namespace

model::Findings flat_lines(std::span<const ClimateBucket> hours, const TrustRules& rules) {
    model::Findings found;
    find_flat<RelativeHumidity>(hours, &ClimateBucket::humidity, "humidity", rules, found);
    find_flat<units::Temperature>(hours, &ClimateBucket::temperature, "temperature", rules, found);
    return found;
}

model::Findings steps(std::span<const ClimateBucket> hours, const TrustRules& rules) {
    model::Findings found;
    if (hours.size() < 2 * window) {
        return found;
    }
    std::size_t i = window;
    while (i + window <= hours.size()) {
        auto best = step_at(hours, i, rules);
        if (!best) {
            ++i;
            continue;
        }
        // Neighbouring hours see the same jump smaller: the largest of them is where it is.
        std::size_t where = i;
        for (std::size_t k = i + 1; k < i + window && k + window <= hours.size(); ++k) {
            const auto next = step_at(hours, k, rules);
            const auto raw = [&](std::size_t at) {
                return std::fabs(
                    (hours[at].humidity ? hours[at].humidity->mean.as_fraction() : 0) -
                    (hours[at - 1].humidity ? hours[at - 1].humidity->mean.as_fraction() : 0));
            };
            if (next && raw(k) > raw(where)) {
                best = next;
                where = k;
            }
        }
        auto f = finding("sensor_step", "humidity", hours[where].start);
        f.severity = Severity::note;
        const bool paused =
            hours[where].start.unix_seconds() - hours[where - 1].start.unix_seconds() >
            hour_seconds;
        f.values = {{"by", RelativeHumidity::fraction(*best)}, {"after_gap", paused ? 1.0 : 0.0}};
        found.push_back(std::move(f));
        i = where + window;
    }
    return found;
}

model::Findings disagreement(std::span<const ClimateBucket> first, const model::Sensor& a,
                             std::span<const ClimateBucket> second, const model::Sensor& b,
                             const TrustRules& rules) {
    const auto shift_a = offsets_of(a);
    const auto shift_b = offsets_of(b);
    std::vector<double> humidity;
    std::vector<double> kelvins;
    std::size_t k = 0;
    for (const auto& one : first) {
        while (k < second.size() && second[k].start < one.start) {
            ++k;
        }
        if (k == second.size() || second[k].start != one.start) {
            continue;
        }
        if (one.humidity && second[k].humidity) {
            const auto zero = RelativeHumidity::fraction(0);
            humidity.push_back(((second[k].humidity->mean + shift_b.humidity.value_or(zero)) -
                                (one.humidity->mean + shift_a.humidity.value_or(zero)))
                                   .as_fraction());
        }
        if (one.temperature && second[k].temperature) {
            const auto zero = units::TemperatureStep::kelvins(0);
            kelvins.push_back(((second[k].temperature->mean + shift_b.temperature.value_or(zero)) -
                               (one.temperature->mean + shift_a.temperature.value_or(zero)))
                                  .in_kelvins());
        }
    }
    model::Findings found;
    const bool wide_humidity =
        !humidity.empty() && std::fabs(median(humidity)) > rules.disagreement.as_fraction();
    const bool wide_temperature =
        !kelvins.empty() &&
        std::fabs(median(kelvins)) > rules.temperature_disagreement.in_kelvins();
    if (wide_humidity || wide_temperature) {
        auto f = finding("sensors_disagree", a.name + " / " + b.name, std::nullopt);
        f.values["hours"] = static_cast<double>(std::max(humidity.size(), kelvins.size()));
        f.values["first"] = a.name;
        f.values["second"] = b.name;
        if (wide_humidity) {
            f.values["humidity_apart"] = RelativeHumidity::fraction(median(humidity));
        }
        if (wide_temperature) {
            f.values["temperature_apart"] = median(kelvins);
        }
        found.push_back(std::move(f));
    }
    return found;
}

std::vector<CheckDue> checks_due(const model::Sensor& sensor,
                                 std::span<const model::Instrument> instruments,
                                 std::span<const model::CalibrationCheck> checks, units::Day today,
                                 const TrustRules& rules) {
    std::vector<CheckDue> due;
    const auto wanted = [&](CheckDue::Kind kind, model::InstrumentKind instrument_kind,
                            int usual_days) {
        CheckDue one{kind, sensor.id, std::nullopt, today, true, std::nullopt};
        int every = usual_days;
        const model::CalibrationCheck* last = nullptr;
        for (const auto& instrument : instruments) {
            if (instrument.sensor != sensor.id || instrument.kind != instrument_kind) {
                continue;
            }
            every = instrument.check_every_days.value_or(every);
            for (const auto& check : checks) {
                if (check.instrument == instrument.id && (last == nullptr || check.at > last->at)) {
                    last = &check;
                }
            }
        }
        if (last != nullptr) {
            one.last = utc_day(last->at);
            one.due = *one.last + every;
            one.overdue = one.due <= today;
            one.found_off = last->expected - last->found;
        }
        due.push_back(one);
    };
    wanted(CheckDue::Kind::salt_bag, model::InstrumentKind::hygrometer, rules.salt_bag_every_days);
    wanted(CheckDue::Kind::ice, model::InstrumentKind::thermometer, rules.ice_every_days);
    return due;
}

model::Findings meat_as_witness(std::span<const ClimateBucket> hours, const model::Sensor& sensor,
                                std::span<const MeatWitness> witnesses, const TrustRules& rules) {
    struct Against {
        int pieces = 0;
        double stated = 0;
        double low = 0;
        double best = 0;
        double high = 0;
        std::optional<units::Instant> since;
    };
    std::array<Against, 2> sides; // the meat says drier, damper
    const double shift =
        sensor.humidity_offset.value_or(RelativeHumidity::fraction(0)).as_fraction();
    const double margin = rules.meat_disagreement.as_fraction();
    for (const auto& witness : witnesses) {
        const auto mean = mean_humidity(hours, witness.from, witness.to);
        if (!mean) {
            continue;
        }
        const double stated = *mean + shift;
        const bool drier = stated - margin > witness.implied.high.as_fraction();
        const bool damper = stated + margin < witness.implied.low.as_fraction();
        if (!drier && !damper) {
            continue;
        }
        auto& side = sides[drier ? 0 : 1];
        ++side.pieces;
        side.stated += stated;
        side.low += witness.implied.low.as_fraction();
        side.best += witness.implied.best.as_fraction();
        side.high += witness.implied.high.as_fraction();
        side.since = side.since ? std::min(*side.since, witness.from) : witness.from;
    }
    model::Findings found;
    for (const auto& side : sides) {
        if (side.pieces == 0) {
            continue;
        }
        auto f = finding("meat_contradicts_sensor", sensor.name, side.since);
        const double n = side.pieces;
        f.values = {{"stated", RelativeHumidity::fraction(side.stated / n)},
                    {"implied", RelativeHumidity::fraction(side.best / n)},
                    {"implied_low", RelativeHumidity::fraction(side.low / n)},
                    {"implied_high", RelativeHumidity::fraction(side.high / n)},
                    {"pieces", n}};
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace core::chamber
