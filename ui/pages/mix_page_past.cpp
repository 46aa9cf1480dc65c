// What batches made from the recipe on the bench said about it, and using that.
#include "ui/look/pieces.h"
#include "ui/pages/mix_page.h"
#include "ui/pages/past_box.h"
#include "ui/presenters/mix_salt.h"
#include "ui/presenters/workspace.h"

#include <QLineEdit>

namespace ui::pages {

void MixPage::show_past() {
    proposal_ = recipe_ ? past_.proposal(*recipe_, workspace_.style()) : std::nullopt;
    if (proposal_ && !proposal_->salt) {
        proposal_->target.reset(); // a loss alone is the plan's business, not the mix's
    }
    past_box_->show_past({}, proposal_);
    const bool stands = used_past_ && entered().lines == used_past_->after.lines;
    past_box_->set_used(stands ? used_past_->reason : QString());
}

void MixPage::use_past() {
    if (!proposal_ || !proposal_->salt) {
        return;
    }
    const auto before = entered();
    const auto reading = presenters::read_entry(before, workspace_.style());
    if (!reading.faults.empty()) {
        show_faults(reading.faults);
        return;
    }
    auto meat = core::units::Mass::grams(0);
    for (const auto& piece : reading.pieces) {
        meat += piece.mass;
    }
    if (meat <= core::units::Mass::grams(0)) {
        meat = core::units::Mass::kilograms(1); // a share is a share
    }
    auto changed = presenters::with_salt(reading.recipe, *proposal_->salt, meat);
    if (!changed) {
        said_->say(QStringLiteral("caution"),
                   tr("The salt of this recipe cannot be changed by itself: it is held, or comes "
                      "with the curing salt or a pickle. Say it as a wish and find the rest."));
        said_->setProperty("keep", true);
        salt_wish_->setFocus();
        return;
    }
    const auto proposal = *proposal_;
    if (proposal.target) {
        changed->expected_loss = proposal.target;
    }
    auto after = presenters::entry_of(*changed, workspace_.style());
    after.meat = before.meat;
    after.scale_step = before.scale_step;
    show_entry(after);
    used_past_ = UsedPast{before, entered(), proposal.salt_reason};
    why_->setText(proposal.salt_reason); // the next version says why it is as it is
    show_past();
}

void MixPage::take_back_past() {
    if (!used_past_) {
        return;
    }
    const auto used = *used_past_;
    used_past_.reset();
    if (why_->text() == used.reason) {
        why_->clear();
    }
    show_entry(used.before);
}

} // namespace ui::pages
