#include "ui/pages/batch_dialog.h"

#include "ui/presenters/workspace.h"
#include "ui/text/model_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>

namespace ui::pages {
namespace {

std::string plain(const QLineEdit* line) {
    return line->text().trimmed().toStdString();
}

} // namespace

BatchDialog::BatchDialog(presenters::Workspace& workspace, const core::model::Batch& batch,
                         QWidget* parent)
    : EntryDialog(workspace, "batch_dialog",
                  tr("Change batch %1").arg(QString::fromStdString(batch.code)), parent),
      batch_(batch) {
    const auto& style = workspace.style();
    code_ = look::text_line("batch_code", tr("Code"), QString::fromStdString(batch.code));
    name_ = look::text_line("batch_name", tr("Name"), QString::fromStdString(batch.name));
    product_ =
        look::text_line("batch_product", tr("Product"), QString::fromStdString(batch.product));
    species_ =
        look::text_line("batch_species", tr("Animal"), QString::fromStdString(batch.species));
    supplier_ =
        look::text_line("batch_supplier", tr("Supplier"), QString::fromStdString(batch.supplier));
    lot_ = look::text_line("batch_lot", tr("Supplier's lot"),
                           QString::fromStdString(batch.supplier_lot));
    started_ = new edits::DayField("batch_started", tr("Started"), style, workspace.today());
    started_->set_required(true);
    started_->set_value(batch.started);
    bought_ = new edits::MassField("batch_bought", tr("Bought weight"), style);
    bought_->set_value(batch.bought_weight);
    trimmed_ = new edits::MassField("batch_trim", tr("Trimmed off"), style);
    trimmed_->set_value(batch.trim_weight);
    price_ = new edits::NumberField("batch_price", tr("Price per kilogram"), style);
    price_->set_value(batch.price_per_kilogram);
    state_ = look::named(new QComboBox, "batch_state", tr("State"));
    using core::model::BatchState;
    for (const auto state : {BatchState::planned, BatchState::in_progress, BatchState::finished,
                             BatchState::abandoned}) {
        state_->addItem(text::words(state), static_cast<int>(state));
    }
    state_->setCurrentIndex(state_->findData(static_cast<int>(batch.state)));
    frozen_ = look::named(new QCheckBox(tr("The meat was frozen before")), "batch_frozen",
                          tr("The meat was frozen before"));
    frozen_->setChecked(batch.was_frozen);
    notes_ = look::named(new QPlainTextEdit, "batch_notes", tr("Notes"));
    notes_->setPlainText(QString::fromStdString(batch.notes));
    notes_->setTabChangesFocus(true);
    notes_->setFixedHeight(look::lines(this, 4));
    add_row(tr("&Code"), code_);
    add_row(tr("&Name"), name_);
    add_row(tr("&Product"), product_);
    add_row(tr("&Animal"), species_);
    add_row(tr("&Supplier"), supplier_);
    add_row(tr("Supplier's &lot"), lot_);
    add_row(tr("S&tarted"), started_);
    add_row(tr("&Bought weight"), bought_);
    add_row(tr("Trimmed &off"), trimmed_);
    add_row(tr("P&rice per kilogram"), price_);
    add_row(tr("Stat&e"), state_);
    add_row({}, frozen_);
    add_row(tr("Notes"), notes_);
}

std::optional<core::actions::Command> BatchDialog::command() {
    batch_.code = plain(code_);
    batch_.name = plain(name_);
    batch_.product = plain(product_);
    batch_.species = plain(species_);
    batch_.supplier = plain(supplier_);
    batch_.supplier_lot = plain(lot_);
    batch_.started = *started_->value();
    batch_.bought_weight = bought_->value();
    batch_.trim_weight = trimmed_->value();
    batch_.price_per_kilogram = price_->value();
    batch_.state = static_cast<core::model::BatchState>(state_->currentData().toInt());
    batch_.was_frozen = frozen_->isChecked();
    batch_.notes = notes_->toPlainText().trimmed().toStdString();
    return core::actions::ChangeBatch{batch_};
}

} // namespace ui::pages
