#pragma once

#include "ui/edits/choice_box.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/piece_line.h"

class QCheckBox;
class QLabel;
class QLineEdit;

namespace ui::pages {

/// Enters one weighing of a piece, or corrects one. What is on the scale, what the tare is and
/// what the net weight then means are shown while typing.
class WeighingDialog : public EntryDialog {
    Q_OBJECT
  public:
    /// A new weighing: state and tare as they were last time.
    WeighingDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                   QWidget* parent);
    /// A correction: the old entry stays readable. Needs a reason.
    WeighingDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                   const core::model::Weighing& corrected, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;
    [[nodiscard]] QString why() const override;

  private:
    void build(bool correction);
    [[nodiscard]] std::optional<core::model::Weighing> entered() const;
    const presenters::PieceLine& line_;
    core::model::Weighing weighing_;
    edits::MassField* on_scale_ = nullptr;
    edits::ChoiceBox<core::model::WeighedState>* state_ = nullptr;
    edits::MassField* tare_ = nullptr;
    edits::DayField* day_ = nullptr;
    edits::ClockField* clock_ = nullptr;
    QComboBox* scale_ = nullptr;
    QCheckBox* wet_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLineEdit* why_ = nullptr;
    QLabel* preview_ = nullptr;
};

/// Takes a weighing back; it stays readable. Needs a reason.
class WithdrawDialog : public EntryDialog {
    Q_OBJECT
  public:
    WithdrawDialog(presenters::Workspace& workspace, const QString& what,
                   core::actions::Command command, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    [[nodiscard]] QString why() const override;

  private:
    core::actions::Command command_;
    QLineEdit* why_;
};

/// A drop-down of the scales in use; data is the step in milligrams, absent for "not known".
QComboBox* scale_box(presenters::Workspace& workspace, const char* object_name,
                     std::optional<core::units::Mass> step);
std::optional<core::units::Mass> chosen_step(const QComboBox* box);

} // namespace ui::pages
