#pragma once

#include "ui/models/rows_model.h"
#include "ui/presenters/book_keeping.h"
#include "ui/text/style.h"

#include <QDialog>

class QVBoxLayout;
class QProgressBar;
class QPushButton;

namespace ui::look {
class Banner;
}

namespace ui::pages {

class Table;

/// Chooses a backup to put in the place of a book: the rotating ones, or any file. Says what would
/// be lost and brought back before it may be accepted. Changes nothing itself: the book must be
/// closed first, which is the application's to do.
class RestoreDialog : public QDialog {
    Q_OBJECT
  public:
    RestoreDialog(std::string book, text::Style style, QWidget* parent);
    /// Adds a file to the list and looks at it.
    void add_file(const QString& path);
    /// The backup to restore, once accepted.
    [[nodiscard]] const std::string& backup() const { return backup_; }
    /// For tests: the worker behind the list.
    [[nodiscard]] presenters::BookKeeping& keeping() { return *keeping_; }

  public Q_SLOTS: // NOLINT(readability-redundant-access-specifiers): moc asks for it
    void accept() override;

  private:
    struct Row {
        core::services::BookSummary summary;
        qint64 id = 0;
    };
    using Rows = models::RowsModel<Row>;
    void build_table(QVBoxLayout* column);
    [[nodiscard]] std::vector<Rows::Column> columns() const;
    void fill();
    void browse();
    void look_at(qint64 id);
    void show_preview();

    std::string book_;
    text::Style style_;
    std::string backup_;
    presenters::BookKeeping* keeping_;
    Rows* rows_ = nullptr;
    Table* table_ = nullptr;
    look::Banner* banner_;
    QProgressBar* busy_;
    QPushButton* restore_;
};

} // namespace ui::pages
