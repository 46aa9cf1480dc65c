#include "ui/charts/chart_spec.h"

#include <algorithm>
#include <limits>

namespace ui::charts {
namespace {

struct Range {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void take(double v) {
        low = std::min(low, v);
        high = std::max(high, v);
    }
    [[nodiscard]] bool empty() const { return low > high; }
    void widen(double share, double least) {
        const double by = std::max((high - low) * share, least);
        low -= by;
        high += by;
    }
};

} // namespace

QVector<ChartRow> rows_of(const ChartSpec& spec) {
    QVector<ChartRow> rows;
    for (const auto& series : spec.series) {
        for (const auto& point : series.points) {
            rows.push_back({series.name, point.reading, point.tag});
        }
    }
    for (const auto& level : spec.levels) {
        rows.push_back({level.label, {}, 0});
    }
    for (const auto& flag : spec.flags) {
        rows.push_back({flag.label, {}, 0});
    }
    return rows;
}

std::optional<Extent> extent_of(const ChartSpec& spec) {
    Range x;
    Range y;
    for (const auto& series : spec.series) {
        for (const auto& point : series.points) {
            x.take(point.x);
            y.take(point.y);
        }
    }
    for (const auto& band : spec.bands) {
        for (const double v : band.x) {
            x.take(v);
        }
        for (const auto* side : {&band.low, &band.high}) {
            for (const double v : *side) {
                y.take(v);
            }
        }
    }
    for (const auto& level : spec.levels) {
        y.take(level.y);
    }
    if (x.empty() || y.empty()) {
        return {};
    }
    if (spec.now) {
        x.take(*spec.now);
    }
    const bool calendar = spec.time == TimeAxis::calendar;
    x.widen(0.02, calendar ? 43200.0 : 0.5);
    y.widen(0.16, 0.5);
    if (spec.y_range) {
        y.low = spec.y_range->first;
        y.high = spec.y_range->second;
    }
    return Extent{x.low, x.high, y.low, y.high};
}

} // namespace ui::charts
