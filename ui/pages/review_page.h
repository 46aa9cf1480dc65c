#pragma once

#include "ui/edits/day_field.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/review.h"

class QButtonGroup;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class PersonBox;
class PhotoStrip;

/// Is it done? Evidence side by side, contradictions first, and a decision that a person signs.
/// The page gives no verdict of its own.
class ReviewPage : public Page {
    Q_OBJECT
  public:
    ReviewPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;

  private:
    using Lines = models::RowsModel<presenters::EvidenceLine>;
    QWidget* build_evidence();
    QWidget* build_decision();
    void build_photos(QVBoxLayout* column);
    void offer_verdicts();
    void show_evidence();
    void show_photos();
    void show_decisions();
    void verdict_chosen();
    void sign();

    qint64 piece_ = 0;
    std::optional<presenters::PieceLine> line_;
    core::doneness::EvidenceSheet sheet_;
    QLabel* title_;
    QVBoxLayout* findings_;
    Lines* lines_;
    Table* table_;
    PhotoStrip* photos_;
    QLabel* no_photo_;
    QPushButton* warm_;
    QComboBox* centre_;
    QButtonGroup* verdict_;
    QPlainTextEdit* why_;
    PersonBox* person_;
    QLabel* again_label_;
    edits::DayField* again_;
    QPushButton* sign_;
    look::Banner* wrong_;
    QLabel* earlier_;
};

} // namespace ui::pages
