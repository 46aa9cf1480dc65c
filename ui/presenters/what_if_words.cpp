// What a what-if says, apart from how it is computed (what_if.cpp).
#include "core/drying/drying_power.h"
#include "ui/presenters/hurdle_facts.h"
#include "ui/presenters/what_if.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

namespace ui::presenters {
namespace {

struct WhatIfWords {
    Q_DECLARE_TR_FUNCTIONS(WhatIfWords)
};

using core::drying::ExpectedAir;
using core::facts::GrowthRange;
using core::model::Forecast;
using core::model::ForecastState;
using core::units::Instant;
using core::units::Temperature;

bool holds(const GrowthRange& range, Temperature t) {
    return (range.lowest || range.highest) && (!range.lowest || t >= *range.lowest) &&
           (!range.highest || t <= *range.highest);
}

QString day_words(const Forecast& forecast, std::optional<Instant> at, const text::Style& style,
                  Instant now) {
    if (forecast.state == ForecastState::too_few_weighings ||
        forecast.state == ForecastState::not_drying) {
        return text::unknown();
    }
    if (forecast.state == ForecastState::ready) {
        return WhatIfWords::tr("reached");
    }
    if (!at) {
        return WhatIfWords::tr("not reached");
    }
    return *at <= now ? WhatIfWords::tr("by today") : text::words(style.zone.day_of(*at), style);
}

QString levels_words(const Forecast& forecast, const text::Style& style) {
    if (!forecast.levels_off) {
        return text::unknown();
    }
    const auto& levels = *forecast.levels_off;
    return WhatIfWords::tr("%1 (%2 to %3)")
        .arg(text::words(levels.best, style, 0), text::words(levels.low, style, 0),
             text::words(levels.high, style, 0));
}

QString state_words(const Forecast& forecast) {
    return forecast.state == ForecastState::not_reachable
               ? WhatIfWords::tr("not reachable: more likely never than ever")
               : text::words(forecast.state);
}

QString air_words(Temperature t, core::units::RelativeHumidity rh, const text::Style& style) {
    //: %1 a temperature, %2 a humidity: air
    return WhatIfWords::tr("%1, %2").arg(text::words(t, style), text::words(rh, style));
}

} // namespace

QVector<WhatIfLine> what_if_lines(const WhatIfAnswer& answer, const ExpectedAir& air,
                                  std::optional<core::units::MassShare> target,
                                  const WhatIfChange& change, const text::Style& style,
                                  Instant now) {
    const auto& a = answer.now;
    const auto& b = answer.changed;
    const auto day = [&](const Forecast& f, auto which) {
        return day_words(f, f.ready ? (*f.ready).*which : std::nullopt, style, now);
    };
    using Ready = core::model::ReadyDate;
    return {{WhatIfWords::tr("Air ahead"), air_words(air.temperature, air.humidity, style),
             air_words(change.temperature.value_or(air.temperature),
                       change.humidity.value_or(air.humidity), style)},
            {WhatIfWords::tr("Target"), text::words_or_unknown(target, style),
             text::words_or_unknown(change.target ? change.target : target, style)},
            {WhatIfWords::tr("State"), state_words(a), state_words(b)},
            {WhatIfWords::tr("1 chance in 10 by"), day(a, &Ready::p10), day(b, &Ready::p10)},
            {WhatIfWords::tr("Even odds by"), day(a, &Ready::p50), day(b, &Ready::p50)},
            {WhatIfWords::tr("9 chances in 10 by"), day(a, &Ready::p90), day(b, &Ready::p90)},
            {WhatIfWords::tr("Levels off at"), levels_words(a, style), levels_words(b, style)}};
}

std::optional<core::units::RelativeHumidity> same_power(const ExpectedAir& air, Temperature there) {
    return core::drying::equal_power_humidity(air.temperature, air.humidity, there);
}

QString same_power_words(const ExpectedAir& air, Temperature there, const text::Style& style) {
    const auto same = same_power(air, there);
    if (!same) {
        return WhatIfWords::tr("No humidity at %1 draws water as strongly as %2 does.")
            .arg(text::words(there, style), air_words(air.temperature, air.humidity, style));
    }
    return WhatIfWords::tr("Equal drying power: %1 at %2 draws water as strongly as %3 at %4. How "
                           "far the piece can dry follows from humidity almost alone.")
        .arg(text::words(*same, style), text::words(there, style), text::words(air.humidity, style),
             text::words(air.temperature, style));
}

QStringList range_cautions(Temperature here, Temperature there, const text::Style& style) {
    QStringList cautions;
    for (const auto& range : hurdle_facts().organisms) {
        if (holds(range, there) && !holds(range, here)) {
            cautions << WhatIfWords::tr("%1 lies in the cited growth range of %2 (%3 to %4), "
                                        "which %5 does not. %6")
                            .arg(text::words(there, style), QString::fromStdString(range.name),
                                 text::words_or_unknown(range.lowest, style),
                                 text::words_or_unknown(range.highest, style),
                                 text::words(here, style), text::source_words(range.source));
        }
    }
    return cautions;
}

QStringList in_range_of_both(Temperature here, Temperature there) {
    QStringList names;
    for (const auto& range : hurdle_facts().organisms) {
        if (holds(range, there) && holds(range, here)) {
            names << QString::fromStdString(range.name);
        }
    }
    return names;
}

} // namespace ui::presenters
