// What can be done with the marked batch beside changing it: its curves on one chart, and how it
// came out.
#include "ui/look/pieces.h"
#include "ui/pages/batches_page.h"
#include "ui/pages/outcome_dialog.h"
#include "ui/presenters/workspace.h"
#include "ui/text/plan_words.h"

#include <QAction>
#include <QLabel>
#include <QMenu>
#include <QPushButton>

#include <algorithm>

namespace ui::pages {

/// One button for both: four would not fit beside each other with large type.
QPushButton* BatchesPage::build_more() {
    auto* more = look::button("batch_more", tr("&More"));
    more->setProperty("menu", true);
    auto* menu = look::named(new QMenu(more), "batch_menu", tr("More about the batch"));
    menu->setToolTipsVisible(true);
    compare_ = menu->addAction(tr("&Curves on one chart"));
    compare_->setObjectName(QStringLiteral("batch_compare"));
    outcome_ = menu->addAction(tr("&How it came out…"));
    outcome_->setObjectName(QStringLiteral("batch_outcome"));
    more->setMenu(menu);
    connect(outcome_, &QAction::triggered, this, &BatchesPage::record_outcome);
    connect(compare_, &QAction::triggered, this, [this] {
        const qint64 marked = piece_table_->current_id();
        if (marked > 0) {
            Q_EMIT go({QStringLiteral("piece"), marked, QStringLiteral("with_batch")});
        }
    });
    return more;
}

void BatchesPage::show_outcome(const core::model::Batch& batch,
                               const std::vector<presenters::PieceLine>& lines) {
    const auto outcome = workspace_.one(workspace_.book().outcome(batch.id));
    const bool told = outcome && *outcome;
    outcome_words_->setText(told ? tr("How it came out: %1").arg(text::outcome_words(**outcome))
                                 : QString());
    outcome_words_->setVisible(told);
    // An outcome is about something eaten: until a piece is finished there is none to tell.
    const bool eaten = std::any_of(lines.begin(), lines.end(), [](const auto& line) {
        return line.piece().state == core::model::PieceState::finished;
    });
    outcome_->setEnabled(!workspace_.is_read_only() &&
                         (eaten || batch.state == core::model::BatchState::finished));
    outcome_->setToolTip(outcome_->isEnabled() ? tr("Salt, texture, and what to change next time")
                                               : tr("Once a piece of it is signed as done."));
}

void BatchesPage::record_outcome() {
    const auto id = core::model::BatchId::from_row(batch_);
    const auto batch = workspace_.one(workspace_.book().batch(id));
    const auto before = workspace_.one(workspace_.book().outcome(id));
    if (batch && before) {
        OutcomeDialog(workspace_, *batch, *before, this).exec();
    }
}

} // namespace ui::pages
