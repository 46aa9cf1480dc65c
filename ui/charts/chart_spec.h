#pragma once

#include <QPair>
#include <QString>
#include <QStringList>
#include <QVector>

#include <functional>
#include <optional>

/// What a chart shows, as plain data: built by pure functions, drawn by ChartView, tested without
/// either. Colours are indices into look::chart_colours(), so a spec is the same in both
/// palettes; every series also has its own mark or dash.
namespace ui::charts {

enum class Mark { dot, square, triangle, diamond, ring, cross, none };
enum class Dash { solid, dashed, dotted };

struct Point {
    double x = 0;
    double y = 0;
    qint64 tag = 0;         ///< what a click on it means (a weighing's row); 0 for nothing
    QString reading;        ///< the read-out: "Sat 14 Mar, 18:30 · 812 g net · 18.4 % lost"
    bool faded = false;     ///< kept out of the fit
    QStringList cells = {}; ///< the same for the table, in the order of ChartSpec::columns
};

/// What is read at a point; an empty reading: it is read with another series.
struct PointWords {
    QString reading;
    QStringList cells;
};

struct Series {
    QString name;
    QVector<Point> points; ///< by x
    int colour = 0;
    Mark mark = Mark::dot;
    Dash dash = Dash::solid;
    bool joined = true;  ///< a line through the points
    bool ghost = false;  ///< an earlier piece: thin and quiet, not clickable
    QString legend = {}; ///< what the legend says; empty: not listed there
    /// Makes the words of the point with this index when they are asked for, in place of the
    /// points' own: a log has thousands of points, and their words take longer than their drawing.
    std::function<PointWords(qsizetype)> words = {};
};

PointWords words_of(const Series& series, qsizetype point);
/// Whether the point is read at all, without making its words.
bool is_read(const Series& series, qsizetype point);

/// A range about a middle line, such as a forecast.
struct Band {
    QString name;
    QVector<double> x;
    QVector<double> low;
    QVector<double> middle;
    QVector<double> high;
    int colour = 0;
    QString legend = {};             ///< as of a series
    QVector<QStringList> cells = {}; ///< rows for the table: fewer than points, enough to tell
};

/// A line across the chart at one value, with its own words.
struct Level {
    double y = 0;
    QString label;
};

/// Something that happened: a flag at the chart's foot.
struct Flag {
    double x = 0;
    QString label;
    QStringList cells = {}; ///< for the table
};

/// A named stretch of time behind everything.
struct Stretch {
    double from = 0;
    double to = 0;
    QString label;
    QStringList cells = {}; ///< for the table
};

/// One reading of a strip; low and high are the extremes of its bucket.
struct StripPoint {
    double x = 0;
    double low = 0;
    double mean = 0;
    double high = 0;
};

/// Climate below the chart, on the same time axis.
struct Strip {
    QString name; ///< "Humidity, % RH"
    QVector<StripPoint> points;
    std::optional<QPair<double, double>> wanted; ///< the band aimed for
    int colour = 5;
    QVector<QStringList> cells = {}; ///< rows for the table
};

enum class TimeAxis {
    calendar, ///< x is seconds since 1970 in UTC; labels are local days
    elapsed,  ///< x is days since the piece's own start
};

struct ChartSpec {
    QString title; ///< also the chart's accessible name
    QString x_label;
    QString y_label;
    TimeAxis time = TimeAxis::calendar;
    QByteArray time_zone = "UTC"; ///< IANA name, for the labels of a calendar axis
    QVector<Series> series;
    QVector<Band> bands;
    QVector<Level> levels;
    QVector<Flag> flags;
    QVector<Stretch> stretches;
    QVector<Strip> strips;
    std::optional<double> now; ///< a quiet line at the present
    std::optional<QPair<double, double>> y_range;
    QString summary;     ///< the chart in one or two sentences, for those who cannot see it
    QStringList columns; ///< heads of the table after the curve's name; empty: "reading"
};

/// The chart as rows of text: what the table in a chart's place shows, for screen readers and to
/// be copied. `cells` are in the order of ChartSpec::columns, or the reading alone without them.
struct ChartRow {
    QString series;
    QString reading;
    qint64 tag = 0;
    QStringList cells = {};
};
QVector<ChartRow> rows_of(const ChartSpec& spec);
/// Rows as text with tabs between, as spreadsheets take it; `heads` first.
QString pasted(const QStringList& heads, const QVector<ChartRow>& rows);

/// The smallest ranges that hold everything drawn, with a little air. Absent when nothing is.
struct Extent {
    double x_low, x_high, y_low, y_high;
};
std::optional<Extent> extent_of(const ChartSpec& spec);

} // namespace ui::charts
