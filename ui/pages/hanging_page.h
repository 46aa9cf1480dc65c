#pragma once

#include "ui/edits/day_field.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/ready_timeline.h"
#include "ui/pages/table.h"
#include "ui/presenters/hanging.h"
#include "ui/presenters/own_past.h"

class QComboBox;
class QLabel;
class QStackedWidget;

namespace ui::pages {

/// Every drying piece along one time axis, and the answer to "what is ready by this day?".
class HangingPage : public Page {
    Q_OBJECT
  public:
    HangingPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;
    std::vector<print::Printable> printables() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    using Rows = models::RowsModel<presenters::HangingLine>;
    [[nodiscard]] std::vector<Rows::Column> columns() const;
    void fill_chambers();
    void forecasts_arrived();
    void show_window();
    void answer();
    void show_past(qint64 piece);
    void fit_words();
    [[nodiscard]] std::optional<core::units::Instant> asked() const;

    QStackedWidget* stack_;
    QComboBox* chamber_;
    edits::DayField* by_;
    QLabel* answer_;
    QLabel* past_words_;
    QLabel* key_; ///< what the marks on the time axis mean
    presenters::OwnPast past_;
    Rows* rows_;
    Table* table_;
    ReadyTimeline* timeline_;
    TimelineHeader* header_;
    std::vector<presenters::HangingLine> all_;
};

} // namespace ui::pages
