#pragma once

#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/piece_line.h"

class QLabel;

namespace ui::pages {

/// The start weight was lost or never taken: what it probably was, with its range, the numbers
/// that follow from it, and the person's own figure where they know better.
class LostWeightDialog : public EntryDialog {
    Q_OBJECT
  public:
    LostWeightDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                     QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    void estimate();
    [[nodiscard]] std::optional<core::model::PieceEvent> entered() const;

    presenters::PieceLine line_;
    edits::DayField* day_ = nullptr;
    edits::MassField* net_ = nullptr;
    QLabel* estimate_ = nullptr;
    QLabel* preview_ = nullptr;
    QString words_; ///< of the estimate, kept in the event's note
    std::optional<core::units::Day> asked_;
};

} // namespace ui::pages
