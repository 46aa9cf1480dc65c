#include "ui/pages/mix_lines.h"

#include "ui/look/pieces.h"
#include "ui/presenters/mix_tables.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>
#include <algorithm>

namespace ui::pages {
namespace {

constexpr core::mix::Basis bases[] = {core::mix::Basis::meat, core::mix::Basis::water,
                                      core::mix::Basis::meat_and_water,
                                      core::mix::Basis::total_water};

QByteArray numbered(const char* stem, std::size_t n) {
    return QByteArray(stem) + QByteArray::number(static_cast<int>(n) + 1);
}

} // namespace

MixLines::MixLines(QWidget* parent) : QWidget(parent), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(look::lines(this, 0.25));
    grid_->setVerticalSpacing(look::lines(this, 0.2));
    grid_->setColumnStretch(0, 3);
    grid_->setColumnStretch(1, 2);
    grid_->setColumnStretch(2, 3);
    grid_->setColumnStretch(3, 2);
    choices_ = presenters::ingredient_choices({});
    build_heads();
}

void MixLines::build_heads() {
    int column = 0;
    for (const QString& head :
         {tr("Ingredient"), tr("Amount"), tr("Counted"), tr("On the label"), tr("Hold")}) {
        grid_->addWidget(look::caption(head), 0, column++);
    }
}

void MixLines::fill_ingredients(QComboBox* box) const {
    for (const auto& choice : choices_) {
        box->addItem(choice.name, choice.id);
    }
}

void MixLines::set_lines(const std::vector<presenters::MixLineEntry>& lines,
                         const std::vector<core::mix::OwnIngredient>& own) {
    while (!rows_.empty()) {
        remove_row(rows_.size() - 1);
    }
    choices_ = presenters::ingredient_choices(own);
    for (const auto& line : lines) {
        make_row(line);
    }
}

void MixLines::add_line(const QString& ingredient) {
    presenters::MixLineEntry entry;
    entry.ingredient = ingredient.isEmpty() ? QStringLiteral("table_salt") : ingredient;
    make_row(entry);
    rows_.back().amount->setFocus();
    Q_EMIT edited();
}

void MixLines::make_row(const presenters::MixLineEntry& entry) {
    const std::size_t n = rows_.size();
    const int number = static_cast<int>(n) + 1;
    Row row{};
    row.ingredient = look::named(new QComboBox, numbered("mix_ingredient_", n).constData(),
                                 tr("Ingredient of line %1").arg(number));
    row.ingredient->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row.ingredient->setMinimumContentsLength(3);
    fill_ingredients(row.ingredient);
    int at = row.ingredient->findData(entry.ingredient);
    if (at < 0) { // an ingredient this program does not know: shown as it stands
        row.ingredient->addItem(entry.ingredient, entry.ingredient);
        at = row.ingredient->count() - 1;
    }
    row.ingredient->setCurrentIndex(at);
    row.amount = look::named(new QLineEdit(entry.amount), numbered("mix_amount_", n).constData(),
                             tr("Amount of line %1").arg(number));
    row.amount->setPlaceholderText(tr("2.5 %, 40 g, 100 mL"));
    row.amount->setMinimumWidth(look::lines(this, 3));
    row.basis = look::named(new QComboBox, numbered("mix_basis_", n).constData(),
                            tr("What line %1 is a share of").arg(number));
    for (const auto basis : bases) {
        row.basis->addItem(presenters::basis_words(basis), static_cast<int>(basis));
    }
    row.basis->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    row.basis->setMinimumContentsLength(2);
    row.basis->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    row.basis->setCurrentIndex(row.basis->findData(static_cast<int>(entry.basis)));
    row.label = look::named(new QLineEdit(entry.label), numbered("mix_label_", n).constData(),
                            tr("What the label of line %1 says").arg(number));
    row.label->setMinimumWidth(look::lines(this, 3));
    row.held = look::named(new QCheckBox, numbered("mix_held_", n).constData(),
                           tr("Hold line %1 as it is").arg(number));
    row.held->setChecked(entry.held);
    row.remove = look::named(new QToolButton, numbered("mix_remove_", n).constData(),
                             tr("Take line %1 out").arg(number));
    row.remove->setText(QStringLiteral("\u2715"));
    row.remove->setAutoRaise(true);
    row.remove->setToolTip(row.remove->accessibleName());
    row.fault = look::caption({});
    row.fault->setObjectName(QString::fromLatin1(numbered("mix_line_fault_", n)));
    row.fault->hide();
    const int line = 1 + 2 * static_cast<int>(n);
    int column = 0;
    for (QWidget* field : std::initializer_list<QWidget*>{row.ingredient, row.amount, row.basis,
                                                          row.label, row.held, row.remove}) {
        grid_->addWidget(field, line, column++);
    }
    grid_->addWidget(row.fault, line + 1, 0, 1, 6);
    rows_.push_back(row);
    came_as_.push_back(entry);
    show_hint(row);
    connect(row.ingredient, &QComboBox::currentIndexChanged, this, [this, row] {
        show_hint(row);
        Q_EMIT edited();
    });
    connect(row.amount, &QLineEdit::textEdited, this, &MixLines::edited);
    connect(row.label, &QLineEdit::textEdited, this, &MixLines::edited);
    connect(row.basis, &QComboBox::currentIndexChanged, this, &MixLines::edited);
    connect(row.held, &QCheckBox::toggled, this, &MixLines::edited);
    connect(row.remove, &QToolButton::clicked, this, [this, button = row.remove] {
        const auto it = std::find_if(rows_.begin(), rows_.end(),
                                     [&](const Row& r) { return r.remove == button; });
        // The lines after it move up, so the whole grid is laid anew.
        auto left = lines();
        left.erase(left.begin() + (it - rows_.begin()));
        while (!rows_.empty()) {
            remove_row(rows_.size() - 1);
        }
        for (const auto& entry_left : left) {
            make_row(entry_left);
        }
        Q_EMIT edited();
    });
}

void MixLines::remove_row(std::size_t index) {
    const Row row = rows_[index];
    for (QWidget* field : std::initializer_list<QWidget*>{
             row.ingredient, row.amount, row.basis, row.label, row.held, row.remove, row.fault}) {
        grid_->removeWidget(field);
        field->setObjectName({}); // the name belongs to the line that comes in its place
        field->hide();
        field->deleteLater();
    }
    rows_.erase(rows_.begin() + static_cast<std::ptrdiff_t>(index));
    came_as_.erase(came_as_.begin() + static_cast<std::ptrdiff_t>(index));
}

void MixLines::show_hint(const Row& row) const {
    const QString id = row.ingredient->currentData().toString();
    const auto it = std::find_if(choices_.begin(), choices_.end(),
                                 [&](const auto& choice) { return choice.id == id; });
    row.label->setPlaceholderText(it == choices_.end() ? QString()
                                                       : presenters::label_hint(it->kind));
}

std::vector<presenters::MixLineEntry> MixLines::lines() const {
    std::vector<presenters::MixLineEntry> lines;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        const Row& row = rows_[i];
        presenters::MixLineEntry line = came_as_[i];
        line.ingredient = row.ingredient->currentData().toString();
        line.amount = row.amount->text();
        line.basis = static_cast<core::mix::Basis>(row.basis->currentData().toInt());
        line.label = row.label->text();
        line.held = row.held->isChecked();
        lines.push_back(std::move(line));
    }
    return lines;
}

void MixLines::clear_faults() {
    for (const auto& row : rows_) {
        row.fault->clear();
        row.fault->hide();
    }
}

void MixLines::show_fault(int line, const QString& sentence) {
    if (line < 0 || static_cast<std::size_t>(line) >= rows_.size()) {
        return;
    }
    auto* fault = rows_[static_cast<std::size_t>(line)].fault;
    const QString before = fault->text();
    fault->setText(before.isEmpty() ? QStringLiteral("\u25A0 ") + sentence
                                    : before + QLatin1Char(' ') + sentence);
    fault->show();
}

} // namespace ui::pages
