#include "ui/pages/table.h"

#include "ui/look/pieces.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

namespace ui::pages {

Table::Table(const char* object_name, const QString& accessible_name, QWidget* parent)
    : QTableView(parent), filter_(new models::RowsFilter(this)) {
    look::named(this, object_name, accessible_name);
    setModel(filter_);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setAlternatingRowColors(true);
    setShowGrid(false);
    setWordWrap(false);
    setTabKeyNavigation(false);
    setSortingEnabled(true);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(look::lines(this, 1.7));
    horizontalHeader()->setHighlightSections(false);
    // Column widths from the rows in sight: measuring thousands would hold up a keystroke.
    horizontalHeader()->setResizeContentsPrecision(0);
    horizontalHeader()->setObjectName(QLatin1String(object_name) + QStringLiteral("_header"));
    horizontalHeader()->setAccessibleName(accessible_name);
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        Q_EMIT opened(index.data(models::id_role).toLongLong());
    });
    connect(selectionModel(), &QItemSelectionModel::currentRowChanged, this,
            [this](const QModelIndex& now) {
                if (now.isValid()) {
                    kept_ = now.data(models::id_role).toLongLong();
                    Q_EMIT current_changed(kept_);
                }
            });
}

void Table::show_model(models::RowsModelBase* model) {
    rows_ = model;
    filter_->setSourceModel(model);
    filter_->sort(-1); // as given, until a header is clicked
    horizontalHeader()->setTextElideMode(Qt::ElideRight);
    horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    connect(model, &QAbstractItemModel::modelReset, this, [this] {
        fit_columns();
        set_current_id(kept_);
        updateGeometry();
    });
    fit_columns();
}

qint64 Table::current_id() const {
    return currentIndex().isValid() ? currentIndex().data(models::id_role).toLongLong() : 0;
}

void Table::set_current_id(qint64 id) {
    if (rows_ == nullptr || filter_->rowCount() == 0) {
        return;
    }
    const int row = rows_->row_of(id);
    const QModelIndex index =
        row < 0 ? filter_->index(0, 0) : filter_->mapFromSource(rows_->index(row, 0));
    setCurrentIndex(index.isValid() ? index : filter_->index(0, 0));
}

void Table::set_filter(const QString& text) {
    filter_->setFilterFixedString(text);
    updateGeometry();
}

int Table::shown_rows() const {
    return filter_->rowCount();
}

void Table::fit_columns() {
    auto* header = horizontalHeader();
    const int count = header->count();
    if (count == 0) {
        return;
    }
    header->setStretchLastSection(false);
    const int widest = look::lines(this, 16);
    int total = 0;
    for (int column = 0; column < count; ++column) {
        const int wanted = std::max(sizeHintForColumn(column), header->sectionSizeHint(column)) +
                           look::lines(this, 0.5);
        setColumnWidth(column, std::min(wanted, widest));
        total += columnWidth(column);
    }
    // A little too wide is better mended by shortening the widest texts than by scrolling.
    const int room = viewport()->width();
    for (int round = 0; total > room && round < count; ++round) {
        int broadest = 0;
        for (int column = 1; column < count; ++column) {
            broadest = columnWidth(column) > columnWidth(broadest) ? column : broadest;
        }
        const int least = std::max(look::lines(this, 5), header->sectionSizeHint(broadest));
        const int cut = std::min(total - room, columnWidth(broadest) - least);
        if (cut <= 0) {
            break;
        }
        setColumnWidth(broadest, columnWidth(broadest) - cut);
        total -= cut;
    }
    // Spare room is shared out, so that numbers do not end far from their names.
    const int spare = room - total;
    if (filling_ >= 0) {
        setColumnWidth(filling_, columnWidth(filling_) + std::max(0, spare));
    } else if (spare > 0) {
        for (int column = 0; column < count; ++column) {
            setColumnWidth(column, columnWidth(column) + spare / count);
        }
        header->setStretchLastSection(true);
    }
    if (wrap_) {
        resizeRowsToContents();
        for (int row = 0; row < filter_->rowCount(); ++row) {
            setRowHeight(row, rowHeight(row) + look::lines(this, 0.3)); // air between blocks
        }
    }
}

void Table::wrap_rows(bool wrap) {
    wrap_ = wrap;
    setWordWrap(wrap);
}

void Table::grow_with_rows(bool grow) {
    grow_ = grow;
    setVerticalScrollBarPolicy(grow ? Qt::ScrollBarAlwaysOff : Qt::ScrollBarAsNeeded);
    setSizePolicy(QSizePolicy::Expanding, grow ? QSizePolicy::Fixed : QSizePolicy::Expanding);
}

void Table::set_least_height(double lines) {
    least_lines_ = lines;
    setMinimumHeight(look::lines(this, lines));
    updateGeometry();
}

QSize Table::sizeHint() const {
    if (!grow_) {
        const QSize usual = QTableView::sizeHint();
        return least_lines_ > 0 ? QSize(usual.width(), minimumHeight()) : usual;
    }
    const int rows = std::max(1, filter_->rowCount());
    return {QTableView::sizeHint().width(), horizontalHeader()->sizeHint().height() +
                                                rows * verticalHeader()->defaultSectionSize() +
                                                horizontalScrollBar()->sizeHint().height() +
                                                2 * frameWidth()};
}

void Table::keyPressEvent(QKeyEvent* event) {
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) && current_id() > 0) {
        Q_EMIT opened(current_id());
        return;
    }
    QTableView::keyPressEvent(event);
}

void Table::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    fit_columns();
}

} // namespace ui::pages
