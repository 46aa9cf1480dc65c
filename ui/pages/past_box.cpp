#include "ui/pages/past_box.h"

#include "ui/look/pieces.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ui::pages {

PastBox::PastBox(const QByteArray& object_name, QWidget* parent) : QWidget(parent) {
    setObjectName(QLatin1String(object_name));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(look::lines(this, 0.3));
    const auto paragraph = [&](const char* part) {
        auto* made = look::paragraph({});
        made->setObjectName(QLatin1String(object_name) + QLatin1String(part));
        return made;
    };
    history_ = paragraph("_history");
    proposal_ = paragraph("_proposal");
    done_ = paragraph("_done");
    button_ = look::button((object_name + "_use").constData(), {});
    column->addWidget(history_);
    auto* row = new QHBoxLayout;
    row->addWidget(proposal_, 1);
    row->addWidget(button_, 0, Qt::AlignTop);
    column->addLayout(row);
    column->addWidget(done_);
    connect(button_, &QPushButton::clicked, this,
            [this] { used_ ? Q_EMIT take_back() : Q_EMIT use(); });
    show_past({}, {});
}

void PastBox::show_past(const QString& history,
                        const std::optional<presenters::PastProposal>& proposal) {
    history_->setText(history);
    history_->setVisible(!history.isEmpty());
    proposal_->setText(proposal ? proposal->words : QString());
    proposal_->setVisible(proposal.has_value());
    usable_ = proposal && proposal->usable();
    setVisible(!history.isEmpty() || proposal);
    show_button();
}

void PastBox::set_used(const QString& what) {
    used_ = !what.isEmpty();
    done_->setText(what);
    show_button();
}

void PastBox::show_button() {
    done_->setVisible(used_);
    button_->setVisible(usable_ || used_);
    button_->setText(used_ ? tr("Take it back") : tr("Use it"));
    button_->setAccessibleName(used_ ? tr("Take back: %1").arg(done_->text())
                                     : tr("Use it: %1").arg(proposal_->text()));
}

} // namespace ui::pages
