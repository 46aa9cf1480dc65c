#pragma once

#include <QAbstractTableModel>
#include <QFont>
#include <QSortFilterProxyModel>
#include <QString>
#include <QVariant>
#include <functional>
#include <vector>

namespace ui::models {

/// Roles on top of Qt's own. A row's id is what a page asks the book about.
constexpr int id_role = Qt::UserRole;
constexpr int sort_role = Qt::UserRole + 1;

/// The parts of a table model that do not depend on the row's type.
class RowsModelBase : public QAbstractTableModel {
    Q_OBJECT
  public:
    using QAbstractTableModel::QAbstractTableModel;
    /// The row whose id this is; -1 when none is.
    [[nodiscard]] int row_of(qint64 id) const;
    [[nodiscard]] virtual qint64 id_of(int row) const = 0;
};

/// A read-only table over plain rows. A column says how to write a row and, where the written
/// form does not sort as people expect (weights, days), what to sort by.
template <class Row>
class RowsModel : public RowsModelBase {
  public:
    struct Column {
        QString header;
        std::function<QString(const Row&)> text;
        std::function<QVariant(const Row&)> sort; ///< empty: by the text
        bool number = false;                      ///< set to the right
        std::function<QString(const Row&)> hint;  ///< tool tip; empty: none
        std::function<bool(const Row&)> strong;   ///< written bold; empty: never
    };

    RowsModel(std::vector<Column> columns, std::function<qint64(const Row&)> id,
              QObject* parent = nullptr)
        : RowsModelBase(parent), columns_(std::move(columns)), id_(std::move(id)) {}

    void set_rows(std::vector<Row> rows) {
        beginResetModel();
        rows_ = std::move(rows);
        endResetModel();
    }
    /// Replaces one row's content, for values that arrive later (a forecast).
    void set_row(int row, Row value) {
        rows_[static_cast<std::size_t>(row)] = std::move(value);
        Q_EMIT dataChanged(index(row, 0), index(row, columnCount() - 1));
    }
    /// New columns for new units or another language; the rows stay.
    void set_columns(std::vector<Column> columns) {
        beginResetModel();
        columns_ = std::move(columns);
        endResetModel();
    }
    /// Both in one reset: a view measures its columns once.
    void set_all(std::vector<Column> columns, std::vector<Row> rows) {
        beginResetModel();
        columns_ = std::move(columns);
        rows_ = std::move(rows);
        endResetModel();
    }
    [[nodiscard]] const std::vector<Row>& rows() const { return rows_; }
    [[nodiscard]] const Row& row(int n) const { return rows_[static_cast<std::size_t>(n)]; }

    [[nodiscard]] qint64 id_of(int row) const override { return id_(this->row(row)); }
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(rows_.size());
    }
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(columns_.size());
    }
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override {
        if (!index.isValid()) {
            return {};
        }
        const Column& column = columns_[static_cast<std::size_t>(index.column())];
        const Row& row = rows_[static_cast<std::size_t>(index.row())];
        switch (role) {
        case Qt::DisplayRole:
            return column.text(row);
        case Qt::AccessibleTextRole:
            return column.header + QStringLiteral(": ") + column.text(row);
        case Qt::ToolTipRole:
            return column.hint ? QVariant(column.hint(row)) : QVariant();
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(column.number ? Qt::AlignRight | Qt::AlignVCenter
                                                     : Qt::AlignLeft | Qt::AlignVCenter);
        case Qt::FontRole: {
            QFont bold;
            bold.setWeight(QFont::DemiBold);
            return column.strong && column.strong(row) ? QVariant(bold) : QVariant();
        }
        case sort_role:
            return column.sort ? column.sort(row) : QVariant(column.text(row));
        case id_role:
            return id_(row);
        default:
            return {};
        }
    }
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation way, int role) const override {
        if (way != Qt::Horizontal || section >= columnCount()) {
            return {};
        }
        const Column& column = columns_[static_cast<std::size_t>(section)];
        if (role == Qt::DisplayRole) {
            return column.header;
        }
        if (role == Qt::TextAlignmentRole) {
            return QVariant::fromValue(column.number ? Qt::AlignRight | Qt::AlignVCenter
                                                     : Qt::AlignLeft | Qt::AlignVCenter);
        }
        return {};
    }

  private:
    std::vector<Column> columns_;
    std::vector<Row> rows_;
    std::function<qint64(const Row&)> id_;
};

/// Sorts by sort_role and filters by any column's text.
class RowsFilter : public QSortFilterProxyModel {
    Q_OBJECT
  public:
    explicit RowsFilter(QObject* parent = nullptr);
};

} // namespace ui::models
