#include "ui/pages/mix_use_dialog.h"

#include "ui/pages/person_box.h"
#include "ui/presenters/acceptances.h"
#include "ui/presenters/workspace.h"
#include "ui/text/finding_words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {

MixUseDialog::MixUseDialog(presenters::Workspace& workspace, core::model::RecipeVersionId version,
                           const QString& recipe, core::model::Findings cautions, QWidget* parent)
    : EntryDialog(workspace, "mix_use_dialog", tr("Use %1 for a batch").arg(recipe), parent),
      version_(version), cautions_(std::move(cautions)) {
    form()->addRow(look::caption(tr("The batch's record then names this version as the recipe it "
                                    "was salted with, and prints each caution with who took it on "
                                    "and when.")));
    batch_ = look::named(new QComboBox, "use_batch", tr("Batch"));
    for (const auto& batch : workspace.rows(workspace.book().batches())) {
        if (batch.state == core::model::BatchState::planned ||
            batch.state == core::model::BatchState::in_progress) {
            batch_->addItem(
                tr("%1 \u2013 %2")
                    .arg(QString::fromStdString(batch.code), QString::fromStdString(batch.name)),
                static_cast<qlonglong>(batch.id.row()));
        }
    }
    person_ = new PersonBox("use_person", tr("Taken on by"));
    person_->load(workspace);
    why_ = look::named(new QLineEdit, "use_why", tr("Why"));
    add_row(tr("&Batch"), batch_);
    if (!cautions_.empty()) {
        add_row(tr("&Taken on by"), person_);
        add_row(tr("&Why"), why_);
        below()->addWidget(look::section_title(
            tr("%n caution(s) taken on", nullptr, static_cast<int>(cautions_.size()))));
    } else {
        person_->hide();
        why_->hide();
        below()->addWidget(person_);
        below()->addWidget(why_);
    }
    int number = 0;
    for (const auto& caution : cautions_) {
        auto* banner =
            new look::Banner(("use_caution_" + QByteArray::number(number++)).constData());
        banner->say(text::severity_look(caution.severity),
                    text::finding_words(caution, workspace.style()));
        below()->addWidget(banner);
    }
    set_keep_words(tr("&Put it in the book"));
    if (batch_->count() == 0) {
        say(QStringLiteral("note"), tr("There is no open batch yet. Start one first; this recipe "
                                       "is kept meanwhile."));
    }
}

std::optional<core::actions::Command> MixUseDialog::command() {
    if (batch_->count() == 0) {
        say(QStringLiteral("stop"), tr("There is no open batch yet. Start one first."));
        return {};
    }
    if (!cautions_.empty() && !person_->is_named()) {
        say(QStringLiteral("stop"), tr("Say who takes the cautions on: choose or type the name."));
        person_->setFocus();
        return {};
    }
    const auto id = core::model::BatchId::from_row(batch_->currentData().toLongLong());
    auto batch = workspace().one(workspace().book().batch(id));
    if (!batch) {
        return {};
    }
    batch->recipe = version_;
    accepted_entries_.clear();
    if (cautions_.empty()) {
        return core::actions::ChangeBatch{*batch};
    }
    const auto person = person_->person(workspace());
    if (!person) {
        return {};
    }
    for (const auto& caution : cautions_) {
        accepted_entries_.push_back(presenters::acceptance_of(
            caution, workspace().style(), workspace().now(), person, why_->text().trimmed()));
        accepted_entries_.back().batch = id;
    }
    return core::actions::ChangeBatch{*batch};
}

} // namespace ui::pages
