#include "ui/pages/lost_weight_dialog.h"

#include "ui/look/fit.h"
#include "ui/presenters/workspace.h"
#include "ui/text/model_words.h"
#include "ui/text/quantity_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

namespace ui::pages {

using core::model::ReferenceWeight;

LostWeightDialog::LostWeightDialog(presenters::Workspace& workspace,
                                   const presenters::PieceLine& line, QWidget* parent)
    : EntryDialog(workspace, "lost_weight_dialog",
                  tr("%1: a weight is lost").arg(QString::fromStdString(line.piece().code)),
                  parent),
      lost_(workspace, line), keep_(findChild<QPushButton*>(QStringLiteral("dialog_keep"))) {
    set_keep_words(tr("Enter as an &estimate"));
    look::resize_in_lines(this, 38, 30);
    if (lost_.missing().empty()) {
        show_nothing_missing();
        return;
    }
    build_fields();
    build_answer();
    connect(&lost_, &presenters::LostWeight::arrived, this, &LostWeightDialog::show_answer);
    weight_chosen();
}

void LostWeightDialog::show_nothing_missing() {
    below()->addWidget(new look::EmptyState(
        "lost_weight_none", tr("No start weight can be found missing"),
        tr("Raw and hung weight are both in the book, or the piece was never weighed. A weighing "
           "that was missed later needs nothing: the curve has no fixed rhythm."),
        {}));
    keep_->setEnabled(false);
}

void LostWeightDialog::build_fields() {
    which_ = look::named(new QComboBox, "lost_which", tr("Which weight is lost"));
    for (const auto which : lost_.missing()) {
        which_->addItem(text::words(which), static_cast<int>(which));
    }
    day_ = new edits::DayField("lost_day", tr("Day it should have been taken"), workspace().style(),
                               workspace().today());
    day_->set_required(true);
    weight_ = new edits::MassField("lost_weight", tr("Net weight, estimated"), workspace().style());
    weight_->set_required(true);
    add_row(tr("Which weight is &lost"), which_);
    add_row(tr("&Day it should have been taken"), day_);
    add_row(tr("&Net weight, estimated"), weight_);
    connect(which_, &QComboBox::currentIndexChanged, this, &LostWeightDialog::weight_chosen);
    connect(weight_, &edits::EntryField::edited, this, [this] { own_entry_ |= !filling_; });
}

void LostWeightDialog::build_answer() {
    below()->addWidget(look::section_title(tr("What can be said of it")));
    estimate_ = look::paragraph({});
    estimate_->setObjectName(QStringLiteral("lost_estimate"));
    below()->addWidget(estimate_);
    below()->addWidget(look::caption(
        tr("Entered as an estimate it stands in the list with its range. Losses count from it and "
           "are as uncertain as it is; the curve does not lean on it. It can be undone.")));
    below()->addWidget(look::section_title(tr("Or leave it unknown")));
    auto* unknown = look::paragraph(
        tr("Cancel, and nothing is made up: the days since hanging, the rate from weighing to "
           "weighing and the loss from every weight that is known are still counted. The target "
           "can be bound to one of those under Change."));
    unknown->setObjectName(QStringLiteral("lost_unknown"));
    below()->addWidget(unknown);
}

ReferenceWeight LostWeightDialog::which() const {
    return static_cast<ReferenceWeight>(which_->currentData().toInt());
}

std::optional<core::units::Instant> LostWeightDialog::when() const {
    const auto day = day_->value();
    if (!day) {
        return {};
    }
    const auto& zone = workspace().style().zone;
    const auto usual = lost_.usual_time(which());
    return usual && zone.day_of(*usual) == *day ? *usual : zone.instant_at(*day, 12 * 60);
}

void LostWeightDialog::weight_chosen() {
    asked_.reset();
    own_entry_ = false;
    fill_in({});
    const auto usual = lost_.usual_time(which());
    day_->set_value(usual ? std::optional(workspace().style().zone.day_of(*usual)) : std::nullopt);
    LostWeightDialog::edited();
}

void LostWeightDialog::fill_in(std::optional<core::units::Mass> weight) {
    filling_ = true;
    weight_->set_value(weight);
    filling_ = false;
}

void LostWeightDialog::edited() {
    if (estimate_ == nullptr || filling_) {
        return;
    }
    const auto at = when();
    if (!at) {
        asked_.reset();
        keep_->setEnabled(false);
        estimate_->setText(tr("Enter the day, and the estimate stands here."));
        return;
    }
    if (at == asked_) {
        return; // only the weight was edited
    }
    asked_ = at;
    keep_->setEnabled(false);
    estimate_->setText(tr("Reckoning…"));
    lost_.ask(which(), *at);
}

void LostWeightDialog::show_answer() {
    if (!asked_) {
        return; // the day was emptied meanwhile
    }
    const auto& style = workspace().style();
    const auto& answer = *lost_.answer();
    keep_->setEnabled(answer.siblings > 0 && !workspace().is_read_only());
    if (answer.siblings > 0) {
        estimate_->setText(tr("About %1; 8 in 10 such pieces lie between %2 and %3. From %n "
                              "piece(s) of its batch and the air they hung in.",
                              nullptr, answer.siblings)
                               .arg(text::words(answer.weight->best, style),
                                    text::words(answer.weight->low, style),
                                    text::words(answer.weight->high, style)));
        if (!own_entry_) {
            fill_in(answer.weight->best);
        }
        return;
    }
    QString words = which() == ReferenceWeight::raw
                        ? tr("No sibling can say: two pieces of the batch with a raw and a hung "
                             "weight are needed.")
                        : tr("No sibling can say: two pieces of the batch with a hung weight, "
                             "five weighings and half their target lost are needed.");
    if (answer.weight) {
        words += QLatin1Char(' ') +
                 tr("By its form and the air alone it lay between %1 and %2: too wide to count "
                    "from.")
                     .arg(text::words(answer.weight->low, style),
                          text::words(answer.weight->high, style));
    }
    estimate_->setText(words);
}

std::optional<core::actions::Command> LostWeightDialog::command() {
    const auto at = when();
    const auto net = weight_->value();
    const auto& answer = lost_.answer();
    if (!at || !net || lost_.is_busy() || !answer || !answer->weight || answer->siblings == 0) {
        say(QStringLiteral("stop"), tr("There is no estimate to enter yet."));
        return {};
    }
    return core::actions::AddWeighing{
        lost_.weighing(which(), *at, *net, *answer->weight, workspace().style())};
}

} // namespace ui::pages
