#pragma once

#include "ui/models/month_model.h"

#include <QTableView>

namespace ui::pages {

/// A month on a sheet: a cell a day, with a coloured and lettered bar for each stage and a dotted
/// line for work. Arrow keys walk the days; Page Up and Page Down the months; Home is today.
class MonthView : public QTableView {
    Q_OBJECT
  public:
    MonthView(const char* object_name, const QString& accessible_name, models::MonthModel* model,
              QWidget* parent = nullptr);
    [[nodiscard]] core::units::Day current_day() const;
    void set_current_day(core::units::Day day);

  Q_SIGNALS:
    void day_changed();
    /// -1 or 1; 0 for the month of today.
    void month_asked(int step);
    void opened();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    models::MonthModel* month_;
};

} // namespace ui::pages
