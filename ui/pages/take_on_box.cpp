#include "ui/pages/take_on_box.h"

#include "ui/look/pieces.h"
#include "ui/pages/person_box.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace ui::pages {
namespace {

/// What was read: the same caution about another number is another caution.
bool is_same(const core::model::Finding& one, const core::model::Finding& other) {
    return one.code == other.code && one.place == other.place && one.values == other.values;
}

} // namespace

TakeOnBox::TakeOnBox(const QByteArray& stem, QWidget* parent) : QWidget(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    tick_ = look::named(new QCheckBox(tr("I have read the &cautions and take them on myself")),
                        stem.constData(), tr("I have read the cautions and take them on myself"));
    column->addWidget(tick_);
    by_ = new PersonBox((stem + "_by").constData(), tr("Cautions taken on by"));
    by_row_ = new QWidget;
    auto* row = new QHBoxLayout(by_row_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(look::field_label(tr("Taken on b&y"), by_));
    row->addWidget(by_);
    row->addStretch(1);
    column->addWidget(by_row_);
    hide();
}

void TakeOnBox::load(presenters::Workspace& workspace) {
    by_->load(workspace);
}

void TakeOnBox::set_findings(const core::model::Findings& findings) {
    core::model::Findings cautions;
    std::copy_if(
        findings.begin(), findings.end(), std::back_inserter(cautions),
        [](const auto& finding) { return finding.severity == core::model::Severity::caution; });
    if (!std::equal(cautions.begin(), cautions.end(), cautions_.begin(), cautions_.end(),
                    is_same)) {
        tick_->setChecked(false);
    }
    cautions_ = std::move(cautions);
    setVisible(!cautions_.empty());
}

void TakeOnBox::forget() {
    tick_->setChecked(false);
}

QString TakeOnBox::missing() {
    if (cautions_.empty()) {
        return {};
    }
    if (!tick_->isChecked()) {
        tick_->setFocus();
        return tr("There are cautions above. Read them, then tick that you take them on.");
    }
    if (!by_->is_named()) {
        by_->setFocus();
        return tr("Say who takes the cautions on: choose or type the name.");
    }
    return {};
}

std::optional<core::model::PersonId> TakeOnBox::person(presenters::Workspace& workspace) {
    return cautions_.empty() ? std::nullopt : by_->person(workspace);
}

} // namespace ui::pages
