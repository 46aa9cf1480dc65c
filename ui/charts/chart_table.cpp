#include "ui/charts/chart_table.h"

#include "ui/look/pieces.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>

#include <algorithm>

namespace ui::charts {

ChartTable::ChartTable(const QString& object_name, QWidget* parent)
    : QTableView(parent), rows_(new models::RowsModel<ChartRow>(
                              {}, [](const ChartRow& r) { return r.tag; }, this)) {
    setObjectName(object_name);
    setAccessibleName(tr("The chart as a table"));
    setModel(rows_);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::ExtendedSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setAlternatingRowColors(true);
    setShowGrid(false);
    setWordWrap(false);
    setTabKeyNavigation(false);
    verticalHeader()->hide();
    verticalHeader()->setDefaultSectionSize(look::lines(this, 1.6));
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setResizeContentsPrecision(50); // a long log is not measured row by row
    horizontalHeader()->setObjectName(object_name + QStringLiteral("_header"));
    connect(this, &QTableView::doubleClicked, this, [this](const QModelIndex& index) {
        const qint64 tag = rows_->id_of(index.row());
        if (tag > 0) {
            Q_EMIT chosen(tag);
        }
    });
}

void ChartTable::show_spec(const ChartSpec& spec) {
    setAccessibleName(tr("%1, as a table").arg(spec.title));
    horizontalHeader()->setAccessibleName(accessibleName());
    heads_ = QStringList{tr("Curve")} +
             (spec.columns.isEmpty() ? QStringList{tr("Reading")} : spec.columns);
    std::vector<models::RowsModel<ChartRow>::Column> columns = {
        {heads_.front(), [](const ChartRow& r) { return r.series; }, {}, false, {}, {}}};
    for (int n = 1; n < heads_.size(); ++n) {
        columns.push_back({heads_[n],
                           [n](const ChartRow& r) { return r.cells.value(n - 1); },
                           {},
                           false,
                           {},
                           {}});
    }
    const auto rows = rows_of(spec);
    rows_->set_all(std::move(columns), {rows.begin(), rows.end()});
    resizeColumnsToContents();
    horizontalHeader()->setStretchLastSection(true);
}

QString ChartTable::copied() const {
    auto marked = selectionModel()->selectedRows();
    QVector<ChartRow> rows;
    if (marked.size() > 1) {
        std::sort(marked.begin(), marked.end());
        for (const auto& index : marked) {
            rows.push_back(rows_->row(index.row()));
        }
    } else {
        rows = {rows_->rows().begin(), rows_->rows().end()};
    }
    return pasted(heads_, rows);
}

void ChartTable::copy() {
    QGuiApplication::clipboard()->setText(copied());
}

void ChartTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Copy)) {
        copy();
        return;
    }
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
        currentIndex().isValid() && rows_->id_of(currentIndex().row()) > 0) {
        Q_EMIT chosen(rows_->id_of(currentIndex().row()));
        return;
    }
    QTableView::keyPressEvent(event);
}

} // namespace ui::charts
