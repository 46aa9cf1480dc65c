#include "ui/charts/loss_chart.h"

#include "ui/text/date_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

#include <cmath>
#include <limits>

namespace ui::charts {
namespace {

struct LossChart {
    Q_DECLARE_TR_FUNCTIONS(LossChart)
};

using core::units::Instant;
using core::units::Mass;
using core::units::MassShare;

/// Axis values in the person's own unit, so that ticks are round numbers there.
double weight_value(Mass mass, const text::Style& style) {
    switch (style.mass) {
    case text::MassStyle::grams:
    case text::MassStyle::kilograms:
        return mass.in_grams();
    case text::MassStyle::ounces:
    case text::MassStyle::pounds:
        return mass.in_ounces();
    }
    return mass.in_grams();
}

class Builder {
  public:
    Builder(const LossChartInput& input, const LossChartOptions& options, const text::Style& style)
        : input_(input), options_(options), style_(style) {}

    ChartSpec build() {
        spec_.title = input_.title;
        spec_.time = options_.time;
        spec_.time_zone = QByteArray::fromStdString(style_.zone.name());
        spec_.x_label =
            options_.time == TimeAxis::elapsed ? LossChart::tr("days since hung") : QString();
        spec_.y_label = options_.weight
                            ? LossChart::tr("net weight, %1").arg(text::mass_unit_name(style_))
                            : LossChart::tr("weight lost, %");
        int colour = 0;
        for (const auto& curve : input_.curves) {
            add_curve(curve, colour);
            if (!curve.ghost) {
                ++colour;
            }
        }
        add_targets();
        add_surroundings();
        spec_.summary = summary();
        return spec_;
    }

  private:
    [[nodiscard]] double x_of(Instant at, const LossCurve& curve) const {
        return options_.time == TimeAxis::calendar ? static_cast<double>(at.unix_seconds())
                                                   : (at - curve.start).in_days();
    }

    [[nodiscard]] double y_of(MassShare loss, const LossCurve& curve) const {
        if (!options_.weight) {
            return loss.in_percent();
        }
        const Mass reference = curve.reference.value_or(Mass::grams(0));
        return weight_value(reference * (1.0 - loss.as_fraction()), style_);
    }

    void add_curve(const LossCurve& curve, int colour) {
        static constexpr Mark marks[] = {Mark::dot, Mark::square, Mark::triangle, Mark::diamond,
                                         Mark::ring};
        Series series;
        series.name = curve.name;
        series.colour = colour;
        series.mark = marks[static_cast<std::size_t>(colour) % std::size(marks)];
        series.ghost = curve.ghost;
        for (const auto& p : curve.points) {
            Point point;
            point.x = x_of(p.at, curve);
            point.y = options_.weight ? weight_value(p.net, style_) : p.loss.in_percent();
            point.tag = curve.ghost ? 0 : p.weighing.row();
            point.faded = p.faded;
            point.reading = LossChart::tr("%1 · %2 net · %3 lost")
                                .arg(text::words(p.at, style_), text::words(p.net, style_),
                                     text::words(p.loss, style_));
            if (!p.note.isEmpty()) {
                point.reading += QStringLiteral(" · ") + p.note;
            }
            series.points.push_back(point);
        }
        if (options_.forecast && curve.forecast && !curve.ghost &&
            (!options_.weight || curve.reference)) {
            add_band(curve, colour);
        }
        spec_.series.push_back(std::move(series));
    }

    void add_band(const LossCurve& curve, int colour) {
        if (curve.forecast->curve.size() < 2) {
            return;
        }
        Band band;
        band.name = LossChart::tr("%1: forecast, 8 in 10 fall inside").arg(curve.name);
        band.colour = colour;
        for (const auto& p : curve.forecast->curve) {
            // What has been weighed needs no forecast beside it.
            if (curve.forecast->as_of && p.at < *curve.forecast->as_of) {
                continue;
            }
            band.x.push_back(x_of(p.at, curve));
            const double at_p10 = y_of(p.p10, curve);
            const double at_p90 = y_of(p.p90, curve);
            band.low.push_back(std::min(at_p10, at_p90));
            band.middle.push_back(y_of(p.p50, curve));
            band.high.push_back(std::max(at_p10, at_p90));
        }
        spec_.bands.push_back(std::move(band));
    }

    /// One line for each different target, so that pieces with the same one share it.
    void add_targets() {
        for (const auto& curve : input_.curves) {
            if (!curve.target || curve.ghost || (options_.weight && !curve.reference)) {
                continue;
            }
            const double y = y_of(*curve.target, curve);
            const bool there =
                std::any_of(spec_.levels.begin(), spec_.levels.end(),
                            [&](const Level& l) { return std::abs(l.y - y) < 1e-6; });
            if (!there) {
                const QString loss = text::words(*curve.target, style_, 0);
                spec_.levels.push_back(
                    {y,
                     options_.weight
                         ? LossChart::tr("target %1")
                               .arg(text::words(
                                   *curve.reference * (1.0 - curve.target->as_fraction()), style_))
                         : LossChart::tr("target %1").arg(loss)});
            }
        }
    }

    void add_surroundings() {
        if (input_.curves.empty()) {
            return;
        }
        const LossCurve& first = input_.curves.front();
        for (const auto& event : input_.events) {
            // Events within a day share a flag: their words would lie on each other.
            const double x = x_of(event.at, first);
            const double day = options_.time == TimeAxis::calendar ? 86400.0 : 1.0;
            if (!spec_.flags.isEmpty() && x - spec_.flags.back().x < day) {
                spec_.flags.back().label += QStringLiteral(", ") + event.label;
            } else {
                spec_.flags.push_back({x, event.label});
            }
        }
        for (const auto& stage : input_.stages) {
            spec_.stretches.push_back(
                {x_of(stage.from, first), x_of(stage.to, first), stage.label});
        }
        if (options_.time == TimeAxis::calendar) {
            spec_.strips = input_.climate;
        }
        if (input_.now) {
            spec_.now = x_of(*input_.now, first);
        }
    }

    [[nodiscard]] QString summary() const {
        QStringList parts;
        for (const auto& curve : input_.curves) {
            if (curve.ghost || curve.points.empty()) {
                continue;
            }
            const auto& last = curve.points.back();
            QString part = LossChart::tr("%1: %2 lost on %3")
                               .arg(curve.name, text::words(last.loss, style_),
                                    text::words(style_.zone.day_of(last.at), style_));
            if (curve.target) {
                part += LossChart::tr(", target %1").arg(text::words(*curve.target, style_, 0));
            }
            parts << part;
        }
        return parts.join(QStringLiteral("; "));
    }

    const LossChartInput& input_;
    const LossChartOptions& options_;
    const text::Style& style_;
    ChartSpec spec_;
};

} // namespace

QVector<Strip> air_strips(const std::vector<core::drying::AirReading>& air,
                          const text::Style& style) {
    if (air.empty()) {
        return {};
    }
    const bool fahrenheit = style.temperature == text::TemperatureStyle::fahrenheit;
    Strip humidity{LossChart::tr("% RH"), {}, {}, 4};
    Strip temperature{text::temperature_unit_name(style), {}, {}, 5};
    std::optional<Instant> last;
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
    return {humidity, temperature};
}

ChartSpec loss_chart(const LossChartInput& input, const LossChartOptions& options,
                     const text::Style& style) {
    return Builder(input, options, style).build();
}

} // namespace ui::charts
