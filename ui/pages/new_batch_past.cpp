// What own finished batches of the product say to the new one, and using it.
#include "ui/pages/new_batch_page.h"
#include "ui/pages/past_box.h"
#include "ui/presenters/workspace.h"

#include <QComboBox>

namespace ui::pages {

void NewBatchPage::show_past() {
    const QString product = product_->currentText().trimmed();
    const auto& style = workspace_.style();
    core::planning::Likeness like{.product = product.toStdString()};
    if (!pieces_.empty()) {
        like.form = pieces_.front().form->value();
    }
    proposal_ = past_.proposal(product, style);
    past_box_->show_past(past_.history(like, style), proposal_);
    past_box_->set_used(reasons());
}

void NewBatchPage::use_past() {
    if (!proposal_) {
        return;
    }
    UsedPast used{.proposal = *proposal_,
                  .target = {},
                  .salt = {},
                  .target_before = target_->value(),
                  .salt_before = salt_->value()};
    used.target = proposal_->target;
    if (proposal_->salt) {
        used.salt = presenters::table_salt_for(entered(), *proposal_->salt);
    }
    // Kept as the fields read it back, so that typing over it is noticed.
    if (used.target) {
        target_->set_value(used.target);
        used.target = target_->value();
    }
    if (used.salt) {
        salt_->set_value(used.salt);
        used.salt = salt_->value();
    }
    used_past_ = used;
    recompute();
}

void NewBatchPage::take_back_past() {
    if (!used_past_) {
        return;
    }
    const UsedPast used = *used_past_;
    used_past_.reset();
    if (used.target && target_->value() == used.target) {
        target_->set_value(used.target_before);
    }
    if (used.salt && salt_->value() == used.salt) {
        salt_->set_value(used.salt_before);
    }
    recompute();
}

/// Of what was used and not typed over since: also what the batch's notes will say.
QString NewBatchPage::reasons() const {
    QStringList said;
    if (used_past_ && used_past_->salt && salt_->value() == used_past_->salt) {
        said << used_past_->proposal.salt_reason;
    }
    if (used_past_ && used_past_->target && target_->value() == used_past_->target) {
        said << used_past_->proposal.target_reason;
    }
    return said.join(QLatin1Char(' '));
}

} // namespace ui::pages
