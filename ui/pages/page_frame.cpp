#include "ui/pages/page_frame.h"

#include "ui/look/adaptive.h"
#include "ui/look/fit.h"
#include "ui/look/pieces.h"

#include <QApplication>
#include <QScrollArea>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

look::HeadRow* head_row(Page* page, const QString& title) {
    auto* head = new look::HeadRow(look::lines(page, 0.4));
    const int margin = look::lines(page, 1.0);
    head->setContentsMargins(margin, margin, margin, look::lines(page, 0.5));
    auto* label = look::page_title(title, page);
    label->setObjectName(QStringLiteral("page_title"));
    head->addWidget(label);
    return head;
}

/// A field that is given the focus by the program must not lie outside of what is seen.
void follow_focus(QScrollArea* scroll) {
    QObject::connect(qApp, &QApplication::focusChanged, scroll, [scroll](QWidget*, QWidget* now) {
        if (now != nullptr && scroll->widget()->isAncestorOf(now) &&
            now->height() < scroll->viewport()->height() / 2) {
            scroll->ensureWidgetVisible(now);
        }
    });
}

} // namespace

PageFrame frame_page(Page* page, const QString& title) {
    auto* outer = new QVBoxLayout(page);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(0);
    auto* head = head_row(page, title);
    outer->addLayout(head);
    auto* scroll = look::named(new QScrollArea(page), "page_scroll", title);
    auto* inside = new QWidget;
    auto* body = new QVBoxLayout(inside);
    const int margin = look::lines(page, 1.0);
    body->setContentsMargins(margin, look::lines(page, 0.3), margin, margin);
    body->setSpacing(look::lines(page, 0.6));
    look::let_scroll(scroll, inside);
    outer->addWidget(scroll, 1);
    follow_focus(scroll);
    return {head, body};
}

} // namespace ui::pages
