#include "ui/pages/outcome_dialog.h"

#include "ui/presenters/workspace.h"
#include "ui/text/plan_words.h"

#include <QComboBox>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace ui::pages {
namespace {

QComboBox* score_box(const char* object_name, const QString& name, QString (*words)(int),
                     const std::optional<int>& score) {
    auto* box = look::named(new QComboBox, object_name, name);
    box->addItem(OutcomeDialog::tr("not said"));
    for (int n = -2; n <= 2; ++n) {
        box->addItem(words(n), n);
    }
    box->setCurrentIndex(score ? std::max(0, box->findData(*score)) : 0);
    return box;
}

std::optional<int> score_of(const QComboBox* box) {
    return box->currentData().isValid() ? std::optional(box->currentData().toInt()) : std::nullopt;
}

} // namespace

OutcomeDialog::OutcomeDialog(presenters::Workspace& workspace, const core::model::Batch& batch,
                             const std::optional<core::model::Outcome>& before, QWidget* parent)
    : EntryDialog(workspace, "outcome_dialog",
                  tr("How %1 came out").arg(QString::fromStdString(batch.code)), parent),
      batch_(batch.id) {
    const auto kept = before.value_or(core::model::Outcome{});
    salt_ = score_box("outcome_salt", tr("Salt"), text::salt_score_words, kept.salt);
    texture_ = score_box("outcome_texture", tr("Texture"), text::texture_score_words, kept.texture);
    words_ = look::named(new QPlainTextEdit, "outcome_words", tr("What to change next time"));
    words_->setPlainText(QString::fromStdString(kept.change_next_time));
    words_->setTabChangesFocus(true);
    words_->setFixedHeight(look::lines(this, 5));
    add_row(tr("&Salt"), salt_);
    add_row(tr("&Texture"), texture_);
    add_row(tr("&What to change next time"), words_);
    below()->addWidget(look::caption(
        tr("The next plan, mix and batch of this product show what this suggests. Nothing is "
           "changed unless you say so.")));
}

std::optional<core::actions::Command> OutcomeDialog::command() {
    core::model::Outcome outcome{.batch = batch_, .change_next_time = {}};
    outcome.salt = score_of(salt_);
    outcome.texture = score_of(texture_);
    outcome.change_next_time = words_->toPlainText().trimmed().toStdString();
    if (!outcome.salt && !outcome.texture && outcome.change_next_time.empty()) {
        say(QStringLiteral("stop"), tr("Say how it came out, or write a few words."));
        salt_->setFocus();
        return {};
    }
    return core::actions::RecordOutcome{outcome};
}

} // namespace ui::pages
