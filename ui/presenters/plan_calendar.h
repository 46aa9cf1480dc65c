#pragma once

#include "core/services/calendar_file.h"
#include "core/services/planning_desk.h"
#include "ui/models/month_model.h"
#include "ui/presenters/day_work.h"

#include <QObject>

#include <map>
#include <optional>
#include <vector>

namespace ui::presenters {

class Workspace;

/// Stages and daily work of all open batches, day by day.
class PlanCalendar : public QObject {
    Q_OBJECT
  public:
    explicit PlanCalendar(Workspace& workspace, QObject* parent = nullptr);

    /// Reads the book. Work is listed up to `until`; stages as far as they are planned.
    void load(core::units::Day until);
    [[nodiscard]] const std::vector<models::DayEntry>& entries(core::units::Day day) const;
    [[nodiscard]] bool is_empty() const { return lines_.empty(); }
    /// The whole calendar as an iCalendar file.
    [[nodiscard]] std::optional<QByteArray> file() const;

    /// What tells this book's entries from another's in a calendar; kept with the book on first
    /// use, so that later exports replace the earlier ones.
    static QString mark_of(Workspace& workspace);

  private:
    void add_stages(const std::vector<core::model::Stage>& stages);
    void add_work(const DayWork& work);

    Workspace& workspace_;
    std::map<core::model::BatchId, core::model::Batch> batches_;
    std::map<core::units::Day, std::vector<models::DayEntry>> days_;
    std::vector<core::services::CalendarLine> lines_;
};

} // namespace ui::presenters
