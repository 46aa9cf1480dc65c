#pragma once

#include "ui/models/rows_model.h"
#include "ui/pages/page.h"
#include "ui/pages/table.h"
#include "ui/presenters/piece_line.h"

#include <QHash>

class QAction;
class QCheckBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QStackedWidget;
class QVBoxLayout;

namespace ui::pages {

/// All batches, and the pieces of the one that is marked.
class BatchesPage : public Page {
    Q_OBJECT
  public:
    BatchesPage(presenters::Workspace& workspace, QWidget* parent);
    void arrive(const Place& place) override;
    void refresh() override;
    std::vector<print::Printable> printables() override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    using BatchRows = models::RowsModel<core::services::BatchOverview>;
    using PieceRows = models::RowsModel<presenters::PieceLine>;
    [[nodiscard]] std::vector<BatchRows::Column> batch_columns() const;
    [[nodiscard]] std::vector<PieceRows::Column> piece_columns() const;
    void build_body(QVBoxLayout* body);
    QPushButton* build_more();
    void show_batch(qint64 row);
    // How a batch came out: batches_page_outcome.cpp.
    void show_outcome(const core::model::Batch& batch,
                      const std::vector<presenters::PieceLine>& lines);
    void record_outcome();
    void forecasts_arrived();
    /// True when one was added.
    bool add_forecasts(std::vector<presenters::PieceLine>& lines) const;

    QStackedWidget* stack_;
    QWidget* lower_; ///< the marked batch, below the list of all
    QLineEdit* find_;
    QCheckBox* with_closed_;
    BatchRows* batches_;
    PieceRows* pieces_;
    Table* batch_table_;
    Table* piece_table_;
    QLabel* batch_title_;
    QLabel* batch_facts_;
    QPushButton* add_piece_;
    QPushButton* change_;
    QAction* outcome_;
    QAction* compare_;
    QLabel* outcome_words_;
    QHash<qint64, QString> chambers_;
    qint64 batch_ = 0;
};

} // namespace ui::pages
