#pragma once

#include "ui/presenters/book_keeping.h"
#include "ui/text/style.h"

#include <QDialog>

class QHBoxLayout;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;

namespace ui::look {
class Banner;
}

namespace ui::pages {

/// Reads a book from end to end while it stays open, says in words what was found and offers what
/// can be done about it.
class CheckDialog : public QDialog {
    Q_OBJECT
  public:
    /// What the person chose to do next; the application does it once the dialog is closed.
    enum class Wish { none, restore, salvage };
    struct Subject {
        std::string book;
        bool may_write = true;   ///< roll-ups can be made anew
        bool may_restore = true; ///< a backup may be put in its place
    };
    CheckDialog(Subject subject, text::Style style, QWidget* parent);
    [[nodiscard]] Wish wish() const { return wish_; }
    /// For tests: the worker behind it.
    [[nodiscard]] presenters::BookKeeping& keeping() { return *keeping_; }

  Q_SIGNALS:
    /// Roll-ups were made anew: charts show something else now.
    void mended();

  public Q_SLOTS:
    void reject() override;

  private:
    void build_buttons(QHBoxLayout* row);
    void start();
    void begin(const QString& what);
    void show_report();
    void rebuild();
    void show_rebuilt();
    void choose(Wish wish);

    Subject subject_;
    text::Style style_;
    Wish wish_ = Wish::none;
    presenters::BookKeeping* keeping_;
    QProgressBar* busy_;
    look::Banner* banner_;
    QPlainTextEdit* problems_;
    QPushButton* rebuild_ = nullptr;
    QPushButton* salvage_ = nullptr;
    QPushButton* restore_ = nullptr;
    QPushButton* close_ = nullptr;
};

} // namespace ui::pages
