#pragma once

#include "core/model/batch.h"
#include "core/model/chamber.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"

class QCheckBox;
class QLineEdit;

namespace ui::pages {

/// Adds or changes a person who signs entries.
class PersonDialog : public EntryDialog {
    Q_OBJECT
  public:
    PersonDialog(presenters::Workspace& workspace, const core::model::Person& person,
                 QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::Person person_;
    QLineEdit* name_;
    QLineEdit* initials_;
    QCheckBox* active_;
};

/// Adds or changes a scale and its step.
class ScaleDialog : public EntryDialog {
    Q_OBJECT
  public:
    ScaleDialog(presenters::Workspace& workspace, const core::model::Instrument& scale,
                QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    core::model::Instrument scale_;
    QLineEdit* name_;
    edits::MassField* step_;
    edits::NumberField* every_;
    QCheckBox* active_;
};

} // namespace ui::pages
