// The loggers of the invented chambers: hourly readings, taken into the book once a month.
#include "core/services/demo_teller.h"
#include "core/store/climate.h"
#include "core/store/store.h"

#include <algorithm>
#include <numbers>

namespace core::services::demo {

namespace {

constexpr std::int64_t hour_s = 3600;

/// What one chamber's air does when nothing is wrong.
struct Air {
    double temp_c;
    double daily_temp;  ///< swing with the day outside
    double season_temp; ///< swing with the season
    double rh_percent;
    double rh_noise;
    double load_rh; ///< points a fresh batch adds, fading over some days
};
constexpr Air cellar_air{13.2, 0.5, 1.2, 74.5, 1.3, 5.0};
constexpr Air cabinet_air{13.0, 0.2, 0.2, 75.0, 0.9, 4.0};

double celsius_of(const Air& air, std::int64_t second, Noise& noise) {
    const double day = static_cast<double>(second) / static_cast<double>(day_s);
    constexpr double warmest_day = 205; // late July
    return air.temp_c + air.daily_temp * std::sin(2 * std::numbers::pi * (day - 0.4)) +
           air.season_temp *
               std::cos(2 * std::numbers::pi * (std::fmod(day, 365.25) - warmest_day) / 365.25) +
           0.15 * noise.normal();
}

} // namespace

double Teller::load_of(int chamber, double days_ago) const {
    double load = 0;
    for (const LiveBatch& batch : batches_) {
        const BatchStory& story = *batch.story;
        const double hung = days_ago_hung(story) - days_ago;
        if (story.chamber == chamber && hung > 0) {
            static constexpr double fades_in_days = 9;
            load += std::exp(-hung / fades_in_days);
        }
    }
    return load;
}

model::ClimateReading Teller::reading_at(int chamber, units::Instant moment) {
    const Air& air = chamber == 0 ? cellar_air : cabinet_air;
    const double days_ago =
        static_cast<double>(midnight_ - moment.unix_seconds()) / static_cast<double>(day_s);
    double celsius = celsius_of(air, moment.unix_seconds(), noise_);
    double percent =
        air.rh_percent + air.load_rh * load_of(chamber, days_ago) + air.rh_noise * noise_.normal();
    // The cooler trips in the evening and is found the next morning but one.
    const double into_upset = upset_begins_days_ago - days_ago;
    static constexpr double upset_days = 1.5;
    static constexpr double after_days = 0.5;
    if (chamber == 0 && into_upset > 0 && into_upset < upset_days + after_days) {
        const double share = into_upset < upset_days ? 1 - std::exp(-into_upset / 0.4)
                                                     : 1 - (into_upset - upset_days) / after_days;
        celsius += share * (21.3 - celsius);
        percent += share * 13;
    }
    return {.at = moment,
            .temperature = units::Temperature::celsius(std::round(celsius * 10) / 10),
            .humidity = units::RelativeHumidity::percent(
                std::clamp(std::round(percent * 10) / 10, 30.0, 99.0))};
}

void Teller::import_climate(int days_ago) {
    static constexpr int every_days = 30;
    const auto when = at(days_ago, 6);
    if ((days_ago % every_days != 0 && days_ago != 0) || !has_come(when)) {
        return;
    }
    for (std::size_t i = 0; i < sensors_.size(); ++i) {
        std::vector<model::ClimateReading> readings;
        for (auto moment = climate_until_[i]; moment < when;
             moment = moment + units::Duration::seconds(hour_s)) {
            const double ago =
                static_cast<double>(midnight_ - moment.unix_seconds()) / static_cast<double>(day_s);
            const bool battery_flat = i == 1 && ago < 77.0 && ago > 76.6;
            const auto reading = reading_at(static_cast<int>(i), moment);
            if (!battery_flat) {
                readings.push_back(reading);
            }
        }
        climate_until_[i] = when;
        const auto done = book_.store().change([&](store::Connection& book) {
            const auto import = store::begin_climate_import(
                book,
                {.sensor = sensors_[i],
                 .made_at = when,
                 .file_name = i == 0 ? "invented-cellar.csv" : "invented-cabinet.csv"},
                "{}");
            store::append_climate(book, import, readings);
            store::end_climate_import(book, import, {.at = when, .who = people_[1]});
        });
        if (!done) {
            throw store::Fault(done.error());
        }
    }
}

} // namespace core::services::demo
