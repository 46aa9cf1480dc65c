#pragma once

#include "core/model/batch.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"

class QCheckBox;
class QComboBox;
class QLineEdit;
class QPlainTextEdit;

namespace ui::pages {

/// Changes what is known of a batch: names, origin, bought weight, price.
class BatchDialog : public EntryDialog {
    Q_OBJECT
  public:
    BatchDialog(presenters::Workspace& workspace, const core::model::Batch& batch, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::Batch batch_;
    QLineEdit* code_;
    QLineEdit* name_;
    QLineEdit* product_;
    QLineEdit* species_;
    QLineEdit* supplier_;
    QLineEdit* lot_;
    edits::DayField* started_;
    edits::MassField* bought_;
    edits::MassField* trimmed_;
    edits::NumberField* price_;
    QComboBox* state_;
    QCheckBox* frozen_;
    QPlainTextEdit* notes_;
};

} // namespace ui::pages
