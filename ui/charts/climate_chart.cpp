#include "ui/charts/climate_chart.h"

#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

#include <limits>
#include <optional>

namespace ui::charts {
namespace {

struct ClimateChart {
    Q_DECLARE_TR_FUNCTIONS(ClimateChart)
};

using core::chamber::SeriesPoint;

constexpr double nothing = std::numeric_limits<double>::quiet_NaN();

/// Least, mean and greatest of one point in axis units.
struct Values {
    double low;
    double mean;
    double high;
};

double axis_value(core::units::Temperature t, const text::Style& style) {
    return style.temperature == text::TemperatureStyle::fahrenheit ? t.in_fahrenheit()
                                                                   : t.in_celsius();
}

std::optional<Values> values_of(const SeriesPoint& point, ClimateQuantity quantity,
                                const text::Style& style) {
    if (quantity == ClimateQuantity::temperature && point.temperature) {
        const auto& t = *point.temperature;
        return Values{axis_value(t.low, style), axis_value(t.mean, style),
                      axis_value(t.high, style)};
    }
    if (quantity == ClimateQuantity::humidity && point.humidity) {
        const auto& h = *point.humidity;
        return Values{h.low.in_percent(), h.mean.in_percent(), h.high.in_percent()};
    }
    if (quantity == ClimateQuantity::drying_force && point.drying_force) {
        const double pascals = point.drying_force->in_pascals();
        return Values{pascals, pascals, pascals};
    }
    return std::nullopt;
}

QString quantity_words(ClimateQuantity quantity, const text::Style& style) {
    switch (quantity) {
    case ClimateQuantity::temperature:
        return ClimateChart::tr("temperature, %1").arg(text::temperature_unit_name(style));
    case ClimateQuantity::humidity:
        return ClimateChart::tr("humidity, % RH");
    case ClimateQuantity::drying_force:
        return ClimateChart::tr("drying force, Pa");
    }
    return {};
}

double x_of(core::units::Instant at) {
    return static_cast<double>(at.unix_seconds());
}
double middle_of(const SeriesPoint& point) {
    return (x_of(point.from) + x_of(point.to)) / 2.0;
}

/// A point in words for the table: a cell a quantity.
QStringList cells_of(const SeriesPoint& point, const text::Style& style) {
    const auto spread = [&](const auto& s) {
        return s ? ClimateChart::tr("%1 (%2 to %3)")
                       .arg(text::words(s->mean, style), text::words(s->low, style),
                            text::words(s->high, style))
                 : QString();
    };
    return {text::words(point.from, style), spread(point.temperature), spread(point.humidity),
            point.dew_point ? text::words(*point.dew_point, style) : QString(),
            point.drying_force ? ClimateChart::tr("%1 Pa").arg(
                                     text::number_words(point.drying_force->in_pascals(), style, 0))
                               : QString()};
}

/// The same on one line, from its cells.
QString reading_of(const SeriesPoint& point, const QStringList& cells, const text::Style& style) {
    QString reading = cells[0];
    for (const int spread : {1, 2}) {
        if (!cells[spread].isEmpty()) {
            reading += QStringLiteral(" \u00B7 ") + cells[spread];
        }
    }
    if (point.dew_point) {
        reading += ClimateChart::tr(" \u00B7 dew point %1").arg(cells[3]);
    }
    if (point.drying_force) {
        reading += ClimateChart::tr(" \u00B7 drying force %1 Pa")
                       .arg(text::number_words(point.drying_force->in_pascals(), style, 0));
    }
    return reading;
}

PointWords point_words(const std::optional<SeriesPoint>& point, const text::Style& style) {
    if (!point) {
        const QString nothing_read = ClimateChart::tr("no readings");
        return {nothing_read, {nothing_read, {}, {}, {}, {}}};
    }
    const QStringList cells = cells_of(*point, style);
    return {reading_of(*point, cells, style), cells};
}

/// Calls `each(point)` by time, and `blank(x)` where a gap begins.
template <class Each, class Blank>
void walk(const core::chamber::ClimateSeries& series, const Each& each, const Blank& blank) {
    std::size_t gap = 0;
    for (const auto& point : series.points) {
        while (gap < series.gaps.size() && series.gaps[gap].to <= point.from) {
            blank(x_of(series.gaps[gap].from));
            ++gap;
        }
        each(point);
    }
}

class Builder {
  public:
    Builder(const ClimateChartInput& input, ClimateQuantity quantity, const text::Style& style)
        : input_(input), quantity_(quantity), style_(style) {}

    ChartSpec build() {
        spec_.title = input_.title;
        spec_.time_zone = QByteArray::fromStdString(style_.zone.name());
        spec_.y_label = quantity_words(quantity_, style_);
        spec_.columns = {ClimateChart::tr("From"), ClimateChart::tr("Temperature"),
                         ClimateChart::tr("Humidity"), ClimateChart::tr("Dew point"),
                         ClimateChart::tr("Drying force")};
        int colour = 0;
        for (const auto& curve : input_.curves) {
            add_curve(curve, colour++);
        }
        add_levels();
        for (const auto& stage : input_.stages) {
            spec_.stretches.push_back({x_of(stage.from), x_of(stage.to), stage.label});
        }
        add_strips();
        spec_.summary = summary();
        return spec_;
    }

  private:
    void add_curve(const ClimateCurve& curve, int colour) {
        Band envelope;
        envelope.name = ClimateChart::tr("%1: least to greatest").arg(curve.name);
        envelope.colour = colour;
        Series line;
        line.name = curve.name;
        line.colour = colour;
        line.mark = Mark::none;
        line.dash = colour == 0 ? Dash::solid : Dash::dashed;
        Series dew;
        dew.name = ClimateChart::tr("%1: dew point").arg(curve.name);
        dew.colour = 2 + colour;
        dew.mark = Mark::none;
        dew.dash = Dash::dotted;
        dew.ghost = true; // read with the temperature, not by itself
        line.legend = line.name;
        dew.legend = dew.name;
        envelope.legend = envelope.name;
        QVector<std::optional<SeriesPoint>> read; // empty: a gap
        const auto put = [&](double x, const Values& v, double dew_point) {
            envelope.x.push_back(x);
            envelope.low.push_back(v.low);
            envelope.middle.push_back(v.mean);
            envelope.high.push_back(v.high);
            line.points.push_back({x, v.mean, 0, {}, false, {}});
            dew.points.push_back({x, dew_point, 0, {}, false, {}});
        };
        walk(
            curve.series,
            [&](const SeriesPoint& point) {
                if (const auto v = values_of(point, quantity_, style_)) {
                    read.push_back(point);
                    put(middle_of(point), *v,
                        point.dew_point ? axis_value(*point.dew_point, style_) : nothing);
                }
            },
            [&](double x) {
                read.push_back({});
                put(x, {nothing, nothing, nothing}, nothing);
            });
        line.words = [read = std::move(read), style = style_](qsizetype i) {
            return point_words(read[i], style);
        };
        if (quantity_ != ClimateQuantity::drying_force) {
            spec_.bands.push_back(std::move(envelope));
        }
        spec_.series.push_back(std::move(line));
        if (quantity_ == ClimateQuantity::temperature) {
            spec_.series.push_back(std::move(dew));
        }
    }

    void add_level(std::optional<double> y, const QString& label) {
        if (y) {
            spec_.levels.push_back({*y, label});
        }
    }

    void add_levels() {
        const auto bounds = bounds_of(quantity_);
        add_level(bounds.first, ClimateChart::tr("lower bound"));
        add_level(bounds.second, ClimateChart::tr("upper bound"));
    }

    /// The chamber's band in axis units.
    [[nodiscard]] std::pair<std::optional<double>, std::optional<double>>
    bounds_of(ClimateQuantity quantity) const {
        const auto& band = input_.band;
        const auto celsius = [&](const auto& t) {
            return t ? std::optional(axis_value(*t, style_)) : std::nullopt;
        };
        const auto percent = [](const auto& h) {
            return h ? std::optional(h->in_percent()) : std::nullopt;
        };
        switch (quantity) {
        case ClimateQuantity::temperature:
            return {celsius(band.low_temperature), celsius(band.high_temperature)};
        case ClimateQuantity::humidity:
            return {percent(band.low_humidity), percent(band.high_humidity)};
        case ClimateQuantity::drying_force:
            break;
        }
        return {};
    }

    void add_strips() {
        if (input_.curves.empty()) {
            return;
        }
        int colour = 4;
        for (const auto other : {ClimateQuantity::temperature, ClimateQuantity::humidity,
                                 ClimateQuantity::drying_force}) {
            if (other == quantity_) {
                continue;
            }
            Strip strip;
            strip.name = quantity_words(other, style_);
            strip.colour = colour++;
            walk(
                input_.curves.front().series,
                [&](const SeriesPoint& point) {
                    if (const auto v = values_of(point, other, style_)) {
                        strip.points.push_back({middle_of(point), v->low, v->mean, v->high});
                    }
                },
                [&](double x) {
                    strip.points.push_back({x, nothing, nothing, nothing});
                });
            const auto bounds = bounds_of(other);
            if (bounds.first && bounds.second) {
                strip.wanted = {*bounds.first, *bounds.second};
            }
            if (!strip.points.isEmpty()) {
                spec_.strips.push_back(std::move(strip));
            }
        }
    }

    [[nodiscard]] QString summary() const {
        QStringList sentences;
        for (const auto& curve : input_.curves) {
            const auto& points = curve.series.points;
            if (points.empty()) {
                sentences << ClimateChart::tr("%1 has no readings in this time.").arg(curve.name);
                continue;
            }
            sentences << ClimateChart::tr("%1: %2 to %3, pauses without readings: %4.")
                             .arg(curve.name, text::words(points.front().from, style_),
                                  text::words(points.back().to, style_))
                             .arg(curve.series.gaps.size());
        }
        return sentences.join(QLatin1Char(' '));
    }

    const ClimateChartInput& input_;
    ClimateQuantity quantity_;
    const text::Style& style_;
    ChartSpec spec_;
};

} // namespace

ChartSpec climate_chart(const ClimateChartInput& input, ClimateQuantity quantity,
                        const text::Style& style) {
    return Builder(input, quantity, style).build();
}

} // namespace ui::charts
