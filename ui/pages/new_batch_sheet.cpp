// What the new-batch page computes and keeps; its layout is in new_batch_page.cpp.
#include "ui/look/pieces.h"
#include "ui/pages/new_batch_page.h"
#include "ui/pages/take_on_box.h"
#include "ui/pages/weighing_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/data_name.h"
#include "ui/text/date_words.h"
#include "ui/text/finding_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <cmath>

namespace ui::pages {
namespace {

using core::model::Severity;

std::string plain(const QLineEdit* line) {
    return line->text().trimmed().toStdString();
}

int decimals_of(const std::optional<core::units::Mass>& step) {
    if (!step || step->in_grams() >= 1) {
        return step ? 0 : 2;
    }
    return step->in_grams() >= 0.1 ? 1 : 2;
}

/// "120 ppm" or, where the bounds differ, "110 to 130 ppm".
QString ppm_range(const core::mix::ShareInterval& share, const text::Style& style) {
    const QString low = text::ppm_words(share.low, style);
    const QString high = text::ppm_words(share.high, style);
    return low == high ? low : NewBatchPage::tr("%1 to %2").arg(low, high);
}

} // namespace

void NewBatchPage::arrive(const Place& place) {
    if (place.detail == QLatin1String("fresh") || fresh_) {
        start_over();
    }
}

void NewBatchPage::start_over() {
    const auto code = workspace_.one(workspace_.book().free_batch_code());
    code_->setText(code ? QString::fromStdString(*code) : QString());
    free_codes_ = workspace_.rows(workspace_.book().free_piece_codes(30));
    product_->clear();
    for (const auto& product : workspace_.rows(workspace_.book().products())) {
        product_->addItem(QString::fromStdString(product));
    }
    product_->setCurrentText({});
    for (auto* field : {name_, species_, supplier_, lot_}) {
        field->clear();
    }
    started_->set_value(workspace_.today());
    while (pieces_.size() > 1) {
        remove_piece();
    }
    if (pieces_.empty()) {
        add_piece();
    }
    pieces_.front().code->setText(
        free_codes_.empty() ? QString() : QString::fromStdString(free_codes_.front()));
    pieces_.front().name->clear();
    pieces_.front().raw->set_value({});
    pieces_.front().thickness->set_value({});
    target_->set_value(core::units::MassShare::percent(35));
    salt_->set_value(core::units::MassShare::percent(2.5));
    sugar_->set_value({});
    cure_->setCurrentIndex(0);
    cure_dose_->set_value(core::units::MassShare::percent(0.25));
    nitrite_->set_value({});
    nitrate_->set_value({});
    take_on_->forget();
    take_on_->load(workspace_);
    used_past_.reset();
    past_.load(workspace_);
    fresh_ = false;
    recompute();
}

void NewBatchPage::refresh() {
    const auto& style = workspace_.style();
    for (auto* field : {salt_, sugar_, cure_dose_, nitrite_, nitrate_, target_}) {
        field->set_style(style);
    }
    for (auto& piece : pieces_) {
        piece.raw->set_style(style);
        piece.thickness->set_style(style);
    }
    start_->setEnabled(!workspace_.is_read_only());
    take_on_->load(workspace_);
    past_.load(workspace_);
    recompute();
}

presenters::NewBatchForm NewBatchPage::entered() const {
    presenters::NewBatchForm form;
    form.code = plain(code_);
    form.name = plain(name_);
    form.product = product_->currentText().trimmed().toStdString();
    form.species = plain(species_);
    form.supplier = plain(supplier_);
    form.supplier_lot = plain(lot_);
    form.started = started_->value().value_or(workspace_.today());
    for (const auto& piece : pieces_) {
        form.pieces.push_back({plain(piece.code), plain(piece.name), piece.form->value(),
                               piece.thickness->value(), piece.raw->value()});
    }
    form.target = target_->value();
    form.reference = reference_->value();
    form.plan = plan_->currentData().toString().toStdString();
    form.salt = salt_->value();
    form.sugar = sugar_->value();
    form.cure = cure_->currentData().toString().toStdString();
    form.cure_dose = cure_dose_->value();
    form.nitrite_label = nitrite_->value();
    form.nitrate_label = nitrate_->value();
    form.scale_step = chosen_step(scale_);
    form.limits = workspace_.preferences().limit_set.toStdString();
    form.notes = reasons().toStdString();
    return form;
}

void NewBatchPage::recompute() {
    if (wrong_ == nullptr) {
        return; // still being built
    }
    wrong_->say({}, {});
    show_past();
    const auto form = entered();
    const bool cured = !form.cure.empty();
    for (QWidget* field : std::initializer_list<QWidget*>{cure_dose_, nitrite_, nitrate_}) {
        field->setEnabled(cured);
    }
    show_sheet(presenters::mix_sheet_of(form, workspace_.today()));
    const auto stages = presenters::stages_of(form);
    plan_words_->setText(
        stages.empty()
            ? tr("Without a plan there are no dated tasks; weighings and forecasts work all the "
                 "same.")
            : tr("%n stage(s), from %1 to about %2.", nullptr, static_cast<int>(stages.size()))
                  .arg(text::words(stages.front().planned_start, workspace_.style()),
                       text::words(stages.back().planned_end, workspace_.style())));
}

void NewBatchPage::show_sheet(const std::optional<core::mix::MixSheet>& sheet) {
    if (!sheet) {
        sheet_->set_rows({});
        sheet_table_->hide();
        dose_->setText(tr("Enter a raw weight to see what to put on the scale."));
        show_findings({});
        return;
    }
    const auto& style = workspace_.style();
    const int decimals = decimals_of(chosen_step(scale_));
    std::vector<Sheet::Column> columns = {
        {tr("Weigh out"), [](const SheetRow& r) { return r.what; }, {}, false, {}}};
    int at = 0;
    for (const auto& piece : sheet->pieces) {
        columns.push_back({QString::fromStdString(piece.code),
                           [at](const SheetRow& r) { return r.weights.value(at); },
                           {},
                           true,
                           {}});
        ++at;
    }
    columns.push_back(
        {tr("All at once"), [at](const SheetRow& r) { return r.weights.value(at); }, {}, true, {}});
    columns.push_back(
        {tr("Off by the scale's step"), [](const SheetRow& r) { return r.error; }, {}, true, {}});
    std::vector<SheetRow> rows;
    for (std::size_t line = 0; line < sheet->lines.size(); ++line) {
        SheetRow row;
        row.what = text::data_name(sheet->lines[line].name);
        double worst = 0;
        bool known = false;
        for (const auto& piece : sheet->pieces) {
            if (line < piece.lines.size()) {
                row.weights << text::dose_words(piece.lines[line].weigh_out, style, decimals);
                if (piece.lines[line].step_error) {
                    worst = std::max(worst, *piece.lines[line].step_error);
                    known = true;
                }
            }
        }
        row.weights << text::dose_words(sheet->lines[line].weigh_out, style, decimals);
        row.error = known ? tr("up to ± %1")
                                .arg(text::words(core::units::MassShare::fraction(worst), style, 1))
                          : text::unknown();
        rows.push_back(std::move(row));
    }
    sheet_->set_columns(std::move(columns));
    sheet_->set_rows(std::move(rows));
    sheet_table_->show();
    show_dose(*sheet);
    show_findings(sheet->findings);
}

void NewBatchPage::show_dose(const core::mix::MixSheet& sheet) {
    const auto& style = workspace_.style();
    QStringList parts = {
        tr("Meat: %1").arg(text::words(sheet.meat, style)),
        tr("salt in all: %1 of the meat").arg(text::words(sheet.dose.salt.best, style, 2))};
    if (sheet.dose.nitrite.high.as_fraction() > 0) {
        parts << tr("nitrite going in: %1 (as sodium nitrite)")
                     .arg(ppm_range(sheet.dose.nitrite, style));
    }
    if (sheet.dose.nitrate.high.as_fraction() > 0) {
        parts << tr("nitrate going in: %1 (as sodium nitrate)")
                     .arg(ppm_range(sheet.dose.nitrate, style));
    }
    QString words = parts.join(QStringLiteral(" · "));
    for (const auto& check : sheet.limits) {
        using Outcome = core::mix::LimitCheck::Outcome;
        const QString source = text::source_words(check.limit.source);
        if (check.outcome == Outcome::within && check.limit.maximum) {
            words +=
                QLatin1Char('\n') +
                tr("Within %1, by %2.").arg(text::ppm_words(*check.limit.maximum, style), source);
        } else if (check.outcome == Outcome::not_computable) {
            words += QLatin1Char('\n') + tr("Not to be computed from the recipe: %1.").arg(source);
        }
    }
    if (workspace_.preferences().limit_set.isEmpty()) {
        words += QLatin1Char('\n') +
                 tr("No limits are chosen; choose those of your country in Preferences.");
    }
    dose_->setText(words);
}

void NewBatchPage::show_findings(const core::model::Findings& findings) {
    while (auto* item = findings_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    stopped_ = false;
    int number = 0;
    for (const auto& finding : findings) {
        auto* banner =
            new look::Banner(("new_finding_" + QByteArray::number(number++)).constData());
        banner->say(text::severity_look(finding.severity),
                    text::finding_with_source(finding, workspace_.style()));
        findings_->addWidget(banner);
        stopped_ = stopped_ || finding.severity == Severity::stop;
    }
    take_on_->set_findings(findings);
}

bool NewBatchPage::validate() {
    QWidget* first = nullptr;
    for (const auto& piece : pieces_) {
        for (edits::EntryField* field :
             std::initializer_list<edits::EntryField*>{piece.raw, piece.thickness}) {
            if (!field->validate() && first == nullptr) {
                first = field;
            }
        }
    }
    for (edits::EntryField* field : std::initializer_list<edits::EntryField*>{
             started_, target_, salt_, sugar_, cure_dose_, nitrite_, nitrate_}) {
        if (field->isEnabled() && !field->validate() && first == nullptr) {
            first = field;
        }
    }
    if (first != nullptr) {
        wrong_->say(QStringLiteral("stop"), tr("A field needs mending; it says how."));
        first->setFocus();
        return false;
    }
    if (stopped_) {
        wrong_->say(QStringLiteral("stop"), tr("The cure has a stop above. Mend it first."));
        return false;
    }
    if (const QString missing = take_on_->missing(); !missing.isEmpty()) {
        wrong_->say(QStringLiteral("caution"), missing);
        return false;
    }
    return true;
}

void NewBatchPage::start() {
    if (!validate()) {
        return;
    }
    const auto cautions = take_on_->cautions();
    const auto who = take_on_->person(workspace_);
    if (!cautions.empty() && !who) {
        return;
    }
    const auto command =
        presenters::start_batch_of(entered(), cautions, who, workspace_.now(), workspace_.style());
    QStringList stops;
    for (const auto& finding : workspace_.check(command)) {
        if (finding.severity == Severity::stop) {
            stops << text::finding_words(finding, workspace_.style());
        }
    }
    if (!stops.isEmpty()) {
        wrong_->say(QStringLiteral("stop"), stops.join(QLatin1Char('\n')));
        return;
    }
    const auto performed = workspace_.perform(command);
    if (!performed) {
        return;
    }
    fresh_ = true;
    const auto batch = performed->id<core::model::BatchId>(core::model::EntryKind::batch);
    Q_EMIT go({QStringLiteral("batches"), static_cast<qint64>(batch.row()), {}});
}

} // namespace ui::pages
