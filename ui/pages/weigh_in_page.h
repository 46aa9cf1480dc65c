#pragma once

#include "ui/edits/quantity_fields.h"
#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/weigh_round.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;

namespace ui::look {
class Banner;
}

namespace ui::pages {

/// The weigh-in round: the pieces in hanging order on the left, the one whose turn it is in
/// large on the right. A number and Enter is all a piece needs; PageDown passes it over.
class WeighInPage : public Page {
    Q_OBJECT
  public:
    WeighInPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;
    std::vector<print::Printable> printables() override;

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    using Rows = models::RowsModel<presenters::RoundLine>;
    [[nodiscard]] std::vector<Rows::Column> columns() const;
    QWidget* build_list();
    QWidget* build_entry();
    void fill_chambers();
    void show_round();
    void show_current();
    void enter();
    void pass_over();

    presenters::WeighRound* round_;
    QStackedWidget* stack_;
    QComboBox* chamber_;
    QComboBox* scale_;
    Rows* rows_;
    Table* table_;
    QLabel* progress_;
    QLabel* piece_;
    QLabel* place_label_;
    QLabel* last_;
    QLabel* expected_;
    edits::MassField* entry_;
    edits::MassField* tare_;
    QCheckBox* wet_;
    QLineEdit* note_;
    look::Banner* question_;
    look::Banner* result_;
    QPushButton* keep_;
    qint64 shown_piece_ = 0;
};

} // namespace ui::pages
