#pragma once

#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/lost_weight.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace ui::pages {

/// A start weight was never written down: what its siblings and the air say it was, to be entered
/// as an estimate, or to be left unknown.
class LostWeightDialog : public EntryDialog {
    Q_OBJECT
  public:
    LostWeightDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                     QWidget* parent);
    [[nodiscard]] presenters::LostWeight& lost() { return lost_; }

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    void build_fields();
    void build_answer();
    void weight_chosen();
    void show_answer();
    void show_nothing_missing();
    /// Writes into the field what is not the person's own entry.
    void fill_in(std::optional<core::units::Mass> weight);
    [[nodiscard]] core::model::ReferenceWeight which() const;
    [[nodiscard]] std::optional<core::units::Instant> when() const;

    presenters::LostWeight lost_;
    bool filling_ = false;
    bool own_entry_ = false;
    std::optional<core::units::Instant> asked_;
    QComboBox* which_ = nullptr;
    edits::DayField* day_ = nullptr;
    edits::MassField* weight_ = nullptr;
    QLabel* estimate_ = nullptr;
    QPushButton* keep_ = nullptr;
};

} // namespace ui::pages
