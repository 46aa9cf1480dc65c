#pragma once

#include "core/services/planning_desk.h"
#include "ui/models/work_model.h"

#include <QObject>
#include <QString>
#include <memory>
#include <vector>

namespace ui::presenters {

class Workspace;

using models::WorkDeed;
using models::WorkGroup;
using models::WorkLine;

/// The day sheet for the window: read from the book, put into words, ticked in the book.
class DayWork : public QObject {
    Q_OBJECT
  public:
    explicit DayWork(Workspace& workspace, QObject* parent = nullptr);
    void set_horizon(int days) { horizon_days_ = days; }

    /// Reads the book, with the forecasts known by now.
    void load();
    /// Asks for the forecasts of all that hangs; Workspace::forecasts().arrived() tells when a
    /// load() would know more.
    void ask_forecasts();
    /// The forecasts the workspace has at hand, for core::services.
    static core::services::ForecastSource at_hand(Workspace& workspace);
    [[nodiscard]] const std::vector<WorkLine>& lines() const { return lines_; }
    [[nodiscard]] int count(WorkGroup group) const;
    /// "2 overdue, 5 today, 3 done".
    [[nodiscard]] QString headline() const;

    /// Does the line's deed in the book. False when it is done elsewhere (`open`) or failed.
    bool do_line(const QString& key);
    /// Ticks a line that is done elsewhere without doing it: it comes back next time.
    bool leave_out(const QString& key);

  private:
    void write(const core::planning::DayTask& task, WorkGroup group);
    void write_target(const core::planning::DayTask& task, WorkLine& line) const;
    [[nodiscard]] QString what_of(const core::planning::DayTask& task) const;
    [[nodiscard]] QString when_of(const core::planning::DayTask& task, WorkGroup group) const;
    [[nodiscard]] const core::planning::DayTask* task(const QString& key) const;
    bool tick(const core::planning::DayTask& task);

    struct Names;
    Workspace& workspace_;
    int horizon_days_ = 7;
    core::planning::DaySheet sheet_;
    std::vector<WorkLine> lines_;
    std::shared_ptr<Names> names_;
};

} // namespace ui::presenters
