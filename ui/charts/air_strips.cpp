// The air a piece hung in, below its loss curve.
#include "ui/charts/loss_chart.h"
#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui::charts {
namespace {

struct AirStrips {
    Q_DECLARE_TR_FUNCTIONS(AirStrips)
};

/// A row a week: when it began, and the mean with the extremes. In the columns of a loss chart.
QVector<QStringList> weeks_of(const QVector<StripPoint>& points, const text::Style& style) {
    QVector<QStringList> rows;
    constexpr double week = 7 * 86400.0;
    for (qsizetype at = 0; at < points.size();) {
        const double from = points[at].x;
        double low = points[at].low;
        double high = points[at].high;
        double sum = 0;
        int count = 0;
        for (; at < points.size() && points[at].x < from + week; ++at) {
            if (!std::isnan(points[at].mean)) {
                low = std::min(low, points[at].low);
                high = std::max(high, points[at].high);
                sum += points[at].mean;
                ++count;
            }
        }
        const auto began = core::units::Instant::from_unix_seconds(static_cast<std::int64_t>(from));
        const auto number = [&](double v) { return text::number_words(v, style, 0); };
        if (count > 0) {
            rows.push_back({text::words(style.zone.day_of(began), style),
                            {},
                            {},
                            {},
                            AirStrips::tr("a week at %1 (%2 to %3)")
                                .arg(number(sum / count), number(low), number(high))});
        }
    }
    return rows;
}

} // namespace

QVector<Strip> air_strips(const std::vector<core::drying::AirReading>& air,
                          const text::Style& style) {
    if (air.empty()) {
        return {};
    }
    const bool fahrenheit = style.temperature == text::TemperatureStyle::fahrenheit;
    Strip humidity{AirStrips::tr("% RH"), {}, {}, 4, {}};
    Strip temperature{text::temperature_unit_name(style), {}, {}, 5, {}};
    std::optional<core::units::Instant> last;
    for (const auto& reading : air) {
        const double x = static_cast<double>(reading.at.unix_seconds());
        if (last && (reading.at - *last).in_days() > 1.5) {
            const double hole = std::numeric_limits<double>::quiet_NaN();
            humidity.points.push_back({x - 1, hole, hole, hole});
            temperature.points.push_back({x - 1, hole, hole, hole});
        }
        const double rh = reading.humidity.in_percent();
        const double warmth =
            fahrenheit ? reading.temperature.in_fahrenheit() : reading.temperature.in_celsius();
        humidity.points.push_back({x, rh, rh, rh});
        temperature.points.push_back({x, warmth, warmth, warmth});
        last = reading.at;
    }
    humidity.cells = weeks_of(humidity.points, style);
    temperature.cells = weeks_of(temperature.points, style);
    return {humidity, temperature};
}

} // namespace ui::charts
