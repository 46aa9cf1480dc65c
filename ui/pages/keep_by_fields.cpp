#include "ui/pages/keep_by_fields.h"

#include "ui/look/pieces.h"
#include "ui/presenters/workspace.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>

namespace ui::pages {

KeepByFields::KeepByFields(presenters::Workspace& workspace, QObject* parent) : QObject(parent) {
    rule_ = look::named(new QComboBox, "pack_rule", tr("Rule for keeping it"));
    // The rules are sentences: the form says how wide, not the longest of them.
    constexpr int letters = 28;
    rule_->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    rule_->setMinimumContentsLength(letters);
    rule_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    day_ =
        new edits::DayField("pack_keep_by", tr("Keep until"), workspace.style(), workspace.today());
    why_ = look::named(new QLineEdit, "pack_why", tr("Why this day"));
    why_->setPlaceholderText(tr("needed for a day of your own"));
    source_ = look::caption({});
    source_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred); // the field's width
    source_->setObjectName(QStringLiteral("pack_rule_source"));
    connect(rule_, &QComboBox::currentIndexChanged, this, &KeepByFields::rule_chosen);
    connect(day_, &edits::EntryField::edited, this, &KeepByFields::day_edited);
}

void KeepByFields::start_from(const core::model::Pack& pack) {
    had_ = pack.keep_by;
    had_rule_ = pack.keep_by_rule;
    const QScopedValueRollback quiet(filling_, true);
    day_->set_value(pack.keep_by);
}

void KeepByFields::offer(core::model::PackKind kind, std::optional<core::units::Day> packed_on,
                         std::optional<core::units::Day> opened_on) {
    const QString chosen =
        rule_->count() > 0 ? rule_->currentData().toString() : QString::fromStdString(had_rule_);
    choices_ = packed_on ? presenters::keep_choices(kind, *packed_on, opened_on,
                                                    opened_on ? had_ : std::nullopt)
                         : QVector<presenters::KeepChoice>();
    {
        const QScopedValueRollback quiet(filling_, true);
        rule_->clear();
        rule_->addItem(tr("none: your own day, or no day"), QString());
        for (const auto& choice : choices_) {
            rule_->addItem(choice.words, choice.id);
        }
        // A pack that was kept by a rule and is opened now goes by the first rule for that.
        const int same = rule_->findData(chosen);
        rule_->setCurrentIndex(same >= 0 ? same : std::min(1, rule_->count() - 1));
    }
    if (rule_->currentIndex() > 0) {
        rule_chosen();
    } else {
        show_source();
    }
}

void KeepByFields::rule_chosen() {
    if (filling_) {
        return;
    }
    const int index = rule_->currentIndex() - 1;
    if (index >= 0 && index < choices_.size()) {
        const QScopedValueRollback quiet(filling_, true);
        day_->set_value(choices_[index].day);
    }
    show_source();
}

void KeepByFields::day_edited() {
    if (filling_) {
        return;
    }
    const int index = rule_->currentIndex() - 1;
    if (index >= 0 && index < choices_.size() && day_->value() != choices_[index].day) {
        const QScopedValueRollback quiet(filling_, true);
        rule_->setCurrentIndex(0); // another day than the rule's is the person's own
    }
    show_source();
}

void KeepByFields::show_source() {
    const int index = rule_->currentIndex() - 1;
    source_->setText(index >= 0 && index < choices_.size()
                         ? choices_[index].source
                         : tr("Without a rule the day is yours. How long a pack keeps depends on "
                              "the product, its dryness and the cold; follow your own code."));
    why_->setEnabled(is_own_day());
}

bool KeepByFields::is_own_day() const {
    return rule_->currentIndex() <= 0 && day_->value().has_value();
}

bool KeepByFields::reason_is_missing() const {
    const bool stays = day_->value() == had_ && had_rule_.empty();
    return is_own_day() && !stays && reason().isEmpty();
}

QString KeepByFields::reason() const {
    return is_own_day() ? why_->text().trimmed() : QString();
}

void KeepByFields::write_to(core::model::Pack& pack) const {
    pack.keep_by = day_->value();
    pack.keep_by_rule =
        pack.keep_by ? rule_->currentData().toString().toStdString() : std::string();
}

} // namespace ui::pages
