#pragma once

#include "core/model/pack.h"
#include "ui/edits/choice_box.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;

namespace ui::pages {

class KeepByFields;

/// Packs a finished piece, or part of it.
class PackDialog : public EntryDialog {
    Q_OBJECT
  public:
    /// `piece` is chosen beforehand where it is known.
    PackDialog(presenters::Workspace& workspace, std::optional<core::model::PieceId> piece,
               QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    [[nodiscard]] QString why() const override;
    void edited() override;

  private:
    void piece_chosen();
    void offer_rules();
    QComboBox* piece_;
    QLineEdit* code_;
    edits::ChoiceBox<core::model::PackKind>* kind_;
    edits::MassField* weight_;
    edits::DayField* packed_;
    KeepByFields* keep_ = nullptr;
    QLineEdit* place_;
};

/// Changes kind, place and dates of a pack.
class PackChangeDialog : public EntryDialog {
    Q_OBJECT
  public:
    PackChangeDialog(presenters::Workspace& workspace, const core::model::Pack& pack,
                     QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    [[nodiscard]] QString why() const override;
    void edited() override;

  private:
    core::model::Pack pack_;
    QLineEdit* code_;
    edits::ChoiceBox<core::model::PackKind>* kind_;
    QLineEdit* place_;
    edits::DayField* opened_;
    KeepByFields* keep_ = nullptr;
};

/// Takes something out of a pack: used, given, sold, thrown out, counted; or hung again, which
/// makes it a piece that dries on.
class TakeDialog : public EntryDialog {
    Q_OBJECT
  public:
    TakeDialog(presenters::Workspace& workspace, const core::model::Pack& pack, QWidget* parent);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    void build_hanging();
    [[nodiscard]] std::optional<core::units::Mass> amount() const;
    core::model::Pack pack_;
    edits::ChoiceBox<core::model::MoveKind>* kind_;
    edits::MassField* amount_;
    QCheckBox* all_;
    QLineEdit* to_whom_;
    QLineEdit* note_;
    QLineEdit* new_code_ = nullptr;
    QLabel* what_ = nullptr;
};

} // namespace ui::pages
