#pragma once

#include "core/model/batch.h"
#include "core/model/finding.h"
#include "ui/pages/entry_dialog.h"

class QComboBox;
class QLineEdit;

namespace ui::pages {

class PersonBox;

/// Puts the recipe on the bench into the book as the one a batch was salted with, together with
/// the cautions that were taken on for it, signed by a person.
class MixUseDialog : public EntryDialog {
    Q_OBJECT
  public:
    MixUseDialog(presenters::Workspace& workspace, core::model::RecipeVersionId version,
                 const QString& recipe, core::model::Findings cautions, QWidget* parent);
    /// What is still to be put into the book after the dialog was accepted: one action each, as a
    /// person takes each caution on by itself.
    [[nodiscard]] const std::vector<core::model::Acceptance>& acceptances() const {
        return accepted_entries_;
    }

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::RecipeVersionId version_;
    core::model::Findings cautions_;
    std::vector<core::model::Acceptance> accepted_entries_;
    QComboBox* batch_;
    PersonBox* person_;
    QLineEdit* why_;
};

} // namespace ui::pages
