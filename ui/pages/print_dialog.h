#pragma once

#include "ui/print/printable.h"

#include <QDialog>
#include <optional>
#include <vector>

class QLabel;
class QListWidget;
class QPrintPreviewWidget;
class QPrinter;
class QPushButton;

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// What this page can print, with a preview: onto a printer or into a PDF file.
class PrintDialog : public QDialog {
    Q_OBJECT
  public:
    PrintDialog(presenters::Workspace& workspace, std::vector<print::Printable> printables,
                QWidget* parent);
    ~PrintDialog() override;

    /// Writes what is chosen; the sentence that says how it went.
    QString save_as(const QString& path);
    [[nodiscard]] int pages() const; ///< of what is chosen

  protected:
    void showEvent(QShowEvent* event) override;

  private:
    QWidget* build_list();
    void choose(int row);
    void save();
    void print();
    [[nodiscard]] print::PrintStamp stamp() const;

    presenters::Workspace& workspace_;
    std::vector<print::Printable> printables_;
    std::optional<print::Paper> paper_;
    std::unique_ptr<QPrinter> printer_;
    QListWidget* list_ = nullptr;
    QPrintPreviewWidget* preview_ = nullptr;
    QLabel* said_ = nullptr;
    QPushButton* save_ = nullptr;
    QPushButton* print_ = nullptr;
};

} // namespace ui::pages
