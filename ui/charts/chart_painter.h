#pragma once

#include "ui/charts/chart_spec.h"

#include <QObject>
#include <functional>

class QCustomPlot;
class QCPAxis;
class QCPAxisRect;
class QCPGraph;
class QCPMarginGroup;
class QPainter;
class QWidget;

namespace ui::charts {

/// The only class that knows QCustomPlot. It draws a spec and answers where things are.
/// Costs (measured, see DEVELOPERS.md): pens above 1 px only with the fast-polyline hint, no
/// antialiasing on fills.
class ChartPainter : public QObject {
    Q_OBJECT
  public:
    explicit ChartPainter(QWidget* parent);
    ~ChartPainter() override;

    [[nodiscard]] QWidget* widget() const;
    void set_spec(const ChartSpec& spec);
    [[nodiscard]] const ChartSpec& spec() const { return spec_; }
    void redraw(); ///< after a change of palette or font

    void show_all();
    void zoom(double factor);
    void pan(double share);

    struct Hit {
        int series = 0;
        int point = 0;
    };
    /// The point nearest to a pixel position, within `reach` pixels.
    [[nodiscard]] std::optional<Hit> hit(const QPointF& at, double reach) const;
    /// Rings one point as the reading cursor; absent hides the ring.
    void mark(std::optional<Hit> hit);

    bool save(const QString& path);
    void draw(QPainter* painter, QSize size);

  Q_SIGNALS:
    void moved_over(const QPointF& at);
    void clicked(const QPointF& at);

  private:
    void build();
    void build_axes();
    void build_stretches();
    void build_bands();
    void build_series();
    void build_levels_and_flags();
    void build_strips();
    void list(QCPGraph* graph, const QString& legend);
    void build_legend();
    void fit_legend(int width);
    void apply_ranges(bool keep);

    QCustomPlot* plot_;
    QCPAxisRect* main_ = nullptr;
    QCPMarginGroup* margins_ = nullptr; ///< keeps all rects under the same days
    QVector<QCPGraph*> listed_;         ///< in the legend, in its order
    ChartSpec spec_;
    bool dark_ = false;
    std::optional<Hit> marked_;
};

} // namespace ui::charts
