#pragma once

#include "ui/charts/chart_spec.h"
#include "ui/models/rows_model.h"

#include <QTableView>

namespace ui::charts {

/// A chart's content as a table: for screen readers, for reading numbers off, and for copying
/// into a spreadsheet (Ctrl+C: the marked rows, or all). Enter or a double click chooses a row.
class ChartTable : public QTableView {
    Q_OBJECT
  public:
    ChartTable(const QString& object_name, QWidget* parent = nullptr);
    void show_spec(const ChartSpec& spec);
    /// The marked rows with the heads, or all rows when fewer than two are marked.
    [[nodiscard]] QString copied() const;

  public Q_SLOTS: // NOLINT(readability-redundant-access-specifiers): moc asks for it
    void copy();

  Q_SIGNALS:
    void chosen(qint64 tag);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    models::RowsModel<ChartRow>* rows_;
    QStringList heads_;
};

} // namespace ui::charts
