#pragma once

#include "core/model/piece.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/pages/entry_dialog.h"
#include "ui/presenters/piece_line.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace ui::pages {

/// Enters what happened to a piece, with the numbers it changes shown before it is kept. One form
/// for all kinds; only the fields that the kind needs are there. Splits and merges have forms of
/// their own (split_dialog.h).
class EventDialog : public EntryDialog {
    Q_OBJECT
  public:
    EventDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                core::model::EventKind kind, QWidget* parent);

    /// The kinds offered in the menu, in its order.
    static const std::vector<core::model::EventKind>& kinds();
    /// One line that says what the kind is for.
    static QString hint(core::model::EventKind kind);

  protected:
    std::optional<core::actions::Command> command() override;
    void edited() override;

  private:
    void build();
    [[nodiscard]] std::optional<core::model::PieceEvent> entered() const;

    const presenters::PieceLine& line_;
    core::model::EventKind kind_;
    edits::DayField* day_ = nullptr;
    edits::ClockField* clock_ = nullptr;
    edits::MassField* net_before_ = nullptr;
    edits::MassField* net_after_ = nullptr;
    edits::MassField* tare_after_ = nullptr;
    edits::MassField* start_ = nullptr;
    QComboBox* chamber_ = nullptr;
    QLineEdit* note_ = nullptr;
    QLabel* preview_ = nullptr;
};

/// "Start 1200 g → 600 g · target 780 g → 390 g net": what a change of history does to the
/// numbers a person works with.
QString change_words(const presenters::PieceLine& before, const presenters::PieceLine& after,
                     const text::Style& style);

} // namespace ui::pages
