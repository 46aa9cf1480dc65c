#pragma once

#include "core/units/time.h"

#include <QAbstractItemModel>
#include <QString>

#include <optional>
#include <vector>

namespace ui::models {

/// The four parts of a day sheet, in the order they are shown.
enum class WorkGroup { overdue, due, coming, done };

/// What pressing the key on a line does.
enum class WorkDeed {
    tick,  ///< it is done: ticked off
    stage, ///< begins or ends the stage
    open,  ///< it is done elsewhere: opens that page
    untick ///< takes the tick back
};

/// One line of the sheet in words.
struct WorkLine {
    QString key; ///< core::planning::DayTask::key
    WorkGroup group = WorkGroup::due;
    WorkDeed deed = WorkDeed::tick;
    QString work;  ///< "Turn"
    QString what;  ///< "B07 coppa · 07 08 09"
    QString where; ///< chamber; may be empty
    QString when;  ///< "3 days late", "Sat 14 Mar"
    QString hint;  ///< what the key does, in a sentence
    QString page;  ///< for `open`: the page's id, the row and the detail
    qint64 row = 0;
    QString detail;
    std::optional<core::units::Day> due;
    qint64 batch = 0; ///< 0: of no one batch
};

/// The sheet as a tree: a heading for each group that has lines, and its lines below it.
class WorkModel : public QAbstractItemModel {
    Q_OBJECT
  public:
    enum Column { work_column, what_column, where_column, when_column, columns };
    using QAbstractItemModel::QAbstractItemModel;

    void set_lines(std::vector<WorkLine> lines);
    /// Null for a heading.
    [[nodiscard]] const WorkLine* line_at(const QModelIndex& index) const;
    /// Invalid when there is no such line.
    [[nodiscard]] QModelIndex index_of(const QString& key) const;
    /// The line after (or, at the end, before) this one that is not done yet.
    [[nodiscard]] QString neighbour(const QString& key) const;

    [[nodiscard]] QModelIndex index(int row, int column, const QModelIndex& parent) const override;
    [[nodiscard]] QModelIndex parent(const QModelIndex& index) const override;
    [[nodiscard]] int rowCount(const QModelIndex& parent) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation way, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

  private:
    struct Part {
        WorkGroup group;
        std::vector<WorkLine> lines;
    };
    [[nodiscard]] QVariant heading(const Part& part, int column, int role) const;
    std::vector<Part> parts_;
};

} // namespace ui::models
