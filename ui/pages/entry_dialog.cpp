#include "ui/pages/entry_dialog.h"

#include "ui/look/fit.h"
#include "ui/presenters/workspace.h"
#include "ui/text/finding_words.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ui::pages {

EntryDialog::EntryDialog(presenters::Workspace& workspace, const char* object_name,
                         const QString& title, QWidget* parent)
    : QDialog(parent), workspace_(workspace), form_(new QFormLayout), below_(new QVBoxLayout),
      banner_(new look::Banner("dialog_banner", this)) {
    look::named(this, object_name, title);
    setWindowTitle(title);
    auto* outer = new QVBoxLayout(this);
    outer->addWidget(look::section_title(title));
    auto* column = look::add_scrolled_column(outer, "dialog_scroll", title);
    form_->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form_->setLabelAlignment(Qt::AlignLeft | Qt::AlignTop);
    column->addLayout(form_);
    column->addLayout(below_);
    column->addStretch(1);
    outer->addWidget(banner_);
    auto* row = new QHBoxLayout;
    row->addStretch(1);
    auto* cancel = look::button("dialog_cancel", tr("Cancel"));
    keep_ = look::button("dialog_keep", tr("&Keep"), look::ButtonLook::primary);
    keep_->setDefault(true);
    row->addWidget(cancel);
    row->addWidget(keep_);
    outer->addLayout(row);
    connect(cancel, &QPushButton::clicked, this, &QDialog::reject);
    connect(keep_, &QPushButton::clicked, this, &EntryDialog::keep);
    connect(&workspace_, &presenters::Workspace::problem, this,
            [this](const QString& sentence) { say(QStringLiteral("stop"), sentence); });
    look::resize_in_lines(this, 30, 26);
}

void EntryDialog::add_row(const QString& label, QWidget* field) {
    if (label.isEmpty()) {
        form_->addRow(field); // a tick says itself what it is, and has the whole width for it
    } else {
        look::add_field(form_, label, field);
    }
    if (auto* line = qobject_cast<QLineEdit*>(field)) {
        line->setCursorPosition(0); // a long text is read from its beginning
    }
    if (auto* entry = qobject_cast<edits::EntryField*>(field)) {
        fields_.push_back(entry);
        connect(entry, &edits::EntryField::edited, this, [this] {
            accepted_.clear();
            edited();
        });
    }
}

void EntryDialog::set_keep_words(const QString& words) {
    keep_->setText(words);
    keep_->setAccessibleName(QString(words).remove(QLatin1Char('&')));
}

void EntryDialog::say(const QString& severity, const QString& sentence) {
    banner_->say(severity, sentence);
}

void EntryDialog::keep() {
    say({}, {});
    edits::EntryField* first_wrong = nullptr;
    for (auto* field : fields_) {
        if (field->isVisibleTo(this) && field->isEnabled() && !field->validate() &&
            first_wrong == nullptr) {
            first_wrong = field;
        }
    }
    if (first_wrong != nullptr) {
        first_wrong->setFocus();
        return;
    }
    const auto wanted = command();
    if (!wanted) {
        return;
    }
    QStringList stops;
    QStringList cautions;
    for (const auto& finding : workspace_.check(*wanted, why().trimmed().toStdString())) {
        const QString sentence = text::finding_words(finding, workspace_.style());
        (finding.severity == core::model::Severity::stop ? stops : cautions) << sentence;
    }
    if (!stops.isEmpty()) {
        say(QStringLiteral("stop"), stops.join(QLatin1Char('\n')));
        return;
    }
    const QString caution = cautions.join(QLatin1Char('\n'));
    if (!caution.isEmpty() && caution != accepted_) {
        accepted_ = caution;
        say(QStringLiteral("caution"), tr("%1\nIf this is right, press Keep again.").arg(caution));
        return;
    }
    if (auto performed = workspace_.perform(*wanted, why().trimmed().toStdString())) {
        performed_ = std::move(*performed);
        accept();
    }
}

} // namespace ui::pages
