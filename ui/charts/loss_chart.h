#pragma once

#include "core/drying/air_path.h"
#include "core/model/forecast.h"
#include "core/model/piece.h"
#include "ui/charts/chart_spec.h"
#include "ui/text/style.h"

#include <optional>
#include <vector>

/// Builds the loss chart of one or several pieces. Pure.
namespace ui::charts {

/// A standing weighing as the chart needs it: `net` and `loss` in terms of the piece as it is now
/// (cuts rebased), so that the curve does not jump where something was cut off.
struct LossPoint {
    core::units::Instant at;
    core::units::Mass net;
    core::units::MassShare loss;
    core::model::WeighingId weighing;
    bool faded = false; ///< wet, or set aside by the fit
    QString note;
};

struct LossCurve {
    QString name;
    std::vector<LossPoint> points;
    std::optional<core::units::Mass> reference; ///< net start that `loss` counts from
    std::optional<core::units::MassShare> target;
    std::optional<core::model::Forecast> forecast;
    /// Net start that the target and the forecast count from; absent: `reference`.
    std::optional<core::units::Mass> target_reference;
    core::units::Instant start = core::units::Instant::from_unix_seconds(
        0); ///< day 0 of an elapsed axis: hung, else the first point
    /// An earlier piece, finished: drawn as if hung on the first curve's day, its weight as the
    /// first curve's would be at that loss. Has neither target nor forecast.
    bool ghost = false;
};

struct ChartEvent {
    core::units::Instant at;
    QString label;
};

struct ChartStage {
    core::units::Instant from;
    core::units::Instant to;
    QString label;
};

struct LossChartOptions {
    bool weight = false;                ///< net weight instead of loss
    TimeAxis time = TimeAxis::calendar; ///< several pieces compare best by elapsed days
    bool forecast = true;
};

struct LossChartInput {
    QString title;
    /// Which weight the losses count from, to be named on the axis.
    std::optional<core::model::ReferenceWeight> counted_from;
    std::vector<LossCurve> curves;
    std::vector<ChartEvent> events; ///< of the first curve
    std::vector<ChartStage> stages;
    QVector<Strip> climate; ///< x in seconds since 1970; drawn on a calendar axis only
    std::optional<core::units::Instant> now;
};

/// The air a piece hung in as strips for under its curve: humidity, then temperature. Empty
/// without readings. A gap of more than a day and a half is left open.
QVector<Strip> air_strips(const std::vector<core::drying::AirReading>& air,
                          const text::Style& style);

ChartSpec loss_chart(const LossChartInput& input, const LossChartOptions& options,
                     const text::Style& style);

} // namespace ui::charts
