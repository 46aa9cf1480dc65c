#pragma once

#include "core/units/time.h"
#include "ui/text/style.h"

#include <QWidget>

#include <vector>

namespace ui::pages {

/// A plan as one strip along time: a block a stage, its name where it fits, a mark where a month
/// begins. Beside it the table of stages says the same in words.
class PlanStrip : public QWidget {
    Q_OBJECT
  public:
    struct Block {
        QString name;
        core::units::Day start;
        core::units::Day end;
        int kind = 0; ///< same kind, same colour
    };
    explicit PlanStrip(const char* object_name, QWidget* parent = nullptr);
    void show_plan(std::vector<Block> blocks, core::units::Day latest_end,
                   const text::Style& style);
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    [[nodiscard]] double x_of(core::units::Day day) const;
    void paint_months(QPainter& painter) const;
    std::vector<Block> blocks_;
    core::units::Day latest_end_ = core::units::Day::from_days_since_epoch(0);
    text::Style style_;
};

} // namespace ui::pages
