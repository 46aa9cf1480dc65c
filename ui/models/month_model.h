#pragma once

#include "core/units/time.h"

#include <QAbstractTableModel>
#include <QLocale>
#include <QString>

#include <functional>
#include <vector>

namespace ui::models {

/// One thing on one day of the calendar.
struct DayEntry {
    QString title;       ///< "B07 coppa: Cure"
    QString short_title; ///< "B07 Cure": for the cell
    int series = 0;      ///< same number, same colour: one a batch
    bool task = false;   ///< work of that day, not a stage that lasts
    bool begins = false;
    bool ends = false;
    qint64 span = 0; ///< what lasts over several days, the same on each; 0: this day only
    int lane = 0;    ///< set by the model: a span keeps its lane through a week
    qint64 batch = 0;
};

/// A month as six weeks of seven days, from the language's first day of the week. Arrow keys of a
/// table view walk it day by day; every cell says its day and what is on it.
class MonthModel : public QAbstractTableModel {
    Q_OBJECT
  public:
    enum Role { day_role = Qt::UserRole, in_month_role, today_role, entries_role };
    explicit MonthModel(const QLocale& locale, QObject* parent = nullptr);

    /// The entries of a day come from `entries`, asked once a day shown.
    void show_month(int year, int month, core::units::Day today,
                    const std::function<std::vector<DayEntry>(core::units::Day)>& entries);
    [[nodiscard]] int year() const { return year_; }
    [[nodiscard]] int month() const { return month_; }
    [[nodiscard]] core::units::Day first_shown() const { return first_; }
    [[nodiscard]] core::units::Day day_at(const QModelIndex& index) const;
    /// Invalid when the day is not shown.
    [[nodiscard]] QModelIndex index_of(core::units::Day day) const;
    [[nodiscard]] const std::vector<DayEntry>& entries_at(const QModelIndex& index) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation way, int role) const override;

  private:
    void set_lanes(int week);
    QLocale locale_;
    int year_ = 2000;
    int month_ = 1;
    core::units::Day first_ = core::units::Day::from_days_since_epoch(0);
    core::units::Day today_ = core::units::Day::from_days_since_epoch(0);
    std::vector<std::vector<DayEntry>> cells_;
};

} // namespace ui::models
