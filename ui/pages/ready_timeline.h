#pragma once

#include "core/model/forecast.h"
#include "ui/text/style.h"

#include <QHeaderView>
#include <QStyledItemDelegate>
#include <functional>

namespace ui::pages {

/// The time axis shared by all rows of the hanging overview.
struct TimeWindow {
    core::units::Instant from = core::units::Instant::from_unix_seconds(0);
    core::units::Instant to = core::units::Instant::from_unix_seconds(1);
    core::units::Instant now = from;
    std::optional<core::units::Instant> asked; ///< "ready by" day
    [[nodiscard]] double x(core::units::Instant at, double width) const {
        return width * ((at - from) / (to - from));
    }
};

/// Draws one piece's way to its target: a thin line from hanging to now, filled as far as its
/// loss has come; then the interval in which it gets there, thin for 10 to 90 in 100, a mark at
/// even odds. Where the target may never be reached an open arrow leads off the axis.
class ReadyTimeline : public QStyledItemDelegate {
    Q_OBJECT
  public:
    struct Row {
        std::optional<core::units::Instant> hung;
        std::optional<double> progress; ///< loss over target, 0 to 1 and above
        std::optional<core::model::Forecast> forecast;
    };
    using Read = std::function<Row(const QModelIndex&)>;
    ReadyTimeline(Read read, QObject* parent);
    void set_window(const TimeWindow& window) { window_ = window; }
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option,
                                 const QModelIndex& index) const override;

  private:
    Read read_;
    TimeWindow window_;
};

/// A header whose last section carries the dates of the timeline below it.
class TimelineHeader : public QHeaderView {
    Q_OBJECT
  public:
    explicit TimelineHeader(QWidget* parent);
    void set_window(const TimeWindow& window, const text::Style& style);

  protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;

  private:
    TimeWindow window_;
    text::Style style_;
};

} // namespace ui::pages
