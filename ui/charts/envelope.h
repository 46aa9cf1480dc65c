#pragma once

#include "ui/charts/plot_library.h"

#include <QRectF>
#include <QVector>

namespace ui::charts {

/// Where the range between two curves stands in pixels at one x.
struct Reach {
    double x = 0;
    double top = 0;    ///< NaN: nothing known from here to the next
    double bottom = 0; ///< greater than or equal to top, as pixels count downwards
};

/// The range as upright columns, a pixel wide or wider where it is level, within `area`: what lies
/// between two neighbours is on the straight line between them, and a column holds all that falls
/// into it. `reaches` by x. Linear in their number and the area's width.
QVector<QRectF> columns_of(const QVector<Reach>& reaches, const QRectF& area);

/// A graph whose fill down to another graph is drawn in columns: a log's least and greatest of a
/// thousand buckets make a polygon whose spans take several times as long. Files of vectors get the
/// polygon all the same.
class Envelope : public QCPGraph {
  public:
    /// The plot of the axes owns it. `low` has the same keys.
    Envelope(QCPAxis* x, QCPAxis* y, QCPGraph* low);

  protected:
    void drawFill(QCPPainter* painter, QVector<QPointF>* lines) const override;
};

} // namespace ui::charts
