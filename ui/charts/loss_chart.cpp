#include "ui/charts/loss_chart.h"

#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

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

class LossChartBuilder {
  public:
    LossChartBuilder(const LossChartInput& input, const LossChartOptions& options,
                     const text::Style& style)
        : input_(input), options_(options), style_(style) {}

    ChartSpec build() {
        spec_.title = input_.title;
        spec_.time = options_.time;
        spec_.time_zone = QByteArray::fromStdString(style_.zone.name());
        spec_.x_label =
            options_.time == TimeAxis::elapsed ? LossChart::tr("days since hung") : QString();
        spec_.y_label = y_label();
        spec_.columns = {LossChart::tr("When"), LossChart::tr("Days since hung"),
                         LossChart::tr("Net"), LossChart::tr("Lost"), LossChart::tr("Remarks")};
        int colour = 0;
        bool first_ghost = true;
        for (const auto& curve : input_.curves) {
            if (curve.ghost) {
                add_ghost(curve, first_ghost);
                first_ghost = false;
            } else {
                add_curve(curve, colour++);
            }
        }
        add_targets();
        add_surroundings();
        spec_.summary = summary();
        return spec_;
    }

  private:
    [[nodiscard]] QString y_label() const {
        if (!input_.climate.isEmpty() && options_.time == TimeAxis::calendar) {
            // Above the strips there is no height for a sentence; the box above the chart has it.
            return options_.weight ? text::mass_unit_name(style_) : QStringLiteral("%");
        }
        if (options_.weight) {
            return LossChart::tr("net weight, %1").arg(text::mass_unit_name(style_));
        }
        return input_.counted_from
                   ? LossChart::tr("lost of the %1, %").arg(text::words(*input_.counted_from))
                   : LossChart::tr("weight lost, %");
    }

    [[nodiscard]] double x_of(Instant at, const LossCurve& curve) const {
        if (options_.time == TimeAxis::elapsed) {
            return (at - curve.start).in_days();
        }
        const double x = static_cast<double>(at.unix_seconds());
        // On a calendar a ghost hangs beside the first piece, from the same day on.
        return curve.ghost ? x + (input_.curves.front().start - curve.start).in_seconds() : x;
    }

    /// A loss from the curve's own reference as a value of the axis.
    [[nodiscard]] double y_of_shown(MassShare loss, const LossCurve& curve) const {
        if (!options_.weight) {
            return loss.in_percent();
        }
        const auto& start = curve.ghost ? input_.curves.front().reference : curve.reference;
        return weight_value(start.value_or(Mass::grams(0)) * (1.0 - loss.as_fraction()), style_);
    }

    /// A loss as the target and the forecast count it, as a loss from the curve's reference.
    [[nodiscard]] static MassShare shown(MassShare loss, const LossCurve& curve) {
        if (!curve.target_reference || !curve.reference || curve.reference->in_grams() <= 0) {
            return loss;
        }
        const Mass net = *curve.target_reference * (1.0 - loss.as_fraction());
        return MassShare::of(*curve.reference - net, *curve.reference);
    }

    [[nodiscard]] double y_of(MassShare loss, const LossCurve& curve) const {
        return y_of_shown(shown(loss, curve), curve);
    }

    [[nodiscard]] QString day_words(Instant at, const LossCurve& curve) const {
        return text::number_words((at - curve.start).in_days(), style_, 0);
    }

    [[nodiscard]] Point point_of(const LossPoint& p, const LossCurve& curve) const {
        Point point;
        point.x = x_of(p.at, curve);
        point.y = options_.weight && !curve.ghost ? weight_value(p.net, style_)
                                                  : y_of_shown(p.loss, curve);
        point.tag = curve.ghost ? 0 : p.weighing.row();
        point.faded = p.faded && !curve.ghost;
        const QString net = text::words(p.net, style_);
        const QString lost = text::words(p.loss, style_);
        point.reading = curve.ghost ? LossChart::tr("day %1 \u00B7 %2 net \u00B7 %3 lost")
                                          .arg(day_words(p.at, curve), net, lost)
                                    : LossChart::tr("%1 \u00B7 %2 net \u00B7 %3 lost")
                                          .arg(text::words(p.at, style_), net, lost);
        if (!p.note.isEmpty()) {
            point.reading += QStringLiteral(" \u00B7 ") + p.note;
        }
        point.cells = {text::words(p.at, style_), day_words(p.at, curve), net, lost, p.note};
        return point;
    }

    void add_ghost(const LossCurve& curve, bool listed) {
        if (options_.weight && !input_.curves.front().reference) {
            return; // no weight of this piece to compare with
        }
        Series series;
        series.name = LossChart::tr("%1, done earlier").arg(curve.name);
        series.legend = listed ? LossChart::tr("done earlier") : QString();
        series.mark = Mark::none;
        series.ghost = true;
        for (const auto& p : curve.points) {
            series.points.push_back(point_of(p, curve));
        }
        spec_.series.push_back(std::move(series));
    }

    /// The mark and the dash go round at different paces: fifteen pieces differ without colour.
    void add_curve(const LossCurve& curve, int colour) {
        static constexpr Mark marks[] = {Mark::dot, Mark::square, Mark::triangle, Mark::diamond,
                                         Mark::ring};
        static constexpr Dash dashes[] = {Dash::solid, Dash::dashed, Dash::dotted};
        Series series;
        series.name = curve.name;
        series.legend = curve.name;
        series.colour = colour;
        series.mark = marks[static_cast<std::size_t>(colour) % std::size(marks)];
        series.dash = dashes[static_cast<std::size_t>(colour) % std::size(dashes)];
        for (const auto& p : curve.points) {
            series.points.push_back(point_of(p, curve));
        }
        if (options_.forecast && curve.forecast && (!options_.weight || curve.reference)) {
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
        // One line of the legend for all: each band has its curve's colour and runs on from it.
        band.legend =
            spec_.bands.isEmpty() ? LossChart::tr("forecast, 8 in 10 fall inside") : QString();
        band.colour = colour;
        std::optional<Instant> told;
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
            if (!told || (p.at - *told).in_days() >= 7) {
                band.cells.push_back(band_cells(p, curve));
                told = p.at;
            }
        }
        spec_.bands.push_back(std::move(band));
    }

    [[nodiscard]] QStringList band_cells(const core::model::BandPoint& p,
                                         const LossCurve& curve) const {
        const auto loss = [&](MassShare share) { return text::words(shown(share, curve), style_); };
        const QString net =
            curve.reference
                ? text::words(*curve.reference * (1.0 - shown(p.p50, curve).as_fraction()), style_)
                : QString();
        return {text::words(style_.zone.day_of(p.at), style_), day_words(p.at, curve), net,
                loss(p.p50), LossChart::tr("%1 to %2").arg(loss(p.p10), loss(p.p90))};
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
            if (there) {
                continue;
            }
            const MassShare loss = shown(*curve.target, curve);
            spec_.levels.push_back(
                {y,
                 LossChart::tr("target %1")
                     .arg(options_.weight
                              ? text::words(*curve.reference * (1.0 - loss.as_fraction()), style_)
                              : text::words(loss, style_, 0))});
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
                spec_.flags.push_back(
                    {x,
                     event.label,
                     {text::words(event.at, style_), day_words(event.at, first), {}, {}, {}}});
            }
        }
        for (const auto& stage : input_.stages) {
            spec_.stretches.push_back({x_of(stage.from, first),
                                       x_of(stage.to, first),
                                       stage.label,
                                       {text::range_words(style_.zone.day_of(stage.from),
                                                          style_.zone.day_of(stage.to), style_),
                                        day_words(stage.from, first),
                                        {},
                                        {},
                                        LossChart::tr("stage")}});
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
        int ghosts = 0;
        for (const auto& curve : input_.curves) {
            if (curve.points.empty()) {
                continue;
            }
            if (curve.ghost) {
                ++ghosts;
                continue;
            }
            const auto& last = curve.points.back();
            QString part = LossChart::tr("%1: %2 lost on %3")
                               .arg(curve.name, text::words(last.loss, style_),
                                    text::words(style_.zone.day_of(last.at), style_));
            if (curve.target) {
                part += LossChart::tr(", target %1")
                            .arg(text::words(shown(*curve.target, curve), style_, 0));
            }
            parts << part;
        }
        if (ghosts > 0) {
            parts << LossChart::tr("%n earlier piece(s) for comparison", nullptr, ghosts);
        }
        return parts.join(QStringLiteral("; "));
    }

    const LossChartInput& input_;
    const LossChartOptions& options_;
    const text::Style& style_;
    ChartSpec spec_;
};

} // namespace

ChartSpec loss_chart(const LossChartInput& input, const LossChartOptions& options,
                     const text::Style& style) {
    return LossChartBuilder(input, options, style).build();
}

} // namespace ui::charts
