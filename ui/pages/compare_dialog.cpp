#include "ui/pages/compare_dialog.h"

#include "ui/look/pieces.h"
#include "ui/presenters/compare.h"
#include "ui/presenters/workspace.h"
#include "ui/text/model_words.h"

#include <QDialogButtonBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace ui::pages {

using core::model::PieceId;
using core::model::PieceState;

CompareDialog::CompareDialog(presenters::Workspace& workspace, PieceId piece,
                             const std::vector<PieceId>& chosen, QWidget* parent)
    : QDialog(parent) {
    setObjectName(QStringLiteral("compare_dialog"));
    setWindowTitle(tr("Pieces for one chart"));
    setAccessibleName(windowTitle());
    auto* column = new QVBoxLayout(this);
    find_ = look::named(new QLineEdit, "compare_find", tr("Find a piece"));
    find_->setPlaceholderText(tr("Find by code, piece, batch or product"));
    find_->setClearButtonEnabled(true);
    list_ = look::named(new QListWidget, "compare_list", tr("Pieces, ticked ones are drawn"));
    list_->setMinimumSize(look::lines(this, 26), look::lines(this, 14));
    count_ = look::caption({});
    count_->setObjectName(QStringLiteral("compare_count"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
    look::named(buttons->button(QDialogButtonBox::Cancel), "compare_cancel", tr("Cancel"));
    show_ = look::button("compare_show", tr("&Draw them"), look::ButtonLook::primary);
    buttons->addButton(show_, QDialogButtonBox::AcceptRole);
    column->addWidget(find_);
    column->addWidget(list_, 1);
    column->addWidget(count_);
    column->addWidget(buttons);
    connect(find_, &QLineEdit::textChanged, this, &CompareDialog::show_matching);
    connect(list_, &QListWidget::itemChanged, this, &CompareDialog::count);
    // Enter ticks the marked row: the space bar does too, but nobody knows.
    connect(list_, &QListWidget::itemActivated, this, [](QListWidgetItem* item) {
        item->setCheckState(item->checkState() == Qt::Checked ? Qt::Unchecked : Qt::Checked);
    });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    show_->setAutoDefault(false); // Enter in the list ticks
    fill(workspace, piece, chosen);
    count();
}

void CompareDialog::fill(presenters::Workspace& workspace, PieceId piece,
                         const std::vector<PieceId>& chosen) {
    std::map<core::model::BatchId, QString> batches;
    for (const auto& batch : workspace.rows(workspace.book().batches())) {
        batches[batch.id] = tr("%1 %2").arg(QString::fromStdString(batch.code),
                                            QString::fromStdString(batch.product));
    }
    core::services::PieceFilter filter;
    filter.states = {PieceState::drying, PieceState::finished};
    auto pieces = workspace.rows(workspace.book().pieces(filter));
    std::sort(pieces.begin(), pieces.end(),
              [](const auto& a, const auto& b) { return b.id < a.id; }); // newest first
    for (const auto& each : pieces) {
        if (each.id == piece) {
            continue;
        }
        auto* item = new QListWidgetItem(
            //: a piece: %1 its code, %2 its name, %3 its batch and product, %4 its state
            tr("%1 \u00B7 %2 \u00B7 %3 \u00B7 %4")
                .arg(QString::fromStdString(each.code), QString::fromStdString(each.name),
                     batches[each.batch], text::words(each.state)),
            list_);
        item->setData(Qt::UserRole, QVariant::fromValue(qint64(each.id.row())));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        const bool ticked = std::find(chosen.begin(), chosen.end(), each.id) != chosen.end();
        item->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
    }
    if (list_->count() > 0) {
        list_->setCurrentRow(0);
    }
}

void CompareDialog::show_matching(const QString& text) {
    for (int n = 0; n < list_->count(); ++n) {
        auto* item = list_->item(n);
        item->setHidden(!item->text().contains(text.trimmed(), Qt::CaseInsensitive));
    }
}

void CompareDialog::count() {
    const auto ticked = chosen().size();
    const bool too_many = ticked > presenters::most_compared;
    count_->setText(list_->count() == 0 ? tr("No other piece was hung yet.")
                    : too_many ? tr("%1 is the most a chart can tell apart; the newest are drawn.")
                                     .arg(presenters::most_compared + 1)
                               : tr("Ticked: %1").arg(ticked));
    show_->setEnabled(ticked > 0);
}

std::vector<PieceId> CompareDialog::chosen() const {
    std::vector<PieceId> ids;
    for (int n = 0; n < list_->count(); ++n) {
        if (list_->item(n)->checkState() == Qt::Checked) {
            ids.push_back(PieceId::from_row(list_->item(n)->data(Qt::UserRole).toLongLong()));
        }
    }
    return ids;
}

} // namespace ui::pages
