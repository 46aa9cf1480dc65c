#include "ui/print/printable.h"

#include <QAbstractItemModel>

#include <algorithm>

namespace ui::print {
namespace {

QString text_at(const QAbstractItemModel& model, int row, int column, const QModelIndex& parent) {
    return model.index(row, column, parent).data(Qt::DisplayRole).toString();
}

/// The model's columns that have a heading, in order.
std::vector<int> headed(const QAbstractItemModel& model) {
    std::vector<int> columns;
    for (int c = 0; c < model.columnCount(); ++c) {
        if (!model.headerData(c, Qt::Horizontal).toString().isEmpty()) {
            columns.push_back(c);
        }
    }
    if (columns.empty()) { // a tree shows its columns without headings
        for (int c = 0; c < model.columnCount(); ++c) {
            columns.push_back(c);
        }
    }
    return columns;
}

bool stands_right(const QAbstractItemModel& model, int column) {
    const auto align = model.headerData(column, Qt::Horizontal, Qt::TextAlignmentRole);
    return align.isValid() && (align.toInt() & Qt::AlignRight) != 0;
}

/// A column's width by its longest text: between 3 and 24 letters, so that one long remark does
/// not squeeze the numbers.
int share_of(const QAbstractItemModel& model, int column, const QModelIndex& parent) {
    qsizetype longest = model.headerData(column, Qt::Horizontal).toString().size();
    for (int row = 0; row < model.rowCount(parent); ++row) {
        longest = std::max(longest, text_at(model, row, column, parent).size());
    }
    return static_cast<int>(std::clamp<qsizetype>(longest, 3, 24));
}

Table table_of(const QAbstractItemModel& model, const QModelIndex& parent,
               const TablePaper& paper) {
    Table table;
    table.empty = paper.empty;
    const auto columns = headed(model);
    if (paper.boxes) {
        table.columns.push_back({QString(), Align::centre, 2});
    }
    for (const int c : columns) {
        table.columns.push_back({model.headerData(c, Qt::Horizontal).toString(),
                                 stands_right(model, c) ? Align::right : Align::left,
                                 share_of(model, c, parent)});
    }
    for (const auto& head : paper.pen_columns) {
        table.columns.push_back({head, Align::left, 10});
    }
    for (int row = 0; row < model.rowCount(parent); ++row) {
        std::vector<Cell> cells;
        if (paper.boxes) {
            const auto checked = model.index(row, 0, parent).data(Qt::CheckStateRole);
            cells.emplace_back(checked.toInt() == Qt::Checked ? QStringLiteral("\u2612")
                                                              : QStringLiteral("\u2610"));
        }
        for (const int c : columns) {
            cells.emplace_back(text_at(model, row, c, parent));
        }
        for (qsizetype i = 0; i < paper.pen_columns.size(); ++i) {
            cells.emplace_back(QString());
        }
        table.rows.push_back(std::move(cells));
    }
    return table;
}

} // namespace

Sheet table_sheet(const QAbstractItemModel& model, const TablePaper& paper) {
    Sheet sheet;
    sheet.title = paper.title;
    sheet.subtitle = paper.subtitle;
    sheet.landscape = model.columnCount() + paper.pen_columns.size() > 7;
    bool is_tree = false;
    for (int row = 0; row < model.rowCount(); ++row) {
        const QModelIndex upper = model.index(row, 0);
        if (model.rowCount(upper) > 0) {
            is_tree = true;
            sheet.blocks.emplace_back(Heading{upper.data(Qt::DisplayRole).toString(), 2});
            sheet.blocks.emplace_back(table_of(model, upper, paper));
        }
    }
    if (!is_tree) {
        sheet.blocks.emplace_back(table_of(model, {}, paper));
    }
    return sheet;
}

} // namespace ui::print
