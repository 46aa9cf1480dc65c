#pragma once

#include "ui/models/rows_model.h"
#include "ui/presenters/book_keeping.h"
#include "ui/presenters/keeping_words.h"
#include "ui/text/style.h"

#include <QDialog>

class QVBoxLayout;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class Table;

/// Carries what can be read of a damaged book into a new one and shows what came over, kind by
/// kind. The damaged book is not changed. Accepted: the person wants to open the new book.
class SalvageDialog : public QDialog {
    Q_OBJECT
  public:
    SalvageDialog(std::string damaged, text::Style style, core::units::Instant now,
                  QWidget* parent);
    /// The new book.
    [[nodiscard]] QString target() const;
    /// For tests: the worker behind the form.
    [[nodiscard]] presenters::BookKeeping& keeping() { return *keeping_; }

  public Q_SLOTS: // NOLINT(readability-redundant-access-specifiers): moc asks for it
    void reject() override;

  private:
    using Lines = models::RowsModel<presenters::SalvageLine>;
    void build_file(QVBoxLayout* column);
    void build_table(QVBoxLayout* column);
    void browse();
    void start();
    void show_report();

    std::string damaged_;
    text::Style style_;
    core::units::Instant now_;
    presenters::BookKeeping* keeping_;
    QLineEdit* file_ = nullptr;
    QPushButton* choose_ = nullptr;
    Lines* lines_ = nullptr;
    Table* table_ = nullptr;
    look::Banner* banner_;
    QProgressBar* busy_;
    QPushButton* close_;
    QPushButton* start_;
    QPushButton* open_;
};

} // namespace ui::pages
