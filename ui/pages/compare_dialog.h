#pragma once

#include "core/model/ids.h"

#include <QDialog>
#include <vector>

class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace ui::presenters {
class Workspace;
}

namespace ui::pages {

/// Chooses pieces of the book by tick, to be drawn on one chart with `piece`.
class CompareDialog : public QDialog {
    Q_OBJECT
  public:
    CompareDialog(presenters::Workspace& workspace, core::model::PieceId piece,
                  const std::vector<core::model::PieceId>& chosen, QWidget* parent);
    [[nodiscard]] std::vector<core::model::PieceId> chosen() const;

  private:
    void fill(presenters::Workspace& workspace, core::model::PieceId piece,
              const std::vector<core::model::PieceId>& chosen);
    void show_matching(const QString& text);
    void count();
    QLineEdit* find_;
    QListWidget* list_;
    QLabel* count_;
    QPushButton* show_;
};

} // namespace ui::pages
