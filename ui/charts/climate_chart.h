#pragma once

#include "core/chamber/band_time.h"
#include "core/chamber/climate_series.h"
#include "core/units/zone.h"
#include "ui/charts/chart_spec.h"
#include "ui/text/style.h"

#include <vector>

/// Builds the climate chart of a chamber. Pure.
namespace ui::charts {

enum class ClimateQuantity { temperature, humidity, drying_force };

struct ClimateCurve {
    QString name; ///< the sensor's
    core::chamber::ClimateSeries series;
};

struct ClimateStage {
    core::units::Instant from;
    core::units::Instant to;
    QString label; ///< "B07 drying"
};

struct ClimateChartInput {
    QString title;
    std::vector<ClimateCurve> curves; ///< one or two, laid over each other
    core::chamber::ClimateBand band;
    std::vector<ClimateStage> stages;
};

/// `quantity` of all curves on the main chart, with the band of its least and greatest values; the
/// dew point beside the temperature; the other two quantities of the first curve as strips. Times
/// without readings are left blank.
ChartSpec climate_chart(const ClimateChartInput& input, ClimateQuantity quantity,
                        const text::Style& style);

} // namespace ui::charts
