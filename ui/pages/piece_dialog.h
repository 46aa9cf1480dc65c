#pragma once

#include "core/model/piece.h"
#include "ui/edits/choice_box.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"

class QLineEdit;

namespace ui::pages {

/// Adds a piece to a batch, or changes what is known of one.
class PieceDialog : public EntryDialog {
    Q_OBJECT
  public:
    /// A new piece of `batch`, with a code that is free.
    PieceDialog(presenters::Workspace& workspace, core::model::BatchId batch, QWidget* parent);
    PieceDialog(presenters::Workspace& workspace, const core::model::Piece& piece, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    void build();
    void fill();
    core::model::Piece piece_;
    bool fresh_;
    QLineEdit* code_ = nullptr;
    QLineEdit* name_ = nullptr;
    edits::ChoiceBox<core::model::Form>* form_ = nullptr;
    edits::LengthField* thickness_ = nullptr;
    edits::ShareField* fat_ = nullptr;
    edits::ChoiceBox<core::model::SkinSide>* skin_ = nullptr;
    edits::ShareField* target_ = nullptr;
    edits::ChoiceBox<core::model::ReferenceWeight>* reference_ = nullptr;
    edits::MassField* raw_ = nullptr;
    QComboBox* chamber_ = nullptr;
    QLineEdit* position_ = nullptr;
    edits::NumberField* order_ = nullptr;
};

/// A drop-down of the book's chambers with "none" first; data is the row, 0 for none.
QComboBox* chamber_box(presenters::Workspace& workspace, const char* object_name,
                       std::optional<core::model::ChamberId> chosen);
std::optional<core::model::ChamberId> chosen_chamber(const QComboBox* box);

} // namespace ui::pages
