#pragma once

#include "ui/edits/choice_box.h"
#include "ui/edits/day_field.h"
#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/new_batch.h"
#include "ui/presenters/own_past.h"

class QFormLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class Banner;
class SideBySide;
} // namespace ui::look

namespace ui::pages {

class PastBox;
class TakeOnBox;

/// A new batch on one page: the meat, its pieces, the weighed dry cure with its sheet, the plan.
/// The sheet and everything wrong with it follow every key press.
class NewBatchPage : public Page {
    Q_OBJECT
  public:
    NewBatchPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;

  private:
    struct PieceRow {
        QLineEdit* code;
        QLineEdit* name;
        edits::MassField* raw;
        edits::LengthField* thickness;
        edits::ChoiceBox<core::model::Form>* form;
        look::SideBySide* row = nullptr;
    };
    struct SheetRow {
        QString what;
        QStringList weights; ///< a column a piece, then all together
        QString error;
    };
    using Sheet = models::RowsModel<SheetRow>;

    void build_meat(QVBoxLayout* body);
    void build_pieces(QVBoxLayout* body);
    void build_cure(QVBoxLayout* body);
    void build_end(QVBoxLayout* body);
    void start_over();
    void add_piece();
    void remove_piece();
    void watch(QWidget* field);
    [[nodiscard]] presenters::NewBatchForm entered() const;
    void recompute();
    void show_sheet(const std::optional<core::mix::MixSheet>& sheet);
    void show_dose(const core::mix::MixSheet& sheet);
    void show_findings(const core::model::Findings& findings);
    bool validate();
    void start();
    // What own finished batches say: new_batch_past.cpp.
    void show_past();
    void use_past();
    void take_back_past();
    [[nodiscard]] QString reasons() const;

    QLineEdit* code_ = nullptr;
    QLineEdit* name_ = nullptr;
    QComboBox* product_ = nullptr;
    QLineEdit* species_ = nullptr;
    QLineEdit* supplier_ = nullptr;
    QLineEdit* lot_ = nullptr;
    edits::DayField* started_ = nullptr;
    edits::ShareField* target_ = nullptr;
    edits::ChoiceBox<core::model::ReferenceWeight>* reference_ = nullptr;
    QComboBox* plan_ = nullptr;
    QLabel* plan_words_ = nullptr;
    PastBox* past_box_ = nullptr;
    presenters::OwnPast past_;
    std::optional<presenters::PastProposal> proposal_; ///< shown now
    /// A proposal that was used, what the form then held, and what it held before.
    struct UsedPast {
        presenters::PastProposal proposal;
        std::optional<core::units::MassShare> target, salt;
        std::optional<core::units::MassShare> target_before, salt_before;
    };
    std::optional<UsedPast> used_past_;
    QVBoxLayout* piece_rows_ = nullptr;
    std::vector<PieceRow> pieces_;
    std::vector<std::string> free_codes_;
    edits::ShareField* salt_ = nullptr;
    edits::ShareField* sugar_ = nullptr;
    QComboBox* cure_ = nullptr;
    edits::ShareField* cure_dose_ = nullptr;
    edits::ShareField* nitrite_ = nullptr;
    edits::ShareField* nitrate_ = nullptr;
    QComboBox* scale_ = nullptr;
    Sheet* sheet_ = nullptr;
    Table* sheet_table_ = nullptr;
    QLabel* dose_ = nullptr;
    QVBoxLayout* findings_ = nullptr;
    TakeOnBox* take_on_ = nullptr;
    QPushButton* start_ = nullptr;
    look::Banner* wrong_ = nullptr;
    bool stopped_ = false;
    bool fresh_ = true;
};

} // namespace ui::pages
