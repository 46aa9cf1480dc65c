#include "ui/look/adaptive.h"

#include "ui/look/pieces.h"

#include <QBoxLayout>
#include <QEvent>

namespace ui::look {

HeadRow::HeadRow(int spacing) {
    setSpacing(spacing);
}

HeadRow::~HeadRow() {
    qDeleteAll(items_);
}

void HeadRow::addItem(QLayoutItem* item) {
    items_.push_back(item);
}

QLayoutItem* HeadRow::takeAt(int index) {
    return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr;
}

QSize HeadRow::sizeHint() const {
    const QMargins m = contentsMargins();
    int width = 0;
    int height = 0;
    for (const auto* item : items_) {
        width += item->sizeHint().width() + spacing();
        height = std::max(height, item->sizeHint().height());
    }
    return {width + m.left() + m.right(), height + m.top() + m.bottom()};
}

QSize HeadRow::minimumSize() const {
    QSize least;
    for (const auto* item : items_) {
        least = least.expandedTo(item->minimumSize());
    }
    const QMargins m = contentsMargins();
    return {least.width() + m.left() + m.right(), least.height() + m.top() + m.bottom()};
}

int HeadRow::heightForWidth(int width) const {
    return place(QRect(0, 0, width, 0), false);
}

void HeadRow::setGeometry(const QRect& rect) {
    QLayout::setGeometry(rect);
    place(rect, true);
}

int HeadRow::place(const QRect& rect, bool really) const {
    const QRect inner = rect.marginsRemoved(contentsMargins());
    const QMargins m = contentsMargins();
    if (items_.isEmpty()) {
        return m.top() + m.bottom();
    }
    QVector<QLayoutItem*> shown;
    int rest = 0;
    for (auto* item : items_) {
        if (!item->isEmpty()) {
            shown.push_back(item);
        }
    }
    for (qsizetype i = 1; i < shown.size(); ++i) {
        rest += shown[i]->sizeHint().width() + spacing();
    }
    if (shown.isEmpty()) {
        return m.top() + m.bottom();
    }
    const QSize title = shown.front()->sizeHint();
    const bool one_line = title.width() + rest <= inner.width();
    int line_height = title.height();
    for (auto* item : shown) {
        line_height = one_line ? std::max(line_height, item->sizeHint().height()) : line_height;
    }
    int y = inner.top();
    const auto put = [&](QLayoutItem* item, int x, int width) {
        if (really) {
            const int height = item->sizeHint().height();
            item->setGeometry(QRect(x, y + (line_height - height) / 2, width, height));
        }
    };
    put(shown.front(), inner.left(), std::min(title.width(), inner.width()));
    int x = one_line ? inner.right() + 1 - rest + spacing() : inner.left();
    if (!one_line && shown.size() > 1) {
        y += line_height + spacing();
        line_height = shown[1]->sizeHint().height();
    }
    for (qsizetype i = 1; i < shown.size(); ++i) {
        const int width = std::min(shown[i]->sizeHint().width(), inner.width());
        if (!one_line && x > inner.left() && x + width > inner.right() + 1) {
            x = inner.left();
            y += line_height + spacing();
            line_height = shown[i]->sizeHint().height();
        }
        put(shown[i], x, width);
        x += width + spacing();
    }
    return y + line_height - rect.top() + m.bottom();
}

SideBySide::SideBySide(double lines, QWidget* parent)
    : QWidget(parent), box_(new QBoxLayout(QBoxLayout::LeftToRight, this)), lines_(lines) {
    box_->setContentsMargins(0, 0, 0, 0);
    box_->setSpacing(look::lines(this, 0.7));
}

void SideBySide::add(QWidget* widget, int stretch) {
    box_->addWidget(widget, stretch);
}

void SideBySide::add(QLayout* layout, int stretch) {
    box_->addLayout(layout, stretch);
}

void SideBySide::add_stretch() {
    spare_ = new QSpacerItem(0, 0, QSizePolicy::Expanding, QSizePolicy::Minimum);
    box_->addItem(spare_);
}

void SideBySide::turn() {
    const auto way =
        width() < look::lines(this, lines_) ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (box_->direction() != way) {
        box_->setDirection(way);
        if (spare_ != nullptr) { // below each other no height is to be spread
            spare_->changeSize(0, 0, QSizePolicy::Expanding, QSizePolicy::Minimum);
            box_->invalidate();
        }
    }
    // Beside each other the widgets may need more than there is: the least width must not be the
    // sum of theirs, or the page would scroll sideways before it gets to turn.
    int least = 0;
    for (int i = 0; i < box_->count(); ++i) {
        least = std::max(least, box_->itemAt(i)->minimumSize().width());
    }
    setMinimumWidth(least);
}

void SideBySide::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    turn();
}

bool SideBySide::event(QEvent* event) {
    const bool handled = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Polish) {
        turn();
    }
    return handled;
}

} // namespace ui::look
