#include "ui/models/rows_model.h"

namespace ui::models {

int RowsModelBase::row_of(qint64 id) const {
    for (int row = 0; row < rowCount(); ++row) {
        if (id_of(row) == id) {
            return row;
        }
    }
    return -1;
}

RowsFilter::RowsFilter(QObject* parent) : QSortFilterProxyModel(parent) {
    setSortRole(sort_role);
    setFilterKeyColumn(-1);
    setFilterCaseSensitivity(Qt::CaseInsensitive);
    setSortCaseSensitivity(Qt::CaseInsensitive);
    setDynamicSortFilter(true);
}

} // namespace ui::models
