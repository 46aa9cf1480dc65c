#pragma once

#include "ui/presenters/mix_bench.h"

#include <QWidget>
#include <vector>

class QCheckBox;
class QComboBox;
class QGridLayout;
class QLabel;
class QLineEdit;
class QToolButton;

namespace ui::pages {

/// The recipe's lines as a grid of fields: ingredient, amount, what it is a share of, what the
/// label says, and whether the solver must leave it alone.
class MixLines : public QWidget {
    Q_OBJECT
  public:
    explicit MixLines(QWidget* parent = nullptr);

    void set_lines(const std::vector<presenters::MixLineEntry>& lines,
                   const std::vector<core::mix::OwnIngredient>& own);
    [[nodiscard]] std::vector<presenters::MixLineEntry> lines() const;
    void add_line(const QString& ingredient = {});
    /// One sentence below a line's fields, empty to take it away.
    void show_fault(int line, const QString& sentence);
    void clear_faults();

  Q_SIGNALS:
    void edited();

  private:
    struct Row {
        QComboBox* ingredient;
        QLineEdit* amount;
        QComboBox* basis;
        QLineEdit* label;
        QCheckBox* held;
        QToolButton* remove;
        QLabel* fault;
    };
    void build_heads();
    void make_row(const presenters::MixLineEntry& entry);
    void remove_row(std::size_t index);
    void fill_ingredients(QComboBox* box) const;
    void show_hint(const Row& row) const;

    QGridLayout* grid_;
    std::vector<Row> rows_;
    std::vector<presenters::IngredientChoice> choices_;
    /// Of each row, as it came: what the fields do not show (wash, note, rub) is kept from here.
    std::vector<presenters::MixLineEntry> came_as_;
};

} // namespace ui::pages
