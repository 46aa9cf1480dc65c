#pragma once

#include "ui/presenters/own_past.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ui::pages {

/// What the user's own finished pieces say to the batch being made: how long they took, and the
/// last outcome's proposal with one button that applies it, and then takes it back. It changes
/// nothing by itself. Hidden while there is nothing to say.
class PastBox : public QWidget {
    Q_OBJECT
  public:
    explicit PastBox(const QByteArray& object_name, QWidget* parent = nullptr);

    void show_past(const QString& history, const std::optional<presenters::PastProposal>& proposal);
    /// After use: the button takes back, and `what` says what was changed and why. Empty: not used.
    void set_used(const QString& what);
    [[nodiscard]] bool is_used() const { return used_; }

  Q_SIGNALS:
    void use();
    void take_back();

  private:
    void show_button();
    QLabel* history_;
    QLabel* proposal_;
    QLabel* done_;
    QPushButton* button_;
    bool usable_ = false;
    bool used_ = false;
};

} // namespace ui::pages
