#include "ui/pages/month_view.h"

#include "ui/look/pieces.h"
#include "ui/look/theme.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace ui::pages {
namespace {

using models::DayEntry;
using models::MonthModel;

QColor series_colour(int series) {
    const auto& colours = look::chart_colours(look::tokens().dark);
    return colours[static_cast<std::size_t>(std::max(0, series)) % colours.size()];
}

/// Paints a day: its number, then as many entries as fit, then how many more there are.
class DayPainter : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override {
        const auto& colours = look::tokens();
        const bool in_month = index.data(MonthModel::in_month_role).toBool();
        const bool today = index.data(MonthModel::today_role).toBool();
        const bool chosen = option.state.testFlag(QStyle::State_Selected);
        painter->save();
        painter->fillRect(option.rect, chosen     ? colours.selection
                                       : in_month ? colours.surface
                                                  : colours.sunk);
        const QFontMetrics metrics(option.font);
        const int pad = metrics.height() / 4;
        QRect rest = option.rect.adjusted(pad, pad, -pad, -pad);
        draw_number(painter, option, index, rest, today, in_month);
        rest.setTop(rest.top() + metrics.height() + 1);
        const auto* model = qobject_cast<const MonthModel*>(index.model());
        if (model != nullptr) {
            draw_entries(painter, option, model->entries_at(index), rest, index.column() == 0);
        }
        if (option.state.testFlag(QStyle::State_HasFocus)) {
            painter->setPen(QPen(colours.accent, 2));
            painter->drawRect(option.rect.adjusted(1, 1, -1, -1));
        }
        painter->restore();
    }

  private:
    static void draw_number(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index, const QRect& rest, bool today,
                            bool in_month) {
        const auto& colours = look::tokens();
        QFont font = option.font;
        font.setBold(today);
        painter->setFont(font);
        painter->setPen(today ? colours.accent : in_month ? colours.text : colours.muted);
        const QString number = index.data().toString();
        painter->drawText(rest, Qt::AlignTop | Qt::AlignLeft, number);
        if (today) { // bold and underlined: not by colour alone
            const QFontMetrics metrics(font);
            const int below = rest.top() + metrics.height();
            painter->drawLine(rest.left(), below, rest.left() + metrics.horizontalAdvance(number),
                              below);
        }
    }

    static void draw_entries(QPainter* painter, const QStyleOptionViewItem& option,
                             const std::vector<DayEntry>& entries, const QRect& rest,
                             bool first_of_week) {
        const auto& colours = look::tokens();
        QFont font = option.font;
        font.setPointSizeF(font.pointSizeF() * 0.85);
        painter->setFont(font);
        const QFontMetrics metrics(font);
        const int line = metrics.height() + 2;
        const int room = std::max(0, rest.height() / line);
        int needed = 0;
        for (const auto& entry : entries) {
            needed = std::max(needed, entry.lane + 1);
        }
        const int lanes = needed <= room ? room : std::max(0, room - 1);
        int hidden = 0;
        for (const auto& entry : entries) {
            if (entry.lane >= lanes) {
                ++hidden;
                continue;
            }
            const QRect box(rest.left(), rest.top() + entry.lane * line, rest.width(), line - 2);
            entry.span != 0 ? draw_span(painter, metrics, entry, box, option.rect, first_of_week)
                            : draw_work(painter, metrics, entry, box);
        }
        if (hidden > 0 && room > 0) {
            painter->setPen(colours.muted);
            painter->drawText(QRect(rest.left(), rest.top() + lanes * line, rest.width(), line),
                              Qt::AlignLeft, MonthView::tr("%1 more").arg(hidden));
        }
    }

    /// A stage: a tinted band through all its days with its name where it begins or the week does.
    static void draw_span(QPainter* painter, const QFontMetrics& metrics, const DayEntry& entry,
                          const QRect& box, const QRect& cell, bool first_of_week) {
        const QColor colour = series_colour(entry.series);
        QColor tint = colour;
        tint.setAlphaF(look::tokens().dark ? 0.30F : 0.22F);
        QRect band = box;
        band.setLeft(entry.begins ? box.left() : cell.left());
        band.setRight(entry.ends ? box.right() : cell.right());
        painter->fillRect(band, tint);
        if (entry.begins) {
            painter->fillRect(QRect(band.left(), band.top(), 3, band.height()), colour);
        }
        if (!entry.begins && !first_of_week) {
            return;
        }
        painter->setPen(look::tokens().text);
        const QRect words = band.adjusted(metrics.height() / 2, 0, -2, 0);
        painter->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                          metrics.elidedText(entry.short_title, Qt::ElideRight, words.width()));
    }

    /// Work of the day: an open mark and its name.
    static void draw_work(QPainter* painter, const QFontMetrics& metrics, const DayEntry& entry,
                          const QRect& box) {
        const int side = metrics.height() / 2;
        const QRect mark(box.left() + 1, box.center().y() - side / 2, side, side);
        painter->setPen(
            QPen(entry.series != 0 ? series_colour(entry.series) : look::tokens().muted, 1.5));
        painter->setBrush(Qt::NoBrush);
        painter->drawRect(mark);
        painter->setPen(look::tokens().text);
        const QRect words = box.adjusted(side + 5, 0, 0, 0);
        painter->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
                          metrics.elidedText(entry.short_title, Qt::ElideRight, words.width()));
    }
};

} // namespace

MonthView::MonthView(const char* object_name, const QString& accessible_name,
                     models::MonthModel* model, QWidget* parent)
    : QTableView(parent), month_(model) {
    look::named(this, object_name, accessible_name);
    setModel(model);
    setItemDelegate(new DayPainter(this));
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setTabKeyNavigation(false);
    setCornerButtonEnabled(false);
    verticalHeader()->hide();
    horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    horizontalHeader()->setSectionsClickable(false);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { Q_EMIT day_changed(); });
    connect(this, &QTableView::doubleClicked, this, [this] { Q_EMIT opened(); });
}

core::units::Day MonthView::current_day() const {
    return month_->day_at(currentIndex());
}

void MonthView::set_current_day(core::units::Day day) {
    setCurrentIndex(month_->index_of(day));
}

void MonthView::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_PageUp:
        Q_EMIT month_asked(-1);
        return;
    case Qt::Key_PageDown:
        Q_EMIT month_asked(1);
        return;
    case Qt::Key_Home:
        Q_EMIT month_asked(0);
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        Q_EMIT opened();
        return;
    default:
        QTableView::keyPressEvent(event);
    }
}

void MonthView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    // Whole weeks in the room there is: six rows of equal height.
    const int rows = month_->rowCount();
    const int height = viewport()->height() / std::max(1, rows);
    for (int row = 0; row < rows; ++row) {
        setRowHeight(row, std::max(look::lines(this, 2), height));
    }
}

} // namespace ui::pages
