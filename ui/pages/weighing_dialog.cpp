#include "ui/pages/weighing_dialog.h"

#include "ui/presenters/workspace.h"
#include "ui/text/date_words.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

using core::units::Mass;

} // namespace

QComboBox* scale_box(presenters::Workspace& workspace, const char* object_name,
                     std::optional<Mass> step) {
    auto* box = look::named(new QComboBox, object_name, WeighingDialog::tr("Scale"));
    box->addItem(WeighingDialog::tr("scale not named"), QVariant());
    for (const auto& instrument : workspace.rows(workspace.book().instruments())) {
        if (instrument.kind == core::model::InstrumentKind::scale && instrument.active &&
            instrument.scale_step) {
            box->addItem(WeighingDialog::tr("%1 (step %2)")
                             .arg(QString::fromStdString(instrument.name),
                                  text::words(*instrument.scale_step, workspace.style(),
                                              instrument.scale_step)),
                         instrument.scale_step->in_milligrams());
        }
    }
    const int found = step ? box->findData(step->in_milligrams()) : -1;
    box->setCurrentIndex(found >= 0 ? found : box->count() > 1 && step ? 1 : 0);
    return box;
}

std::optional<Mass> chosen_step(const QComboBox* box) {
    const QVariant data = box->currentData();
    return data.isValid() ? std::optional(Mass::milligrams(data.toDouble())) : std::nullopt;
}

WeighingDialog::WeighingDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                               QWidget* parent)
    : EntryDialog(workspace, "weighing_dialog",
                  tr("Weigh %1").arg(QString::fromStdString(line.piece().code)), parent),
      line_(line), weighing_{.piece = line.piece().id,
                             .taken_at = workspace.now(),
                             .on_scale = Mass::grams(0),
                             .tare = line.tare} {
    if (!line.history.weighings.empty()) {
        const auto& last = line.history.weighings.back();
        weighing_.scale_step = last.scale_step;
    }
    weighing_.state = presenters::state_now(line.history);
    build(false);
}

WeighingDialog::WeighingDialog(presenters::Workspace& workspace, const presenters::PieceLine& line,
                               const core::model::Weighing& corrected, QWidget* parent)
    : EntryDialog(workspace, "amend_dialog",
                  //: %1 a piece's code, %2 a moment
                  tr("Correct %1: weighing of %2")
                      .arg(QString::fromStdString(line.piece().code),
                           text::words(corrected.taken_at, workspace.style())),
                  parent),
      line_(line), weighing_(corrected) {
    build(true);
    on_scale_->set_value(corrected.on_scale);
    note_->setText(QString::fromStdString(corrected.note));
    WeighingDialog::edited();
}

void WeighingDialog::build(bool correction) {
    const auto& style = workspace().style();
    on_scale_ = new edits::MassField("weigh_on_scale", tr("On the scale"), style);
    on_scale_->set_required(true);
    state_ = new edits::ChoiceBox<core::model::WeighedState>("weigh_state", tr("What hangs there"));
    state_->set_value(weighing_.state);
    tare_ = new edits::MassField("weigh_tare", tr("Tare"), style);
    tare_->set_required(true);
    tare_->set_value(weighing_.tare);
    day_ = new edits::DayField("weigh_day", tr("Day"), style, workspace().today());
    day_->set_required(true);
    day_->set_value(style.zone.day_of(weighing_.taken_at));
    clock_ = new edits::ClockField("weigh_clock", tr("Time"), style);
    clock_->set_required(true);
    clock_->set_value(style.zone.minute_of_day(weighing_.taken_at));
    scale_ = scale_box(workspace(), "weigh_scale", weighing_.scale_step);
    wet_ = look::named(new QCheckBox(tr("The surface is &wet (just washed or wiped)")), "weigh_wet",
                       tr("The surface is wet"));
    wet_->setChecked(weighing_.wet_surface);
    note_ = look::named(new QLineEdit, "weigh_note", tr("Note"));
    add_row(tr("On the &scale"), on_scale_);
    add_row(tr("W&hat is on it"), state_);
    add_row(tr("&Tare (casing, net, hook)"), tare_);
    add_row(tr("&Day"), day_);
    add_row(tr("Ti&me"), clock_);
    add_row(tr("Sca&le"), scale_);
    add_row({}, wet_);
    add_row(tr("&Note"), note_);
    if (correction) {
        why_ = look::named(new QLineEdit, "weigh_why", tr("Why it is corrected"));
        why_->setPlaceholderText(tr("e.g. misread, wrong tare"));
        add_row(tr("Wh&y it is corrected"), why_);
    }
    preview_ = look::paragraph({});
    preview_->setObjectName(QStringLiteral("weigh_preview"));
    below()->addWidget(preview_);
    WeighingDialog::edited();
}

std::optional<core::model::Weighing> WeighingDialog::entered() const {
    const auto on_scale = on_scale_->value();
    const auto tare = tare_->value();
    const auto day = day_->value();
    const auto minute = clock_->value();
    if (!on_scale || !tare || !day || !minute) {
        return {};
    }
    core::model::Weighing weighing = weighing_;
    weighing.on_scale = *on_scale;
    weighing.tare = *tare;
    const auto& zone = workspace().style().zone;
    // An untouched day and time keep their seconds.
    if (*day != zone.day_of(weighing_.taken_at) ||
        *minute != zone.minute_of_day(weighing_.taken_at)) {
        weighing.taken_at = zone.instant_at(*day, *minute);
    }
    weighing.state = state_->value();
    weighing.scale_step = chosen_step(scale_);
    weighing.wet_surface = wet_->isChecked();
    weighing.note = note_->text().trimmed().toStdString();
    return weighing;
}

void WeighingDialog::edited() {
    if (preview_ == nullptr) {
        return;
    }
    const auto weighing = entered();
    if (!weighing) {
        preview_->setText(tr("Net weight: %1").arg(text::unknown()));
        return;
    }
    core::services::PieceHistory with = line_.history;
    std::erase_if(with.weighings, [&](const auto& w) { return w.id == weighing->id; });
    with.weighings.push_back(*weighing);
    std::stable_sort(with.weighings.begin(), with.weighings.end(),
                     [](const auto& a, const auto& b) { return a.taken_at < b.taken_at; });
    const auto line = presenters::line_of(std::move(with), line_.kin);
    const auto& style = workspace().style();
    QStringList parts = {tr("Net weight: %1").arg(text::words(weighing->net(), style))};
    for (const auto& loss : line.losses) {
        parts << tr("%1 lost of the %2")
                     .arg(text::words(loss.loss, style), text::words(loss.reference));
    }
    preview_->setText(parts.join(QStringLiteral(" · ")));
}

std::optional<core::actions::Command> WeighingDialog::command() {
    const auto weighing = entered();
    if (!weighing) {
        return {};
    }
    if (why_ == nullptr) {
        return core::actions::AddWeighing{*weighing};
    }
    if (why().isEmpty()) {
        say(QStringLiteral("stop"), tr("Say in a few words why the entry is corrected; the old "
                                       "one stays readable beside it."));
        why_->setFocus();
        return {};
    }
    return core::actions::AmendWeighing{weighing_.id, *weighing};
}

QString WeighingDialog::why() const {
    return why_ == nullptr ? QString() : why_->text().trimmed();
}

WithdrawDialog::WithdrawDialog(presenters::Workspace& workspace, const QString& what,
                               core::actions::Command command, QWidget* parent)
    : EntryDialog(workspace, "withdraw_dialog", tr("Take back"), parent),
      command_(std::move(command)) {
    below()->addWidget(look::paragraph(
        tr("%1\nThe entry no longer counts, but stays readable in the history.").arg(what)));
    why_ = look::named(new QLineEdit, "withdraw_why", tr("Why it is taken back"));
    add_row(tr("&Why"), why_);
    set_keep_words(tr("&Take back"));
}

std::optional<core::actions::Command> WithdrawDialog::command() {
    if (why().isEmpty()) {
        say(QStringLiteral("stop"), tr("Say in a few words why."));
        why_->setFocus();
        return {};
    }
    return command_;
}

QString WithdrawDialog::why() const {
    return why_->text().trimmed();
}

} // namespace ui::pages
