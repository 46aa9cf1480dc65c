#pragma once

#include "ui/edits/choice_box.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/plan_draft.h"

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QRadioButton;

namespace ui::look {
class SideBySide;
}

namespace ui::pages {

class PlanStrip;
class TakeOnBox;

/// A plan forwards from a start or backwards from the day it should be ready: what is asked for on
/// the left, the answer on the right, the stages below.
class PlanPage : public Page {
    Q_OBJECT
  public:
    PlanPage(presenters::Workspace& workspace, QWidget* parent);
    void refresh() override;

  private:
    struct PieceRow {
        edits::MassField* weight;
        edits::LengthField* thickness;
        edits::ChoiceBox<core::model::Form>* form;
    };
    using Steps = models::RowsModel<presenters::StepLine>;

    // plan_page_form.cpp: what is asked for
    [[nodiscard]] QWidget* build_form();
    void build_when(QVBoxLayout* column);
    void build_pieces(QVBoxLayout* column);
    void add_piece();
    void remove_piece();
    void take_pieces();
    void fields_from_draft(); ///< after an offer was taken

    // plan_page.cpp: the answer
    [[nodiscard]] QWidget* build_answer();
    [[nodiscard]] QWidget* build_steps();
    [[nodiscard]] QWidget* build_accept();
    [[nodiscard]] std::vector<Steps::Column> columns() const;
    void show_answer();
    void show_findings();
    void show_offers();
    void show_steps();
    void show_choices();
    void accept();
    void save();

    presenters::PlanDraft* draft_;
    bool filling_ = false; ///< fields are being set by us, not by the person
    QComboBox* template_ = nullptr;
    QLabel* source_ = nullptr;
    QComboBox* product_ = nullptr;
    QRadioButton* forwards_ = nullptr;
    QRadioButton* backwards_ = nullptr;
    edits::DayField* day_ = nullptr;
    QCheckBox* slack_ = nullptr;
    edits::ShareField* target_ = nullptr;
    QComboBox* chamber_ = nullptr;
    QGridLayout* piece_grid_ = nullptr;
    std::vector<PieceRow> pieces_;

    QLabel* answer_ = nullptr;
    QLabel* more_ = nullptr;
    QLabel* history_ = nullptr;
    QWidget* proposal_box_ = nullptr;
    QLabel* proposal_ = nullptr;
    QPushButton* use_proposal_ = nullptr;
    QVBoxLayout* offers_ = nullptr;
    QVBoxLayout* findings_ = nullptr;
    PlanStrip* strip_ = nullptr;
    QVBoxLayout* choices_ = nullptr;
    QString choices_for_; ///< the template whose choices are shown
    Steps* steps_ = nullptr;
    Table* table_ = nullptr;
    QLabel* rules_ = nullptr;
    QWidget* accept_box_ = nullptr;
    TakeOnBox* take_on_ = nullptr;
    look::Banner* wrong_ = nullptr;
    QLineEdit* name_ = nullptr;
    QCheckBox* weighed_ = nullptr;
};

} // namespace ui::pages
