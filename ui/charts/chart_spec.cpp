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

PointWords words_of(const Series& series, qsizetype point) {
    return series.words ? series.words(point)
                        : PointWords{series.points[point].reading, series.points[point].cells};
}

bool is_read(const Series& series, qsizetype point) {
    return series.words || !series.points[point].reading.isEmpty();
}

QVector<ChartRow> rows_of(const ChartSpec& spec) {
    QVector<ChartRow> rows;
    const auto add = [&](const QString& series, const QString& reading, const QStringList& cells,
                         qint64 tag = 0) {
        rows.push_back(
            {series, reading, tag, spec.columns.isEmpty() ? QStringList{reading} : cells});
    };
    for (const auto& series : spec.series) {
        for (qsizetype p = 0; p < series.points.size(); ++p) {
            if (is_read(series, p)) {
                const auto words = words_of(series, p);
                add(series.name, words.reading, words.cells, series.points[p].tag);
            }
        }
    }
    for (const auto& band : spec.bands) {
        for (const auto& cells : band.cells) {
            add(band.name, cells.join(QLatin1Char(' ')), cells);
        }
    }
    for (const auto& strip : spec.strips) {
        for (const auto& cells : strip.cells) {
            add(strip.name, cells.join(QLatin1Char(' ')), cells);
        }
    }
    for (const auto& level : spec.levels) {
        add(level.label, {}, {});
    }
    for (const auto& flag : spec.flags) {
        add(flag.label, {}, flag.cells);
    }
    for (const auto& stretch : spec.stretches) {
        if (!stretch.cells.isEmpty()) {
            add(stretch.label, {}, stretch.cells);
        }
    }
    return rows;
}

QString pasted(const QStringList& heads, const QVector<ChartRow>& rows) {
    const auto line = [](QStringList cells) {
        for (QString& cell : cells) { // a cell is one cell, whatever somebody wrote
            cell.replace(QLatin1Char('\t'), QLatin1Char(' '))
                .replace(QLatin1Char('\n'), QLatin1Char(' '));
        }
        return cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    };
    QString text = line(heads);
    for (const auto& row : rows) {
        text += line(QStringList{row.series} + row.cells);
    }
    return text;
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
    // A wash or trimming before the first weighing: its words would be cut at the edge.
    for (const auto& flag : spec.flags) {
        x.take(flag.x);
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
