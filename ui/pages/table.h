#pragma once

#include "ui/models/rows_model.h"

#include <QTableView>

namespace ui::pages {

/// The table all pages use: whole rows, sorted by a click on a header, Enter or double-click
/// opens a row, columns as wide as their content up to a bound, the last one takes the rest.
class Table : public QTableView {
    Q_OBJECT
  public:
    Table(const char* object_name, const QString& accessible_name, QWidget* parent = nullptr);

    void show_model(models::RowsModelBase* model);
    [[nodiscard]] qint64 current_id() const; ///< 0 when no row is current
    /// Makes the row current; the first row when there is none of that id.
    void set_current_id(qint64 id);
    /// The next rows are marked from the first: another thing is shown.
    void forget_current() { kept_ = 0; }
    void set_filter(const QString& text);
    void fit_columns();
    /// Tables inside a scrolling page show all their rows instead of scrolling themselves.
    void grow_with_rows(bool grow);
    /// Shows at least so many line heights and asks for no more; spare room comes on top. For
    /// tables beside others in a page or form that scrolls where it is too low for them.
    void set_least_height(double lines);
    /// This column takes all the spare room instead of sharing it out.
    void set_filling_column(int column) { filling_ = column; }
    /// Long texts take more lines instead of being cut.
    void wrap_rows(bool wrap);
    [[nodiscard]] int shown_rows() const;
    [[nodiscard]] QSize sizeHint() const override;

  Q_SIGNALS:
    void opened(qint64 id);
    void current_changed(qint64 id);

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    models::RowsFilter* filter_;
    models::RowsModelBase* rows_ = nullptr;
    qint64 kept_ = 0; ///< the current id across a reset of the model
    bool grow_ = false;
    double least_lines_ = 0;
    int filling_ = -1;
    bool wrap_ = false;
};

} // namespace ui::pages
