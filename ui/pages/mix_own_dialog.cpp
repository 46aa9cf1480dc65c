#include "ui/pages/mix_own_dialog.h"

#include "ui/look/pieces.h"
#include "ui/presenters/mix_bench.h"
#include "ui/text/error_words.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {

using core::facts::IngredientKind;

MixOwnDialog::MixOwnDialog(const text::Style& style, QWidget* parent)
    : QDialog(parent), style_(style) {
    setObjectName(QStringLiteral("mix_own"));
    setWindowTitle(tr("An ingredient of my own"));
    auto* column = new QVBoxLayout(this);
    column->addWidget(look::caption(
        tr("Enter what the label says; divide the figures with semicolons. Words: nitrite, "
           "nitrate, salt, sodium, sugar, alcohol, acid, water, density (g to the mL).")));
    auto* form = new QFormLayout;
    name_ = look::named(new QLineEdit, "own_name", tr("Name"));
    kind_ = look::named(new QComboBox, "own_kind", tr("Kind"));
    const std::pair<QString, IngredientKind> kinds[] = {
        {tr("Sauce"), IngredientKind::sauce},
        {tr("Curing salt"), IngredientKind::curing_salt},
        {tr("Salt"), IngredientKind::salt},
        {tr("Sugar or syrup"), IngredientKind::sugar},
        {tr("Spirit"), IngredientKind::spirit},
        {tr("Wine"), IngredientKind::wine},
        {tr("Vinegar"), IngredientKind::vinegar},
        {tr("Spice or herb"), IngredientKind::spice},
        {tr("Something else"), IngredientKind::other}};
    for (const auto& [words, kind] : kinds) {
        kind_->addItem(words, static_cast<int>(kind));
    }
    label_ = look::named(new QLineEdit, "own_label", tr("What its label says"));
    label_->setMinimumWidth(look::lines(this, 18));
    look::add_field(form, tr("&Name"), name_);
    look::add_field(form, tr("&Kind"), kind_);
    look::add_field(form, tr("On the &label"), label_);
    column->addLayout(form);
    wrong_ = look::paragraph({});
    wrong_->setObjectName(QStringLiteral("own_wrong"));
    column->addWidget(wrong_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("&Add it"));
    column->addWidget(buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &MixOwnDialog::take);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(kind_, &QComboBox::currentIndexChanged, this, &MixOwnDialog::show_hint);
    show_hint();
}

void MixOwnDialog::show_hint() {
    label_->setPlaceholderText(
        presenters::label_hint(static_cast<IngredientKind>(kind_->currentData().toInt())));
}

void MixOwnDialog::take() {
    const auto kind = static_cast<IngredientKind>(kind_->currentData().toInt());
    const auto label = presenters::parse_label(label_->text(), kind, style_);
    if (name_->text().trimmed().isEmpty()) {
        wrong_->setText(tr("Give it a name."));
        name_->setFocus();
        return;
    }
    if (!label) {
        wrong_->setText(text::error_words(label.error()));
        label_->setFocus();
        return;
    }
    made_ = {std::string(), name_->text().trimmed().toStdString(), kind, *label};
    accept();
}

} // namespace ui::pages
