#pragma once

#include "ui/presenters/mix_bench.h"
#include "ui/text/style.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QLineEdit;

namespace ui::pages {

/// An ingredient that is not in the catalogue, described from its label.
class MixOwnDialog : public QDialog {
    Q_OBJECT
  public:
    MixOwnDialog(const text::Style& style, QWidget* parent);
    /// What was entered; without an id, which the recipe gives. Only after it was accepted.
    [[nodiscard]] core::mix::OwnIngredient ingredient() const { return made_; }

  private:
    void take();
    void show_hint();

    text::Style style_;
    QLineEdit* name_;
    QComboBox* kind_;
    QLineEdit* label_;
    QLabel* wrong_;
    core::mix::OwnIngredient made_;
};

} // namespace ui::pages
