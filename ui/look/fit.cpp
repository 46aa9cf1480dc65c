#include "ui/look/fit.h"

#include "ui/look/pieces.h"

#include <QScreen>
#include <QScrollArea>
#include <QStyle>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::look {
namespace {

/// The title bar and the frame are the system's and not known before the window is shown.
QSize room_on_screen(const QWidget* window) {
    return window->screen()->availableSize() - QSize(lines(window, 1), lines(window, 3));
}

/// Widens its window once for content that needs more than it was opened with.
class ScrolledColumn : public QScrollArea {
  public:
    using QScrollArea::QScrollArea;

  protected:
    void showEvent(QShowEvent* event) override {
        QScrollArea::showEvent(event);
        const int bar = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, this);
        const int lacking = widget()->minimumSizeHint().width() + bar - width();
        if (lacking > 0) {
            const int most = std::max(window()->width(), room_on_screen(window()).width());
            window()->resize(std::min(window()->width() + lacking, most), window()->height());
        }
    }
};

} // namespace

void resize_in_lines(QWidget* window, double wide, double high) {
    const QWidget* on = window->parentWidget() != nullptr ? window->parentWidget() : window;
    window->resize(QSize(lines(window, wide), lines(window, high)).boundedTo(room_on_screen(on)));
}

void let_scroll(QScrollArea* area, QWidget* inside) {
    inside->setProperty("look", QStringLiteral("scrolled"));
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidgetResizable(true);
    area->setWidget(inside);
}

QVBoxLayout* add_scrolled_column(QVBoxLayout* outer, const char* object_name,
                                 const QString& title) {
    auto* scroll = named(new ScrolledColumn(outer->parentWidget()), object_name, title);
    auto* inside = new QWidget;
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, lines(scroll, 0.5), 0);
    let_scroll(scroll, inside);
    outer->addWidget(scroll, 1);
    return column;
}

} // namespace ui::look
