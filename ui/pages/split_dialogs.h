#pragma once

#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/piece_line.h"

class QLabel;
class QLineEdit;
class QListWidget;

namespace ui::pages {

/// Cuts a piece into two or more, each with its own weight; starts and targets follow in
/// proportion and are shown before anything is kept.
class SplitDialog : public EntryDialog {
    Q_OBJECT
  public:
    SplitDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    void add_child();
    struct Child {
        QLineEdit* code;
        edits::MassField* net;
    };
    presenters::PieceLine line_;
    edits::MassField* before_;
    std::vector<Child> children_;
    std::vector<std::string> codes_;
    QLineEdit* note_;
    QLabel* preview_;
};

/// Weighs several pieces of one batch as one from now on.
class MergeDialog : public EntryDialog {
    Q_OBJECT
  public:
    MergeDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    [[nodiscard]] std::vector<core::model::PieceId> marked() const;
    presenters::PieceLine line_;
    QListWidget* others_;
    QLineEdit* code_;
    edits::MassField* net_;
    edits::MassField* tare_;
    QLineEdit* note_;
    QLabel* preview_ = nullptr;
};

} // namespace ui::pages
