#pragma once

#include "ui/pages/entry_dialog.h"

class QComboBox;
class QPlainTextEdit;

namespace ui::pages {

/// How a batch came out, once it is eaten: salt, texture, what to change. Kept once a batch; the
/// next batch of the product is shown what it suggests.
class OutcomeDialog : public EntryDialog {
    Q_OBJECT
  public:
    /// `before` is what was kept already.
    OutcomeDialog(presenters::Workspace& workspace, const core::model::Batch& batch,
                  const std::optional<core::model::Outcome>& before, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::BatchId batch_;
    QComboBox* salt_;
    QComboBox* texture_;
    QPlainTextEdit* words_;
};

} // namespace ui::pages
