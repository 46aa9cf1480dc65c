#pragma once

#include "ui/edits/choice_box.h"
#include "ui/pages/entry_dialog.h"

class QLabel;
class QPlainTextEdit;

namespace ui::pages {

/// Adds a note, with a photo if there is one.
class NoteDialog : public EntryDialog {
    Q_OBJECT
  public:
    NoteDialog(presenters::Workspace& workspace, std::optional<core::model::PieceId> piece,
               std::optional<core::model::BatchId> batch, QWidget* parent);
    /// What the note is about, chosen beforehand.
    void set_kind(core::model::NoteKind kind) { kind_->set_value(kind); }
    /// Takes this picture file in; says in the form why it cannot, and is then false.
    bool add_photo(const QString& path);

  protected:
    std::optional<core::actions::Command> command() override;

  private:
    void choose_photo();
    core::model::Note note_;
    edits::ChoiceBox<core::model::NoteKind>* kind_;
    QPlainTextEdit* text_;
    QLabel* photo_;
};

} // namespace ui::pages
