#include "ui/charts/envelope.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ui::charts {

QVector<QRectF> columns_of(const QVector<Reach>& reaches, const QRectF& area) {
    const int first = static_cast<int>(std::floor(area.left()));
    const int count = static_cast<int>(std::ceil(area.right())) - first;
    if (count <= 0) {
        return {};
    }
    constexpr double none = std::numeric_limits<double>::infinity();
    QVector<Reach> columns(count, Reach{0, none, -none});
    for (qsizetype i = 0; i + 1 < reaches.size(); ++i) {
        const Reach& a = reaches[i];
        const Reach& b = reaches[i + 1];
        if (!std::isfinite(a.top + a.bottom + b.top + b.bottom)) {
            continue;
        }
        const int from = std::max(0, static_cast<int>(std::floor(a.x)) - first);
        const int to = std::min(count - 1, static_cast<int>(std::floor(b.x)) - first);
        for (int c = from; c <= to; ++c) {
            const double x = std::clamp(first + c + 0.5, a.x, std::max(a.x, b.x));
            const double share = b.x > a.x ? (x - a.x) / (b.x - a.x) : 0.0;
            columns[c].top = std::min(columns[c].top, a.top + share * (b.top - a.top));
            columns[c].bottom =
                std::max(columns[c].bottom, a.bottom + share * (b.bottom - a.bottom));
        }
    }
    QVector<QRectF> rects;
    for (int c = 0; c < count; ++c) {
        const double top = std::max(columns[c].top, area.top());
        const double bottom = std::min(columns[c].bottom, area.bottom());
        if (top > bottom) {
            continue; // nothing there, or none of it in the area
        }
        const QRectF rect(first + c, top, 1, bottom - top);
        if (!rects.isEmpty() && rects.back().right() == rect.left() &&
            rects.back().top() == rect.top() && rects.back().height() == rect.height()) {
            rects.back().setRight(rect.right());
        } else {
            rects.push_back(rect);
        }
    }
    return rects;
}

Envelope::Envelope(QCPAxis* x, QCPAxis* y, QCPGraph* low) : QCPGraph(x, y) {
    setAntialiasedFill(false);
    setChannelFillGraph(low);
}

void Envelope::drawFill(QCPPainter* painter, QVector<QPointF>* lines) const {
    if (painter->modes().testFlag(QCPPainter::pmVectorized)) {
        QCPGraph::drawFill(painter, lines);
        return;
    }
    QVector<Reach> reaches;
    reaches.reserve(dataCount());
    auto low = channelFillGraph()->data()->constBegin();
    const auto end = channelFillGraph()->data()->constEnd();
    for (auto high = data()->constBegin(); high != data()->constEnd() && low != end;
         ++high, ++low) {
        const QPointF top = coordsToPixels(high->key, high->value);
        reaches.push_back({top.x(), top.y(), coordsToPixels(low->key, low->value).y()});
    }
    applyFillAntialiasingHint(painter);
    painter->setPen(Qt::NoPen);
    painter->setBrush(brush());
    painter->drawRects(columns_of(reaches, QRectF(keyAxis()->axisRect()->rect())));
}

} // namespace ui::charts
