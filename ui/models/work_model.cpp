#include "ui/models/work_model.h"

#include <QFont>

#include <algorithm>

namespace ui::models {
namespace {

/// Internal ids: a heading has none, a line has its part's number plus one.
constexpr quintptr heading_id = 0;

QString group_words(WorkGroup group) {
    switch (group) {
    case WorkGroup::overdue:
        return WorkModel::tr("Overdue");
    case WorkGroup::due:
        return WorkModel::tr("Today");
    case WorkGroup::coming:
        return WorkModel::tr("Coming");
    case WorkGroup::done:
        return WorkModel::tr("Done today");
    }
    return {};
}

} // namespace

void WorkModel::set_lines(std::vector<WorkLine> lines) {
    beginResetModel();
    parts_.clear();
    for (const auto group :
         {WorkGroup::overdue, WorkGroup::due, WorkGroup::coming, WorkGroup::done}) {
        Part part{group, {}};
        for (auto& line : lines) {
            if (line.group == group) {
                part.lines.push_back(std::move(line));
            }
        }
        if (!part.lines.empty()) {
            parts_.push_back(std::move(part));
        }
    }
    endResetModel();
}

const WorkLine* WorkModel::line_at(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == heading_id) {
        return nullptr;
    }
    return &parts_[index.internalId() - 1].lines[static_cast<std::size_t>(index.row())];
}

QModelIndex WorkModel::index_of(const QString& key) const {
    for (std::size_t p = 0; p < parts_.size(); ++p) {
        for (std::size_t l = 0; l < parts_[p].lines.size(); ++l) {
            if (parts_[p].lines[l].key == key) {
                return createIndex(static_cast<int>(l), 0, quintptr{p} + 1);
            }
        }
    }
    return {};
}

QString WorkModel::neighbour(const QString& key) const {
    QString before;
    bool passed = false;
    for (const auto& part : parts_) {
        for (const auto& line : part.lines) {
            if (line.key == key) {
                passed = true;
            } else if (line.deed != WorkDeed::untick) {
                if (passed) {
                    return line.key;
                }
                before = line.key;
            }
        }
    }
    return before;
}

QModelIndex WorkModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) {
        return {};
    }
    return createIndex(row, column,
                       parent.isValid() ? static_cast<quintptr>(parent.row() + 1) : heading_id);
}

QModelIndex WorkModel::parent(const QModelIndex& index) const {
    if (!index.isValid() || index.internalId() == heading_id) {
        return {};
    }
    return createIndex(static_cast<int>(index.internalId() - 1), 0, heading_id);
}

int WorkModel::rowCount(const QModelIndex& parent) const {
    if (!parent.isValid()) {
        return static_cast<int>(parts_.size());
    }
    if (parent.internalId() != heading_id || parent.column() != 0) {
        return 0;
    }
    return static_cast<int>(parts_[static_cast<std::size_t>(parent.row())].lines.size());
}

int WorkModel::columnCount(const QModelIndex&) const {
    return columns;
}

QVariant WorkModel::heading(const Part& part, int column, int role) const {
    if (role == Qt::FontRole) {
        QFont font;
        font.setBold(true);
        return font;
    }
    if (column == 0 && (role == Qt::DisplayRole || role == Qt::AccessibleTextRole)) {
        //: a heading of the day sheet and how many lines it has
        return tr("%1 · %2").arg(group_words(part.group)).arg(part.lines.size());
    }
    return {};
}

QVariant WorkModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) {
        return {};
    }
    const WorkLine* line = line_at(index);
    if (line == nullptr) {
        return heading(parts_[static_cast<std::size_t>(index.row())], index.column(), role);
    }
    if (role == Qt::CheckStateRole && index.column() == work_column &&
        line->deed != WorkDeed::open) {
        return line->deed == WorkDeed::untick ? Qt::Checked : Qt::Unchecked;
    }
    if (role == Qt::ToolTipRole) {
        return line->hint;
    }
    if (role == Qt::AccessibleTextRole && index.column() == work_column) {
        QStringList parts{line->work, line->what, line->where, line->when, line->hint};
        parts.removeAll(QString());
        return parts.join(QStringLiteral(", "));
    }
    if (role == Qt::DisplayRole || role == Qt::AccessibleTextRole) {
        switch (index.column()) {
        case work_column:
            // A line that is done on another page says so by its mark.
            return line->deed == WorkDeed::open ? line->work + QStringLiteral(" ›") : line->work;
        case what_column:
            return line->what;
        case where_column:
            return line->where;
        case when_column:
            return line->when;
        default:
            return {};
        }
    }
    return {};
}

QVariant WorkModel::headerData(int section, Qt::Orientation way, int role) const {
    if (way != Qt::Horizontal || role != Qt::DisplayRole) {
        return {};
    }
    switch (section) {
    case work_column:
        return tr("Work");
    case what_column:
        return tr("Batch and pieces");
    case where_column:
        return tr("Where");
    case when_column:
        return tr("When");
    default:
        return {};
    }
}

Qt::ItemFlags WorkModel::flags(const QModelIndex& index) const {
    if (line_at(index) == nullptr) {
        return Qt::ItemIsEnabled; // a heading is read, not chosen
    }
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace ui::models
